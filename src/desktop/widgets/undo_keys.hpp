#pragma once
#include <QObject>

class QEvent;
class QLineEdit;
class QWidget;

namespace gritwright::desktop {

/// True for a key of undo or redo where the line has nothing of that to do: it claims the key all the same, and it is the window's.
[[nodiscard]] bool is_undo_of_window(const QLineEdit& line, const QEvent& event);

/// Hands those keys of all lines that `window` has by now on to its actions.
class UndoKeys : public QObject {
 public:
  explicit UndoKeys(QWidget& window);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace gritwright::desktop
