#pragma once
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/record_ref.hpp"
#include "gritwright/domain/tree.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// As lists and files spell it: "sick".
[[nodiscard]] std::string condition_name(Condition condition);

/// Whether grain is still where it once went.
enum class Standing {
  now,         ///< went in with the last repotting, or lies there
  may_remain,  ///< a later repotting did not wash it all off
  was          ///< gone since `until`
};

/// A tree that grain went to, or a bag, bin, fraction or batch where it lies.
struct RecallRow {
  RecordRef ref;
  std::string name;
  std::string species;                 ///< of a tree; else the material
  std::optional<Condition> condition;  ///< of a tree
  Standing standing = Standing::now;
  bool certain = true;  ///< false: "may contain", by a bin of several lots, a design without a batch, or an older potting
  std::string day;      ///< went in; may be empty
  std::string until;    ///< out again; may be empty
  std::string mix;      ///< id; of a tree
  std::string container;
  std::optional<Mass> stock;   ///< of what holds grain, by the ledger
  std::vector<RecordRef> way;  ///< from the start to here, both included
  bool deleted = false;        ///< the record was deleted since
  friend bool operator==(const RecallRow&, const RecallRow&) = default;
};

/// Where the grain of one record went: the list to walk the benches with.
struct RecallList {
  RecordRef of;
  std::string title;
  std::vector<RecallRow> trees;    ///< by standing, then name
  std::vector<RecallRow> holders;  ///< where the rest of it may lie
  friend bool operator==(const RecallList&, const RecallList&) = default;
};

}  // namespace gritwright
