#include "models/bench.hpp"

#include "gritwright/models/litres.hpp"
#include "gritwright/report/text_table.hpp"
#include "models/bench_files.hpp"
#include "models/figures.hpp"
#include "models/sheets_from_records.hpp"
#include "support.hpp"
#include "support/paths.hpp"

using namespace gritwright;
using namespace gritwright::desktop;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

const Figure& figure_of(const std::vector<FigureGroup>& groups, const char* key) {
  for (const FigureGroup& group : groups) {
    for (const Figure& figure : group.figures) {
      if (figure.key == QLatin1String(key)) return figure;
    }
  }
  FAIL("no figure " << key);
  return groups.front().figures.front();
}

}  // namespace

TEST_CASE("A complete bench gives what the engine gives", "[bench]") {
  Bench bench(test_catalogue());
  bench.open(complete_bench());
  const BenchEvaluation& result = bench.evaluation();
  REQUIRE(result.water);
  // Rim 40 x 30, base 34 x 22, 6 deep: 5796 cm3 by the prismatoid formula.
  CHECK_THAT(in_ml(result.pot->volume()), WithinAbs(5796, 1e-6));
  CHECK_THAT(result.water->container_capacity.value() + result.water->total_air.value(),
             WithinAbs(result.mix_state->settled->voids_between_grains.value() + result.mix_state->settled->open_voids_in_grains.value(), 1e-9));
  // 5.796 L / ((1 - .08)(1 - .07)), then each by its share of the loose litres and the shrinkage.
  CHECK_THAT(in_l(*result.to_fill), WithinRel(5.796 / (0.92 * 0.93), 1e-9));
  REQUIRE(result.to_measure_out->size() == 2);
  CHECK_THAT(in_l(result.to_measure_out->front()), WithinRel(in_l(*result.to_fill) / 2 / (1 - result.mix_state->shrinkage->value()), 1e-9));
}

TEST_CASE("What can't be computed is a dash with its reason", "[bench][refuses]") {
  Bench bench(test_catalogue());
  const auto empty = bench_figures(bench);
  for (const FigureGroup& group : empty) {
    for (const Figure& figure : group.figures) {
      INFO(figure.key);
      CHECK(figure.value == QStringLiteral("\u2013"));
      CHECK_FALSE(figure.reason.isEmpty());
    }
  }
  BenchState state = complete_bench();
  state.components[1].sheet.pan.retained = QStringLiteral("x");
  bench.open(state);
  CHECK(figure_of(bench_figures(bench), "volume_ml").value == local("5.80 L"));
  CHECK(bench.evaluation().components[1].faults.count("/pan_g") == 1);
}

TEST_CASE("Every figure with a value says where it comes from", "[bench]") {
  Bench bench(test_catalogue());
  bench.open(complete_bench());
  for (const FigureGroup& group : bench_figures(bench)) {
    for (const Figure& figure : group.figures) {
      INFO(figure.key);
      CHECK(figure.value != QStringLiteral("\u2013"));
      REQUIRE_FALSE(figure.explanations.empty());
      CHECK_FALSE(figure.explanations.front().formula.empty());
      CHECK_FALSE(figure.explanations.front().source.empty());
    }
  }
}

TEST_CASE("Consecutive edits of one place are one step, and an edit that changes nothing is none", "[bench]") {
  Bench bench(test_catalogue());
  const auto set = [&](const char* text) {
    bench.edit(QStringLiteral("depth of the pot"), QStringLiteral("depth"), [&](BenchState& state) { state.pot.depth = QString::fromLatin1(text); });
  };
  set("6");
  set("6.5");
  CHECK(bench.undo_stack().count() == 1);
  set("6.5");
  CHECK(bench.undo_stack().count() == 1);
  bench.end_typing();
  set("7");
  CHECK(bench.undo_stack().count() == 2);
  bench.undo_stack().undo();
  CHECK(bench.state().pot.depth == QStringLiteral("6.5"));
  bench.end_typing();
  set("8");
  set("6.5");
  CHECK(bench.undo_stack().count() == 1);
}

TEST_CASE("Components without parts stay out of the mix, all without parts are told", "[bench]") {
  Bench bench(test_catalogue());
  BenchState state = complete_bench();
  state.components[0].parts = QStringLiteral("0");
  bench.open(state);
  REQUIRE(bench.evaluation().mix);
  CHECK(bench.evaluation().mixed == std::vector<std::size_t>{1});
  state.components[1].parts = QStringLiteral("0");
  bench.open(state);
  CHECK_FALSE(bench.evaluation().mix);
  CHECK(figure_of(bench_figures(bench), "shrinkage_percent").reason == QStringLiteral("give a component parts"));
}

