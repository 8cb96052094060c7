// What stands behind a figure is all that goes into it: the figure can be worked out again from the inputs that are listed.
#include "gritwright/report/explanations.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <charconv>
#include <cmath>
#include <cstddef>
#include <map>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "gritwright/models/fraction_packing.hpp"
#include "gritwright/models/laboratory_figures.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/report/lot_report.hpp"
#include "gritwright/report/mix_report.hpp"

using namespace gritwright;

namespace {

Grading invented_curve() {
  Grading grading;
  for (const auto& [mm, passing] : {std::pair{0.5, 0.03}, {1.0, 0.051}, {2.0, 0.123}, {4.0, 0.553}, {5.6, 0.853}, {6.3, 0.955}, {9.5, 1.0}})
    grading.points.push_back({aperture_mm(mm), Passing(passing)});
  return grading;
}

/// The numbers behind a figure, by name, without their units.
std::map<std::string, double> inputs_of(const std::vector<Explanation>& list, const std::string& figure) {
  std::map<std::string, double> inputs;
  for (const Explanation& explanation : list)
    if (explanation.figure == figure)
      for (const auto& [name, value] : explanation.inputs) std::from_chars(value.data(), value.data() + value.size(), inputs[name]);  // whatever the locale
  return inputs;
}

}  // namespace

TEST_CASE("The shares of a verdict follow from what passes at the ends of the wanted grain", "[explanations][law]") {
  const auto judged = judge(invented_curve(), {aperture_mm(2), aperture_mm(5.6)}, {}, {}, {}, MassShare(0.02)).value;
  REQUIRE(judged);
  const auto list = explain(*judged);
  auto wanted = inputs_of(list, "in_band");
  CHECK(wanted.at("passing at 5.6 mm") - wanted.at("passing at 2 mm") == Approx(100 * judged->in_band.value()).margin(0.11));
  auto finer = inputs_of(list, "finer");
  CHECK(finer.at("passing at 2 mm") - finer.at("lost") == Approx(100 * judged->finer.value()).margin(0.11));
  CHECK(finer.at("lost") == Approx(2).margin(0.05));
  CHECK(100 - inputs_of(list, "coarser").at("passing at 5.6 mm") == Approx(100 * judged->coarser.value()).margin(0.06));
}

TEST_CASE("Where dust is welcome what was lost is taken off what is wanted, and nothing passes an opening of 0", "[explanations][law]") {
  const auto judged = judge(invented_curve(), {aperture_mm(0), aperture_mm(5.6)}, {}, {}, {}, MassShare(0.02)).value;
  REQUIRE(judged);
  const auto list = explain(*judged);
  const auto wanted = inputs_of(list, "in_band");
  CHECK_FALSE(wanted.contains("passing at 0 mm"));
  CHECK(wanted.at("passing at 5.6 mm") - wanted.at("lost") == Approx(100 * judged->in_band.value()).margin(0.11));
  CHECK_FALSE(inputs_of(list, "finer").contains("passing at 0 mm"));
}

TEST_CASE("The loss of a sieve test follows from the masses listed behind it", "[explanations][law]") {
  SieveTest test;
  for (const auto& [mm, grams] : {std::pair{4.0, 50.0}, {2.0, 120.0}, {1.0, 20.0}}) test.rows.push_back({aperture_mm(mm), mass_g(grams)});
  test.pan = mass_g(5);
  test.dry_mass = mass_g(200);
  test.washed_dry_mass = mass_g(196);
  const auto analysis = analyse(test);
  REQUIRE(analysis.ok());
  const auto loss = inputs_of(explain(*analysis), "loss_percent");
  CHECK(loss.at("start") == 200);
  CHECK(loss.at("washed out") == 4);
  CHECK(loss.at("recovered") == 195);
  CHECK(100 * (loss.at("start") - loss.at("washed out") - loss.at("recovered")) / loss.at("start") == Approx(100 * analysis->loss->value()).margin(0.005));
}

TEST_CASE("A size at a percent passing is explained by the sieves it is read between", "[explanations][law]") {
  const auto list = explain_blend(invented_curve(), Band{aperture_mm(2), aperture_mm(5.6)});
  const auto median = inputs_of(list, "d50");
  const double share = (50 - median.at("passing at 2 mm")) / (median.at("passing at 4 mm") - median.at("passing at 2 mm"));
  CHECK(2 * std::pow(4.0 / 2.0, share) == Approx(median.at("D50")).epsilon(0.005));
  const auto wanted = inputs_of(list, "in_band");
  CHECK(wanted.at("passing at 5.6 mm") == Approx(85.3));
  CHECK(wanted.at("passing at 2 mm") == Approx(12.3));
}

