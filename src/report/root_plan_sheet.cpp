#include "gritwright/report/root_plan_sheet.hpp"

#include <algorithm>
#include <cmath>
#include <string>

#include "gritwright/report/messages.hpp"
#include "gritwright/report/text_table.hpp"
#include "message_templates.hpp"
#include "words.hpp"

namespace gritwright {

namespace {

std::string cm_text(Length length, UnitSystem units) { return depth_text(Depth(length), units); }
std::string root_litres(PotVolume volume, UnitSystem units) { return volume_text(in_ml(volume) / 1000, units); }
std::string degrees(Angle angle) { return figure(in_deg(angle), 0) + "°"; }

std::string direction_words(Direction direction, const Words& words) {
  switch (direction) {
    case Direction::right: return words(GRITWRIGHT_TEXT("right"));
    case Direction::left: return words(GRITWRIGHT_TEXT("left"));
    case Direction::back: return words(GRITWRIGHT_TEXT("back"));
    case Direction::front: return words(GRITWRIGHT_TEXT("front"));
    case Direction::up: return words(GRITWRIGHT_TEXT("up"));
    case Direction::down: return words(GRITWRIGHT_TEXT("down"));
  }
  return {};
}

std::string face_words(Face face, const Words& words) {
  switch (face) {
    case Face::right: return words(GRITWRIGHT_TEXT("old right"));
    case Face::left: return words(GRITWRIGHT_TEXT("old left"));
    case Face::back: return words(GRITWRIGHT_TEXT("old back"));
    case Face::front: return words(GRITWRIGHT_TEXT("old front"));
    case Face::top: return words(GRITWRIGHT_TEXT("old top"));
    case Face::bottom: return words(GRITWRIGHT_TEXT("old bottom"));
  }
  return {};
}

PrintSection limits_section(const RootPlanAnswer& answer, const Words& words) {
  PrintSection section{words(GRITWRIGHT_TEXT("What limits the fit")), {}};
  const bool corners = answer.corners_share > least_told_share;
  if (answer.limitations.empty() && !corners) section.blocks.emplace_back(PrintText{words(GRITWRIGHT_TEXT("Nothing: the root mass fits as it is posed."))});
  PrintTable table{words.each({GRITWRIGHT_TEXT("toward"), GRITWRIGHT_TEXT("sticks out")}), {}, {false, true}};
  for (const Limitation& limit : answer.limitations) table.rows.push_back({direction_words(limit.direction, words), cm_text(limit.excess, words.units)});
  if (!table.rows.empty()) section.blocks.emplace_back(table);
  if (corners)
    section.blocks.emplace_back(PrintText{words(GRITWRIGHT_TEXT("After straight cuts {share} of the root mass still stick out at corners."), {{"share", percent_text(answer.corners_share)}})});
  return section;
}

/// Where the trunk base stands in plan; less than half a millimetre is the middle.
std::string aside_text(const WorkedPlan& plan, const Words& words) {
  const auto part = [&](Length length, std::string_view ahead, std::string_view behind) -> std::string {
    if (std::abs(in_cm(length)) < 0.05) return {};
    return words(in_cm(length) > 0 ? ahead : behind, {{"length", cm_text(length_cm(std::abs(in_cm(length))), words.units)}});
  };
  const std::string right = part(plan.right, GRITWRIGHT_TEXT("{length} to the right"), GRITWRIGHT_TEXT("{length} to the left"));
  const std::string back = part(plan.back, GRITWRIGHT_TEXT("{length} to the back"), GRITWRIGHT_TEXT("{length} to the front"));
  if (right.empty() && back.empty()) return words(GRITWRIGHT_TEXT("in the middle"));
  if (right.empty() || back.empty()) return words(GRITWRIGHT_TEXT("{one} of the middle"), {{"one", right.empty() ? back : right}});
  return words(GRITWRIGHT_TEXT("{one} and {other} of the middle"), {{"one", right}, {"other", back}});
}

std::string caution_text(const Note& note, const Words& words) {
  return words.labelled(note.where.empty() ? std::string() : words(note.where), sentence(note, words.translate, words.units));
}

std::string corners_line(const WorkedPlan& plan, const Words& words) {
  double share = 0;
  std::vector<std::string> corner_list;
  for (const ShavedCorners& corners : plan.shaved) {
    share += corners.share;
    corner_list.push_back(words(GRITWRIGHT_TEXT("{face} (now {direction}) up to {depth} deep"),
                                {{"face", face_words(corners.face, words)}, {"direction", direction_words(corners.direction, words)}, {"depth", cm_text(corners.depth, words.units)}}));
  }
  const std::string where = words.list(corner_list);
  if (!plan.fits) return words(GRITWRIGHT_TEXT("Cut straight across the corners, {share} of the root mass: {where}"), {{"share", percent_text(share)}, {"where", where}});
  return words(GRITWRIGHT_TEXT("Round off the corners along the wall, {share} of the root mass: {where}"), {{"share", percent_text(share)}, {"where", where}});
}

PrintTicks steps_of(const WorkedPlan& plan, const Words& words) {
  PrintTicks ticks;
  for (const CombedFace& combed : plan.combed) 
    ticks.lines.push_back(words(GRITWRIGHT_TEXT("Comb the {face} {depth} deep"), {{"face", face_words(combed.face, words)}, {"depth", cm_text(combed.depth, words.units)}}));
  // Every cut by both names: a tipped tree has its old bottom somewhere else.
  for (const PlannedCut& cut : plan.cuts)
    ticks.lines.push_back(words(GRITWRIGHT_TEXT("Take {depth} off the {face}, which points {direction}"),
                                {{"depth", cm_text(cut.depth, words.units)}, {"face", face_words(cut.face, words)}, {"direction", direction_words(cut.direction, words)}}));
  if (!plan.shaved.empty()) ticks.lines.push_back(corners_line(plan, words));
  if (!plan.fits) {
    ticks.lines.push_back(plan.rest_after_years ? words.counted(static_cast<std::size_t>(*plan.rest_after_years), GRITWRIGHT_TEXT("Put the tree back into its old pot; the rest after 1 year"),
                                                                GRITWRIGHT_TEXT("Put the tree back into its old pot; the rest after {count} years"))
                                                : words(GRITWRIGHT_TEXT("Put the tree back into its old pot")));
    return ticks;
  }
  std::string stand = words(GRITWRIGHT_TEXT("Trunk base {place}, {height} over the floor"), {{"place", aside_text(plan, words)}, {"height", depth_text(plan.trunk_base, words.units)}});
  if (std::abs(in_deg(plan.turn)) >= 0.5) stand = words(GRITWRIGHT_TEXT("{stand}, turned {angle}"), {{"stand", stand}, {"angle", degrees(plan.turn)}});
  if (in_deg(plan.tip) >= 0.5)
    stand = words(GRITWRIGHT_TEXT("{stand}, tipped {angle} toward {toward} (from the pot's right to its back)"), {{"stand", stand}, {"angle", degrees(plan.tip)}, {"toward", degrees(plan.tip_toward)}});
  ticks.lines.push_back(std::move(stand));
  if (in_cm(plan.shoulder) > 0.05) ticks.lines.push_back(words(GRITWRIGHT_TEXT("Build the shoulder with about {litres} of sphagnum, {height} over the soil"),
                                                               {{"litres", root_litres(plan.sphagnum, words.units)}, {"height", depth_text(plan.shoulder, words.units)}}));
  return ticks;
}

PrintSection plan_section(const WorkedPlan& plan, const Words& words) {
  PrintSection section{words(GRITWRIGHT_TEXT("Plan {plan}"), {{"plan", plan.name}}), {steps_of(plan, words)}};
  if (plan.other_pot) section.blocks.emplace_back(PrintText{words(GRITWRIGHT_TEXT("Into another free pot: {pot}"), {{"pot", *plan.other_pot}}), true});
  if (plan.fits) {
    PrintTable table{words.each({GRITWRIGHT_TEXT("untouched"), GRITWRIGHT_TEXT("taken off"), GRITWRIGHT_TEXT("soil line"), GRITWRIGHT_TEXT("mix in the pot")}), {}, {true, true, true, true}};
    table.rows.push_back({percent_text(plan.untouched_share), percent_text(plan.removed_share), depth_text(plan.soil_line, words.units), root_litres(plan.fill, words.units)});
    section.blocks.emplace_back(table);
  } else {
    PrintTable table{words.each({GRITWRIGHT_TEXT("untouched"), GRITWRIGHT_TEXT("taken off"), GRITWRIGHT_TEXT("new mix for what comes off")}), {}, {true, true, true}};
    table.rows.push_back({percent_text(plan.untouched_share), percent_text(plan.removed_share), root_litres(plan.fill, words.units)});
    section.blocks.emplace_back(table);
  }
  for (const Note& caution : plan.cautions) section.blocks.emplace_back(PrintText{caution_text(caution, words), caution.level == Level::warning});
  return section;
}

PrintSection stop_section(const RootPlanAnswer& answer, const Words& words) {
  PrintTable table{words.each({GRITWRIGHT_TEXT("the upper cut stops at"), GRITWRIGHT_TEXT("then below"), GRITWRIGHT_TEXT("trunk base"), GRITWRIGHT_TEXT("untouched"), GRITWRIGHT_TEXT("mix in the pot")}),
                   {},
                   {false, true, true, true, true}};
  for (const StopRow& row : told_stops(answer)) {
    const std::string at = cm_text(row.stops_at, words.units);
    const std::string stop = row.far_enough ? words(GRITWRIGHT_TEXT("{stop} or more"), {{"stop", at}}) : at;
    table.rows.push_back({row.fits ? stop : words(GRITWRIGHT_TEXT("{stop}, then it does not fit: stage it"), {{"stop", stop}}), cm_text(row.below, words.units), depth_text(row.trunk_base, words.units),
                          percent_text(row.untouched_share), root_litres(row.fill, words.units)});
  }
  return {words(GRITWRIGHT_TEXT("If the cut from above comes to an end")), {table}};
}

}  // namespace

std::vector<std::string> root_plan_steps(const WorkedPlan& plan, UnitSystem units, const Translate& translate) { return steps_of(plan, Words{translate, units}).lines; }

PrintDocument root_plan_sheet(const RootMassPlan& plan, const RootPlanAnswer& answer, UnitSystem units, const RootSection& section,
                              const std::string& mix_name, const Translate& translate) {
  PrintDocument sheet = root_plan_sheet(plan, answer, units, translate);
  // The cautions stay last.
  sheet.sections.insert(sheet.sections.end() - 1, root_section_print(section, mix_name, units, translate));
  return sheet;
}

PrintDocument root_plan_sheet(const RootMassPlan& plan, const RootPlanAnswer& answer, UnitSystem units, const Translate& translate) {
  const Words words{translate, units};
  PrintDocument sheet;
  sheet.title = plan.name.empty() ? words(GRITWRIGHT_TEXT("Root-mass plan")) : plan.name;
  sheet.subtitle = plan.pot.name.empty() ? words(GRITWRIGHT_TEXT("Root-mass plan, into its pot")) : words(GRITWRIGHT_TEXT("Root-mass plan, into {pot}"), {{"pot", plan.pot.name}});
  sheet.foot = words(GRITWRIGHT_TEXT("{title}, root-mass plan"), {{"title", sheet.title}});
  sheet.sections.push_back(limits_section(answer, words));
  for (const WorkedPlan& worked : answer.plans) sheet.sections.push_back(plan_section(worked, words));
  if (!answer.plans.empty()) {
    const WorkedPlan& first = answer.plans.front();
    PrintSection pictures{words(GRITWRIGHT_TEXT("To scale: hatched comes off, grey stays")), {root_drawing(plan, first, RootSide::front, translate), root_drawing(plan, first, RootSide::top, translate)}};
    sheet.sections.push_back(std::move(pictures));
  }
  if (!told_stops(answer).empty()) sheet.sections.push_back(stop_section(answer, words));
  PrintSection notes{words(GRITWRIGHT_TEXT("Take care")), {}};
  for (const Note& note : answer.notes) notes.blocks.emplace_back(PrintText{caution_text(note, words), note.level == Level::warning});
  notes.blocks.emplace_back(PrintText{words(GRITWRIGHT_TEXT("Clean tools for each tree. Some part of the root mass stays untouched; what is combed through is disturbed even where soil clings to it."))});
  notes.blocks.emplace_back(PrintText{words(GRITWRIGHT_TEXT("Common practice, general information; qualified advice prevails."))});
  sheet.sections.push_back(std::move(notes));
  return sheet;
}

}  // namespace gritwright
