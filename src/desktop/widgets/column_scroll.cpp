#include "column_scroll.hpp"

#include <QEvent>
#include <QScrollBar>

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
  if (widget() != nullptr) size.setWidth(widget()->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width());
  return size;
}

bool ColumnScroll::eventFilter(QObject* watched, QEvent* event) {
  const bool of_content = watched == widget() && (event->type() == QEvent::LayoutRequest || event->type() == QEvent::FontChange);
  const bool handled = QScrollArea::eventFilter(watched, event);
  if (of_content) updateGeometry();
  return handled;
}

}  // namespace gritwright::desktop
