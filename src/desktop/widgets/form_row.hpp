#pragma once
#include <QString>

class QGridLayout;
class QLabel;
class QLineEdit;
class QWidget;

namespace gritwright::desktop {

/// What stands beside a field of a form; the fault below it is hidden until there is one.
struct FormRow {
  QLabel* label;
  QLabel* unit;
  QLabel* fault;
  QLabel* hint;  ///< below the field where its hint has no room in it
};

/// The grid of a form: label, field, unit.
[[nodiscard]] QGridLayout* form_grid(QWidget* form);

/// Puts `field` into a new row, its label as buddy. Without a unit there is room for more words.
FormRow add_form_row(QGridLayout& grid, QLineEdit& field, const QString& label, bool has_unit = true);

/// Gives a field another hint.
void set_hint(const FormRow& row, QLineEdit& field, const QString& hint);

/// The same for a widget without unit and fault; its label.
QLabel* add_plain_row(QGridLayout& grid, QWidget& widget, const QString& label);

}  // namespace gritwright::desktop
