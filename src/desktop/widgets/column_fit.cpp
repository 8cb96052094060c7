#include "column_fit.hpp"

#include <QEvent>
#include <QHeaderView>
#include <QTableView>
#include <algorithm>
#include <numeric>
#include <utility>

namespace gritwright::desktop {

namespace {

constexpr int least_signs = 11;
constexpr int least_signs_in_large_text = 8;
constexpr int least_row = 26;

}  // namespace

ColumnFit::ColumnFit(QTableView& table, std::vector<int> giving, std::optional<int> taking)
    : QObject(&table), table_(table), giving_(std::move(giving)), taking_(taking) {
  table_.setWordWrap(true);
  table_.horizontalHeader()->setTextElideMode(Qt::ElideRight);
  table_.viewport()->installEventFilter(this);
}

void ColumnFit::set_wanted(std::vector<int> widths) {
  wanted_ = std::move(widths);
  fit();
}

bool ColumnFit::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize) fit();
  return QObject::eventFilter(watched, event);
}

void ColumnFit::fit() {
  if (wanted_.empty()) return;
  const QFontMetrics metrics = table_.fontMetrics();
  const int too_wide = std::accumulate(wanted_.begin(), wanted_.end(), 0) - table_.viewport()->width();
  int signs = least_signs;
  const auto can_give = [&](int column) { return std::max(0, wanted_[static_cast<std::size_t>(column)] - signs * metrics.averageCharWidth()); };
  const auto given = [&] { return std::accumulate(giving_.begin(), giving_.end(), 0, [&](int sum, int column) { return sum + can_give(column); }); };
  // Three short lines before anything has to be scrolled to.
  const bool is_narrow = too_wide > given();
  if (is_narrow) signs = least_signs_in_large_text;
  const int most = given();
  std::vector<int> widths = wanted_;
  if (too_wide > 0 && most > 0) {
    const double share = std::min(1.0, static_cast<double>(too_wide) / most);
    // Rounded up, so that no pixel is left to scroll by.
    for (const int column : giving_) widths[static_cast<std::size_t>(column)] -= std::min(can_give(column), static_cast<int>(can_give(column) * share) + 1);
  }
  if (taking_ && too_wide < 0) widths[static_cast<std::size_t>(*taking_)] -= too_wide;
  for (int column = 0; column < static_cast<int>(widths.size()); ++column) table_.setColumnWidth(column, widths[static_cast<std::size_t>(column)]);
  const int lines = is_narrow ? 3 : too_wide > 0 && most > 0 ? 2 : 1;
  const int row = std::max(least_row, lines * metrics.lineSpacing() + 8);
  table_.verticalHeader()->setMinimumSectionSize(row);
  table_.verticalHeader()->setDefaultSectionSize(row);
}

}  // namespace gritwright::desktop
