// The years to come on the Mixes page, and what jugs, crumble tests and pot tests of the record change on the bench.
#include <QLineEdit>
#include <QSlider>
#include <QTableWidget>
#include <algorithm>

#include "charts/ageing_view.hpp"
#include "charts/picture_tabs.hpp"
#include "gritwright/models/mix_state.hpp"
#include "models/bench_ranges.hpp"
#include "models/range_keeper.hpp"
#include "pages/mix_page.hpp"
#include "record_pages.hpp"
#include "support.hpp"
#include "text.hpp"
#include "widgets/tree_air_note.hpp"

using namespace gritwright;
using namespace gritwright::desktop;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

struct YearsWindow : OpenWindow {
  YearsWindow() : OpenWindow(Start::mixes) {
    bench.open(complete_bench());
    trigger("action_show_ageing");
  }
  AgeingView& view() { return window.mix_page().ageing(); }
  const BenchAgeing& aged() {
    view().finish();
    REQUIRE(view().ageing() != nullptr);
    return *view().ageing();
  }
  /// A bag of the first component's material, laid under it.
  void lay_bag(const Bag& bag) {
    REQUIRE(record->add(bag, QStringLiteral("bag"), QStringLiteral("A-12")) == QStringLiteral("A-12"));
    bench.edit(QStringLiteral("bag"), {}, [](BenchState& state) { state.components[0].bag = QStringLiteral("A-12"); });
  }
  void keep_as(const char* name) {
    find<QLineEdit>("mix_name")->setFocus();
    find<QLineEdit>("mix_name")->selectAll();
    type(QString::fromLatin1(name));
    trigger("action_keep_mix");
  }
};

Bag soft_bag() {
  Bag bag;
  bag.material = "akadama";
  return bag;
}

bool told(const Bench& bench, const char* code) {
  return std::ranges::any_of(bench.evaluation().notes, [&](const Note& note) { return note.code == code; });
}

double lost_air(const BenchAgeing& ageing) { return ageing.years.seasons.front().staying.median - ageing.years.seasons.back().staying.median; }

}  // namespace

TEST_CASE("The years to come show air and grading of each season, as a picture, a table and a sentence", "[years]") {
  YearsWindow open;
  const BenchAgeing& ageing = open.aged();
  REQUIRE(ageing.years.seasons.size() == seasons_ahead + 1);
  CHECK(lost_air(ageing) > 0);
  // The new mix is the one on the bench.
  CHECK_THAT(ageing.years.seasons.front().staying.median, WithinAbs(open.bench.evaluation().water->air_filled_porosity.value(), 0.01));
  const PictureTable table = ageing_table(&ageing, UnitSystem::metric);
  REQUIRE(table.rows.size() == seasons_ahead + 1);
  CHECK(table.heading.size() == 5 + static_cast<int>(ageing.years.seasons.back().grading.size()));
  for (const QStringList& row : table.rows) CHECK(row.size() == table.heading.size());
  CHECK(ageing_data(&ageing).rows.size() == table.rows.size());
  const QString sentence = open.view().accessibleDescription();
  CHECK(sentence == ageing_sentence(open.bench, &ageing));
  CHECK(sentence.contains(table.rows.front()[1]));
  CHECK(sentence.contains(table.rows.back()[1]));
  CHECK(ageing_notes(open.bench, &ageing).front().contains(QStringLiteral("typical")));
  open.trigger("action_chart_table");
  CHECK(open.find<QTableWidget>("ageing_table")->rowCount() == seasons_ahead + 1);
}

TEST_CASE("Without a pot there are no years to come, and the picture says so", "[years]") {
  YearsWindow open;
  open.bench.edit(QStringLiteral("pot"), {}, [](BenchState& state) { state.pot.depth.clear(); });
  open.view().finish();
  CHECK(open.view().ageing() == nullptr);
  CHECK(open.view().accessibleDescription().contains(QStringLiteral("need")));
  CHECK(ageing_table(nullptr, UnitSystem::metric).rows.empty());
}

