#pragma once
#include <optional>
#include <string>

#include "gritwright/domain/container.hpp"

namespace gritwright {

/// A pot of the grower's library. Whether it is free follows from the trees.
struct RecordedContainer {
  Container container;
  std::optional<int> drain_holes;
  std::optional<Length> feet;
  bool given_away = false;  ///< broken, sold or given away
  std::string note;
  friend bool operator==(const RecordedContainer&, const RecordedContainer&) = default;
};

/// What `check(Container)` finds; no name; negative holes or feet.
[[nodiscard]] Problems check(const RecordedContainer& container);

}  // namespace gritwright
