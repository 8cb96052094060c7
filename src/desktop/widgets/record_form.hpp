#pragma once
#include <QWidget>
#include <functional>
#include <vector>

#include "gritwright/report/quantity_text.hpp"
#include "gritwright/result.hpp"
#include "models/typed_text.hpp"

class QGridLayout;
class QLabel;
class QLineEdit;

namespace gritwright::desktop {

/// Fields of one record: what can be read is saved as it is typed, what cannot stays in its field with the fault below it.
class RecordForm : public QWidget {
  Q_OBJECT
 public:
  struct Row {
    QString object_name;
    QString label;  ///< with its mnemonic
    Kind kind = Kind::words;
    QString hint;
    std::function<QString()> show;                    ///< the record's own text
    std::function<Problems(const QString&)> take;     ///< saves a text that was typed, or says what is wrong with it
    std::function<bool()> is_shown = {};              ///< empty: always
    std::function<QString()> label_now = {};          ///< for labels that depend on the record, e.g. diameter instead of length
  };

  explicit RecordForm(QWidget* parent = nullptr);

  QLineEdit* add(Row row);
  void add(const QString& label, QWidget* widget);
  void set_units(UnitSystem units);

  /// Shows the record anew; `other` when it is another record, so that nothing half-typed is carried over.
  void refresh(bool other);

 signals:
  void typing_ended();

 private:
  struct Shown {
    Row row;
    QLineEdit* field;
    QLabel* label;
    QLabel* unit;
    QLabel* fault;
  };

  void typed(std::size_t at, const QString& text);
  /// Enter goes to the next field in view, so that a tape measure can be read off line by line.
  void move_on(std::size_t from);
  void show_fault(const Shown& shown, const Problems& problems) const;

  UnitSystem units_ = UnitSystem::metric;
  QGridLayout* grid_;
  std::vector<Shown> rows_;
};

}  // namespace gritwright::desktop
