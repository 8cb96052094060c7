#include "gritwright/report/root_section.hpp"

#include <algorithm>
#include <string_view>
#include <utility>
#include <vector>

#include "gritwright/models/root_mix.hpp"
#include "gritwright/report/mix_report.hpp"
#include "gritwright/report/text_table.hpp"
#include "message_templates.hpp"
#include "words.hpp"

namespace gritwright {

namespace {

constexpr double section_width_mm = 110;
constexpr double section_words_mm = 34;

/// Centimetres from the middle of the floor to the paper.
struct OnPaper {
  double mm_per_cm;
  double half_cm;
  double top_cm;
  [[nodiscard]] DrawnPoint at(double across_cm, double up_cm) const { return {1 + (across_cm + half_cm) * mm_per_cm, 2 + (top_cm - up_cm) * mm_per_cm}; }
};

std::string share_or_range(Porosity share, const std::optional<Range>& range, const Words& words) {
  if (!range) return percent_text(share.value());
  return words(GRITWRIGHT_TEXT("{low} to {high}"), {{"low", percent_text(range->low)}, {"high", percent_text(range->high)}});
}

}  // namespace

std::optional<RootSection> root_section(const RootMassPlan& plan, const WorkedPlan& worked, const RootView& side, const Mix& mix, const MixState& state) {
  if (!worked.fits) return std::nullopt;
  const Container rest = pot_without_root_mass(plan, worked);
  auto water = mix_in_pot(state, mix.water, PotGeometry(rest));
  if (!water) return std::nullopt;
  RootSection section{pot_section(PotGeometry(pot_of(plan, worked)), &*water), std::move(*water), {}, new_mix_share(plan, worked), std::nullopt};
  section.explanations.push_back({"new_mix", GRITWRIGHT_TEXT("new mix only: the pot's area at each height less that of the kept root mass"),
                                  {{GRITWRIGHT_TEXT("new mix, of the pot"), percent_text(section.new_mix_share)}}, "docs/science/root-mass-plan.md"});
  for (Explanation& one : explain(mix, state, section.water, &rest))
    if (one.figure == "container_capacity" || one.figure == "air_filled_porosity") section.explanations.push_back(std::move(one));
  if (!plan.bare_root) section.kept = side.kept;
  return section;
}

UncertainMix uncertain_new_mix(const RootMassPlan& plan, const WorkedPlan& worked, const Mix& mix, const MixSpread& spread) {
  return {mix, spread, PotGeometry(pot_without_root_mass(plan, worked))};
}

std::string new_mix_only_text(const RootSection& section, const Translate& translate) {
  const Words words{translate, UnitSystem::metric};
  return words(GRITWRIGHT_TEXT("new mix only, {share} of the pot"), {{"share", percent_text(section.new_mix_share, 0)}});
}

PrintDrawing root_section_drawing(const RootSection& section, UnitSystem units, const Translate& translate) {
  const Words words{translate, units};
  double half_cm = 0;
  for (const PotWidth& width : section.pot.widths) half_cm = std::max(half_cm, in_cm(width.length) / 2);
  double top_cm = in_cm(section.pot.rim);
  for (const ViewPoint& point : section.kept) top_cm = std::max(top_cm, in_cm(point.along));
  const OnPaper paper{std::min(10.0, (section_width_mm - section_words_mm) / (2 * half_cm)), half_cm, top_cm};
  PrintDrawing drawing;
  drawing.title = words(GRITWRIGHT_TEXT("Pot in section: {what}"), {{"what", new_mix_only_text(section, translate)}});
  drawing.width_mm = 2 * half_cm * paper.mm_per_cm + section_words_mm + 2;
  drawing.height_mm = top_cm * paper.mm_per_cm + 6;
  const auto level = [&](Depth height, std::string_view name) {
    const double up_cm = in_cm(height);
    drawing.lines.push_back({{paper.at(-half_cm, up_cm), paper.at(half_cm, up_cm)}, Ink::dashed});
    const DrawnPoint end = paper.at(half_cm, up_cm);
    drawing.texts.push_back({{end.x_mm + 1, end.y_mm + 1}, words(name, {{"height", depth_text(height, units)}})});
  };
  level(section.pot.fill_line, GRITWRIGHT_TEXT("filled {height}"));
  if (section.pot.perched) level(*section.pot.perched, GRITWRIGHT_TEXT("wet zone {height}"));
  if (!section.kept.empty()) {
    DrawnLine kept{{}, Ink::hatched};
    double across_cm = 0;
    double up_cm = 0;
    for (const ViewPoint& point : section.kept) {
      kept.points.push_back(paper.at(in_cm(point.across), in_cm(point.along)));
      across_cm += in_cm(point.across) / static_cast<double>(section.kept.size());
      up_cm += in_cm(point.along) / static_cast<double>(section.kept.size());
    }
    kept.points.push_back(kept.points.front());
    drawing.lines.push_back(std::move(kept));
    const DrawnPoint middle = paper.at(across_cm, up_cm);
    drawing.texts.push_back({{middle.x_mm - 9, middle.y_mm + 1}, words(GRITWRIGHT_TEXT("not known"))});
  }
  DrawnLine wall{{}, Ink::outline};
  for (auto width = section.pot.widths.rbegin(); width != section.pot.widths.rend(); ++width) wall.points.push_back(paper.at(-in_cm(width->length) / 2, in_cm(width->height)));
  for (const PotWidth& width : section.pot.widths) wall.points.push_back(paper.at(in_cm(width.length) / 2, in_cm(width.height)));
  drawing.lines.push_back(std::move(wall));
  return drawing;
}

PrintSection root_section_print(const RootSection& section, const std::string& mix_name, UnitSystem units, const Translate& translate) {
  const Words words{translate, units};
  PrintTable table{words.each({GRITWRIGHT_TEXT("New mix only"), GRITWRIGHT_TEXT("Air"), GRITWRIGHT_TEXT("Water held"), GRITWRIGHT_TEXT("Wet zone")}), {}, {false, true, true, true}};
  const auto of = [&](MixFigure figure) { return section.ranges ? section.ranges->of(figure) : std::nullopt; };
  table.rows.push_back({mix_name, share_or_range(section.water.air_filled_porosity, of(MixFigure::air_filled_porosity), words),
                        share_or_range(section.water.container_capacity, of(MixFigure::container_capacity), words), depth_text(section.pot.perched, units)});
  PrintSection print{words(GRITWRIGHT_TEXT("Air and water: {what}"), {{"what", new_mix_only_text(section, translate)}}), {root_section_drawing(section, units, translate), table}};
  if (!section.kept.empty()) print.blocks.emplace_back(PrintText{words(GRITWRIGHT_TEXT("What the kept root mass (hatched) holds is not known; the figures say nothing about it."))});
  return print;
}

}  // namespace gritwright