TEST_CASE("Laboratory figures follow from the percentiles listed behind them", "[explanations][law]") {
  const Grading grading = invented_curve();
  const LaboratoryFigures figures = laboratory_figures(grading);
  REQUIRE((figures.curvature && figures.mean_phi && figures.sorting_phi && figures.skewness && figures.kurtosis));
  const auto list = explain(figures, grading);
  const auto cc = inputs_of(list, "cc");
  CHECK(cc.at("D30") * cc.at("D30") / (cc.at("D10") * cc.at("D60")) == Approx(*figures.curvature).epsilon(0.01));
  const auto mean = inputs_of(list, "mean_phi");
  CHECK((mean.at("f16") + mean.at("f50") + mean.at("f84")) / 3 == Approx(*figures.mean_phi).margin(0.006));
  const auto sorting = inputs_of(list, "sorting_phi");
  CHECK((sorting.at("f84") - sorting.at("f16")) / 4 + (sorting.at("f95") - sorting.at("f5")) / 6.6 == Approx(*figures.sorting_phi).margin(0.005));
  double modulus = 0;
  for (const auto& [sieve, held] : inputs_of(list, "fineness_modulus")) modulus += held / 100;
  CHECK(modulus == Approx(*figures.fineness_modulus).margin(0.01));
  const auto kurtosis = inputs_of(list, "kurtosis");
  CHECK((kurtosis.at("f95") - kurtosis.at("f5")) / (2.44 * (kurtosis.at("f75") - kurtosis.at("f25"))) == Approx(*figures.kurtosis).epsilon(0.02));
}

TEST_CASE("Volume, litre weight, pores and exchange of a mix follow from what is listed behind them", "[explanations][law]") {
  Mix mix;
  for (const auto& [name, bulk, particle, skeletal, exchange, parts] : {std::tuple{"akadama", 560.0, 1000.0, 2500.0, 20.0, 3.0}, {"pumice", 450.0, 850.0, 2400.0, 5.0, 2.0}}) {
    GrainProperties grain;
    grain.bulk_density = bulk_g_l(bulk);
    grain.particle_density = particle_g_l(particle);
    grain.skeletal_density = skeletal_g_l(skeletal);
    grain.cation_exchange = CationExchange(exchange);
    mix.components.push_back({name, Parts(parts), grain, invented_curve(), {}});
  }
  mix.settling = Settling(0.08);
  const auto state = mix_state(mix);
  REQUIRE(state.ok());
  REQUIRE((state->settled && state->poured && state->shrinkage));
  const auto list = explain(mix, *state);
  const auto shrinkage = inputs_of(list, "shrinkage_percent");
  // By hand: 3 L of 560 g/L and 2 L of 450 g/L; their grains alone take 1680/1000 L and 900/850 L.
  CHECK(shrinkage.at("sum v") == Approx(5).epsilon(0.001));
  CHECK(shrinkage.at("sum E") == Approx(1.68 + 0.9 / 0.85).epsilon(0.005));
  CHECK(shrinkage.at("sum E") / shrinkage.at("phi") == Approx(shrinkage.at("V")).epsilon(0.01));
  CHECK(100 * (1 - shrinkage.at("V") / shrinkage.at("sum v")) == Approx(100 * state->shrinkage->value()).margin(0.2));
  const auto weight = inputs_of(list, "bulk_density_g_l");
  CHECK(weight.at("dry mass") == Approx(3 * 560 + 2 * 450).epsilon(0.001));
  CHECK(weight.at("dry mass") / weight.at("volume") == Approx(in_g_l(state->settled->bulk_density)).epsilon(0.01));
  const auto pores = inputs_of(list, "voids_in_grains");
  CHECK((100 - pores.at("voids between grains")) * pores.at("mean porosity of the grains") / 100 == Approx(100 * state->settled->voids_in_grains.value()).margin(0.1));
  const auto water = inputs_of(list, "grain_water");
  CHECK((100 - water.at("voids between grains")) * water.at("water the grains hold") / 100 == Approx(100 * state->settled->grain_water.value()).margin(0.1));
  const auto exchange = inputs_of(list, "cec_meq_l");
  // "62.3 % x 20 meq/100 g": its share first.
  CHECK(exchange.at("litre weight") / 1000 * 10 * (exchange.at("akadama") * 20 + exchange.at("pumice") * 5) / 100 == Approx(state->settled->cation_exchange->value()).epsilon(0.01));
}

