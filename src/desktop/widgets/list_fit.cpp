#include "list_fit.hpp"

#include <QAbstractItemModel>
#include <QEvent>
#include <QFontMetrics>
#include <QHeaderView>
#include <QScrollBar>
#include <QStringList>
#include <QTableView>
#include <algorithm>
#include <cstddef>
#include <numeric>
#include <utility>

#include "record_table.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

constexpr int name_column = 1;
constexpr int least_list_row = 26;
constexpr int most_lines_of_a_name = 4;
constexpr int fewest_signs_of_a_name = 9;
constexpr int rows_looked_at = 100;

}  // namespace

QString widest_day() { return day_text("2028-09-30").replace(u' ', QChar::Nbsp); }

ListFit::ListFit(QTableView& table, std::vector<Column> columns, int names_in_one_line)
    : QObject(&table), table_(table), columns_(std::move(columns)), names_in_one_line_(names_in_one_line), font_(table.font()) {
  table_.horizontalHeader()->setTextElideMode(Qt::ElideRight);
  table_.viewport()->installEventFilter(this);
  table_.installEventFilter(this);
  connect(table_.model(), &QAbstractItemModel::modelReset, this, &ListFit::fit);
  connect(table_.model(), &QAbstractItemModel::rowsInserted, this, &ListFit::fit);
  show_wide();
}

int ListFit::advance(const QString& text) const { return table_.fontMetrics().horizontalAdvance(text); }

int ListFit::wide(const Column& column) const {
  int widest = std::max(advance(column.widest), widest_word(table_.model()->headerData(column.column, Qt::Horizontal).toString()));
  for (int row = 0; row < rows_to_look_at(); ++row) widest = std::max(widest, advance(table_.model()->index(row, column.column).data().toString()));
  return widest + 24;
}

int ListFit::rows_to_look_at() const { return std::min(rows_looked_at, table_.model()->rowCount()); }

int ListFit::widest_word(const QString& text) const {
  int widest = 0;
  for (const QString& word : text.split(u' ')) widest = std::max(widest, advance(word));
  return widest;
}

int ListFit::narrow(const Column& column) const {
  constexpr int around_words = 10;
  return std::max(widest_word(column.widest), widest_word(table_.model()->headerData(column.column, Qt::Horizontal).toString())) + around_words;
}

// A name that is far longer than the others is elided rather than that all get more lines.
int ListFit::room_for_names() const {
  constexpr int around_words = 8;
  constexpr int most_signs = 36;
  const int sign = table_.fontMetrics().averageCharWidth();
  int longest = 0;
  for (int row = 0; row < rows_to_look_at(); ++row)
    longest = std::max(longest, advance(table_.model()->index(row, name_column).data().toString()) + around_words);
  return std::clamp(longest, names_in_one_line_ * sign, most_signs * sign);
}

int ListFit::longest_word_of_names() const {
  constexpr int around_words = 8;
  int longest = 0;
  for (int row = 0; row < rows_to_look_at(); ++row) longest = std::max(longest, widest_word(table_.model()->index(row, name_column).data().toString()));
  return longest + around_words;
}

bool ListFit::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize && watched == table_.viewport()) fit();
  // A table is told so when it is shown first, too; then its remembered columns are there already.
  if (event->type() == QEvent::FontChange && watched == &table_ && table_.font() != font_) {
    font_ = table_.font();
    dragged_.clear();
    if (!is_narrow_) show_wide();
    fit();
  }
  return QObject::eventFilter(watched, event);
}

void ListFit::fit() {
  // Before it is laid out it has some width or other, and its remembered columns are not there yet.
  if (!table_.isVisible()) return;
  // A scroll bar that comes and goes with the height of the rows would have it think again and again.
  const int room = table_.contentsRect().width() - table_.verticalScrollBar()->sizeHint().width();
  const int taken = std::accumulate(columns_.begin(), columns_.end(), 0, [this](int sum, const Column& column) { return sum + wide(column); });
  if (room - taken < room_for_names()) return show_narrow(room);
  if (!is_narrow_) return give_headings_room(table_);
  show_wide();
  // What somebody dragged is there again with the room for it.
  for (std::size_t i = 0; i < dragged_.size(); ++i) table_.setColumnWidth(columns_[i].column, dragged_[i]);
}

void ListFit::show_wide() {
  is_narrow_ = false;
  table_.setWordWrap(false);
  for (const Column& column : columns_) {
    table_.setColumnHidden(column.column, false);
    table_.setColumnWidth(column.column, wide(column));
  }
  set_lines(1);
}

void ListFit::show_narrow(int room) {
  if (!is_narrow_) {
    dragged_.clear();
    for (const Column& column : columns_) dragged_.push_back(table_.columnWidth(column.column));
  }
  is_narrow_ = true;
  table_.setWordWrap(true);
  const int sign = table_.fontMetrics().averageCharWidth();
  // With the others whole, names may take no more lines than with the others broken.
  int beside_whole = room;
  for (const Column& column : columns_) {
    table_.setColumnHidden(column.column, false);
    table_.setColumnWidth(column.column, wide(column));
    beside_whole -= wide(column);
  }
  const int lines_beside_whole = lines_needed(beside_whole);
  for (const Column& column : columns_) {
    table_.setColumnWidth(column.column, narrow(column));
    room -= narrow(column);
  }
  if (beside_whole >= longest_word_of_names() && lines_beside_whole <= std::min(most_lines_of_a_name, lines_needed(room))) {
    for (const Column& column : columns_) table_.setColumnWidth(column.column, wide(column));
    return set_lines(lines_beside_whole);
  }
  for (const Column& column : columns_) {
    const bool goes = column.can_go && room < fewest_signs_of_a_name * sign;
    table_.setColumnHidden(column.column, goes);
    if (goes) room += narrow(column);
  }
  set_lines(std::clamp(lines_needed(room), 1, most_lines_of_a_name));
}

int ListFit::lines_needed(int names) const {
  constexpr int around_words = 8;
  int height = 0;
  const auto look = [&](int row, int column, int room) {
    const QString text = table_.model()->index(row, column).data().toString();
    height = std::max(height, table_.fontMetrics().boundingRect(QRect(0, 0, std::max(1, room - around_words), 1000), Qt::TextWordWrap, text).height());
  };
  for (int row = 0; row < rows_to_look_at(); ++row) {
    look(row, name_column, names);
    for (const Column& column : columns_)
      if (!table_.isColumnHidden(column.column)) look(row, column.column, table_.columnWidth(column.column));
  }
  return (height + table_.fontMetrics().lineSpacing() - 1) / table_.fontMetrics().lineSpacing();
}

void ListFit::set_lines(int lines) {
  const int height = std::max(least_list_row, lines * table_.fontMetrics().lineSpacing() + 8);
  table_.verticalHeader()->setMinimumSectionSize(std::min(height, least_list_row));
  table_.verticalHeader()->setDefaultSectionSize(height);
  give_headings_room(table_);
  // A row cut in two reads worse than a page that scrolls.
  const QHeaderView& headings = *table_.horizontalHeader();
  table_.setMinimumHeight(std::max(headings.sizeHint().height(), headings.minimumHeight()) + 2 * height + 2 * table_.frameWidth());
}

}  // namespace gritwright::desktop
