#pragma once
// A worked plan as it is drawn to scale, from the side and from above: plain outlines, so that screen and paper draw the same.

#include <vector>

#include "gritwright/models/root_plan.hpp"

namespace gritwright {

/// Across: the pot's right. Along: up in the side view, back in the top view; from the middle of the inside floor.
struct ViewPoint {
  Length across{};
  Length along{};
};
using ViewOutline = std::vector<ViewPoint>;

/// A run of the untouched part, 5 mm of `along` from `low` on.
struct ViewRun {
  Length from{};
  Length to{};
  Length low{};
};

/// Where a cut's name stands: the farthest point it takes off.
struct ViewCut {
  PlannedCut cut;
  ViewPoint at;
};

struct RootView {
  std::vector<ViewOutline> pot;   ///< side: the wall from rim to rim; top: the wall at rim, fill line, half of it and floor
  ViewOutline before;             ///< closed; what lies in it and not in `kept` is taken off
  ViewOutline kept;               ///< closed
  std::vector<ViewRun> untouched;
  std::vector<ViewRun> left_before;  ///< what was left untouched the time before; empty where that is not known
  std::vector<ViewOutline> layers;  ///< side: bottom layer, then top dressing, closed
  ViewOutline soil;                 ///< side: the soil surface from wall to wall
  std::vector<ViewOutline> shoulder;  ///< side: what sphagnum builds up on either side, closed
  std::vector<ViewCut> cuts;          ///< those that look along the view
  ViewPoint trunk_base;
};

struct RootViews {
  RootView side;
  RootView top;
};

/// A plan that goes in stages is drawn where the root mass came from and goes back to: upright, in its old pot where that is known, else
/// without a pot. `worked` is one of the plans of `plan`.
[[nodiscard]] RootViews root_views(const RootMassPlan& plan, const WorkedPlan& worked);

}  // namespace gritwright
