#include "day_trees_model.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

#include "bud_words.hpp"
#include "text.hpp"

namespace gritwright::desktop {

int DayTreesModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(lines_.size()); }
int DayTreesModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(columns); }

QString DayTreesModel::text_of(const DayLine& line, int column) {
  switch (column) {
    case tree: return line.tree;
    case mix: return line.mix;
    case pot: return line.pot;
    case plan: return line.plan;
    case in_pot: return line.in_pot;
    case pour: return line.pour;
    case scoops: return line.scoops;
    case used: return line.used;
    case buds: return line.buds;
    case helper: return line.helper;
    case note: return line.fault.isEmpty() ? line.note : line.fault;
    default: return {};
  }
}

QVariant DayTreesModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const DayLine& line = lines_[static_cast<std::size_t>(index.row())];
  const int column = index.column();
  if (role == Qt::CheckStateRole && column == done) return line.done ? Qt::Checked : Qt::Unchecked;
  if (role == Qt::DisplayRole) return text_of(line, column);
  if (role == Qt::EditRole) return column == note ? line.note : text_of(line, column);
  if (role == Qt::ToolTipRole && !line.fault.isEmpty()) return tr("%1 %2").arg(line.tree, line.fault);
  if (role == Qt::ToolTipRole) return text_of(line, column);
  if (role == Qt::TextAlignmentRole) {
    const bool number = column == in_pot || column == pour || column == scoops || column == used;
    return static_cast<int>((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  }
  if (role == Qt::AccessibleTextRole) {
    const QString text = column == done ? (line.done ? tr("done") : tr("to do")) : text_of(line, column);
    return tr("%1, %2: %3").arg(line.tree, headerData(column, Qt::Horizontal, Qt::DisplayRole).toString(), text);
  }
  return {};
}

bool DayTreesModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid()) return false;
  const DayLine line = lines_[static_cast<std::size_t>(index.row())];
  if (role == Qt::CheckStateRole && index.column() == done) {
    emit ticked(line.id, value.toInt() == Qt::Checked);
    return true;
  }
  if (role != Qt::EditRole || value.toString() == data(index, Qt::EditRole).toString()) return false;
  emit written(line.id, index.column(), value.toString());
  return true;
}

QVariant DayTreesModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation == Qt::Vertical || (role != Qt::DisplayRole && role != Qt::ToolTipRole)) return {};
  const bool tip = role == Qt::ToolTipRole;
  switch (section) {
    case done: return tip ? tr("ticking a tree off takes its grain from the stock and writes its history and the log") : tr("done");
    case tree: return tr("tree");
    case mix: return tr("mix");
    case pot: return tr("pot");
    case plan: return tip ? tr("the plan to follow; after the work, the one that was followed") : tr("plan");
    case in_pot: return tip ? tr("main mix as it lies in the pot") : tr("in the pot");
    case pour: return tip ? tr("before settling and spill") : tr("to pour");
    case scoops: return tr("scoops");
    case used: return tip ? tr("litres that were poured in; they teach settling and spill") : tr("poured in");
    case buds: return tip ? comma_list(bud_choices()) : tr("buds");
    case helper: return tr("helper");
    case note: return tr("note");
    default: return {};
  }
}

Qt::ItemFlags DayTreesModel::flags(const QModelIndex& index) const {
  if (!index.isValid()) return Qt::NoItemFlags;
  Qt::ItemFlags flags = Qt::ItemIsSelectable | Qt::ItemIsEnabled;
  const int column = index.column();
  if (column == done) flags |= Qt::ItemIsUserCheckable;
  if (column == plan || column == used || column == buds || column == helper || column == note) flags |= Qt::ItemIsEditable;
  return flags;
}

void DayTreesModel::set_lines(std::vector<DayLine> lines) {
  if (lines == lines_) return;
  const auto stands_in = [](const std::vector<DayLine>& all, const DayLine& line) { return std::ranges::find(all, line.id, &DayLine::id) != all.end(); };
  // Line by line and not as a whole, for a cell that is being written into stays open only as long as its line does.
  for (int at = rowCount() - 1; at >= 0; --at) {
    if (stands_in(lines, lines_[static_cast<std::size_t>(at)])) continue;
    beginRemoveRows({}, at, at);
    lines_.erase(lines_.begin() + at);
    endRemoveRows();
  }
  std::vector<DayLine> fresh;
  std::ranges::copy_if(lines, std::back_inserter(fresh), [&](const DayLine& line) { return !stands_in(lines_, line); });
  if (!fresh.empty()) {
    beginInsertRows({}, rowCount(), rowCount() + static_cast<int>(fresh.size()) - 1);
    lines_.insert(lines_.end(), fresh.begin(), fresh.end());
    endInsertRows();
  }
  if (lines_.empty()) return;
  if (std::ranges::equal(lines, lines_, {}, &DayLine::id, &DayLine::id)) {
    lines_ = std::move(lines);
  } else {
    emit layoutAboutToBeChanged();
    const QModelIndexList before = persistentIndexList();
    const std::vector<DayLine> former = std::exchange(lines_, std::move(lines));
    QModelIndexList after;
    for (const QModelIndex& one : before) after << index(line_of(former[static_cast<std::size_t>(one.row())].id), one.column());
    changePersistentIndexList(before, after);
    emit layoutChanged();
  }
  emit dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
}

int DayTreesModel::line_of(const QString& id) const {
  const auto found = std::ranges::find(lines_, id, &DayLine::id);
  return found == lines_.end() ? -1 : static_cast<int>(found - lines_.begin());
}

}  // namespace gritwright::desktop
