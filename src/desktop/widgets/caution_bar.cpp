#include "caution_bar.hpp"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QResizeEvent>
#include <QSettings>
#include <QToolButton>
#include <algorithm>
#include <utility>

#include "wrapped_label.hpp"

namespace gritwright::desktop {

namespace {

QString setting_of(const QString& topic) { return QStringLiteral("cautions_put_away/") + topic; }

}  // namespace

CautionBar::CautionBar(QString topic, const QString& title, const QString& text, QWidget* parent)
    : QFrame(parent), topic_(std::move(topic)), title_(title), text_(text), grid_(new QGridLayout(this)), words_(new WrappedLabel(this)), more_(new QToolButton(this)), put_away_(new QToolButton(this)) {
  setObjectName(QStringLiteral("caution"));
  grid_->setContentsMargins(10, 6, 6, 6);
  grid_->setColumnStretch(0, 1);
  words_->setTextFormat(Qt::RichText);
  words_->setObjectName(QStringLiteral("caution_text"));
  more_->setObjectName(QStringLiteral("whole_caution_") + topic_);
  put_away_->setObjectName(QStringLiteral("put_away_") + topic_);
  put_away_->setText(tr("Got it"));
  put_away_->setAccessibleName(tr("Put away the caution: %1").arg(title));
  for (QToolButton* button : {more_, put_away_}) button->setMinimumHeight(26);
  arrange(Room::ample);
  // It stays where it is: pressed twice the caution is folded again, not put away.
  connect(more_, &QToolButton::clicked, this, [this] { arrange(room_ == Room::little ? Room::unfolded : Room::little); });
  connect(put_away_, &QToolButton::clicked, this, [this] {
    QSettings().setValue(setting_of(topic_), true);
    hide();
  });
  setVisible(!QSettings().value(setting_of(topic_)).toBool());
}

void CautionBar::restore() {
  QSettings().remove(setting_of(topic_));
  show();
}

QString CautionBar::first_sentence() const {
  for (const QString& end : {QStringLiteral(". "), QStringLiteral("\u3002")})
    if (const auto at = text_.indexOf(end); at >= 0 && at + end.size() < text_.size()) return text_.left(at + 1) + QStringLiteral("\u00a0\u2026");
  return text_;
}

bool CautionBar::is_better_folded(int width) const {
  const QMargins around = grid_->contentsMargins();
  const int room = width - around.left() - around.right();
  const auto height_in = [&](const QString& words, int wide) { return fontMetrics().boundingRect(0, 0, std::max(1, wide), 10000, Qt::TextWordWrap, title_ + u' ' + words).height(); };
  const int whole = height_in(text_, room - grid_->horizontalSpacing() - put_away_->sizeHint().width());
  const int folded = height_in(first_sentence(), room) + grid_->verticalSpacing() + put_away_->sizeHint().height();
  constexpr int most_lines = 4;
  const int line = fontMetrics().lineSpacing();
  return first_sentence() != text_ && whole > most_lines * line && whole - folded >= 3 * line / 2;
}

void CautionBar::fit() {
  // A scroll bar may come or go with the lines that are folded away: that must not unfold them again.
  constexpr int scroll_bar = 24;
  if (room_ == Room::ample && is_better_folded(width())) arrange(Room::little);
  else if (room_ != Room::ample && !is_better_folded(width()) && !is_better_folded(width() - scroll_bar)) arrange(Room::ample);
}

void CautionBar::arrange(Room room) {
  room_ = room;
  words_->setText(QStringLiteral("<b>%1</b> %2").arg(title_.toHtmlEscaped(), (room == Room::little ? first_sentence() : text_).toHtmlEscaped()));
  words_->setAccessibleDescription(room == Room::little ? text_ : QString());
  more_->setVisible(room != Room::ample);
  more_->setText(room == Room::little ? tr("All of it") : tr("Less of it"));
  more_->setAccessibleName(room == Room::little ? tr("All of the caution: %1").arg(title_) : tr("Less of the caution: %1").arg(title_));
  for (QWidget* part : {static_cast<QWidget*>(words_), static_cast<QWidget*>(more_), static_cast<QWidget*>(put_away_)}) grid_->removeWidget(part);
  const bool beside = room == Room::ample;
  grid_->addWidget(words_, 0, 0, 1, beside ? 1 : 3);
  if (!beside) grid_->addWidget(more_, 1, 1);
  grid_->addWidget(put_away_, beside ? 0 : 1, beside ? 1 : 2, Qt::AlignTop);
}

void CautionBar::resizeEvent(QResizeEvent* event) {
  QFrame::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) fit();
}

void CautionBar::changeEvent(QEvent* event) {
  QFrame::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

}  // namespace gritwright::desktop
