#pragma once
#include <string>
#include <string_view>

#include "gritwright/domain/design_problem.hpp"
#include "gritwright/formats/component_sources.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

struct DesignProblemFile {
  DesignProblem problem;
  Notes notes;  ///< what was put right while reading: passing rescaled
};

/// Reads a design problem from JSON ("gritwright/design/1"). Whole parts, a total of 12 and 4 components where absent; a wish is
/// soft and weighs 1. All faults come back in one go with their JSON pointer.
[[nodiscard]] Result<DesignProblemFile> read_design_problem(std::string_view text, std::string file_name,
                                                            const ComponentSources& sources);

}  // namespace gritwright
