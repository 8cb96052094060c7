#include "range_options.hpp"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <charconv>
#include <cstdint>
#include <system_error>

#include "gritwright/formats/catalogue_folder.hpp"

namespace gritwright::cli {

void RangeOptions::declare(CLI::App& app) {
  auto* range = app.add_flag("--range", wanted_, "Add 5, 50 and 95 % of what each figure could be");
  // The parser wraps what is below 0 or too large.
  const auto is_seed = [](const std::string& text) {
    std::uint64_t seed = 0;
    const auto end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, seed);
    return error == std::errc() && stop == end ? std::string() : std::string("a seed is a whole number from 0 to 18446744073709551615");
  };
  app.add_option("--seed", seed_, "Another sample for --range (a whole number, 1 if not given)")->needs(range)->check(is_seed);
}

std::string RangeOptions::heading() const { return std::string("90 of 100 cases (seed ").append(std::to_string(seed_)).append(")"); }

namespace {

bool names_material(const Mix& mix) {
  return std::ranges::any_of(mix.components, [](const Component& component) { return component.material.has_value(); });
}

/// The catalogue where it is wanted; materials may lie elsewhere where it isn't.
Result<std::optional<Catalogue>> catalogue_if(bool wanted) {
  std::optional<Catalogue> catalogue;
  if (!wanted) return catalogue;
  const auto folder = catalogue_folder();
  if (!folder) return folder.problems();
  auto content = read_catalogue(*folder);
  if (!content) return content.problems();
  catalogue = std::move(content).value().catalogue;
  return catalogue;
}

}  // namespace

Result<std::vector<MixSpread>> spreads_of(const PlannedDay& day) {
  const auto catalogue = catalogue_if(std::ranges::any_of(day.mixes, [](const DayMix& mix) { return names_material(mix.mix); }));
  if (!catalogue) return catalogue.problems();
  std::vector<MixSpread> spreads;
  for (const DayMix& mix : day.mixes) spreads.push_back(usual_spread(mix.mix, *catalogue ? &**catalogue : nullptr));
  return spreads;
}

Result<MixBackground> background_of(const MixFile& file) {
  const auto read = catalogue_if(names_material(file.mix));
  if (!read) return read.problems();
  const std::optional<Catalogue>& catalogue = *read;
  const auto& components = file.mix.components;
  std::vector<std::optional<SievedSample>> samples;
  for (const auto& test : file.sieve_tests) {
    samples.emplace_back();
    if (!test) continue;
    const auto analysis = analyse(*test);
    if (analysis) samples.back() = sample_of(*test, *analysis);
  }
  MixBackground background{usual_spread(file.mix, catalogue ? &*catalogue : nullptr, samples), {}};
  for (const Component& component : components) {
    const Material* material = catalogue && component.material ? catalogue->find(*component.material) : nullptr;
    background.breakdowns.push_back(material != nullptr ? typical_breakdown(*material) : std::nullopt);
  }
  return background;
}

}  // namespace gritwright::cli
