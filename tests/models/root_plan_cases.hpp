#pragma once
// Root masses and pots that the tests of the plan share.

#include "gritwright/models/root_plan.hpp"

namespace gritwright::root_plan_cases {

inline Section section(double length, double width) { return {length_cm(length), length_cm(width)}; }

/// Straight walls, fill line at the rim.
inline Container straight_pot(double length, double width, double depth, Shape shape = Shape::rectangular) {
  Container pot;
  pot.shape = shape;
  pot.rim = section(length, width);
  pot.depth = depth_cm(depth);
  return pot;
}

inline RootMassPlan box_in(double length, double width, double height, const Container& pot) {
  RootMassPlan plan;
  plan.group = SpeciesGroup::deciduous_developing;
  plan.untouched_least = 0;
  plan.removed_most = 1;
  plan.block = BlockBox{BlockForm::box, length_cm(length), length_cm(width), length_cm(height), {}};
  plan.pot = pot;
  plan.side_clearance = length_cm(1);
  plan.below_clearance = length_cm(1);
  return plan;
}

inline void permit(RootMassPlan& plan, Face face, double cm) { plan.permission[static_cast<std::size_t>(face)] = length_cm(cm); }

inline void permit_all(RootMassPlan& plan, double cm) {
  for (const Face face : faces) permit(plan, face, cm);
}

inline double cut_cm(const WorkedPlan& plan, Direction direction) {
  double total = 0;
  for (const PlannedCut& cut : plan.cuts)
    if (cut.direction == direction) total += in_cm(cut.depth);
  return total;
}

inline bool has(const WorkedPlan& plan, Rung rung) {
  for (const Rung taken : plan.rungs)
    if (taken == rung) return true;
  return false;
}

inline bool told(const Notes& notes, const std::string& code) {
  for (const Note& note : notes)
    if (note.code == code) return true;
  return false;
}

inline RootPlanAnswer answer_of(const RootMassPlan& plan) {
  auto answer = work_out(plan);
  if (!answer.ok()) throw std::logic_error(answer.problems().front().code);
  return *answer;
}

}  // namespace gritwright::root_plan_cases
