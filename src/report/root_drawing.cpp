#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <vector>

#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/report/root_plan_sheet.hpp"
#include "message_templates.hpp"
#include "words.hpp"

namespace gritwright {

namespace {

constexpr double picture_width_mm = 84;
constexpr int ring_points = 48;

/// A point in centimetres.
struct Point {
  double x = 0;
  double y = 0;
  double z = 0;
};
struct Flat {
  double across = 0;
  double up = 0;
};
using FlatOutline = std::vector<Flat>;

/// Andrew's monotone chain.
FlatOutline hull(FlatOutline points) {
  std::ranges::sort(points, [](const Flat& a, const Flat& b) { return a.across < b.across || (a.across == b.across && a.up < b.up); });
  const auto turn = [](const Flat& o, const Flat& a, const Flat& b) {
    return (a.across - o.across) * (b.up - o.up) - (a.up - o.up) * (b.across - o.across);
  };
  const auto half = [&](auto from, auto to) {
    FlatOutline side;
    for (auto each = from; each != to; ++each) {
      while (side.size() > 1 && turn(side[side.size() - 2], side.back(), *each) <= 0) side.pop_back();
      side.push_back(*each);
    }
    return side;
  };
  FlatOutline around = half(points.begin(), points.end());
  const FlatOutline upper = half(points.rbegin(), points.rend());
  if (!upper.empty()) around.insert(around.end(), upper.begin() + 1, upper.end());
  return around;
}

/// The part of a convex outline where a·across + b·up <= c.
FlatOutline clipped(const FlatOutline& outline, double a, double b, double c) {
  FlatOutline kept;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Flat& from = outline[i];
    const Flat& to = outline[(i + 1) % outline.size()];
    const double here = a * from.across + b * from.up - c;
    const double there = a * to.across + b * to.up - c;
    if (here <= 0) kept.push_back(from);
    if ((here < 0 && there > 0) || (here > 0 && there < 0)) {
      const double share = here / (here - there);
      kept.push_back({from.across + share * (to.across - from.across), from.up + share * (to.up - from.up)});
    }
  }
  return kept;
}

/// A ring of the block at a height, by its full lengths.
std::vector<Point> ring(double length, double width, double z, double exponent, bool corners) {
  if (corners) return {{-length / 2, -width / 2, z}, {length / 2, -width / 2, z}, {length / 2, width / 2, z}, {-length / 2, width / 2, z}};
  std::vector<Point> points;
  for (int i = 0; i < ring_points; ++i) {
    const double angle = 2 * std::numbers::pi * i / ring_points;
    const auto reach = [&](double value) { return std::copysign(std::pow(std::abs(value), 2 / exponent), value); };
    points.push_back({length / 2 * reach(std::cos(angle)), width / 2 * reach(std::sin(angle)), z});
  }
  return points;
}

void add(std::vector<Point>& to, const std::vector<Point>& more) { to.insert(to.end(), more.begin(), more.end()); }

struct BlockPoints {
  std::vector<Point> points;  ///< tree frame
  double height_cm = 0;
};

BlockPoints block_points(const RootBlock& block) {
  BlockPoints made;
  if (const auto* box = std::get_if<BlockBox>(&block)) {
    made.height_cm = in_cm(box->height);
    const double length = in_cm(box->length), width = in_cm(box->width);
    if (box->form != BlockForm::rounded) {
      const bool corners = box->form == BlockForm::box;
      add(made.points, ring(length, width, 0, 2, corners));
      add(made.points, ring(length, width, made.height_cm, 2, corners));
      return made;
    }
    const double exponent = box->exponent.value_or(3);
    constexpr int levels = 16;
    for (int k = 0; k <= levels; ++k) {
      const double height = -1 + 2.0 * k / levels;
      const double share = std::pow(std::max(0.0, 1 - std::pow(std::abs(height), exponent)), 1 / exponent);
      add(made.points, ring(length * share, width * share, made.height_cm * (height + 1) / 2, exponent, false));
    }
    return made;
  }
  const PotGeometry pot(std::get<AsPresentPot>(block).pot);
  made.height_cm = in_cm(pot.filled_depth());
  const Shape shape = pot.container().shape;
  constexpr int levels = 10;
  for (int k = 0; k <= levels; ++k) {
    const Depth height = pot.filled_depth() * (static_cast<double>(k) / levels);
    const Section section = pot.section_at(height);
    add(made.points, ring(in_cm(section.length), in_cm(section.width), in_cm(height), pot.container().exponent.value_or(2), shape == Shape::rectangular));
  }
  return made;
}

/// From the tree frame into the pot: turned about the vertical, tipped toward the bearing, the trunk base to its place.
std::vector<Point> posed(const RootMassPlan& plan, const WorkedPlan& worked) {
  const BlockPoints block = block_points(plan.block);
  Point base{0, 0, block.height_cm};
  if (plan.trunk_base) base = {in_cm(plan.trunk_base->right), in_cm(plan.trunk_base->back), in_cm(plan.trunk_base->up)};
  const double turn = worked.turn.value(), tip = worked.tip.value(), toward = worked.tip_toward.value();
  const Point axis{-std::sin(toward), std::cos(toward), 0};
  std::vector<Point> points;
  for (const Point& each : block.points) {
    const Point from{each.x - base.x, each.y - base.y, each.z - base.z};
    const Point turned{from.x * std::cos(turn) - from.y * std::sin(turn), from.x * std::sin(turn) + from.y * std::cos(turn), from.z};
    const double along = axis.x * turned.x + axis.y * turned.y;
    const Point cross{axis.y * turned.z, -axis.x * turned.z, axis.x * turned.y - axis.y * turned.x};
    const auto tipped = [&](double value, double crossed, double of_axis) {
      return value * std::cos(tip) + crossed * std::sin(tip) + of_axis * along * (1 - std::cos(tip));
    };
    points.push_back({tipped(turned.x, cross.x, axis.x) + in_cm(worked.right), tipped(turned.y, cross.y, axis.y) + in_cm(worked.back),
                      tipped(turned.z, cross.z, 0) + in_cm(worked.trunk_base)});
  }
  return points;
}

FlatOutline seen(const std::vector<Point>& points, RootSide view) {
  FlatOutline flat;
  for (const Point& each : points) flat.push_back({each.x, view == RootSide::front ? each.z : each.y});
  return hull(std::move(flat));
}

/// Unit vector of a direction in the view; both 0 where it points at the reader.
Flat direction_in(Direction direction, RootSide view) {
  switch (direction) {
    case Direction::right: return {1, 0};
    case Direction::left: return {-1, 0};
    case Direction::up: return view == RootSide::front ? Flat{0, 1} : Flat{};
    case Direction::down: return view == RootSide::front ? Flat{0, -1} : Flat{};
    case Direction::back: return view == RootSide::top ? Flat{0, 1} : Flat{};
    case Direction::front: return view == RootSide::top ? Flat{0, -1} : Flat{};
  }
  return {};
}

/// The pot's inside: its wall seen from the front, or the rim from above.
FlatOutline pot_outline(const PotGeometry& pot, RootSide view) {
  const double rim_cm = in_cm(pot.container().depth);
  if (view == RootSide::top) {
    const Section rim = pot.section_at(depth_cm(rim_cm));
    FlatOutline outline;
    for (const Point& each : ring(in_cm(rim.length), in_cm(rim.width), 0, pot.container().exponent.value_or(2), pot.container().shape == Shape::rectangular))
      outline.push_back({each.x, each.y});
    return outline;
  }
  FlatOutline left, right;
  constexpr int levels = 20;
  for (int k = 0; k <= levels; ++k) {
    const double height_cm = rim_cm * k / levels;
    const double half_cm = in_cm(pot.section_at(depth_cm(height_cm)).length) / 2;
    right.push_back({half_cm, height_cm});
    left.push_back({-half_cm, height_cm});
  }
  std::ranges::reverse(left);
  left.insert(left.end(), right.begin(), right.end());
  return left;  // rim, down the left wall, across the floor, up the right wall
}

FlatOutline kept_outline(const RootMassPlan& plan, const WorkedPlan& worked, const PotGeometry& pot, const FlatOutline& before, RootSide view) {
  FlatOutline kept = before;
  for (const PlannedCut& cut : worked.cuts) {
    const Flat along = direction_in(cut.direction, view);
    if (along.across == 0 && along.up == 0) continue;
    double farthest = -1e9;
    for (const Flat& each : before) farthest = std::max(farthest, along.across * each.across + along.up * each.up);
    if (plan.cut_style == CutStyle::straight || cut.direction == Direction::up || cut.direction == Direction::down)
      kept = clipped(kept, along.across, along.up, farthest - in_cm(cut.depth));
  }
  if (plan.cut_style == CutStyle::straight || !worked.fits || view == RootSide::top) return kept;
  // Along the wall: the chords of the wall bound it wherever it bulges outward or is straight.
  const double rim_cm = in_cm(pot.container().depth);
  const double floor_half = in_cm(pot.section_at(Depth{}).length) / 2, rim_half = in_cm(pot.section_at(depth_cm(rim_cm)).length) / 2;
  const double lean = (rim_half - floor_half) / rim_cm;
  kept = clipped(kept, 1, -lean, floor_half);
  return clipped(kept, -1, -lean, floor_half);
}

class Canvas {
 public:
  Canvas(PrintDrawing& drawing, const std::vector<FlatOutline>& all) : drawing_(drawing) {
    for (const FlatOutline& outline : all)
      for (const Flat& each : outline) {
        low_.across = std::min(low_.across, each.across);
        low_.up = std::min(low_.up, each.up);
        high_.across = std::max(high_.across, each.across);
        high_.up = std::max(high_.up, each.up);
      }
    constexpr double room_for_words_mm = 22;
    mm_per_cm_ = std::min(10.0, (picture_width_mm - room_for_words_mm) / std::max(1.0, high_.across - low_.across));
    drawing_.width_mm = (high_.across - low_.across) * mm_per_cm_ + room_for_words_mm + 2;
    drawing_.height_mm = (high_.up - low_.up) * mm_per_cm_ + 4;
  }

