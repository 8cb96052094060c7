#pragma once
#include <optional>
#include <string>

#include "gritwright/domain/component.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// A material of the grower's own beside the catalogue.
struct OwnMaterial {
  std::string name;
  std::optional<std::string> resembles;  ///< the catalogue material whose typical figures stand in
  std::optional<GrainProperties> grain;
  std::string note;
  friend bool operator==(const OwnMaterial&, const OwnMaterial&) = default;
};

/// No name; breaches of the grain's order.
[[nodiscard]] Problems check(const OwnMaterial& material);

}  // namespace gritwright
