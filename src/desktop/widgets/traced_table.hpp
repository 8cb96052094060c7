#pragma once
#include <QTableWidget>
#include <vector>

#include "models/grain_trace.hpp"

namespace gritwright::desktop {

class ColumnFit;

/// A table to read whose rows stand for records: Enter or a double click goes on to that record.
class TracedTable : public QTableWidget {
  Q_OBJECT
 public:
  /// `stretched`: the column that takes what width is left.
  TracedTable(const char* object_name, const QString& name, int stretched, QWidget* parent);

  /// Columns of figures, which end below each other.
  void set_figures(std::vector<int> columns);
  /// From now on no higher than its rows, nor lower than `least` pixels if they are more.
  void keep_to_rows(int least);
  void show_rows(const RecordTable& rows);
  /// Where words and headings are broken.
  [[nodiscard]] int least_width() const;

 signals:
  void record_wanted(const QString& id);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  [[nodiscard]] bool says_something(int column) const;
  void fit_height(int least);
  void fit_columns();

  int stretched_;
  std::vector<int> figures_;
  ColumnFit* columns_;
  std::vector<RecordRef> refs_;
};

}  // namespace gritwright::desktop
