#pragma once
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/record_ref.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// Something tipped into a bin. What is taken out later may contain it until it was all emptied out.
struct BinContent {
  RecordRef source;  ///< bag, fraction, batch or another bin
  std::optional<std::string> day;      ///< tipped in
  std::optional<std::string> emptied;  ///< none of it left from this day on
  std::optional<Mass> dry_mass;
  friend bool operator==(const BinContent&, const BinContent&) = default;
};

/// A bin or leftover tub that holds several lots.
struct Bin {
  std::string name;
  std::string material;
  std::vector<BinContent> contents;
  std::optional<BulkDensity> bulk_density;  ///< dry
  std::string note;
  friend bool operator==(const Bin&, const Bin&) = default;
};

/// No name; a content that is no grain; days that are none; masses not above 0.
[[nodiscard]] Problems check(const Bin& bin);

}  // namespace gritwright
