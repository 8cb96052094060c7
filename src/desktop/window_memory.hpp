#pragma once
class QMainWindow;

namespace gritwright::desktop {

/// Widths that the user dragged: dividers by their object name, columns of lists. The window's own place is kept by the window.
void remember_layout(const QMainWindow& window);
void restore_layout(QMainWindow& window);

}  // namespace gritwright::desktop
