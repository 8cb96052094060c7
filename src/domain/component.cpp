#include "gritwright/domain/component.hpp"

namespace gritwright {

BulkDensity dry_bulk_density(const GrainProperties& grain) {
  return grain.bulk_density / (1 + grain.bulk_moisture.value());
}

}  // namespace gritwright
