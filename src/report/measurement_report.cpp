#include "gritwright/report/measurement_report.hpp"

#include "gritwright/report/quantity_text.hpp"
#include "gritwright/report/text_table.hpp"
#include "message_templates.hpp"

namespace gritwright {

namespace {

const char* const by_jug = GRITWRIGHT_TEXT("docs/science/calibration.md, bulk density by jug");
const char* const by_displacement = GRITWRIGHT_TEXT("docs/science/calibration.md, grain density by displacement; the form of ASTM C127, from memory");
const char* const crumbling_page = GRITWRIGHT_TEXT("docs/science/ageing.md, crumble test");

std::string jug_grams(Mass mass) { return figure(in_g(mass), 2) + " g"; }
std::string jug_litres(LooseVolume volume) { return volume_text(in_l(volume), UnitSystem::metric); }

}  // namespace

std::vector<Explanation> explain(const JugReading& reading, const MeasuredBulk& measured) {
  std::vector<std::pair<std::string, std::string>> weighed{{GRITWRIGHT_TEXT("jug"), jug_grams(reading.jug)},
                                                           {GRITWRIGHT_TEXT("with grain"), jug_grams(reading.filled)},
                                                           {GRITWRIGHT_TEXT("moisture"), percent_text(reading.moisture.value())},
                                                           {GRITWRIGHT_TEXT("volume"), jug_litres(reading.volume)}};
  std::vector<Explanation> list{{"bulk_density", GRITWRIGHT_TEXT("(with grain - jug) / (1 + moisture) / volume"), weighed, by_jug}};
  if (!measured.worked_in) return list;
  weighed.back() = {GRITWRIGHT_TEXT("worked in"), jug_litres(*reading.worked_in)};
  list.push_back({"worked_in_density", GRITWRIGHT_TEXT("(with grain - jug) / (1 + moisture) / volume worked in"), weighed, by_jug});
  list.push_back({"settling", GRITWRIGHT_TEXT("1 - volume worked in / loose volume"), {{GRITWRIGHT_TEXT("loose"), jug_litres(reading.volume)}, {GRITWRIGHT_TEXT("worked in"), jug_litres(*reading.worked_in)}}, by_jug});
  return list;
}

std::vector<Explanation> explain(const DisplacementReading& reading, const MeasuredGrain& measured) {
  std::vector<std::pair<std::string, std::string>> weighed{{GRITWRIGHT_TEXT("soaked, dabbed dry"), jug_grams(reading.soaked)},
                                                           {GRITWRIGHT_TEXT("jug with water"), jug_grams(reading.jug_with_water)},
                                                           {GRITWRIGHT_TEXT("jug with water and grain"), jug_grams(reading.jug_with_both)}};
  std::vector<Explanation> list{{"soaked_density", GRITWRIGHT_TEXT("soaked / displaced water, displaced = jug with water + soaked - jug with both, 1 g is 1 mL"), weighed, by_displacement}};
  if (!measured.particle_density) return list;
  weighed.emplace_back(GRITWRIGHT_TEXT("dry"), jug_grams(*reading.dry));
  list.push_back({"particle_density", GRITWRIGHT_TEXT("dry / displaced water, displaced = jug with water + soaked - jug with both, 1 g is 1 mL"), weighed, by_displacement});
  for (Explanation& absorption : explain_absorption(reading.soaked, *reading.dry)) list.push_back(std::move(absorption));
  return list;
}

std::vector<Explanation> explain_absorption(Mass soaked, Mass dry) {
  return {{"water_absorption", GRITWRIGHT_TEXT("(soaked and dabbed dry - dry) / dry"), {{GRITWRIGHT_TEXT("soaked, dabbed dry"), jug_grams(soaked)}, {GRITWRIGHT_TEXT("dry"), jug_grams(dry)}},
           GRITWRIGHT_TEXT("docs/science/calibration.md, absorption; the form of ASTM C127, from memory")}};
}

std::vector<Explanation> explain(const CrumbleTest& test, const CrumbleResult& result, double rounds_in_season) {
  const std::pair<std::string, std::string> rounds{GRITWRIGHT_TEXT("rounds"), figure(test.rounds, 0)};
  return {{"broken", GRITWRIGHT_TEXT("share of the mass that left its class: 1 - e^-breakages"), {rounds}, crumbling_page},
          {"breakages_per_round", GRITWRIGHT_TEXT("least squares of passing after, by Poisson's law of breakages and fragments (x/L)^modulus"),
           {rounds, {GRITWRIGHT_TEXT("miss"), percent_text(result.miss)}}, crumbling_page},
          {"modulus", GRITWRIGHT_TEXT("of the fragments: finer than x is (x/L)^modulus; the smaller, the dustier"), {rounds}, crumbling_page},
          {"breakages_per_season", GRITWRIGHT_TEXT("breakages per round x rounds in a season"), {{GRITWRIGHT_TEXT("rounds in a season"), figure(rounds_in_season, 0)}}, crumbling_page}};
}

std::vector<Explanation> explain_thoroughness(Mass specimen, Mass fallen) {
  return {{"still_passing", GRITWRIGHT_TEXT("what fell through in one more minute / sample; thorough below 0.5 %"),
           {{GRITWRIGHT_TEXT("fell through"), jug_grams(fallen)}, {GRITWRIGHT_TEXT("sample"), jug_grams(specimen)}}, "ASTM C136-19"}};
}

}  // namespace gritwright
