#include "guarded_application.hpp"

#include <QComboBox>
#include <QEvent>
#include <QSlider>

#include "gritwright/workbook/open_workbook.hpp"
#include "main_window.hpp"

namespace gritwright::desktop {

namespace {

/// What a wheel turned over `receiver` is meant for.
QObject* scrolled_by_wheel(QObject* receiver) {
  const auto* const slider = qobject_cast<QSlider*>(receiver);
  const bool is_choice = qobject_cast<QComboBox*>(receiver) != nullptr || (slider != nullptr && !slider->hasFocus());
  auto* const around = is_choice ? receiver->parent() : nullptr;
  return around != nullptr && around->isWidgetType() ? around : receiver;
}

}  // namespace

bool GuardedApplication::notify(QObject* receiver, QEvent* event) {
  try {
    if (event->type() == QEvent::Wheel) receiver = scrolled_by_wheel(receiver);
    return QApplication::notify(receiver, event);
  } catch (const WorkbookTrouble& trouble) {
    for (QWidget* widget : topLevelWidgets())
      if (auto* window = qobject_cast<MainWindow*>(widget)) window->tell_trouble(trouble.problem());
    return true;
  }
}

}  // namespace gritwright::desktop