TEST_CASE("A measured litre weight replaces the catalogue's typical one and leaves the others typical", "[bench]") {
  Bench bench(test_catalogue());
  BenchState state = complete_bench();
  state.components[0].grain.bulk_density = QStringLiteral("640,5");
  bench.open(state);
  CHECK_THAT(in_g_l(bench.evaluation().components[0].component->grain.bulk_density), WithinRel(640.5, 1e-12));
  CHECK(bench.evaluation().components[0].component->grain.provenance == Provenance::typical);
  state.components[0].grain.bulk_density = QStringLiteral("5000");
  bench.open(state);
  CHECK_FALSE(bench.evaluation().components[0].component);
  CHECK(bench.evaluation().components[0].faults.count("/bulk_density_g_l") > 0);
}

TEST_CASE("A record put on the sheet reads back as the same record", "[bench][roundtrip]") {
  const auto test = open_sieve_test(QStringLiteral(GRITWRIGHT_SOURCE_DIR "/demo-data/sieve_tests/p_03_1.csv"));
  REQUIRE(test);
  const ComponentSheet component = component_of(*test, QStringLiteral("P-03"));
  const auto evaluation = evaluate_component(component, test_catalogue());
  REQUIRE(evaluation.test);
  CHECK(evaluation.test->rows == test->rows);
  CHECK(evaluation.test->pan == test->pan);
  CHECK(evaluation.test->dry_mass == test->dry_mass);
  CHECK(evaluation.test->sieve_diameter == test->sieve_diameter);
}

TEST_CASE("What the sheet has no column for survives being opened", "[bench][roundtrip][regression]") {
  SieveTest test;
  test.rows = {{aperture_mm(4), mass_g(60), MassShare(0.25)}, {aperture_mm(2), mass_g(30), {}}};
  test.pan = mass_g(10);
  test.pan_crumbs = MassShare(0.5);
  test.dry_mass = mass_g(100);
  test.resolution = mass_g(0.5);
  const auto evaluation = evaluate_component(component_of(test, QStringLiteral("a")), test_catalogue());
  REQUIRE(evaluation.test);
  CHECK(evaluation.test->rows == test.rows);
  CHECK(evaluation.test->pan_crumbs == test.pan_crumbs);
  CHECK(evaluation.test->resolution == test.resolution);
}

TEST_CASE("What the pot's form has no field for survives being opened", "[bench][roundtrip][regression]") {
  Container tray;
  tray.rim = {length_cm(30), length_cm(20)};
  tray.base = Section{length_cm(28), length_cm(18)};
  tray.depth = depth_cm(6);
  tray.corner_radius = length_cm(2);
  tray.fillet_radius = length_cm(0.5);
  tray.mound = Mound{depth_cm(1), MoundForm::cone};
  tray.tilt.axis = TiltAxis::width;
  tray.mass = mass_kg(2.5);
  Bench bench(test_catalogue());
  BenchState state = empty_bench();
  state.pot = sheet_of(tray);
  bench.open(state);
  REQUIRE(bench.evaluation().pot);
  CHECK(bench.evaluation().pot->container() == tray);
}

TEST_CASE("A pot measured as heights and areas is one of the bench's pots, with each fault of its table below it", "[bench][roundtrip]") {
  Container measured;
  measured.shape = Shape::profile;
  measured.areas = {{depth_cm(0), area_cm2(450)}, {depth_cm(4), area_cm2(520.5)}, {depth_cm(8), area_cm2(600)}};
  measured.depth = depth_cm(8);
  measured.freeboard = depth_cm(0.5);
  Bench bench(test_catalogue());
  BenchState state = complete_bench();
  state.pot = sheet_of(measured);
  bench.open(state);
  REQUIRE(bench.evaluation().pot);
  CHECK(bench.evaluation().pot->container() == measured);
  CHECK(bench.evaluation().water.has_value());
  CHECK(bench.evaluation().to_fill.has_value());
  for (const char* faulty : {"0 450", "0 450; 4", "0 450; 4 -5", "4 520; 0 450", "rubbish"}) {
    INFO(faulty);
    state.pot.areas = QString::fromLatin1(faulty);
    bench.open(state);
    CHECK_FALSE(bench.evaluation().pot);
    CHECK(bench.evaluation().faults.contains("/areas"));
    CHECK(bench.evaluation().faults.size() == bench.evaluation().faults.count("/areas"));
  }
  state.pot.areas.clear();
  bench.open(state);
  CHECK_FALSE(bench.evaluation().pot);
  CHECK(bench.evaluation().faults.empty());
}

