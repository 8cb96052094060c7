#include "gritwright/domain/untouched_part.hpp"

#include <cmath>

namespace gritwright {

Problems check(const UntouchedPart& part, const std::string& pointer) {
  Problems problems;
  for (std::size_t i = 0; i < part.boxes.size(); ++i) {
    const TreeBox& box = part.boxes[i];
    const bool sound = box.right_from < box.right_to && box.back_from < box.back_to && box.up_from < box.up_to && std::isfinite(in_cm(box.right_to - box.right_from)) &&
                       std::isfinite(in_cm(box.back_to - box.back_from)) && std::isfinite(in_cm(box.up_to - box.up_from));
    if (!sound) problems.push_back(problem_at("untouched-part.box-inside-out", pointer + "/boxes_cm", {{"box", static_cast<double>(i + 1)}}));
  }
  const double tip = in_deg(part.tip);
  if (!(tip >= 0 && tip <= 90)) problems.push_back(problem_at("untouched-part.tip-range", pointer + "/tip_deg", {{"angle_deg", tip}}));
  return problems;
}

}  // namespace gritwright
