#include "bench_evaluation.hpp"

#include <algorithm>
#include <cmath>

#include "gritwright/models/bag_verdict.hpp"
#include "gritwright/models/litres.hpp"
#include "gritwright/models/measured_properties.hpp"
#include "gritwright/models/pot_notes.hpp"
#include "sheet_reader.hpp"
#include "typed_areas.hpp"

namespace gritwright::desktop {

namespace {

/// The grain of a component: the catalogue's typical figures, overridden by what was measured. Empty without a bulk density.
std::optional<GrainProperties> grain_of(const ComponentSheet& sheet, const Catalogue& catalogue, FieldReader& read) {
  std::optional<GrainProperties> grain;
  const Material* const material = catalogue.find(sheet.material.toStdString());
  if (material != nullptr) grain = typical_grain(*material);
  const auto bulk = read.density_g_l(sheet.grain.bulk_density, "/bulk_density_g_l");
  const auto particle = read.density_g_l(sheet.grain.particle_density, "/particle_density_g_l");
  const auto skeletal = read.density_g_l(sheet.grain.skeletal_density, "/skeletal_density_g_l");
  const auto absorption = read.share(sheet.grain.water_absorption, "/water_absorption");
  if (!grain && !bulk) return std::nullopt;
  if (!grain) grain.emplace();
  if (bulk) grain->bulk_density = bulk_g_l(*bulk);
  if (particle) grain->particle_density = particle_g_l(*particle);
  if (skeletal) grain->skeletal_density = skeletal_g_l(*skeletal);
  if (absorption) grain->water_absorption = WaterAbsorption(*absorption);
  if (material != nullptr) grain->provenance = provenance_of(*grain, *material);
  return grain;
}

std::optional<Band> band_of(const BenchState& state, FieldReader& read) {
  const auto from = read.aperture(state.band_from, "/band/from");
  const auto to = read.aperture(state.band_to, "/band/to");
  if (!from || !to) return std::nullopt;
  if (*to <= *from) {
    read.fault("/band/to", {"band.upside-down", {}, {{"from_mm", in_mm(*from)}, {"to_mm", in_mm(*to)}}});
    return std::nullopt;
  }
  return Band{*from, *to};
}

/// What the keys of the two lengths of a section are called for this shape.
const char* first_key(Shape shape) {
  switch (shape) {
    case Shape::round:
    case Shape::drum: return "/diameter_cm";
    case Shape::hexagonal:
    case Shape::octagonal: return "/across_flats_cm";
    default: return "/length_cm";
  }
}

std::optional<Section> section_of(Shape shape, const QString& length, const QString& width, const std::string& place, FieldReader& read) {
  const auto first = read.length(length, place + first_key(shape));
  if (!has_width(shape)) return first ? std::optional(Section{*first, *first}) : std::nullopt;
  const auto second = read.length(width, place + "/width_cm");
  if (first && !second && width.trimmed().isEmpty()) read.missing(place + "/width_cm");
  if (second && !first && length.trimmed().isEmpty()) read.missing(place + "/length_cm");
  return first && second ? std::optional(Section{*first, *second}) : std::nullopt;
}

}  // namespace

std::optional<Container> container_of(const PotSheet& sheet, Faults& faults) {
  const std::size_t before = faults.size();
  FieldReader read(faults);
  Container pot;
  pot.shape = sheet.shape;
  const bool by_areas = sheet.shape == Shape::profile;
  if (by_areas && !sheet.areas.trimmed().isEmpty()) {
    auto areas = parse_areas(sheet.areas);
    for (const Problem& problem : areas.problems()) read.fault("/areas", problem);
    if (areas) pot.areas = std::move(areas).value();
  }
  const auto rim = by_areas ? std::optional(Section{}) : section_of(sheet.shape, sheet.rim_length, sheet.rim_width, "/rim", read);
  if (sheet.shape != Shape::bowl && !by_areas) pot.base = section_of(sheet.shape, sheet.base_length, sheet.base_width, "/base", read);
  if (sheet.shape == Shape::drum) {
    if (const auto middle = read.length(sheet.middle, "/middle/diameter_cm")) pot.middle = Section{*middle, *middle};
  }
  if (sheet.shape == Shape::superellipse) pot.exponent = read.number(sheet.exponent, "/exponent");
  const auto depth = !by_areas ? read.length(sheet.depth, "/depth_cm") : pot.areas.empty() ? std::nullopt : std::optional(pot.areas.back().height.quantity());
  if (const auto freeboard = read.length(sheet.freeboard, "/freeboard_cm")) pot.freeboard = Depth(*freeboard);
  if (const auto fill = read.volume_ml(sheet.water_fill, "/water_fill_ml")) pot.water_fill = PotVolume(*fill);
  if (const auto saucer = read.length(sheet.saucer, "/saucer_cm")) pot.saucer = Depth(*saucer);
  if (const auto wick = read.length(sheet.wick, "/wick_cm")) pot.wick = Depth(*wick);
  if (const auto rise = read.length(sheet.mound_rise, "/mound/rise_cm")) pot.mound = Mound{Depth(*rise), sheet.mound_form};
  if (const auto tilt = read.number(sheet.tilt, "/tilt_deg")) pot.tilt.angle = angle_deg(*tilt);
  pot.tilt.axis = sheet.tilt_axis;
  if (const auto corner = read.length(sheet.corner_radius, "/corner_radius_cm"); corner && sheet.shape == Shape::rectangular) pot.corner_radius = *corner;
  if (const auto fillet = read.length(sheet.fillet_radius, "/fillet_radius_cm"); fillet && sheet.shape != Shape::bowl && !by_areas) pot.fillet_radius = *fillet;
  if (const auto mass = read.number(sheet.mass, "/mass_kg")) pot.mass = mass_kg(*mass);
  if (!rim || !depth || faults.size() > before) return std::nullopt;
  pot.rim = *rim;
  pot.depth = Depth(*depth);
  Problems problems = check(pot);
  // Too few rows say it all; a depth that they don't give is no second fault.
  if (by_areas && pot.areas.size() < 2) std::erase_if(problems, [](const Problem& problem) { return problem.where.pointer != "/areas"; });
  for (const Problem& problem : problems) {
    const bool of_table = by_areas && (problem.where.pointer.starts_with("/areas") || problem.where.pointer == "/depth_cm");
    read.fault(of_table ? "/areas" : problem.where.pointer, problem);
  }
  return problems.empty() ? std::optional(pot) : std::nullopt;
}

namespace {

bool is_left_out(const ComponentSheet& sheet, const ComponentEvaluation& evaluation) {
  if (evaluation.state == SheetState::empty && evaluation.faults.empty() && sheet.material.isEmpty()) return true;
  Faults ignored;
  const auto parts = FieldReader(ignored).number(sheet.parts, "/parts");
  return ignored.empty() && (!parts || *parts == 0);
}

/// The same components in the same proportions: any other mix was not tested.
bool is_same_mix(const std::vector<std::pair<std::string, double>>& tested, const std::vector<Component>& components) {
  if (tested.size() != components.size() || components.empty()) return false;
  const double first = tested.front().second / components.front().parts.value();
  for (std::size_t i = 0; i < components.size(); ++i) {
    const auto& [name, parts] = tested[i];
    if (name != components[i].name || std::abs(parts / components[i].parts.value() - first) > 1e-6 * first) return false;
  }
  return true;
}

/// What is typed or kept is as written, not as computed.
bool as_written(double a, double b) { return std::abs(a - b) < 1e-6; }

/// By its own tests, else by what tests of other mixes taught about its materials.
void calibrate_mix(const std::string& name, Mix& mix, BenchEvaluation& evaluation, const std::vector<MixCalibration>& calibrations) {
  LearntConstants learnt = learnt_for(mix, name, calibrations);
  mix.water = learnt.constants;
  evaluation.pot_tests = tests_behind(learnt, calibrations);
  if (auto note = note_of_tests(learnt, calibrations)) evaluation.notes.push_back(*std::move(note));
  if (learnt.own) evaluation.calibration = calibrations[*learnt.own];
  else evaluation.pooled = std::move(learnt.pooled);
}

/// As typed; else by a jug of the mix itself, by jugs of its grains, or as usual.
void evaluate_settling(const BenchState& state, BenchEvaluation& evaluation, FieldReader& read, const RecordKnowledge& known) {
  std::vector<Component> components;
  std::vector<GrainSettling> grains;
  std::vector<std::string> bags;
  for (std::size_t i = 0; i < evaluation.components.size(); ++i) {
    const auto& component = evaluation.components[i].component;
    if (!component || !(component->parts.value() > 0)) continue;
    components.push_back(*component);
    const auto grain = known.grains.find(state.components[i].bag);
    grains.push_back({loose_l(component->parts.value()), grain != known.grains.end() ? grain->second.settling : std::nullopt});
    if (grains.back().measured) bags.push_back(grain->second.bag);
  }
  const auto jug = std::ranges::find_if(known.settlings, [&](const MixSettling& one) { return is_same_mix(one.parts, components); });
  const auto typed = read.share(state.settling, "/settling");
  const auto by_grains = settling_of_grains(grains, default_settling(Placing::worked_in));
  // A kept mix that is laid on the bench again has what its jugs said as if it were typed.
  const auto stands = [&](Settling measured) { return !typed || as_written(*typed, measured.value()); };
  if (jug != known.settlings.end() && stands(jug->settling)) {
    evaluation.settled_by = SettledBy::jug;
    evaluation.settling = jug->settling;
    evaluation.notes.push_back({"mix.settling-by-jug", Level::note, "", {{"mix", jug->mix}, {"percent", 100 * jug->settling.value()}}});
  } else if (by_grains && stands(*by_grains)) {
    evaluation.settled_by = bags.size() == grains.size() ? SettledBy::grains : SettledBy::usual;
    evaluation.settling = *by_grains;
    evaluation.notes.push_back({"mix.settling-by-grains", Level::note, "", {{"bags", joined_names(bags)}, {"percent", 100 * by_grains->value()}}});
  } else if (typed) {
    evaluation.settled_by = SettledBy::typed;
    evaluation.settling = Settling(*typed);
  }
}

/// What a loose litre of each costs by the bag it comes from. The currency they share; empty where they have several.
std::optional<std::string> read_prices(const BenchState& state, const RecordKnowledge& known, BenchEvaluation& evaluation) {
  std::optional<std::string> currency;
  bool one_currency = true;
  for (const std::size_t i : evaluation.mixed) {
    const auto grain = known.grains.find(state.components[i].bag);
    const auto price = grain != known.grains.end() ? grain->second.price_per_l : std::nullopt;
    evaluation.prices.push_back(price ? std::optional(PricePerLitre(price->amount)) : std::nullopt);
    if (!price) continue;
    // Without a word for it a price is in the currency of the others.
    one_currency = one_currency && (!currency || currency->empty() || price->currency.empty() || *currency == price->currency);
    if (!currency || currency->empty()) currency = price->currency;
  }
  return one_currency ? currency : std::nullopt;
}

void evaluate_mix(const BenchState& state, BenchEvaluation& evaluation, FieldReader& read, const RecordKnowledge& known) {
  Mix mix;
  for (std::size_t i = 0; i < evaluation.components.size(); ++i) {
    const auto& component = evaluation.components[i].component;
    // A mix without one that is still faulty or unfinished would be another mix; one with no parts is left out on purpose.
    if (!component && !is_left_out(state.components[i], evaluation.components[i])) return;
    if (!component || component->parts.value() == 0) continue;
    mix.components.push_back(*component);
    evaluation.mixed.push_back(i);
    const auto grain = known.grains.find(state.components[i].bag);
    evaluation.crumbling.push_back(grain != known.grains.end() ? grain->second.crumbling : std::nullopt);
  }
  const std::optional<std::string> currency = read_prices(state, known, evaluation);
  mix.settling = evaluation.settling;
  if (const auto spill = read.share(state.spill, "/spill")) mix.spill = Spill(*spill);
  if (mix.components.empty() || !evaluation.faults.empty()) return;
  calibrate_mix(state.mix_name.trimmed().toStdString(), mix, evaluation, known.calibrations);
  auto mixed = mix_state(mix);
  for (const Problem& problem : mixed.problems()) read.fault(problem.where.pointer, problem);
  if (!mixed) return;
  evaluation.mix = mix;
  append(evaluation.notes, mixed->notes);
  evaluation.mix_grading = Grading{mixed->passing, {}, {}};
  evaluation.mix_state = std::move(mixed).value();
  const auto price = currency ? price_per_mixed_l(*evaluation.mix_state, evaluation.prices) : std::nullopt;
  if (price) evaluation.price_per_l = Price{price->value(), *currency};
}

void evaluate_pot(BenchEvaluation& evaluation) {
  if (!evaluation.mix_state || !evaluation.pot) return;
  evaluation.water = mix_in_pot(*evaluation.mix_state, evaluation.mix->water, *evaluation.pot);
  if (evaluation.water) append(evaluation.notes, evaluation.water->notes);
  evaluation.to_fill = mixed_volume_to_fill(evaluation.pot->main_mix_volume(), *evaluation.mix);
  evaluation.to_measure_out = component_volumes(*evaluation.to_fill, *evaluation.mix_state);
}

}  // namespace

const Grading* ComponentEvaluation::grading() const {
  if (pooled) return &pooled->grading;
  return analysis ? &analysis->grading : nullptr;
}

MassShare ComponentEvaluation::lost() const {
  if (pooled) return lost_share(*pooled);
  return analysis ? lost_share(*analysis) : MassShare(0);
}

ComponentEvaluation evaluate_component(const ComponentSheet& sheet, const Catalogue& catalogue) {
  ComponentEvaluation evaluation;
  // The sheet's own state must not depend on the grain's figures, so their faults are gathered after it.
  Faults grain_faults;
  FieldReader read_grain(grain_faults);
  const auto grain = grain_of(sheet, catalogue, read_grain);
  SievedDensities densities;
  if (grain) densities = {dry_bulk_density(*grain), grain->particle_density};
  evaluate_sheet(sheet.sheet, densities, evaluation);
  evaluate_replicates(sheet.sheet, densities, evaluation);
  // How large a sample or how full a sieve was is nothing to ask of a prediction.
  if (sheet.sheet.predicted && evaluation.analysis) evaluation.analysis->notes.clear();
  evaluation.faults.merge(grain_faults);
  FieldReader read(evaluation.faults);
  const auto parts = read.number(sheet.parts, "/parts");
  if (!grain) return evaluation;
  Component component;
  component.name = sheet.name.toStdString();
  component.parts = Parts(parts.value_or(0));
  component.grain = *grain;
  if (!sheet.material.isEmpty()) component.material = sheet.material.toStdString();
  if (const Grading* grading = evaluation.grading()) component.sizes = *grading;
  else component.sizes = SingleSize{aperture_mm(1)};  // stands in so that the grain's own figures are checked while sieving
  for (const Problem& problem : check(component)) read.fault(problem.where.pointer, problem);
  if (evaluation.state == SheetState::finished && evaluation.faults.empty()) evaluation.component = component;
  return evaluation;
}

BenchEvaluation evaluate(const BenchState& state, const Catalogue& catalogue, const RecordKnowledge& known) {
  BenchEvaluation evaluation;
  FieldReader read(evaluation.faults);
  for (const ComponentSheet& sheet : state.components) evaluation.components.push_back(evaluate_component(sheet, catalogue));
  evaluate_settling(state, evaluation, read, known);
  evaluate_mix(state, evaluation, read, known);
  evaluation.band = band_of(state, read);
  if (const auto pot = container_of(state.pot, evaluation.faults)) {
    evaluation.pot.emplace(*pot);
    append(evaluation.notes, notes_on_water_fill(*evaluation.pot));
  }
  evaluate_pot(evaluation);
  return evaluation;
}

}  // namespace gritwright::desktop
