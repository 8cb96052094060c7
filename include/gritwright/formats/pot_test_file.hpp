#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "gritwright/domain/container.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/domain/pot_weighings.hpp"
#include "gritwright/formats/component_sources.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// One test in the file. The volume is the written one, else the container's to the fill line, which a format does not compute; where
/// there is neither, the caller may have a container of its own.
struct WrittenPotReading {
  std::optional<std::string> date;
  std::optional<std::variant<Container, Depth>> pot;  ///< a container, or straight walls of a depth
  std::optional<PotVolume> volume;
  std::variant<PotWeighings, PouredWater> water;
  std::string pointer;  ///< where it stands in the file
  friend bool operator==(const WrittenPotReading&, const WrittenPotReading&) = default;
};

struct PotTestFile {
  std::optional<Mix> mix;
  std::vector<WrittenPotReading> readings;  ///< at least one
  Notes notes;
};

/// Reads one or more saturate-and-drain tests of one mix from JSON ("gritwright/pot-test/1"): a single test stands at the root,
/// several in "tests". All faults come back in one go with their JSON pointer.
[[nodiscard]] Result<PotTestFile> read_pot_test(std::string_view text, std::string file_name, const ComponentSources& sources);

}  // namespace gritwright
