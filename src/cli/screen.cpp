#include <nlohmann/json.hpp>

#include "gritwright/models/fraction_packing.hpp"
#include "gritwright/models/screening.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "gritwright/report/text_table.hpp"
#include "arguments.hpp"
#include "inputs.hpp"
#include "json_out.hpp"
#include "verbs.hpp"

namespace gritwright::cli {

namespace {

std::optional<double> mm_of(const std::optional<Aperture>& aperture) {
  return aperture ? std::optional(in_mm(*aperture)) : std::nullopt;
}

std::optional<double> value_of(const std::optional<LooseShare>& share) {
  return share ? std::optional(share->value()) : std::nullopt;
}

Json screen_json(const Screening& screening) {
  Json fractions = Json::array();
  for (const ScreenedFraction& fraction : screening.fractions) {
    fractions.push_back({{"from_mm", to_json(mm_of(fraction.from))},
                         {"to_mm", to_json(mm_of(fraction.to))},
                         {"mass_percent", fraction.share.value() * 100},
                         {"loose_l_per_l", to_json(value_of(fraction.loose_per_loose))},
                         {"passing", fraction.grading ? to_json(fraction.grading->points) : Json(nullptr)}});
  }
  return {{"fractions", fractions}};
}

std::string range_text(const ScreenedFraction& fraction, UnitSystem units) {
  if (!fraction.to) return "over " + size_text(fraction.from, units);
  if (!fraction.from) return "under " + size_text(fraction.to, units);
  return size_text(fraction.from, units) + " to " + size_text(fraction.to, units);
}

std::string screen_text(const Screening& screening, UnitSystem units) {
  std::vector<std::vector<std::string>> rows;
  for (const ScreenedFraction& fraction : screening.fractions) {
    const auto median = fraction.grading ? percentile(*fraction.grading, 50) : std::nullopt;
    rows.push_back({range_text(fraction, units), percent_text(fraction.share.value()),
                    units == UnitSystem::us ? percent_text(value_of(fraction.loose_per_loose)) : volume_text(value_of(fraction.loose_per_loose), units), grain_size_text(median, units)});
  }
  return text_table({"fraction", "of the mass", units == UnitSystem::us ? "of the volume screened" : "per litre screened", "D50"}, rows);
}

class Screen final : public Verb {
 public:
  std::string name() const override { return "screen"; }
  std::string summary() const override { return "Fractions that screening a bag at chosen openings gives"; }
  void declare(CLI::App& app) override {
    required_argument(app, "FILE", file_, "A sieve test (.csv or .json); - reads standard input");
    required_repeatable(app, "--at", openings_mm_, "An opening in mm (repeatable)", is_positive_number);
    argument(app, "--sharpness", sharpness_, "How cleanly it separates: 20 for a thorough shake, 10 for a quick one",
             is_positive_number);
  }
  Exit run(const CommonOptions& options, Streams streams) override {
    const auto test = sieve_test_from(file_, streams.in);
    if (!test) return refuse(test.problems(), streams.err);
    const auto analysis = analyse(*test);
    if (!analysis) return refuse(in_file(analysis.problems(), file_), streams.err);
    std::vector<Aperture> openings;
    for (const std::string& text : openings_mm_) openings.push_back(aperture_mm(plain_number(text)));
    const FractionPacking packing = fraction_packing(analysis->grading, test->bulk_density, test->particle_density);
    const auto screening = screen(analysis->grading, openings, Sharpness{plain_number(sharpness_)}, packing.of);
    if (!screening) return refuse(in_file(screening.problems(), file_), streams.err);
    Notes notes = analysis->notes;
    append(notes, packing.notes);
    append(notes, screening->notes);
    const std::vector<Explanation> explanations = options.explain ? explain(*screening, Sharpness{plain_number(sharpness_)}) : std::vector<Explanation>{};
    if (options.json) {
      Json answer = screen_json(*screening);
      answer["notes"] = to_json(notes);
      if (options.explain) answer["explanations"] = to_json(explanations);
      streams.out << answer.dump(2) << '\n';
    } else {
      streams.out << screen_text(*screening, options.units) << notes_text(notes, options.units);
      if (options.explain) streams.out << '\n' << explanation_text(explanations);
    }
    return exit_for(notes, options);
  }

 private:
  std::string file_;
  std::vector<std::string> openings_mm_;
  std::string sharpness_ = "20";
};

}  // namespace

std::unique_ptr<Verb> screen_verb() { return std::make_unique<Screen>(); }

}  // namespace gritwright::cli
