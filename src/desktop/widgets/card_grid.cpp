#include "card_grid.hpp"

#include <QEvent>
#include <QGridLayout>
#include <algorithm>

namespace gritwright::desktop {

namespace {

constexpr int signs_per_card = 46;

}  // namespace

CardGrid::CardGrid(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setSpacing(8);
}

void CardGrid::add_card(QWidget* card) {
  cards_.push_back(card);
  lay_out(true);
}

void CardGrid::set_below(QWidget* widget) {
  below_ = widget;
  lay_out(true);
}

int CardGrid::widest_card() const {
  int widest = 0;
  for (const QWidget* card : cards_) widest = std::max(widest, card->minimumSizeHint().width());
  return widest;
}

QSize CardGrid::minimumSizeHint() const { return {widest_card(), QWidget::minimumSizeHint().height()}; }

void CardGrid::lay_out(bool anew) {
  const int card_width = std::max(signs_per_card * fontMetrics().averageCharWidth(), widest_card());
  // Columns that leave no hole beside the last card.
  int columns = std::clamp(width() / std::max(1, card_width), 1, std::max(1, static_cast<int>(cards_.size())));
  while (columns > 1 && cards_.size() % static_cast<std::size_t>(columns) != 0) --columns;
  if (columns == columns_ && !anew) return;
  for (QWidget* card : cards_) grid_->removeWidget(card);
  if (below_ != nullptr) grid_->removeWidget(below_);
  const int rows = (static_cast<int>(cards_.size()) + columns - 1) / columns;
  for (int i = 0; i < static_cast<int>(cards_.size()); ++i) grid_->addWidget(cards_[static_cast<std::size_t>(i)], i / columns, i % columns);
  for (int column = 0; column < static_cast<int>(cards_.size()); ++column) grid_->setColumnStretch(column, column < columns ? 1 : 0);
  if (below_ != nullptr) grid_->addWidget(below_, rows, 0, 1, columns);
  for (int row = 0; row <= static_cast<int>(cards_.size()) + 1; ++row) grid_->setRowStretch(row, row > rows ? 1 : 0);
  columns_ = columns;
}

void CardGrid::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  lay_out(false);
}

void CardGrid::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) lay_out(false);
}

}  // namespace gritwright::desktop
