#pragma once
#include <QWidget>

namespace gritwright::desktop {

/// A room that can't be entered: why, and a button to what can be done about it.
class RoomPage : public QWidget {
  Q_OBJECT
 public:
  RoomPage(const QString& title, const QString& words, const QString& button, QWidget* parent = nullptr);

 signals:
  void help_wanted();
};

}  // namespace gritwright::desktop
