#pragma once
#include <filesystem>
#include <istream>
#include <string>

#include "gritwright/domain/sieve_test.hpp"
#include "gritwright/formats/component_sources.hpp"
#include "gritwright/formats/container_file.hpp"
#include "gritwright/formats/design_problem_file.hpp"
#include "gritwright/formats/mix_file.hpp"
#include "gritwright/formats/planned_day_file.hpp"
#include "gritwright/formats/pot_test_file.hpp"
#include "gritwright/formats/root_mass_plan_file.hpp"
#include "gritwright/models/sieve_analysis.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "gritwright/result.hpp"

namespace gritwright::cli {

/// The whole of `path`, or of `standard_input` for "-". Refuses what is missing, unreadable, a folder, or larger than any text the
/// readers take (read no further than that).
[[nodiscard]] Result<std::string> read_input(const std::string& path, std::istream& standard_input);

/// The name that messages give to `path`.
[[nodiscard]] std::string shown_name(const std::string& path);

/// Puts the file's name into problems found after reading it.
[[nodiscard]] Problems in_file(Problems problems, const std::string& path);

[[nodiscard]] Result<SieveTest> sieve_test_from(const std::string& path, std::istream& standard_input);

/// Where the shipped materials lie. Error: file.no-catalogue.
[[nodiscard]] Result<std::filesystem::path> catalogue_folder();

[[nodiscard]] Result<MixFile> mix_from(const std::string& path, std::istream& standard_input);
[[nodiscard]] Result<DesignProblemFile> design_problem_from(const std::string& path, std::istream& standard_input);
[[nodiscard]] Result<ContainerFile> container_from(const std::string& path, std::istream& standard_input);

[[nodiscard]] Result<PlannedDayFile> planned_day_from(const std::string& path, std::istream& standard_input);

[[nodiscard]] Result<PotTestFile> pot_test_from(const std::string& path, std::istream& standard_input);

[[nodiscard]] Result<RootMassPlanFile> root_mass_plan_from(const std::string& path, std::istream& standard_input);

/// Empty if `text` is a band like "2-6" with 0 <= from < to, else what was expected. For the option parser.
[[nodiscard]] std::string is_band(const std::string& text);
/// Precondition: is_band(text) is empty.
[[nodiscard]] Band band_from(const std::string& text);

/// Empty if `text` is not, else what was expected: an option that names a file is left out rather than given without a name.
[[nodiscard]] std::string is_file_name(const std::string& text);

/// Empty if `text` is a plain number, else what was expected; then `plain_number` gives it. For the option parser, which would
/// read numbers by the locale.
[[nodiscard]] std::string is_plain_number(const std::string& text);
[[nodiscard]] double plain_number(const std::string& text);

/// The same for a number above 0.
[[nodiscard]] std::string is_positive_number(const std::string& text);

/// Notes as lines for people; empty without notes.
[[nodiscard]] std::string notes_text(const Notes& notes, UnitSystem units);

}  // namespace gritwright::cli
