#include "folding_sides.hpp"

#include <QApplication>
#include <QEvent>
#include <QResizeEvent>
#include <QScrollBar>
#include <QSplitter>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "column_scroll.hpp"

namespace gritwright::desktop {

namespace {

constexpr int between_sides = 8;
constexpr int least_page_height = 190;

int least_width_of_side(const QWidget& side) { return std::max(side.minimumSizeHint().width(), side.minimumWidth()); }

}  // namespace

FoldingSides::FoldingSides(const QString& row_name, QWidget* parent) : QScrollArea(parent), content_(new QWidget(this)), below_each_other_(new QVBoxLayout(content_)) {
  setFrameShape(QFrame::NoFrame);
  setFocusPolicy(Qt::NoFocus);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setWidgetResizable(true);
  setWidget(content_);
  below_each_other_->setContentsMargins(0, 0, 0, 0);
  below_each_other_->setSpacing(between_sides);
  lines_.push_back(new_line(row_name));
  connect(qApp, &QApplication::focusChanged, this, [this](const QWidget*, const QWidget* now) { show_focused(now); });
}

QSplitter* FoldingSides::new_line(const QString& name) {
  auto* line = new QSplitter(Qt::Horizontal, content_);
  line->setObjectName(name);
  line->setChildrenCollapsible(false);
  line->setHandleWidth(between_sides);
  below_each_other_->addWidget(line);
  return line;
}

void FoldingSides::add(QWidget* side, int stretch) {
  sides_.push_back(side);
  row().addWidget(side);
  row().setStretchFactor(row().count() - 1, stretch);
  if (const auto* const column = qobject_cast<const ColumnScroll*>(side)) {
    connect(column, &ColumnScroll::whole_height_changed, this, [this] {
      if (is_folded() && !is_folding_) set_heights();
    });
  }
}

void FoldingSides::set_sizes(const QList<int>& sizes) { row().setSizes(sizes); }

QSize FoldingSides::minimumSizeHint() const {
  int widest = 0;
  for (const QWidget* side : sides_) widest = std::max(widest, least_width_of_side(*side));
  // In large text even one side can need more than the window's height; then the page scrolls.
  return {widest + verticalScrollBar()->sizeHint().width(), std::min(content_->minimumSizeHint().height(), least_page_height)};
}

void FoldingSides::fold() {
  if (is_folding_) return;
  is_folding_ = true;
  // Whether the bar is in sight must not decide, as it follows from what is decided.
  const int room = width() - verticalScrollBar()->sizeHint().width();
  std::vector<std::size_t> first_of_line;
  int taken = 0;
  for (std::size_t at = 0; at < sides_.size(); ++at) {
    const int wanted = least_width_of_side(*sides_[at]);
    const bool begins = at == 0 || taken + between_sides + wanted > room;
    if (begins) first_of_line.push_back(at);
    taken = begins ? wanted : taken + between_sides + wanted;
  }
  if (first_of_line != first_of_line_) arrange(first_of_line);
  set_heights();
  is_folding_ = false;
}

void FoldingSides::arrange(const std::vector<std::size_t>& first_of_line) {
  QWidget* const focused = QApplication::focusWidget();
  const bool had_focus = focused != nullptr && content_->isAncestorOf(focused);
  if (!is_folded()) sizes_beside_ = row().saveState();
  first_of_line_ = first_of_line;
  while (lines_.size() < first_of_line.size()) lines_.push_back(new_line({}));
  for (std::size_t at = 0, line = 0; at < sides_.size(); ++at) {
    if (line + 1 < first_of_line.size() && at == first_of_line[line + 1]) ++line;
    lines_[line]->addWidget(sides_[at]);  // takes it from where it was
    sides_[at]->show();
  }
  while (lines_.size() > first_of_line.size()) {
    delete lines_.back();
    lines_.pop_back();
  }
  if (!is_folded()) row().restoreState(sizes_beside_);
  if (had_focus) focused->setFocus();
  updateGeometry();
}

// A line is as high as what is in sight of the page, less a strip in which the next line shows that it is there; a column needs no more than all of it.
void FoldingSides::set_heights() {
  const int page = height() - 2 * fontMetrics().lineSpacing();
  for (QSplitter* line : lines_) {
    int wanted = page;
    if (const auto* const column = line->count() == 1 ? qobject_cast<const ColumnScroll*>(line->widget(0)) : nullptr) wanted = std::min(wanted, column->whole_height());
    line->setMinimumHeight(is_folded() ? std::max(line->minimumSizeHint().height(), wanted) : 0);
  }
}

void FoldingSides::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  fold();
}

bool FoldingSides::eventFilter(QObject* watched, QEvent* event) {
  const bool handled = QScrollArea::eventFilter(watched, event);
  if (watched == widget() && event->type() == QEvent::LayoutRequest) {
    fold();
    if (const QSize least = minimumSizeHint(); least != least_) {
      least_ = least;
      updateGeometry();
    }
  }
  return handled;
}

void FoldingSides::showEvent(QShowEvent* event) {
  QScrollArea::showEvent(event);
  fold();
  updateGeometry();
}

void FoldingSides::show_focused(const QWidget* focused) {
  // What is being clicked on must not slip away from under the pointer.
  if (focused == nullptr || QApplication::mouseButtons() != Qt::NoButton || !content_->isAncestorOf(focused)) return;
  if (verticalScrollBar()->maximum() > 0) scroll_to(*focused, focused->rect());
}

bool is_part_of_folded(const QSplitter& splitter) {
  for (const QWidget* above = splitter.parentWidget(); above != nullptr; above = above->parentWidget()) {
    if (const auto* sides = qobject_cast<const FoldingSides*>(above)) return sides->is_folded() && splitter.parentWidget() == sides->widget();
  }
  return false;
}

}  // namespace gritwright::desktop
