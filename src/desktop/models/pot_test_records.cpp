#include "pot_test_records.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <memory>
#include <utility>

#include "text.hpp"

namespace gritwright::desktop {

std::optional<Container> container_of(const OpenWorkbook& workbook, const PotTest& test) {
  const auto stored = test.container ? workbook.find(*test.container) : std::nullopt;
  return stored ? std::optional(stored->record.container) : std::nullopt;
}

std::pair<std::string, int> stem_and_version(const std::string& id) {
  const std::size_t slash = id.rfind('/');
  const int version = slash == std::string::npos ? 0 : to_qt(id.substr(slash + 1)).toInt();
  return version > 0 ? std::pair(id.substr(0, slash), version) : std::pair(id, 1);
}

std::vector<KeptPotTest> kept_pot_tests(const OpenWorkbook& workbook, const Stored<MixVersion>& version) {
  std::map<std::string, std::shared_ptr<const Mix>> holding;
  for (const auto& other : workbook.all<MixVersion>()) {
    if (stem_and_version(other.id.text).first != stem_and_version(version.id.text).first) continue;
    if (other.id == version.id) holding.emplace(other.id.text, nullptr);
    else if (same_recipe(other.record.mix, version.record.mix)) holding.emplace(other.id.text, std::make_shared<const Mix>(other.record.mix));
  }
  std::vector<KeptPotTest> tests;
  for (const auto& stored : workbook.all<PotTest>()) {
    const auto of = stored.record.mix ? holding.find(stored.record.mix->text) : holding.end();
    if (of == holding.end()) continue;
    auto test = kept_pot_test(stored.record, container_of(workbook, stored.record));
    if (!test) continue;
    test->of = of->second;
    tests.push_back(std::move(*test));
  }
  return tests;
}

namespace {

/// Versions of one mix that share their tests while these are gathered.
struct TestedVersions {
  std::string stem;
  std::string newest;
  std::vector<Mix> recipes;  ///< newest first
  std::vector<KeptPotTest> tests;
  RecordRef newest_test;
  std::size_t newest_test_at = 0;  ///< its place among all tests, oldest first
};

MixCalibration calibration_of(const TestedVersions& versions) {
  MixCalibration calibration;
  calibration.mix = versions.newest;
  calibration.recipes = versions.recipes;
  calibration.calibrated_by = versions.newest_test;
  calibration.tests = versions.tests.size();
  calibration.materials = material_shares(versions.recipes.front());
  return calibration;
}

/// What nothing was learnt from, as air alone by a test of unknown water, leaves no calibration.
std::optional<MixCalibration> learnt_from(const TestedVersions& versions) {
  const auto tested = tested_mix(versions.recipes.front(), versions.tests);
  if (!tested || !tested->calibration || !tested->calibration->belief) return std::nullopt;
  MixCalibration calibration = calibration_of(versions);
  calibration.constants = tested->calibration->constants;
  calibration.belief = tested->calibration->belief;
  return calibration;
}

}  // namespace

std::vector<MixCalibration> calibrations_of(const OpenWorkbook& workbook) {
  auto versions = workbook.all<MixVersion>();
  std::ranges::reverse(versions);
  std::map<std::string, std::vector<std::string>> names;
  for (const auto& version : versions) {
    auto& called = names[stem_and_version(version.id.text).first];
    if (!std::ranges::count(called, version.record.mix.name)) called.push_back(version.record.mix.name);
  }
  const auto tests = workbook.all<PotTest>();
  std::map<std::string, std::vector<std::size_t>> tests_of;
  for (std::size_t i = 0; i < tests.size(); ++i) {
    if (tests[i].record.mix) tests_of[tests[i].record.mix->text].push_back(i);
  }
  std::vector<TestedVersions> tested;
  const auto group_of = [&](const std::string& stem, const Mix& mix) {
    return std::ranges::find_if(tested, [&](const TestedVersions& one) { return one.stem == stem && !one.recipes.empty() && same_recipe(one.recipes.front(), mix); });
  };
  for (const auto& version : versions) {
    const std::string stem = stem_and_version(version.id.text).first;
    const auto mix = std::make_shared<const Mix>(version.record.mix);
    for (const std::size_t at : tests_of[version.id.text]) {
      auto test = kept_pot_test(tests[at].record, container_of(workbook, tests[at].record));
      if (!test) continue;
      auto group = group_of(stem, *mix);
      if (group == tested.end()) {
        tested.push_back({stem, version.id.text, {}, {}, ref_to(tests[at].id), at});
        group = tested.end() - 1;
      }
      if (group->recipes.empty() || !(group->recipes.back() == *mix)) group->recipes.push_back(*mix);
      if (at > group->newest_test_at) {
        group->newest_test = ref_to(tests[at].id);
        group->newest_test_at = at;
      }
      test->of = mix;
      group->tests.push_back(std::move(*test));
    }
  }
  std::vector<MixCalibration> all;
  for (const TestedVersions& one : tested) {
    if (auto calibration = learnt_from(one)) all.push_back(std::move(*calibration));
  }
  for (const auto& version : versions) {
    const auto& by = version.record.calibrated_by;
    const std::string stem = stem_and_version(version.id.text).first;
    // A test that was deleted on purpose no longer informs; one that never was in this record, or can't be read again, still does.
    const bool gone = by && !workbook.find(*by) && workbook.find_even_deleted(*by);
    if (!by || gone || group_of(stem, version.record.mix) != tested.end()) continue;
    TestedVersions alone{stem, version.id.text, {version.record.mix}, {}, *by, 0};
    MixCalibration calibration = calibration_of(alone);
    calibration.constants = version.record.mix.water;
    tested.push_back(std::move(alone));
    all.push_back(std::move(calibration));
  }
  for (MixCalibration& one : all) one.names = names[stem_and_version(one.mix).first];
  return all;
}

const std::vector<MixCalibration>& CalibrationKeeper::of(const OpenWorkbook& workbook) {
  const std::int64_t revision = workbook.revision();
  if (seen_revision_ == revision) return calibrations_;
  const auto hangs_on = [](const RecordRef& ref) { return ref.kind == RecordKind::mix || ref.kind == RecordKind::pot_test || ref.kind == RecordKind::container; };
  if (!seen_revision_ || std::ranges::any_of(workbook.changed_since(*seen_revision_), hangs_on)) calibrations_ = calibrations_of(workbook);
  seen_revision_ = revision;
  return calibrations_;
}

std::vector<ComparedTest> compared_tests(const OpenWorkbook& workbook) {
  std::vector<ComparedTest> compared;
  for (const auto& stored : workbook.all<PotTest>()) {
    if (!stored.record.mix) continue;
    const auto version = workbook.find(*stored.record.mix);
    const auto test = version ? kept_pot_test(stored.record, container_of(workbook, stored.record)) : std::nullopt;
    if (!test) continue;
    const auto tested = tested_mix(version->record.mix, {&*test, 1});
    if (tested && !tested->air.empty()) compared.push_back({stored.id.text, version->id.text, tested->air.front()});
  }
  return compared;
}

}  // namespace gritwright::desktop
