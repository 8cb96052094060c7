#include "history_table.hpp"

#include <QEvent>
#include <QHeaderView>
#include <QScrollBar>
#include <algorithm>

#include "record_table.hpp"

namespace gritwright::desktop {

namespace {

constexpr int day_column = 0;
constexpr int least_history_row = 26;
constexpr int signs_of_a_note = 18;
constexpr int signs_of_words = 12;

}  // namespace

HistoryTable::HistoryTable(const QStringList& headings, const QString& heading_of_words, QWidget* parent)
    : QTableWidget(0, static_cast<int>(headings.size()) + 1, parent), words_column_(static_cast<int>(headings.size())) {
  setHorizontalHeaderLabels(headings + QStringList{heading_of_words});
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setSelectionBehavior(QAbstractItemView::SelectRows);
  setTabKeyNavigation(false);
  setAlternatingRowColors(true);
  setShowGrid(false);
  setWordWrap(true);
  verticalHeader()->hide();
}

void HistoryTable::show_rows(const std::vector<Row>& rows) {
  setRowCount(static_cast<int>(rows.size()));
  const auto put = [this](int row, int column, const QString& text) {
    auto* cell = new QTableWidgetItem(text);
    cell->setToolTip(text);
    setItem(row, column, cell);
  };
  for (int row = 0; row < rowCount(); ++row) {
    const auto& [cells, words] = rows[static_cast<std::size_t>(row)];
    for (int column = 0; column < words_column_; ++column) put(row, column, cells[column]);
    put(row, words_column_, words);
  }
  arrange();
}

bool HistoryTable::says_something(int column) const {
  if (rowCount() == 0) return true;
  for (int row = 0; row < rowCount(); ++row) {
    if (const QString text = item(row, column)->text(); !text.isEmpty() && text != QStringLiteral("\u2013")) return true;
  }
  return false;
}

void HistoryTable::arrange() {
  const QFontMetrics metrics = fontMetrics();
  arranged_width_ = viewport()->width();
  // A scroll bar that comes and goes with the height of the rows would have it think again and again.
  const int room = contentsRect().width() - verticalScrollBar()->sizeHint().width();
  const int line = std::max(least_history_row, metrics.height() + 8);
  verticalHeader()->setMinimumSectionSize(line);
  verticalHeader()->setDefaultSectionSize(line);
  for (int column = 0; column < words_column_; ++column) setColumnHidden(column, !says_something(column));
  setColumnHidden(words_column_, true);
  resizeColumnsToContents();
  for (int column = 0; column <= words_column_; ++column) setColumnWidth(column, columnWidth(column) + room_beside_words(metrics) - beside_words_of_cells);
  const int note = words_column_ - 1;
  int needed = 0;
  for (int column = 0; column < words_column_; ++column) {
    if (isColumnHidden(column)) continue;
    // The last is in words, which may stand in several lines.
    needed += column == note ? std::min(columnWidth(column), signs_of_a_note * metrics.averageCharWidth()) : columnWidth(column);
  }
  if (needed > room) {
    for (int column = day_column + 1; column < words_column_; ++column) setColumnHidden(column, true);
    setColumnHidden(words_column_, false);
  }
  // Narrower, the words would stand one below the other.
  setMinimumWidth(columnWidth(day_column) + std::max(width_of_heading(*this, words_column_) + room_beside_words(metrics), signs_of_words * metrics.averageCharWidth()) + verticalScrollBar()->sizeHint().width() + 2 * frameWidth());
  give_last_the_rest();
  give_headings_room(*this);
  resizeRowsToContents();
  setMinimumHeight(horizontalHeader()->sizeHint().height() + 2 * line + 2 * frameWidth());
}

void HistoryTable::give_last_the_rest() {
  int last = day_column;
  int taken = 0;
  for (int column = 0; column <= words_column_; ++column) {
    if (isColumnHidden(column)) continue;
    last = column;
    taken += columnWidth(column);
  }
  setColumnWidth(last, std::max(viewport()->width() - taken + columnWidth(last), horizontalHeader()->minimumSectionSize()));
}

void HistoryTable::resizeEvent(QResizeEvent* event) {
  QTableWidget::resizeEvent(event);
  if (viewport()->width() != arranged_width_) arrange();
}

void HistoryTable::changeEvent(QEvent* event) {
  QTableWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) arrange();
}

}  // namespace gritwright::desktop
