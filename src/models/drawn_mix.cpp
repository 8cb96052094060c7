#include "drawn_mix.hpp"

#include <algorithm>
#include <cmath>

#include "gritwright/models/mix_state.hpp"

namespace gritwright {

namespace {

enum DrawnMixScore { capillary_score, flooded_score, fill_score, voids_score, settle_score, residual_score, first_grain_score };
enum DrawnScore { bulk_score, particle_score, skeletal_score, open_score, absorption_score, grain_operators_score, grain_lost_score, first_grain_class };

// As in UncertainMix: grain can't pack beyond these.
constexpr double drawn_packing_most = 0.97;
constexpr double drawn_settling_most = 0.5;

}  // namespace

DrawnMix::DrawnMix(Mix mix, MixSpread spread) : mix_(std::move(mix)), spread_(std::move(spread)), dimensions_(first_grain_score) {
  for (std::size_t k = 0; k < mix_.components.size(); ++k) {
    gradings_.emplace_back();
    if (const auto* grading = std::get_if<Grading>(&mix_.components[k].sizes)) gradings_.back().emplace(*grading, spread_.components[k].grading);
    dimensions_ += first_grain_class + (gradings_.back() ? gradings_.back()->classes() : 0);
  }
}

Mix DrawnMix::draw(std::span<const double> scores) {
  Mix drawn = mix_;
  const RetentionScores water{scores[capillary_score], scores[fill_score], scores[flooded_score], scores[residual_score]};
  drawn.water = spread_.belief ? constants_at(*spread_.belief, spread_.retention, water) : constants_at(mix_.water, spread_.retention, water);
  drawn.settling = Settling(std::min(drawn_settling_most, counted_settling(mix_).value() * spread_.settling.at(scores[settle_score])));
  std::size_t at = first_grain_score;
  for (std::size_t k = 0; k < mix_.components.size(); ++k) {
    const ComponentSpread& spread = spread_.components[k];
    const auto score = scores.subspan(at);
    const std::size_t classes = gradings_[k] ? gradings_[k]->classes() : 0;
    GrainProperties& grain = drawn.components[k].grain;
    const GrainProperties& given = mix_.components[k].grain;
    const double bulk_g_per_l = in_g_l(dry_bulk_density(given)) * spread.bulk_density.at(score[bulk_score]);
    grain.bulk_density = bulk_g_l(bulk_g_per_l);
    grain.bulk_moisture = Moisture{};
    if (given.skeletal_density) grain.skeletal_density = *given.skeletal_density * spread.skeletal_density.at(score[skeletal_score]);
    if (given.particle_density) {
      const double packing = own_packing_density(given)->value();
      const double factor = spread.particle_density.at(score[particle_score]);
      double particle_g_per_l = spread.particle_by_packing ? bulk_g_per_l / (packing * factor) : in_g_l(*given.particle_density) * factor;
      if (grain.skeletal_density) particle_g_per_l = std::min(particle_g_per_l, in_g_l(*grain.skeletal_density));
      grain.particle_density = particle_g_l(std::max(particle_g_per_l, bulk_g_per_l / drawn_packing_most));
      if (grain.skeletal_density && *grain.skeletal_density < skeletal_g_l(in_g_l(*grain.particle_density)))
        grain.skeletal_density = skeletal_g_l(in_g_l(*grain.particle_density));
    }
    grain.open_share = OpenShare(std::clamp(given.open_share.value() + spread.open_share * score[open_score], 0.0, 1.0));
    if (given.water_absorption) {
      double absorption_kg_kg = given.water_absorption->value() * spread.water_absorption.at(score[absorption_score]);
      if (grain.particle_density && grain.skeletal_density) {
        const double pores = 1 - in_g_l(*grain.particle_density) / in_g_l(*grain.skeletal_density);
        absorption_kg_kg = std::min(absorption_kg_kg, std::max(0.0, pores) * 1000 / in_g_l(*grain.particle_density) * (1 - 1e-12));
      }
      grain.water_absorption = WaterAbsorption(absorption_kg_kg);
    }
    if (gradings_[k]) drawn.components[k].sizes = gradings_[k]->draw({score.subspan(first_grain_class, classes), score[grain_operators_score], score[grain_lost_score]});
    at += first_grain_class + classes;
  }
  return drawn;
}

double DrawnMix::packing_factor(std::span<const double> scores, double packing, double largest_share) const {
  const double mixedness = std::min(1.0, 2 * (1 - largest_share));
  return std::max(0.5, 1 - spread_.packing_voids * mixedness * scores[voids_score] / packing);
}

}  // namespace gritwright
