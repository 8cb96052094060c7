#include "record_form.hpp"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <utility>

#include "form_row.hpp"
#include "text.hpp"

namespace gritwright::desktop {

RecordForm::RecordForm(QWidget* parent) : QWidget(parent), grid_(form_grid(this)) {
}

QLineEdit* RecordForm::add(Row row) {
  auto* field = new QLineEdit(this);
  field->setObjectName(row.object_name);
  field->setPlaceholderText(row.hint);
  if (row.kind != Kind::words) field->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  const auto [label, unit, fault] = add_form_row(*grid_, *field, row.label);
  const auto at = rows_.size();
  connect(field, &QLineEdit::textEdited, this, [this, at](const QString& text) { typed(at, text); });
  connect(field, &QLineEdit::editingFinished, this, &RecordForm::typing_ended);
  connect(field, &QLineEdit::returnPressed, this, [this, at] { move_on(at); });
  rows_.push_back({std::move(row), field, label, unit, fault});
  return field;
}

void RecordForm::add(const QString& label_text, QWidget* widget) {
  add_plain_row(*grid_, *widget, label_text);
}

void RecordForm::set_units(UnitSystem units) {
  units_ = units;
  refresh(true);
}

void RecordForm::typed(std::size_t at, const QString& text) {
  show_fault(rows_[at], rows_[at].row.take(kept_text(text, rows_[at].row.kind, units_)));
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
  const QString fault = sentences.join(QStringLiteral("; "));
  shown.fault->setText(fault);
  shown.fault->setVisible(!fault.isEmpty());
  shown.field->setAccessibleDescription(fault.isEmpty() ? shown.row.hint : fault);
  shown.field->setToolTip(fault.isEmpty() ? shown.row.hint : fault);
}

void RecordForm::refresh(bool other) {
  for (const Shown& shown : rows_) {
    if (shown.row.is_shown) {
      const bool visible = shown.row.is_shown();
      shown.label->setVisible(visible);
      shown.field->setVisible(visible);
      shown.unit->setVisible(visible);
      if (!visible) show_fault(shown, {});
    }
    const QString unit = unit_of(shown.row.kind, units_);
    const QString label = shown.row.label_now ? shown.row.label_now() : shown.row.label;
    shown.label->setText(label);
    shown.unit->setText(unit);
    QString name = label;
    name.remove(u'&');
    shown.field->setAccessibleName(unit.isEmpty() ? name : tr("%1 in %2").arg(name, unit));
    // What is being typed, or stands there with a fault, is left alone while it is the same record.
    if (!other && (shown.field->hasFocus() || !shown.fault->text().isEmpty())) continue;
    shown.field->setText(shown_text(shown.row.show(), shown.row.kind, units_));
    show_fault(shown, {});
  }
}

}  // namespace gritwright::desktop
