#include "gritwright/report/explanations.hpp"

#include <algorithm>
#include <initializer_list>
#include <iterator>
#include <utility>

#include "gritwright/models/grading_curve.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "gritwright/report/text_table.hpp"
#include "message_templates.hpp"

namespace gritwright {

namespace {

using Input = std::pair<std::string, std::string>;

std::string passing_name(Aperture aperture) { return "passing at " + size_text(aperture, UnitSystem::metric); }

/// The two points of the curve that a size at a percent passing is read between, and the size.
std::vector<Input> reading_of(const Grading& grading, double percent) {
  const auto size = percentile(grading, percent);
  std::vector<Input> inputs{{"D" + figure(percent, 0), grain_size_text(size, UnitSystem::metric)}};
  if (!size) return inputs;
  const auto above = std::ranges::find_if(grading.points, [&](const GradingPoint& point) { return !(point.aperture < *size); });
  if (above == grading.points.begin() || above == grading.points.end()) return inputs;
  for (const GradingPoint& point : {*std::prev(above), *above}) inputs.emplace_back(passing_name(point.aperture), percent_text(point.passing.value()));
  return inputs;
}

/// The curve at the ends of a band that it reaches; nothing is finer than 0.
std::vector<Input> ends_of(const Grading& grading, const Band& band) {
  const GradingCurve curve(grading);
  std::vector<Input> inputs;
  for (const Aperture& end : {band.to, band.from})
    if (const auto passing = end > Aperture{} ? curve.passing_at(end) : std::nullopt) inputs.emplace_back(passing_name(end), percent_text(passing->value()));
  return inputs;
}

std::vector<Input> phis_of(const Grading& grading, std::initializer_list<double> percents) {
  std::vector<Input> inputs;
  for (const double percent : percents)
    if (const auto size = percentile(grading, 100 - percent)) inputs.emplace_back("f" + figure(percent, 0), figure(phi_of(*size), 2));
  return inputs;
}

/// What stayed on each sieve of the fineness modulus that holds any, read between the sieves used; below them all of it.
std::vector<Input> fineness_inputs(const LaboratoryFigures& figures, const Grading& grading) {
  std::vector<Input> inputs;
  if (!figures.fineness_modulus) return inputs;
  const GradingCurve curve(grading);
  for (const double mm : fineness_sieves_mm) {
    const Aperture sieve = aperture_mm(mm);
    if (sieve > grading.points.back().aperture) break;
    const auto passing = curve.passing_at(sieve);
    inputs.emplace_back(size_text(sieve, UnitSystem::metric), percent_text(passing ? 1 - passing->value() : 1));
  }
  return inputs;
}

}  // namespace

std::vector<Explanation> explain(const SieveAnalysis& analysis) {
  const auto mass = [](std::optional<Mass> value) { return mass_text(value, UnitSystem::metric); };
  const auto size = [&](double percent) { return grain_size_text(percentile(analysis.grading, percent), UnitSystem::metric); };
  std::vector<Input> stayed{{GRITWRIGHT_TEXT("base"), mass(analysis.base)}};
  for (const SieveShare& sieve : analysis.sieves)
    stayed.emplace_back("stayed on " + size_text(sieve.aperture, UnitSystem::metric), analysis.base ? mass(*analysis.base * sieve.retained.value()) : percent_text(sieve.retained.value()));
  std::vector<Explanation> list;
  if (analysis.loss) {
    list.push_back({"loss_percent", GRITWRIGHT_TEXT("100 (start - washed out - recovered) / start"),
                    {{GRITWRIGHT_TEXT("start"), mass(analysis.start)}, {GRITWRIGHT_TEXT("washed out"), mass(analysis.washed_out)}, {GRITWRIGHT_TEXT("recovered"), mass(analysis.total)}},
                    GRITWRIGHT_TEXT("ASTM C136-19: more than 0.3 % is not for acceptance")});
  }
  list.push_back({"total_g", GRITWRIGHT_TEXT("sum of what came off the sieves and the pan / (1 + moisture)"), {{GRITWRIGHT_TEXT("recovered"), mass(analysis.total)}},
                  GRITWRIGHT_TEXT("ASTM C566, the form, from memory")});
  list.push_back({"base_g", GRITWRIGHT_TEXT("the starting mass, before washing, or what was recovered and washed out; crumbs taken off; dry"),
                  analysis.start ? std::vector<Input>{{GRITWRIGHT_TEXT("start"), mass(analysis.start)}}
                                 : std::vector<Input>{{GRITWRIGHT_TEXT("recovered"), mass(analysis.total)}, {GRITWRIGHT_TEXT("washed out"), mass(analysis.washed_out)}},
                  GRITWRIGHT_TEXT("ASTM C136-19; crumbs: Folk, Petrology of Sedimentary Rocks, p. 32")});
  list.push_back({"retained", GRITWRIGHT_TEXT("100 x mass that stayed on / base"), {{GRITWRIGHT_TEXT("base"), mass(analysis.base)}, {GRITWRIGHT_TEXT("pan"), percent_text(analysis.pan.value())}},
                  "ASTM C136-19"});
  list.push_back({"passing", GRITWRIGHT_TEXT("100 (1 - cumulative mass that stayed on / base); cumulative masses are divided, rounded shares never added"),
                  std::move(stayed),
                  GRITWRIGHT_TEXT("ASTM C136-19: the base is the original dry mass, before washing, unless the test says recovered")});
  list.push_back({"d_mm", GRITWRIGHT_TEXT("size at a percent passing, linear in log10(size) between the two sieves around it; never extrapolated"),
                  {{"D10", size(10)}, {"D50", size(50)}, {"D90", size(90)}},
                  "docs/science/grading.md"});
  list.push_back({"cu", "D60 / D10", {{"D60", size(60)}, {"D10", size(10)}}, "ASTM D2487"});
  return list;
}

Explanation explain_pooling(const PooledTests& pooled) {
  Explanation explanation{"pooled", GRITWRIGHT_TEXT("passing of all samples: their mean by dry mass, equally where one was measured in litres; read linear in log10(size) where one lacked a sieve"), {},
                          "docs/science/grading.md"};
  for (const Agreement& sieve : pooled.agreement)
    explanation.inputs.emplace_back(passing_name(sieve.aperture), percent_text(sieve.least.value()) + "; " + percent_text(sieve.most.value()));
  return explanation;
}

Explanation explain_size(const Grading& grading, double percent) {
  return {"d" + figure(percent, 0), GRITWRIGHT_TEXT("size at a percent passing, linear in log10(size) between the two sieves around it; never extrapolated"), reading_of(grading, percent),
          "docs/science/grading.md"};
}

namespace {

std::string fraction_words(const ScreenedFraction& fraction) {
  const auto size = [](const std::optional<Aperture>& aperture) { return size_text(aperture, UnitSystem::metric); };
  if (!fraction.from) return GRITWRIGHT_TEXT("the rest");
  return fraction.to ? size(fraction.from) + " to " + size(fraction.to) : "over " + size(fraction.from);
}

}  // namespace

std::vector<Explanation> explain(const Screening& screening, Sharpness sharpness) {
  const auto share = [](const ScreenedFraction& fraction) { return percent_text(fraction.share.value()); };
  std::vector<std::pair<std::string, std::string>> masses;
  for (const ScreenedFraction& fraction : screening.fractions) {
    masses.emplace_back(fraction_words(fraction), share(fraction));
  }
  std::vector<Input> litres = masses;
  if (screening.packing) litres.emplace_back(GRITWRIGHT_TEXT("packing density of the bag"), figure(screening.packing->value(), 3));
  for (const ScreenedFraction& fraction : screening.fractions)
    if (fraction.packing) litres.emplace_back("packing density of " + fraction_words(fraction), figure(fraction.packing->value(), 3));
  std::vector<Input> cut{{"s", figure(sharpness.value, 0)}};
  cut.insert(cut.end(), masses.begin(), masses.end());
  return {{"mass_percent", GRITWRIGHT_TEXT("share that stays on an opening a: G = 1 - exp(-ln 2 (x/a)^s), integrated over each class on log size; "
                           "two cuts in series multiply; the pan passes"),
           cut, GRITWRIGHT_TEXT("Plitt 1971, the form of the partition curve; s is a setting, no published value for sieving by hand was found")},
          {"passing", GRITWRIGHT_TEXT("100 x mass of the fraction that is finer than each sieve / mass of the fraction"), {}, "docs/science/grading.md"},
          {"loose_l_per_l", GRITWRIGHT_TEXT("(mass share / packing density of the fraction) / (1 / packing density of the bag)"), std::move(litres),
           GRITWRIGHT_TEXT("docs/science/packing.md, one class beta for the bag and its fractions")}};
}

Explanation explain_amounts(const std::optional<Mass>& screened, const std::optional<BulkDensity>& litre_weight) {
  std::vector<Input> inputs;
  if (screened) inputs.emplace_back(GRITWRIGHT_TEXT("dry grain"), mass_text(screened, UnitSystem::metric));
  if (litre_weight) inputs.emplace_back(GRITWRIGHT_TEXT("litre weight"), density_text(in_g_l(*litre_weight), UnitSystem::metric));
  return {"amount", GRITWRIGHT_TEXT("dry mass = share x dry grain; litres = loose litres per loose litre x dry grain / litre weight"), std::move(inputs), "docs/science/packing.md"};
}

Explanation explain_openings() {
  const VerdictLimits limits;
  return {"openings",
          GRITWRIGHT_TEXT("every pair of openings and every single one; kept: the share between them; usable: what of the bag is kept and wanted; finer in it: what of the kept is finer than "
                          "wanted; good enough: kept grain within the limits of the verdict"),
          {{GRITWRIGHT_TEXT("least wanted, by mass"), percent_text(limits.least_in_band.value())}, {GRITWRIGHT_TEXT("most finer"), percent_text(limits.most_finer.value())}, {"s", figure(Sharpness{}.value, 0)}},
          GRITWRIGHT_TEXT("docs/science/grading.md; the limits are our assumption")};
}

std::vector<Explanation> explain_blend(const Grading& grading, const std::optional<Band>& band) {
  const auto size = [&](double percent) { return grain_size_text(percentile(grading, percent), UnitSystem::metric); };
  const std::string source = "docs/science/grading.md";
  const std::string reading = GRITWRIGHT_TEXT("size at a percent passing, linear in log10(size) between the two sieves around it; never extrapolated; "
                                              "the curve of a mix is the sum of its components' curves by mass share");
  std::vector<Explanation> list;
  list.push_back({"d10", reading, reading_of(grading, 10), source});
  list.push_back({"d50", reading, reading_of(grading, 50), source});
  list.push_back({"d90", reading, reading_of(grading, 90), source});
  list.push_back({"cu", "D60 / D10", {{"D60", size(60)}, {"D10", size(10)}}, "ASTM D2487"});
  if (band) {
    std::vector<Input> ends{{GRITWRIGHT_TEXT("wanted grain"), size_text(band->from, UnitSystem::metric) + " to " + size_text(band->to, UnitSystem::metric)}};
    for (Input& end : ends_of(grading, *band)) ends.push_back(std::move(end));
    list.push_back({"in_band", GRITWRIGHT_TEXT("passing at the coarse end of the wanted grain - passing at its fine end, by mass"), ends, source});
    list.push_back({"finer", GRITWRIGHT_TEXT("passing at the fine end of the wanted grain, by mass"), ends, source});
  }
  return list;
}

std::vector<Explanation> explain(const BagVerdict& judged) {
  const auto size = [](Aperture aperture) { return size_text(aperture, UnitSystem::metric); };
  const auto share = [](MassShare value) { return percent_text(value.value()); };
  const std::pair<std::string, std::string> ends{GRITWRIGHT_TEXT("wanted grain"), size(judged.band.from) + " to " + size(judged.band.to)};
  const std::string source = "docs/science/grading.md";
  std::string openings;
  for (const Aperture& opening : judged.openings) openings += (openings.empty() ? "" : ", ") + size(opening);
  std::vector<std::pair<std::string, std::string>> kept{{GRITWRIGHT_TEXT("openings"), openings.empty() ? GRITWRIGHT_TEXT("none") : openings}};
  if (judged.kept) kept.emplace_back(GRITWRIGHT_TEXT("kept, by mass"), share(*judged.kept));
  if (judged.packing_of_bag && judged.packing_of_kept) {
    kept.emplace_back(GRITWRIGHT_TEXT("packing density of the bag"), figure(judged.packing_of_bag->value(), 3));
    kept.emplace_back(GRITWRIGHT_TEXT("packing density of what is kept"), figure(judged.packing_of_kept->value(), 3));
  }
  const VerdictLimits limits;
  const double at_coarse = 1 - judged.coarser.value();
  const double at_fine = at_coarse - judged.in_band.value();
  const Input coarse{passing_name(judged.band.to), percent_text(at_coarse)};
  const Input fine{passing_name(judged.band.from), percent_text(at_fine)};
  // Nothing is finer than 0; what the curve counts there was found nowhere, so it is not inside either.
  const bool from_nothing = !(judged.band.from > Aperture{});
  const Input lost{GRITWRIGHT_TEXT("lost"), percent_text(from_nothing ? at_fine : at_fine - judged.finer.value())};
  const std::vector<Input> of_finer = from_nothing ? std::vector<Input>{ends} : std::vector<Input>{ends, fine, lost};
  const Explanation inside = from_nothing ? Explanation{"in_band", GRITWRIGHT_TEXT("passing at the coarse end of the wanted grain less what was lost, by mass"), {ends, coarse, lost}, source}
                                          : Explanation{"in_band", GRITWRIGHT_TEXT("passing at the coarse end of the wanted grain - passing at its fine end, by mass"), {ends, coarse, fine}, source};
  return {{"verdict", GRITWRIGHT_TEXT("take: in_band and finer within their limits; take after screening: usable within its limit; else other use or complain"),
           {{GRITWRIGHT_TEXT("wanted grain, its ends at the sieves of the test"), ends.second},
            {GRITWRIGHT_TEXT("least wanted, by mass"), share(limits.least_in_band)},
            {GRITWRIGHT_TEXT("most finer"), share(limits.most_finer)},
            {GRITWRIGHT_TEXT("least usable"), percent_text(limits.least_usable.value())}},
           GRITWRIGHT_TEXT("docs/science/grading.md; the limits are our assumption")},
          inside,
          {"finer", GRITWRIGHT_TEXT("passing at the fine end of the wanted grain less what was lost, by mass"), of_finer, source},
          {"coarser", GRITWRIGHT_TEXT("1 - passing at the coarse end of the wanted grain, by mass"), {ends, coarse}, source},
          {"usable", GRITWRIGHT_TEXT("loose litres of the fraction that is kept, per loose litre of bag; by mass share where packing is unknown"), kept,
           "plitt-1971; docs/science/packing.md"}};
}

Explanation explain_price(const Bag& bag, const BagVerdict& judged) {
  return {"price",
          GRITWRIGHT_TEXT("price / (litres x usable litres of a litre)"),
          {{GRITWRIGHT_TEXT("price"), figure(bag.price->amount, 2) + (bag.price->currency.empty() ? "" : " " + bag.price->currency)},
           {GRITWRIGHT_TEXT("litres"), volume_text(in_l(*bag.volume), UnitSystem::metric)},
           {GRITWRIGHT_TEXT("usable of a litre"), percent_text(judged.usable.value())}},
          "docs/science/grading.md"};
}

std::vector<Explanation> explain_band(const Grading& grading, const Band& band) {
  const auto inside = band_share(grading, band);
  std::vector<Input> inputs{{GRITWRIGHT_TEXT("wanted grain"), size_text(band.from, UnitSystem::metric) + " to " + size_text(band.to, UnitSystem::metric)}};
  for (Input& end : ends_of(grading, band)) inputs.push_back(std::move(end));
  inputs.emplace_back(GRITWRIGHT_TEXT("share"), percent_text(inside ? std::optional(inside->value()) : std::nullopt));
  return {{"bands", GRITWRIGHT_TEXT("100 (passing at the coarse end - passing at the fine end), read linear in log10(size) between sieves"),
           std::move(inputs), "docs/science/grading.md"}};
}

std::vector<Explanation> explain(const LaboratoryFigures& figures, const Grading& grading) {
  const std::string folk_ward = "Folk & Ward 1957";
  const auto size = [&](double percent) { return grain_size_text(percentile(grading, percent), UnitSystem::metric); };
  return {{"cc", "D30^2 / (D10 D60)", {{"D10", size(10)}, {"D30", size(30)}, {"D60", size(60)}}, "ASTM D2487"},
          {"fineness_modulus", GRITWRIGHT_TEXT("sum of cumulative percent that stayed on 0.150, 0.300, 0.600, 1.18, 2.36, 4.75, 9.5, 19.0, 37.5, 75, 150 mm / 100"),
           fineness_inputs(figures, grading), "ASTM C125, C136; CRD-C 104-80"},
          {"mean_phi", GRITWRIGHT_TEXT("(f16 + f50 + f84) / 3, phi = -log2(d/mm), percentiles counted from the coarse end"), phis_of(grading, {16, 50, 84}), folk_ward},
          {"median_phi", "f50", phis_of(grading, {50}), folk_ward},
          {"sorting_phi", "(f84 - f16)/4 + (f95 - f5)/6.6", phis_of(grading, {5, 16, 84, 95}), folk_ward},
          {"skewness", "(f16 + f84 - 2 f50)/(2 (f84 - f16)) + (f5 + f95 - 2 f50)/(2 (f95 - f5))", phis_of(grading, {5, 16, 50, 84, 95}), folk_ward},
          {"kurtosis", "(f95 - f5)/(2.44 (f75 - f25))", phis_of(grading, {5, 25, 75, 95}), folk_ward}};
}

std::string explanation_text(const std::vector<Explanation>& explanations) {
  std::string text;
  for (const Explanation& explanation : explanations) {
    text += explanation.figure + " = " + explanation.formula + '\n';
    std::string inputs;
    for (const auto& [name, value] : explanation.inputs) inputs += (inputs.empty() ? "" : ", ") + name + " " + value;
    if (!inputs.empty()) text += "    with " + inputs + '\n';
    text += "    " + explanation.source + '\n';
  }
  return text;
}

}  // namespace gritwright
