#include "gritwright/domain/component.hpp"

#include <cmath>
#include <utility>

namespace gritwright {

namespace {

/// Room for binary rounding where two figures may be equal.
constexpr double rounding = 1e-9;

class GrainChecker {
 public:
  explicit GrainChecker(const GrainProperties& grain) : grain_(grain) {}

  Problems run() {
    densities();
    not_negative(grain_.bulk_moisture.value() * 100, "component.moisture-range", "/bulk_moisture_percent", "percent");
    const double open = grain_.open_share.value();
    if (!(open >= 0 && open <= 1)) report("component.open-share-range", "/open_share", {{"share", open}});
    if (grain_.water_absorption)
      not_negative(grain_.water_absorption->value(), "component.absorption-negative", "/water_absorption", "ratio");
    if (grain_.cation_exchange)
      not_negative(grain_.cation_exchange->value(), "component.cec-negative", "/cec_meq_100g", "cec_meq_100g");
    order();
    absorption();
    return std::move(problems_);
  }

 private:
  void report(const char* code, const char* pointer, Facts facts) {
    problems_.push_back(problem_at(code, pointer, std::move(facts)));
  }

  void not_negative(double value, const char* code, const char* pointer, const char* key) {
    if (!std::isfinite(value) || value < 0) report(code, pointer, {{key, value}});
  }

  void positive(double density_g_l, const char* pointer) {
    if (!std::isfinite(density_g_l) || density_g_l <= 0)
      report("component.density-not-positive", pointer, {{"density_g_l", density_g_l}});
  }

  void densities() {
    positive(in_g_l(grain_.bulk_density), "/bulk_density_g_l");
    if (grain_.particle_density) positive(in_g_l(*grain_.particle_density), "/particle_density_g_l");
    if (grain_.skeletal_density) positive(in_g_l(*grain_.skeletal_density), "/skeletal_density_g_l");
  }

  // A figure that is out of its own range was told; no other is held against it.
  static std::optional<double> sound(double density_g_l) {
    return std::isfinite(density_g_l) && density_g_l > 0 ? std::optional(density_g_l) : std::nullopt;
  }
  [[nodiscard]] std::optional<double> dry_bulk_g_l() const {
    const double moisture = grain_.bulk_moisture.value();
    return std::isfinite(moisture) && moisture >= 0 ? sound(in_g_l(dry_bulk_density(grain_))) : std::nullopt;
  }
  [[nodiscard]] std::optional<double> particle_g_l() const {
    return grain_.particle_density ? sound(in_g_l(*grain_.particle_density)) : std::nullopt;
  }
  [[nodiscard]] std::optional<double> skeletal_g_l() const {
    return grain_.skeletal_density ? sound(in_g_l(*grain_.skeletal_density)) : std::nullopt;
  }

  void order() {
    const auto bulk = dry_bulk_g_l(), particle = particle_g_l(), skeletal = skeletal_g_l();
    if (bulk && particle && *bulk >= *particle)
      report("component.bulk-above-particle", "/bulk_density_g_l", {{"bulk_g_l", *bulk}, {"particle_g_l", *particle}});
    if (particle && skeletal && *particle > *skeletal * (1 + rounding))
      report("component.particle-above-skeletal", "/particle_density_g_l", {{"particle_g_l", *particle}, {"skeletal_g_l", *skeletal}});
    if (bulk && skeletal && !grain_.particle_density && *bulk >= *skeletal)
      report("component.bulk-above-skeletal", "/bulk_density_g_l", {{"bulk_g_l", *bulk}, {"skeletal_g_l", *skeletal}});
  }

  /// Water taken up per volume of grain cannot exceed the grain's pores; where those are unknown, not the grain itself.
  void absorption() {
    const auto particle = particle_g_l(), skeletal = skeletal_g_l();
    if (!grain_.water_absorption || !particle) return;
    const double ratio = grain_.water_absorption->value();
    if (!(std::isfinite(ratio) && ratio >= 0) || (skeletal && *particle > *skeletal)) return;
    const double water = ratio * *particle / 1000;
    const double pores = skeletal ? 1 - *particle / *skeletal : 1;
    const bool too_much = skeletal ? water > pores + rounding : water >= 1;
    if (too_much) report("component.absorption-above-pores", "/water_absorption", {{"water_percent", water * 100}, {"pores_percent", pores * 100}});
  }