TEST_CASE("A lot's figures and where they usually lie follow from what is listed behind them", "[explanations][law]") {
  const Band wanted{aperture_mm(2), aperture_mm(5.6)};
  GrainProperties grain;
  grain.bulk_density = bulk_g_l(600);
  grain.particle_density = particle_g_l(1140);
  grain.skeletal_density = skeletal_g_l(2350);
  std::vector<LotFigures> earlier;
  std::vector<double> dust;
  for (const double moved : {0.0, 0.02, -0.01, 0.03, 0.01}) {
    Grading lot = invented_curve();
    lot.points[2].passing = Passing(lot.points[2].passing.value() + moved);
    earlier.push_back(lot_figures(lot, wanted, grain));
    dust.push_back(*earlier.back().dust);
  }
  const auto list = explain_lot(invented_curve(), wanted, grain, MassShare(0.02), earlier);
  const LotFigures last = lot_figures(invented_curve(), wanted, grain, MassShare(0.02));
  auto finer = inputs_of(list, "finer");
  CHECK(finer.at("passing at 2 mm") - finer.at("lost") == Approx(100 * *last.dust).margin(0.11));
  CHECK(inputs_of(list, "d50").at("D50") == Approx(*last.d50_mm).margin(0.006));
  auto air = inputs_of(list, "air_filled_porosity");
  CHECK(air.at("theta(0)") - air.at("water held") == Approx(100 * *last.air).margin(0.11));
  std::vector<Explanation> ranges;
  for (const Explanation& one : list)
    if (one.figure == "usual") ranges.push_back(one);
  REQUIRE(ranges.size() == 4);
  CHECK(inputs_of({ranges[0]}, "usual").at("mean") == Approx(100 * usual_range(dust)->mean).margin(0.006));
  for (const Explanation& one : ranges) {
    auto usual = inputs_of({one}, "usual");
    const double unit = one.inputs.back().second.ends_with("mm") ? 0.001 : 0.01;  // as they are told
    const double margin = 0.5 * unit * (2 + 2.66);
    CHECK(usual.at("mean") + 2.66 * usual.at("mean step") == Approx(usual.at("usual to")).margin(margin));
    CHECK(std::max(0.0, usual.at("mean") - 2.66 * usual.at("mean step")) == Approx(usual.at("usual from")).margin(margin));
    CHECK(3.267 * usual.at("mean step") == Approx(usual.at("largest usual step")).margin(0.5 * unit * (1 + 3.267)));
  }
}

TEST_CASE("Of few lots no usual range is told, and of a lot without densities no air", "[explanations]") {
  const auto list = explain_lot(invented_curve(), {aperture_mm(2), aperture_mm(5.6)}, {}, MassShare(0), {});
  CHECK(list.size() == 3);
  for (const Explanation& one : list) {
    CHECK(one.figure != "usual");
    CHECK(one.figure != "air");
  }
}

TEST_CASE("The usable litres of a bag and those of its fractions follow from the shares and packing densities listed behind them", "[explanations][law]") {
  const auto packing = fraction_packing(invented_curve(), bulk_g_l(600), particle_g_l(1140)).of;
  const auto judged = judge(invented_curve(), {aperture_mm(2), aperture_mm(5.6)}, {}, {}, packing, MassShare(0)).value;
  REQUIRE(judged);
  REQUIRE_FALSE(judged->openings.empty());
  auto usable = inputs_of(explain(*judged), "usable");
  CHECK(usable.at("kept, by mass") / 100 * usable.at("packing density of the bag") / usable.at("packing density of what is kept") == Approx(judged->usable.value()).epsilon(0.004));
  const std::vector<Aperture> openings{aperture_mm(5.6), aperture_mm(2)};
  const auto screened = screen(invented_curve(), openings, {}, packing);
  REQUIRE(screened);
  auto litres = inputs_of(explain(*screened), "loose_l_per_l");
  for (const auto& [name, fraction] : {std::pair("over 5.6 mm", 0), {"2 mm to 5.6 mm", 1}, {"the rest", 2}}) {
    INFO(name);
    const double per_litre = litres.at(name) / 100 * litres.at("packing density of the bag") / litres.at(std::string("packing density of ") + name);
    CHECK(per_litre == Approx(screened->fractions[static_cast<std::size_t>(fraction)].loose_per_loose->value()).epsilon(0.01));
  }
}
