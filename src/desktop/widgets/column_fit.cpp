#include "column_fit.hpp"

#include <QEvent>
#include <QHeaderView>
#include <QTableView>
#include <algorithm>
#include <numeric>
#include <utility>

#include "record_table.hpp"

namespace gritwright::desktop {

namespace {

constexpr int least_signs = 11;
constexpr int least_signs_in_large_text = 8;
constexpr int least_row = 26;
constexpr int most_lines = 5;  // what is longer is read whole in its tip
constexpr int most_rows_looked_at = 400;

}  // namespace

ColumnFit::ColumnFit(QTableView& table, std::vector<int> giving, std::optional<int> taking)
    : QObject(&table), table_(table), giving_(std::move(giving)), taking_(taking) {
  table_.setWordWrap(true);
  table_.horizontalHeader()->setTextElideMode(Qt::ElideRight);
  table_.viewport()->installEventFilter(this);
}

void ColumnFit::set_wanted(std::vector<int> widths, std::vector<int> least) {
  wanted_ = std::move(widths);
  whole_headings_.clear();
  least_ = std::move(least);
  measure_words();
  fit();
}

void ColumnFit::set_wanted_by_headings(std::vector<int> in_one_line, std::vector<int> in_two_lines) {
  wanted_ = std::move(in_two_lines);
  giving_.resize(wanted_.size());
  std::iota(giving_.begin(), giving_.end(), 0);
  whole_headings_ = std::move(in_one_line);
  least_.clear();
  measure_words();
  fit();
}

bool ColumnFit::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize) fit();
  return QObject::eventFilter(watched, event);
}

int ColumnFit::least(std::size_t column, int signs) const {
  const bool gives = std::ranges::find(giving_, static_cast<int>(column)) != giving_.end();
  if (gives) return std::min(wanted_[column], std::max(longest_words_[column], signs * table_.fontMetrics().averageCharWidth()));
  return least_.empty() || signs != least_signs_in_large_text ? wanted_[column] : std::min(wanted_[column], least_[column]);
}

int ColumnFit::least_width() const {
  int sum = 0;
  for (std::size_t column = 0; column < wanted_.size(); ++column) sum += least(column, least_signs);
  return sum;
}

// The widest give way first, down to what the next has.
std::vector<int> ColumnFit::widths_within(int room, int signs) const {
  const auto capped = [&](int cap) {
    std::vector<int> widths;
    for (std::size_t column = 0; column < wanted_.size(); ++column) widths.push_back(std::clamp(cap, least(column, signs), wanted_[column]));
    return widths;
  };
  int fits = 0;
  int too_wide = std::ranges::max(wanted_) + 1;
  while (too_wide - fits > 1) {
    const int cap = (fits + too_wide) / 2;
    const std::vector<int> widths = capped(cap);
    (std::accumulate(widths.begin(), widths.end(), 0) <= room ? fits : too_wide) = cap;
  }
  return capped(fits);
}

void ColumnFit::fit() {
  if (wanted_.empty()) return;
  const int room = table_.viewport()->width();
  const auto sum_of = [](const std::vector<int>& widths) { return std::accumulate(widths.begin(), widths.end(), 0); };
  std::vector<int> widths = widths_within(room, least_signs);
  if (sum_of(widths) > room) widths = widths_within(room, least_signs_in_large_text);
  if (!whole_headings_.empty() && sum_of(whole_headings_) <= room) widths = whole_headings_;
  spread_rest(widths, std::max(0, room - sum_of(widths)));
  for (int column = 0; column < static_cast<int>(widths.size()); ++column) table_.setColumnWidth(column, widths[static_cast<std::size_t>(column)]);
  set_rows();
  give_headings_room(table_);
  if (when_fitted_) when_fitted_();
}

// The others get some air too: with all of it in one column they would stand crowded at its side.
void ColumnFit::spread_rest(std::vector<int>& widths, int rest) const {
  if (!taking_) return;
  constexpr int signs_of_air = 3;
  const int share = rest / 2 / static_cast<int>(widths.size());
  const int air = std::min(share, signs_of_air * table_.fontMetrics().averageCharWidth());
  for (std::size_t column = 0; column < widths.size(); ++column) {
    if (static_cast<int>(column) == *taking_ || widths[column] == 0) continue;
    widths[column] += air;
    rest -= air;
  }
  widths[static_cast<std::size_t>(*taking_)] += rest;
}

int ColumnFit::lines_of(int row) const {
  constexpr int around_words = 6;
  const QFontMetrics metrics = table_.fontMetrics();
  int height = metrics.lineSpacing();
  for (const int column : giving_) {
    const QString words = table_.model()->index(row, column).data().toString();
    const int room = std::max(1, table_.columnWidth(column) - around_words);
    if (metrics.horizontalAdvance(words) > room) height = std::max(height, metrics.boundingRect(QRect(0, 0, room, 10000), Qt::TextWordWrap, words).height());
  }
  return std::min(most_lines, (height + metrics.lineSpacing() - 1) / metrics.lineSpacing());
}

// A word is not cut as long as it is no longer than names are.
void ColumnFit::measure_words() {
  constexpr int longest_name = 16;
  const QFontMetrics metrics = table_.fontMetrics();
  // What says its own widths is crowded: there words come closer before anything has to be scrolled to.
  constexpr int close_around_words = 8;
  const int around_words = whole_headings_.empty() ? close_around_words : room_beside_words(metrics);
  longest_words_.assign(wanted_.size(), 0);
  if (table_.model() == nullptr) return;
  for (const int column : giving_) {
    int& longest = longest_words_[static_cast<std::size_t>(column)];
    const auto look = [&](const QString& text) {
      for (const QString& word : text.split(u' ')) longest = std::max(longest, metrics.horizontalAdvance(word) + around_words);
    };
    look(table_.model()->headerData(column, Qt::Horizontal).toString());
    for (int row = 0; row < std::min(table_.model()->rowCount(), most_rows_looked_at); ++row) look(table_.model()->index(row, column).data().toString());
    longest = std::min(longest, longest_name * metrics.averageCharWidth());
  }
}

void ColumnFit::set_rows() {
  QHeaderView& rows = *table_.verticalHeader();
  const auto height_of = [&](int lines) { return std::max(least_row, lines * table_.fontMetrics().lineSpacing() + 8); };
  const int count = table_.model() == nullptr ? 0 : table_.model()->rowCount();
  std::vector<int> lines;
  for (int row = 0; row < std::min(count, most_rows_looked_at); ++row) lines.push_back(lines_of(row));
  const int usual = count > most_rows_looked_at ? std::ranges::max(lines) : 1;
  rows.setMinimumSectionSize(least_row);
  if (rows.defaultSectionSize() != height_of(usual)) rows.setDefaultSectionSize(height_of(usual));
  for (int row = 0; row < static_cast<int>(lines.size()); ++row)
    if (const int height = height_of(lines[static_cast<std::size_t>(row)]); rows.sectionSize(row) != height) rows.resizeSection(row, height);
}

}  // namespace gritwright::desktop
