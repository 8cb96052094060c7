#pragma once
#include <string>
#include <string_view>
#include <variant>

#include "gritwright/domain/planned_day.hpp"
#include "gritwright/formats/component_sources.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

struct PlannedDayFile {
  std::variant<PlannedDay, PlannedSeason> plan;
  Notes notes;  ///< what was put right while reading: passing rescaled
};

/// Reads a repotting day ("gritwright/day/1") or a season ("gritwright/season/1") from JSON. Materials of the shelf are named as
/// the catalogue names them where it knows them. All faults come back in one go with their JSON pointer.
[[nodiscard]] Result<PlannedDayFile> read_planned_day(std::string_view text, std::string file_name, const ComponentSources& sources);

}  // namespace gritwright
