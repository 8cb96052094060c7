#include "jump_box.hpp"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace gritwright::desktop {

bool fits(const QString& text, const QString& words) {
  for (const QString& word : words.split(u' ', Qt::SkipEmptyParts)) {
    if (!text.contains(word, Qt::CaseInsensitive)) return false;
  }
  return true;
}

JumpBox::JumpBox(Find find, QWidget* parent) : QDialog(parent), find_(std::move(find)), words_(new QLineEdit(this)), list_(new QListWidget(this)) {
  setObjectName(QStringLiteral("jump_box"));
  setWindowTitle(tr("Go to"));
  auto* layout = new QVBoxLayout(this);
  auto* label = new QLabel(tr("Bag, mix, tree or what to do"), this);
  label->setBuddy(words_);
  words_->setObjectName(QStringLiteral("jump_words"));
  words_->setAccessibleName(label->text());
  words_->setPlaceholderText(tr("like K-07, or pumice"));
  words_->setMinimumHeight(28);
  words_->installEventFilter(this);
  list_->setObjectName(QStringLiteral("jump_list"));
  list_->setAccessibleName(tr("What fits"));
  list_->setUniformItemSizes(true);
  layout->addWidget(label);
  layout->addWidget(words_);
  layout->addWidget(list_, 1);
  connect(words_, &QLineEdit::textChanged, this, &JumpBox::search);
  connect(words_, &QLineEdit::returnPressed, this, &JumpBox::go);
  connect(list_, &QListWidget::itemActivated, this, &JumpBox::go);
}

void JumpBox::open_empty() {
  const QSize around = parentWidget() != nullptr ? parentWidget()->size() : screen()->availableSize();
  resize(QSize(60 * fontMetrics().averageCharWidth(), 30 * fontMetrics().height()).boundedTo(around * 9 / 10));
  words_->clear();
  search();
  show();
  words_->setFocus();
}

// The arrow keys move in the list while the line keeps the focus.
bool JumpBox::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return QDialog::eventFilter(watched, event);
  const int key = static_cast<QKeyEvent*>(event)->key();
  if (key != Qt::Key_Down && key != Qt::Key_Up) return QDialog::eventFilter(watched, event);
  list_->setCurrentRow(std::clamp(list_->currentRow() + (key == Qt::Key_Down ? 1 : -1), 0, std::max(0, list_->count() - 1)));
  return true;
}

void JumpBox::search() {
  targets_ = find_(words_->text().trimmed());
  list_->clear();
  const QSize row(0, std::max(26, fontMetrics().height() + 8));
  const auto add = [this, row](const QString& text) { (new QListWidgetItem(text, list_))->setSizeHint(row); };
  for (const Target& target : targets_) add(target.text);
  if (targets_.empty()) add(tr("nothing fits"));
  list_->setCurrentRow(0);
}

void JumpBox::go() {
  const auto row = static_cast<std::size_t>(std::max(0, list_->currentRow()));
  if (row >= targets_.size()) return;
  const Target target = targets_[row];
  hide();
  target.go();
}

}  // namespace gritwright::desktop
