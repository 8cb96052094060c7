#include "record_form.hpp"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <utility>

#include "text.hpp"

namespace gritwright::desktop {

RecordForm::RecordForm(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setHorizontalSpacing(8);
  grid_->setVerticalSpacing(4);
  grid_->setColumnStretch(1, 1);
}

QLineEdit* RecordForm::add(Row row) {
  auto* field = new QLineEdit(this);
  field->setObjectName(row.object_name);
  field->setPlaceholderText(row.hint);
  field->setMinimumHeight(26);
  if (row.kind != Kind::words) field->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  auto* label = new QLabel(row.label, this);
  label->setBuddy(field);
  auto* unit = new QLabel(this);
  unit->setProperty("role", "muted");
  auto* fault = new QLabel(this);
  fault->setProperty("role", "fault");
  fault->setWordWrap(true);
  fault->hide();
  const int line = grid_->rowCount();
  grid_->addWidget(label, line, 0);
  grid_->addWidget(field, line, 1);
  grid_->addWidget(unit, line, 2);
  grid_->addWidget(fault, line + 1, 0, 1, 3);
  const auto at = rows_.size();
  connect(field, &QLineEdit::textEdited, this, [this, at](const QString& text) { typed(at, text); });
  connect(field, &QLineEdit::editingFinished, this, &RecordForm::typing_ended);
  rows_.push_back({std::move(row), field, unit, fault});
  return field;
}

void RecordForm::add(const QString& label_text, QWidget* widget) {
  auto* label = new QLabel(label_text, this);
  label->setBuddy(widget);
  widget->setMinimumHeight(26);
  const int line = grid_->rowCount();
  grid_->addWidget(label, line, 0);
  grid_->addWidget(widget, line, 1, 1, 2);
}

void RecordForm::set_units(UnitSystem units) {
  units_ = units;
  refresh(true);
}

void RecordForm::typed(std::size_t at, const QString& text) {
  show_fault(rows_[at], rows_[at].row.take(kept_text(text, rows_[at].row.kind, units_)));
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
    const QString unit = unit_of(shown.row.kind, units_);
    shown.unit->setText(unit);
    QString name = shown.row.label;
    name.remove(u'&');
    shown.field->setAccessibleName(unit.isEmpty() ? name : tr("%1 in %2").arg(name, unit));
    // What is being typed, or stands there with a fault, is left alone while it is the same record.
    if (!other && (shown.field->hasFocus() || !shown.fault->text().isEmpty())) continue;
    shown.field->setText(shown_text(shown.row.show(), shown.row.kind, units_));
    show_fault(shown, {});
  }
}

}  // namespace gritwright::desktop
