#include "gritwright/models/fraction_packing.hpp"

#include <vector>

#include "gritwright/models/packing.hpp"

namespace gritwright {

FractionPacking fraction_packing(const Grading& bag, std::optional<BulkDensity> bulk_density,
                                 std::optional<ParticleDensity> particle_density) {
  FractionPacking packing;
  PackingDensity beta = assumed_class_beta;
  const bool measured = bulk_density && particle_density && in_g_l(*bulk_density) > 0 &&
                        in_g_l(*bulk_density) < in_g_l(*particle_density);
  if (measured) {
    beta = class_beta(size_classes(bag), PackingDensity(in_g_l(*bulk_density) / in_g_l(*particle_density)));
  } else {
    packing.notes.push_back({"screen.packing-assumed", Level::note, "", {{"packing_density", beta.value()}}});
  }
  packing.of = [beta](const Grading& grading) -> std::optional<PackingDensity> {
    std::vector<PackingClass> classes;
    for (const SizeClass& each : size_classes(grading)) classes.push_back({each.size, each.share, beta});
    if (classes.empty()) return std::nullopt;
    return packing_density(classes);
  };
  return packing;
}

}  // namespace gritwright
