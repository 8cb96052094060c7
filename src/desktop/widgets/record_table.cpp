#include "record_table.hpp"

#include <QHeaderView>
#include <QTableView>
#include <algorithm>

#include "text.hpp"

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

int room_beside_words(const QFontMetrics& metrics) { return std::max(10, 3 * metrics.horizontalAdvance(u'n') / 2 + 1); }

int width_of_heading(const QTableView& table, int column) {
  const QFontMetrics metrics = table.horizontalHeader()->fontMetrics();
  int widest = 0;
  for (const QString& line : in_two_lines(table.model()->headerData(column, Qt::Horizontal).toString()).split(u'\n')) widest = std::max(widest, metrics.horizontalAdvance(line));
  return widest;
}

void give_air_beside_first(QTableView& table, int room) {
  constexpr int signs_of_air = 3;
  const int columns = table.horizontalHeader()->count();
  if (room <= 0 || columns < 2) return;
  const int air = std::min(room / 2 / (columns - 1), signs_of_air * table.fontMetrics().averageCharWidth());
  for (int column = 1; column < columns; ++column) table.setColumnWidth(column, table.columnWidth(column) + air);
}

void give_headings_room(QTableView& table) {
  if (table.model() == nullptr) return;
  QHeaderView& header = *table.horizontalHeader();
  const QFontMetrics metrics = header.fontMetrics();
  constexpr int around_words = 6;
  // Qt stretches a column only later; until then it has a width of before.
  int stretched = table.viewport()->width();
  for (int column = 0; column < header.count(); ++column)
    if (header.sectionResizeMode(column) != QHeaderView::Stretch) stretched -= header.sectionSize(column);
  bool is_wider = false;
  for (int column = 0; column < header.count(); ++column) {
    if (header.isSectionHidden(column)) continue;
    const QString heading = table.model()->headerData(column, Qt::Horizontal).toString();
    const int width = header.sectionResizeMode(column) == QHeaderView::Stretch ? stretched : header.sectionSize(column);
    is_wider = is_wider || (!heading.contains(u'\n') && metrics.horizontalAdvance(heading) > width - around_words);
  }
  // Fusion's own height of a heading, and a line more.
  const int height = is_wider ? 2 * metrics.lineSpacing() + around_words : 0;
  if (header.minimumHeight() != height) header.setMinimumHeight(height);
}

}  // namespace gritwright::desktop
