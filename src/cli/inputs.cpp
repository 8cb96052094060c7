#include "inputs.hpp"

#include <filesystem>
#include <fstream>

#include "gritwright/formats/catalogue_folder.hpp"
#include "gritwright/formats/data_folder.hpp"
#include "gritwright/formats/named_file.hpp"
#include "gritwright/formats/number.hpp"
#include "gritwright/formats/sieve_test_file.hpp"
#include "gritwright/formats/text_size.hpp"
#include "gritwright/report/messages.hpp"
#include "log_request.hpp"

namespace gritwright::cli {

namespace {

Result<std::string> read_up_to_limit(std::istream& stream, const std::string& name, std::size_t limit_mb) {
  const std::size_t limit = limit_mb << 20U;
  std::string text;
  std::string chunk(1 << 16, '\0');
  while (stream.read(chunk.data(), static_cast<std::streamsize>(chunk.size())) || stream.gcount() > 0) {
    text.append(chunk, 0, static_cast<std::size_t>(stream.gcount()));
    if (text.size() > limit) {
      return Problem{"file.too-large", {name, {}, {}, ""}, {{"limit_mb", static_cast<double>(limit_mb)}}};
    }
  }
  if (stream.bad()) return Problem{"file.unreadable", {name, {}, {}, ""}, {}};
  return text;
}

std::optional<Band> parse_band(const std::string& text) {
  const std::size_t dash = text.find('-');
  if (dash == std::string::npos) return std::nullopt;
  const auto from = parse_number(text.substr(0, dash));
  const auto to = parse_number(text.substr(dash + 1));
  if (!from || !to || *from < 0 || *to <= *from) return std::nullopt;
  return Band{aperture_mm(*from), aperture_mm(*to)};
}

Result<SieveTestGrading> graded(const std::filesystem::path& file) {
  std::ifstream unused;
  const auto test = sieve_test_from(file.string(), unused);
  if (!test) return test.problems();
  const auto analysis = analyse(*test);
  if (!analysis) return in_file(analysis.problems(), file.string());
  return SieveTestGrading{analysis->grading, test->bulk_density, test->particle_density, analysis->notes, *test};
}

// The catalogue is read only when an input names a material: a grading must not fail because the materials lie elsewhere.
template <class Read>
auto with_sources(const std::string& path, std::istream& standard_input, Read read)
    -> decltype(read(std::string(), ComponentSources{})) {
  const auto text = read_input(path, standard_input);
  if (!text) return text.problems();
  CatalogueFolder catalogue;
  if (text->find("\"material\"") != std::string::npos) {
    const auto folder = catalogue_folder();
    if (!folder) return folder.problems();
    auto content = read_catalogue(*folder);
    if (!content) return content.problems();
    catalogue = std::move(content).value();
  }
  const ComponentSources sources{&catalogue.catalogue, [path](const std::string& name) -> Result<SieveTestGrading> {
                                   // What comes through standard input has no folder; its names are as good as typed.
                                   if (path == "-" && !name.empty()) return graded(name == "-" ? "./-" : name);
                                   const auto file = file_named_in(path, name);
                                   return file ? graded(*file) : file.problems();
                                 }};
  return read(*text, sources);
}

}  // namespace

Result<std::filesystem::path> catalogue_folder() {
  if (auto folder = data_folder("materials")) return *folder;
  return Problem{"file.no-catalogue", {}, {}};
}

Result<MixFile> mix_from(const std::string& path, std::istream& standard_input) {
  return with_sources(path, standard_input, [&](const std::string& text, const ComponentSources& sources) {
    return read_mix(text, shown_name(path), sources);
  });
}

Result<DesignProblemFile> design_problem_from(const std::string& path, std::istream& standard_input) {
  return with_sources(path, standard_input, [&](const std::string& text, const ComponentSources& sources) {
    return read_design_problem(text, shown_name(path), sources);
  });
}

Result<ContainerFile> container_from(const std::string& path, std::istream& standard_input) {
  return with_sources(path, standard_input, [&](const std::string& text, const ComponentSources& sources) {
    return read_container(text, shown_name(path), sources);
  });
}

Result<PlannedDayFile> planned_day_from(const std::string& path, std::istream& standard_input) {
  return with_sources(path, standard_input, [&](const std::string& text, const ComponentSources& sources) {
    return read_planned_day(text, shown_name(path), sources);
  });
}

Result<PotTestFile> pot_test_from(const std::string& path, std::istream& standard_input) {
  return with_sources(path, standard_input, [&](const std::string& text, const ComponentSources& sources) {
    return read_pot_test(text, shown_name(path), sources);
  });
}

Result<RootMassPlanFile> root_mass_plan_from(const std::string& path, std::istream& standard_input) {
  return with_sources(path, standard_input, [&](const std::string& text, const ComponentSources& sources) {
    return read_root_mass_plan(text, shown_name(path), sources);
  });
}

std::string shown_name(const std::string& path) { return path == "-" ? "standard input" : path; }

Result<std::string> read_input(const std::string& path, std::istream& standard_input) {
  return read_long_input(path, standard_input, largest_text_mb);
}

Result<std::string> read_long_input(const std::string& path, std::istream& standard_input, std::size_t limit_mb) {
  if (path.empty()) return Problem{"file.no-name", {}, {}};
  if (path == "-") return read_up_to_limit(standard_input, shown_name(path), limit_mb);
  std::error_code trouble;
  if (std::filesystem::is_directory(path, trouble)) return Problem{"file.is-folder", {path, {}, {}, ""}, {}};
  std::ifstream file(path, std::ios::binary);
  if (!file) return Problem{std::filesystem::exists(path, trouble) ? "file.no-access" : "file.missing", {path, {}, {}, ""}, {}};
  return read_up_to_limit(file, path, limit_mb);
}

Problems in_file(Problems problems, const std::string& path) {
  for (Problem& problem : problems) {
    if (!problem.where.file) problem.where.file = shown_name(path);
  }
  return problems;
}

Result<SieveTest> sieve_test_from(const std::string& path, std::istream& standard_input) {
  const auto text = read_input(path, standard_input);
  if (!text) return text.problems();
  return read_sieve_test(*text, shown_name(path));
}

std::string is_band(const std::string& text) {
  return parse_band(text) ? "" : text + " is no band; expected two sizes in mm, finer first, like 2-6";
}

Band band_from(const std::string& text) { return parse_band(text).value(); }

std::string is_file_name(const std::string& text) { return text.empty() ? "expected the name of a file" : ""; }

std::string is_plain_number(const std::string& text) {
  const auto number = parse_number(text);
  if (number) return "";
  // Columns are no matter of an option.
  if (number.problems().front().code == "number.decimal-comma") return text + " has a decimal comma; write a point";
  return sentence(number.problems().front());
}

std::string is_positive_number(const std::string& text) {
  if (std::string wrong = is_plain_number(text); !wrong.empty()) return wrong;
  return plain_number(text) > 0 ? "" : text + " can't be; expected a number above 0";
}

double plain_number(const std::string& text) { return parse_number(text).value(); }

std::string notes_text(const Notes& notes, UnitSystem units) {
  std::string text;
  for (const Note& note : notes) {
    text += (note.level == Level::warning ? "warning: " : "note: ") + (note.where.empty() ? "" : note.where + ": ") +
            sentence(note, {}, units) + '\n';
  }
  return text.empty() ? text : '\n' + text;
}

}  // namespace gritwright::cli
