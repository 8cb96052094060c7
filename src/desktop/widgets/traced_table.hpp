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
  /// `giving`: the columns that break their words where there is little room; else the first and the stretched one.
  TracedTable(const char* object_name, const QString& name, int stretched, std::vector<int> giving, QWidget* parent);

  void show_rows(const RecordTable& rows);

 signals:
  void record_wanted(const QString& id);

 private:
  ColumnFit* columns_;
  std::vector<RecordRef> refs_;
};

}  // namespace gritwright::desktop
