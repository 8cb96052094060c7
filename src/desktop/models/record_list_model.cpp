#include "record_list_model.hpp"

#include <QDate>
#include <QLocale>
#include <QMimeData>
#include <algorithm>
#include <utility>

#include "text.hpp"

namespace gritwright::desktop {

namespace {

QString day_text(const std::string& iso) {
  const QDate day = QDate::fromString(to_qt(iso), Qt::ISODate);
  return day.isValid() ? QLocale().toString(day, QLocale::ShortFormat) : to_qt(iso);
}

}  // namespace

RecordListModel::RecordListModel(RecordBook& book, RecordKind kind, std::vector<Column> columns, QObject* parent)
    : QAbstractTableModel(parent), book_(book), kind_(kind), columns_(std::move(columns)) {
  connect(&book_, &RecordBook::changed, this, &RecordListModel::record_changed);
  read();
}

int RecordListModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(lines_.size()); }

int RecordListModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(columns_.size()); }

QVariant RecordListModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const RecordLine& line = lines_[static_cast<std::size_t>(index.row())];
  const Column column = columns_[static_cast<std::size_t>(index.column())];
  if (role == Qt::TextAlignmentRole) {
    return static_cast<int>((column == Column::tests || column == Column::stock ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  }
  if (role == Qt::ToolTipRole && column == Column::title) return to_qt(line.title);
  if (role == Qt::AccessibleTextRole) {
    return tr("%1, %2: %3").arg(to_qt(line.ref.id), headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(), data(index, Qt::DisplayRole).toString());
  }
  if (role != Qt::DisplayRole) return {};
  switch (column) {
    case Column::id: return to_qt(line.ref.id);
    case Column::title: return to_qt(line.title);
    case Column::day: return day_text(line.day);
    case Column::tests: return line.sieve_tests == 0 ? tr("none yet") : QLocale().toString(line.sieve_tests);
    case Column::stock: return to_local(mass_text(line.stock, units_));
    case Column::state: return state_ ? state_(line) : QString();
  }
  return {};
}

void RecordListModel::set_state(QString heading, std::function<QString(const RecordLine&)> text) {
  state_heading_ = std::move(heading);
  state_ = std::move(text);
  read();
}

QVariant RecordListModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation == Qt::Vertical || role != Qt::DisplayRole) return {};
  switch (columns_[static_cast<std::size_t>(section)]) {
    case Column::id: return kind_ == RecordKind::bag ? tr("bag") : kind_ == RecordKind::fraction ? tr("fraction") : tr("no.");
    case Column::title: return kind_ == RecordKind::log_entry ? tr("what happened") : tr("what");
    case Column::day: return kind_ == RecordKind::bag ? tr("received") : tr("day");
    case Column::tests: return tr("sieve tests");
    case Column::stock: return tr("left, dry");
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
  return row >= 0 && row < rowCount() ? lines_[static_cast<std::size_t>(row)].ref : RecordRef{kind_, {}};
}

int RecordListModel::row_of(const QString& id) const {
  const auto found = std::ranges::find(lines_, id.toStdString(), [](const RecordLine& line) { return line.ref.id; });
  return found == lines_.end() ? -1 : static_cast<int>(found - lines_.begin());
}

void RecordListModel::record_changed() {
  if (in_sight_) read();
  else stale_ = true;
}

void RecordListModel::set_in_sight(bool in_sight) {
  in_sight_ = in_sight;
  if (in_sight && stale_) read();
}

void RecordListModel::set_units(UnitSystem units) {
  units_ = units;
  read();
}

void RecordListModel::set_filter(ListFilter filter) {
  filter_ = std::move(filter);
  read();
}

void RecordListModel::read() {
  stale_ = false;
  std::vector<RecordLine> lines;
  try {
    lines = book_.workbook().list(kind_, filter_);
  } catch (const WorkbookTrouble& trouble) {
    // What was read before stays in sight: it is still what the file held.
    emit book_.told(sentence_text(trouble.problem()));
    return;
  }
  const bool same_rows = std::ranges::equal(lines, lines_, [](const RecordLine& a, const RecordLine& b) { return a.ref == b.ref; });
  if (same_rows) {
    lines_ = std::move(lines);
    if (!lines_.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    return;
  }
  beginResetModel();
  lines_ = std::move(lines);
  endResetModel();
}

}  // namespace gritwright::desktop
