#include "record_list_model.hpp"

#include <QLocale>
#include <QMimeData>
#include <algorithm>
#include <ranges>
#include <utility>

#include "stock_text.hpp"
#include "material_words.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

constexpr int page_rows = 100;
constexpr std::size_t most_pages = 6;       // more than a window shows at a time
constexpr std::size_t most_read_again = 2;  // of them, at a change

bool same_stock(const RecordLine& one, const RecordLine& other) {
  return one.stock.has_value() == other.stock.has_value() && (!one.stock || *one.stock == *other.stock);
}

/// The litres of a stock hang on what else the record says.
bool looks_alike(const RecordLine& one, const RecordLine& other) {
  const bool same_litres = one.revision == other.revision || !one.stock;
  return one.title == other.title && one.subject == other.subject && one.day == other.day && one.sieve_tests == other.sieve_tests && same_stock(one, other) && same_litres;
}

}  // namespace

RecordListModel::RecordListModel(RecordBook& book, RecordKind kind, std::vector<Column> columns, QObject* parent)
    : QAbstractTableModel(parent), book_(book), kind_(kind), columns_(std::move(columns)) {
  connect(&book_, &RecordBook::changed, this, &RecordListModel::record_changed);
  read();
}

int RecordListModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : row_count_; }

int RecordListModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(columns_.size()); }

