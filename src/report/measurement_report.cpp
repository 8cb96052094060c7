#include "gritwright/report/measurement_report.hpp"

#include "gritwright/report/quantity_text.hpp"
#include "gritwright/report/text_table.hpp"

namespace gritwright {

namespace {

const char* const by_jug = "docs/science/calibration.md, bulk density by jug";
const char* const by_displacement = "docs/science/calibration.md, particle density by displacement; the form of ASTM C127, from memory";
const char* const crumbling_page = "docs/science/ageing.md, crumble test";

std::string jug_grams(Mass mass) { return figure(in_g(mass), 2) + " g"; }
std::string jug_litres(LooseVolume volume) { return volume_text(in_l(volume), UnitSystem::metric); }

}  // namespace

std::vector<Explanation> explain(const JugReading& reading, const MeasuredBulk& measured) {
  std::vector<std::pair<std::string, std::string>> weighed{{"jug", jug_grams(reading.jug)},
                                                           {"with grain", jug_grams(reading.filled)},
                                                           {"moisture", percent_text(reading.moisture.value())},
                                                           {"volume", jug_litres(reading.volume)}};
  std::vector<Explanation> list{{"bulk_density", "(with grain - jug) / (1 + moisture) / volume", weighed, by_jug}};
  if (!measured.worked_in) return list;
  weighed.back() = {"worked in", jug_litres(*reading.worked_in)};
  list.push_back({"worked_in_density", "(with grain - jug) / (1 + moisture) / volume worked in", weighed, by_jug});
  list.push_back({"settling", "1 - volume worked in / loose volume", {{"loose", jug_litres(reading.volume)}, {"worked in", jug_litres(*reading.worked_in)}}, by_jug});
  return list;
}

std::vector<Explanation> explain(const DisplacementReading& reading, const MeasuredGrain& measured) {
  std::vector<std::pair<std::string, std::string>> weighed{{"soaked, dabbed dry", jug_grams(reading.soaked)},
                                                           {"jug with water", jug_grams(reading.jug_with_water)},
                                                           {"jug with water and grain", jug_grams(reading.jug_with_both)}};
  std::vector<Explanation> list{{"soaked_density", "soaked / displaced water, displaced = jug with water + soaked - jug with both, 1 g is 1 mL", weighed, by_displacement}};
  if (!measured.particle_density) return list;
  weighed.emplace_back("dry", jug_grams(*reading.dry));
  list.push_back({"particle_density", "dry / displaced water, displaced = jug with water + soaked - jug with both, 1 g is 1 mL", weighed, by_displacement});
  for (Explanation& absorption : explain_absorption(reading.soaked, *reading.dry)) list.push_back(std::move(absorption));
  return list;
}

std::vector<Explanation> explain_absorption(Mass soaked, Mass dry) {
  return {{"water_absorption", "(soaked and dabbed dry - dry) / dry", {{"soaked, dabbed dry", jug_grams(soaked)}, {"dry", jug_grams(dry)}},
           "docs/science/calibration.md, absorption; the form of ASTM C127, from memory"}};
}

std::vector<Explanation> explain(const CrumbleTest& test, const CrumbleResult& result, double rounds_in_season) {
  const std::pair<std::string, std::string> rounds{"rounds", figure(test.rounds, 0)};
  return {{"broken", "share of the mass that left its class: 1 - e^-breakages", {rounds}, crumbling_page},
          {"breakages_per_round", "least squares of passing after, by Poisson's law of breakages and fragments (x/L)^modulus",
           {rounds, {"miss", percent_text(result.miss)}}, crumbling_page},
          {"modulus", "of the fragments: finer than x is (x/L)^modulus; the smaller, the dustier", {rounds}, crumbling_page},
          {"breakages_per_season", "breakages per round x rounds in a season", {{"rounds in a season", figure(rounds_in_season, 0)}}, crumbling_page}};
}

std::vector<Explanation> explain_thoroughness(Mass specimen, Mass fallen) {
  return {{"still_passing", "what fell through in one more minute / sample; thorough below 0.5 %",
           {{"fell through", jug_grams(fallen)}, {"sample", jug_grams(specimen)}}, "ASTM C136-19"}};
}

}  // namespace gritwright
