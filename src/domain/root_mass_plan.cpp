#include "gritwright/domain/root_mass_plan.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string>
#include <string_view>

namespace gritwright {

namespace {

constexpr std::array<std::string_view, 6> direction_names{"right", "left", "back", "front", "up", "down"};
constexpr std::array<std::string_view, 6> face_names{"right", "left", "back", "front", "top", "bottom"};

class PlanFindings {
 public:
  void add(const char* code, std::string pointer, Facts facts = {}) {
    problems_.push_back(problem_at(code, std::move(pointer), std::move(facts)));
  }
  bool positive(Length value, const std::string& pointer) {
    if (std::isfinite(value.value()) && value.value() > 0) return true;
    add("root-plan.length-not-positive", pointer, {{"length_cm", in_cm(value)}});
    return false;
  }
  bool not_negative(Length value, const std::string& pointer) {
    if (std::isfinite(value.value()) && value.value() >= 0) return true;
    add("root-plan.length-negative", pointer, {{"length_cm", in_cm(value)}});
    return false;
  }
  bool at_most(Length value, Length limit, const std::string& pointer) {
    if (value <= limit) return true;
    add("container.length-too-large", pointer, {{"length_cm", in_cm(value)}, {"limit_cm", in_cm(limit)}});
    return false;
  }
  void within(Length value, Length low, Length high, const std::string& pointer) {
    if (!(in_cm(value) >= in_cm(low) - 1e-9 && in_cm(value) <= in_cm(high) + 1e-9))
      add("root-plan.trunk-base-outside", pointer, {{"length_cm", in_cm(value)}, {"low_cm", in_cm(low)}, {"high_cm", in_cm(high)}});
  }
  void share(std::optional<double> value, const std::string& pointer) {
    if (value && !(*value >= 0 && *value <= 1)) add("root-plan.share-range", pointer, {{"share", *value}});
  }
  void angle(Angle value, double low, double high, const std::string& pointer) {
    const double degrees = in_deg(value);
    if (!(degrees >= low - 1e-9 && degrees <= high + 1e-9))
      add("root-plan.angle-range", pointer, {{"angle_deg", degrees}, {"low_deg", low}, {"high_deg", high}});
  }
  void nested(Problems problems, const std::string& prefix) { append(problems_, under(std::move(problems), prefix)); }
  [[nodiscard]] Problems take() && { return std::move(problems_); }

