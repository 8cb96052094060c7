#include "range_options.hpp"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <thread>

#include "gritwright/formats/catalogue_folder.hpp"
#include "slice_threads.hpp"

namespace gritwright::cli {

void RangeOptions::declare(CLI::App& app) {
  auto* range = app.add_flag("--range", wanted_, "Add 5, 50 and 95 % of what each figure could be");
  app.add_option("--seed", seed_, "Another sample for --range (a whole number, 1 if not given)")->needs(range);
}

std::string RangeOptions::heading() const { return std::string("90 of 100 cases (seed ").append(std::to_string(seed_)).append(")"); }

Result<MixBackground> background_of(const MixFile& file) {
  std::optional<Catalogue> catalogue;
  const auto& components = file.mix.components;
  if (std::ranges::any_of(components, [](const Component& component) { return component.material.has_value(); })) {
    const auto folder = catalogue_folder();
    if (!folder) return folder.problems();
    auto content = read_catalogue(*folder);
    if (!content) return content.problems();
    catalogue = std::move(content).value().catalogue;
  }
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

SliceRunner all_cores() { return slice_threads(std::max(1U, std::thread::hardware_concurrency())); }

}  // namespace gritwright::cli
