#pragma once
// Tables of where grain went and of what trees share, in the reader's language.

#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "charts/picture_table.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "gritwright/workbook/trace.hpp"

namespace gritwright::desktop {

/// What was meant by a typed number or mark, or why nothing was.
struct Called {
  std::optional<RecordRef> record;
  QString fault;
};

/// The record of that printable id, of whatever kind but lines of the log and of the ledger; else the one bag whose lot is marked so, in whatever case.
/// Neither a record nor a fault where nothing was typed.
[[nodiscard]] Called called(const OpenWorkbook& workbook, const QString& id_or_lot);

/// A table, and what each of its rows stands for.
struct RecordTable {
  PictureTable table;
  std::vector<RecordRef> refs;
};

[[nodiscard]] QString condition_word(Condition condition);

/// The trees of a recall list: those that stand in it first.
[[nodiscard]] RecordTable recalled_trees(const RecallList& list);
/// Where the rest of its grain went or lies.
[[nodiscard]] RecordTable recalled_holders(const RecallList& list, UnitSystem units);
[[nodiscard]] QString recall_sentence(const RecallList& list);

/// What a tree stands in, nearest first, every step set in below the one it came into.
[[nodiscard]] RecordTable ground_of_tree(const Trace& back);
[[nodiscard]] QString ground_sentence(const Trace& back);

/// A tree as it is doing, for choosing which to compare.
struct TreeState {
  Id<Tree> id;
  QString name;  ///< with its species
  std::optional<Condition> condition;
  QString since;  ///< the first day of it, in the reader's form; empty if it was never written down
  QString note;
  QString potted;  ///< day of the last repotting and its mix
};
/// All trees: sick, then to be watched, dead, thriving and without a word; in each those that changed last first.
[[nodiscard]] std::vector<TreeState> tree_states(const OpenWorkbook& workbook);

/// Each trait as "2 of 9" of these trees beside all others. With several trees, what only one of them has is left out.
[[nodiscard]] RecordTable shared_table(const SharedTraits& shared);
/// That few trees prove nothing.
[[nodiscard]] QString shared_caution();
/// What to look at first, before any trait is blamed.
[[nodiscard]] QStringList first_looks();

/// The list as the ending of `path` asks: JSON for .json, CSV for .csv, both for programs, else text in the reader's language.
[[nodiscard]] std::string recall_file(const RecallList& list, const QString& path, UnitSystem units);
[[nodiscard]] std::string shared_file(const SharedTraits& shared, const QString& path);

}  // namespace gritwright::desktop
