#pragma once
// What stayed untouched of a root mass at a repotting, kept so that the other half is known years later.

#include <string>
#include <vector>

#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// A box along the axes of a tree frame.
struct TreeBox {
  Length right_from{};
  Length right_to{};
  Length back_from{};
  Length back_to{};
  Length up_from{};
  Length up_to{};
  friend bool operator==(const TreeBox&, const TreeBox&) = default;
};

/// Boxes that together are the part, in the tree frame of the plan that was carried out; where the trunk base lay in that frame; and how
/// the tree was set, which leads from that frame to the pot's and so to the next plan's: its front is the old front then.
struct UntouchedPart {
  Length base_right{};
  Length base_back{};
  Length base_up{};
  Angle turn{};
  Angle tip{};  ///< 0..90 degrees
  Angle tip_toward{};
  std::vector<TreeBox> boxes;
  friend bool operator==(const UntouchedPart&, const UntouchedPart&) = default;
};

/// Boxes turned inside out or lengths that are none, angles out of range. Codes untouched-part.*, below `pointer`.
[[nodiscard]] Problems check(const UntouchedPart& part, const std::string& pointer);

}  // namespace gritwright
