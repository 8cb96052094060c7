#include "gritwright/report/root_plan_sheet.hpp"

#include <algorithm>
#include <cmath>
#include <string>

#include "gritwright/report/messages.hpp"
#include "gritwright/report/text_table.hpp"

namespace gritwright {

namespace {

std::string cm_text(Length length, UnitSystem units) { return depth_text(Depth(length), units); }
std::string root_litres(PotVolume volume, UnitSystem units) { return volume_text(in_ml(volume) / 1000, units); }
std::string degrees(Angle angle) { return figure(in_deg(angle), 0) + "°"; }

PrintSection limits_section(const RootPlanAnswer& answer, UnitSystem units) {
  PrintSection section{"What limits the fit", {}};
  if (answer.limitations.empty()) section.blocks.emplace_back(PrintText{"Nothing: the root mass fits as it is posed."});
  PrintTable table{{"Toward", "Sticks out"}, {}, {false, true}};
  for (const Limitation& limit : answer.limitations) table.rows.push_back({direction_name(limit.direction), cm_text(limit.excess, units)});
  if (!table.rows.empty()) section.blocks.emplace_back(table);
  if (answer.corners_share > 0)
    section.blocks.emplace_back(PrintText{"After straight cuts " + percent_text(answer.corners_share) + " of the root mass still stick out at corners."});
  return section;
}

/// Where the trunk base stands in plan; less than half a millimetre is the middle.
std::string aside_text(const WorkedPlan& plan, UnitSystem units) {
  std::string text;
  const auto part = [&](Length length, const char* ahead, const char* behind) {
    if (std::abs(in_cm(length)) < 0.05) return;
    text += (text.empty() ? "" : " and ") + cm_text(length_cm(std::abs(in_cm(length))), units) + (in_cm(length) > 0 ? ahead : behind);
  };
  part(plan.right, " to the right", " to the left");
  part(plan.back, " to the back", " to the front");
  return text.empty() ? "in the middle" : text + " of the middle";
}

std::string caution_text(const Note& note, UnitSystem units) { return (note.where.empty() ? "" : note.where + ": ") + sentence(note, {}, units); }

PrintTicks steps_of(const WorkedPlan& plan, UnitSystem units) {
  PrintTicks ticks;
  for (const CombedFace& combed : plan.combed) ticks.lines.push_back("Comb the old " + face_name(combed.face) + " " + cm_text(combed.depth, units) + " deep");
  // Every cut by both names: a tipped tree has its old bottom somewhere else.
  for (const PlannedCut& cut : plan.cuts)
    ticks.lines.push_back("Take " + cm_text(cut.depth, units) + " off the old " + face_name(cut.face) + ", which points " + direction_name(cut.direction));
  if (!plan.fits) {
    ticks.lines.push_back("Put the tree back into its old pot" +
                          (plan.rest_after_years ? "; the rest after " + std::to_string(*plan.rest_after_years) + (*plan.rest_after_years == 1 ? " year" : " years") : std::string()));
    return ticks;
  }
  std::string stand = "Trunk base " + aside_text(plan, units) + ", " + depth_text(plan.trunk_base, units) + " over the floor";
  if (std::abs(in_deg(plan.turn)) >= 0.5) stand += ", turned " + degrees(plan.turn);
  if (in_deg(plan.tip) >= 0.5) stand += ", tipped " + degrees(plan.tip) + " toward " + degrees(plan.tip_toward) + " (from the pot's right to its back)";
  ticks.lines.push_back(std::move(stand));
  if (in_cm(plan.shoulder) > 0.05) ticks.lines.push_back("Build the shoulder with sphagnum, " + depth_text(plan.shoulder, units) + " over the soil");
  return ticks;
}

PrintSection plan_section(const WorkedPlan& plan, UnitSystem units) {
  PrintSection section{"Plan " + plan.name, {steps_of(plan, units)}};
  if (plan.other_pot) section.blocks.emplace_back(PrintText{"Into another free pot: " + *plan.other_pot, true});
  PrintTable table{{"Untouched", "Taken off", "Soil line", "Mix in the pot"}, {}, {true, true, true, true}};
  table.rows.push_back({percent_text(plan.untouched_share), percent_text(plan.removed_share), depth_text(plan.soil_line, units), root_litres(plan.fill, units)});
  section.blocks.emplace_back(table);
  for (const Note& caution : plan.cautions) section.blocks.emplace_back(PrintText{caution_text(caution, units), caution.level == Level::warning});
  return section;
}

PrintSection stop_section(const RootPlanAnswer& answer, UnitSystem units) {
  PrintTable table{{"The upper cut stops at", "Then below", "Trunk base", "Untouched", "Mix in the pot"}, {}, {false, true, true, true, true}};
  for (const StopRow& row : answer.stop_table)
    table.rows.push_back({cm_text(row.stops_at, units) + (row.fits ? "" : ", then it does not fit: stage it"), cm_text(row.below, units), depth_text(row.trunk_base, units), percent_text(row.untouched_share),
                          root_litres(row.fill, units)});
  return {"If the cut from above comes to an end", {table}};
}

}  // namespace

PrintDocument root_plan_sheet(const RootMassPlan& plan, const RootPlanAnswer& answer, UnitSystem units) {
  PrintDocument sheet;
  sheet.title = plan.name.empty() ? "Root-mass plan" : plan.name;
  sheet.subtitle = "Root-mass plan, into " + (plan.pot.name.empty() ? std::string("its pot") : plan.pot.name);
  sheet.foot = sheet.title + ", root-mass plan";
  sheet.sections.push_back(limits_section(answer, units));
  for (const WorkedPlan& worked : answer.plans) sheet.sections.push_back(plan_section(worked, units));
  if (!answer.plans.empty()) {
    const WorkedPlan& first = answer.plans.front();
    PrintSection pictures{"To scale: hatched comes off, grey stays", {root_drawing(plan, first, RootSide::front), root_drawing(plan, first, RootSide::top)}};
    sheet.sections.push_back(std::move(pictures));
  }
  if (!answer.stop_table.empty()) sheet.sections.push_back(stop_section(answer, units));
  PrintSection notes{"Take care", {}};
  for (const Note& note : answer.notes) notes.blocks.emplace_back(PrintText{caution_text(note, units), note.level == Level::warning});
  notes.blocks.emplace_back(PrintText{"Clean tools for each tree. Some part of the root mass stays untouched; what is combed through is disturbed even where soil clings to it."});
  notes.blocks.emplace_back(PrintText{"Common practice, general information; qualified advice prevails."});
  sheet.sections.push_back(std::move(notes));
  return sheet;
}

}  // namespace gritwright
