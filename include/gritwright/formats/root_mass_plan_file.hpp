#pragma once
#include <string>
#include <string_view>

#include "gritwright/domain/root_mass_plan.hpp"
#include "gritwright/formats/component_sources.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

struct RootMassPlanFile {
  RootMassPlan plan;
  Notes notes;  ///< what was put right while reading the grain of a bottom layer
};

/// Reads a root-mass plan from JSON ("gritwright/root-mass-plan/1"). All faults come back in one go with their JSON pointer.
[[nodiscard]] Result<RootMassPlanFile> read_root_mass_plan(std::string_view text, std::string file_name, const ComponentSources& sources);

/// The same of a plan that is still being typed: a root mass whose lengths are 0 because nobody measured them yet is read too.
[[nodiscard]] Result<RootMassPlanFile> read_begun_root_mass_plan(std::string_view text, std::string file_name, const ComponentSources& sources);

/// The plan as such a file. Grain of a bottom layer is written out, so that the plan stays what it was when the catalogue changes.
[[nodiscard]] std::string write_root_mass_plan(const RootMassPlan& plan);

}  // namespace gritwright
