#pragma once
#include <QWidget>

class QLabel;

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

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void fit_heading();

  QLabel* heading_ = nullptr;
};

}  // namespace gritwright::desktop
