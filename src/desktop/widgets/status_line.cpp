#include "status_line.hpp"

#include <QEvent>
#include <QLabel>
#include <QPainter>
#include <QStyle>
#include <QStyleOption>
#include <algorithm>

namespace gritwright::desktop {

namespace {

constexpr int beside = 6;
constexpr int above_and_below = 8;
constexpr int most_lines = 4;  // a sentence is no page

}  // namespace

StatusLine::StatusLine(QWidget* parent) : QStatusBar(parent) {
  connect(this, &QStatusBar::messageChanged, this, [this](const QString& sentence) {
    setAccessibleDescription(sentence);
    setToolTip(sentence);
    give_room();
  });
}

void StatusLine::keep_words(const QString& words, const char* object_name) {
  words_ = new QLabel(words, this);
  words_->setObjectName(QLatin1String(object_name));
  words_->setWordWrap(true);
  addPermanentWidget(words_);
  give_room();
}

int StatusLine::width_for_words() const {
  constexpr int around_grip = 16;
  return std::max(1, width() - 2 * beside - style()->pixelMetric(QStyle::PM_SizeGripSize, nullptr, this) - around_grip);
}

QRect StatusLine::sentence_room() const {
  const bool shared = words_ != nullptr && !words_->isHidden();
  return {beside, 0, width_for_words() - (shared ? words_->width() + 2 * beside : 0), height()};
}

void StatusLine::give_room() {
  const QFontMetrics metrics(font());
  const QString sentence = currentMessage();
  const int width = width_for_words();
  const auto height_in = [&](const QString& text, int room) {
    return std::min(most_lines * metrics.lineSpacing(), metrics.boundingRect(QRect(0, 0, room, 10000), Qt::TextWordWrap, text).height());
  };
  int height = metrics.height();
  if (words_ != nullptr) {
    const int wide = std::min(width, metrics.horizontalAdvance(words_->text()) + 2);
    words_->setFixedWidth(wide);
    words_->setVisible(sentence.isEmpty() || metrics.horizontalAdvance(sentence) + 2 * beside + wide <= width);
    height = std::max(height, height_in(words_->text(), wide));
  }
  height = std::max(height, height_in(sentence, sentence_room().width()));
  setMinimumHeight(height + above_and_below);
  update();
}

void StatusLine::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  QStyleOption option;
  option.initFrom(this);
  style()->drawPrimitive(QStyle::PE_PanelStatusBar, &option, &painter, this);
  painter.setPen(palette().color(foregroundRole()));
  const QRect room = sentence_room();
  const bool fits = fontMetrics().boundingRect(QRect(0, 0, room.width(), 10000), Qt::TextWordWrap, currentMessage()).height() <= room.height();
  const QString shown = fits ? currentMessage() : fontMetrics().elidedText(currentMessage(), Qt::ElideRight, (most_lines - 1) * room.width());
  painter.drawText(QStyle::visualRect(layoutDirection(), rect(), room), Qt::AlignLeading | Qt::AlignVCenter | Qt::TextWordWrap, shown);
}

void StatusLine::resizeEvent(QResizeEvent* event) {
  QStatusBar::resizeEvent(event);
  give_room();
}

void StatusLine::changeEvent(QEvent* event) {
  QStatusBar::changeEvent(event);
  if (event->type() == QEvent::FontChange) give_room();
}

}  // namespace gritwright::desktop
