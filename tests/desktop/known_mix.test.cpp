// One mix, one set of figures and ranges: what pot tests of its versions say, and the same on every page.
#include "models/known_mix.hpp"

#include <QLabel>
#include <QLineEdit>
#include <QTranslator>
#include <algorithm>
#include <array>
#include <cmath>

#include "charts/comparison_view.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/report/root_section.hpp"
#include "models/day_certainty.hpp"
#include "models/demonstration_record.hpp"
#include "models/find_results.hpp"
#include "models/mix_learning.hpp"
#include "models/range_keeper.hpp"
#include "models/record_surroundings.hpp"
#include "models/tree_ageing.hpp"
#include "pages/mix_page.hpp"
#include "pages/root_plan_tab.hpp"
#include "pages/trees_page.hpp"
#include "record_pages.hpp"
#include "support.hpp"
#include "text.hpp"
#include "widgets/find_panel.hpp"

using namespace gritwright;
using namespace gritwright::desktop;
using Catch::Matchers::WithinAbs;

namespace {

/// A language of one word.
class OneWord : public QTranslator {
 public:
  [[nodiscard]] QString translate(const char* context, const char* source, const char*, int) const override {
    return QLatin1String(context) == QLatin1String("materials") && QLatin1String(source) == QLatin1String("calcined clay") ? QStringLiteral("Brennton") : QString();
  }
  [[nodiscard]] bool isEmpty() const override { return false; }
};

/// The invented nursery with its bags, one of its mixes on the bench under a name of its own and in a tray, and kept.
struct KeptFromBags : OpenWindow {
  KeptFromBags() : OpenWindow(Start::mixes) {
    REQUIRE(fill_with_demonstration(*record, test_catalogue()).empty());
    // Tests of the demonstration would speak here, too.
    for (const auto& test : book().all<PotTest>()) REQUIRE(record->remove(test, QStringLiteral("test")));
    QString pines;
    for (const KeptMix& mix : kept_mixes(book(), test_catalogue(), {}))
      if (mix.name.endsWith(QStringLiteral("pines"))) pines = mix.id;
    window.record_pages()->open_mix(pines);
    bench.edit(QStringLiteral("pot"), {}, [](BenchState& state) { state.pot = complete_bench().pot; });
    name_and_keep("own pines");
  }
  const OpenWorkbook& book() const { return record->workbook(); }
  const std::vector<MixCalibration>& calibrations() const { return record->calibrations(); }
  void name_and_keep(const char* name) {
    bench.edit(QStringLiteral("name"), {}, [&](BenchState& state) { state.mix_name = QString::fromLatin1(name); });
    trigger("action_keep_mix");
  }
  Stored<MixVersion> newest() const { return book().all<MixVersion>().back(); }

  /// A litre of the mix as the bench has it, `deep_cm` deep, whose k would be `k_cm_mm`.
  QString keep_pot_test(const Id<MixVersion>& of, double k_cm_mm, double deep_cm = 6) {
    const MixState& state = *bench.evaluation().mix_state;
    RetentionConstants truth;
    truth.k_cm_mm = k_cm_mm;
    const auto water = mix_in_column(state, truth, depth_cm(deep_cm));
    const double dry_g = in_g_l(state.settled->bulk_density);
    PotTest test;
    test.mix = of;
    test.volume = pot_ml(1000);
    test.filled_depth = depth_cm(deep_cm);
    test.weighed = PotWeighings{mass_g(0), mass_g(dry_g), mass_g(dry_g + 1000 * water->theta_0.value()), mass_g(dry_g + 1000 * water->container_capacity.value())};
    return record->add(test, QStringLiteral("pot test"));
  }

  Range air_on_bench() {
    window.ranges().finish();
    REQUIRE(window.ranges().mix() != nullptr);
    return *window.ranges().mix()->mix.of(MixFigure::air_filled_porosity);
  }
  MixQuestion known(const MixVersion& version) const { return known_mix(book(), test_catalogue(), version, calibrations()); }
};

void check_same(const Range& there, const Range& here) {
  // A kept grading has the digits of its file.
  CHECK_THAT(there.low, WithinAbs(here.low, 1e-6));
  CHECK_THAT(there.median, WithinAbs(here.median, 1e-6));
  CHECK_THAT(there.high, WithinAbs(here.high, 1e-6));
}

const ComparedMix& compared_with(KeptFromBags& open, const Id<MixVersion>& id) {
  open.trigger("action_show_comparison");
  open.window.mix_page().comparison().job().wait();
  QApplication::processEvents();
  const auto& mixes = open.window.mix_page().comparison().comparison().mixes;
  const auto found = std::ranges::find(mixes, to_qt(id.text), &ComparedMix::id);
  REQUIRE(found != mixes.end());
  return *found;
}

}  // namespace

