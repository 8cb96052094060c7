#include "gritwright/domain/pot_weighings.hpp"

namespace gritwright {

namespace {

void check_weighings(const PotWeighings& weighed, Problems& problems) {
  const auto below = [&](Mass value, const char* pointer, const char* what, Mass least) {
    problems.push_back(problem_at("pot-test.mass-order", pointer,
                               {{"mass_g", in_g(value)}, {"least_g", in_g(least)}, {"what", std::string(what)}}));
  };
  if (in_g(weighed.tare) < 0) problems.push_back(problem_at("pot-test.mass-negative", "/tare_g", {{"mass_g", in_g(weighed.tare)}}));
  if (!(weighed.dry > weighed.tare)) below(weighed.dry, "/dry_g", "the empty pot", weighed.tare);
  if (weighed.drained && *weighed.drained < weighed.dry) below(*weighed.drained, "/drained_g", "the dry pot", weighed.dry);
  if (!weighed.flooded) return;
  const bool by_drained = weighed.drained && *weighed.drained > weighed.dry;
  const Mass least = by_drained ? *weighed.drained : weighed.dry;
  if (*weighed.flooded < least) below(*weighed.flooded, "/flooded_g", by_drained ? "the drained pot" : "the dry pot", least);
}

void check_poured(const PouredWater& water, Problems& problems) {
  if (in_ml(water.poured) < 0)
    problems.push_back(problem_at("pot-test.volume-negative", "/poured_ml", {{"volume_ml", in_ml(water.poured)}}));
  if (!water.caught) return;
  if (in_ml(*water.caught) < 0)
    problems.push_back(problem_at("pot-test.volume-negative", "/caught_ml", {{"volume_ml", in_ml(*water.caught)}}));
  else if (*water.caught > water.poured)
    problems.push_back(problem_at("pot-test.caught-above-poured", "/caught_ml",
                               {{"caught_ml", in_ml(*water.caught)}, {"poured_ml", in_ml(water.poured)}}));
}

}  // namespace

Problems check(const PotReading& reading) {
  Problems problems;
  if (!(in_ml(reading.volume) > 0))
    problems.push_back(problem_at("pot-test.volume-not-positive", "/volume_ml", {{"volume_ml", in_ml(reading.volume)}}));
  if (const auto* weighed = std::get_if<PotWeighings>(&reading.water))
    check_weighings(*weighed, problems);
  else
    check_poured(std::get<PouredWater>(reading.water), problems);
  return problems;
}

}  // namespace gritwright