 private:
  Problems problems_;
};

struct Lengths {
  Length length{};
  Length width{};
  Length height{};
};

/// A table of areas knows no sides; it is taken as round.
Length round_width(Area area) { return length_cm(2 * std::sqrt(in_cm2(area) / std::numbers::pi)); }

/// The untouched part is known by cells of 5 mm: of a larger root mass there would be more than a machine holds.
const Length widest_block = length_cm(200);
const Length highest_block = length_cm(100);

bool can_be_planned(PlanFindings& findings, const Lengths& block, const std::array<std::string, 3>& pointers) {
  const bool not_too_long = findings.at_most(block.length, widest_block, pointers[0]);
  const bool not_too_wide = findings.at_most(block.width, widest_block, pointers[1]);
  return findings.at_most(block.height, highest_block, pointers[2]) && not_too_long && not_too_wide;
}

/// Of the box around the block; empty where its own lengths are at fault.
std::optional<Lengths> check_block(PlanFindings& findings, const RootBlock& block) {
  if (const auto* present = std::get_if<AsPresentPot>(&block)) {
    Problems problems = check(present->pot);
    const bool good = problems.empty();
    findings.nested(std::move(problems), "/block/pot");
    if (!good) return std::nullopt;
    Section rim = present->pot.rim;
    if (present->pot.shape == Shape::profile) rim.length = rim.width = round_width(present->pot.areas.back().area);
    const Lengths inside{rim.length, rim.width, (present->pot.depth - present->pot.freeboard).quantity()};
    return can_be_planned(findings, inside, {"/block/pot/rim", "/block/pot/rim", "/block/pot/depth_cm"}) ? std::optional(inside) : std::nullopt;
  }
  const auto& box = std::get<BlockBox>(block);
  bool good = findings.positive(box.length, "/block/length_cm");
  good = findings.positive(box.width, "/block/width_cm") && good;
  good = findings.positive(box.height, "/block/height_cm") && good;
  if (box.form == BlockForm::rounded && !(box.exponent && *box.exponent >= 1 && *box.exponent <= 100))
    findings.add("root-plan.exponent-range", "/block/exponent", {{"exponent", box.exponent.value_or(0)}});
  if (box.form != BlockForm::rounded && box.exponent) findings.add("root-plan.exponent-without-rounding", "/block/exponent");
  const Lengths outside{box.length, box.width, box.height};
  if (!good || !can_be_planned(findings, outside, {"/block/length_cm", "/block/width_cm", "/block/height_cm"})) return std::nullopt;
  return outside;
}

void check_clearances(PlanFindings& findings, const RootMassPlan& plan) {
  const double narrow_cm = plan.pot.shape == Shape::profile
                               ? in_cm(round_width(plan.pot.areas.back().area))
                               : in_cm(std::min(plan.pot.rim.length, plan.pot.rim.width));
  if (plan.side_clearance && findings.not_negative(*plan.side_clearance, "/clearance/side_cm") &&
      in_cm(*plan.side_clearance) >= narrow_cm / 2)
    findings.add("root-plan.clearance-too-large", "/clearance/side_cm",
                 {{"clearance_cm", in_cm(*plan.side_clearance)}, {"limit_cm", narrow_cm / 2}});
  const double layer_cm = plan.pot.bottom_layer ? in_cm(plan.pot.bottom_layer->thickness) : 0;
  const double room_cm = in_cm(plan.pot.depth - plan.pot.freeboard) - layer_cm;
  if (plan.below_clearance && findings.not_negative(*plan.below_clearance, "/clearance/below_cm") &&
      in_cm(*plan.below_clearance) >= room_cm)
    findings.add("root-plan.clearance-too-large", "/clearance/below_cm",
                 {{"clearance_cm", in_cm(*plan.below_clearance)}, {"limit_cm", room_cm}});
}

void check_faces(PlanFindings& findings, const RootMassPlan& plan, const std::optional<Lengths>& block) {
  for (const Face face : faces) {
    if (const auto& depth = plan.permission[static_cast<std::size_t>(face)])
      findings.not_negative(*depth, "/permission/" + face_name(face) + "_cm");
  }
  for (std::size_t i = 0; i < plan.combed.size(); ++i) {
    const CombedFace& combed = plan.combed[i];
    const std::string row = "/combed/" + std::to_string(i);
    if (std::any_of(plan.combed.begin(), plan.combed.begin() + static_cast<std::ptrdiff_t>(i),
                    [&](const CombedFace& earlier) { return earlier.face == combed.face; }))
      findings.add("root-plan.face-twice", row + "/face", {{"face", face_name(combed.face)}});
    if (!findings.not_negative(combed.depth, row + "/depth_cm") || !block) continue;
    const bool lateral = combed.face == Face::right || combed.face == Face::left;
    const bool deep = combed.face == Face::back || combed.face == Face::front;
    const double half_cm = in_cm(lateral ? block->length : deep ? block->width : block->height) / 2;
    if (in_cm(combed.depth) > half_cm + 1e-9)
      findings.add("root-plan.combed-past-middle", row + "/depth_cm", {{"depth_cm", in_cm(combed.depth)}, {"limit_cm", half_cm}});
  }
}

void check_directions(PlanFindings& findings, const RootMassPlan& plan) {
  for (std::size_t i = 0; i < plan.cut_order.size(); ++i) {
    const auto before = plan.cut_order.begin() + static_cast<std::ptrdiff_t>(i);
    if (std::find(plan.cut_order.begin(), before, plan.cut_order[i]) != before)
      findings.add("root-plan.direction-twice", "/cut_order/" + std::to_string(i), {{"direction", direction_name(plan.cut_order[i])}});
  }
  for (std::size_t i = 0; i < plan.stopped.size(); ++i) {
    const std::string row = "/stopped/" + std::to_string(i);
    findings.not_negative(plan.stopped[i].depth, row + "/depth_cm");
    if (std::any_of(plan.stopped.begin(), plan.stopped.begin() + static_cast<std::ptrdiff_t>(i),
                    [&](const StoppedCut& earlier) { return earlier.direction == plan.stopped[i].direction; }))
      findings.add("root-plan.direction-twice", row + "/direction", {{"direction", direction_name(plan.stopped[i].direction)}});
  }
}

void check_pose(PlanFindings& findings, const RootMassPlan& plan) {
  findings.angle(plan.pose.turn, -360, 360, "/pose/turn_deg");
  findings.angle(plan.pose.tip, 0, 90, "/pose/tip_deg");
  findings.angle(plan.pose.tip_toward, -360, 360, "/pose/tip_toward_deg");
  findings.angle(plan.turn_most, 0, 180, "/turn_most_deg");
  if (plan.tip_least) {
    findings.angle(*plan.tip_least, 0, 90, "/tip_least_deg");
    if (*plan.tip_least > plan.pose.tip)
      findings.add("root-plan.tip-least-above-tip", "/tip_least_deg",
                   {{"angle_deg", in_deg(*plan.tip_least)}, {"tip_deg", in_deg(plan.pose.tip)}});
  }
  findings.not_negative(plan.trunk_height_least.quantity(), "/trunk_height_least_cm");
  // A table of areas has no sides to go by.
  const bool sided = plan.pot.shape != Shape::profile;
  if (sided && plan.pose.right) findings.within(*plan.pose.right, -0.5 * plan.pot.rim.length, 0.5 * plan.pot.rim.length, "/pose/right_cm");
  if (sided && plan.pose.back) findings.within(*plan.pose.back, -0.5 * plan.pot.rim.width, 0.5 * plan.pot.rim.width, "/pose/back_cm");
  if (plan.pose.trunk_base) findings.not_negative(plan.pose.trunk_base->quantity(), "/pose/trunk_base_cm");
}

/// The trunk base lies on the root mass, or a little over it.
void check_trunk_base(PlanFindings& findings, const RootMassPlan& plan, const Lengths& block) {
  if (!plan.trunk_base) return;
  findings.within(plan.trunk_base->right, -0.5 * block.length, 0.5 * block.length, "/trunk_base/right_cm");
  findings.within(plan.trunk_base->back, -0.5 * block.width, 0.5 * block.width, "/trunk_base/back_cm");
  findings.within(plan.trunk_base->up, Length{}, 2.0 * block.height, "/trunk_base/up_cm");
}

}  // namespace

std::string direction_name(Direction direction) { return std::string(direction_names[static_cast<std::size_t>(direction)]); }
std::string face_name(Face face) { return std::string(face_names[static_cast<std::size_t>(face)]); }

std::optional<Direction> direction_named(std::string_view name) {
  const auto found = std::ranges::find(direction_names, name);
  if (found == direction_names.end()) return std::nullopt;
  return static_cast<Direction>(found - direction_names.begin());
}

std::optional<Face> face_named(std::string_view name) {
  const auto found = std::ranges::find(face_names, name);
  if (found == face_names.end()) return std::nullopt;
  return static_cast<Face>(found - face_names.begin());
}

Problems check(const RootMassPlan& plan) {
  PlanFindings findings;
  const std::optional<Lengths> block = check_block(findings, plan.block);
  Problems pot = check(plan.pot);
  const bool good_pot = pot.empty();
  findings.nested(std::move(pot), "/pot");
  for (std::size_t i = 0; i < plan.free_pots.size(); ++i)
    findings.nested(check(plan.free_pots[i]), "/free_pots/" + std::to_string(i));
  if (good_pot) check_clearances(findings, plan);
  if (block) check_trunk_base(findings, plan, *block);
  check_pose(findings, plan);
  check_faces(findings, plan, block);
  check_directions(findings, plan);
  if (plan.working_depth) findings.positive(*plan.working_depth, "/working_depth_cm");
  if (!(in_ml(plan.displaced) >= 0 && std::isfinite(in_ml(plan.displaced))))
    findings.add("root-plan.volume-negative", "/displaced_ml", {{"volume_ml", in_ml(plan.displaced)}});
  findings.share(plan.untouched_least, "/limits/untouched_least");
  findings.share(plan.removed_most, "/limits/removed_most");
  if (plan.interval_years && !(*plan.interval_years >= 1 && *plan.interval_years <= 100))
    findings.add("root-plan.interval-range", "/interval_years", {{"years", static_cast<double>(*plan.interval_years)}});
  if (plan.untouched_last_time) findings.nested(check(*plan.untouched_last_time, "/untouched_last_time"), "");
  if (plan.bare_root && group_defaults(plan.group).bare_root == BareRoot::never)
    findings.add("root-plan.conifer-bare-root", "/bare_root");
  return std::move(findings).take();
}

bool lacks_lengths_alone(const RootMassPlan& plan) {
  const auto* box = std::get_if<BlockBox>(&plan.block);
  if (box == nullptr) return false;
  const Problems problems = check(plan);
  const auto open = [&](const char* pointer, Length side) {
    return side == Length{} ? std::ranges::count_if(problems, [&](const Problem& problem) { return problem.where.pointer == pointer; }) : 0;
  };
  const auto lacking = open("/block/length_cm", box->length) + open("/block/width_cm", box->width) + open("/block/height_cm", box->height);
  return lacking > 0 && lacking == std::ssize(problems);
}

}  // namespace gritwright
