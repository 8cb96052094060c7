#include "gritwright/report/root_plan_report.hpp"

#include <fmt/format.h>

#include <cmath>

#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/root_mix.hpp"
#include "gritwright/report/messages.hpp"
#include "gritwright/report/text_table.hpp"
#include "message_templates.hpp"

namespace gritwright {

namespace {

constexpr const char* page = "docs/science/root-mass-plan.md";

std::string long_text(Length length, UnitSystem units) { return depth_text(depth_cm(in_cm(length)), units); }
std::string litres_text(PotVolume volume, UnitSystem units) { return volume_text(in_ml(volume) / 1000, units); }
std::string degrees_text(Angle angle) { return fmt::format("{} degrees", figure(in_deg(angle), 0)); }

std::string pot_name(const RootMassPlan& plan, const WorkedPlan& worked) {
  if (worked.other_pot) return worked.other_pot->empty() ? "another free pot" : "the free pot " + *worked.other_pot;
  return plan.pot.name.empty() ? "the pot" : plan.pot.name;
}

std::string place_text(const WorkedPlan& worked, UnitSystem units) {
  const auto part = [&](Length length, const char* ahead, const char* behind) -> std::string {
    if (std::abs(in_cm(length)) < 0.05) return "";
    return long_text(length_cm(std::abs(in_cm(length))), units) + (in_cm(length) > 0 ? ahead : behind);
  };
  const std::string right = part(worked.right, " right", " left");
  const std::string back = part(worked.back, " back", " front");
  if (right.empty() && back.empty()) return "in the middle of the pot";
  return right + (right.empty() || back.empty() ? "" : ", ") + back + " of the pot's middle";
}

std::string corners_text(const WorkedPlan& worked, UnitSystem units) {
  double share = 0;
  std::string where;
  for (const ShavedCorners& corners : worked.shaved) {
    share += corners.share;
    where += (where.empty() ? "" : ", ") + cut_text({corners.face, corners.direction, corners.depth}) + " up to " + long_text(corners.depth, units);
  }
  return (worked.fits ? "round off the corners along the wall, " : "cut straight across the corners, ") + percent_text(share) + " of the root mass: " + where + " deep";
}

std::string steps_text(const WorkedPlan& worked, UnitSystem units) {
  std::string text;
  int step = 0;
  const auto add = [&](const std::string& what) { text += fmt::format("  {}. {}\n", ++step, what); };
  for (const CombedFace& combed : worked.combed)
    add("comb the old " + face_name(combed.face) + " " + long_text(combed.depth, units) + " deep");
  for (const PlannedCut& cut : worked.cuts) add("take " + long_text(cut.depth, units) + " off " + cut_text(cut));
  if (!worked.shaved.empty()) add(corners_text(worked, units));
  std::string stand = "stand the trunk base " + place_text(worked, units) + ", " + depth_text(worked.trunk_base, units) + " over the floor";
  if (std::abs(in_deg(worked.turn)) >= 0.5) stand += ", turned " + degrees_text(worked.turn);
  if (in_deg(worked.tip) >= 0.5) stand += ", tipped " + degrees_text(worked.tip) + " toward " + degrees_text(worked.tip_toward);
  if (worked.fits) {
    add(stand);
  } else {
    add("put it back into its old pot");
  }
  return text;
}

std::string rungs_text(const WorkedPlan& worked) {
  std::string text;
  for (const Rung rung : worked.rungs) text += (text.empty() ? "" : ", ") + rung_text(rung);
  return text;
}

std::string plan_text(const RootMassPlan& plan, const WorkedPlan& worked, UnitSystem units) {
  std::string text = "plan " + worked.name + ": " + (worked.fits ? "into " + pot_name(plan, worked) : std::string("not in one go"));
  const std::string rungs = rungs_text(worked);
  text += (rungs.empty() ? "; fits as it is" : "; " + rungs) + '\n' + steps_text(worked, units);
  text += "  taken off " + percent_text(worked.removed_share) + ", untouched " +
          (plan.bare_root ? "–" : percent_text(worked.untouched_share)) + " of the root mass\n";
  if (worked.other_half)
    text += "  untouched last time and again " + percent_text(worked.other_half->left_again) + ", worked last time and again " +
            percent_text(worked.other_half->worked_again) + " of the root mass\n";
  if (worked.fits) {
    text += "  soil line " + depth_text(worked.soil_line, units) + " over the floor";
    if (in_cm(worked.shoulder) > 0) text += ", shoulder " + depth_text(worked.shoulder, units) + " over the soil, of about " + litres_text(worked.sphagnum, units) + " of sphagnum";
    text += "\n  new mix " + litres_text(worked.fill, units) + " as it lies, " + percent_text(new_mix_share(plan, worked), 0) + " of the pot\n";
  } else {
    text += "  new mix " + litres_text(worked.fill, units) + " as it lies, for what comes off\n";
  }
  for (const Note& note : worked.cautions)
    text += std::string(note.level == Level::warning ? "  caution: " : "  note: ") + (note.where.empty() ? "" : note.where + ": ") +
            sentence(note, {}, units) + '\n';
  return text;
}

std::string limits_text(const RootPlanAnswer& answer, UnitSystem units) {
  if (answer.limitations.empty() && answer.corners_share <= least_told_share) return "nothing limits the fit\n";
  std::string text = "what limits the fit: ";
  bool first = true;
  for (const Limitation& limitation : answer.limitations) {
    text += (first ? "" : ", ") + direction_name(limitation.direction) + " " + long_text(limitation.excess, units);
    first = false;
  }
  if (answer.corners_share > least_told_share)
    text += std::string(first ? "" : ", ") + "corners " + percent_text(answer.corners_share) + " of the root mass";
  return text + '\n';
}

std::string stops_text(const RootPlanAnswer& answer, UnitSystem units) {
  if (told_stops(answer).empty()) return "";
  std::vector<std::vector<std::string>> rows;
  for (const StopRow& row : told_stops(answer))
    rows.push_back({long_text(row.stops_at, units) + (row.far_enough ? " or more" : ""), row.fits ? long_text(row.below, units) : "not in one go",
                    depth_text(row.trunk_base, units), percent_text(row.untouched_share), litres_text(row.fill, units)});
  return "\nif the upper surface stops\n" + text_table({"at", "take below", "trunk base", "untouched", "new mix"}, rows);
}

std::string growth_text(const PotGrowth& growth, UnitSystem units) {
  std::string text;
  const auto add = [&](Length by, const char* what) {
    if (in_cm(by) > 0) text += (text.empty() ? "" : ", ") + growth_length_text(by, units) + what;
  };
  add(growth.length, " longer");
  add(growth.width, " wider");
  add(growth.depth, " deeper");
  return "\nsmallest change of the pot that would fit: " + text + '\n';
}

std::string cm_text(double cm) { return fmt::format("{} cm", figure(cm, 2)); }
std::string ml_text(PotVolume volume) { return fmt::format("{} mL", figure(in_ml(volume), 0)); }

}  // namespace

std::string cut_text(const PlannedCut& cut) { return "the old " + face_name(cut.face) + " (" + direction_name(cut.direction) + ")"; }

std::string growth_length_text(Length by, UnitSystem units) {
  constexpr double cm_per_shown = 2.54 / 100;
  // In centimetres its millimetres are shown whole.
  if (units == UnitSystem::us) by = length_cm(std::ceil(in_cm(by) / cm_per_shown - 1e-9) * cm_per_shown);
  return long_text(by, units);
}

std::string rung_text(Rung rung) {
  switch (rung) {
    case Rung::shifted: return "move the tree";
    case Rung::turned: return "turn it";
    case Rung::cut: return "cut";
    case Rung::corners: return "round off corners";
    case Rung::tipped_less: return "tip it less";
    case Rung::sunk: return "sink it";
    case Rung::raised: return "raise it to the soil";
    case Rung::shoulder: return "build a shoulder";
    case Rung::other_pot: return "take another pot";
    case Rung::staging: return "in stages";
  }
  return {};
}

std::string root_plan_text(const RootMassPlan& plan, const RootPlanAnswer& answer, const std::optional<PotGrowth>& growth,
                           UnitSystem units) {
  std::string text = plan.name.empty() ? "" : plan.name + '\n';
  text += "root mass " + litres_text(answer.block_volume, units) + '\n' + limits_text(answer, units);
  for (const WorkedPlan& worked : answer.plans) text += '\n' + plan_text(plan, worked, units);
  text += stops_text(answer, units);
  if (growth) text += growth_text(*growth, units);
  return text;
}

std::vector<Explanation> explain(const RootMassPlan& plan, const RootPlanAnswer& answer, std::size_t which) {
  std::vector<Explanation> list;
  std::vector<std::pair<std::string, std::string>> excesses;
  for (const Limitation& limitation : answer.limitations)
    excesses.emplace_back(direction_name(limitation.direction), cm_text(in_cm(limitation.excess)));
  list.push_back({"excess", GRITWRIGHT_TEXT("farthest any point of the posed root mass passes the allowed space in a direction, at that point's height"),
                  std::move(excesses), page});
  list.push_back({"corners", GRITWRIGHT_TEXT("share of the root mass still outside after the straight cuts"), {{GRITWRIGHT_TEXT("share"), percent_text(answer.corners_share)}}, page});
  const WorkedPlan& worked = answer.plans[which];
  list.push_back({"removed", GRITWRIGHT_TEXT("1 - kept/root mass"),
                  {{GRITWRIGHT_TEXT("kept"), ml_text(worked.kept)}, {GRITWRIGHT_TEXT("root mass"), ml_text(answer.block_volume)}}, page});
  list.push_back({"untouched", GRITWRIGHT_TEXT("kept points farther than the working depth from all that is removed, deeper than combed, connected to the trunk base"),
                  {{GRITWRIGHT_TEXT("share"), percent_text(worked.untouched_share)}}, page});
  if (!worked.fits) {
    list.push_back({"fill", GRITWRIGHT_TEXT("root mass - kept"), {{GRITWRIGHT_TEXT("root mass"), ml_text(answer.block_volume)}, {GRITWRIGHT_TEXT("kept"), ml_text(worked.kept)}}, page});
    return list;
  }
  const PotGeometry pot(pot_of(plan, worked));
  list.push_back({"soil_line", GRITWRIGHT_TEXT("fill line + mound at the trunk"), {{GRITWRIGHT_TEXT("fill line"), cm_text(in_cm(pot.filled_depth()))}}, page});
  list.push_back({"fill", GRITWRIGHT_TEXT("pot to the fill line + mound - layers - kept root mass under the soil - trunk and stones"),
                  {{GRITWRIGHT_TEXT("pot, mound, less layers"), ml_text(pot.main_mix_volume())},
                   {GRITWRIGHT_TEXT("kept under the soil"), ml_text(worked.kept_under_soil)},
                   {GRITWRIGHT_TEXT("trunk and stones"), ml_text(plan.displaced)}},
                  page});
  if (in_cm(worked.shoulder) > 0)
    list.push_back({"shoulder", GRITWRIGHT_TEXT("rise over the soil <= level run to the inner rim x tan 35 degrees"),
                    {{GRITWRIGHT_TEXT("rise"), cm_text(in_cm(worked.shoulder))}}, page});
  return list;
}

}  // namespace gritwright
