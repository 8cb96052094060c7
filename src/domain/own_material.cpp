#include "gritwright/domain/own_material.hpp"

#include "record_checks.hpp"

namespace gritwright {

Problems check(const OwnMaterial& material) {
  Problems problems;
  check_name(problems, "/name", material.name);
  if (material.grain) append(problems, under(check(*material.grain), "/grain"));
  return problems;
}

}  // namespace gritwright
