#pragma once
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/mix_version.hpp"
#include "gritwright/domain/record_ref.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

struct RepottingDay;

/// Grain that went into a batch.
struct BatchPart {
  RecordRef source;  ///< bag, bin, fraction or batch
  std::optional<LooseVolume> volume;
  std::optional<Mass> dry_mass;
  friend bool operator==(const BatchPart&, const BatchPart&) = default;
};

/// One tub of mix as it was made.
struct Batch {
  std::optional<Id<MixVersion>> mix;
  std::optional<std::string> day;
  std::optional<Id<RepottingDay>> repotting_day;
  std::vector<BatchPart> parts;
  std::optional<MixedVolume> made;
  std::optional<MixedVolume> left;  ///< measured when the day was over; 0 if the tub was empty
  std::string note;
  friend bool operator==(const Batch&, const Batch&) = default;
};

/// A part that is no grain; amounts not above 0; a day that is none.
[[nodiscard]] Problems check(const Batch& batch);

}  // namespace gritwright
