#include "two_line_check.hpp"

#include <QEvent>
#include <QResizeEvent>
#include <QStyleOptionButton>

#include "text.hpp"

namespace gritwright::desktop {

TwoLineCheck::TwoLineCheck(const QString& words, QWidget* parent) : QCheckBox(words, parent), words_(words) {
  setAccessibleName(words);
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);  // by itself it would never be narrower than one line
}

QSize TwoLineCheck::size_with(const QString& words) const {
  ensurePolished();
  QStyleOptionButton option;
  initStyleOption(&option);
  return style()->sizeFromContents(QStyle::CT_CheckBox, &option, fontMetrics().size(Qt::TextShowMnemonic, words), this);
}

QSize TwoLineCheck::sizeHint() const { return size_with(words_); }

QSize TwoLineCheck::minimumSizeHint() const {
  const QSize narrow = size_with(in_two_lines(words_));
  return {narrow.width(), text() == words_ ? sizeHint().height() : narrow.height()};
}

void TwoLineCheck::break_words() {
  const QString now = width() < sizeHint().width() ? in_two_lines(words_) : words_;
  if (now != text()) setText(now);
}

void TwoLineCheck::resizeEvent(QResizeEvent* event) {
  QCheckBox::resizeEvent(event);
  break_words();
}

void TwoLineCheck::changeEvent(QEvent* event) {
  QCheckBox::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) break_words();
}

}  // namespace gritwright::desktop
