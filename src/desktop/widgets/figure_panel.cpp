#include "figure_panel.hpp"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QMargins>
#include <QVBoxLayout>
#include <algorithm>
#include <initializer_list>

#include "how_button.hpp"
#include "wrapped_label.hpp"

namespace gritwright::desktop {

namespace {

/// As long as a text fits into what the label ever took, its size is fixed: a figure that changes would have the whole page laid out anew.
void show_steadily(QLabel& label, const QString& text) {
  if (label.text() == text) return;
  label.setText(text);
  const QSize wanted = label.sizeHint();
  if (wanted.width() > label.minimumWidth() || wanted.height() > label.minimumHeight()) label.setFixedSize(wanted.expandedTo(label.minimumSize()));
}

/// After the font changed.
void fit_anew(QLabel& label) {
  label.setMinimumSize(0, 0);
  label.setFixedSize(label.sizeHint());
}

}  // namespace

FigurePanel::FigurePanel(QWidget* parent) : QFrame(parent), title_(new WrappedLabel(this)), reason_(new WrappedLabel(this)), grid_(new QGridLayout) {
  setObjectName(QStringLiteral("card"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 8, 8, 8);
  layout->setSpacing(4);
  title_->setProperty("role", "heading");
  layout->addWidget(title_);
  reason_->setProperty("role", "muted");
  layout->addWidget(reason_);
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setHorizontalSpacing(10);
  grid_->setVerticalSpacing(4);
  grid_->setColumnStretch(0, 1);
  layout->addLayout(grid_);
  layout->addStretch(1);
}

void FigurePanel::ensure_rows(std::size_t count) {
  while (rows_.size() < count) {
    const auto at = rows_.size();
    auto* how = new HowButton([this, at] { return group_.figures[at]; }, this);
    Row row{new WrappedLabel(this), new QLabel(this), new QLabel(this), how};
    row.label->setTextFormat(Qt::PlainText);
    // Plain, and never to be selected: a label that can be selected lays out a whole document for its few signs. "How so?" has the figure as
    // text to copy.
    row.value->setTextFormat(Qt::PlainText);
    row.range->setTextFormat(Qt::PlainText);
    row.value->setProperty("role", "figure");
    row.value->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    row.range->setProperty("role", "muted");
    row.range->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    rows_.push_back(row);
    place_row(at);
  }
}

void FigurePanel::place_row(std::size_t at) {
  const Row& row = rows_[at];
  const int line = 2 * static_cast<int>(at);
  for (QWidget* widget : std::initializer_list<QWidget*>{row.label, row.value, row.range, row.how}) grid_->removeWidget(widget);
  grid_->addWidget(row.label, line, 0, 1, below_ ? 3 : 1);
  grid_->addWidget(row.value, below_ ? line + 1 : line, below_ ? 0 : 1, 1, below_ ? 2 : 1, Qt::AlignRight | Qt::AlignVCenter);
  grid_->addWidget(row.range, below_ ? line + 1 : line, 2, Qt::AlignRight | Qt::AlignVCenter);
  grid_->addWidget(row.how, line, 3);
}

FigurePanel::Widths FigurePanel::widths() const {
  Widths all;
  int values = 0;
  int ranges = 0;
  for (const Row& row : rows_) {
    if (row.label->isHidden()) continue;
    all.words = std::max(all.words, fontMetrics().horizontalAdvance(row.label->text()));
    all.longest_word = std::max(all.longest_word, row.label->minimumSizeHint().width());
    values = std::max(values, row.value->minimumWidth());
    if (!row.range->isHidden()) ranges = std::max(ranges, row.range->minimumWidth() + grid_->horizontalSpacing());
  }
  all.figures = values + ranges;
  return all;
}

int FigurePanel::beside_rows() const {
  const QMargins margins = layout()->contentsMargins();
  return margins.left() + margins.right() + 2 * frameWidth() + rows_.front().how->sizeHint().width() + 2 * grid_->horizontalSpacing();
}

QSize FigurePanel::minimumSizeHint() const {
  const QSize now = QFrame::minimumSizeHint();
  const Widths needed = widths();
  if (needed.words == 0) return now;
  const QMargins margins = layout()->contentsMargins();
  const int heads = std::max(title_->minimumSizeHint().width(), reason_->isHidden() ? 0 : reason_->minimumSizeHint().width()) + margins.left() + margins.right() + 2 * frameWidth();
  return {std::max({heads, needed.longest_word + beside_rows() - grid_->horizontalSpacing(), needed.figures + beside_rows()}), now.height()};
}

void FigurePanel::place_figures() {
  constexpr int fewest_signs = 14;
  const Widths needed = widths();
  if (needed.words == 0) return;
  const int room = width() - beside_rows() - needed.figures;
  const bool below = room < std::max(needed.longest_word, std::min(needed.words, fewest_signs * fontMetrics().averageCharWidth()));
  if (below == below_) return;
  below_ = below;
  for (std::size_t at = 0; at < rows_.size(); ++at) place_row(at);
}

void FigurePanel::show_group(const FigureGroup& group) {
  group_ = group;
  ensure_rows(group.figures.size());
  title_->setText(group.title);
  // One reason for the whole card is said once; a figure's own reason stands with its dash.
  QString common = group.figures.empty() ? QString() : group.figures.front().reason;
  for (const Figure& figure : group.figures) {
    if (figure.reason != common) common.clear();
  }
  reason_->setText(common);
  reason_->setVisible(!common.isEmpty());
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const Row& row = rows_[i];
    const bool used = i < group.figures.size();
    row.label->setVisible(used);
    row.value->setVisible(used);
    row.range->setVisible(used && group.has_ranges);
    row.how->setVisible(used);
    if (!used) continue;
    const Figure& figure = group.figures[i];
    row.label->setText(figure.label);
    show_steadily(*row.value, figure.value);
    row.value->setObjectName(QStringLiteral("figure_") + figure.key);
    row.value->setToolTip(figure.reason);
    row.value->setAccessibleName(figure.reason.isEmpty() ? tr("%1: %2").arg(figure.label, figure.value) : tr("%1: not computed, %2").arg(figure.label, figure.reason));
    show_steadily(*row.range, figure.range);
    row.range->setObjectName(QStringLiteral("range_") + figure.key);
    row.range->setToolTip(figure.range_detail.isEmpty() ? tr("nothing is known of its range") : figure.range_detail);
    row.range->setAccessibleName(figure.range_detail.isEmpty() ? tr("%1: no range").arg(figure.label) : tr("%1, in 90 of 100 cases: %2").arg(figure.label, figure.range));
    row.how->set_figure(figure);
  }
  if (isVisible()) place_figures();
}

void FigurePanel::changeEvent(QEvent* event) {
  QFrame::changeEvent(event);
  if (event->type() != QEvent::FontChange && event->type() != QEvent::StyleChange) return;
  for (const Row& row : rows_) {
    fit_anew(*row.value);
    fit_anew(*row.range);
  }
  place_figures();
}

void FigurePanel::resizeEvent(QResizeEvent* event) {
  QFrame::resizeEvent(event);
  place_figures();
}

}  // namespace gritwright::desktop
