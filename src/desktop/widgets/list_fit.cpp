#include "list_fit.hpp"

#include <QAbstractItemModel>
#include <QEvent>
#include <QFontMetrics>
#include <QHeaderView>
#include <QScrollBar>
#include <QStringList>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QTextBoundaryFinder>
#include <algorithm>
#include <cstddef>
#include <cstdlib>
#include <limits>
#include <numeric>
#include <utility>

#include "record_table.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

constexpr int name_column = 1;
constexpr int least_list_row = 26;
constexpr int most_lines_of_a_name = 5;
constexpr int fewest_signs_of_a_name = 9;
constexpr int most_signs_of_a_name = 36;  // a name that is far longer than the others is elided
constexpr int most_rows_with_own_heights = 300;
constexpr int rows_looked_at = 100;  // of more than that
constexpr int around_list_words = 8;
constexpr int between_columns = 4;  // else words of one would run into those of the next

bool is_hyphenated(QChar sign) {
  const QChar::Script script = sign.script();
  return sign.isLetter() && (script == QChar::Script_Latin || script == QChar::Script_Greek || script == QChar::Script_Cyrillic);
}

/// With a soft hyphen wherever what is wider than `room` and has no place of its own to be broken may be: not right behind its beginning or
/// before its end.
QString with_breaks(const QString& text, const QFontMetrics& metrics, int room) {
  constexpr qsizetype least_part = 3;
  constexpr QChar soft_hyphen(0x00ad);
  if (metrics.horizontalAdvance(text) <= room) return text;
  QString broken;
  QTextBoundaryFinder places(QTextBoundaryFinder::Line, text);
  qsizetype begin = 0;
  for (qsizetype end = places.toNextBoundary(); end >= 0; begin = end, end = places.toNextBoundary()) {
    QString piece = text.mid(begin, end - begin);
    if (piece.size() >= 2 * least_part && metrics.horizontalAdvance(piece.trimmed()) > room) {
      for (qsizetype at = piece.size() - least_part; at >= least_part; --at)
        if (is_hyphenated(piece[at]) && is_hyphenated(piece[at - 1])) piece.insert(at, soft_hyphen);
    }
    broken += piece;
  }
  return broken;
}

class BrokenWords : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

 protected:
  void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
    QStyledItemDelegate::initStyleOption(option, index);
    if (option->features & QStyleOptionViewItem::WrapText) option->text = with_breaks(option->text, option->fontMetrics, option->rect.width() - around_list_words);
  }
};

}  // namespace

QString widest_day() { return day_text("2028-09-30").replace(u' ', QChar::Nbsp); }

ListFit::ListFit(QTableView& table, std::vector<Column> columns, int names_in_one_line)
    : QObject(&table), table_(table), columns_(std::move(columns)), names_in_one_line_(names_in_one_line), font_(table.font()) {
  table_.horizontalHeader()->setTextElideMode(Qt::ElideRight);
  table_.setItemDelegate(new BrokenWords(&table_));
  table_.viewport()->installEventFilter(this);
  table_.installEventFilter(this);
  again_.setSingleShot(true);
  connect(&again_, &QTimer::timeout, this, &ListFit::fit);
  connect(table_.model(), &QAbstractItemModel::modelReset, this, [this] {
    measure();
    keep_least_width();
    fit();
  });
  // What is looked for comes and goes in many pieces.
  connect(table_.model(), &QAbstractItemModel::rowsInserted, this, [this] { look_again(0); });
  connect(table_.model(), &QAbstractItemModel::rowsRemoved, this, [this] { look_again(0); });
  constexpr int pause_in_typing = 300;  // milliseconds
  connect(table_.model(), &QAbstractItemModel::dataChanged, this, [this] { look_again(pause_in_typing); });
  dragged_.fill(0, static_cast<qsizetype>(columns_.size()));
  measure();
  keep_least_width();
  show_wide();
}

QList<int> ListFit::dragged() {
  note_dragged();
  return dragged_;
}

