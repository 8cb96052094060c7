#pragma once
#include <optional>
#include <string>
#include <vector>

#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

struct OwnedSieve {
  Aperture aperture;
  std::string label;  ///< as the grower calls it; may be empty
  friend bool operator==(const OwnedSieve&, const OwnedSieve&) = default;
};

/// The sieves a grower owns and stacks together.
struct SieveSet {
  std::string name;
  std::vector<OwnedSieve> sieves;  ///< coarse to fine
  std::optional<Length> diameter;
  std::string note;
  friend bool operator==(const SieveSet&, const SieveSet&) = default;
};

/// No name, no sieve, openings not falling or not above 0.
[[nodiscard]] Problems check(const SieveSet& set);

}  // namespace gritwright
