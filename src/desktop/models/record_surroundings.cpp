#include "record_surroundings.hpp"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <initializer_list>

#include "gritwright/models/measured_properties.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/sieve_analysis.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "bench_evaluation.hpp"
#include "known_mix.hpp"
#include "material_words.hpp"
#include "shelf.hpp"
#include "sheets_from_records.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class SurroundingsText {
  Q_DECLARE_TR_FUNCTIONS(Surroundings)
};

constexpr std::size_t most_earlier = 8;  // more curves than these hide each other
constexpr std::size_t most_mixes = 24;
constexpr std::size_t most_changed_mixes = 3;  // of which is told what an unusual lot would change

std::vector<EarlierTest> earlier_tests(const OpenWorkbook& workbook, const std::string& material, const std::string& but_not, const std::optional<std::string>& until) {
  std::vector<EarlierTest> tests;
  constexpr std::size_t most_looked_at_again = 200;  // untested ones among them
  ListFilter filter;
  filter.subject = material;
  filter.limit = most_looked_at_again;
  filter.to_day = until;
  for (const RecordLine& line : workbook.list(RecordKind::bag, filter)) {
    if (tests.size() == most_earlier) break;
    if (line.sieve_tests == 0 || line.ref.id == but_not) continue;
    const auto stored = workbook.sieve_tests_of(line.ref);
    if (stored.empty()) continue;
    // With the samples beside it, as when it is graded.
    const ComponentEvaluation graded = evaluate_component(component_of(stored, to_qt(line.ref.id)), Catalogue());
    const auto bag = workbook.find(Id<Bag>{line.ref.id});
    if (graded.state == SheetState::finished && graded.grading() != nullptr)
      tests.push_back({to_qt(line.ref.id), to_qt(line.day), *graded.grading(), bag ? bag->record.printed_size : std::nullopt, graded.lost()});
  }
  return tests;
}

std::vector<MixOfMaterial> mixes_of(const OpenWorkbook& workbook, const std::string& material, std::span<const MixCalibration> calibrations) {
  std::vector<MixOfMaterial> mixes;
  ListFilter newest;
  newest.limit = most_mixes;
  for (const RecordLine& line : workbook.list(RecordKind::mix, newest)) {
    const auto stored = workbook.find(Id<MixVersion>{line.ref.id});
    if (!stored) continue;
    const auto& components = stored->record.mix.components;
    const auto found = std::ranges::find(components, std::optional(material), &Component::material);
    if (found == components.end()) continue;
    mixes.push_back({to_qt(line.ref.id), stored->record.mix, static_cast<std::size_t>(found - components.begin())});
    mixes.back().mix.water = known_water(stored->record.mix, calibrations);
    if (mixes.size() == most_changed_mixes) break;
  }
  return mixes;
}

}  // namespace

Surroundings surroundings_of(const OpenWorkbook& workbook, const ComponentSheet& sheet, std::span<const MixCalibration> calibrations) {
  Surroundings around;
  const std::string id = sheet.bag.toStdString();
  if (!id.empty()) {
    if (const auto stored = workbook.find(Id<Bag>{id})) {
      around.bag = stored->record;
      around.stock = workbook.stock_of(ref_to(stored->id));
      if (!around.stock) around.stock = dry_mass_received(stored->record);
    } else {
      around.stock = workbook.stock_of({RecordKind::fraction, id});
    }
  }
  const std::string material = around.bag ? around.bag->material : sheet.material.toStdString();
  if (!material.empty()) {
    // A bag that is graded again is compared with those before it.
    around.earlier = earlier_tests(workbook, material, id, around.bag ? around.bag->received : std::nullopt);
    around.mixes = mixes_of(workbook, material, calibrations);
  }
  for (const auto& set : workbook.all<SieveSet>()) {
    for (const OwnedSieve& sieve : set.record.sieves) around.owned_sieves.push_back(sieve.aperture);
  }
  std::ranges::sort(around.owned_sieves, std::greater<>());
  around.owned_sieves.erase(std::unique(around.owned_sieves.begin(), around.owned_sieves.end()), around.owned_sieves.end());
  return around;
}

