#include <nlohmann/json.hpp>

#include "gritwright/models/calibration.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/prediction_score.hpp"
#include "gritwright/report/calibration_report.hpp"
#include "gritwright/report/text_table.hpp"
#include "arguments.hpp"
#include "inputs.hpp"
#include "json_out.hpp"
#include "pot_tests.hpp"
#include "verbs.hpp"

namespace gritwright::cli {

namespace {

std::optional<double> share(const std::optional<Porosity>& value) {
  return number(value, [](Porosity p) { return p.value(); });
}

Json measured_json(const MeasuredPorosities& measured) {
  return {{"bulk_density_g_l", to_json(number(measured.bulk_density, [](BulkDensity d) { return in_g_l(d); }))},
          {"theta_0", to_json(share(measured.theta_0))},
          {"air_filled_porosity", to_json(share(measured.air_filled_porosity))},
          {"container_capacity", to_json(share(measured.container_capacity))}};
}

Json predicted_json(const std::optional<PredictedTest>& predicted) {
  if (!predicted) return nullptr;
  return {{"bulk_density_g_l", in_g_l(predicted->bulk_density)},
          {"theta_0", predicted->water.theta_0.value()},
          {"air_filled_porosity", predicted->water.air_filled_porosity.value()},
          {"container_capacity", predicted->water.container_capacity.value()},
          {"total_air", predicted->water.total_air.value()}};
}

Json score_json(const std::optional<PredictionScore>& score) {
  if (!score) return nullptr;
  return {{"count", score->count}, {"bias", score->bias}, {"rmse", score->rmse}};
}

std::string method_name(CalibrationMethod method) {
  switch (method) {
    case CalibrationMethod::none: return "none";
    case CalibrationMethod::k_by_capacity: return "k_by_capacity";
    case CalibrationMethod::weighed_by_prior: return "weighed_by_prior";
    case CalibrationMethod::k_and_w_by_depths: return "k_and_w_by_depths";
  }
  return {};
}

Json range_json(double low, double median, double high) { return {{"low", low}, {"median", median}, {"high", high}}; }

Json calibration_json(const std::optional<Calibration>& calibration) {
  const bool fitted = calibration && calibration->method != CalibrationMethod::none;
  const bool flooded = calibration && calibration->flooded_fill_measured;
  Json json;
  json["k_cm_mm"] = fitted ? Json(calibration->constants.k_cm_mm) : Json(nullptr);
  json["grain_fill"] = fitted ? Json(calibration->constants.grain_fill) : Json(nullptr);
  json["flooded_fill"] = flooded ? Json(calibration->constants.flooded_fill) : Json(nullptr);
  json["method"] = calibration ? Json(method_name(calibration->method)) : Json(nullptr);
  json["range"] = nullptr;
  if (fitted && calibration->belief) {
    const ConstantsRange range = constants_range(*calibration->belief);
    json["range"] = {{"k_cm_mm", range_json(range.low.k_cm_mm, range.median.k_cm_mm, range.high.k_cm_mm)},
                     {"grain_fill", range_json(range.low.grain_fill, range.median.grain_fill, range.high.grain_fill)},
                     {"flooded_fill", range_json(range.low.flooded_fill, range.median.flooded_fill, range.high.flooded_fill)}};
  }
  return json;
}

class CalibrateVerb final : public Verb {
 public:
  std::string name() const override { return "calibrate"; }
  std::string summary() const override { return "What a pot test says, and what the water model learns from it"; }
  void declare(CLI::App& app) override {
    required_argument(app, "FILE", file_, "A pot test (.json), one or more tests of one mix; - reads standard input");
    argument(app, "--mix", mix_file_, "The mix (.json), where the test does not hold it", is_file_name);
    argument(app, "--pot", pot_file_, "The pot (.json) of the tests that name none", is_file_name);
  }

