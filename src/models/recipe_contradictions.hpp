#pragma once
// Which hard wishes cannot hold together. A recipe breaks a set of wishes; a set of wishes that meets every such set cannot hold.

#include <cstdint>
#include <vector>

#include "gritwright/models/recipe_search.hpp"
#include "recipe_bounds.hpp"

namespace gritwright::recipe_search {

/// Sets as bits, none of which contains another.
class MinimalSets {
 public:
  /// True if `set` contains one that is here.
  [[nodiscard]] bool covers(std::uint64_t set) const;
  void add(std::uint64_t set);
  [[nodiscard]] const std::vector<std::uint64_t>& sets() const { return sets_; }

 private:
  std::vector<std::uint64_t> sets_;
};

/// All smallest sets that meet every one of `sets`, by Berge's method; in rising order of size, then of their bits.
[[nodiscard]] std::vector<std::uint64_t> minimal_transversals(const std::vector<std::uint64_t>& sets);

struct Contradictions {
  std::vector<std::vector<std::size_t>> sets;  ///< of wishes
  bool complete = true;      ///< false: time was up or the search was stopped, and there are no sets
  bool nothing_in_reach = false;  ///< no recipe at all is within stock
};

/// Precondition: no recipe within stock holds all hard wishes.
[[nodiscard]] Contradictions find_contradictions(const BoundTables& tables, const RecipeForm& form, const SearchControl& control);

}  // namespace gritwright::recipe_search
