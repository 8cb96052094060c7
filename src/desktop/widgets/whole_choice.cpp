#include "whole_choice.hpp"

#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QEvent>
#include <QHelpEvent>
#include <QScreen>
#include <QScrollBar>
#include <QStyle>
#include <QStyleOptionComboBox>
#include <QToolTip>
#include <algorithm>

namespace gritwright::desktop {

namespace {

bool is_cut(const QComboBox& box) {
  QStyleOptionComboBox option;
  option.initFrom(&box);
  constexpr int around = 4;
  const int room = box.style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, &box).width() - around;
  return box.fontMetrics().horizontalAdvance(box.currentText()) > room;
}

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
    if (event->type() != QEvent::ToolTip) return false;
    const auto* const box = qobject_cast<QComboBox*>(watched);
    if (box == nullptr || !box->toolTip().isEmpty() || !is_cut(*box)) return false;
    QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), box->currentText());
    return true;
  }
};

}  // namespace

void show_whole_choices(QApplication& application) { application.installEventFilter(new WholeChoices(&application)); }

}  // namespace gritwright::desktop