void ListFit::bring_back(const QList<int>& dragged) {
  if (dragged.size() != dragged_.size()) return;
  dragged_ = dragged;
  if (!is_narrow_) show_wide();
}

int ListFit::advance(const QString& text) const { return table_.fontMetrics().horizontalAdvance(text); }

ListFit::Words ListFit::words_of(const QString& text) const {
  Words words;
  for (const QString& word : text.split(u' ')) words.each.push_back(advance(word));
  words.whole = words.each.size() > 1 ? advance(text) : words.each.front();
  return words;
}

int ListFit::lines_of(const Words& words, int width) const {
  const int room = width - around_list_words;
  if (words.whole <= room) return 1;
  int lines = 1;
  int taken = 0;
  for (const int word : words.each) {
    if (taken > 0 && taken + blank_ + word > room) {
      ++lines;
      taken = word;
    } else {
      taken += (taken > 0 ? blank_ : 0) + word;
    }
  }
  return lines;
}

bool ListFit::looks_at_all() const { return table_.model()->rowCount() <= most_rows_with_own_heights; }

void ListFit::measure() {
  is_measured_ = true;
  fitted_to_ = -1;
  blank_ = advance(QStringLiteral(" "));
  rows_.clear();
  const QAbstractItemModel& model = *table_.model();
  const int count = looks_at_all() ? model.rowCount() : rows_looked_at;
  for (int row = 0; row < count; ++row) {
    std::vector<Words> cells{words_of(model.index(row, name_column).data().toString())};
    for (const Column& column : columns_) cells.push_back(words_of(model.index(row, column.column).data().toString()));
    rows_.push_back(std::move(cells));
  }
}

int ListFit::wide(std::size_t at) const {
  const QString heading = table_.model()->headerData(columns_[at].column, Qt::Horizontal).toString();
  int widest = table_.horizontalHeader()->fontMetrics().horizontalAdvance(heading);
  if (rows_.empty() || !looks_at_all()) widest = std::max(widest, advance(columns_[at].widest));
  for (const std::vector<Words>& cells : rows_) widest = std::max(widest, cells[at + 1].whole);
  constexpr int air = 10;
  return widest + room_beside_words(table_.fontMetrics()) + air;
}

int ListFit::close(std::size_t at) const {
  int widest = width_of_heading(table_, columns_[at].column);
  if (!looks_at_all()) widest = std::max(widest, advance(columns_[at].widest));
  for (const std::vector<Words>& cells : rows_) widest = std::max(widest, cells[at + 1].whole);
  return widest + room_beside_words(table_.fontMetrics()) + between_columns;
}

int ListFit::narrow(std::size_t at) const {
  int widest = width_of_heading(table_, columns_[at].column);
  if (!looks_at_all()) widest = std::max(widest, std::ranges::max(words_of(columns_[at].widest).each));
  for (const std::vector<Words>& cells : rows_) widest = std::max(widest, std::ranges::max(cells[at + 1].each));
  return widest + room_beside_words(table_.fontMetrics());
}

int ListFit::wanted(std::size_t at) const {
  const int dragged = dragged_[static_cast<qsizetype>(at)];
  return dragged > 0 ? std::max(dragged, narrow(at)) : wide(at);
}

int ListFit::room_for_names() const {
  const int sign = table_.fontMetrics().averageCharWidth();
  int longest = 0;
  for (const std::vector<Words>& cells : rows_) longest = std::max(longest, cells.front().whole + room_beside_words(table_.fontMetrics()));
  if (rows_.empty() || !looks_at_all()) longest = std::max(longest, names_in_one_line_ * sign);
  return std::min(longest, std::max(most_signs_of_a_name, names_in_one_line_) * sign);
}

int ListFit::longest_word_of_names() const {
  int longest = 0;
  for (const std::vector<Words>& cells : rows_) longest = std::max(longest, std::ranges::max(cells.front().each) + room_beside_words(table_.fontMetrics()));
  return longest;
}