  DrawnPoint at(const Flat& point) const { return {1 + (point.across - low_.across) * mm_per_cm_, 2 + (high_.up - point.up) * mm_per_cm_}; }

  void line(const FlatOutline& outline, Ink ink, bool closed) {
    DrawnLine drawn{{}, ink};
    for (const Flat& each : outline) drawn.points.push_back(at(each));
    if (closed && !outline.empty()) drawn.points.push_back(at(outline.front()));
    if (!drawn.points.empty()) drawing_.lines.push_back(std::move(drawn));
  }

  void level(double height_cm, const std::string& name) {
    line({{low_.across, height_cm}, {high_.across, height_cm}}, Ink::dashed, false);
    DrawnPoint end = at({high_.across, height_cm});
    drawing_.texts.push_back({{end.x_mm + 1, end.y_mm + 1}, name});
  }

  void cross(const Flat& point) {
    constexpr double arm_cm = 0.4;
    line({{point.across - arm_cm, point.up - arm_cm}, {point.across + arm_cm, point.up + arm_cm}}, Ink::outline, false);
    line({{point.across - arm_cm, point.up + arm_cm}, {point.across + arm_cm, point.up - arm_cm}}, Ink::outline, false);
  }

 private:
  PrintDrawing& drawing_;
  Flat low_{1e9, 1e9};
  Flat high_{-1e9, -1e9};
  double mm_per_cm_ = 1;
};

}  // namespace

