#include "guarded_application.hpp"

#include "gritwright/workbook/open_workbook.hpp"
#include "main_window.hpp"

namespace gritwright::desktop {

bool GuardedApplication::notify(QObject* receiver, QEvent* event) {
  try {
    return QApplication::notify(receiver, event);
  } catch (const WorkbookTrouble& trouble) {
    for (QWidget* widget : topLevelWidgets())
      if (auto* window = qobject_cast<MainWindow*>(widget)) window->tell_trouble(trouble.problem());
    return true;
  }
}

}  // namespace gritwright::desktop