TEST_CASE("The note of the tests that a mix leans on names materials in the window's language", "[known_mix]") {
  MixCalibration tested;
  tested.mix = "M-03/2";
  tested.calibrated_by = RecordRef{RecordKind::pot_test, "T-07"};
  desktop::LearntConstants learnt;
  learnt.pooled = PooledForMix{{}, 0.5, {0}, {"calcined_clay", "expanded_shale"}};
  const auto materials = [&] { return std::get<std::string>(note_of_tests(learnt, std::array{tested})->facts.at("materials")); };
  CHECK(materials() == "calcined clay, expanded shale");
  OneWord word;
  QApplication::installTranslator(&word);
  CHECK(materials() == "Brennton, expanded shale");
  QApplication::removeTranslator(&word);
}

TEST_CASE("A pot test of one version of a mix informs every version with its recipe, and counts once", "[known_mix]") {
  KeptFromBags open;
  const auto first = open.newest();
  // Another spill is another version of the same recipe.
  open.bench.edit(QStringLiteral("spill"), {}, [](BenchState& state) { state.spill = QStringLiteral("12"); });
  open.trigger("action_keep_mix");
  const auto second = open.newest();
  REQUIRE(second.id != first.id);
  CHECK_FALSE(open.bench.evaluation().calibration.has_value());
  const std::string test = open.keep_pot_test(first.id, 6).toStdString();
  REQUIRE(open.calibrations().size() == 1);
  CHECK(open.calibrations().front().tests == 1);
  const double k = open.calibrations().front().constants.k_cm_mm;
  CHECK(k < RetentionConstants{}.k_cm_mm);
  for (const auto& version : {first, second}) {
    const MixQuestion known = open.known(version.record);
    CHECK(known.mix.water.k_cm_mm == k);
    CHECK(known.belief.has_value());
  }
  REQUIRE(open.bench.evaluation().calibration.has_value());
  CHECK(open.bench.evaluation().calibration->calibrated_by.id == test);
  CHECK(open.bench.evaluation().mix->water.k_cm_mm == k);
  // Kept again, now with what was learnt: still one test, and one weight where mixes of its materials are pooled.
  open.trigger("action_keep_mix");
  const auto third = open.newest();
  REQUIRE(third.id != second.id);
  CHECK(third.record.calibrated_by == RecordRef{RecordKind::pot_test, test});
  REQUIRE(open.calibrations().size() == 1);
  CHECK(open.calibrations().front().tests == 1);
  CHECK(open.calibrations().front().constants.k_cm_mm == k);
  // A test of the newest joins it.
  open.keep_pot_test(third.id, 6, 9);
  REQUIRE(open.calibrations().size() == 1);
  CHECK(open.calibrations().front().tests == 2);
  CHECK(open.calibrations().front().mix == third.id.text);
  CHECK(kept_pot_tests(open.book(), first).size() == 2);
}

TEST_CASE("A version with another recipe has a calibration of its own, and a deleted test none", "[known_mix]") {
  KeptFromBags open;
  const auto first = open.newest();
  open.keep_pot_test(first.id, 6);
  open.bench.edit(QStringLiteral("parts"), {}, [](BenchState& state) { state.components[0].parts = QStringLiteral("9"); });
  CHECK_FALSE(open.bench.evaluation().calibration.has_value());
  CHECK(open.bench.evaluation().pooled.has_value());
  open.trigger("action_keep_mix");
  const auto other = open.newest();
  REQUIRE(other.id != first.id);
  CHECK(kept_pot_tests(open.book(), other).empty());
  CHECK_FALSE(open.known(other.record).belief.has_value());
  open.keep_pot_test(other.id, 12);
  REQUIRE(open.calibrations().size() == 2);
  CHECK(open.known(first.record).mix.water.k_cm_mm < open.known(other.record).mix.water.k_cm_mm);
  // Each test is weighed in once where the materials are pooled.
  CHECK(open.calibrations()[0].tests + open.calibrations()[1].tests == 2);
  for (const auto& test : open.book().all<PotTest>()) REQUIRE(open.record->remove(test, QStringLiteral("test")));
  CHECK(open.calibrations().empty());
  CHECK_FALSE(open.bench.evaluation().calibration.has_value());
  CHECK_FALSE(open.bench.evaluation().pooled.has_value());
}

