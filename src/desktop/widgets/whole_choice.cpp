#include "whole_choice.hpp"

#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QCoreApplication>
#include <QEvent>
#include <QFontMetrics>
#include <QHelpEvent>
#include <QScreen>
#include <QScrollBar>
#include <QStyle>
#include <QStyleOptionComboBox>
#include <QToolTip>
#include <algorithm>

#include "theme_style.hpp"

namespace gritwright::desktop {

namespace {

void widen(QWidget& list) {
  const auto* const view = list.findChild<QAbstractItemView*>();
  if (view == nullptr) return;
  const QRect screen = list.screen()->availableGeometry();
  const int needed = std::min(view->sizeHintForColumn(0) + 2 * view->frameWidth() + view->verticalScrollBar()->sizeHint().width(), screen.width());
  if (needed <= list.width()) return;
  list.setGeometry(std::min(list.x(), screen.right() + 1 - needed), list.y(), needed, list.height());
}

class WholeChoices : public QObject {
 public:
  using QObject::QObject;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() == QEvent::Show && watched->inherits("QComboBoxPrivateContainer")) widen(*static_cast<QWidget*>(watched));
    // Qt forgets a box's hint for another font, but not its least size.
    if (event->type() == QEvent::FontChange && watched->inherits("QComboBox")) {
      QEvent forget(QEvent::StyleChange);
      QCoreApplication::sendEvent(watched, &forget);
    }
    if (event->type() != QEvent::ToolTip) return false;
    const auto* const box = qobject_cast<QComboBox*>(watched);
    if (box == nullptr || !box->toolTip().isEmpty() || has_room_for(*box, box->currentText())) return false;
    QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), box->currentText());
    return true;
  }
};

}  // namespace

bool has_room_for(const QComboBox& box, const QString& choice) { return has_room_for(box, choice, box.width()); }

bool has_room_for(const QComboBox& box, const QString& choice, int width) {
  QStyleOptionComboBox option;
  option.initFrom(&box);
  option.rect.setWidth(width);
  const int room = room_for_choice(*box.style(), option, &box);
  return QFontMetrics(narrowed_for(choice, room, box.font())).horizontalAdvance(choice) <= room;
}

void show_whole_choices(QApplication& application) { application.installEventFilter(new WholeChoices(&application)); }

}  // namespace gritwright::desktop
