#include "gritwright/models/mix_ranges.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <stdexcept>

#include "drained_part.hpp"
#include "draw_slices.hpp"
#include "drawn_classes.hpp"
#include "gritwright/models/blended_grading.hpp"
#include "gritwright/models/litres.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/normal_scores.hpp"
#include "gritwright/models/packing.hpp"
#include "gritwright/models/pot_water.hpp"
#include "gritwright/models/saturation_kernel.hpp"
#include "size_order.hpp"

namespace gritwright {

namespace {

constexpr std::size_t figure_count = static_cast<std::size_t>(MixFigure::count);
constexpr std::size_t heights = 11;
constexpr double loosest_packing = 0.05, densest_packing = 0.97;
constexpr double perched_saturation = 0.9;

constexpr std::size_t at(MixFigure figure) { return static_cast<std::size_t>(figure); }

/// The curves of a grain's classes by themselves, coarse to fine as size_classes() gives them: a class is a rise of the whole curve.
std::vector<std::vector<GradingPoint>> class_curves(const GrainSizes& sizes) {
  const std::vector<GradingPoint> whole = closed_grading(sizes);
  std::vector<std::vector<GradingPoint>> curves;
  for (std::size_t i = whole.size() - 1; i > 0; --i)
    if (whole[i].passing > whole[i - 1].passing)
      curves.push_back({{whole[i - 1].aperture, Passing(0)}, {whole[i].aperture, Passing(1)}});
  return curves;
}

/// Scores that belong to one component, before those of its classes.
enum ComponentScore { bulk, particle, skeletal, open, absorption, operators, lost, first_class };

/// Scores of the whole chain, before those of the components: the strongest first, where the sequence is most even.
enum ChainScore { capillary, flooded, fill, voids, settle, residual, length, width, depth, first_component };

}  // namespace

class UncertainMix::Chain {
 public:
  Chain(Mix mix, MixSpread spread, Pot pot) : mix_(std::move(mix)), spread_(std::move(spread)), pot_(std::move(pot)) {
    describe_mix();
    describe_pot();
  }
  /// Takes over those tables of `other` that hold for its own constants and pot.
  Chain(Mix mix, MixSpread spread, Pot pot, const Chain& other) : mix_(std::move(mix)), spread_(std::move(spread)), pot_(std::move(pot)) {
    describe_mix();
    if (mix_.water.n == other.mix_.water.n) by_head_ = other.by_head_;
    // What a bottom layer of the pot makes of it hangs on all constants.
    if (mix_.water == other.mix_.water && same_pot(pot_, other.pot_)) body_ = other.body_;
    describe_pot();
  }

  [[nodiscard]] const Mix& mix() const { return mix_; }
  [[nodiscard]] const MixSpread& spread() const { return spread_; }
  [[nodiscard]] const Pot& pot() const { return pot_; }
  [[nodiscard]] std::size_t dimensions() const { return dimensions_; }
  [[nodiscard]] std::size_t components() const { return grains_.size(); }
  [[nodiscard]] std::size_t sieves() const { return sieve_points_.size(); }
  [[nodiscard]] bool has_volumes() const { return has_volumes_; }
  [[nodiscard]] bool height_in_mix(std::size_t height) const { return height_in_mix_[height]; }

  /// Where a list of figures begins among the columns.
  [[nodiscard]] std::size_t mass_shares_at() const { return figure_count; }
  [[nodiscard]] std::size_t envelope_shares_at() const { return mass_shares_at() + components(); }
  [[nodiscard]] std::size_t betas_at() const { return envelope_shares_at() + components(); }
  [[nodiscard]] std::size_t measure_out_at() const { return betas_at() + components(); }
  [[nodiscard]] std::size_t passing_at() const { return measure_out_at() + components(); }
  [[nodiscard]] std::size_t envelope_passing_at() const { return passing_at() + sieves(); }
  [[nodiscard]] std::size_t heights_at() const { return envelope_passing_at() + sieves(); }
  [[nodiscard]] std::size_t drained_at() const { return heights_at() + heights; }
  [[nodiscard]] std::size_t perched_at() const { return drained_at() + heights; }
  [[nodiscard]] std::size_t columns() const { return perched_at() + 1; }

  [[nodiscard]] bool defined(MixFigure figure) const {
    switch (figure) {
      case MixFigure::skeletal_density_g_l: return has_volumes_ && solids_known_;
      case MixFigure::cec_meq_l: return has_volumes_ && exchange_known_;
      case MixFigure::pot_volume_ml:
      case MixFigure::mixed_l: return has_container();
      case MixFigure::wet_mass_g: return has_volumes_ && has_container();
      case MixFigure::depth_cm: return has_pot();
      case MixFigure::container_capacity:
      case MixFigure::air_filled_porosity:
      case MixFigure::trapped_air:
      case MixFigure::total_air:
      case MixFigure::theta_0:
      case MixFigure::theta_10:
      case MixFigure::theta_50:
      case MixFigure::easily_available:
      case MixFigure::available_in_pot: return has_volumes_ && has_pot();
      default: return has_volumes_;
    }
  }