QVariant RecordListModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const Column column = columns_[static_cast<std::size_t>(index.column())];
  if (role == Qt::TextAlignmentRole) {
    const bool is_figure = column == Column::tests || column == Column::stock || (column == Column::state && state_is_figure_);
    return static_cast<int>((is_figure ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  }
  const bool has_tip = role == Qt::ToolTipRole && (column == Column::title || column == Column::stock);
  const bool has_text = role == Qt::DisplayRole || role == Qt::AccessibleTextRole || has_tip;
  const RecordLine* const found = has_text ? line_at(index.row()) : nullptr;
  if (found == nullptr) return {};
  const RecordLine& line = *found;
  if (has_tip) return column == Column::title ? to_qt(line.title) : tr("%1 dry").arg(to_local(mass_text(line.stock, units_)));
  if (role == Qt::AccessibleTextRole) {
    return tr("%1, %2: %3").arg(to_qt(line.ref.id), headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(), data(index, Qt::DisplayRole).toString());
  }
  switch (column) {
    case Column::id: return to_qt(line.ref.id);
    case Column::title: return title_words(line);
    case Column::day: return day_text(line.day);
    case Column::tests: return line.sieve_tests == 0 ? tr("none yet") : QLocale().toString(line.sieve_tests);
    case Column::stock: return stock_shown(line);
    case Column::state: return state_shown(line);
  }
  return {};
}

// Litres need the record itself, so they are worked out once and not at every painting.
QString RecordListModel::stock_shown(const RecordLine& line) const {
  Page& page = pages_.front();
  page.stocks.resize(page.lines.size());
  QString& shown = page.stocks[static_cast<std::size_t>(&line - page.lines.data())];
  if (!shown.isNull()) return shown;
  try {
    return shown = short_stock_text(book_.workbook(), line, units_);
  } catch (const WorkbookTrouble&) {
    return to_local(mass_text(line.stock, units_));  // the trouble is told where the list is read
  }
}

// Asked for while the list is painted, where nothing may be thrown; the trouble is told where the list is read.
QString RecordListModel::state_shown(const RecordLine& line) const {
  try {
    return state_ ? state_(line) : QString();
  } catch (const WorkbookTrouble&) {
    return QStringLiteral("\u2013");
  }
}

void RecordListModel::set_state(QString heading, std::function<QString(const RecordLine&)> text, bool is_figure) {
  state_heading_ = std::move(heading);
  state_ = std::move(text);
  state_is_figure_ = is_figure;
  read();
}

QVariant RecordListModel::headerData(int section, Qt::Orientation orientation, int role) const {
  // The tip has the heading whole where its column is narrow.
  if (orientation == Qt::Vertical || (role != Qt::DisplayRole && role != Qt::ToolTipRole)) return {};
  switch (columns_[static_cast<std::size_t>(section)]) {
    case Column::id: return kind_ == RecordKind::bag ? tr("bag") : kind_ == RecordKind::fraction ? tr("fraction") : tr("no.");
    case Column::title: return kind_ == RecordKind::log_entry ? tr("what happened") : tr("what");
    case Column::day: return kind_ == RecordKind::bag ? tr("received") : tr("day");
    case Column::tests: return tr("tests");
    case Column::stock: return tr("left");
    case Column::state: return state_heading_;
  }
  return {};
}

Qt::ItemFlags RecordListModel::flags(const QModelIndex& index) const {
  const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  const bool is_grain = kind_ == RecordKind::bag || kind_ == RecordKind::fraction;
  return is_grain && index.isValid() ? flags | Qt::ItemIsDragEnabled : flags;
}

QStringList RecordListModel::mimeTypes() const { return {QLatin1String(bag_format)}; }

QMimeData* RecordListModel::mimeData(const QModelIndexList& indexes) const {
  auto* data = new QMimeData;
  if (!indexes.isEmpty()) data->setData(QLatin1String(bag_format), to_qt(ref_at(indexes.front().row()).id).toUtf8());
  return data;
}

RecordRef RecordListModel::ref_at(int row) const {
  const RecordLine* const line = row >= 0 && row < row_count_ ? line_at(row) : nullptr;
  return line != nullptr ? line->ref : RecordRef{kind_, {}};
}

int RecordListModel::row_of(const QString& id) const {
  if (id.isEmpty()) return -1;
  try {
    const auto place = book_.workbook().place_in_list({kind_, id.toStdString()}, filter_);
    return place && static_cast<int>(*place) < row_count_ ? static_cast<int>(*place) : -1;
  } catch (const WorkbookTrouble& trouble) {
    emit book_.told(sentence_text(trouble.problem()));
    return -1;
  }
}

void RecordListModel::record_changed() {
  if (!in_sight_) stale_ = true;
  else read_changes();
}

// While a note is typed into one record the list neither grows nor shrinks, and other lists are not touched at all: counting and reading them would take
// longer than saving the note.
void RecordListModel::read_changes() {
  std::vector<RecordRef> changed;
  try {
    const std::int64_t revision = book_.workbook().revision();
    changed = book_.workbook().changed_since(seen_revision_);
    // Tests and stock stand in the lines of what they belong to; whom a list is about is told by links.
    const bool concerns = filter_.about || std::ranges::any_of(changed, [&](const RecordRef& ref) { return ref.kind == kind_ || ref.kind == RecordKind::sieve_test || ref.kind == RecordKind::stock_entry; });
    if (concerns) return read(changed);
    seen_revision_ = revision;
    if (hang_on(changed)) {
      for (Page& page : pages_) page.stocks.clear();
      if (row_count_ > 0) emit dataChanged(index(0, 0), index(row_count_ - 1, columnCount() - 1));
    }
  } catch (const WorkbookTrouble& trouble) {
    emit book_.told(sentence_text(trouble.problem()));
    return;
  }
  // What a state says hangs on other records too.
  if (state_ && row_count_ > 0) emit dataChanged(index(0, 0), index(row_count_ - 1, columnCount() - 1));
}

// A fraction that was only weighed has the litre weight of its bag, and that may be its newest test's.
bool RecordListModel::hang_on(const std::vector<RecordRef>& changed) const {
  return kind_ == RecordKind::fraction && std::ranges::any_of(changed, [](const RecordRef& ref) { return ref.kind == RecordKind::bag || ref.kind == RecordKind::sieve_test; });
}

bool RecordListModel::keeps_count(const std::vector<RecordRef>& changed) const {
  const bool narrowed = filter_.subject || filter_.from_day || filter_.to_day || filter_.about || filter_.without_small || !filter_.words.empty();
  const auto is_known = [&](const RecordRef& ref) {
    return std::ranges::any_of(pages_, [&](const Page& page) { return std::ranges::any_of(page.lines, [&](const RecordLine& line) { return line.ref == ref; }); }) &&
           book_.workbook().find(ref).has_value();
  };
  return !narrowed && std::ranges::all_of(changed, [&](const RecordRef& ref) { return ref.kind != kind_ || is_known(ref); });
}

void RecordListModel::set_in_sight(bool in_sight) {
  in_sight_ = in_sight;
  if (in_sight && stale_) read();
}

void RecordListModel::set_units(UnitSystem units) {
  units_ = units;
  for (Page& page : pages_) page.stocks.clear();
  if (row_count_ > 0) emit dataChanged(index(0, 0), index(row_count_ - 1, columnCount() - 1));
}

void RecordListModel::set_filter(ListFilter filter) {
  filter_ = std::move(filter);
  read();
}

void RecordListModel::set_words(const QString& words) {
  filter_.words = words.toStdString();
  read();
}

RecordListModel::Page RecordListModel::read_page(int number) const {
  ListFilter part = filter_;
  part.offset = static_cast<std::size_t>(number) * page_rows;
  part.limit = page_rows;
  return {number, book_.workbook().list(kind_, part), {}};
}

void RecordListModel::keep_stocks(const Page& before, Page& now) {
  now.stocks.resize(now.lines.size());
  for (std::size_t i = 0; i < std::min({now.lines.size(), before.lines.size(), before.stocks.size()}); ++i) {
    const RecordLine& was = before.lines[i];
    const RecordLine& line = now.lines[i];
    if (was.ref == line.ref && was.revision == line.revision && was.sieve_tests == line.sieve_tests && same_stock(was, line)) now.stocks[i] = before.stocks[i];
  }
}

const RecordLine* RecordListModel::line_at(int row) const {
  const int number = row / page_rows;
  const auto known = std::ranges::find(pages_, number, &Page::number);
  if (known != pages_.end()) {
    pages_.splice(pages_.begin(), pages_, known);
  } else {
    try {
      pages_.push_front(read_page(number));
    } catch (const WorkbookTrouble& trouble) {
      // Kept empty, so that it is told once and not for every cell.
      pages_.push_front({number, {}, {}});
      emit book_.told(sentence_text(trouble.problem()));
    }
    if (pages_.size() > most_pages) pages_.pop_back();
  }
  const auto at = static_cast<std::size_t>(row % page_rows);
  const std::vector<RecordLine>& lines = pages_.front().lines;
  return at < lines.size() ? &lines[at] : nullptr;
}

void RecordListModel::read(const std::optional<std::vector<RecordRef>>& changed) {
  stale_ = false;
  int count = row_count_;
  std::list<Page> pages;
  try {
    const std::int64_t revision = book_.workbook().revision();
    if (!changed || !keeps_count(*changed)) count = static_cast<int>(book_.workbook().count(kind_, filter_));
    seen_revision_ = revision;
    for (const Page& page : pages_) {
      if (pages.size() == most_read_again) break;
      pages.push_back(read_page(page.number));
      const bool litres_stay = kind_ != RecordKind::fraction || (changed && !hang_on(*changed));
      if (litres_stay) keep_stocks(page, pages.back());
    }
  } catch (const WorkbookTrouble& trouble) {
    // What was read before stays in sight: it is still what the file held.
    emit book_.told(sentence_text(trouble.problem()));
    return;
  }
  const auto same_rows = [&] {
    if (count != row_count_) return false;
    return std::ranges::equal(pages, pages_ | std::views::take(static_cast<std::ptrdiff_t>(pages.size())), [](const Page& a, const Page& b) {
      return std::ranges::equal(a.lines, b.lines, [](const RecordLine& one, const RecordLine& other) { return one.ref == other.ref; });
    });
  };
  if (same_rows()) {
    std::swap(pages_, pages);
    tell_changed_rows(pages);
    return;
  }
  beginResetModel();
  row_count_ = count;
  pages_ = std::move(pages);
  endResetModel();
}

// While a note is typed no line looks different: then nothing is painted anew.
void RecordListModel::tell_changed_rows(const std::list<Page>& before) {
  const auto tell = [this](int first, int last) {
    if (first <= std::min(last, row_count_ - 1)) emit dataChanged(index(first, 0), index(std::min(last, row_count_ - 1), columnCount() - 1));
  };
  // What a state says hangs on other records too, as do a fraction's litres.
  if (state_ || kind_ == RecordKind::fraction) return tell(0, row_count_ - 1);
  for (const Page& was : before) {
    const int first = was.number * page_rows;
    const auto now = std::ranges::find(pages_, was.number, &Page::number);
    if (now == pages_.end()) {
      tell(first, first + page_rows - 1);
      continue;
    }
    const auto differs = [&](std::size_t at) { return !looks_alike(was.lines[at], now->lines[at]); };
    std::size_t from = 0, to = std::min(was.lines.size(), now->lines.size());
    while (from < to && !differs(from)) ++from;
    while (to > from && !differs(to - 1)) --to;
    if (from < to) tell(first + static_cast<int>(from), first + static_cast<int>(to) - 1);
  }
}

}  // namespace gritwright::desktop
