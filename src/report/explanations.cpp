#include "gritwright/report/explanations.hpp"

#include "gritwright/report/quantity_text.hpp"
#include "gritwright/report/text_table.hpp"

namespace gritwright {

std::vector<Explanation> explain(const SieveAnalysis& analysis) {
  const auto mass = [](std::optional<Mass> value) { return mass_text(value, UnitSystem::metric); };
  const auto size = [&](double percent) { return size_text(percentile(analysis.grading, percent), UnitSystem::metric); };
  std::vector<Explanation> list;
  if (analysis.loss) {
    list.push_back({"loss_percent", "100 (start - recovered) / start",
                    {{"recovered", mass(analysis.total)}, {"base", mass(analysis.base)}},
                    "ASTM C136-19: more than 0.3 % is not for acceptance"});
  }
  list.push_back({"passing", "100 (1 - cumulative mass retained / base); cumulative masses are divided, rounded shares never added",
                  {{"base", mass(analysis.base)}},
                  "ASTM C136-19: the base is the original dry mass, before washing, unless the test says recovered"});
  list.push_back({"d_mm", "size at a percent passing, linear in log10(size) between the two sieves around it; never extrapolated",
                  {{"D10", size(10)}, {"D50", size(50)}, {"D90", size(90)}},
                  "docs/science/grading.md"});
  list.push_back({"cu", "D60 / D10", {{"D60", size(60)}, {"D10", size(10)}}, "ASTM D2487"});
  return list;
}

std::vector<Explanation> explain(const Screening& screening) {
  const auto share = [](const ScreenedFraction& fraction) { return percent_text(fraction.share.value()); };
  std::vector<std::pair<std::string, std::string>> masses;
  for (const ScreenedFraction& fraction : screening.fractions) {
    masses.emplace_back(fraction.from ? "over " + size_text(fraction.from, UnitSystem::metric) : "the rest", share(fraction));
  }
  return {{"mass_percent", "share that stays on an opening a: G = 1 - exp(-ln 2 (x/a)^s), integrated over each class on log size; "
                           "two cuts in series multiply; the pan passes",
           masses, "Plitt 1971, the form of the partition curve; s is a setting, no published value for sieving by hand was found"},
          {"loose_l_per_l", "(mass share / packing density of the fraction) / (1 / packing density of the bag)", {},
           "docs/science/packing.md, one class beta for the bag and its fractions"}};
}

std::vector<Explanation> explain_blend(const Grading& grading, const std::optional<Band>& band) {
  const auto size = [&](double percent) { return size_text(percentile(grading, percent), UnitSystem::metric); };
  const std::string source = "docs/science/grading.md";
  const std::string reading = "size at a percent passing, linear in log10(size) between the two sieves around it; never extrapolated; "
                              "the curve of a mix is the sum of its components' curves by mass share";
  std::vector<Explanation> list;
  list.push_back({"d10", reading, {{"D10", size(10)}}, source});
  list.push_back({"d50", reading, {{"D50", size(50)}}, source});
  list.push_back({"d90", reading, {{"D90", size(90)}}, source});
  list.push_back({"cu", "D60 / D10", {{"D60", size(60)}, {"D10", size(10)}}, "ASTM D2487"});
  if (band) {
    const std::pair<std::string, std::string> ends{"band", size_text(band->from, UnitSystem::metric) + " to " + size_text(band->to, UnitSystem::metric)};
    list.push_back({"in_band", "passing at the band's coarse end - passing at its fine end, by mass", {ends}, source});
    list.push_back({"finer", "passing at the band's fine end, by mass", {ends}, source});
  }
  return list;
}

std::vector<Explanation> explain(const BagVerdict& judged) {
  const auto size = [](Aperture aperture) { return size_text(aperture, UnitSystem::metric); };
  const auto share = [](MassShare value) { return percent_text(value.value()); };
  const std::pair<std::string, std::string> ends{"band", size(judged.band.from) + " to " + size(judged.band.to)};
  const std::string source = "docs/science/grading.md";
  std::string openings;
  for (const Aperture& opening : judged.openings) openings += (openings.empty() ? "" : ", ") + size(opening);
  std::vector<std::pair<std::string, std::string>> kept{{"openings", openings.empty() ? "none" : openings}};
  if (judged.kept) kept.emplace_back("kept, by mass", share(*judged.kept));
  return {{"in_band", "passing at the band's coarse end - passing at its fine end, by mass", {ends}, source},
          {"finer", "passing at the band's fine end, by mass", {ends}, source},
          {"coarser", "1 - passing at the band's coarse end, by mass", {ends}, source},
          {"usable", "loose litres of the fraction that is kept, per loose litre of bag; by mass share where packing is unknown", kept,
           "plitt-1971; docs/science/packing.md"}};
}

Explanation explain_price(const Bag& bag, const BagVerdict& judged) {
  return {"price",
          "price / (litres x usable litres of a litre)",
          {{"price", figure(bag.price->amount, 2) + (bag.price->currency.empty() ? "" : " " + bag.price->currency)},
           {"litres", volume_text(in_l(*bag.volume), UnitSystem::metric)},
           {"usable of a litre", percent_text(judged.usable.value())}},
          "docs/science/grading.md"};
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