  Exit run(const CommonOptions& options, Streams streams) override {
    Problems problems;
    const auto file = pot_test_from(file_, streams.in);
    append(problems, file.problems());
    std::optional<Result<MixFile>> mix_file;
    if (!mix_file_.empty()) mix_file.emplace(mix_from(mix_file_, streams.in));
    if (mix_file) append(problems, mix_file->problems());
    std::optional<Result<ContainerFile>> pot_file;
    if (!pot_file_.empty()) pot_file.emplace(container_from(pot_file_, streams.in));
    if (pot_file) append(problems, pot_file->problems());
    if (file) append(problems, in_file(without_volume(file->readings, pot_file.has_value()), file_));
    if (!problems.empty()) return refuse(problems, streams.err);

    Notes notes = file->notes;
    std::optional<Mix> mix = file->mix;
    if (mix_file) mix = (*mix_file)->mix;
    std::optional<MixState> state;
    if (mix) {
      auto worked_out = mix_state(*mix);
      if (!worked_out) return refuse(in_file(worked_out.problems(), mix_file ? mix_file_ : file_), streams.err);
      state = std::move(worked_out).value();
      append(notes, state->notes);
    } else {
      notes.push_back({"calibration.no-mix", Level::note, "", {}});
    }

    CalibrationReport report;
    std::vector<CalibrationTest> for_fit;
    CalibrationPrior prior;
    if (mix) prior.constants = mix->water;
    report.prior = prior.constants;
    for (std::size_t i = 0; i < file->readings.size(); ++i) {
      const WrittenPotReading& reading = file->readings[i];
      const std::string where = file->readings.size() > 1 ? reading.date.value_or("test " + std::to_string(i + 1)) : "";
      const auto pot = pot_of(reading, pot_file ? &(*pot_file)->container : nullptr);
      ReportedTest test;
      test.name = where;
      test.reading = {volume_of(reading, pot), reading.water};
      test.measured = measured_porosities(test.reading);
      append_at(notes, test.measured.notes, where);
      if (pot) {
        const bool has_shape = std::holds_alternative<PotGeometry>(*pot);
        test.filled_depth = has_shape ? std::get<PotGeometry>(*pot).filled_depth() : std::get<Depth>(*pot);
        if (state) test.predicted = predicted(*mix, *state, *pot);
        for_fit.push_back({kernel_of(*pot, prior.constants.n), *test.filled_depth, test.measured});
      } else if (state) {
        append_at(notes, {{"calibration.no-pot", Level::warning, "", {}}}, where);
      }
      report.tests.push_back(std::move(test));
    }
    if (state && !for_fit.empty()) {
      report.calibration = calibrate(*mix, *state, for_fit, prior);
      if (report.calibration) append(notes, report.calibration->notes);
      report.scores = score(pairs(report, *state, *mix));
    }
    answer(options, streams, report, notes);
    return exit_for(notes, options);
  }

 private:
  static void append_at(Notes& notes, const Notes& more, const std::string& where) {
    for (Note note : more) {
      if (!where.empty()) note.where = where;
      notes.push_back(std::move(note));
    }
  }

  static std::optional<PredictedTest> predicted(const Mix& mix, const MixState& state, const TestedPot& pot) {
    const auto* geometry = std::get_if<PotGeometry>(&pot);
    const auto water = geometry != nullptr ? mix_in_pot(state, mix.water, *geometry)
                                           : mix_in_column(state, mix.water, std::get<Depth>(pot));
    if (!water) return std::nullopt;
    return PredictedTest{state.settled->bulk_density, *water};
  }

  static std::vector<PredictedAndMeasured> pairs(const CalibrationReport& report, const MixState& state, const Mix& mix) {
    std::vector<PredictedAndMeasured> pairs;
    const auto input = retention_input(state, mix.water);
    if (!input) return pairs;
    const Aperture size = Retention(*input).characteristic_size();
    for (const ReportedTest& test : report.tests) {
      if (test.predicted && test.measured.air_filled_porosity)
        pairs.push_back({test.predicted->water.air_filled_porosity, *test.measured.air_filled_porosity, size});
    }
    return pairs;
  }

  static void answer(const CommonOptions& options, Streams streams, const CalibrationReport& report, const Notes& notes) {
    const auto explanations = options.explain ? explain(report) : std::vector<Explanation>{};
    if (!options.json) {
      streams.out << calibration_text(report, options.units) << notes_text(notes, options.units);
      if (options.explain) streams.out << '\n' << explanation_text(explanations);
      return;
    }
    // Air and capacity belong to a depth: with several tests they stand with each test only.
    const bool single = report.tests.size() == 1;
    Json json = measured_json(single ? report.tests.front().measured : MeasuredPorosities{});
    json.update(calibration_json(report.calibration));
    json["predicted"] = single ? predicted_json(report.tests.front().predicted) : Json(nullptr);
    json["tests"] = Json::array();
    for (const ReportedTest& test : report.tests) {
      Json item = measured_json(test.measured);
      item["depth_cm"] = to_json(number(test.filled_depth, [](Depth d) { return in_cm(d); }));
      item["predicted"] = predicted_json(test.predicted);
      json["tests"].push_back(std::move(item));
    }
    json["score"] = {{"all", score_json(report.scores.all)},
                     {"fine", score_json(report.scores.fine)},
                     {"coarse", score_json(report.scores.coarse)}};
    json["notes"] = to_json(notes);
    if (options.explain) json["explanations"] = to_json(explanations);
    streams.out << json.dump(2) << '\n';
  }

  std::string file_;
  std::string mix_file_;
  std::string pot_file_;
};

}  // namespace

std::unique_ptr<Verb> calibrate_verb() { return std::make_unique<CalibrateVerb>(); }

}  // namespace gritwright::cli