std::vector<KeptMix> kept_mixes(const OpenWorkbook& workbook, const Catalogue& catalogue, std::span<const MixCalibration> calibrations) {
  std::vector<KeptMix> mixes;
  ListFilter newest;
  newest.limit = most_mixes;
  for (const RecordLine& line : workbook.list(RecordKind::mix, newest)) {
    const auto stored = workbook.find(Id<MixVersion>{line.ref.id});
    if (!stored) continue;
    const QString id = to_qt(line.ref.id);
    mixes.push_back({id, QStringLiteral("%1 %2").arg(id, to_qt(stored->record.mix.name)), known_mix(workbook, catalogue, stored->record, calibrations)});
  }
  return mixes;
}

std::optional<GrainOfRecord> grain_of_record(const OpenWorkbook& workbook, const QString& id) {
  std::string bag = id.toStdString();
  if (const auto fraction = workbook.find(Id<Fraction>{bag}); fraction && fraction->record.source.kind == RecordKind::bag) bag = fraction->record.source.id;
  const auto stored = workbook.find(Id<Bag>{bag});
  if (!stored) return std::nullopt;
  GrainOfRecord grain{bag, std::nullopt, stored->record.crumbling, std::nullopt};
  const auto& loose = stored->record.bulk_density;
  const auto& worked_in = stored->record.worked_in_density;
  if (loose && worked_in) grain.settling = settling_of(*loose, *worked_in);
  if (id.toStdString() == bag) grain.price_per_l = price_per_usable_l(stored->record, LooseShare(1));
  if (!grain.settling && !grain.crumbling && !grain.price_per_l) return std::nullopt;
  return grain;
}

std::map<QString, GrainOfRecord> grains_of(const OpenWorkbook& workbook, const BenchState& state) {
  std::map<QString, GrainOfRecord> grains;
  for (const ComponentSheet& sheet : state.components) {
    if (sheet.bag.isEmpty()) continue;
    if (auto grain = grain_of_record(workbook, sheet.bag)) grains.emplace(sheet.bag, std::move(*grain));
  }
  return grains;
}

RecordKnowledge knowledge_of(const OpenWorkbook& workbook, const BenchState& state, std::span<const MixCalibration> calibrations) {
  RecordKnowledge known;
  known.calibrations.assign(calibrations.begin(), calibrations.end());
  const std::string name = state.mix_name.trimmed().toStdString();
  for (const auto& stored : workbook.all<MixVersion>()) {
    const auto& settling = stored.record.mix.settling;
    if (!stored.record.settling_measured || !settling || stored.record.mix.name != name) continue;
    MixSettling jug{stored.id.text, {}, *settling};
    for (const Component& component : stored.record.mix.components) jug.parts.emplace_back(component.name, component.parts.value());
    known.settlings.insert(known.settlings.begin(), std::move(jug));
  }
  known.grains = grains_of(workbook, state);
  return known;
}

QStringList known_by(const BenchState& state) {
  QStringList keys{state.mix_name};
  for (const ComponentSheet& sheet : state.components) keys << sheet.bag;
  return keys;
}

namespace {

std::optional<RecordRef> kind_called(const OpenWorkbook& workbook, const QString& id, std::initializer_list<RecordKind> kinds) {
  for (const RecordKind kind : kinds) {
    if (const auto found = workbook.find(RecordRef{kind, id.toStdString()})) return found->ref;
  }
  return std::nullopt;
}

}  // namespace

std::optional<RecordRef> grain_called(const OpenWorkbook& workbook, const QString& id) {
  return kind_called(workbook, id, {RecordKind::bag, RecordKind::fraction, RecordKind::bin, RecordKind::batch});
}

