#include "column_scroll.hpp"

#include <QAbstractItemView>
#include <QCoreApplication>
#include <QEvent>
#include <QItemSelectionModel>
#include <QLayout>
#include <QScrollBar>
#include <algorithm>
#include <utility>

namespace gritwright::desktop {

ColumnScroll::ColumnScroll(QWidget* content, QWidget* parent) : QScrollArea(parent) {
  setWidget(content);
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setFocusPolicy(Qt::NoFocus);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

QSize ColumnScroll::minimumSizeHint() const {
  QSize size = QScrollArea::minimumSizeHint();
  if (widget() != nullptr) size.setWidth(std::max(widget()->minimumSizeHint().width(), widget()->minimumWidth()) + verticalScrollBar()->sizeHint().width());
  return size;
}

int ColumnScroll::whole_height() const {
  const int room = viewport()->width();
  return (widget()->hasHeightForWidth() ? widget()->heightForWidth(room) : widget()->sizeHint().height()) + 2 * frameWidth();
}

bool ColumnScroll::eventFilter(QObject* watched, QEvent* event) {
  const bool of_content = watched == widget() && (event->type() == QEvent::LayoutRequest || event->type() == QEvent::FontChange);
  // It answers a size of the content by another size, and where one asks for the other it would do so for ever.
  const bool is_resize = watched == widget() && event->type() == QEvent::Resize;
  if (is_resize && std::exchange(is_resizing_, true)) return false;
  const bool handled = QScrollArea::eventFilter(watched, event);
  if (is_resize) is_resizing_ = false;
  if (of_content) tell_whole_height();
  // Else every changed text would lay out the whole window.
  if (of_content && (minimumSizeHint().width() != least_width_ || event->type() == QEvent::FontChange)) {
    least_width_ = minimumSizeHint().width();
    updateGeometry();
  }
  return handled;
}

void ColumnScroll::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  tell_whole_height();
}

void ColumnScroll::tell_whole_height() {
  const int height = whole_height();
  if (std::exchange(told_height_, height) != height) emit whole_height_changed();
}

void ColumnScroll::showEvent(QShowEvent* event) {
  QScrollArea::showEvent(event);
  updateGeometry();  // a splitter out of sight hands nothing on
}

void scroll_to(const QWidget& widget, const QRect& part) {
  for (QWidget* above = widget.parentWidget(); above != nullptr; above = above->parentWidget()) {
    auto* column = qobject_cast<QScrollArea*>(above);
    if (column == nullptr || column->widget() == nullptr || !column->widget()->isAncestorOf(&widget)) continue;
    const QPoint middle = widget.mapTo(column->widget(), part.center());
    column->ensureVisible(middle.x(), middle.y(), 0, part.height());
  }
}

void scroll_to_whole(const QWidget& widget) {
  for (QWidget* above = widget.parentWidget(); above != nullptr; above = above->parentWidget()) {
    auto* column = qobject_cast<QScrollArea*>(above);
    if (column == nullptr || column->widget() == nullptr || !column->widget()->isAncestorOf(&widget)) continue;
    QScrollBar& bar = *column->verticalScrollBar();
    const int top = widget.mapTo(column->widget(), QPoint(0, 0)).y();
    const int below = top + widget.height() - column->viewport()->height();
    if (below > bar.value()) bar.setValue(std::min(top, below));
    else if (top < bar.value()) bar.setValue(top);
  }
}

void bring_current_into_sight(const QAbstractItemView& table) {
  if (table.hasFocus() && table.currentIndex().isValid()) scroll_to(*table.viewport(), table.visualRect(table.currentIndex()));
}

void keep_current_in_sight(QAbstractItemView& table) {
  QObject::connect(table.selectionModel(), &QItemSelectionModel::currentChanged, &table, [&table] { bring_current_into_sight(table); });
}

void lay_out_now(QWidget& part) {
  constexpr int rounds = 3;  // what became wider may need less height, and what is beside it other lines
  for (int round = 0; round < rounds; ++round) {
    for (QWidget* around = &part; around != nullptr && !around->isWindow(); around = around->parentWidget()) {
      QCoreApplication::sendPostedEvents(around, QEvent::LayoutRequest);
      if (around->layout() != nullptr) around->layout()->activate();
    }
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
  }
}

}  // namespace gritwright::desktop