// Beside others a list would be left too little in large text, though there is room below.
void ListFit::keep_least_width() {
  constexpr int most_signs = 34;
  int least = longest_word_of_names() + 2 * table_.frameWidth() + table_.verticalScrollBar()->sizeHint().width();
  for (std::size_t at = 0; at < columns_.size(); ++at) least += narrow(at);
  table_.setMinimumWidth(std::min(least, most_signs * table_.fontMetrics().averageCharWidth()));
}

bool ListFit::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize && watched == table_.viewport()) fit();
  if (event->type() == QEvent::Show && watched == &table_) fit();
  // A table is told so when it is shown first, too.
  if (event->type() == QEvent::FontChange && watched == &table_ && table_.font() != font_) {
    font_ = table_.font();
    dragged_.fill(0);
    measure();
    keep_least_width();
    show_wide();
    fit();
  }
  return QObject::eventFilter(watched, event);
}

void ListFit::look_again(int after) {
  is_measured_ = false;
  if (const bool is_due = again_.isActive() && again_.interval() == 0; !is_due) again_.start(after);
}

// Before it is laid out it has some width or other.
void ListFit::fit() {
  if (!table_.isVisible()) return;
  if (!is_measured_) measure();
  // A scroll bar that comes and goes with the height of the rows would have it think again and again.
  const int room = table_.contentsRect().width() - table_.verticalScrollBar()->sizeHint().width();
  if (room == fitted_to_) return;
  fitted_to_ = room;
  note_dragged();
  int taken = 0;
  for (std::size_t at = 0; at < columns_.size(); ++at) taken += wanted(at);
  if (room - taken < room_for_names()) show_narrow(room);
  else show_wide();
}

// Nobody drags by less than a letter.
void ListFit::note_dragged() {
  if (is_narrow_) return;
  for (std::size_t at = 0; at < columns_.size(); ++at) {
    const int width = table_.columnWidth(columns_[at].column);
    if (std::abs(width - set_[at]) > table_.fontMetrics().averageCharWidth()) dragged_[static_cast<qsizetype>(at)] = width;
  }
}

void ListFit::show_wide() {
  is_narrow_ = false;
  table_.setWordWrap(false);
  let_scroll(false);
  set_.clear();
  for (std::size_t at = 0; at < columns_.size(); ++at) {
    set_.push_back(wanted(at));
    table_.setColumnWidth(columns_[at].column, set_[at]);
  }
  set_lines({1});
}

void ListFit::show_narrow(int room) {
  is_narrow_ = true;
  table_.setWordWrap(true);
  const Widths widths = with_fewest_lines(room);
  let_scroll(room < widths.names + std::accumulate(widths.others.begin(), widths.others.end(), 0));
  for (std::size_t at = 0; at < columns_.size(); ++at) table_.setColumnWidth(columns_[at].column, widths.others[at]);
  if (scrolls_) table_.setColumnWidth(name_column, widths.names);
  std::vector<int> lines;
  for (int row = 0; row < static_cast<int>(rows_.size()); ++row) lines.push_back(lines_needed(row, widths));
  if (!looks_at_all()) lines = {std::ranges::max(lines)};
  set_lines(lines);
}

// Each of the others is tried whole and broken, whole ones first.
ListFit::Widths ListFit::with_fewest_lines(int room) const {
  Widths best;
  int least = std::numeric_limits<int>::max();
  for (unsigned broken = 0; broken < (1U << columns_.size()); ++broken) {
    Widths widths{room, {}};
    for (std::size_t at = 0; at < columns_.size(); ++at) {
      widths.others.push_back(((broken >> at) & 1U) != 0 ? narrow(at) : close(at));
      widths.names -= widths.others.back();
    }
    if (const int cost = cost_of(widths); cost < least) {
      least = cost;
      best = std::move(widths);
    }
  }
  const int sign = table_.fontMetrics().averageCharWidth();
  const bool can_scroll = std::ranges::any_of(columns_, &Column::can_wait);
  if (can_scroll && best.names < std::min(fewest_signs_of_a_name * sign, longest_word_of_names())) {
    constexpr int most_signs_of_a_word = 16;
    best.names = std::clamp(longest_word_of_names(), fewest_signs_of_a_name * sign, most_signs_of_a_word * sign);
  }
  return best;
}