std::optional<RecordRef> gradable_called(const OpenWorkbook& workbook, const QString& id) {
  return kind_called(workbook, id, {RecordKind::bag, RecordKind::fraction, RecordKind::bin, RecordKind::batch, RecordKind::tree, RecordKind::mix});
}

namespace {

constexpr double predicted_sample_g = 100;  // masses then read as percent

QString density_of_record(double g_per_l) { return number_text(g_per_l, 9); }

void set_densities(ComponentSheet& component, const std::optional<BulkDensity>& bulk, const std::optional<ParticleDensity>& particle) {
  if (bulk) component.grain.bulk_density = density_of_record(in_g_l(*bulk));
  if (particle) component.grain.particle_density = density_of_record(in_g_l(*particle));
}

ComponentSheet predicted_component(const Grading& grading, const QString& name) {
  ComponentSheet component = component_of(test_of(grading, mass_g(predicted_sample_g)), name);
  component.sheet.predicted = true;
  return component;
}

ComponentSheet sheet_as_tested(const std::vector<Stored<RecordedSieveTest>>& tests, const QString& id) {
  return tests.empty() ? empty_component(id) : component_of(tests, id);
}

ComponentSheet sheet_of(const Bag& bag, const QString& id, const std::vector<Stored<RecordedSieveTest>>& tests) {
  ComponentSheet component = sheet_as_tested(tests, id);
  component.material = to_qt(bag.material);
  set_densities(component, {}, bag.particle_density);
  if (bag.water_absorption) component.grain.water_absorption = number_text(100 * bag.water_absorption->value(), 6);
  return component;
}

ComponentSheet sheet_of(const OpenWorkbook& workbook, const Fraction& fraction, const QString& id, const std::vector<Stored<RecordedSieveTest>>& tests) {
  const auto bag = fraction.source.kind == RecordKind::bag ? workbook.find(Id<Bag>{fraction.source.id}) : std::nullopt;
  ComponentSheet component = empty_component(id);
  const auto* predicted = fraction.sizes ? std::get_if<Grading>(&*fraction.sizes) : nullptr;
  if (!tests.empty()) component = component_of(tests, id);
  else if (predicted != nullptr && !predicted->points.empty()) component = predicted_component(*predicted, id);
  component.material = to_qt(fraction.material);
  if (bag) set_densities(component, {}, bag->record.particle_density);
  if (bag && bag->record.water_absorption) component.grain.water_absorption = number_text(100 * bag->record.water_absorption->value(), 6);
  // What was measured on the fraction itself is nearer than what its bag says.
  if (fraction.grain) set_densities(component, {}, fraction.grain->particle_density);
  return component;
}

/// What is left of a mix, by its own sieve test or as its mix was designed.
ComponentSheet sheet_of_tub(const OpenWorkbook& workbook, const RecordRef& tub, const std::vector<Stored<RecordedSieveTest>>& tests) {
  const auto batch = workbook.find(Id<Batch>{tub.id});
  const auto stored = batch && batch->record.mix ? workbook.find_even_deleted(ref_to(*batch->record.mix)) : std::nullopt;
  const Mix mix = stored ? std::get<MixVersion>(stored->record).mix : Mix{};
  const auto grain = mix_as_grain(mix);
  const QString name = SurroundingsText::tr("tub %1 of %2").arg(to_qt(tub.id), to_qt(mix.name));
  ComponentSheet component = grain ? sheet_as_designed(*grain, Catalogue()) : empty_component(name);
  if (!tests.empty()) {
    const GrainText known = component.grain;
    component = component_of(tests.back().record.test, name);
    component.grain = known;
  }
  // Its litres are turned into grams by the weight they were booked with.
  set_densities(component, bulk_density_of(workbook, tub), {});
  component.name = name;
  return component;
}

/// A step of one size as a class so narrow that it is one to the eye.
Grading designed_grading(const GrainSizes& sizes) {
  if (const auto* grading = std::get_if<Grading>(&sizes)) return *grading;
  const Aperture size = std::get<SingleSize>(sizes).size;
  constexpr double narrow = 0.001;
  Grading step;
  step.points = {{size * (1 - narrow), Passing(0)}, {size * (1 + narrow), Passing(1)}};
  return step;
}

}  // namespace