  [[nodiscard]] bool has_pot() const { return !std::holds_alternative<std::monostate>(pot_); }
  [[nodiscard]] bool has_container() const { return std::holds_alternative<PotGeometry>(pot_); }

  struct Workspace {
    std::vector<double> shares, class_envelope, class_volume, own, mass_finer, envelope_finer;
    std::vector<double> mass, envelope, beta;
  };

  /// How much of a draw is asked for: air and water of the pot and what leads to them, the other figures too, or the lists as well.
  enum class Detail { air_and_water, figures, lists };

  /// Works out one draw; `row` has columns() places, of which those are filled that are asked for.
  void draw(std::span<const double> z, Detail detail, Workspace& work, std::span<double> row) const;

 private:
  struct Grain {
    std::size_t first_score = 0;
    double bulk_g_l = 0;
    double packing = 0;  ///< own bulk over particle density; 0 where the particle density is unknown
    std::optional<double> skeletal_g_l;
    double open_share = 1;
    std::optional<double> absorption;
    double exchange = 0;
    double parts = 0;
    std::optional<DrawnClasses> classes;
    std::optional<PackingKernel> kernel;
    std::vector<std::size_t> class_at;  ///< place among all size classes
    std::vector<double> finer;          ///< share finer at each curve point, a row a class
  };

  static bool same_pot(const Pot& a, const Pot& b) {
    if (a.index() != b.index()) return false;
    if (const auto* geometry = std::get_if<PotGeometry>(&a)) return geometry->container() == std::get<PotGeometry>(b).container();
    return !std::holds_alternative<Depth>(a) || std::get<Depth>(a) == std::get<Depth>(b);
  }

  void describe_mix() {
    gather_sizes();
    for (std::size_t k = 0; k < mix_.components.size(); ++k) describe(k);
  }
  void gather_sizes();
  void describe(std::size_t k);
  void describe_pot();
  [[nodiscard]] RetentionConstants constants(std::span<const double> z) const {
    const RetentionScores scores{z[capillary], z[fill], z[flooded], z[residual]};
    return spread_.belief ? constants_at(*spread_.belief, spread_.retention, scores)
                          : constants_at(mix_.water, spread_.retention, scores);
  }
  [[nodiscard]] double perched_cm(const SizeRuns& sizes, double k_cm_mm) const;

  Mix mix_;
  MixSpread spread_;
  Pot pot_;
  std::vector<Aperture> class_sizes_;
  std::optional<PackingKernel> kernel_;
  std::vector<Aperture> curve_sizes_;
  std::vector<double> curve_log_mm_;
  std::vector<std::size_t> sieve_points_;  ///< curve points of MixState::passing
  std::vector<Grain> grains_;
  std::size_t dimensions_ = first_component;
  bool has_volumes_ = true, solids_known_ = true, exchange_known_ = true;

