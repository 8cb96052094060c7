#include "gritwright/models/measured_properties.hpp"

#include <algorithm>
#include <cmath>

namespace gritwright {

namespace {

constexpr double displaced_g_per_ml = 1;
// What grain of the trade shows; outside it the reading is asked about. Our assumptions.
constexpr double least_packing = 0.35, most_packing = 0.75;
constexpr double least_bulk_g_l = 30, most_bulk_g_l = 2000;
constexpr double least_particle_g_l = 100, most_particle_g_l = 2950;
constexpr double most_settling = 0.2;
constexpr double most_absorption = 3;
constexpr double thorough_below = 0.005;

void ask(Notes& notes, const char* code, Facts facts) { notes.push_back({code, Level::warning, "", std::move(facts)}); }

/// Water that grain can't hold: its pores are 1 - rho_e/rho_s of its volume.
void ask_about_pores(Notes& notes, WaterAbsorption absorption, std::optional<ParticleDensity> particle,
                     std::optional<SkeletalDensity> skeletal) {
  if (absorption.value() > most_absorption) ask(notes, "absorption.high", {{"percent", 100 * absorption.value()}});
  if (!particle || !skeletal) return;
  const double held = absorption.value() * in_g_l(*particle) / 1000;
  const double pores = 1 - in_g_l(*particle) / in_g_l(*skeletal);
  if (held > pores) ask(notes, "absorption.above-pores", {{"held_percent", 100 * held}, {"pores_percent", 100 * std::max(0.0, pores)}});
}

/// Voids that loose grain hardly has.
void ask_about_voids(Notes& notes, BulkDensity loose, ParticleDensity particle) {
  const double packing = in_g_l(loose) / in_g_l(particle);
  if (packing < least_packing || packing > most_packing)
    ask(notes, "jug.voids-implausible", {{"voids_percent", 100 * (1 - packing)}, {"density_g_l", in_g_l(particle)}});
}

}  // namespace

Problems check(const JugReading& reading) {
  Problems problems;
  if (!(reading.filled > reading.jug)) problems.push_back({"jug.not-filled", {{}, {}, {}, "/filled_g"}, {}});
  if (!(in_l(reading.volume) > 0)) problems.push_back({"jug.volume-missing", {{}, {}, {}, "/volume_l"}, {}});
  if (reading.worked_in && !(in_l(*reading.worked_in) > 0)) problems.push_back({"jug.volume-missing", {{}, {}, {}, "/worked_in_l"}, {}});
  if (reading.worked_in && *reading.worked_in > reading.volume) problems.push_back({"jug.swells", {{}, {}, {}, "/worked_in_l"}, {}});
  return problems;
}

MeasuredBulk measured_bulk(const JugReading& reading, std::optional<ParticleDensity> particle_density) {
  const Mass dry = (reading.filled - reading.jug) / (1 + reading.moisture.value());
  MeasuredBulk measured;
  measured.loose = dry / reading.volume;
  if (reading.worked_in) {
    measured.worked_in = dry / *reading.worked_in;
    measured.settling = Settling(1 - *reading.worked_in / reading.volume);
    if (measured.settling->value() > most_settling) ask(measured.notes, "jug.settles-much", {{"percent", 100 * measured.settling->value()}});
  }
  const double loose_g_l = in_g_l(measured.loose);
  if (loose_g_l < least_bulk_g_l || loose_g_l > most_bulk_g_l) ask(measured.notes, "jug.density-implausible", {{"density_g_l", loose_g_l}});
  if (particle_density) ask_about_voids(measured.notes, measured.loose, *particle_density);
  return measured;
}

std::optional<Settling> settling_of(BulkDensity loose, BulkDensity worked_in) {
  if (worked_in < loose) return std::nullopt;
  return Settling(1 - loose / worked_in);
}

std::optional<Settling> settling_of_grains(std::span<const GrainSettling> grains, Settling usual) {
  double loose_l = 0, settled_l = 0;
  bool any = false;
  for (const GrainSettling& grain : grains) {
    any = any || grain.measured.has_value();
    loose_l += in_l(grain.loose);
    settled_l += in_l(grain.loose) * (1 - grain.measured.value_or(usual).value());
  }
  if (!any || !(loose_l > 0)) return std::nullopt;
  return Settling(1 - settled_l / loose_l);
}

Problems check(const DisplacementReading& reading) {
  Problems problems;
  const auto wrong = [&](const char* code, const char* pointer) { problems.push_back(problem_at(code, pointer)); };
  if (!(reading.soaked > Mass{})) wrong("displacement.weighs-nothing", "/soaked_g");
  if (!(reading.jug_with_water > Mass{})) wrong("displacement.weighs-nothing", "/jug_with_water_g");
  if (reading.dry && !(*reading.dry > Mass{})) wrong("displacement.weighs-nothing", "/dry_g");
  if (reading.dry && *reading.dry > reading.soaked) wrong("displacement.dry-above-soaked", "/dry_g");
  // Grain pushes its own volume of water over the mark.
  if (!(reading.jug_with_water + reading.soaked > reading.jug_with_both)) wrong("displacement.displaces-nothing", "/jug_with_both_g");
  return problems;
}

MeasuredGrain measured_grain(const DisplacementReading& reading, std::optional<SkeletalDensity> skeletal_density, std::optional<BulkDensity> loose) {
  const double displaced_ml = in_g(reading.jug_with_water + reading.soaked - reading.jug_with_both) / displaced_g_per_ml;
  MeasuredGrain measured;
  measured.soaked_density = particle_g_l(1000 * in_g(reading.soaked) / displaced_ml);
  if (in_g_l(measured.soaked_density) < 1000) ask(measured.notes, "displacement.floats", {{"density_g_l", in_g_l(measured.soaked_density)}});
  if (!reading.dry) return measured;
  measured.particle_density = particle_g_l(1000 * in_g(*reading.dry) / displaced_ml);
  measured.water_absorption = WaterAbsorption((in_g(reading.soaked) - in_g(*reading.dry)) / in_g(*reading.dry));
  const double density_g_l = in_g_l(*measured.particle_density);
  if (density_g_l < least_particle_g_l || density_g_l > most_particle_g_l)
    ask(measured.notes, "displacement.density-implausible", {{"density_g_l", density_g_l}});
  if (skeletal_density && density_g_l > in_g_l(*skeletal_density))
    ask(measured.notes, "displacement.above-solid", {{"density_g_l", density_g_l}, {"solid_g_l", in_g_l(*skeletal_density)}});
  ask_about_pores(measured.notes, *measured.water_absorption, measured.particle_density, skeletal_density);
  if (loose) ask_about_voids(measured.notes, *loose, *measured.particle_density);
  return measured;
}

MeasuredAbsorption measured_absorption(Mass soaked, Mass dry, std::optional<ParticleDensity> particle_density,
                                       std::optional<SkeletalDensity> skeletal_density) {
  MeasuredAbsorption measured{WaterAbsorption((in_g(soaked) - in_g(dry)) / in_g(dry)), {}};
  ask_about_pores(measured.notes, measured.value, particle_density, skeletal_density);
  return measured;
}

RepeatedFigure repeated(double first, double second, double usual) {
  RepeatedFigure figure;
  figure.mean = (first + second) / 2;
  figure.apart = std::abs(first - second) / figure.mean;
  if (figure.apart > usual) ask(figure.notes, "measurement.repeats-differ", {{"percent", 100 * figure.apart}, {"usual_percent", 100 * usual}});
  return figure;
}

SieveThoroughness sieve_thoroughness(Mass specimen, Mass fallen) {
  SieveThoroughness answer;
  answer.still_passing = MassShare(in_g(fallen) / in_g(specimen));
  answer.thorough = answer.still_passing.value() < thorough_below;
  if (!answer.thorough) ask(answer.notes, "sieving.not-thorough", {{"percent", 100 * answer.still_passing.value()}});
  return answer;
}

}  // namespace gritwright
