#pragma once
#include <QWidget>
#include <functional>
#include <vector>

#include "form_row.hpp"
#include "typed_field.hpp"

class QGridLayout;

namespace gritwright::desktop {

/// Rows of label, field and unit, each with its fault in words below it. Every field has a buddy, a name and an object name.
class FieldForm : public QWidget {
  Q_OBJECT
 public:
  struct Row {
    QString object_name;
    QString label;  ///< with its mnemonic
    Kind kind = Kind::words;
    std::function<QString()> what;  ///< names the thing in undo labels
    TextPlace text;
    std::vector<std::string> fault_places;
    QString hint;                          ///< placeholder, and what it means when left empty
    std::function<bool()> is_shown;        ///< empty: always
    std::function<QString()> placeholder;  ///< for hints that depend on the state, e.g. the catalogue's typical figure
    std::function<QString()> label_now;    ///< for labels that depend on the state, e.g. diameter instead of length
  };

  /// `faults` gives the faults of what the form edits; null where there is nothing to edit.
  FieldForm(Bench& bench, std::function<const Faults*()> faults, QWidget* parent = nullptr);

  TypedField* add(Row row);
  /// A widget of another sort in the same columns.
  void add(const QString& label, QWidget* widget);

 public slots:
  void refresh();

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  struct Shown {
    Row row;
    TypedField* field;
    FormRow parts;
  };

  void refresh_row(const Shown& shown);

  Bench& bench_;
  std::function<const Faults*()> faults_;
  QGridLayout* grid_;
  std::vector<Shown> rows_;
};

/// Sentences of the faults at `places`, joined.
[[nodiscard]] QString fault_sentences(const Faults& faults, const std::vector<std::string>& places, UnitSystem units);

}  // namespace gritwright::desktop
