#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gritwright/domain/mix.hpp"
#include "gritwright/formats/component_sources.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

struct MixFile {
  Mix mix;
  Notes notes;  ///< what was put right while reading: passing rescaled
  std::vector<std::optional<SieveTest>> sieve_tests;  ///< by component, where its grading came from one
};

/// Reads a mix from JSON ("gritwright/mix/1"). Settling and spill stay unknown, and count as 0, and the water constants are standard where absent.
/// All faults come back in one go with their JSON pointer.
[[nodiscard]] Result<MixFile> read_mix(std::string_view text, std::string file_name, const ComponentSources& sources);

}  // namespace gritwright
