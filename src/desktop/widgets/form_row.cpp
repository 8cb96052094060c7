#include "form_row.hpp"

#include <QGridLayout>
#include <QLabel>

namespace gritwright::desktop {

namespace {

constexpr int least_height = 26;  // a target for tired fingers

QLabel* buddy(QWidget& widget, const QString& text) {
  auto* label = new QLabel(text, widget.parentWidget());
  label->setBuddy(&widget);
  widget.setMinimumHeight(least_height);
  return label;
}

}  // namespace

QGridLayout* form_grid(QWidget* form) {
  auto* grid = new QGridLayout(form);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(4);
  grid->setColumnStretch(1, 1);
  return grid;
}

FormRow add_form_row(QGridLayout& grid, QWidget& field, const QString& label) {
  QWidget* const form = field.parentWidget();
  FormRow row{buddy(field, label), new QLabel(form), new QLabel(form)};
  row.unit->setProperty("role", "muted");
  row.fault->setProperty("role", "fault");
  row.fault->setWordWrap(true);
  row.fault->hide();
  const int line = grid.rowCount();
  grid.addWidget(row.label, line, 0);
  grid.addWidget(&field, line, 1);
  grid.addWidget(row.unit, line, 2);
  grid.addWidget(row.fault, line + 1, 0, 1, 3);
  return row;
}

void add_plain_row(QGridLayout& grid, QWidget& widget, const QString& label) {
  const int line = grid.rowCount();
  grid.addWidget(buddy(widget, label), line, 0);
  grid.addWidget(&widget, line, 1, 1, 2);
}

}  // namespace gritwright::desktop
