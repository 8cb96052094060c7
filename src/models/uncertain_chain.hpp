#pragma once
#include <algorithm>
#include <array>
#include <cstddef>
#include <memory>
#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "draw_lanes.hpp"
#include "draw_slices.hpp"
#include "drawn_classes.hpp"
#include "gritwright/models/mix_ranges.hpp"
#include "gritwright/models/saturation_kernel.hpp"
#include "packing_abreast.hpp"

namespace gritwright {

/// Grading, packing and water of one mix in one pot on bare numbers, draws_abreast draws at a time.
class UncertainMix::Chain {
 public:
  /// Scores that belong to one component, before those of its classes.
  enum ComponentScore { bulk, particle, skeletal, open, absorption, operators, lost, first_class };

  /// Scores of the whole chain, before those of the components: the strongest first, where the sequence is most even.
  enum ChainScore { capillary, flooded, fill, voids, settle, residual, length, width, depth, first_component };

  Chain(Mix mix, MixSpread spread, Pot pot);
  /// Takes over those tables of `other` that hold for its own constants and pot.
  Chain(Mix mix, MixSpread spread, Pot pot, const Chain& other);

  [[nodiscard]] const Mix& mix() const { return mix_; }
  [[nodiscard]] const MixSpread& spread() const { return spread_; }
  [[nodiscard]] const Pot& pot() const { return pot_; }
  [[nodiscard]] std::size_t dimensions() const { return dimensions_; }
  [[nodiscard]] std::size_t components() const { return grains_.size(); }
  [[nodiscard]] std::size_t sieves() const { return sieve_points_.size(); }
  [[nodiscard]] bool has_volumes() const { return has_volumes_; }
  [[nodiscard]] bool height_in_mix(std::size_t height) const { return height_in_mix_[height]; }
  [[nodiscard]] bool has_pot() const { return !std::holds_alternative<std::monostate>(pot_); }
  [[nodiscard]] bool has_container() const { return std::holds_alternative<PotGeometry>(pot_); }
  [[nodiscard]] bool defined(MixFigure figure) const;

  static constexpr std::size_t figure_count = static_cast<std::size_t>(MixFigure::count);
  static constexpr std::size_t heights = 11;

  /// The column of a figure, and where a list of figures begins among the columns.
  [[nodiscard]] static constexpr std::size_t at(MixFigure figure) { return static_cast<std::size_t>(figure); }
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

  /// How much of a draw is asked for: air and water of the pot and what leads to them, the other figures too, or the lists as well.
  enum class Detail { air_and_water, figures, lists };

  /// Room for draws_abreast draws: a row of them for each score, and for each column the answers.
  class Workspace {
   public:
    explicit Workspace(const Chain& chain);
    [[nodiscard]] std::span<const double> column(std::size_t column) const { return std::span(columns_).subspan(column * draws_abreast, draws_abreast); }

   private:
    friend class Chain;
    std::vector<double> scores_, columns_;
    std::vector<double> mass_, envelope_, class_envelope_, class_volume_, own_, mass_finer_, envelope_finer_;
    std::vector<double> shares_finer_;  ///< of one draw
  };

  /// Works out up to draws_abreast draws, each a row of dimensions() scores. Of the columns those are filled that are asked for.
  void draw(std::span<const double> points, Detail detail, Workspace& work) const;

  /// Works out a whole sample; `take(first, count, work)` gets it some draws at a time, slices in any order.
  template <class Take>
  void draw_all(Detail detail, const SampleSize& size, const SliceRunner& runner, const Take& take) const {
    over_draws(NormalScores(dimensions_, size.seed), size, runner, [&](std::size_t first, std::size_t last, std::span<const double> points) {
      Workspace work(*this);
      for (std::size_t at = first; at < last; at += draws_abreast) {
        const std::size_t count = std::min(draws_abreast, last - at);
        draw(points.subspan((at - first) * dimensions_, count * dimensions_), detail, work);
        take(at, count, work);
      }
    });
  }

 private:
  /// A share of a class that lies between one point of the curve and the one before it.
  struct Rise {
    std::size_t size_class = 0;
    std::size_t point = 0;
    double share = 0;
  };
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
    std::optional<PackingAbreast> kernel;
    std::vector<std::size_t> class_at;  ///< place among all size classes
    std::vector<Rise> rises;
  };
  /// Sums over the components, a place for each draw.
  struct Sums;
  /// What the water of one draw hangs on, beside its sizes.
  struct Wetting {
    RetentionConstants water;
    double depth_factor = 1;
    double between = 0;
    double grain_water = 0;
  };

  void describe_mix();
  void gather_sizes();
  void describe(std::size_t k);
  void describe_pot();
  void add_grain(std::size_t k, Detail detail, const double* grain_fill, Workspace& work, Sums& sums) const;
  void add_water(std::size_t draw, Detail detail, const Wetting& wetting, Workspace& work) const;
  [[nodiscard]] RetentionConstants constants(const RetentionScores& scores) const;
  /// Of heights that rise and their saturations the ones about it are the start.
  [[nodiscard]] double perched_cm(const SizeRuns& sizes, double log_k, std::span<const double> log_heads, std::span<const double> saturations) const;

  Mix mix_;
  MixSpread spread_;
  Pot pot_;
  std::vector<Aperture> class_sizes_;
  std::optional<PackingAbreast> kernel_;
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
  std::array<double, heights> height_log_head_{};  ///< ln cm; minus infinity where water stands
  std::array<bool, heights> height_in_mix_{};
};

}  // namespace gritwright
