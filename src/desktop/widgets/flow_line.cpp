#include "flow_line.hpp"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace gritwright::desktop {

namespace {

constexpr int between_pieces = 6;
/// An underlined first letter is drawn without the kerning that its width was measured with.
constexpr int lost_kerning = 4;

int least_width_of(const QWidget& widget) { return std::max(widget.minimumWidth(), widget.minimumSizeHint().width()); }

}  // namespace

FlowLine::FlowLine(QWidget* parent) : QWidget(parent), lines_(new QVBoxLayout(this)) {
  lines_->setContentsMargins(0, 0, 0, 0);
  lines_->setSpacing(between_pieces);
}

void FlowLine::add(const QString& label, QWidget* field, int stretch, const QString& widest) {
  Piece piece{nullptr, field, stretch, widest, std::exchange(begins_line_, false), std::exchange(stays_with_next_, false)};
  field->setParent(this);
  if (!label.isEmpty()) {
    piece.label = new QLabel(label, this);
    piece.label->setBuddy(field);
    piece.label->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
  }
  give_room(piece);
  pieces_.push_back(piece);
  first_of_line_.clear();
  lay_out();
}

void FlowLine::give_room(const Piece& piece) const {
  constexpr int around_text = 16;
  if (piece.label != nullptr) {
    // Its hint is never below what it had before.
    piece.label->setMinimumWidth(0);
    piece.label->setMinimumWidth(piece.label->sizeHint().width() + lost_kerning);
  }
  if (!piece.widest.isEmpty()) piece.field->setMinimumWidth(fontMetrics().horizontalAdvance(piece.widest) + around_text);
}

int FlowLine::width_of(const Piece& piece) const {
  return least_width_of(*piece.field) + (piece.label != nullptr ? piece.label->sizeHint().width() + lost_kerning + between_pieces : 0);
}

QSize FlowLine::minimumSizeHint() const {
  int widest = 0;
  for (const Piece& piece : pieces_) widest = std::max(widest, width_of(piece));
  return {widest, lines_->minimumSize().height()};
}

void FlowLine::lay_out() {
  std::vector<std::size_t> first;
  int taken = 0;
  for (std::size_t at = 0; at < pieces_.size(); ++at) {
    const int wanted = width_of(pieces_[at]);
    const int with_next = pieces_[at].stays_with_next && at + 1 < pieces_.size() ? between_pieces + width_of(pieces_[at + 1]) : 0;
    const bool begins = at == 0 || pieces_[at].begins_line || taken + between_pieces + wanted + with_next > width();
    if (begins) first.push_back(at);
    taken = begins ? wanted : taken + between_pieces + wanted;
  }
  if (first == first_of_line_) return;
  first_of_line_ = first;
  while (QLayoutItem* line = lines_->takeAt(0)) delete line;
  for (std::size_t i = 0; i < first.size(); ++i) {
    auto* line = new QHBoxLayout;
    line->setSpacing(between_pieces);
    lines_->addLayout(line);
    int stretch = 0;
    for (std::size_t at = first[i]; at < (i + 1 < first.size() ? first[i + 1] : pieces_.size()); ++at) {
      if (pieces_[at].label != nullptr) line->addWidget(pieces_[at].label);
      line->addWidget(pieces_[at].field, pieces_[at].stretch);
      stretch += pieces_[at].stretch;
    }
    if (stretch == 0) line->addStretch(1);
  }
  updateGeometry();
}

void FlowLine::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  lay_out();
}

void FlowLine::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::FontChange && event->type() != QEvent::StyleChange) return;
  // The labels get their font after this does.
  QTimer::singleShot(0, this, [this] {
    for (const Piece& piece : pieces_) give_room(piece);
    lay_out();
    updateGeometry();
  });
  for (const Piece& piece : pieces_) give_room(piece);
  lay_out();
  updateGeometry();
}

}  // namespace gritwright::desktop
