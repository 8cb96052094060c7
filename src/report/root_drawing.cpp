#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "gritwright/models/root_views.hpp"
#include "gritwright/report/root_plan_sheet.hpp"
#include "message_templates.hpp"
#include "words.hpp"

namespace gritwright {

namespace {

constexpr double picture_width_mm = 84;

class Canvas {
 public:
  Canvas(PrintDrawing& drawing, const std::vector<ViewOutline>& all) : drawing_(drawing) {
    for (const ViewOutline& outline : all)
      for (const ViewPoint& each : outline) {
        left_cm_ = std::min(left_cm_, in_cm(each.across));
        right_cm_ = std::max(right_cm_, in_cm(each.across));
        low_cm_ = std::min(low_cm_, in_cm(each.along));
        high_cm_ = std::max(high_cm_, in_cm(each.along));
      }
    constexpr double room_for_words_mm = 22;
    mm_per_cm_ = std::min(10.0, (picture_width_mm - room_for_words_mm) / std::max(1.0, right_cm_ - left_cm_));
    drawing_.width_mm = (right_cm_ - left_cm_) * mm_per_cm_ + room_for_words_mm + 2;
    drawing_.height_mm = (high_cm_ - low_cm_) * mm_per_cm_ + 4;
  }

  void line(const ViewOutline& outline, Ink ink, bool closed) {
    DrawnLine drawn{{}, ink};
    for (const ViewPoint& each : outline) drawn.points.push_back(at(each));
    if (closed && !outline.empty()) drawn.points.push_back(at(outline.front()));
    if (!drawn.points.empty()) drawing_.lines.push_back(std::move(drawn));
  }

  void name_at(const ViewPoint& point, const std::string& name) {
    const DrawnPoint end = at({length_cm(right_cm_), point.along});
    drawing_.texts.push_back({{end.x_mm + 1, end.y_mm + 1}, name});
  }

  void cross(const ViewPoint& point) {
    const Length arm = length_cm(0.4);
    line({{point.across - arm, point.along - arm}, {point.across + arm, point.along + arm}}, Ink::outline, false);
    line({{point.across - arm, point.along + arm}, {point.across + arm, point.along - arm}}, Ink::outline, false);
  }

 private:
  [[nodiscard]] DrawnPoint at(const ViewPoint& point) const {
    return {1 + (in_cm(point.across) - left_cm_) * mm_per_cm_, 2 + (high_cm_ - in_cm(point.along)) * mm_per_cm_};
  }

  PrintDrawing& drawing_;
  double left_cm_ = 1e9;
  double right_cm_ = -1e9;
  double low_cm_ = 1e9;
  double high_cm_ = -1e9;
  double mm_per_cm_ = 1;
};

}  // namespace

PrintDrawing root_drawing(const RootMassPlan& plan, const WorkedPlan& worked, RootSide side, const Translate& translate) {
  const Words words{translate, UnitSystem::metric};
  const RootViews views = root_views(plan, worked);
  const bool from_front = side == RootSide::front;
  const RootView& view = from_front ? views.side : views.top;
  PrintDrawing drawing;
  if (worked.fits) {
    drawing.title = words(from_front ? GRITWRIGHT_TEXT("Plan {plan}, from the front") : GRITWRIGHT_TEXT("Plan {plan}, from above"), {{"plan", worked.name}});
  } else {
    drawing.title = words(from_front ? GRITWRIGHT_TEXT("Plan {plan}, this year, in its old pot, from the front") : GRITWRIGHT_TEXT("Plan {plan}, this year, in its old pot, from above"), {{"plan", worked.name}});
  }
  std::vector<ViewOutline> all = view.pot;
  all.push_back(view.before);
  Canvas canvas(drawing, all);
  canvas.line(view.before, Ink::hatched, true);
  canvas.line(view.kept, Ink::grey, true);
  canvas.line(view.before, Ink::dashed, true);
  if (!view.pot.empty()) canvas.line(view.pot.front(), Ink::outline, !from_front);
  if (!view.soil.empty()) {
    canvas.line(view.soil, Ink::dashed, false);
    canvas.name_at(view.soil.back(), words(GRITWRIGHT_TEXT("soil line")));
  }
  canvas.cross(view.trunk_base);
  return drawing;
}

}  // namespace gritwright