  std::shared_ptr<const SaturationKernel> by_head_;  ///< at 1 cm; a suction of h is that of k/h
  std::shared_ptr<const SaturationKernel> body_;
  double depth_cm_ = 0, volume_ml_ = 0, main_volume_ml_ = 0;
  double bottom_cm_ = 0, bottom_head_cm_ = 0, cosine_ = 1;
  std::array<double, heights> height_head_cm_{};
  std::array<bool, heights> height_in_mix_{};
};

void UncertainMix::Chain::gather_sizes() {
  std::vector<Aperture> steps, sizes, sieves;
  for (const Component& component : mix_.components) {
    if (!(component.parts.value() > 0)) continue;
    for (const SizeClass& each : size_classes(component.sizes)) class_sizes_.push_back(each.size);
    const std::vector<GradingPoint> curve = closed_grading(component.sizes);
    for (std::size_t i = 0; i < curve.size(); ++i) {
      sizes.push_back(curve[i].aperture);
      if (i > 0 && curve[i].aperture == curve[i - 1].aperture) steps.push_back(curve[i].aperture);
    }
    if (const auto* single = std::get_if<SingleSize>(&component.sizes))
      sieves.push_back(single->size);
    else
      for (const GradingPoint& point : std::get<Grading>(component.sizes).points) sieves.push_back(point.aperture);
  }
  std::ranges::sort(class_sizes_, std::ranges::greater{});
  std::vector<Aperture> merged;
  for (const Aperture& size : class_sizes_)
    if (merged.empty() || !equal_sizes(merged.back(), size)) merged.push_back(size);
  class_sizes_ = merged;
  kernel_.emplace(class_sizes_);

  for (auto* list : {&sizes, &sieves}) {
    std::ranges::sort(*list);
    list->erase(std::ranges::unique(*list).begin(), list->end());
  }
  for (const Aperture& size : sizes) {
    curve_sizes_.push_back(size);
    if (std::ranges::find(steps, size) != steps.end()) curve_sizes_.push_back(size);
    if (std::ranges::binary_search(sieves, size)) sieve_points_.push_back(curve_sizes_.size() - 1);
  }
  for (const Aperture& size : curve_sizes_) curve_log_mm_.push_back(std::log(in_mm(size)));
}

void UncertainMix::Chain::describe(std::size_t k) {
  const Component& component = mix_.components[k];
  Grain grain;
  grain.first_score = dimensions_;
  grain.parts = component.parts.value();
  grain.bulk_g_l = in_g_l(dry_bulk_density(component.grain));
  const auto own = own_packing_density(component.grain);
  if (own) grain.packing = own->value();
  if (component.grain.skeletal_density) grain.skeletal_g_l = in_g_l(*component.grain.skeletal_density);
  grain.open_share = component.grain.open_share.value();
  if (component.grain.water_absorption) grain.absorption = component.grain.water_absorption->value();
  grain.exchange = component.grain.cation_exchange ? component.grain.cation_exchange->value() : 0;

  const std::vector<SizeClass> classes = size_classes(component.sizes);
  std::vector<Aperture> sizes;
  for (const SizeClass& each : classes) sizes.push_back(each.size);
  dimensions_ += first_class + classes.size();
  if (grain.parts > 0) {
    has_volumes_ = has_volumes_ && own;
    exchange_known_ = exchange_known_ && component.grain.cation_exchange;
    const auto pores = grain_pores(component.grain, mix_.water.grain_fill);
    solids_known_ = solids_known_ && (grain.skeletal_g_l || (pores && !(pores->open.value() > 0)));
    for (const Aperture& size : sizes) {
      const auto found = std::ranges::find_if(class_sizes_, [&](const Aperture& other) {
        return equal_sizes(std::max(other, size), std::min(other, size));
      });
      grain.class_at.push_back(static_cast<std::size_t>(found - class_sizes_.begin()));
    }
    const auto curves = class_curves(component.sizes);
    if (curves.size() != classes.size()) throw std::logic_error("a class is a rise of the curve");
    for (const std::vector<GradingPoint>& curve : curves) {
      for (std::size_t i = 0; i < curve_sizes_.size(); ++i) {
        const bool head_of_step = i > 0 && curve_sizes_[i] == curve_sizes_[i - 1];
        const bool foot_of_step = i + 1 < curve_sizes_.size() && curve_sizes_[i] == curve_sizes_[i + 1];
        grain.finer.push_back(foot_of_step && !head_of_step ? share_finer(curve, curve_sizes_[i]) : share_passing(curve, curve_sizes_[i]));
      }
    }
  }
  grain.kernel.emplace(sizes);
  grain.classes.emplace(component.sizes, spread_.components[k].grading);
  grains_.push_back(std::move(grain));
}

void UncertainMix::Chain::describe_pot() {
  if (!has_pot()) return;
  const double n = mix_.water.n;
  if (!by_head_) by_head_ = SaturationKernel::by_head(n);
  height_in_mix_.fill(true);
  if (const auto* bare = std::get_if<Depth>(&pot_)) {
    if (!body_) body_ = std::make_shared<const SaturationKernel>(SaturationKernel::for_column(*bare, n));
    depth_cm_ = in_cm(*bare);
    for (std::size_t i = 0; i < heights; ++i) height_head_cm_[i] = depth_cm_ * static_cast<double>(i) / (heights - 1);
    return;
  }
  const PotGeometry& pot = std::get<PotGeometry>(pot_);
  const auto layer = layer_retention(pot.container(), mix_.water);
  const Retention* known_layer = layer ? &*layer : nullptr;
  if (!body_) body_ = std::make_shared<const SaturationKernel>(SaturationKernel::for_pot(pot, n, known_layer));
  depth_cm_ = in_cm(pot.filled_depth());
  volume_ml_ = in_ml(pot.volume());
  main_volume_ml_ = in_ml(pot.main_mix_volume());
  const DrainedPart part = drained_part(pot, known_layer);
  const double tilt = pot.container().tilt.angle.value();
  bottom_cm_ = part.from_cm;
  bottom_head_cm_ = part.head_cm;
  cosine_ = std::cos(tilt);
  const Section floor = pot.section_at(Depth{});
  const double across_cm = in_cm(pot.container().tilt.axis == TiltAxis::length ? floor.width : floor.length);
  for (std::size_t i = 0; i < heights; ++i) {
    const double height = depth_cm_ * static_cast<double>(i) / (heights - 1);
    height_in_mix_[i] = known_layer == nullptr || height >= bottom_cm_;
    height_head_cm_[i] = std::max(0.0, bottom_head_cm_ + (height - bottom_cm_) * cosine_ + across_cm / 2 * std::sin(tilt));
  }
}

/// By secants on ln h, from where one size of that mean would have it; the saturation falls smoothly there.
double UncertainMix::Chain::perched_cm(const SizeRuns& sizes, double k_cm_mm) const {
  const auto excess = [&](double log_head) { return by_head_->mean(sizes, k_cm_mm / std::exp(log_head)) - perched_saturation; };
  double before = std::log(0.6 * k_cm_mm) - sizes.log_mean();
  double excess_before = excess(before);
  // Se falls by about 1.2 per unit of ln h there.
  double here = before + std::clamp(0.8 * excess_before, -1.0, 1.0);
  for (int step = 0; step < 20; ++step) {
    const double excess_here = excess(here);
    if (excess_here == excess_before) break;
    const double next = here - std::clamp(excess_here * (here - before) / (excess_here - excess_before), -1.0, 1.0);
    before = here, excess_before = excess_here, here = next;
    if (std::abs(here - before) < 1e-4) break;  // the secant squares what is left
  }
  return std::exp(here);
}

void UncertainMix::Chain::draw(std::span<const double> z, Detail detail, Workspace& work, std::span<double> row) const {
  const bool all = detail == Detail::lists;
  const std::size_t count = components(), points = curve_sizes_.size();
  const RetentionConstants water = constants(z);
  work.mass.assign(count, 0);
  work.envelope.assign(count, 0);
  work.beta.assign(count, 0);
  work.class_envelope.assign(class_sizes_.size(), 0);
  work.class_volume.assign(class_sizes_.size(), 0);
  work.envelope_finer.assign(points, 0);
  if (all) work.mass_finer.assign(points, 0);
  double loose_l = 0, mass_g = 0, envelope_l = 0, pores_l = 0, open_l = 0, water_l = 0, solid_l = 0, exchange_meq = 0, largest_l = 0;
  for (std::size_t k = 0; k < count; ++k) {
    const Grain& grain = grains_[k];
    if (!(grain.parts > 0)) continue;
    const ComponentSpread& spread = spread_.components[k];
    const double* const score = z.data() + grain.first_score;
    const double bulk_g_l = grain.bulk_g_l * spread.bulk_density.at(score[bulk]);
    work.mass[k] = grain.parts * bulk_g_l;
    mass_g += work.mass[k];
    loose_l += grain.parts;
    exchange_meq += work.mass[k] * grain.exchange / 100;
    work.own.resize(grain.classes->size());
    grain.classes->draw({{score + first_class, grain.classes->size()}, score[operators], score[lost]}, work.own);
    double per_point = work.mass[k];
    if (has_volumes_) {
      const double nominal_g_l = grain.bulk_g_l / grain.packing;
      double particle_g_l = spread.particle_by_packing
                                ? bulk_g_l / (grain.packing * spread.particle_density.at(score[particle]))
                                : nominal_g_l * spread.particle_density.at(score[particle]);
      const double skeletal_g_l = grain.skeletal_g_l ? *grain.skeletal_g_l * spread.skeletal_density.at(score[skeletal]) : 0;
      if (grain.skeletal_g_l) particle_g_l = std::min(particle_g_l, skeletal_g_l);
      const double packing = std::clamp(bulk_g_l / particle_g_l, loosest_packing, densest_packing);
      const double grain_l = grain.parts * packing;
      const double inner = grain.skeletal_g_l ? std::max(0.0, 1 - particle_g_l / skeletal_g_l) : 0;
      double open_pores = std::clamp(grain.open_share + spread.open_share * score[open], 0.0, 1.0) * inner;
      double held = open_pores * water.grain_fill;
      if (grain.absorption) {
        held = *grain.absorption * spread.water_absorption.at(score[absorption]) * particle_g_l / 1000;
        if (grain.skeletal_g_l) held = std::min(held, inner);
        open_pores = std::max(open_pores, held);
      }
      work.envelope[k] = grain_l;
      envelope_l += grain_l;
      largest_l = std::max(largest_l, grain_l);
      pores_l += grain_l * std::max(inner, open_pores);
      open_l += grain_l * open_pores;
      water_l += grain_l * held;
      solid_l += grain.skeletal_g_l ? work.mass[k] / skeletal_g_l : grain_l;
      const double class_volume = grain.kernel->class_volume(work.own, 1 / packing);
      work.beta[k] = 1 / class_volume;
      for (std::size_t c = 0; c < work.own.size(); ++c) {
        work.class_envelope[grain.class_at[c]] += grain_l * work.own[c];
        work.class_volume[grain.class_at[c]] += grain_l * work.own[c] * class_volume;
      }
    }
    const double in_envelope = work.envelope[k];
    for (std::size_t c = 0; c < work.own.size(); ++c) {
      const double* const finer = grain.finer.data() + c * points;
      const double by_envelope = in_envelope * work.own[c], by_mass = per_point * work.own[c];
      for (std::size_t i = 0; i < points; ++i) work.envelope_finer[i] += by_envelope * finer[i];
      if (all)
        for (std::size_t i = 0; i < points; ++i) work.mass_finer[i] += by_mass * finer[i];
    }
  }
  const auto put = [&](MixFigure figure, double value) { row[at(figure)] = value; };
  const auto share_of = [](double value) { return std::min(1.0, value); };
  if (all) {
    for (std::size_t k = 0; k < count; ++k) row[mass_shares_at() + k] = work.mass[k] / mass_g;
    for (std::size_t i = 0; i < sieves(); ++i) row[passing_at() + i] = share_of(work.mass_finer[sieve_points_[i]] / mass_g);
  }

  PotFactors lengths;
  if (const auto* pot = std::get_if<PotGeometry>(&pot_)) lengths = pot_factors(*pot, spread_.pot, {z[length], z[width], z[depth]});
  if (std::holds_alternative<Depth>(pot_)) lengths.depth = std::max(0.1, 1 + spread_.pot.length_cm * z[depth] / depth_cm_);
  const double settling = std::min(0.5, mix_.settling.value() * spread_.settling.at(z[settle]));
  const double mixed_l = main_volume_ml_ * lengths.volume / 1000 / ((1 - settling) * (1 - mix_.spill.value()));
  put(MixFigure::pot_volume_ml, volume_ml_ * lengths.volume);
  put(MixFigure::depth_cm, depth_cm_ * lengths.depth);
  put(MixFigure::mixed_l, mixed_l);
  if (!has_volumes_) return;

  for (std::size_t i = 0; i < class_sizes_.size(); ++i) {
    work.class_envelope[i] /= envelope_l;
    work.class_volume[i] /= envelope_l;
  }
  const double foretold = 1 / kernel_->specific_volume(work.class_envelope, work.class_volume);
  // One component alone has its own measured packing: the model's error grows as the mix becomes one.
  const double mixedness = std::min(1.0, 2 * (1 - largest_l / envelope_l));
  const double packing = std::clamp(foretold - spread_.packing_voids * mixedness * z[voids], loosest_packing, densest_packing);
  const double settled = std::min(densest_packing, packing / (1 - settling));
  const double volume_l = envelope_l / packing, settled_l = envelope_l / settled;
  const double between = 1 - settled;
  const double grain_water = water_l / settled_l;
  put(MixFigure::packing_density, packing);
  put(MixFigure::volume_l, volume_l);
  put(MixFigure::shrinkage, 1 - volume_l / loose_l);
  put(MixFigure::bulk_density_g_l, mass_g / settled_l);
  put(MixFigure::particle_density_g_l, mass_g / envelope_l);
  put(MixFigure::skeletal_density_g_l, mass_g / solid_l);
  put(MixFigure::voids_between_grains, between);
  put(MixFigure::voids_in_grains, pores_l / settled_l);
  put(MixFigure::total_porosity, between + pores_l / settled_l);
  put(MixFigure::grain_water, grain_water);
  put(MixFigure::cec_meq_l, exchange_meq / settled_l);
  if (all) {
    for (std::size_t k = 0; k < count; ++k) {
      row[envelope_shares_at() + k] = work.envelope[k] / envelope_l;
      row[betas_at() + k] = work.beta[k];
      row[measure_out_at() + k] = mixed_l * grains_[k].parts / volume_l;
    }
    for (std::size_t i = 0; i < sieves(); ++i)
      row[envelope_passing_at() + i] = share_of(work.envelope_finer[sieve_points_[i]] / envelope_l);
  }
  if (!has_pot()) return;

  for (double& finer : work.envelope_finer) finer = share_of(finer / envelope_l);
  const SizeRuns sizes(curve_log_mm_, work.envelope_finer, water.spread, mix_.water.n);
  const double saturated = water.flooded_fill * between;
  const double dry = std::min(water.residual, saturated);
  const auto theta = [&](double saturation) { return dry + (saturated - dry) * saturation + grain_water; };
  // A pot that is deeper by a factor is the same pot with a capillary constant smaller by it.
  const double capacity = theta(body_->mean(sizes, water.k_cm_mm / lengths.depth));
  const double theta_0 = saturated + grain_water;
  const double total_air = between + open_l / settled_l - capacity;
  put(MixFigure::container_capacity, capacity);
  put(MixFigure::air_filled_porosity, theta_0 - capacity);
  put(MixFigure::total_air, total_air);
  put(MixFigure::trapped_air, total_air - (theta_0 - capacity));
  put(MixFigure::theta_0, theta_0);
  put(MixFigure::wet_mass_g, main_volume_ml_ * lengths.volume / 1000 * (mass_g / settled_l + 1000 * capacity));
  if (detail == Detail::air_and_water) return;
  const double theta_10 = theta(by_head_->mean(sizes, water.k_cm_mm / 10));
  const double theta_50 = theta(by_head_->mean(sizes, water.k_cm_mm / 50));
  put(MixFigure::theta_10, theta_10);
  put(MixFigure::theta_50, theta_50);
  put(MixFigure::easily_available, theta_10 - theta_50);
  put(MixFigure::available_in_pot, capacity - theta_50);
  if (!all) return;
  for (std::size_t i = 0; i < heights; ++i) {
    const double head = height_head_cm_[i] * lengths.depth;
    const double held = head > 0 ? theta(by_head_->mean(sizes, water.k_cm_mm / head)) : theta_0;
    row[heights_at() + i] = held;
    row[drained_at() + i] = theta_0 - held;
  }
  const double rise = perched_cm(sizes, water.k_cm_mm) - bottom_head_cm_;
  row[perched_at()] = rise > 0 ? bottom_cm_ + rise / cosine_ : 0;
}

UncertainMix::UncertainMix(Mix mix, MixSpread spread, Pot pot)
    : chain_(std::make_unique<const Chain>(std::move(mix), std::move(spread), std::move(pot))) {}
UncertainMix::~UncertainMix() = default;
UncertainMix::UncertainMix(UncertainMix&&) noexcept = default;
UncertainMix& UncertainMix::operator=(UncertainMix&&) noexcept = default;

UncertainMix::UncertainMix(Mix mix, MixSpread spread, Pot pot, const UncertainMix& before)
    : chain_(std::make_unique<const Chain>(std::move(mix), std::move(spread), std::move(pot), *before.chain_)) {}

/// Every figure and place of a list over the draws.
std::vector<std::vector<double>> UncertainMix::drawn_columns(const SampleSize& size, const SliceRunner& runner) const {
  const Chain& chain = *chain_;
  std::vector<std::vector<double>> columns(chain.columns(), std::vector<double>(size.draws));
  over_draws(NormalScores(chain.dimensions(), size.seed), size, runner,
             [&](std::size_t first, std::size_t last, std::span<const double> points) {
               Chain::Workspace work;
               std::vector<double> row(chain.columns());
               for (std::size_t i = first; i < last; ++i) {
                 chain.draw(points.subspan((i - first) * chain.dimensions(), chain.dimensions()), Chain::Detail::lists, work, row);
                 for (std::size_t c = 0; c < row.size(); ++c) columns[c][i] = row[c];
               }
             });
  return columns;
}

MixRanges UncertainMix::ranges_of(const std::vector<std::vector<double>>& columns) const {
  const Chain& chain = *chain_;
  MixRanges ranges;
  const auto maybe = [&](std::size_t column, bool defined) { return defined ? std::optional(range_of(columns[column])) : std::nullopt; };
  for (std::size_t i = 0; i < figure_count; ++i) ranges.figures.push_back(maybe(i, chain.defined(static_cast<MixFigure>(i))));
  for (std::size_t k = 0; k < chain.components(); ++k) {
    const bool dosed = chain.mix().components[k].parts.value() > 0;
    ranges.mass_shares.push_back(range_of(columns[chain.mass_shares_at() + k]));
    ranges.envelope_shares.push_back(maybe(chain.envelope_shares_at() + k, chain.has_volumes()));
    ranges.class_betas.push_back(maybe(chain.betas_at() + k, chain.has_volumes() && dosed));
    ranges.measure_out_l.push_back(maybe(chain.measure_out_at() + k, chain.has_volumes() && chain.has_container()));
  }
  for (std::size_t i = 0; i < chain.sieves(); ++i) {
    ranges.passing.push_back(range_of(columns[chain.passing_at() + i]));
    ranges.envelope_passing.push_back(maybe(chain.envelope_passing_at() + i, chain.has_volumes()));
  }
  const bool wet = chain.has_volumes() && chain.has_pot();
  for (std::size_t i = 0; i < heights; ++i) {
    ranges.water_by_height.push_back(maybe(chain.heights_at() + i, wet && chain.height_in_mix(i)));
    ranges.free_air_by_height.push_back(maybe(chain.drained_at() + i, wet && chain.height_in_mix(i)));
  }
  ranges.perched_height_cm = maybe(chain.perched_at(), wet);
  return ranges;
}

MixRanges UncertainMix::ranges(const SampleSize& size, const SliceRunner& runner) const { return ranges_of(drawn_columns(size, runner)); }

std::pair<MixRanges, std::vector<std::vector<double>>> UncertainMix::ranges_and_passing(const SampleSize& size, const SliceRunner& runner) const {
  const std::vector<std::vector<double>> drawn = drawn_columns(size, runner);
  std::vector<std::vector<double>> passing(size.draws, std::vector<double>(chain_->sieves()));
  for (std::size_t i = 0; i < chain_->sieves(); ++i)
    for (std::size_t draw = 0; draw < size.draws; ++draw) passing[draw][i] = drawn[chain_->passing_at() + i][draw];
  return {ranges_of(drawn), std::move(passing)};
}

std::vector<std::vector<double>> UncertainMix::passing_draws(const SampleSize& size, const SliceRunner& runner) const { return ranges_and_passing(size, runner).second; }

std::vector<double> UncertainMix::draws_of(MixFigure figure, const SampleSize& size, const SliceRunner& runner) const {
  const Chain& chain = *chain_;
  if (!chain.defined(figure)) return {};
  const bool of_heads = figure == MixFigure::theta_10 || figure == MixFigure::theta_50 || figure == MixFigure::easily_available || figure == MixFigure::available_in_pot;
  const Chain::Detail detail = of_heads ? Chain::Detail::figures : Chain::Detail::air_and_water;
  std::vector<double> values(size.draws);
  over_draws(NormalScores(chain.dimensions(), size.seed), size, runner,
             [&](std::size_t first, std::size_t last, std::span<const double> points) {
               Chain::Workspace work;
               std::vector<double> row(chain.columns());
               for (std::size_t i = first; i < last; ++i) {
                 chain.draw(points.subspan((i - first) * chain.dimensions(), chain.dimensions()), detail, work, row);
                 values[i] = row[at(figure)];
               }
             });
  return values;
}

std::optional<UncertainMix::AirAndWater> UncertainMix::air_and_water(const SampleSize& size, const SliceRunner& runner) const {
  const Chain& chain = *chain_;
  if (!chain.defined(MixFigure::container_capacity)) return std::nullopt;
  std::vector<double> air(size.draws), capacity(size.draws);
  over_draws(NormalScores(chain.dimensions(), size.seed), size, runner,
             [&](std::size_t first, std::size_t last, std::span<const double> points) {
               Chain::Workspace work;
               std::vector<double> row(chain.columns());
               for (std::size_t i = first; i < last; ++i) {
                 chain.draw(points.subspan((i - first) * chain.dimensions(), chain.dimensions()), Chain::Detail::air_and_water, work, row);
                 air[i] = row[at(MixFigure::air_filled_porosity)];
                 capacity[i] = row[at(MixFigure::container_capacity)];
               }
             });
  return AirAndWater{range_of(air), range_of(capacity)};
}

std::vector<SourceShare> UncertainMix::sensitivity(MixFigure figure, const SampleSize& size, const SliceRunner& runner) const {
  using Kind = UncertaintySource::Kind;
  const Chain& chain = *chain_;
  const std::vector<double> values = draws_of(figure, size, runner);
  if (values.empty()) return {};
  const auto count = static_cast<double>(values.size());
  const double mean = std::accumulate(values.begin(), values.end(), 0.0) / count;
  const double variance =
      std::accumulate(values.begin(), values.end(), 0.0, [&](double sum, double v) { return sum + (v - mean) * (v - mean); }) / count;
  if (!(variance > 0)) return {};

  const std::size_t axes = chain.dimensions();
  std::vector<std::array<double, 3>> moments(axes);
  std::vector<double> points(axes);
  const NormalScores scores(axes, size.seed);
  for (std::size_t first = 0; first < values.size(); first += draws_in_slice) {
    points.resize(std::min(draws_in_slice, values.size() - first) * axes);
    scores.fill(first, points);
    for (std::size_t i = 0; i < points.size() / axes; ++i) {
      const double off = values[first + i] - mean;
      for (std::size_t axis = 0; axis < axes; ++axis) {
        const double z = points[i * axes + axis];
        // Hermite polynomials of unit variance; what they explain of the figure is the variance of its mean given this score.
        moments[axis][0] += off * z;
        moments[axis][1] += off * (z * z - 1) / std::sqrt(2.0);
        moments[axis][2] += off * (z * z - 3) * z / std::sqrt(6.0);
      }
    }
  }
  std::vector<double> explained;
  for (const auto& axis : moments) {
    double sum = 0;
    for (const double moment : axis) sum += moment * moment / (count * count);
    explained.push_back(sum / variance);
  }

  std::vector<SourceShare> shares;
  const auto add = [&](Kind kind, std::optional<std::size_t> component, std::initializer_list<std::size_t> of) {
    double sum = 0;
    for (const std::size_t axis : of) sum += explained[axis];
    shares.push_back({{kind, component}, sum});
  };
  add(Kind::capillary_constant, {}, {capillary});
  add(Kind::flooded_fill, {}, {flooded});
  add(Kind::grain_fill, {}, {fill});
  add(Kind::packing_model, {}, {voids});
  add(Kind::settling, {}, {settle});
  add(Kind::residual, {}, {residual});
  add(Kind::pot_lengths, {}, {length, width, depth});
  std::size_t axis = first_component;
  for (std::size_t k = 0; k < chain.components(); ++k) {
    const std::size_t classes = chain.spread().components[k].grading.class_masses.size();
    add(Kind::bulk_density, k, {axis + bulk});
    add(Kind::particle_density, k, {axis + particle});
    add(Kind::skeletal_density, k, {axis + skeletal});
    add(Kind::open_share, k, {axis + open});
    add(Kind::water_absorption, k, {axis + absorption});
    double grading = explained[axis + operators] + explained[axis + lost];
    for (std::size_t c = 0; c < classes; ++c) grading += explained[axis + first_class + c];
    shares.push_back({{Kind::grading, k}, grading});
    axis += first_class + classes;
  }
  std::erase_if(shares, [](const SourceShare& share) { return share.share < 0.01; });
  std::ranges::stable_sort(shares, std::ranges::greater{}, &SourceShare::share);
  return shares;
}

namespace {

/// A carefully weighed pot test leaves about this much of k, w and f open.
constexpr RetentionSpread after_pot_test{0.08, 0.08, 0.015, false};

/// The spread after the grower has measured `source`; empty where nothing can be measured.
std::optional<MixSpread> once_measured(const MixSpread& before, const UncertaintySource& source) {
  using Kind = UncertaintySource::Kind;
  MixSpread after = before;
  ComponentSpread* component = source.component ? &after.components[*source.component] : nullptr;
  const auto narrowed = [](FactorSpread& spread, double deviation) {
    spread = {std::min(spread.down, deviation), std::min(spread.up, deviation)};
  };
  switch (source.kind) {
    case Kind::bulk_density: narrowed(component->bulk_density, measured_density_deviation); break;
    case Kind::particle_density:
      component->particle_by_packing = false;
      component->particle_density = {measured_density_deviation, measured_density_deviation};
      break;
    case Kind::water_absorption: narrowed(component->water_absorption, measured_absorption_deviation); break;
    case Kind::grading:
      // Three more sievings of as much grain.
      for (double& deviation : component->grading.class_masses) deviation /= 2;
      component->grading.operators /= 2;
      component->grading.lost /= 2;
      break;
    case Kind::settling: narrowed(after.settling, measured_settling_deviation); break;
    case Kind::capillary_constant:
    case Kind::grain_fill:
    case Kind::flooded_fill:
      if (before.belief) return std::nullopt;
      after.retention = after_pot_test;
      break;
    case Kind::pot_lengths: after.pot.length_cm /= 4; break;
    case Kind::skeletal_density:
    case Kind::open_share:
    case Kind::packing_model:
    case Kind::residual: return std::nullopt;
  }
  return after;
}

double half_range(const UncertainMix& mix, MixFigure figure, const SampleSize& size, const SliceRunner& runner) {
  std::vector<double> values = mix.draws_of(figure, size, runner);
  const Range range = range_of(values);
  return (range.high - range.low) / 2;
}

}  // namespace

std::vector<Narrowing> UncertainMix::what_would_narrow(MixFigure figure, const SampleSize& size, const SliceRunner& runner) const {
  using Kind = UncertaintySource::Kind;
  std::vector<Narrowing> list;
  const std::vector<SourceShare> shares = sensitivity(figure, size, runner);
  if (shares.empty()) return list;
  const double now = half_range(*this, figure, size, runner);
  bool pot_test_named = false;
  for (const SourceShare& share : shares) {
    const bool by_pot_test = share.source.kind == Kind::capillary_constant || share.source.kind == Kind::grain_fill ||
                             share.source.kind == Kind::flooded_fill;
    if (by_pot_test && std::exchange(pot_test_named, true)) continue;
    const auto after = once_measured(chain_->spread(), share.source);
    if (!after) continue;
    const double then = half_range(UncertainMix(chain_->mix(), *after, chain_->pot(), *this), figure, size, runner);
    if (then < 0.99 * now) list.push_back({share.source, share.share, now, then});
  }
  return list;
}

}  // namespace gritwright
