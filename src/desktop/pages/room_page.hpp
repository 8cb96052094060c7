#pragma once
#include <QWidget>

namespace gritwright::desktop {

/// A room whose own page is not there yet: says so, and how the same work is done today.
class RoomPage : public QWidget {
  Q_OBJECT
 public:
  RoomPage(const QString& title, const QString& words, const QStringList& commands, QWidget* parent = nullptr);
};

}  // namespace gritwright::desktop
