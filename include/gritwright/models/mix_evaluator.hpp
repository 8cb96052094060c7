#pragma once
#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/mix.hpp"
#include "gritwright/models/packing.hpp"
#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/retention.hpp"
#include "gritwright/models/saturation_kernel.hpp"

namespace gritwright {

/// A pot as a search fills it; `layer` is the chain of its bottom layer's grain, where it has one.
struct PotToFill {
  PotGeometry pot;
  std::optional<Retention> layer;
};

/// What many recipes have in common. Preconditions: every check(component) and check(water) is empty, 0 <= settling < 1.
struct EvaluatorSetup {
  std::vector<Component> candidates;  ///< their parts are not read
  RetentionConstants water;
  /// Where tests taught k, f and w of a candidate: one for each; a recipe's are their means by envelope volume, k's the geometric
  /// one. Else empty.
  std::vector<RetentionConstants> learnt;
  Settling settling{};
  std::vector<PotToFill> pots;       ///< a container capacity is worked out for each
  std::vector<Depth> suctions;       ///< a water share is worked out at each
  std::vector<Aperture> apertures;   ///< a passing by mass is worked out at each
};

/// So many parts, by loose volume, of one candidate. A recipe names a candidate once.
struct Dose {
  std::size_t candidate = 0;
  double parts = 0;  ///< > 0
};

/// Figures of one recipe, as search kernels use them: plain numbers with the unit in the name. Shares run 0..1 of the bulk
/// volume, settled, unless said otherwise.
struct RecipeFigures {
  double dry_mass_g = 0;          ///< of the parts as litres
  std::vector<double> passing;    ///< of the mass, one for each aperture

  bool has_volumes = false;       ///< the particle density of every dosed candidate is known; else nothing below is set
  double packing_density = 0;     ///< as poured
  double volume_l = 0;            ///< of the parts as litres, as poured
  double shrinkage = 0;           ///< as poured; negative: swells
  double bulk_density_g_l = 0;
  double voids_between_grains = 0;  ///< 0 or below where the settling leaves no voids; then the water figures mean nothing
  double voids_in_grains = 0;
  double total_porosity = 0;
  double open_porosity = 0;       ///< what water or air can fill
  double flooded = 0;             ///< theta(0)
  std::vector<double> container_capacity;  ///< one for each pot
  std::vector<double> water_at_suction;    ///< one for each suction
  std::optional<double> cation_exchange_meq_l;  ///< empty where a dosed candidate's is unknown
};

/// Works out one recipe after another over the same candidates, with everything that does not depend on the parts done once.
/// Agrees with mix_state() and container_capacity(); differences stay below 1e-7 of the bulk volume. Source: packing.md,
/// water.md.
class MixEvaluator {
 public:
  explicit MixEvaluator(EvaluatorSetup setup);

  /// Room for one evaluation; one for each thread, used again and again.
  class Workspace {
    friend class MixEvaluator;
    std::vector<double> class_shares_;   // of the envelope, by size class
    std::vector<double> class_volumes_;  // that over the class beta
    std::vector<double> finer_;           // share of the envelope finer than each point of the common curve
  };

  /// `figures` is overwritten; its lists keep their room. Precondition: at least one dose, parts > 0.
  void evaluate(std::span<const Dose> doses, Workspace& workspace, RecipeFigures& figures) const;

  [[nodiscard]] std::size_t candidates() const { return grains_.size(); }

 private:
  struct ClassAmount {
    std::size_t size_class;
    double envelope_l;  ///< in one loose litre of the candidate
    double volume_l;    ///< that times 1/beta
  };
  /// A candidate per loose litre.
  struct Grain {
    double mass_g = 0;
    bool has_particle_density = false;
    double envelope_l = 0;
    double pores_l = 0;
    double open_l = 0;
    double water_l = 0;    ///< at the setup's fill of the grains
    double filled_l = 0;   ///< open pores whose water goes by that fill; 0 where the absorption is known
    double log_k_l = 0;    ///< envelope times ln k, and times the fills
    double flooded_l = 0;
    double grain_fill_l = 0;
    std::optional<double> exchange_meq;
    std::vector<ClassAmount> classes;
    std::vector<double> passing_g;  ///< by aperture
    std::vector<double> finer_l;    ///< envelope litres by point of the common curve
  };

  void gather_curve_points();
  void gather_size_classes();
  void describe(const Component& component, Grain& grain) const;

  [[nodiscard]] double specific_volume(std::span<const Dose> doses, double envelope_l, Workspace& workspace) const;
  [[nodiscard]] SizeRuns size_runs(std::span<const Dose> doses, double envelope_l, Workspace& workspace) const;

  EvaluatorSetup setup_;
  std::vector<Aperture> class_sizes_;  ///< coarse to fine
  std::optional<PackingKernel> kernel_;
  std::vector<Aperture> curve_sizes_;  ///< points of all candidates' curves, rising; a step twice
  std::vector<double> curve_log_mm_;
  std::vector<Grain> grains_;
  std::vector<SaturationKernel> pots_;
  std::vector<SaturationKernel> suctions_;
};

}  // namespace gritwright
