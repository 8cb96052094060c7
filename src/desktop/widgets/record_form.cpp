#include "record_form.hpp"

#include <QEvent>
#include <QFocusEvent>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QSettings>
#include <algorithm>
#include <utility>

#include "form_row.hpp"
#include "text.hpp"
#include "undo_keys.hpp"

namespace gritwright::desktop {

RecordForm::RecordForm(QWidget* parent) : QWidget(parent), grid_(form_grid(this)) {
}

QLineEdit* RecordForm::add(Row row) {
  auto* field = new QLineEdit(this);
  field->setObjectName(row.object_name);
  field->setPlaceholderText(row.hint);
  if (row.kind != Kind::words) field->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  const FormRow parts = add_form_row(*grid_, *field, row.label, !unit_of(row.kind, UnitSystem::metric).isEmpty());
  const auto at = rows_.size();
  connect(field, &QLineEdit::textEdited, this, [this, at](const QString& text) { typed(at, text); });
  connect(field, &QLineEdit::editingFinished, this, [this, at] {
    take_waiting(rows_[at]);
    if (!gone_ && rows_[at].parts.fault->text().isEmpty()) rows_[at].typed_in = false;
    emit typing_ended();
  });
  connect(field, &QLineEdit::returnPressed, this, [this, at] { move_on(at); });
  field->installEventFilter(this);
  rows_.push_back({std::move(row), field, parts});
  return field;
}

void RecordForm::add(const QString& label_text, QWidget* widget) {
  add_plain_row(*grid_, *widget, label_text);
}

void RecordForm::set_units(UnitSystem units) {
  end_typing();
  for (const Shown& shown : rows_) {
    const QString hint = hint_text(shown.row.hint, units);
    if (hint != hint_text(shown.row.hint, units_)) set_hint(shown.parts, *shown.field, hint);
  }
  units_ = units;
  refresh(true);
}

void RecordForm::typed(std::size_t at, const QString& text) {
  Shown& shown = rows_[at];
  shown.typed_in = true;
  shown.kept = false;
  if (gone_) return;
  if (changed_elsewhere(shown)) return tell_change_elsewhere(shown);
  if (shown.row.waits_for_end && shown.row.waits_for_end()) {
    shown.waits = true;
    keep(shown, text);
    return show_fault(shown, QString());
  }
  take(shown, text);
}

void RecordForm::take_waiting(Shown& shown) {
  if (!shown.waits || gone_ || saving_) return;
  if (changed_elsewhere(shown)) tell_change_elsewhere(shown);
  else take(shown, shown.field->text());
  shown.waits = false;
}

void RecordForm::end_typing() {
  for (Shown& shown : rows_) {
    take_waiting(shown);
    if (!gone_ && shown.parts.fault->text().isEmpty()) shown.typed_in = false;
  }
}

void RecordForm::take(Shown& shown, const QString& text) {
  // Saving makes the page refresh this form: what it finds then is its own doing.
  saving_ = true;
  show_fault(shown, shown.row.take(kept_text(text, shown.row.kind, units_)));
  saving_ = false;
  shown.known = shown.row.show();
  shown.kept = false;
  if (shown.parts.fault->text().isEmpty()) forget_kept(shown);
}

void RecordForm::keep(const Shown& shown, const QString& text) {
  if (shown.row.kept_under) QSettings().setValue(shown.row.kept_under(), text);
}

void RecordForm::forget_kept(const Shown& shown) {
  if (shown.row.kept_under) QSettings().remove(shown.row.kept_under());
}

void RecordForm::forget_typing() {
  for (Shown& shown : rows_)
    if (shown.parts.fault->text().isEmpty()) shown.typed_in = false;
}

bool RecordForm::has_typing() const { return std::ranges::any_of(rows_, &Shown::typed_in); }

void RecordForm::set_gone(bool gone) {
  gone_ = gone;
  // What stood there was said of a record that was there.
  if (gone)
    for (const Shown& shown : rows_) show_fault(shown, QString());
}

QStringList RecordForm::typed_texts() const {
  QStringList texts;
  for (const Shown& shown : rows_)
    if (shown.typed_in) texts << shown.field->text();
  return texts;
}

void RecordForm::save_typed() {
  std::vector<std::pair<Shown*, QString>> typed;
  for (Shown& shown : rows_)
    if (shown.typed_in) typed.emplace_back(&shown, shown.field->text());
  // Saving one makes the page show the others as the record has them.
  for (const auto& [shown, text] : typed) {
    if (shown->field->text() != text) shown->field->setText(text);
    shown->typed_in = true;
    take(*shown, text);
    shown->waits = false;
  }
}

void RecordForm::drop_typing() {
  for (Shown& shown : rows_) {
    shown.typed_in = shown.waits = false;
    forget_kept(shown);
    show_fault(shown, QString());
  }
}

bool RecordForm::changed_elsewhere(const Shown& shown) { return shown.row.show() != shown.known; }

void RecordForm::tell_change_elsewhere(const Shown& shown) const {
  const QString there = shown_text(shown.row.show(), shown.row.kind, units_);
  show_fault(shown, there.isEmpty() ? tr("Emptied elsewhere meanwhile, so what you typed is not saved yet. Enter saves yours, Escape empties the field.")
                                    : tr("Changed elsewhere meanwhile to \u201c%1\u201d, so what you typed is not saved yet. Enter saves yours, Escape takes the other.").arg(there));
}

void RecordForm::show_again(Shown& shown) {
  shown.known = shown.row.show();
  shown.typed_in = shown.waits = shown.kept = false;
  const QString text = shown_text(shown.known, shown.row.kind, units_);
  // Where nothing changes the cursor and what is selected stay.
  if (shown.field->text() != text) {
    shown.field->setText(text);
    // Long words are read from their beginning.
    if (!shown.field->hasFocus()) shown.field->setCursorPosition(0);
  }
  show_fault(shown, shown.row.missing ? shown.row.missing() : Problems{});
  if (shown.row.kept_under) show_kept(shown);
}

void RecordForm::show_kept(Shown& shown) {
  const QVariant kept = QSettings().value(shown.row.kept_under());
  if (!kept.isValid() || kept.toString() == shown.field->text()) return;
  shown.field->setText(kept.toString());
  shown.typed_in = shown.kept = true;
  show_fault(shown, tr("Typed before and not saved yet. Enter saves it, Escape takes back what was there."));
}

bool RecordForm::eventFilter(QObject* watched, QEvent* event) {
  // A line claims the keys of undo even where it has nothing to undo: then they are the window's.
  if (const auto* const line = qobject_cast<QLineEdit*>(watched); line != nullptr && is_undo_of_window(*line, *event)) {
    event->ignore();
    return true;
  }
  // A line does not take it for the end of typing when another window comes to the front, from which this one need not come back.
  if (event->type() == QEvent::FocusOut && static_cast<QFocusEvent*>(event)->reason() == Qt::ActiveWindowFocusReason) {
    const auto left = std::ranges::find(rows_, watched, &Shown::field);
    if (left != rows_.end()) take_waiting(*left);
  }
  if (event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    const auto at = std::ranges::find(rows_, watched, &Shown::field);
    if (at != rows_.end() && !gone_ && at->typed_in && (at->kept || changed_elsewhere(*at))) {
      if (key == Qt::Key_Escape) {
        forget_kept(*at);
        show_again(*at);
        return true;
      }
      if (key == Qt::Key_Return || key == Qt::Key_Enter) take(*at, at->field->text());
    }
  }
  return QWidget::eventFilter(watched, event);
}

void RecordForm::move_on(std::size_t from) {
  for (std::size_t at = from + 1; at < rows_.size(); ++at) {
    if (!rows_[at].field->isVisible()) continue;
    rows_[at].field->setFocus(Qt::TabFocusReason);
    return rows_[at].field->selectAll();
  }
}

void RecordForm::show_fault(const Shown& shown, const Problems& problems) const {
  QStringList sentences;
  for (const Problem& problem : problems) sentences << sentence_text(problem, units_);
  show_fault(shown, semicolon_list(sentences));
}

void RecordForm::show_fault(const Shown& shown, const QString& fault) const {
  shown.parts.fault->setText(fault);
  shown.parts.fault->setVisible(!fault.isEmpty());
  const QString words = fault.isEmpty() ? hint_text(shown.row.hint, units_) : fault;
  shown.field->setAccessibleDescription(words);
  shown.field->setToolTip(words);
}

void RecordForm::refresh(bool other) {
  if (gone_) return;
  for (Shown& shown : rows_) {
    if (shown.row.is_shown) {
      const bool visible = shown.row.is_shown();
      shown.parts.label->setVisible(visible);
      shown.field->setVisible(visible);
      shown.parts.unit->setVisible(visible);
      if (!visible) show_fault(shown, QString());
    }
    const QString unit = unit_of(shown.row.kind, units_);
    const QString label = shown.row.label_now ? shown.row.label_now() : shown.row.label;
    shown.parts.label->setText(label);
    shown.parts.unit->setText(unit);
    QString name = label;
    name.remove(u'&');
    shown.field->setAccessibleName(unit.isEmpty() ? name : tr("%1 in %2").arg(name, unit));
    // What is being typed, or stands there with a fault, is left alone while it is the same record.
    const bool typing = shown.typed_in && (shown.waits || shown.field->hasFocus() || !shown.parts.fault->text().isEmpty());
    if (other || !typing) show_again(shown);
    else if (!saving_ && changed_elsewhere(shown)) tell_change_elsewhere(shown);
  }
}

}  // namespace gritwright::desktop