  const GrainProperties& grain_;
  Problems problems_;
};

class GradingChecker {
 public:
  explicit GradingChecker(const Grading& grading) : grading_(grading) {}

  // The pointer names the whole grading: the record runs fine to coarse, what the user wrote may run the other way.
  Problems run() {
    if (grading_.points.empty()) report("grading.empty", "/grading", {});
    for (std::size_t i = 0; i < grading_.points.size(); ++i) {
      point(grading_.points[i]);
      if (i > 0) neighbours(grading_.points[i - 1], grading_.points[i]);
    }
    if (!grading_.points.empty()) ends();
    return std::move(problems_);
  }

 private:
  void report(const char* code, const char* pointer, Facts facts) {
    problems_.push_back(problem_at(code, pointer, std::move(facts)));
  }

  void point(const GradingPoint& at) {
    const double mm = in_mm(at.aperture);
    const double passing = at.passing.value();
    if (!std::isfinite(mm) || mm <= 0) report("grading.aperture-not-positive", "/grading", {{"aperture_mm", mm}});
    if (!(passing >= 0 && passing <= 1)) report("grading.passing-out-of-range", "/grading", {{"percent", passing * 100}});
  }

  void neighbours(const GradingPoint& finer, const GradingPoint& coarser) {
    if (!(finer.aperture < coarser.aperture))
      report("grading.aperture-order", "/grading", {{"aperture_mm", in_mm(finer.aperture)}, {"before_mm", in_mm(coarser.aperture)}});
    else if (finer.passing > coarser.passing)
      report("grading.passing-falls", "/grading",
             {{"finer_mm", in_mm(finer.aperture)}, {"finer_percent", in_percent(finer.passing)},
              {"coarser_mm", in_mm(coarser.aperture)}, {"coarser_percent", in_percent(coarser.passing)}});
  }

  void ends() {
    const double finest_mm = in_mm(grading_.points.front().aperture);
    const double coarsest_mm = in_mm(grading_.points.back().aperture);
    if (grading_.pan_size) {
      const double mm = in_mm(*grading_.pan_size);
      if (!(mm > 0 && (mm <= finest_mm || !(finest_mm > 0)))) report("grading.pan-size-range", "/pan_size_mm", {{"size_mm", mm}, {"finest_mm", finest_mm}});
    }
    if (grading_.top_size) {
      const double mm = in_mm(*grading_.top_size);
      if (!(std::isfinite(mm) && mm > coarsest_mm))
        report("grading.top-size-range", "/top_size_mm", {{"size_mm", mm}, {"coarsest_mm", coarsest_mm}});
    }
  }

  const Grading& grading_;
  Problems problems_;
};

Problems check_sizes(const GrainSizes& sizes) {
  if (const auto* grading = std::get_if<Grading>(&sizes)) return check(*grading);
  const double mm = in_mm(std::get<SingleSize>(sizes).size);
  if (std::isfinite(mm) && mm > 0) return {};
  return {problem_at("component.size-not-positive", "/class_mm", {{"size_mm", mm}})};
}

}  // namespace

BulkDensity dry_bulk_density(const GrainProperties& grain) {
  return grain.bulk_density / (1 + grain.bulk_moisture.value());
}

Problems check(const GrainProperties& grain) { return GrainChecker(grain).run(); }

Problems check(const Grading& grading) { return GradingChecker(grading).run(); }

Problems check(const Component& component) {
  Problems problems;
  const double parts = component.parts.value();
  if (!std::isfinite(parts) || parts < 0)
    problems.push_back(problem_at("component.parts-negative", "/parts", {{"parts", parts}}));
  append(problems, check(component.grain));
  append(problems, check_sizes(component.sizes));
  return problems;
}

}  // namespace gritwright
