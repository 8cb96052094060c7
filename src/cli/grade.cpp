#include <algorithm>
#include <iterator>
#include <nlohmann/json.hpp>

#include "gritwright/models/bag_verdict.hpp"
#include "gritwright/models/fraction_packing.hpp"
#include "gritwright/models/grading_ranges.hpp"
#include "gritwright/models/laboratory_figures.hpp"
#include "gritwright/models/sieve_analysis.hpp"
#include "gritwright/models/slice_threads.hpp"
#include "gritwright/report/messages.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "gritwright/report/range_report.hpp"
#include "gritwright/report/text_table.hpp"
#include "arguments.hpp"
#include "inputs.hpp"
#include "json_out.hpp"
#include "range_json.hpp"
#include "range_options.hpp"
#include "verbs.hpp"

namespace gritwright::cli {

namespace {

std::string verdict_key(Verdict verdict) {
  switch (verdict) {
    case Verdict::take: return "take";
    case Verdict::take_after_screening: return "take_after_screening";
    case Verdict::other_use_or_complain: return "other_use_or_complain";
  }
  return {};
}

/// One verdict per wanted band; null where the sieves don't reach it.
Json verdict_json(const std::vector<Estimate<BagVerdict>>& verdicts) {
  Json list = Json::array();
  for (const auto& [value, low, high, notes] : verdicts) {
    if (!value) {
      list.push_back(nullptr);
      continue;
    }
    Json openings = Json::array();
    for (const Aperture& opening : value->openings) openings.push_back(in_mm(opening));
    list.push_back({{"verdict", verdict_key(value->verdict)},
                    {"from_mm", in_mm(value->band.from)},
                    {"to_mm", in_mm(value->band.to)},
                    {"in_band_percent", value->in_band.value() * 100},
                    {"finer_percent", value->finer.value() * 100},
                    {"coarser_percent", value->coarser.value() * 100},
                    {"screen_at_mm", openings},
                    {"usable_l_per_l", value->usable.value()}});
  }
  return list;
}

void add_range(Json& verdict, const VerdictRanges& ranges) {
  verdict["holds_percent"] = 100 * ranges.holds;
  verdict["range"] = {{"in_band_percent", to_json(ranges.in_band, 100)},
                      {"finer_percent", to_json(ranges.finer, 100)},
                      {"coarser_percent", to_json(ranges.coarser, 100)},
                      {"usable_l_per_l", to_json(ranges.usable)}};
}

std::string verdict_text(const Estimate<BagVerdict>& judged, UnitSystem units) {
  if (!judged.value) return "verdict: –\n";
  const BagVerdict& verdict = *judged.value;
  std::string openings;
  for (const Aperture& opening : verdict.openings) openings += (openings.empty() ? "" : " and ") + size_text(opening, units);
  std::string text = "verdict: ";
  switch (verdict.verdict) {
    case Verdict::take: text += "take"; break;
    case Verdict::take_after_screening: text += "take after screening at " + openings; break;
    case Verdict::other_use_or_complain: text += "other use or complain"; break;
  }
  text += " for " + size_text(verdict.band.from, units) + " to " + size_text(verdict.band.to, units);
  // Quarts of a litre would be read as a share.
  const std::string usable = units == UnitSystem::us ? percent_text(verdict.usable.value()) + " of the bag" : volume_text(verdict.usable.value(), units) + " of each litre of the bag";
  return text + "; usable " + usable + "; " +
         percent_text(verdict.finer.value()) + " finer, " + percent_text(verdict.coarser.value()) + " coarser than the band\n";
}

Json grade_json(const SieveAnalysis& analysis, const std::vector<Band>& bands) {
  Json passing = Json::array();
  Json retained = Json::array();
  for (const SieveShare& sieve : analysis.sieves) {
    passing.push_back({{"aperture_mm", in_mm(sieve.aperture)}, {"percent", in_percent(sieve.passing)}});
    retained.push_back({{"aperture_mm", in_mm(sieve.aperture)},
                        {"percent", sieve.retained.value() * 100},
                        {"cumulative_percent", sieve.cumulative_retained.value() * 100}});
  }
  Json sizes = Json::object();
  for (const int percent : reported_percentiles) {
    const auto size = percentile(analysis.grading, percent);
    sizes[std::string("d").append(std::to_string(percent))] = to_json(size ? std::optional(in_mm(*size)) : std::nullopt);
  }
  Json shares = Json::array();
  for (const Band& band : bands) {
    const auto share = band_share(analysis.grading, band);
    shares.push_back({{"from_mm", in_mm(band.from)},
                      {"to_mm", in_mm(band.to)},
                      {"percent", to_json(share ? std::optional(share->value() * 100) : std::nullopt)}});
  }
  return {{"total_g", to_json(analysis.total ? std::optional(in_g(*analysis.total)) : std::nullopt)},
          {"base_g", to_json(analysis.base ? std::optional(in_g(*analysis.base)) : std::nullopt)},
          {"loss_percent", to_json(analysis.loss ? std::optional(analysis.loss->value() * 100) : std::nullopt)},
          {"passing", passing},
          {"retained", retained},
          {"d_mm", sizes},
          {"cu", to_json(uniformity(analysis.grading))},
          {"bands", shares}};
}

Json laboratory_json(const LaboratoryFigures& figures) {
  return {{"cc", to_json(figures.curvature)},         {"fineness_modulus", to_json(figures.fineness_modulus)},
          {"mean_phi", to_json(figures.mean_phi)},    {"median_phi", to_json(figures.median_phi)},
          {"sorting_phi", to_json(figures.sorting_phi)}, {"skewness", to_json(figures.skewness)},
          {"kurtosis", to_json(figures.kurtosis)}};
}

std::string laboratory_text(const LaboratoryFigures& figures) {
  return "\nlaboratory figures: D30^2/(D10 D60) " + figure(figures.curvature, 2) + ", fineness modulus " +
         figure(figures.fineness_modulus, 2) + ",\n    phi mean " + figure(figures.mean_phi, 2) + ", median " +
         figure(figures.median_phi, 2) + ", sorting " + figure(figures.sorting_phi, 2) + ", skewness " +
         figure(figures.skewness, 2) + ", kurtosis " + figure(figures.kurtosis, 2) + '\n';
}

std::string grade_text(const SieveAnalysis& analysis, const std::vector<Band>& bands, UnitSystem units) {
  std::vector<std::vector<std::string>> rows;
  for (const SieveShare& sieve : analysis.sieves) {
    rows.push_back({size_text(sieve.aperture, units), percent_text(sieve.retained.value()),
                    percent_text(sieve.cumulative_retained.value()), percent_text(sieve.passing.value())});
  }
  const double lost = lost_share(analysis).value();
  rows.push_back({"pan", percent_text(analysis.pan.value()), percent_text(1 - lost), percent_text(lost)});
  if (lost >= 0.0005) rows.push_back({"lost", percent_text(lost), percent_text(1), percent_text(0)});
  std::string text = text_table({"sieve", "stayed on", "cumulative", "passing"}, rows);
  text += "\nbase " + mass_text(analysis.base, units) + ", recovered " + mass_text(analysis.total, units) + ", lost " +
          percent_text(analysis.loss ? std::optional(analysis.loss->value()) : std::nullopt, 2) + "\n";
  const auto size = [&](double percent) { return grain_size_text(percentile(analysis.grading, percent), units); };
  text += "D10 " + size(10) + ", D50 " + size(50) + ", D90 " + size(90) + ", D60/D10 " +
          figure(uniformity(analysis.grading), 2) + "\n";
  for (const Band& band : bands) {
    const auto share = band_share(analysis.grading, band);
    text += size_text(band.from, units) + " to " + size_text(band.to, units) + ": " +
            percent_text(share ? std::optional(share->value()) : std::nullopt) + " of the mass\n";
  }
  return text;
}

class Grade final : public Verb {
 public:
  std::string name() const override { return "grade"; }
  std::string summary() const override { return "Curve, percentiles, checks and verdict of a sieve test"; }
  void declare(CLI::App& app) override {
    required_argument(app, "FILE", file_, "A sieve test (.csv or .json); - reads standard input");
    repeatable(app, "--band", band_texts_, "A wanted band in mm, like 2-6 (repeatable)", is_band);
    range_.declare(app);
  }
  Exit run(const CommonOptions& options, Streams streams) override {
    const auto test = sieve_test_from(file_, streams.in);
    if (!test) return refuse(test.problems(), streams.err);
    const auto analysis = analyse(*test);
    if (!analysis) return refuse(in_file(analysis.problems(), file_), streams.err);
    std::vector<Band> bands;
    for (const std::string& text : band_texts_) bands.push_back(band_from(text));
    std::vector<Estimate<BagVerdict>> verdicts;
    const FractionPacking packing = fraction_packing(analysis->grading, test->bulk_density, test->particle_density);
    std::vector<Aperture> sieves;
    for (const SieveShare& sieve : analysis->sieves) sieves.push_back(sieve.aperture);
    // A bag is screened on sieves there are: a wish for 6 mm means the 6.3 mm sieve of the stack.
    for (const Band& band : bands)
      verdicts.push_back(judge(analysis->grading, snapped(band, sieves), {}, {}, packing.of, lost_share(*analysis)));
    const bool litres_told = std::ranges::any_of(verdicts, [](const auto& verdict) { return verdict.value && verdict.value->kept; });
    std::optional<LaboratoryFigures> laboratory;
    if (options.laboratory) laboratory = laboratory_figures(analysis->grading, analysis->pan);
    Notes notes = analysis->notes;
    for (const auto& verdict : verdicts) append(notes, verdict.notes);
    if (litres_told) append(notes, packing.notes);
    if (laboratory) append(notes, laboratory->notes);
    std::optional<GradingRanges> ranges;
    std::vector<std::optional<VerdictRanges>> verdict_range;
    if (range_.wanted()) {
      ranges = grading_ranges(*test, *analysis, bands, range_.size(), on_all_cores());
      for (const Band& band : bands)
        verdict_range.push_back(verdict_ranges(sieved_grading(*test, *analysis), snapped(band, sieves), packing.of, {}, {512, range_.size().seed}, on_all_cores()));
    }
    std::vector<Explanation> explanations;
    if (options.explain) {
      explanations = explain(*analysis);
      const auto add = [&](std::vector<Explanation> more) { std::ranges::move(more, std::back_inserter(explanations)); };
      for (const Band& band : bands) add(explain_band(analysis->grading, band));
      for (const auto& verdict : verdicts)
        if (verdict.value) add(explain(*verdict.value));
      if (laboratory) add(explain(*laboratory, analysis->grading));
    }
    if (options.json) {
      Json answer = grade_json(*analysis, bands);
      answer["verdict"] = verdicts.empty() ? Json(nullptr) : verdict_json(verdicts);
      if (ranges) add_ranges(answer, *ranges);
      for (std::size_t i = 0; i < verdict_range.size(); ++i)
        if (verdict_range[i]) add_range(answer["verdict"][i], *verdict_range[i]);
      answer["notes"] = to_json(notes);
      if (laboratory) answer["laboratory"] = laboratory_json(*laboratory);
      if (options.explain) answer["explanations"] = to_json(explanations);
      streams.out << answer.dump(2) << '\n';
    } else {
      streams.out << grade_text(*analysis, bands, options.units);
      for (const auto& verdict : verdicts) streams.out << verdict_text(verdict, options.units);
      if (ranges) streams.out << ranges_text(*analysis, *ranges, range_.heading(), options.units);
      for (const auto& range : verdict_range)
        if (range) streams.out << "the verdict holds in " << percent_text(range->holds, 0) << " of the cases\n";
      if (laboratory) streams.out << laboratory_text(*laboratory);
      streams.out << notes_text(notes, options.units);
      if (options.explain) streams.out << '\n' << explanation_text(explanations);
    }
    return exit_for(notes, options);
  }

 private:
  std::string file_;
  std::vector<std::string> band_texts_;
  RangeOptions range_;
};

}  // namespace

std::unique_ptr<Verb> grade_verb() { return std::make_unique<Grade>(); }

}  // namespace gritwright::cli
