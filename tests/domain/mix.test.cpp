#include "gritwright/domain/mix.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <limits>

using namespace gritwright;

namespace {

Component grit(double parts) {
  Component component;
  component.name = "grit";
  component.parts = Parts(parts);
  component.grain.bulk_density = bulk_g_l(1450);
  component.sizes = SingleSize{aperture_mm(4)};
  return component;
}

bool has_problem(const Problems& problems, const std::string& code, const std::string& pointer) {
  return std::ranges::any_of(problems, [&](const Problem& each) { return each.code == code && each.where.pointer == pointer; });
}

}  // namespace

TEST_CASE("A mix with the default water constants has no problems", "[mix][law]") {
  Mix mix;
  mix.components = {grit(1), grit(0)};
  CHECK(check(mix).empty());
}

TEST_CASE("A mix is refused without components or without parts", "[mix][refuses]") {
  Mix mix;
  CHECK(has_problem(check(mix), "mix.no-components", "/components"));
  mix.components = {grit(0), grit(0)};
  CHECK(has_problem(check(mix), "mix.no-parts", "/components"));
}

TEST_CASE("Every problem of a mix is named at its place", "[mix][refuses]") {
  Mix mix;
  mix.components = {grit(1), grit(-2)};
  mix.settling = Settling(1);
  mix.spill = Spill(-0.1);
  mix.water.k_cm_mm = 1;
  mix.water.spread = 1.5;
  mix.water.n = 1;
  mix.water.residual = 1;
  mix.water.flooded_fill = -1;
  mix.water.grain_fill = std::numeric_limits<double>::quiet_NaN();
  const Problems problems = check(mix);
  CHECK(has_problem(problems, "component.parts-negative", "/components/1/parts"));
  CHECK(has_problem(problems, "mix.settling-range", "/settling"));
  CHECK(has_problem(problems, "mix.spill-range", "/spill"));
  for (const char* pointer : {"/water/k_cm_mm", "/water/spread", "/water/n", "/water/residual", "/water/flooded_fill", "/water/grain_fill"})
    CHECK(has_problem(problems, "water.out-of-range", pointer));
  CHECK(problems.size() == 9);
}
