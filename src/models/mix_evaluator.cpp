#include "gritwright/models/mix_evaluator.hpp"

#include <algorithm>
#include <cmath>

#include "gritwright/models/blended_grading.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/pot_water.hpp"
#include "size_order.hpp"

namespace gritwright {

MixEvaluator::MixEvaluator(EvaluatorSetup setup) : setup_(std::move(setup)) {
  gather_size_classes();
  gather_curve_points();
  for (const Component& component : setup_.candidates) describe(component, grains_.emplace_back());
  for (std::size_t k = 0; k < setup_.learnt.size(); ++k) {
    const RetentionConstants& water = setup_.learnt[k];
    grains_[k].log_k_l = grains_[k].envelope_l * std::log(water.k_cm_mm);
    grains_[k].flooded_l = grains_[k].envelope_l * water.flooded_fill;
    grains_[k].grain_fill_l = grains_[k].envelope_l * water.grain_fill;
  }
  for (const PotToFill& each : setup_.pots)
    pots_.push_back(SaturationKernel::for_pot(each.pot, setup_.water.n, each.layer ? &*each.layer : nullptr));
  for (const Depth& suction : setup_.suctions) suctions_.push_back(SaturationKernel::at_head(suction, setup_.water.n));
}

void MixEvaluator::gather_size_classes() {
  std::vector<Aperture> sizes;
  for (const Component& component : setup_.candidates)
    for (const SizeClass& each : size_classes(component.sizes)) sizes.push_back(each.size);
  std::ranges::sort(sizes, std::ranges::greater{});
  for (const Aperture& size : sizes)
    if (class_sizes_.empty() || !equal_sizes(class_sizes_.back(), size)) class_sizes_.push_back(size);
  kernel_.emplace(class_sizes_);
}

void MixEvaluator::gather_curve_points() {
  std::vector<Aperture> steps, sizes;
  for (const Component& component : setup_.candidates) {
    const std::vector<GradingPoint> curve = closed_grading(component.sizes);
    for (std::size_t i = 0; i < curve.size(); ++i) {
      sizes.push_back(curve[i].aperture);
      if (i > 0 && curve[i].aperture == curve[i - 1].aperture) steps.push_back(curve[i].aperture);
    }
  }
  std::ranges::sort(sizes);
  sizes.erase(std::ranges::unique(sizes).begin(), sizes.end());
  for (const Aperture& size : sizes) {
    curve_sizes_.push_back(size);
    if (std::ranges::find(steps, size) != steps.end()) curve_sizes_.push_back(size);
  }
  for (const Aperture& size : curve_sizes_) curve_log_mm_.push_back(log_mm(size));
}

void MixEvaluator::describe(const Component& component, Grain& grain) const {
  const std::vector<GradingPoint> curve = closed_grading(component.sizes);
  grain.mass_g = in_g_l(dry_bulk_density(component.grain));
  for (const Aperture& aperture : setup_.apertures) grain.passing_g.push_back(grain.mass_g * share_passing(curve, aperture));
  if (component.grain.cation_exchange) grain.exchange_meq = grain.mass_g * component.grain.cation_exchange->value() / 100;

  const auto own = own_packing_density(component.grain);
  if (!own) return;
  grain.has_particle_density = true;
  grain.envelope_l = own->value();
  const GrainPores pores = *grain_pores(component.grain, setup_.water.grain_fill);
  grain.pores_l = grain.envelope_l * pores.pores.value();
  grain.open_l = grain.envelope_l * pores.open.value();
  grain.water_l = grain.envelope_l * pores.water.value();
  if (!component.grain.water_absorption) grain.filled_l = grain.open_l;

  const std::vector<SizeClass> classes = size_classes(component.sizes);
  const double beta = class_beta(classes, *own).value();
  for (const SizeClass& each : classes) {
    const auto found = std::ranges::find_if(class_sizes_, [&](const Aperture& size) { return equal_sizes(size, each.size); });
    const double envelope_l = grain.envelope_l * each.share.value();
    grain.classes.push_back({static_cast<std::size_t>(found - class_sizes_.begin()), envelope_l, envelope_l / beta});
  }

  for (std::size_t i = 0; i < curve_sizes_.size(); ++i) {
    const bool head_of_step = i > 0 && curve_sizes_[i] == curve_sizes_[i - 1];
    const double finer = head_of_step ? share_passing(curve, curve_sizes_[i]) : share_finer(curve, curve_sizes_[i]);
    grain.finer_l.push_back(grain.envelope_l * finer);
  }
}

double MixEvaluator::specific_volume(std::span<const Dose> doses, double envelope_l, Workspace& workspace) const {
  workspace.class_shares_.assign(class_sizes_.size(), 0);
  workspace.class_volumes_.assign(class_sizes_.size(), 0);
  for (const Dose& dose : doses) {
    const double share_per_l = dose.parts / envelope_l;
    for (const ClassAmount& amount : grains_[dose.candidate].classes) {
      workspace.class_shares_[amount.size_class] += share_per_l * amount.envelope_l;
      workspace.class_volumes_[amount.size_class] += share_per_l * amount.volume_l;
    }
  }
  return kernel_->specific_volume(workspace.class_shares_, workspace.class_volumes_);
}

SizeRuns MixEvaluator::size_runs(std::span<const Dose> doses, double envelope_l, Workspace& workspace) const {
  const std::size_t points = curve_log_mm_.size();
  workspace.finer_.assign(points, 0);
  for (const Dose& dose : doses) {
    const double* const finer_l = grains_[dose.candidate].finer_l.data();
    const double share_per_l = dose.parts / envelope_l;
    for (std::size_t i = 0; i < points; ++i) workspace.finer_[i] += share_per_l * finer_l[i];
  }
  return {curve_log_mm_, workspace.finer_, setup_.water.spread, setup_.water.n};
}

void MixEvaluator::evaluate(std::span<const Dose> doses, Workspace& workspace, RecipeFigures& figures) const {
  double loose_l = 0, mass_g = 0, envelope_l = 0, pores_l = 0, open_l = 0, water_l = 0, exchange_meq = 0;
  double filled_l = 0, log_k_l = 0, flooded_l = 0, grain_fill_l = 0;
  bool has_volumes = true, exchange_known = true;
  figures.passing.assign(setup_.apertures.size(), 0);
  for (const Dose& dose : doses) {
    const Grain& grain = grains_[dose.candidate];
    loose_l += dose.parts;
    mass_g += dose.parts * grain.mass_g;
    envelope_l += dose.parts * grain.envelope_l;
    pores_l += dose.parts * grain.pores_l;
    open_l += dose.parts * grain.open_l;
    water_l += dose.parts * grain.water_l;
    filled_l += dose.parts * grain.filled_l;
    log_k_l += dose.parts * grain.log_k_l;
    flooded_l += dose.parts * grain.flooded_l;
    grain_fill_l += dose.parts * grain.grain_fill_l;
    has_volumes = has_volumes && grain.has_particle_density;
    exchange_known = exchange_known && grain.exchange_meq;
    if (exchange_known) exchange_meq += dose.parts * *grain.exchange_meq;
    for (std::size_t i = 0; i < figures.passing.size(); ++i) figures.passing[i] += dose.parts * grain.passing_g[i];
  }
  for (double& passing : figures.passing) passing /= mass_g;
  figures.dry_mass_g = mass_g;
  figures.has_volumes = has_volumes;
  if (!has_volumes) return;

  const double volume_l = envelope_l * specific_volume(doses, envelope_l, workspace);
  const double settled_l = volume_l * (1 - setup_.settling.value());
  figures.packing_density = envelope_l / volume_l;
  figures.volume_l = volume_l;
  figures.shrinkage = 1 - volume_l / loose_l;
  figures.bulk_density_g_l = mass_g / settled_l;
  figures.voids_between_grains = 1 - envelope_l / settled_l;
  figures.voids_in_grains = pores_l / settled_l;
  figures.total_porosity = figures.voids_between_grains + figures.voids_in_grains;
  figures.open_porosity = figures.voids_between_grains + open_l / settled_l;
  figures.cation_exchange_meq_l = exchange_known ? std::optional(exchange_meq / settled_l) : std::nullopt;

  double k_cm_mm = setup_.water.k_cm_mm, flooded_fill = setup_.water.flooded_fill;
  if (!setup_.learnt.empty()) {
    k_cm_mm = std::exp(log_k_l / envelope_l);
    flooded_fill = flooded_l / envelope_l;
    water_l += (grain_fill_l / envelope_l - setup_.water.grain_fill) * filled_l;
  }
  const double grain_water = water_l / settled_l;
  const double saturated = flooded_fill * figures.voids_between_grains;
  const double residual = std::min(setup_.water.residual, saturated);
  figures.flooded = saturated + grain_water;
  const auto water = [&](double mean_saturation) { return residual + (saturated - residual) * mean_saturation + grain_water; };
  figures.container_capacity.clear();
  figures.water_at_suction.clear();
  if (pots_.empty() && suctions_.empty()) return;
  const SizeRuns sizes = size_runs(doses, envelope_l, workspace);
  const auto mean = [&](const SaturationKernel& kernel) { return kernel.mean(sizes, k_cm_mm); };
  for (const SaturationKernel& pot : pots_) figures.container_capacity.push_back(water(mean(pot)));
  for (const SaturationKernel& suction : suctions_) figures.water_at_suction.push_back(water(mean(suction)));
}

}  // namespace gritwright
