#include "gritwright/domain/container.hpp"

#include <algorithm>
#include <cmath>

namespace gritwright {

namespace {

// Beyond these a number is a slip of the pen, and squares and cubes of it would leave what a double can hold.
const Length smallest_length = length_cm(0.01);
const Length largest_length = length_cm(1'000);
constexpr double largest_exponent = 100;

/// Collects what is wrong, with the facts in the unit the input uses.
class ContainerFindings {
 public:
  void add(const char* code, std::string pointer, Facts facts = {}) {
    problems_.push_back(problem_at(code, std::move(pointer), std::move(facts)));
  }

  /// True where `value` is a length a container can have: a tenth of a millimetre to ten metres.
  bool positive(Length value, const std::string& pointer) {
    if (!(std::isfinite(value.value()) && value.value() > 0)) {
      add("container.length-not-positive", pointer, {{"length_cm", in_cm(value)}});
      return false;
    }
    if (value < smallest_length) {
      add("container.length-too-small", pointer, {{"length_cm", in_cm(value)}, {"limit_cm", in_cm(smallest_length)}});
      return false;
    }
    return not_too_large(value, pointer);
  }

  bool not_negative(Length value, const std::string& pointer) {
    if (std::isfinite(value.value()) && value.value() >= 0) return not_too_large(value, pointer);
    add("container.length-negative", pointer, {{"length_cm", in_cm(value)}});
    return false;
  }

  [[nodiscard]] Problems take() && { return std::move(problems_); }

 private:
  bool not_too_large(Length value, const std::string& pointer) {
    if (value <= largest_length) return true;
    add("container.length-too-large", pointer, {{"length_cm", in_cm(value)}, {"limit_cm", in_cm(largest_length)}});
    return false;
  }

  Problems problems_;
};

struct SideNames {
  std::string length;
  std::string width;
};

SideNames side_names(Shape shape) {
  switch (shape) {
    case Shape::round:
    case Shape::drum: return {"/diameter_cm", ""};
    case Shape::hexagonal:
    case Shape::octagonal: return {"/across_flats_cm", ""};
    default: return {"/length_cm", "/width_cm"};
  }
}

bool check_section(ContainerFindings& findings, Shape shape, const Section& section, const std::string& pointer) {
  const SideNames names = side_names(shape);
  const bool length = findings.positive(section.length, pointer + names.length);
  if (names.width.empty()) return length;
  return findings.positive(section.width, pointer + names.width) && length;
}

bool has_floor_edge(Shape shape) { return shape != Shape::bowl && shape != Shape::profile; }

/// The largest fillet that leaves a floor: its strip along the wall must not use up the floor's area.
Length fillet_limit(const Container& container) {
  const Section& base = container.base ? *container.base : container.rim;
  const Length narrow = std::min(base.length, base.width);
  const bool pointed = container.shape == Shape::superellipse && container.exponent && *container.exponent < 2;
  return std::min(container.depth.quantity(), pointed ? narrow / 6.0 : narrow / 4.0);
}

/// The quadratic through the three areas of a drum dips below zero although all three are positive.
bool drum_closes(const Container& container) {
  const auto square = [](Length diameter) { return in_cm(diameter) * in_cm(diameter); };
  const double base = square(container.base ? container.base->length : container.rim.length);
  const double middle = square(container.middle->length);
  const double rim = square(container.rim.length);
  const double slope = 4 * middle - 3 * base - rim;
  const double curvature = 2 * (base - 2 * middle + rim);
  if (curvature <= 0) return false;
  const double lowest = -slope / (2 * curvature);
  return lowest > 0 && lowest < 1 && base - slope * slope / (4 * curvature) <= 0;
}

void check_table(ContainerFindings& findings, const Container& container) {
  const auto& areas = container.areas;
  if (areas.size() < 2) {
    findings.add("container.profile-too-few", "/areas", {{"rows", static_cast<double>(areas.size())}});
    return;
  }
  if (std::abs(in_cm(areas.front().height)) > 1e-9) {
    findings.add("container.profile-not-from-floor", "/areas/0/height_cm", {{"height_cm", in_cm(areas.front().height)}});
  }
  Depth highest{};
  for (std::size_t i = 0; i < areas.size(); ++i) {
    const std::string row = "/areas/" + std::to_string(i);
    const double area = in_cm2(areas[i].area);
    // Only the floor itself may be a point.
    if (!std::isfinite(area) || area < 0 || (area == 0 && i > 0)) {
      findings.add("container.area-not-positive", row + "/area_cm2", {{"area_cm2", area}});
    } else if (area > in_cm(largest_length) * in_cm(largest_length)) {
      findings.add("container.area-too-large", row + "/area_cm2", {{"area_cm2", area}});
    }
    if (i > 0 && !(areas[i].height > highest)) {
      findings.add("container.profile-not-rising", row + "/height_cm",
                   {{"height_cm", in_cm(areas[i].height)}, {"before_cm", in_cm(highest)}});
    } else if (i > 0 && in_cm(areas[i].height - highest) < in_cm(smallest_length) * (1 - 1e-9)) {
      // Two areas at one height are a step that no tape measures, and steep enough to cost the water its digits.
      findings.add("container.length-too-small", row + "/height_cm",
                   {{"length_cm", in_cm(areas[i].height - highest)}, {"limit_cm", in_cm(smallest_length)}});
    } else {
      highest = areas[i].height;
    }
  }
  if (in_cm(areas.back().height) < in_cm(container.depth) - 1e-9) {
    findings.add("container.profile-below-rim", "/areas",
                 {{"height_cm", in_cm(areas.back().height)}, {"depth_cm", in_cm(container.depth)}});
  }
}

void check_walls(ContainerFindings& findings, const Container& container) {
  bool sections = check_section(findings, container.shape, container.rim, "/rim");
  if (container.base && container.shape != Shape::bowl) {
    sections = check_section(findings, container.shape, *container.base, "/base") && sections;
  }
  if (container.shape == Shape::drum) {
    if (!container.middle) {
      findings.add("container.middle-missing", "/middle");
    } else if (check_section(findings, container.shape, *container.middle, "/middle") && sections && drum_closes(container)) {
      findings.add("container.walls-close", "/middle/diameter_cm", {{"diameter_cm", in_cm(container.middle->length)}});
    }
  }
  if (container.shape == Shape::superellipse) {
    if (!container.exponent) {
      findings.add("container.exponent-missing", "/exponent");
    } else if (!(*container.exponent >= 1) || !std::isfinite(*container.exponent)) {
      findings.add("container.exponent-too-small", "/exponent", {{"exponent", *container.exponent}});
    } else if (*container.exponent > largest_exponent) {
      findings.add("container.exponent-too-large", "/exponent", {{"exponent", *container.exponent}, {"limit", largest_exponent}});
    }
  }
  const bool corner = findings.not_negative(container.corner_radius, "/corner_radius_cm");
  if (corner && container.corner_radius.value() > 0) {
    if (container.shape != Shape::rectangular) {
      findings.add("container.corner-without-rectangle", "/corner_radius_cm");
    } else if (sections) {
      const Section& base = container.base ? *container.base : container.rim;
      const Length limit = std::min({container.rim.length, container.rim.width, base.length, base.width}) / 2.0;
      if (container.corner_radius > limit) {
        findings.add("container.corner-too-large", "/corner_radius_cm",
                     {{"radius_cm", in_cm(container.corner_radius)}, {"limit_cm", in_cm(limit)}});
      }
    }
  }
  const bool fillet = findings.not_negative(container.fillet_radius, "/fillet_radius_cm");
  if (fillet && sections && in_cm(container.depth) > 0 && has_floor_edge(container.shape) && container.fillet_radius > fillet_limit(container)) {
    findings.add("container.fillet-too-large", "/fillet_radius_cm",
                 {{"radius_cm", in_cm(container.fillet_radius)}, {"limit_cm", in_cm(fillet_limit(container))}});
  }
}

void check_filling(ContainerFindings& findings, const Container& container) {
  findings.not_negative(container.saucer.quantity(), "/saucer_cm");
  findings.not_negative(container.wick.quantity(), "/wick_cm");
  const double tilt = in_deg(container.tilt.angle);
  if (!(tilt >= 0 && tilt <= 60)) findings.add("container.tilt-out-of-range", "/tilt_deg", {{"tilt_deg", tilt}});
  if (container.water_fill && !(in_ml(*container.water_fill) > 0 && std::isfinite(in_ml(*container.water_fill)))) {
    findings.add("container.volume-not-positive", "/water_fill_ml", {{"volume_ml", in_ml(*container.water_fill)}});
  } else if (container.water_fill && (in_ml(*container.water_fill) < 0.001 || in_ml(*container.water_fill) > 1e9)) {
    findings.add("container.volume-out-of-range", "/water_fill_ml", {{"volume_ml", in_ml(*container.water_fill)}});
  }
  if (container.mass && !(in_kg(*container.mass) >= 0 && std::isfinite(in_kg(*container.mass)))) {
    findings.add("container.mass-negative", "/mass_kg", {{"mass_kg", in_kg(*container.mass)}});
  }
  if (container.mound) findings.not_negative(container.mound->rise.quantity(), "/mound/rise_cm");
  Depth layers{};
  if (container.bottom_layer && findings.not_negative(container.bottom_layer->thickness.quantity(), "/bottom_layer/thickness_cm")) {
    layers = layers + container.bottom_layer->thickness;
  }
  if (container.top_dressing && findings.not_negative(container.top_dressing->quantity(), "/top_dressing/thickness_cm")) {
    layers = layers + *container.top_dressing;
  }
  const Depth filled = container.depth - container.freeboard;
  if (in_cm(layers) > 0 && layers >= filled && in_cm(filled) > 0) {
    findings.add("container.layers-fill-the-pot", container.bottom_layer ? "/bottom_layer/thickness_cm" : "/top_dressing/thickness_cm",
                 {{"layers_cm", in_cm(layers)}, {"filled_cm", in_cm(filled)}});
  }
}

}  // namespace

Problems check(const Container& container) {
  ContainerFindings findings;
  const bool deep = findings.positive(container.depth.quantity(), "/depth_cm");
  const bool freeboard = findings.not_negative(container.freeboard.quantity(), "/freeboard_cm");
  if (deep && freeboard && container.freeboard >= container.depth) {
    findings.add("container.fill-line-below-floor", "/freeboard_cm",
                 {{"freeboard_cm", in_cm(container.freeboard)}, {"depth_cm", in_cm(container.depth)}});
  }
  if (container.shape == Shape::profile) {
    check_table(findings, container);
    findings.not_negative(container.corner_radius, "/corner_radius_cm");
    findings.not_negative(container.fillet_radius, "/fillet_radius_cm");
    if (container.corner_radius.value() > 0) findings.add("container.corner-without-rectangle", "/corner_radius_cm");
  } else {
    check_walls(findings, container);
  }
  if (container.fillet_radius.value() > 0 && !has_floor_edge(container.shape)) {
    findings.add("container.fillet-without-floor-edge", "/fillet_radius_cm");
  }
  check_filling(findings, container);
  Problems problems = std::move(findings).take();
  if (container.bottom_layer && container.bottom_layer->component) {
    append(problems, under(check(*container.bottom_layer->component), "/bottom_layer/component"));
  }
  return problems;
}

}  // namespace gritwright
