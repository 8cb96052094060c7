#pragma once
#include <optional>
#include <string>

#include "gritwright/domain/component.hpp"
#include "gritwright/domain/record_ref.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// What a screening set aside between two openings, with its own grading and density.
struct Fraction {
  RecordRef source;  ///< bag, bin or fraction that was screened
  std::string material;
  std::optional<Aperture> from;  ///< fell not through; absent: all below `to`
  std::optional<Aperture> to;    ///< fell through; absent: all above `from`
  std::optional<std::string> day;
  std::optional<Mass> dry_mass;          ///< as weighed
  std::optional<LooseVolume> volume;     ///< as measured by bucket
  std::optional<GrainProperties> grain;
  std::optional<BulkDensityRatio> bulk_density_ratio;  ///< predicted, > 0; counts where nothing measured its litre weight
  std::optional<GrainSizes> sizes;       ///< measured, or predicted from the bag
  bool predicted = false;                ///< `sizes` was predicted and not sieved
  std::string note;
  friend bool operator==(const Fraction&, const Fraction&) = default;
};

/// A source that is no grain, openings upside down or neither given, amounts or a ratio not above 0, breaches of the grain's order.
[[nodiscard]] Problems check(const Fraction& fraction);

}  // namespace gritwright
