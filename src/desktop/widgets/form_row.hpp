#pragma once
#include <QString>

class QGridLayout;
class QLabel;
class QWidget;

namespace gritwright::desktop {

/// What stands beside a field of a form; the fault below it is hidden until there is one.
struct FormRow {
  QLabel* label;
  QLabel* unit;
  QLabel* fault;
};

/// The grid of a form: label, field, unit.
[[nodiscard]] QGridLayout* form_grid(QWidget* form);

/// Puts `field` into a new row, its label as buddy.
FormRow add_form_row(QGridLayout& grid, QWidget& field, const QString& label);

/// The same for a widget without unit and fault.
void add_plain_row(QGridLayout& grid, QWidget& widget, const QString& label);

}  // namespace gritwright::desktop
