#include "root_cautions.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>
#include <vector>

#include "gritwright/models/pot_notes.hpp"

namespace gritwright {

namespace {

void warn(Notes& notes, const char* code, Facts facts = {}, std::string where = {}) {
  notes.push_back({code, Level::warning, std::move(where), std::move(facts)});
}
void tell(Notes& notes, const char* code, Facts facts = {}, std::string where = {}) {
  notes.push_back({code, Level::note, std::move(where), std::move(facts)});
}

/// Old faces that are cut, shaved at their corners or combed.
std::set<Face> worked_faces(const WorkedPlan& worked) {
  std::set<Face> touched;
  for (const PlannedCut& cut : worked.cuts) touched.insert(cut.face);
  for (const ShavedCorners& corners : worked.shaved) touched.insert(corners.face);
  for (const CombedFace& combed : worked.combed)
    if (combed.depth.value() > 0) touched.insert(combed.face);
  return touched;
}

bool is_side(Face face) { return face != Face::top && face != Face::bottom; }

void group_cautions(Notes& notes, const RootMassPlan& plan, const WorkedPlan& worked) {
  const std::set<Face> touched = worked_faces(worked);
  const auto sides = std::ranges::count_if(touched, is_side);
  switch (plan.group) {
    case SpeciesGroup::conifer:
      if (sides == 4) warn(notes, "root-plan.conifer-all-sides");
      break;
    case SpeciesGroup::acid_lover: {
      const int kinds = (sides > 0 ? 1 : 0) + (touched.contains(Face::top) ? 1 : 0) + (touched.contains(Face::bottom) ? 1 : 0);
      if (kinds > 1) warn(notes, "root-plan.acid-lover-one-of-three");
      break;
    }
    case SpeciesGroup::sick: warn(notes, "root-plan.sick-no-healthy-root"); break;
    case SpeciesGroup::collected: warn(notes, "root-plan.collected-leave"); break;
    case SpeciesGroup::imported: warn(notes, "root-plan.imported-leave"); break;
    default: break;
  }
}

void bare_root_cautions(Notes& notes, const RootMassPlan& plan) {
  if (!plan.bare_root) return;
  switch (group_defaults(plan.group).bare_root) {
    case BareRoot::refused: warn(notes, "root-plan.bare-root-keep-core"); break;
    case BareRoot::caution: warn(notes, "root-plan.bare-root-caution"); break;
    case BareRoot::more_care: warn(notes, "root-plan.bare-root-edges-and-base"); break;
    case BareRoot::when_growing: tell(notes, "root-plan.bare-root-when-growing"); break;
    case BareRoot::never:
    case BareRoot::may_be: break;
  }
  const bool deciduous = plan.group == SpeciesGroup::deciduous_conifer || plan.group == SpeciesGroup::deciduous_developing ||
                         plan.group == SpeciesGroup::deciduous_refined;
  if (deciduous && plan.bare_rooted_last_time) warn(notes, "root-plan.bare-root-again");
  tell(notes, "root-plan.bare-root-volume");
}

/// The half-and-half method: what was left the time before comes now, what was worked then rests.
void other_half_cautions(Notes& notes, const RootMassPlan& plan, const WorkedPlan& worked) {
  if (!worked.other_half || group_defaults(plan.group).bare_root == BareRoot::may_be) return;
  const OtherHalf& half = *worked.other_half;
  const std::string where = "old " + face_name(half.toward);
  const double worked_before = 1 - half.left_before;
  if (worked_before > 0 && half.worked_again > worked_before / 2)
    warn(notes, "root-plan.worked-again", {{"percent", half.worked_again / worked_before * 100}}, where);
  if (half.left_before > 0 && half.left_again > half.left_before / 2)
    tell(notes, "root-plan.left-again", {{"percent", half.left_again / half.left_before * 100}}, where);
}

/// One for each face, with the deepest that comes off it.
void unknown_face_notes(Notes& notes, const RootMassPlan& plan, const WorkedPlan& worked) {
  std::vector<std::pair<Face, Length>> faces_cut;
  for (const PlannedCut& cut : worked.cuts) faces_cut.emplace_back(cut.face, cut.depth);
  for (const ShavedCorners& corners : worked.shaved) {
    const auto same = std::ranges::find(faces_cut, corners.face, &std::pair<Face, Length>::first);
    if (same == faces_cut.end()) faces_cut.emplace_back(corners.face, corners.depth);
    else same->second = std::max(same->second, corners.depth);
  }
  for (const auto& [face, depth] : faces_cut)
    if (!plan.permission[static_cast<std::size_t>(face)])
      tell(notes, "root-plan.face-unknown", {{"depth_cm", in_cm(depth)}}, "old " + face_name(face));
}

/// The old top goes no deeper than the first radial roots: below them the trunk would stand on nothing. Source: common practice,
/// docs/science/root-mass-plan.md.
void top_cautions(Notes& notes, const WorkedPlan& worked, const PlanGround& ground) {
  constexpr double raked_cm = 1 + 1e-6;  // what lies over the roots
  for (const PlannedCut& cut : worked.cuts) {
    if (cut.face != Face::top) continue;
    const double bared_cm = in_cm(cut.depth) * std::cos(worked.tip.value()) - (ground.block.height_cm() - ground.trunk_base.z);
    if (bared_cm > raked_cm) warn(notes, "root-plan.trunk-base-bared", {{"depth_cm", bared_cm}}, "old " + face_name(cut.face));
  }
}

}  // namespace

Notes cautions_for(const RootMassPlan& plan, const WorkedPlan& worked, const AllowedSpace& space, const PlanGround& ground) {
  Notes notes;
  group_cautions(notes, plan, worked);
  bare_root_cautions(notes, plan);
  other_half_cautions(notes, plan, worked);
  if (!plan.bare_root) {
    if (!keeps_most(worked.removed_share, never_advised_removed))
      warn(notes, "root-plan.removed-never-advised", {{"percent", worked.removed_share * 100}});
    if (!keeps_most(worked.removed_share, ground.removed_most))
      warn(notes, "root-plan.removed-above-group", {{"percent", worked.removed_share * 100}, {"limit_percent", *ground.removed_most * 100}});
    if (!keeps_least(worked.untouched_share, ground.untouched_least))
      warn(notes, "root-plan.untouched-below-group",
           {{"percent", worked.untouched_share * 100}, {"limit_percent", *ground.untouched_least * 100}});
  }
  unknown_face_notes(notes, plan, worked);
  top_cautions(notes, worked, ground);
  if (std::ranges::find(worked.rungs, Rung::raised) != worked.rungs.end()) tell(notes, "root-plan.trunk-raised");
  if (in_cm(worked.shoulder) > 0) tell(notes, "root-plan.shoulder", {{"rise_cm", in_cm(worked.shoulder)}});
  if (worked.other_pot) tell(notes, "root-plan.other-pot", {{"pot", *worked.other_pot}});
  if (worked.fits && !(in_ml(worked.fill) > 0)) warn(notes, "root-plan.no-mix-needed");
  if (!worked.fits) {
    if (worked.rest_after_years)
      warn(notes, "root-plan.staging", {{"years", static_cast<double>(*worked.rest_after_years)}});
    else
      warn(notes, "root-plan.staging-later");
  }
  if (space.outlines().turned_in() && worked.fits) warn(notes, "root-plan.turned-in");
  return notes;
}

Notes notes_for(const RootMassPlan& plan, const AllowedSpace& space) {
  Notes notes;
  if (in_deg(plan.pose.tip) > 60 + 1e-9) tell(notes, "root-plan.tip-steep", {{"angle_deg", in_deg(plan.pose.tip)}});
  append(notes, notes_on_water_fill(space.geometry()));
  if (space.geometry().container().shape == Shape::profile) tell(notes, "root-plan.table-is-round");
  return notes;
}

}  // namespace gritwright
