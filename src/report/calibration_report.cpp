#include "gritwright/report/calibration_report.hpp"

#include <fmt/format.h>

#include <utility>
#include <variant>

#include "gritwright/report/text_table.hpp"
#include "message_templates.hpp"

namespace gritwright {

namespace {

std::string share(const std::optional<Porosity>& value) {
  return percent_text(value ? std::optional(value->value()) : std::nullopt);
}

std::string test_rows(const ReportedTest& test, UnitSystem units) {
  std::string title = test.name;
  if (test.filled_depth) title += (title.empty() ? "" : ", ") + depth_text(*test.filled_depth, units) + " deep";
  const auto predicted = [&](auto figure) {
    return test.predicted ? std::optional<Porosity>(figure(test.predicted->water)) : std::nullopt;
  };
  const auto density = [&](const std::optional<double>& value) { return density_text(value, units); };
  const std::vector<std::vector<std::string>> rows{
      {"litre weight", density(test.measured.bulk_density ? std::optional(in_g_l(*test.measured.bulk_density)) : std::nullopt),
       density(test.predicted ? std::optional(in_g_l(test.predicted->bulk_density)) : std::nullopt)},
      {"filled when flooded", share(test.measured.theta_0), share(predicted([](const PotWater& w) { return w.theta_0; }))},
      {"air that drained", share(test.measured.air_filled_porosity),
       share(predicted([](const PotWater& w) { return w.air_filled_porosity; }))},
      {"water that stayed", share(test.measured.container_capacity),
       share(predicted([](const PotWater& w) { return w.container_capacity; }))}};
  return (title.empty() ? "" : title + '\n') + text_table({"", "measured", "predicted"}, rows) + '\n';
}

std::string spread(double low, double median, double high) { return fmt::format("{:.3g} ({:.3g} to {:.3g})", median, low, high); }

}  // namespace

std::string calibration_text(const CalibrationReport& report, UnitSystem units) {
  std::string text;
  for (const ReportedTest& test : report.tests) text += test_rows(test, units);
  if (report.scores.all && report.scores.all->count > 1) {
    text += fmt::format("predicted air less measured air: {:+.1f} points on average, {:.1f} points root mean square over {} tests\n",
                        100 * report.scores.all->bias, 100 * report.scores.all->rmse, report.scores.all->count);
  }
  if (!report.calibration) return text;
  const Calibration& calibration = *report.calibration;
  if (calibration.method != CalibrationMethod::none) {
    text += fmt::format("fitted: k {:.3g} cm mm, w {:.3g}", calibration.constants.k_cm_mm, calibration.constants.grain_fill);
    text += calibration.flooded_fill_measured ? fmt::format(", f {:.3g}\n", calibration.constants.flooded_fill) : "\n";
  } else if (calibration.flooded_fill_measured) {
    text += fmt::format("fitted: f {:.3g}\n", calibration.constants.flooded_fill);
  }
  if (calibration.belief) {
    const ConstantsRange range = constants_range(*calibration.belief);
    text += "likely, 5 to 95 %: k " + spread(range.low.k_cm_mm, range.median.k_cm_mm, range.high.k_cm_mm) + ", w " +
            spread(range.low.grain_fill, range.median.grain_fill, range.high.grain_fill) + ", f " +
            spread(range.low.flooded_fill, range.median.flooded_fill, range.high.flooded_fill) + '\n';
  }
  return text;
}

namespace {

using PotInputs = std::vector<std::pair<std::string, std::string>>;

/// What was weighed or poured in one test, the last where there are several.
PotInputs read_in(const CalibrationReport& report) {
  PotInputs inputs;
  if (report.tests.empty()) return inputs;
  const auto litres = [](PotVolume volume) { return volume_text(in_ml(volume) / 1000, UnitSystem::metric); };
  const auto add = [&](const char* name, const std::optional<Mass>& mass) {
    if (mass) inputs.emplace_back(name, mass_text(mass, UnitSystem::metric));
  };
  const PotReading& reading = report.tests.back().reading;
  inputs.emplace_back(GRITWRIGHT_TEXT("volume"), litres(reading.volume));
  if (const auto* const weighed = std::get_if<PotWeighings>(&reading.water)) {
    add(GRITWRIGHT_TEXT("flooded"), weighed->flooded);
    add(GRITWRIGHT_TEXT("drained"), weighed->drained);
    add(GRITWRIGHT_TEXT("dry, with the pot"), weighed->dry);
    add(GRITWRIGHT_TEXT("empty pot"), weighed->tare);
  } else {
    const auto& water = std::get<PouredWater>(reading.water);
    inputs.emplace_back(GRITWRIGHT_TEXT("poured"), litres(water.poured));
    if (water.caught) inputs.emplace_back(GRITWRIGHT_TEXT("caught"), litres(*water.caught));
  }
  return inputs;
}

/// What the constants are fitted to, test by test, and where the fit begins.
PotInputs fitted_to(const Calibration& calibration, const RetentionConstants& prior) {
  PotInputs inputs;
  const auto add = [&](const char* name, const Porosity& share) { inputs.emplace_back(name, percent_text(share.value())); };
  for (const CalibratedTest& test : calibration.tests) {
    if (!test.container_capacity) continue;
    add(GRITWRIGHT_TEXT("water held, measured"), *test.container_capacity);
    inputs.emplace_back(GRITWRIGHT_TEXT("filled depth"), depth_text(test.filled_depth, UnitSystem::metric));
    add(GRITWRIGHT_TEXT("voids between grains"), test.voids_between_grains);
  }
  inputs.emplace_back("k0", fmt::format("{:.3g} cm mm", prior.k_cm_mm));
  inputs.emplace_back("w0", fmt::format("{:.3g}", prior.grain_fill));
  return inputs;
}

PotInputs flooded_by(const Calibration& calibration) {
  PotInputs inputs;
  const auto add = [&](const char* name, const Porosity& share) { inputs.emplace_back(name, percent_text(share.value())); };
  for (const CalibratedTest& test : calibration.tests) {
    if (!test.theta_0) continue;
    add("theta_0", *test.theta_0);
    add(GRITWRIGHT_TEXT("water in grains"), test.grain_water);
    add(GRITWRIGHT_TEXT("voids between grains"), test.voids_between_grains);
  }
  return inputs;
}

}  // namespace

std::vector<Explanation> explain(const CalibrationReport& report) {
  const PotInputs read = read_in(report);
  std::vector<Explanation> list{
      {"theta_0", GRITWRIGHT_TEXT("(flooded - dry) / volume"), read, "docs/science/calibration.md"},
      {"air_filled_porosity", GRITWRIGHT_TEXT("(flooded - drained) / volume: what drained; trapped air is not in it"), read, "docs/science/calibration.md"},
      {"container_capacity", GRITWRIGHT_TEXT("(drained - dry) / volume"), read, "docs/science/calibration.md"},
      {"pot_bulk_density", GRITWRIGHT_TEXT("dry mass / volume"), read, "docs/science/calibration.md"}};
  if (!report.calibration) return list;
  const PotInputs fitted = fitted_to(*report.calibration, report.prior);
  if (report.calibration->flooded_fill_measured)
    list.push_back({"flooded_fill", GRITWRIGHT_TEXT("(theta_0 - water in the grains) / voids between grains, not over 1; of several tests their mean"), flooded_by(*report.calibration), "docs/science/calibration.md"});
  switch (report.calibration->method) {
    case CalibrationMethod::none: break;
    case CalibrationMethod::k_by_capacity:
      list.push_back({"k_cm_mm", GRITWRIGHT_TEXT("the k that holds the water measured; the water in the grains is known"), fitted, "docs/science/calibration.md"});
      break;
    case CalibrationMethod::weighed_by_prior:
      list.push_back({"k_cm_mm", GRITWRIGHT_TEXT("least (water held - measured)^2/0.02^2 + (ln(k/k0)/0.24)^2 + ((w - w0)/0.15)^2 over k and w"), fitted, "docs/science/calibration.md"});
      break;
    case CalibrationMethod::k_and_w_by_depths:
      list.push_back({"k_cm_mm", GRITWRIGHT_TEXT("k and w that hold the water measured at two depths"), fitted, "docs/science/calibration.md"});
      break;
  }
  return list;
}

Explanation explain_predicted_air(const PotWater& water) {
  const auto share = [](Porosity value) { return percent_text(value.value()); };
  return {"predicted_air", GRITWRIGHT_TEXT("theta(0) - water held, by the usual constants, so that no test foretells itself"),
          {{"theta(0)", share(water.theta_0)}, {GRITWRIGHT_TEXT("water held"), share(water.container_capacity)}}, "docs/science/water.md"};
}

Explanation explain_score(std::span<const std::pair<std::string, PredictedAndMeasured>> tests) {
  Explanation explanation{"score", GRITWRIGHT_TEXT("mean of predicted - measured air over the tests, and the root of its mean square; predicted by the usual constants, so that no test foretells itself"), {},
                          "docs/science/calibration.md"};
  for (const auto& [name, air] : tests) explanation.inputs.emplace_back(name, percent_text(air.predicted.value()) + " - " + percent_text(air.measured.value()));
  return explanation;
}

}  // namespace gritwright
