#include "record_table.hpp"

#include <QHeaderView>
#include <QTableView>

namespace gritwright::desktop {

void show_as_record_list(QTableView& table) {
  table.setSelectionBehavior(QAbstractItemView::SelectRows);
  table.setEditTriggers(QAbstractItemView::NoEditTriggers);
  table.setTabKeyNavigation(false);
  table.setAlternatingRowColors(true);
  table.setShowGrid(false);
  table.setWordWrap(false);
  table.verticalHeader()->hide();
  table.horizontalHeader()->setHighlightSections(false);
  table.horizontalHeader()->setSectionResizeMode(1, QHeaderView::Stretch);
}

}  // namespace gritwright::desktop
