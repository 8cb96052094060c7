#include "uncertain_chain.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

#include "drained_part.hpp"
#include "gritwright/models/blended_grading.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/packing.hpp"
#include "gritwright/models/pot_ranges.hpp"
#include "gritwright/models/pot_water.hpp"
#include "size_order.hpp"

namespace gritwright {

namespace {

constexpr double loosest_packing = 0.05, densest_packing = 0.97;
constexpr double settling_at_most = 0.5;
constexpr double perched_saturation = 0.9;

/// A place for each of the draws.
using Row = std::array<double, draws_abreast>;

/// The curves of a grain's classes by themselves, coarse to fine as size_classes() gives them: a class is a rise of the whole curve.
std::vector<std::vector<GradingPoint>> class_curves(const GrainSizes& sizes) {
  const std::vector<GradingPoint> whole = closed_grading(sizes);
  std::vector<std::vector<GradingPoint>> curves;
  for (std::size_t i = whole.size() - 1; i > 0; --i)
    if (whole[i].passing > whole[i - 1].passing)
      curves.push_back({{whole[i - 1].aperture, Passing(0)}, {whole[i].aperture, Passing(1)}});
  return curves;
}

bool same_pot(const UncertainMix::Pot& a, const UncertainMix::Pot& b) {
  if (a.index() != b.index()) return false;
  if (const auto* geometry = std::get_if<PotGeometry>(&a)) return geometry->container() == std::get<PotGeometry>(b).container();
  return !std::holds_alternative<Depth>(a) || std::get<Depth>(a) == std::get<Depth>(b);
}

/// FactorSpread::at for a row of scores.
Row factors(const FactorSpread& spread, const double* scores) {
  Row row{};
  for (std::size_t i = 0; i < draws_abreast; ++i) row[i] = scores[i] * (scores[i] < 0 ? spread.down : spread.up);
  raise_e<draws_abreast>(row.data());
  return row;
}

/// Adds `weights` times a row to another.
void add_product(const double* row, const Row& weights, double* to) {
  for (std::size_t i = 0; i < draws_abreast; ++i) to[i] += weights[i] * row[i];
}

double share_at_most_one(double value) { return std::min(1.0, value); }

}  // namespace

struct UncertainMix::Chain::Sums {
  double loose_l = 0;
  Row mass_g{}, envelope_l{}, pores_l{}, open_l{}, water_l{}, solid_l{}, exchange_meq{}, largest_l{};
};

UncertainMix::Chain::Chain(Mix mix, MixSpread spread, Pot pot) : mix_(std::move(mix)), spread_(std::move(spread)), pot_(std::move(pot)) {
  describe_mix();
  describe_pot();
}

UncertainMix::Chain::Chain(Mix mix, MixSpread spread, Pot pot, const Chain& other) : mix_(std::move(mix)), spread_(std::move(spread)), pot_(std::move(pot)) {
  describe_mix();
  if (mix_.water.n == other.mix_.water.n) by_head_ = other.by_head_;
  // What a bottom layer of the pot makes of it hangs on all constants.
  if (mix_.water == other.mix_.water && same_pot(pot_, other.pot_)) body_ = other.body_;
  describe_pot();
}

UncertainMix::Chain::Workspace::Workspace(const Chain& chain)
    : scores_(chain.dimensions() * draws_abreast), columns_(chain.columns() * draws_abreast), mass_(chain.components() * draws_abreast), envelope_(mass_.size()),
      class_envelope_(chain.class_sizes_.size() * draws_abreast), class_volume_(class_envelope_.size()), mass_finer_(chain.curve_sizes_.size() * draws_abreast),
      envelope_finer_(mass_finer_.size()), shares_finer_(chain.curve_sizes_.size()) {
  std::size_t most = 0;
  for (const Grain& grain : chain.grains_) most = std::max(most, grain.classes->size());
  own_.resize(most * draws_abreast);
}

bool UncertainMix::Chain::defined(MixFigure figure) const {
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

void UncertainMix::Chain::describe_mix() {
  gather_sizes();
  for (std::size_t k = 0; k < mix_.components.size(); ++k) describe(k);
}

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
    for (std::size_t c = 0; c < curves.size(); ++c) {
      double before = 0;
      for (std::size_t i = 0; i < curve_sizes_.size(); ++i) {
        const bool head_of_step = i > 0 && curve_sizes_[i] == curve_sizes_[i - 1];
        const bool foot_of_step = i + 1 < curve_sizes_.size() && curve_sizes_[i] == curve_sizes_[i + 1];
        const double finer = foot_of_step && !head_of_step ? share_finer(curves[c], curve_sizes_[i]) : share_passing(curves[c], curve_sizes_[i]);
        if (finer > before) grain.rises.push_back({c, i, finer - before});
        before = finer;
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
    for (std::size_t i = 0; i < heights; ++i) height_log_head_[i] = std::log(depth_cm_ * static_cast<double>(i) / (heights - 1));
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
    height_log_head_[i] = std::log(std::max(0.0, bottom_head_cm_ + (height - bottom_cm_) * cosine_ + across_cm / 2 * std::sin(tilt)));
  }
}

RetentionConstants UncertainMix::Chain::constants(const RetentionScores& scores) const {
  return spread_.belief ? constants_at(*spread_.belief, spread_.retention, scores) : constants_at(mix_.water, spread_.retention, scores);
}

void UncertainMix::Chain::add_grain(std::size_t k, Detail detail, const double* grain_fill, Workspace& work, Sums& sums) const {
  const Grain& grain = grains_[k];
  const ComponentSpread& spread = spread_.components[k];
  const auto scores = [&](std::size_t score) { return work.scores_.data() + (grain.first_score + score) * draws_abreast; };
  Row bulk_g_l = factors(spread.bulk_density, scores(bulk)), mass{};
  for (std::size_t i = 0; i < draws_abreast; ++i) {
    bulk_g_l[i] *= grain.bulk_g_l;
    mass[i] = grain.parts * bulk_g_l[i];
    sums.mass_g[i] += mass[i];
    sums.exchange_meq[i] += mass[i] * grain.exchange / 100;
  }
  sums.loose_l += grain.parts;
  std::ranges::copy(mass, work.mass_.begin() + static_cast<std::ptrdiff_t>(k * draws_abreast));
  double* const own = work.own_.data();
  grain.classes->draw_abreast(scores(first_class), scores(operators), scores(lost), own);

  if (has_volumes_) {
    const double nominal_g_l = grain.bulk_g_l / grain.packing;
    const bool solid_known = grain.skeletal_g_l.has_value();
    Row particle_g_l = factors(spread.particle_density, scores(particle)), inverse_skeletal{};
    for (std::size_t i = 0; i < draws_abreast; ++i)
      particle_g_l[i] = spread.particle_by_packing ? bulk_g_l[i] / (grain.packing * particle_g_l[i]) : nominal_g_l * particle_g_l[i];
    if (solid_known) {
      const Row factor = factors(spread.skeletal_density, scores(skeletal));
      for (std::size_t i = 0; i < draws_abreast; ++i) {
        const double skeletal_g_l = *grain.skeletal_g_l * factor[i];
        particle_g_l[i] = std::min(particle_g_l[i], skeletal_g_l);
        inverse_skeletal[i] = 1 / skeletal_g_l;
      }
    }
    Row grain_l{}, volume{}, inner{}, open_pores{}, held{};
    for (std::size_t i = 0; i < draws_abreast; ++i) {
      const double packing = std::clamp(bulk_g_l[i] / particle_g_l[i], loosest_packing, densest_packing);
      grain_l[i] = grain.parts * packing;
      volume[i] = 1 / packing;
      inner[i] = solid_known ? std::max(0.0, 1 - particle_g_l[i] * inverse_skeletal[i]) : 0;
      open_pores[i] = std::clamp(grain.open_share + spread.open_share * scores(open)[i], 0.0, 1.0) * inner[i];
      held[i] = open_pores[i] * grain_fill[i];
    }
    if (grain.absorption) {
      const Row factor = factors(spread.water_absorption, scores(absorption));
      for (std::size_t i = 0; i < draws_abreast; ++i) {
        held[i] = *grain.absorption * factor[i] * particle_g_l[i] / 1000;
        if (solid_known) held[i] = std::min(held[i], inner[i]);
        open_pores[i] = std::max(open_pores[i], held[i]);
      }
    }
    for (std::size_t i = 0; i < draws_abreast; ++i) {
      sums.envelope_l[i] += grain_l[i];
      sums.largest_l[i] = std::max(sums.largest_l[i], grain_l[i]);
      sums.pores_l[i] += grain_l[i] * std::max(inner[i], open_pores[i]);
      sums.open_l[i] += grain_l[i] * open_pores[i];
      sums.water_l[i] += grain_l[i] * held[i];
      sums.solid_l[i] += solid_known ? mass[i] * inverse_skeletal[i] : grain_l[i];
    }
    std::ranges::copy(grain_l, work.envelope_.begin() + static_cast<std::ptrdiff_t>(k * draws_abreast));
    Row class_volume{};
    grain.kernel->class_volumes(own, volume.data(), class_volume.data());
    double* const beta = work.columns_.data() + (betas_at() + k) * draws_abreast;
    Row loose_l{};
    for (std::size_t i = 0; i < draws_abreast; ++i) {
      beta[i] = 1 / class_volume[i];
      loose_l[i] = grain_l[i] * class_volume[i];
    }
    for (std::size_t c = 0; c < grain.class_at.size(); ++c) {
      add_product(own + c * draws_abreast, grain_l, work.class_envelope_.data() + grain.class_at[c] * draws_abreast);
      add_product(own + c * draws_abreast, loose_l, work.class_volume_.data() + grain.class_at[c] * draws_abreast);
    }
    for (const Rise& rise : grain.rises) {
      Row weights = grain_l;
      for (double& weight : weights) weight *= rise.share;
      add_product(own + rise.size_class * draws_abreast, weights, work.envelope_finer_.data() + rise.point * draws_abreast);
    }
  }
  if (detail != Detail::lists) return;
  for (const Rise& rise : grain.rises) {
    Row weights = mass;
    for (double& weight : weights) weight *= rise.share;
    add_product(own + rise.size_class * draws_abreast, weights, work.mass_finer_.data() + rise.point * draws_abreast);
  }
}

namespace {

/// From what lies between a point and the one before it to the share finer than each, of `whole`.
void add_up_shares(std::vector<double>& rows, const Row& whole) {
  Row sum{}, per{};
  for (std::size_t i = 0; i < draws_abreast; ++i) per[i] = 1 / whole[i];
  for (std::size_t first = 0; first < rows.size(); first += draws_abreast) {
    for (std::size_t i = 0; i < draws_abreast; ++i) {
      sum[i] += rows[first + i];
      rows[first + i] = share_at_most_one(sum[i] * per[i]);
    }
  }
}

}  // namespace

void UncertainMix::Chain::draw(std::span<const double> points, Detail detail, Workspace& work) const {
  const bool all = detail == Detail::lists;
  const std::size_t given = points.size() / dimensions_;
  for (std::size_t i = 0; i < draws_abreast; ++i) {
    // Where there are fewer draws, the last of them fills up the rows.
    const double* const point = points.data() + std::min(i, given - 1) * dimensions_;
    for (std::size_t axis = 0; axis < dimensions_; ++axis) work.scores_[axis * draws_abreast + i] = point[axis];
  }
  const auto z = [&](std::size_t axis) { return work.scores_.data() + axis * draws_abreast; };
  std::array<RetentionConstants, draws_abreast> water;
  Row grain_fill{};
  for (std::size_t i = 0; i < draws_abreast; ++i) {
    water[i] = constants({z(capillary)[i], z(fill)[i], z(flooded)[i], z(residual)[i]});
    grain_fill[i] = water[i].grain_fill;
  }
  for (auto* rows : {&work.mass_, &work.envelope_, &work.class_envelope_, &work.class_volume_, &work.mass_finer_, &work.envelope_finer_}) std::ranges::fill(*rows, 0.0);
  Sums sums;
  for (std::size_t k = 0; k < components(); ++k)
    if (grains_[k].parts > 0) add_grain(k, detail, grain_fill.data(), work, sums);

  const auto column = [&](std::size_t at) { return work.columns_.data() + at * draws_abreast; };
  const auto shares_of = [&](const std::vector<double>& rows, std::size_t row, const Row& whole, std::size_t to) {
    for (std::size_t i = 0; i < draws_abreast; ++i) column(to)[i] = rows[row * draws_abreast + i] / whole[i];
  };
  if (all) {
    add_up_shares(work.mass_finer_, sums.mass_g);
    for (std::size_t k = 0; k < components(); ++k) shares_of(work.mass_, k, sums.mass_g, mass_shares_at() + k);
    for (std::size_t s = 0; s < sieves(); ++s) std::copy_n(work.mass_finer_.data() + sieve_points_[s] * draws_abreast, draws_abreast, column(passing_at() + s));
  }
  Row foretold{};
  if (has_volumes_) {
    Row per{};
    for (std::size_t i = 0; i < draws_abreast; ++i) per[i] = 1 / sums.envelope_l[i];
    for (auto* rows : {&work.class_envelope_, &work.class_volume_})
      for (std::size_t first = 0; first < rows->size(); first += draws_abreast)
        for (std::size_t i = 0; i < draws_abreast; ++i) (*rows)[first + i] *= per[i];
    kernel_->specific_volumes(work.class_envelope_.data(), work.class_volume_.data(), foretold.data());
    add_up_shares(work.envelope_finer_, sums.envelope_l);
  }
  if (all && has_volumes_) {
    for (std::size_t k = 0; k < components(); ++k) shares_of(work.envelope_, k, sums.envelope_l, envelope_shares_at() + k);
    for (std::size_t s = 0; s < sieves(); ++s)
      std::copy_n(work.envelope_finer_.data() + sieve_points_[s] * draws_abreast, draws_abreast, column(envelope_passing_at() + s));
  }
  const Row settling_factor = factors(spread_.settling, z(settle));
  for (std::size_t i = 0; i < given; ++i) {
    const auto put = [&](MixFigure figure, double value) { column(at(figure))[i] = value; };
    PotFactors lengths;
    if (const auto* pot = std::get_if<PotGeometry>(&pot_)) lengths = pot_factors(*pot, spread_.pot, {z(length)[i], z(width)[i], z(depth)[i]});
    if (std::holds_alternative<Depth>(pot_)) lengths.depth = std::max(0.1, 1 + spread_.pot.length_cm * z(depth)[i] / depth_cm_);
    const double settling = std::min(settling_at_most, counted_settling(mix_).value() * settling_factor[i]);
    const double main_l = main_volume_ml_ * lengths.volume / 1000, mixed_l = main_l / ((1 - settling) * (1 - counted_spill(mix_).value()));
    put(MixFigure::pot_volume_ml, volume_ml_ * lengths.volume);
    put(MixFigure::depth_cm, depth_cm_ * lengths.depth);
    put(MixFigure::mixed_l, mixed_l);
    if (!has_volumes_) continue;

    const double envelope_l = sums.envelope_l[i], mass_g = sums.mass_g[i];
    // One component alone has its own measured packing: the model's error grows as the mix becomes one.
    const double mixedness = std::min(1.0, 2 * (1 - sums.largest_l[i] / envelope_l));
    const double packing = std::clamp(1 / foretold[i] - spread_.packing_voids * mixedness * z(voids)[i], loosest_packing, densest_packing);
    const double settled = std::min(densest_packing, packing / (1 - settling));
    const double volume_l = envelope_l / packing, per_settled_l = settled / envelope_l;
    const double between = 1 - settled, mass_in_litre_g = mass_g * per_settled_l, grain_water = sums.water_l[i] * per_settled_l;
    put(MixFigure::packing_density, packing);
    put(MixFigure::volume_l, volume_l);
    put(MixFigure::shrinkage, 1 - volume_l / sums.loose_l);
    put(MixFigure::bulk_density_g_l, mass_in_litre_g);
    put(MixFigure::particle_density_g_l, mass_g / envelope_l);
    put(MixFigure::skeletal_density_g_l, mass_g / sums.solid_l[i]);
    put(MixFigure::voids_between_grains, between);
    put(MixFigure::voids_in_grains, sums.pores_l[i] * per_settled_l);
    put(MixFigure::total_porosity, between + sums.pores_l[i] * per_settled_l);
    put(MixFigure::grain_water, grain_water);
    put(MixFigure::cec_meq_l, sums.exchange_meq[i] * per_settled_l);
    if (all)
      for (std::size_t k = 0; k < components(); ++k) column(measure_out_at() + k)[i] = mixed_l * grains_[k].parts / volume_l;
    if (!has_pot()) continue;
    add_water(i, detail, {water[i], lengths.depth, between, grain_water}, work);
    const double capacity = column(at(MixFigure::container_capacity))[i], air = column(at(MixFigure::air_filled_porosity))[i];
    const double total_air = between + sums.open_l[i] * per_settled_l - capacity;
    put(MixFigure::total_air, total_air);
    put(MixFigure::trapped_air, total_air - air);
    put(MixFigure::wet_mass_g, main_l * (mass_in_litre_g + 1000 * capacity));
  }
}

void UncertainMix::Chain::add_water(std::size_t draw, Detail detail, const Wetting& wetting, Workspace& work) const {
  const auto put_at = [&](std::size_t column, double value) { work.columns_[column * draws_abreast + draw] = value; };
  const auto put = [&](MixFigure figure, double value) { put_at(at(figure), value); };
  for (std::size_t i = 0; i < work.shares_finer_.size(); ++i) work.shares_finer_[i] = work.envelope_finer_[i * draws_abreast + draw];
  const RetentionConstants& water = wetting.water;
  const SizeRuns sizes(curve_log_mm_, work.shares_finer_, water.spread, mix_.water.n);
  const double saturated = water.flooded_fill * wetting.between;
  const double dry = std::min(water.residual, saturated);
  const auto theta = [&](double saturation) { return dry + (saturated - dry) * saturation + wetting.grain_water; };
  // A pot that is deeper by a factor is the same pot with a capillary constant smaller by it.
  const double capacity = theta(body_->mean(sizes, water.k_cm_mm / wetting.depth_factor));
  const double theta_0 = saturated + wetting.grain_water;
  put(MixFigure::container_capacity, capacity);
  put(MixFigure::air_filled_porosity, theta_0 - capacity);
  put(MixFigure::theta_0, theta_0);
  if (detail == Detail::air_and_water) return;

  const double log_k = std::log(water.k_cm_mm);
  static const std::array suctions{std::log(10.0), std::log(50.0)};
  std::array<double, suctions.size() + heights> log_heads{}, saturations{};
  std::ranges::copy(suctions, log_heads.begin());
  std::size_t count = suctions.size();
  // Heights in standing water are saturated; those above it follow each other upwards.
  std::size_t first_height = 0;
  if (detail == Detail::lists) {
    const double log_depth_factor = std::log(wetting.depth_factor);
    while (first_height < heights && std::isinf(height_log_head_[first_height])) ++first_height;
    for (std::size_t i = first_height; i < heights; ++i) log_heads[count++] = height_log_head_[i] + log_depth_factor;
  }
  std::array<double, suctions.size() + heights> log_ks{};
  for (std::size_t i = 0; i < count; ++i) log_ks[i] = log_k - log_heads[i];
  by_head_->means(sizes, std::span(log_ks).first(count), std::span(saturations).first(count));
  const double theta_10 = theta(saturations[0]), theta_50 = theta(saturations[1]);
  put(MixFigure::theta_10, theta_10);
  put(MixFigure::theta_50, theta_50);
  put(MixFigure::easily_available, theta_10 - theta_50);
  put(MixFigure::available_in_pot, capacity - theta_50);
  if (detail != Detail::lists) return;
  for (std::size_t i = 0; i < heights; ++i) {
    const double held = i < first_height ? theta_0 : theta(saturations[suctions.size() + i - first_height]);
    put_at(heights_at() + i, held);
    put_at(drained_at() + i, theta_0 - held);
  }
  const std::span known_heads = std::span(log_heads).subspan(suctions.size(), count - suctions.size());
  const double rise = perched_cm(sizes, log_k, known_heads, std::span(saturations).subspan(suctions.size(), known_heads.size())) - bottom_head_cm_;
  put_at(perched_at(), rise > 0 ? bottom_cm_ + rise / cosine_ : 0);
}

/// By secants on ln h, from the known heights about it, else from where one size of that mean would have it; the saturation falls smoothly there.
double UncertainMix::Chain::perched_cm(const SizeRuns& sizes, double log_k, std::span<const double> log_heads, std::span<const double> saturations) const {
  const auto excess = [&](double log_head) {
    const double log_k_of_head = log_k - log_head;
    double mean = 0;
    by_head_->means(sizes, {&log_k_of_head, 1}, {&mean, 1});
    return mean - perched_saturation;
  };
  double before = 0, excess_before = 0, here = 0;
  const auto drier = static_cast<std::size_t>(std::ranges::find_if(saturations, [](double each) { return each < perched_saturation; }) - saturations.begin());
  // Of heights far apart one may lie where the saturation hardly changes.
  constexpr double most_apart = 0.4;
  if (drier > 0 && drier + 1 < saturations.size() && saturations[drier - 1] - saturations[drier + 1] < most_apart && saturations[drier + 1] < saturations[drier]) {
    // The parabola through the three heights about it, as ln h by the excess.
    const double lowest = log_heads[drier - 1], middle = log_heads[drier];
    const std::array y{saturations[drier - 1] - perched_saturation, saturations[drier] - perched_saturation, saturations[drier + 1] - perched_saturation};
    const double slope = (middle - lowest) / (y[1] - y[0]), next_slope = (log_heads[drier + 1] - middle) / (y[2] - y[1]);
    const double by_chord = lowest - slope * y[0];
    const double by_parabola = by_chord + (next_slope - slope) / (y[2] - y[0]) * y[0] * y[1];
    before = middle;
    excess_before = y[1];
    here = by_parabola > lowest && by_parabola < middle ? by_parabola : by_chord;
  } else {
    before = std::log(0.6) + log_k - sizes.log_mean();
    excess_before = excess(before);
    // Se falls by about 1.2 per unit of ln h there.
    here = before + std::clamp(0.8 * excess_before, -1.0, 1.0);
  }
  for (int step = 0; step < 20; ++step) {
    const double excess_here = excess(here);
    if (excess_here == excess_before) break;
    const double next = here - std::clamp(excess_here * (here - before) / (excess_here - excess_before), -1.0, 1.0);
    const double left = std::abs((next - here) * (here - before));  // a secant leaves about the product of the last two steps
    before = here, excess_before = excess_here, here = next;
    if (left < 5e-7) break;
  }
  return std::exp(here);
}

}  // namespace gritwright