TEST_CASE("A component with a fault leaves dashes, not the figures of another mix", "[bench][regression]") {
  Bench bench(test_catalogue());
  BenchState state = demonstration(test_catalogue()).value();
  state.components[1].sheet.pan.retained = QStringLiteral("x");
  bench.open(state);
  CHECK_FALSE(bench.evaluation().mix);
  CHECK_FALSE(bench.evaluation().to_measure_out);
  state.components[1].parts = QStringLiteral("0");
  bench.open(state);
  REQUIRE(bench.evaluation().mix);
  CHECK(bench.evaluation().mix->components.size() == state.components.size() - 1);
}

TEST_CASE("The demonstration opens whole and computes every figure", "[bench]") {
  Bench bench(test_catalogue());
  const auto state = demonstration(test_catalogue());
  REQUIRE(state);
  bench.open(*state);
  CHECK(bench.evaluation().water.has_value());
  CHECK(bench.evaluation().to_measure_out.has_value());
  CHECK(bench.evaluation().faults.empty());
}

TEST_CASE("What is to be measured out says by which litres, settling, spill and shares it was reckoned", "[bench]") {
  Bench bench(test_catalogue());
  bench.open(complete_bench());
  bool told = false;
  for (const FigureGroup& group : bench_figures(bench)) {
    for (const Figure& figure : group.figures) {
      if (figure.key != QStringLiteral("mixed_litres") && !figure.key.startsWith(QStringLiteral("measure_out_"))) continue;
      told = true;
      const QString text = explanation_text(figure);
      INFO(text.toStdString());
      for (const char* input : {"volume: ", "mound: ", "bottom layer: ", "top dressing: ", "settling: ", "spill: ", "shrinkage: "}) CHECK(text.contains(QLatin1String(input)));
      for (const ComponentSheet& component : bench.state().components) CHECK(text.contains(component.name + QStringLiteral(": ")));
    }
  }
  CHECK(told);
}

TEST_CASE("A mix of bags with a price has its own, in their currency, and a dash with its reason where one has none", "[bench]") {
  Bench bench(test_catalogue());
  BenchState state = complete_bench();
  state.components[0].bag = QStringLiteral("A-1");
  state.components[1].bag = QStringLiteral("P-1");
  bench.open(state);
  const auto price = [&]() -> std::optional<Figure> {
    for (const FigureGroup& group : bench_figures(bench))
      for (const Figure& figure : group.figures)
        if (figure.key == QStringLiteral("price")) return figure;
    return std::nullopt;
  };
  CHECK_FALSE(price());
  const auto knows = [&](const Price& first, const std::optional<Price>& second) {
    RecordKnowledge known;
    known.grains[QStringLiteral("A-1")] = GrainOfRecord{"A-1", {}, {}, first};
    if (second) known.grains[QStringLiteral("P-1")] = GrainOfRecord{"P-1", {}, {}, *second};
    bench.set_known(std::move(known));
  };
  knows({1.5, "EUR"}, Price{0.8, "EUR"});
  const MixState& mixed = *bench.evaluation().mix_state;
  REQUIRE(mixed.shrinkage);
  const double expected = (mixed.loose_shares[0].value() * 1.5 + mixed.loose_shares[1].value() * 0.8) / (1 - mixed.shrinkage->value());
  REQUIRE(price());
  CHECK(price()->value == to_local(gritwright::figure(expected, 2) + " EUR"));
  CHECK(explanation_text(*price()).contains(to_local(" x 1.50")));
  knows({1.5, "EUR"}, Price{0.8, ""});
  CHECK(price()->value == to_local(gritwright::figure(expected, 2) + " EUR"));
  for (const std::optional<Price>& second : {std::optional<Price>(), std::optional(Price{0.8, "CHF"})}) {
    knows({1.5, "EUR"}, second);
    REQUIRE(price());
    CHECK(price()->value == QStringLiteral("\u2013"));
    CHECK(price()->reason.contains(QStringLiteral("currencies")));
  }
}
