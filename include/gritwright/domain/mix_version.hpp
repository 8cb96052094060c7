#pragma once
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/bag.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/domain/record_ref.hpp"
#include "gritwright/domain/species_group.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// One version of a mix ("M-03/2" is version 2 of mix M-03). It holds its grain as known when it was designed, so that a later
/// test of a bag changes no old mix; `sources` says where each component is taken from.
struct MixVersion {
  Mix mix;
  std::vector<std::optional<RecordRef>> sources;  ///< one per component, or empty; a bag, bin, fraction or tub
  std::optional<SpeciesGroup> group;
  std::optional<std::string> day;
  std::optional<RecordRef> calibrated_by;  ///< the pot test its water constants come from
  bool settling_measured = false;          ///< the mix's settling is by a jug of it that was worked in
  std::optional<SizeBand> wanted_band;     ///< the grain that was wanted of it
  std::optional<MixedVolume> reserved;     ///< mixed litres that the grain of its sources is kept for, as poured; batches use it up
  std::string note;
  friend bool operator==(const MixVersion&, const MixVersion&) = default;
};

/// What `check(Mix)` finds; no name; sources that do not match the components or are no grain; sizes upside down; a reserve not above 0.
[[nodiscard]] Problems check(const MixVersion& version);

}  // namespace gritwright
