#include "gone_notice.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "record_form.hpp"
#include "text.hpp"

namespace gritwright::desktop {

GoneNotice::GoneNotice(RecordBook& book, const QString& prefix, std::vector<RecordForm*> forms, std::function<bool()> more_typed, QWidget* parent)
    : QFrame(parent), book_(book), forms_(std::move(forms)), more_typed_(std::move(more_typed)), words_(new QLabel(this)) {
  setObjectName(prefix + QStringLiteral("_gone"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  words_->setObjectName(prefix + QStringLiteral("_gone_words"));
  words_->setProperty("role", "fault");
  words_->setTextFormat(Qt::PlainText);
  words_->setWordWrap(true);
  layout->addWidget(words_);
  auto* buttons = new QHBoxLayout;
  const auto button = [&](const char* object_name, const QString& text) {
    auto* made = new QPushButton(text, this);
    made->setObjectName(prefix + QLatin1String(object_name));
    made->setAccessibleName(text);
    made->setMinimumHeight(28);
    buttons->addWidget(made);
    return made;
  };
  connect(button("_gone_bring_back", tr("Bring it back with what I typed")), &QPushButton::clicked, this, &GoneNotice::bring_back);
  connect(button("_gone_let_go", tr("Let it go")), &QPushButton::clicked, this, [this] {
    stop_holding();
    emit this->let_go();
  });
  buttons->addStretch(1);
  layout->addLayout(buttons);
  hide();
}

bool GoneNotice::has_typing() const {
  return std::ranges::any_of(forms_, &RecordForm::has_typing) || (more_typed_ && more_typed_());
}

bool GoneNotice::hold(const RecordRef& ref, const QString& name) {
  if (holding_ && ref == ref_) return true;
  if (ref.id.empty() || !has_typing()) return false;
  // A list can lose a record that is there, as when another one is looked for.
  if (book_.workbook().find(ref)) return false;
  put_back_ = {};
  begin(ref, name.isEmpty() ? to_qt(ref.id) : name);
  return true;
}

bool GoneNotice::hold_part(const RecordRef& part, const QString& name, std::function<void()> put_back) {
  if (holding_ && part == ref_) return true;
  if (!has_typing()) return false;
  put_back_ = std::move(put_back);
  begin(part, name);
  return true;
}

void GoneNotice::begin(const RecordRef& ref, const QString& name) {
  ref_ = ref;
  name_ = name;
  holding_ = true;
  for (RecordForm* form : forms_) form->set_gone(true);
  words_->setText(tr("%1 is not in the record any more: it was removed or undone meanwhile, perhaps in another window. What you typed stands here and is not saved yet.").arg(name_));
  show();
  emit book_.told(words_->text());
}

void GoneNotice::is_back() {
  if (!holding_) return;
  holding_ = false;
  hide();
  for (RecordForm* form : forms_) {
    form->set_gone(false);
    form->save_typed();
  }
}

void GoneNotice::stop_holding() {
  holding_ = false;
  hide();
  for (RecordForm* form : forms_) {
    form->set_gone(false);
    form->drop_typing();
  }
}

void GoneNotice::leave() {
  if (!holding_) return;
  QStringList typed;
  for (const RecordForm* form : forms_) typed << form->typed_texts();
  const QString name = name_;
  stop_holding();
  if (!typed.isEmpty()) emit book_.told(not_saved_words(name, semicolon_list(typed)));
}

QString GoneNotice::not_saved_words(const QString& name, const QString& typed) { return tr("What was typed into %1 and not saved: %2").arg(name, typed); }

// The page saves what was typed when it hears that the record is there.
void GoneNotice::bring_back() {
  if (put_back_) return put_back_();
  const auto last = book_.workbook().find_even_deleted(ref_);
  if (!last) return;
  Change change;
  change.label = tr("%1 brought back").arg(name_).toStdString();
  change.edits.push_back({ref_, last->revision, last->record});
  (void)book_.apply(std::move(change));
}

}  // namespace gritwright::desktop
