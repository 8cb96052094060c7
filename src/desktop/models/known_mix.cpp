#include "known_mix.hpp"

#include <algorithm>
#include <cmath>

#include "gritwright/models/litres.hpp"
#include "gritwright/models/measured_properties.hpp"
#include "gritwright/models/sieve_pooling.hpp"
#include "record_surroundings.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

/// The same curve, but for the digits a file keeps.
bool same_curve(const GrainSizes& a, const Grading& b) {
  constexpr double digits = 1e-5;
  const auto* const graded = std::get_if<Grading>(&a);
  return graded != nullptr && std::ranges::equal(graded->points, b.points, [](const GradingPoint& one, const GradingPoint& other) {
           return std::abs(std::log(one.aperture / other.aperture)) < digits && std::abs(one.passing.value() - other.passing.value()) < digits;
         });
}

/// The sample a component's grading was measured on: a sieve test of its grain, or all of them taken as one. Empty where it rests on none.
std::optional<SievedSample> tested_sample(const OpenWorkbook& workbook, const RecordRef& source, const Component& component) {
  std::vector<SieveAnalysis> analyses;
  std::vector<SievedSample> samples;
  for (const auto& stored : workbook.sieve_tests_of(source)) {
    auto analysis = analyse(stored.record.test);
    if (!analysis) continue;
    const SievedSample sample = sample_of(stored.record.test, *analysis);
    if (same_curve(component.sizes, analysis->grading)) return sample;
    samples.push_back(sample);
    analyses.push_back(std::move(analysis).value());
  }
  if (analyses.size() < 2) return std::nullopt;
  const auto pooled = pool(analyses);
  return pooled && same_curve(component.sizes, pooled->grading) ? std::optional(taken_together(samples, *pooled)) : std::nullopt;
}

std::optional<SievedSample> sample_behind(const OpenWorkbook& workbook, const Catalogue& catalogue, const Component& component, const std::optional<RecordRef>& source) {
  if (source) {
    if (auto tested = tested_sample(workbook, *source, component)) return tested;
  }
  // As the bench has it when the version is laid on it again.
  return sample_of(evaluate_component(sheet_as_designed(component, catalogue), catalogue));
}

SettledBy settled_by(const OpenWorkbook& workbook, const MixVersion& version) {
  if (version.settling_measured) return SettledBy::jug;
  std::vector<GrainSettling> grains;
  bool all = true;
  for (std::size_t k = 0; k < version.mix.components.size(); ++k) {
    const double parts = version.mix.components[k].parts.value();
    if (!(parts > 0)) continue;
    const auto source = k < version.sources.size() ? version.sources[k] : std::nullopt;
    const auto grain = source ? grain_of_record(workbook, to_qt(source->id)) : std::nullopt;
    grains.push_back({loose_l(parts), grain ? grain->settling : std::nullopt});
    all = all && grains.back().measured;
  }
  const auto by_grains = all ? settling_of_grains(grains, default_settling(Placing::worked_in)) : std::nullopt;
  constexpr double as_kept = 1e-6;
  const auto& kept = version.mix.settling;
  return by_grains && kept && std::abs(by_grains->value() - kept->value()) < as_kept ? SettledBy::grains : SettledBy::typed;
}

/// Where no test says anything, a mix keeps the constants it was given.
LearntConstants known_constants(const Mix& mix, std::span<const MixCalibration> calibrations) {
  LearntConstants learnt = learnt_for(mix, mix.name, calibrations);
  if (!learnt.own && !learnt.pooled) learnt.constants = mix.water;
  return learnt;
}

}  // namespace

RetentionConstants known_water(const Mix& mix, std::span<const MixCalibration> calibrations) { return known_constants(mix, calibrations).constants; }

std::optional<Note> known_by_tests(const Mix& mix, std::span<const MixCalibration> calibrations) { return note_of_tests(known_constants(mix, calibrations), calibrations); }

MixQuestion known_mix(const OpenWorkbook& workbook, const Catalogue& catalogue, const MixVersion& version, std::span<const MixCalibration> calibrations) {
  MixQuestion known;
  known.mix = version.mix;
  const LearntConstants learnt = known_constants(version.mix, calibrations);
  known.mix.water = learnt.constants;
  if (learnt.own) known.belief = calibrations[*learnt.own].belief;
  known.pot_tests = tests_behind(learnt, calibrations);
  known.tested_itself = learnt.own.has_value();
  for (std::size_t k = 0; k < version.mix.components.size(); ++k)
    known.samples.push_back(sample_behind(workbook, catalogue, version.mix.components[k], k < version.sources.size() ? version.sources[k] : std::nullopt));
  known.settled_by = settled_by(workbook, version);
  return known;
}

}  // namespace gritwright::desktop