std::optional<ComponentSheet> sheet_of_grain(const OpenWorkbook& workbook, const QString& id) {
  const auto ref = gradable_called(workbook, id);
  if (!ref) return std::nullopt;
  const auto tests = workbook.sieve_tests_of(*ref);
  ComponentSheet component;
  if (ref->kind == RecordKind::bag) {
    component = sheet_of(workbook.find(Id<Bag>{ref->id})->record, id, tests);
  } else if (ref->kind == RecordKind::bin) {
    const Bin bin = workbook.find(Id<Bin>{ref->id})->record;
    component = sheet_as_tested(tests, id);
    component.material = to_qt(bin.material);
  } else if (ref->kind == RecordKind::batch) {
    component = sheet_of_tub(workbook, *ref, tests);
    component.bag = id;
    return component;
  } else if (ref->kind != RecordKind::fraction) {
    component = sheet_as_tested(tests, id);
    component.name = ref->kind == RecordKind::tree ? SurroundingsText::tr("used ground of %1").arg(id) : SurroundingsText::tr("mix %1").arg(id);
    component.bag = id;
    return component;
  } else {
    component = sheet_of(workbook, workbook.find(Id<Fraction>{ref->id})->record, id, tests);
  }
  // The litre weight that stock and repotting days go by, so that a litre weighs the same on every page.
  set_densities(component, bulk_density_of(workbook, *ref), {});
  component.name = QStringLiteral("%1 %2").arg(material_words(component.material.toStdString()), id);
  component.bag = id;
  return component;
}

QString litre_weight_text(const OpenWorkbook& workbook, const QString& id) {
  const auto ref = id.isEmpty() ? std::nullopt : grain_called(workbook, id);
  const auto density = ref ? bulk_density_of(workbook, *ref) : std::nullopt;
  return density ? density_of_record(in_g_l(*density)) : QString();
}

ComponentSheet by_printed_size(const OpenWorkbook& workbook, ComponentSheet sheet) {
  const auto bag = workbook.find(Id<Bag>{sheet.bag.toStdString()});
  if (bag && bag->record.printed_size) sheet.sheet = predicted_component(printed_grading(bag->record.printed_size->from, bag->record.printed_size->to), sheet.name).sheet;
  return sheet;
}

ComponentSheet sheet_as_designed(const Component& component, const Catalogue& catalogue) {
  const QString name = to_qt(component.name);
  ComponentSheet sheet = empty_component(name);
  if (const Grading grading = designed_grading(component.sizes); grading.points.size() > 1) sheet = predicted_component(grading, name);
  const Material* const material = component.material ? catalogue.find(*component.material) : nullptr;
  if (component.material) sheet.material = to_qt(*component.material);
  // What is the catalogue's typical figure stays that: typed into the sheet it would pass for measured.
  const GrainProperties typical = material != nullptr ? typical_grain(*material) : GrainProperties{};
  const GrainProperties& grain = component.grain;
  const auto differs = [&](const auto& designed, const auto& usual) { return designed && (material == nullptr || designed != usual); };
  if (material == nullptr || dry_bulk_density(grain) != dry_bulk_density(typical)) sheet.grain.bulk_density = number_text(in_g_l(dry_bulk_density(grain)), 9);
  if (differs(grain.particle_density, typical.particle_density)) sheet.grain.particle_density = number_text(in_g_l(*grain.particle_density), 9);
  if (differs(grain.skeletal_density, typical.skeletal_density)) sheet.grain.skeletal_density = number_text(in_g_l(*grain.skeletal_density), 9);
  if (differs(grain.water_absorption, typical.water_absorption)) sheet.grain.water_absorption = number_text(100 * grain.water_absorption->value(), 9);
  return sheet;
}

}  // namespace gritwright::desktop
