#include "record_surroundings.hpp"

#include <algorithm>

#include "gritwright/models/sieve_analysis.hpp"
#include "sheets_from_records.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

constexpr std::size_t most_earlier = 8;  // more curves than these hide each other
constexpr std::size_t most_mixes = 24;

std::vector<EarlierTest> earlier_tests(const OpenWorkbook& workbook, const std::string& material, const std::string& but_not) {
  std::vector<EarlierTest> tests;
  ListFilter filter;
  filter.subject = material;
  for (const RecordLine& line : workbook.list(RecordKind::bag, filter)) {
    if (tests.size() == most_earlier) break;
    if (line.sieve_tests == 0 || line.ref.id == but_not) continue;
    const auto stored = workbook.sieve_tests_of(line.ref);
    if (stored.empty()) continue;
    const auto analysis = analyse(stored.back().record.test);
    if (analysis) tests.push_back({to_qt(line.ref.id), to_qt(line.day), analysis->grading});
  }
  return tests;
}

}  // namespace

Surroundings surroundings_of(const OpenWorkbook& workbook, const ComponentSheet& sheet) {
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
  if (!material.empty()) around.earlier = earlier_tests(workbook, material, id);
  for (const auto& set : workbook.all<SieveSet>()) {
    for (const OwnedSieve& sieve : set.record.sieves) around.owned_sieves.push_back(sieve.aperture);
  }
  std::ranges::sort(around.owned_sieves, std::greater<>());
  around.owned_sieves.erase(std::unique(around.owned_sieves.begin(), around.owned_sieves.end()), around.owned_sieves.end());
  return around;
}

std::vector<KeptMix> kept_mixes(const OpenWorkbook& workbook) {
  std::vector<KeptMix> mixes;
  for (auto& stored : workbook.all<MixVersion>()) {
    const QString id = to_qt(stored.id.text);
    mixes.push_back({id, QStringLiteral("%1 %2").arg(id, to_qt(stored.record.mix.name)), std::move(stored.record.mix)});
  }
  std::ranges::reverse(mixes);
  if (mixes.size() > most_mixes) mixes.resize(most_mixes);
  return mixes;
}

std::optional<RecordRef> grain_called(const OpenWorkbook& workbook, const QString& id) {
  for (const RecordKind kind : {RecordKind::bag, RecordKind::fraction}) {
    if (const auto found = workbook.find(RecordRef{kind, id.toStdString()})) return found->ref;
  }
  return std::nullopt;
}

namespace {

constexpr double predicted_sample_g = 100;  // masses then read as percent

void set_densities(ComponentSheet& component, const std::optional<BulkDensity>& bulk, const std::optional<ParticleDensity>& particle) {
  if (bulk) component.grain.bulk_density = number_text(in_g_l(*bulk), 9);
  if (particle) component.grain.particle_density = number_text(in_g_l(*particle), 9);
}

ComponentSheet sheet_of(const Bag& bag, const QString& id, const std::vector<Stored<RecordedSieveTest>>& tests) {
  ComponentSheet component = tests.empty() ? empty_component(id) : component_of(tests.back().record.test, id);
  component.material = to_qt(bag.material);
  set_densities(component, bag.bulk_density, bag.particle_density);
  return component;
}

ComponentSheet sheet_of(const Fraction& fraction, const QString& id, const std::vector<Stored<RecordedSieveTest>>& tests, const std::optional<Bag>& bag) {
  ComponentSheet component = empty_component(id);
  const auto* predicted = fraction.sizes ? std::get_if<Grading>(&*fraction.sizes) : nullptr;
  if (!tests.empty()) component = component_of(tests.back().record.test, id);
  else if (predicted != nullptr && !predicted->points.empty()) component = component_of(test_of(*predicted, mass_g(predicted_sample_g)), id);
  component.material = to_qt(fraction.material);
  if (bag) set_densities(component, bag->bulk_density, bag->particle_density);
  // What was measured on the fraction itself is nearer than what its bag says.
  if (fraction.grain) set_densities(component, fraction.grain->bulk_density, fraction.grain->particle_density);
  else if (fraction.dry_mass && fraction.volume) set_densities(component, *fraction.dry_mass / *fraction.volume, {});
  return component;
}

}  // namespace

std::optional<ComponentSheet> sheet_of_grain(const OpenWorkbook& workbook, const QString& id) {
  const auto ref = grain_called(workbook, id);
  if (!ref) return std::nullopt;
  const auto tests = workbook.sieve_tests_of(*ref);
  ComponentSheet component;
  if (ref->kind == RecordKind::bag) {
    component = sheet_of(workbook.find(Id<Bag>{ref->id})->record, id, tests);
  } else {
    const Fraction fraction = workbook.find(Id<Fraction>{ref->id})->record;
    const auto source = fraction.source.kind == RecordKind::bag ? workbook.find(Id<Bag>{fraction.source.id}) : std::nullopt;
    component = sheet_of(fraction, id, tests, source ? std::optional(source->record) : std::nullopt);
  }
  component.name = QStringLiteral("%1 %2").arg(QString(component.material).replace(u'_', u' '), id);
  component.bag = id;
  return component;
}

ComponentSheet sheet_as_designed(const Component& component) {
  const QString name = to_qt(component.name);
  const auto* grading = std::get_if<Grading>(&component.sizes);
  ComponentSheet sheet = grading != nullptr && grading->points.size() > 1 ? component_of(test_of(*grading, mass_g(predicted_sample_g)), name) : empty_component(name);
  if (component.material) sheet.material = to_qt(*component.material);
  set_densities(sheet, component.grain.bulk_density, component.grain.particle_density);
  return sheet;
}

}  // namespace gritwright::desktop