TEST_CASE("The hint for the next repotting names the season and is marked as an estimate", "[years]") {
  AirOverYears years;
  const auto season = [](int number, double staying, double washed) { return SeasonAir{number, {staying, staying, staying}, {washed, washed, washed}, {}}; };
  years.seasons = {season(0, 0.25, 0.25), season(1, 0.22, 0.22), season(2, 0.19, 0.21)};
  CHECK(repotting_hint(years).contains(QStringLiteral("not below")));
  years.likely_below_staying = 2;
  CHECK(repotting_hint(years).contains(QStringLiteral("season 2 if the crumbs stay")));
  CHECK(repotting_hint(years).contains(QStringLiteral("estimate")));
  years.likely_below_washed_down = 1;
  CHECK(repotting_hint(years).contains(QStringLiteral("season 1 if the crumbs wash down")));
  years.likely_below_staying = 0;
  CHECK(repotting_hint(years).contains(QStringLiteral("already")));
}

TEST_CASE("A crumble test kept with the bag ages the mix on the bench", "[years]") {
  YearsWindow open;
  const double typical = lost_air(open.aged());
  Bag bag = soft_bag();
  bag.crumbling = Crumbling{0.2, 0.8, 10};
  open.lay_bag(bag);
  const BenchAgeing& tested = open.aged();
  REQUIRE(tested.of.breakdowns[0]);
  CHECK_THAT(tested.of.breakdowns[0]->per_season, WithinRel(2.0, 1e-9));
  CHECK(lost_air(tested) > typical);
  CHECK(ageing_notes(open.bench, &tested).front().contains(QStringLiteral("crumble test")));
  open.record->undo();
  CHECK_THAT(lost_air(open.aged()), WithinAbs(typical, 1e-12));
}

TEST_CASE("Jugs that were worked in say how far the mix settles, unless something is typed", "[years]") {
  YearsWindow open;
  CHECK(open.bench.evaluation().settled_by == SettledBy::usual);
  CHECK_THAT(open.bench.evaluation().mix->settling->value(), WithinAbs(0.08, 1e-12));
  Bag bag = soft_bag();
  bag.bulk_density = bulk_g_l(480);
  bag.worked_in_density = bulk_g_l(500);
  open.lay_bag(bag);
  // Equal parts: half settles by 4 %, half as usual.
  CHECK_THAT(open.bench.evaluation().mix->settling->value(), WithinAbs(0.06, 1e-9));
  CHECK(told(open.bench, "mix.settling-by-grains"));
  CHECK(open.find<QLineEdit>("settling")->placeholderText().contains(u'6'));
  open.bench.edit(QStringLiteral("settling"), {}, [](BenchState& state) { state.settling = QStringLiteral("10"); });
  CHECK(open.bench.evaluation().settled_by == SettledBy::typed);
  CHECK_THAT(open.bench.evaluation().mix->settling->value(), WithinAbs(0.10, 1e-12));
  CHECK_FALSE(told(open.bench, "mix.settling-by-grains"));
}

TEST_CASE("A jug of the mix itself stands before all else and narrows what settling leaves open", "[years]") {
  YearsWindow open;
  open.keep_as("pines");
  MixQuestion question = *mix_question(open.bench);
  const double usual = spread_of(question, test_catalogue()).settling.up;
  auto kept = open.record->workbook().all<MixVersion>().front();
  MixVersion worked_in = kept.record;
  worked_in.mix.settling = Settling(0.11);
  worked_in.settling_measured = true;
  REQUIRE(open.record->replace(kept, worked_in, QStringLiteral("jug")));
  CHECK(open.bench.evaluation().settled_by == SettledBy::jug);
  CHECK_THAT(open.bench.evaluation().mix->settling->value(), WithinAbs(0.11, 1e-12));
  CHECK(told(open.bench, "mix.settling-by-jug"));
  question = *mix_question(open.bench);
  CHECK(spread_of(question, test_catalogue()).settling.up < usual);
  // Other parts are another mix, whose jug nobody worked in.
  open.bench.edit(QStringLiteral("parts"), {}, [](BenchState& state) { state.components[0].parts = QStringLiteral("7"); });
  CHECK(open.bench.evaluation().settled_by == SettledBy::usual);
}