PrintDrawing root_drawing(const RootMassPlan& plan, const WorkedPlan& worked, RootSide view, const Translate& translate) {
  const Words words{translate, UnitSystem::metric};
  const bool another = worked.other_pot_index && *worked.other_pot_index < plan.free_pots.size();
  const PotGeometry pot(another ? plan.free_pots[*worked.other_pot_index] : plan.pot);
  const FlatOutline before = seen(posed(plan, worked), view);
  const FlatOutline wall = pot_outline(pot, view);
  const FlatOutline after = kept_outline(plan, worked, pot, before, view);
  PrintDrawing drawing;
  drawing.title = words(view == RootSide::front ? GRITWRIGHT_TEXT("Plan {plan}, from the front") : GRITWRIGHT_TEXT("Plan {plan}, from above"), {{"plan", worked.name}});
  Canvas canvas(drawing, {before, wall});
  canvas.line(before, Ink::hatched, true);
  canvas.line(after, Ink::grey, true);
  canvas.line(before, Ink::dashed, true);
  canvas.line(wall, Ink::outline, view == RootSide::top);
  if (view == RootSide::front) canvas.level(in_cm(worked.soil_line), words(GRITWRIGHT_TEXT("soil line")));
  canvas.cross({in_cm(worked.right), view == RootSide::front ? in_cm(worked.trunk_base) : in_cm(worked.back)});
  return drawing;
}

}  // namespace gritwright
