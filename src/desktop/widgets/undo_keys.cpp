#include "undo_keys.hpp"

#include <QKeyEvent>
#include <QLineEdit>

namespace gritwright::desktop {

bool is_undo_of_window(const QLineEdit& line, const QEvent& event) {
  if (event.type() != QEvent::ShortcutOverride) return false;
  const auto& key = static_cast<const QKeyEvent&>(event);
  return (key.matches(QKeySequence::Undo) && !line.isUndoAvailable()) || (key.matches(QKeySequence::Redo) && !line.isRedoAvailable());
}

UndoKeys::UndoKeys(QWidget& window) : QObject(&window) {
  for (QLineEdit* line : window.findChildren<QLineEdit*>()) line->installEventFilter(this);
}

bool UndoKeys::eventFilter(QObject* watched, QEvent* event) {
  const auto* const line = qobject_cast<QLineEdit*>(watched);
  if (line == nullptr || !is_undo_of_window(*line, *event)) return QObject::eventFilter(watched, event);
  event->ignore();
  return true;
}

}  // namespace gritwright::desktop
