#include "mix_learning.hpp"

#include <algorithm>
#include <cmath>

#include "gritwright/models/kept_pot_tests.hpp"
#include "material_words.hpp"
#include "text.hpp"

namespace gritwright::desktop {

bool operator==(const MixCalibration& a, const MixCalibration& b) {
  // A belief is made of the constants and the tests.
  return a.mix == b.mix && a.names == b.names && a.recipes == b.recipes && a.calibrated_by == b.calibrated_by && a.tests == b.tests && a.constants == b.constants &&
         a.belief.has_value() == b.belief.has_value();
}

std::vector<TestedShares> tested_shares(std::span<const MixCalibration> calibrations) {
  std::vector<TestedShares> tested;
  for (const MixCalibration& one : calibrations) tested.push_back({one.constants, one.materials});
  return tested;
}

LearntConstants learnt_for(const Mix& mix, const std::string& name, std::span<const MixCalibration> calibrations) {
  LearntConstants learnt;
  const auto is_own = [&](const MixCalibration& one) {
    return std::ranges::count(one.names, name) > 0 && std::ranges::any_of(one.recipes, [&](const Mix& tested) { return same_recipe(tested, mix); });
  };
  if (const auto own = std::ranges::find_if(calibrations, is_own); own != calibrations.end()) {
    learnt.own = static_cast<std::size_t>(own - calibrations.begin());
    learnt.constants = own->constants;
    return learnt;
  }
  if (calibrations.empty()) return learnt;
  learnt.pooled = pooled_for(material_shares(mix), tested_shares(calibrations));
  if (learnt.pooled) learnt.constants = learnt.pooled->constants;
  return learnt;
}

std::vector<std::string> tests_behind(const LearntConstants& learnt, std::span<const MixCalibration> calibrations) {
  std::vector<std::string> tests;
  if (learnt.own) tests.push_back(calibrations[*learnt.own].calibrated_by.id);
  if (learnt.pooled) {
    for (const std::size_t i : learnt.pooled->mixes) tests.push_back(calibrations[i].calibrated_by.id);
  }
  std::ranges::sort(tests);
  tests.erase(std::unique(tests.begin(), tests.end()), tests.end());
  return tests;
}

std::optional<Note> note_of_tests(const LearntConstants& learnt, std::span<const MixCalibration> calibrations) {
  if (learnt.own) {
    const MixCalibration& own = calibrations[*learnt.own];
    return Note{"mix.calibrated-by-tests", Level::note, "", {{"test", own.calibrated_by.id}, {"mix", own.mix}, {"count", static_cast<double>(own.tests)}, {"k_cm_mm", own.constants.k_cm_mm}}};
  }
  if (!learnt.pooled) return std::nullopt;
  std::vector<std::string> mixes, materials;
  for (const std::size_t i : learnt.pooled->mixes) mixes.push_back(calibrations[i].mix);
  for (const std::string& material : learnt.pooled->materials) materials.push_back(material_words(material).toStdString());
  return Note{"mix.pooled-from-tests", Level::note, "", {{"tests", joined_names(tests_behind(learnt, calibrations))}, {"mixes", joined_names(mixes)}, {"materials", joined_names(materials)},
                                                        {"percent", std::round(100 * learnt.pooled->known)}, {"k_cm_mm", learnt.constants.k_cm_mm}}};
}

std::string joined_names(std::vector<std::string> names) {
  std::ranges::sort(names);
  names.erase(std::unique(names.begin(), names.end()), names.end());
  QStringList list;
  for (const std::string& name : names) list << to_qt(name);
  return comma_list(list).toStdString();
}

}  // namespace gritwright::desktop