TEST_CASE("A mix without a pot test leans on tests of mixes with its materials, and quotes them", "[years]") {
  YearsWindow open;
  open.keep_as("pines");
  auto kept = open.record->workbook().all<MixVersion>().front();
  MixVersion tested = kept.record;
  tested.mix.water.k_cm_mm = 6;
  tested.calibrated_by = RecordRef{RecordKind::pot_test, "T-07"};
  REQUIRE(open.record->replace(kept, tested, QStringLiteral("test")));
  open.find<QLineEdit>("mix_name")->selectAll();
  open.type(QStringLiteral("maples"));
  open.bench.edit(QStringLiteral("parts"), {}, [](BenchState& state) { state.components[0].parts = QStringLiteral("3"); });
  const BenchEvaluation& evaluation = open.bench.evaluation();
  CHECK_FALSE(evaluation.calibration.has_value());
  REQUIRE(evaluation.pooled.has_value());
  CHECK(evaluation.mix->water.k_cm_mm < RetentionConstants{}.k_cm_mm);
  CHECK(evaluation.mix->water.k_cm_mm > 6);
  const auto note = std::ranges::find(evaluation.notes, "mix.pooled-from-tests", &Note::code);
  REQUIRE(note != evaluation.notes.end());
  CHECK(std::get<std::string>(note->facts.at("tests")) == "T-07");
  CHECK(std::get<std::string>(note->facts.at("mixes")) == kept.id.text);
  CHECK(by_pot_tests(*mix_question(open.bench)).contains(QStringLiteral("leaning on pot test T-07")));
  // Its own test goes before; here it holds for the same parts again.
  open.bench.edit(QStringLiteral("parts"), {}, [](BenchState& state) {
    state.components[0].parts = QStringLiteral("1");
    state.mix_name = QStringLiteral("pines");
  });
  CHECK(open.bench.evaluation().calibration.has_value());
  CHECK_FALSE(open.bench.evaluation().pooled.has_value());
  CHECK(open.bench.evaluation().mix->water.k_cm_mm == 6);
  CHECK(by_pot_tests(*mix_question(open.bench)).contains(QStringLiteral("by pot test T-07")));
}

TEST_CASE("Beside a tree's next repotting stands when its ground likely holds too little air", "[years]") {
  YearsWindow open;
  Bag bag = soft_bag();
  bag.crumbling = Crumbling{0.2, 0.8, 10};
  open.lay_bag(bag);
  open.keep_as("pines");
  RecordedContainer pot;
  pot.container = open.bench.evaluation().pot->container();
  pot.container.name = "tray, invented";
  const QString pot_id = open.record->add(pot, QStringLiteral("pot"));
  const auto kept = open.record->workbook().all<MixVersion>().front();
  Tree tree;
  tree.species = "pine, invented";
  Repotting repotting;
  repotting.day = "2026-03-14";
  repotting.mix = kept.id;
  tree.repottings.push_back(repotting);
  CHECK_FALSE(ageing_question(open.record->workbook(), test_catalogue(), repotting, {}));
  tree.repottings.back().container = Id<RecordedContainer>{pot_id.toStdString()};
  // The bag's own crumble test counts for the tree, too.
  const auto question = ageing_question(open.record->workbook(), test_catalogue(), tree.repottings.back(), open.record->calibrations());
  REQUIRE(question);
  CHECK_THAT(question->breakdowns[0]->per_season, WithinRel(2.0, 1e-9));
  open.record->add(tree, QStringLiteral("tree"));
  open.trigger("action_page_trees");
  auto* note = open.find<TreeAirNote>("tree_air_text");
  note->job().wait();
  CHECK(note->isVisible());
  CHECK(note->text() == tree_air_sentence(tree.repottings.back(), *ageing_of(*question, test_catalogue(), run_in_order)));
  CHECK(note->text().contains(day_text("2026-03-14")));
}

TEST_CASE("While a slider moves the years follow from a small sample, and stand still on the whole one", "[years]") {
  YearsWindow open;
  const double still = open.aged().years.seasons.back().staying.median;
  CHECK(open.aged().draws == standing_sample.draws);
  open.find<QSlider>("parts_slider_1")->setValue(60);
  // What was there stands until the first answer; then it is that of the mix that is shown.
  REQUIRE(open.view().ageing() != nullptr);
  open.view().moving_job().wait();
  REQUIRE(open.view().ageing() != nullptr);
  CHECK(open.view().ageing()->draws == moving_years_sample.draws);
  CHECK(open.view().ageing()->of.mix.mix.components[0].parts.value() == 6);
  const double moving = open.view().ageing()->years.seasons.back().staying.median;
  CHECK(moving != still);
  QTRY_VERIFY(open.view().ageing()->draws == standing_sample.draws);
  CHECK_THAT(open.view().ageing()->years.seasons.back().staying.median, WithinAbs(moving, 0.02));
}
