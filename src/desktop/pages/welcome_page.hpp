#pragma once
#include <QWidget>

namespace gritwright::desktop {

/// The three doors at the first start: look at the demonstration, record a sieving, describe a container.
class WelcomePage : public QWidget {
  Q_OBJECT
 public:
  explicit WelcomePage(QWidget* parent = nullptr);

  /// To the first door.
  void take_focus();

 signals:
  void demonstration_wanted();
  void sieving_wanted();
  void container_wanted();
};

}  // namespace gritwright::desktop