// In lines; a word that is broken is worse than some lines more.
int ListFit::cost_of(const Widths& widths) const {
  constexpr int of_a_break = 8;
  int cost = 0;
  for (const std::vector<Words>& cells : rows_) {
    int lines = lines_of(cells.front(), widths.names);
    for (std::size_t at = 0; at < columns_.size(); ++at) lines = std::max(lines, lines_of(cells[at + 1], widths.others[at]));
    const bool is_broken = lines > most_lines_of_a_name || std::ranges::max(cells.front().each) > widths.names - around_list_words;
    cost += lines + (is_broken ? of_a_break : 0);
  }
  // Even with no rows or only broken ones names should have what room there can be.
  return cost + (widths.names < around_list_words ? of_a_break * static_cast<int>(rows_.size() + 1) : 0);
}

int ListFit::lines_needed(int row, const Widths& widths) const {
  const QFontMetrics metrics = table_.fontMetrics();
  const std::vector<Words>& cells = rows_[static_cast<std::size_t>(row)];
  int height = metrics.lineSpacing();
  const auto look = [&](const Words& words, int column, int width) {
    const int room = std::max(1, width - around_list_words);
    if (words.whole <= room) return;
    const QString text = with_breaks(table_.model()->index(row, column).data().toString(), metrics, room);
    height = std::max(height, metrics.boundingRect(QRect(0, 0, room, 1000), Qt::TextWordWrap, text).height());
  };
  look(cells.front(), name_column, widths.names);
  for (std::size_t at = 0; at < columns_.size(); ++at) look(cells[at + 1], columns_[at].column, widths.others[at]);
  return std::min(most_lines_of_a_name, (height + metrics.lineSpacing() - 1) / metrics.lineSpacing());
}

void ListFit::let_scroll(bool scrolls) {
  scrolls_ = scrolls;
  QHeaderView& headings = *table_.horizontalHeader();
  if (scrolls == (headings.sectionResizeMode(name_column) != QHeaderView::Stretch)) return;
  headings.setSectionResizeMode(name_column, scrolls ? QHeaderView::Interactive : QHeaderView::Stretch);
  if (scrolls) {
    for (const Column& column : columns_)
      if (column.can_wait) headings.moveSection(headings.visualIndex(column.column), headings.count() - 1);
  } else {
    for (int column = 0; column < headings.count(); ++column) headings.moveSection(headings.visualIndex(column), column);
  }
}

/// Of each row, or of all.
void ListFit::set_lines(const std::vector<int>& lines) {
  const auto height_of = [&](int count) { return std::max(least_list_row, count * table_.fontMetrics().lineSpacing() + 8); };
  const int lowest = lines.empty() ? 1 : std::ranges::min(lines);
  const int highest = lines.empty() ? 1 : std::ranges::max(lines);
  QHeaderView& rows = *table_.verticalHeader();
  rows.setMinimumSectionSize(least_list_row);
  if (lowest == highest) {
    rows.setDefaultSectionSize(height_of(lowest));
  } else {
    for (int row = 0; row < static_cast<int>(lines.size()); ++row)
      if (const int height = height_of(lines[static_cast<std::size_t>(row)]); rows.sectionSize(row) != height) rows.resizeSection(row, height);
  }
  give_headings_room(table_);
  // A row cut in two reads worse than a page that scrolls.
  const QHeaderView& headings = *table_.horizontalHeader();
  const int bar = scrolls_ ? table_.horizontalScrollBar()->sizeHint().height() : 0;
  table_.setMinimumHeight(std::max(headings.sizeHint().height(), headings.minimumHeight()) + height_of(lowest) + height_of(highest) + bar + 2 * table_.frameWidth());
}

}  // namespace gritwright::desktop
