#pragma once
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/record_ref.hpp"

namespace gritwright {

enum class TraitSort { lot, mix, depth, day, plan, removed_share };

/// Something that trees may have in common, counted as "2 of 9".
struct SharedTrait {
  TraitSort sort = TraitSort::lot;
  std::string value;             ///< "K-07", "M-03/2", "6 cm", "2026-03-14", "B", "30-40 %"
  std::string title;             ///< what the id stands for; may be empty
  std::optional<RecordRef> ref;  ///< the bag or mix version
  std::size_t count = 0;         ///< of the trees asked about
  std::size_t among = 0;         ///< of them, those of which this is known at all
  std::size_t others = 0;        ///< of all other trees
  std::size_t others_among = 0;
  std::size_t uncertain = 0;     ///< of `count`, those that only may have it
  friend bool operator==(const SharedTrait&, const SharedTrait&) = default;
};

struct SharedTraits {
  std::vector<RecordRef> trees;
  std::vector<SharedTrait> traits;  ///< most common first; where equal, rarer among the others first
  friend bool operator==(const SharedTraits&, const SharedTraits&) = default;
};

}  // namespace gritwright
