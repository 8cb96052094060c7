#include "traced_table.hpp"

#include <QHeaderView>
#include <algorithm>
#include <utility>
#include <vector>

#include "column_fit.hpp"
#include "text.hpp"

namespace gritwright::desktop {

TracedTable::TracedTable(const char* object_name, const QString& name, int stretched, QWidget* parent) : TracedTable(object_name, name, stretched, {0, stretched}, parent) {}

TracedTable::TracedTable(const char* object_name, const QString& name, int stretched, std::vector<int> giving, QWidget* parent)
    : QTableWidget(parent), columns_(new ColumnFit(*this, std::move(giving), stretched)) {
  setObjectName(QString::fromLatin1(object_name));
  setAccessibleName(name);
  setAccessibleDescription(tr("Enter goes on to the record of the row."));
  setEditTriggers(NoEditTriggers);
  setSelectionBehavior(SelectRows);
  setSelectionMode(SingleSelection);
  setTabKeyNavigation(false);
  setAlternatingRowColors(true);
  setShowGrid(false);
  setMinimumHeight(90);
  verticalHeader()->hide();
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  connect(this, &QTableWidget::activated, this, [this](const QModelIndex& index) {
    const auto row = static_cast<std::size_t>(index.row());
    if (row < refs_.size() && !refs_[row].id.empty()) emit record_wanted(to_qt(refs_[row].id));
  });
}

void TracedTable::show_rows(const RecordTable& rows) {
  refs_ = rows.refs;
  setColumnCount(static_cast<int>(rows.table.heading.size()));
  setRowCount(static_cast<int>(rows.table.rows.size()));
  setHorizontalHeaderLabels(rows.table.heading);
  for (int row = 0; row < rowCount(); ++row) {
    const QStringList& cells = rows.table.rows[static_cast<std::size_t>(row)];
    for (int column = 0; column < cells.size(); ++column) {
      auto* cell = new QTableWidgetItem(cells[column]);
      cell->setToolTip(cells[column]);
      cell->setData(Qt::AccessibleTextRole, with_label(rows.table.heading[column], cells[column]));
      setItem(row, column, cell);
    }
  }
  // Measured unwrapped.
  setWordWrap(false);
  std::vector<int> wanted;
  for (int column = 0; column < columnCount(); ++column) wanted.push_back(std::max(sizeHintForColumn(column), horizontalHeader()->sectionSizeHint(column)));
  setWordWrap(true);
  columns_->set_wanted(std::move(wanted));
}

}  // namespace gritwright::desktop