TEST_CASE("A mix has the same range in the same pot on every page", "[known_mix]") {
  KeptFromBags open;
  for (const bool tested : {false, true}) {
    INFO((tested ? "with a pot test" : "without one"));
    const auto version = open.newest();
    if (tested) open.keep_pot_test(version.id, 6);
    const Range air = open.air_on_bench();
    const PotGeometry tray = *open.bench.evaluation().pot;
    const MixQuestion known = open.known(version.record);
    CHECK(known.belief.has_value() == tested);
    const MixSpread spread = spread_of(known, test_catalogue());

    // Compare.
    const ComparedMix& beside = compared_with(open, version.id);
    REQUIRE(beside.air_range.has_value());
    check_same(*beside.air_range, air);
    CHECK_THAT(beside.air->value(), WithinAbs(open.bench.evaluation().water->air_filled_porosity.value(), 1e-6));

    // The years to come of a tree that stands in it, new.
    RecordedContainer pot;
    pot.container = tray.container();
    const Id<RecordedContainer> pot_id{open.record->add(pot, QStringLiteral("pot")).toStdString()};
    Repotting repotting;
    repotting.day = "2026-03-14";
    repotting.mix = version.id;
    repotting.container = pot_id;
    const auto ageing = ageing_question(open.book(), test_catalogue(), repotting, open.calibrations());
    REQUIRE(ageing);
    check_same(ageing_of(*ageing, test_catalogue(), run_in_order)->years.seasons.front().staying, air);

    // A repotting day.
    Tree tree;
    tree.name = "pine, invented";
    tree.repottings.push_back(repotting);
    const Id<Tree> tree_id{open.record->add(tree, QStringLiteral("tree")).toStdString()};
    RepottingDay day;
    day.day = "2027-03-14";
    DayTree row;
    row.tree = tree_id;
    row.mix = version.id;
    row.container = pot_id;
    day.trees.push_back(row);
    const Id<RepottingDay> day_id{open.record->add(day, QStringLiteral("day")).toStdString()};
    const DayGround ground = ground_of(open.book(), test_catalogue(), day_id, open.calibrations());
    REQUIRE(ground.plan.mixes.size() == 1);
    const auto spreads = spreads_of(ground.plan, ground.mixes, open.book(), test_catalogue(), open.calibrations());
    check_same(UncertainMix(ground.plan.mixes[0].mix, spreads.at(0), tray).air_and_water(standing_sample)->air, air);

    // The section of a root-mass plan, whose pot is the tray less its root mass.
    tree.group = SpeciesGroup::conifer;
    const QString planned = open.record->add(tree, QStringLiteral("tree"));
    // Worked out while it is looked at.
    open.window.record_pages()->show_trees();
    open.window.record_pages()->trees().show_plans();
    RootPlanTab& plans = open.window.record_pages()->trees().plans();
    plans.plan_tree(planned);
    plans.desk().fill_with(to_qt(version.id.text));
    plans.desk().job().wait();
    QApplication::processEvents();
    REQUIRE(plans.desk().outcome() != nullptr);
    REQUIRE(plans.desk().worked() != nullptr);
    if (plans.desk().worked()->fits) {
      REQUIRE(plans.desk().outcome()->section);
      REQUIRE(plans.desk().outcome()->section->ranges);
      const auto around = uncertain_new_mix(plans.desk().outcome()->plan, *plans.desk().worked(), known.mix, spread).air_and_water(standing_sample);
      check_same(*plans.desk().outcome()->section->ranges->of(MixFigure::air_filled_porosity), around->air);
    }

    // As it would be opened, and as it was kept.
    check_same(UncertainMix(known.mix, spread, tray).air_and_water(standing_sample)->air, air);
  }
}

TEST_CASE("A recipe found has the range it has once it is kept", "[known_mix]") {
  KeptFromBags open;
  open.keep_pot_test(open.newest().id, 6);
  open.trigger("action_find_parts");
  open.window.mix_page().find_panel().show_more(true);
  PartsFinder& finder = open.window.mix_page().finder();
  open.bench.edit(QStringLiteral("wish"), {}, [](BenchState& state) { state.find.wish(WishRow::air).least = QStringLiteral("20"); });
  QApplication::processEvents();
  finder.search();
  finder.job().wait();
  QApplication::processEvents();
  REQUIRE(finder.found() != nullptr);
  const FoundParts& found = *finder.found();
  REQUIRE_FALSE(found.ranges.empty());
  const PotGeometry tray = *open.bench.evaluation().pot;
  for (std::size_t i = 0; i < std::min<std::size_t>(2, found.ranges.size()); ++i) {
    const MixQuestion kept = open.known(version_of(found, i, "found mix", "2026-03-14"));
    check_same(*found.ranges[i].of(MixFigure::air_filled_porosity), UncertainMix(kept.mix, spread_of(kept, test_catalogue()), tray).air_and_water(standing_sample)->air);
  }
}
