#include "record_surroundings.hpp"

#include <algorithm>

#include "gritwright/models/sieve_analysis.hpp"
#include "sheets_from_records.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

constexpr std::size_t most_earlier = 8;  // more curves than these hide each other
constexpr std::size_t most_mixes = 24;

QString with_spaces(const std::string& name) { return to_qt(name).replace(u'_', u' '); }

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

std::optional<ComponentSheet> sheet_of_bag(const OpenWorkbook& workbook, const QString& bag) {
  const auto stored = workbook.find(Id<Bag>{bag.toStdString()});
  if (!stored) return std::nullopt;
  const auto tests = workbook.sieve_tests_of(ref_to(stored->id));
  ComponentSheet component = tests.empty() ? empty_component(bag) : component_of(tests.back().record.test, bag);
  component.name = QStringLiteral("%1 %2").arg(with_spaces(stored->record.material), bag);
  component.bag = bag;
  component.material = to_qt(stored->record.material);
  if (stored->record.bulk_density) component.grain.bulk_density = number_text(in_g_l(*stored->record.bulk_density), 9);
  if (stored->record.particle_density) component.grain.particle_density = number_text(in_g_l(*stored->record.particle_density), 9);
  return component;
}

}  // namespace gritwright::desktop
