#include "field_form.hpp"

#include <QGridLayout>
#include <QLabel>
#include <utility>

#include "form_row.hpp"
#include "text.hpp"

namespace gritwright::desktop {

QString fault_sentences(const Faults& faults, const std::vector<std::string>& places, UnitSystem units) {
  QStringList sentences;
  for (const std::string& place : places) {
    const auto [first, last] = faults.equal_range(place);
    for (auto fault = first; fault != last; ++fault) sentences << sentence_text(fault->second, units);
  }
  sentences.removeDuplicates();
  return semicolon_list(sentences);
}

FieldForm::FieldForm(Bench& bench, std::function<const Faults*()> faults, QWidget* parent)
    : QWidget(parent), bench_(bench), faults_(std::move(faults)), grid_(form_grid(this)) {
  connect(&bench_, &Bench::changed, this, &FieldForm::refresh);
  connect(&bench_, &Bench::units_changed, this, &FieldForm::refresh);
  connect(&bench_, &Bench::current_component_changed, this, &FieldForm::refresh);
}

TypedField* FieldForm::add(Row row) {
  auto* field = new TypedField(bench_, row.kind, row.what, row.object_name, row.text, this);
  field->setObjectName(row.object_name);
  field->setPlaceholderText(row.hint);
  const FormRow parts = add_form_row(*grid_, *field, row.label);
  // Enter goes on, as it does in the stack of sieves; from the last field the form's owner says where.
  connect(field, &QLineEdit::returnPressed, this, [this, at = rows_.size()] {
    for (std::size_t next = at + 1; next < rows_.size(); ++next) {
      TypedField& there = *rows_[next].field;
      if (!there.isVisible() || !there.isEnabled()) continue;
      there.setFocus(Qt::TabFocusReason);
      return there.selectAll();
    }
  });
  rows_.push_back({std::move(row), field, parts});
  refresh_row(rows_.back());
  return field;
}

void FieldForm::add(const QString& label_text, QWidget* widget) {
  add_plain_row(*grid_, *widget, label_text);
}

void FieldForm::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void FieldForm::refresh() {
  // Most forms are out of sight while one is typed into; they are read again when they come into view.
  if (!isVisible()) return;
  for (const Shown& shown : rows_) refresh_row(shown);
}

void FieldForm::refresh_row(const Shown& shown) {
  const Faults* const faults = faults_();
  const bool visible = !shown.row.is_shown || shown.row.is_shown();
  const QString fault = faults != nullptr && visible ? fault_sentences(*faults, shown.row.fault_places, bench_.units()) : QString();
  if (shown.row.label_now) shown.parts.label->setText(shown.row.label_now());
  const QString hint = hint_text(shown.row.hint, bench_.units());
  set_hint(shown.parts, *shown.field, shown.row.placeholder ? shown.row.placeholder() : hint);
  const QString unit = unit_of(shown.row.kind, bench_.units());
  shown.parts.unit->setText(unit);
  QString name = shown.parts.label->text();
  name.remove(u'&');
  shown.field->setAccessibleName(unit.isEmpty() ? name : tr("%1 in %2").arg(name, unit));
  shown.field->setAccessibleDescription(fault.isEmpty() ? hint : fault);
  shown.field->setToolTip(fault.isEmpty() ? hint : fault);
  shown.parts.fault->setText(fault);
  shown.parts.label->setVisible(visible);
  shown.field->setVisible(visible);
  shown.parts.unit->setVisible(visible);
  shown.parts.fault->setVisible(visible && !fault.isEmpty());
}

}  // namespace gritwright::desktop
