#include "shelf.hpp"

#include <QCoreApplication>
#include <algorithm>
#include <map>
#include <set>

#include "bench_ranges.hpp"
#include "gritwright/models/bag_verdict.hpp"
#include "gritwright/models/litres.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "material_words.hpp"
#include "record_surroundings.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class ShelfText {
  Q_DECLARE_TR_FUNCTIONS(Shelf)
};

constexpr std::size_t most_offered = 60;     // a longer list is not looked through
constexpr std::size_t most_looked_at = 600;  // the newest; older ones with grain left are laid on the bench by hand

/// Litres still kept for reserved mixes, by the grain they come from.
std::map<RecordRef, double> reserved_l(const OpenWorkbook& workbook) {
  std::map<RecordRef, double> reserved;
  std::map<std::string, double> made;
  for (const auto& batch : workbook.all<Batch>()) {
    if (batch.record.mix && batch.record.made) made[batch.record.mix->text] += in_l(*batch.record.made);
  }
  for (const auto& version : workbook.all<MixVersion>()) {
    if (!version.record.reserved) continue;
    const double left = in_l(*version.record.reserved) - made[version.id.text];
    const auto state = mix_state(version.record.mix);
    const auto litres = state && left > 0 ? component_volumes(mixed_l(left), *state) : std::nullopt;
    for (std::size_t i = 0; litres && i < version.record.sources.size(); ++i) {
      if (version.record.sources[i]) reserved[*version.record.sources[i]] += in_l((*litres)[i]);
    }
  }
  return reserved;
}

/// Sieved or predicted as its sheet says, else, for a bag, by its printed size.
std::optional<Component> component_of_grain(const OpenWorkbook& workbook, const Catalogue& catalogue, const RecordRef& ref, ShelfItem& item) {
  const auto sheet = sheet_of_grain(workbook, to_qt(ref.id));
  if (!sheet) return std::nullopt;
  if (const ComponentEvaluation graded = evaluate_component(*sheet, catalogue); graded.component) {
    item.sample = sample_of(graded);
    return graded.component;
  }
  if (ref.kind != RecordKind::bag) return std::nullopt;
  const Bag bag = workbook.find(Id<Bag>{ref.id})->record;
  const Material* const material = catalogue.find(bag.material);
  const auto own_density = bulk_density_of(workbook, ref);
  if (!bag.printed_size || (material == nullptr && !own_density)) return std::nullopt;
  Component component;
  component.name = sheet->name.toStdString();
  if (material != nullptr) component.grain = typical_grain(*material);
  if (own_density) component.grain.bulk_density = *own_density;
  if (bag.particle_density) component.grain.particle_density = bag.particle_density;
  if (material != nullptr) {
    component.grain.provenance = provenance_of(component.grain, *material);
    component.material = bag.material;
  }
  component.sizes = printed_grading(bag.printed_size->from, bag.printed_size->to);
  item.is_printed_size = true;
  return check(component).empty() ? std::optional(component) : std::nullopt;
}

void set_stock(ShelfItem& item, const std::optional<Mass>& dry, const std::optional<BulkDensity>& own_density, const std::map<RecordRef, double>& reserved) {
  if (const auto kept = reserved.find(*item.source); kept != reserved.end()) item.reserved = loose_l(kept->second);
  if (!dry) return;
  const double litres = in_l(loose_volume(*dry, own_density.value_or(dry_bulk_density(item.candidate.component.grain))));
  const double kept = item.reserved ? in_l(*item.reserved) : 0;
  item.candidate.stock = loose_l(std::max(0.0, litres - kept));
}

std::optional<ShelfItem> item_of(const OpenWorkbook& workbook, const Catalogue& catalogue, const RecordRef& ref, const std::map<RecordRef, double>& reserved) {
  ShelfItem item;
  item.key = to_qt(ref_text(ref));
  item.source = ref;
  const auto component = component_of_grain(workbook, catalogue, ref, item);
  if (!component) return std::nullopt;
  item.candidate.component = *component;
  item.candidate.component.parts = Parts(1);
  item.candidate.family = component->material;
  std::optional<Mass> dry = workbook.stock_of(ref);
  if (ref.kind == RecordKind::bag) {
    const Bag bag = workbook.find(Id<Bag>{ref.id})->record;
    if (!dry) dry = dry_mass_received(bag);
    if (const auto price = price_per_usable_l(bag, LooseShare(1))) {
      item.candidate.price = PricePerLitre(price->amount);
      item.currency = price->currency;
    }
  }
  set_stock(item, dry, bulk_density_of(workbook, ref), reserved);
  return item;
}

void add_catalogue(std::vector<ShelfItem>& grain, const Bench& bench) {
  const auto& band = bench.evaluation().band;
  if (!band || !(in_mm(band->from) > 0)) return;
  for (const Material& material : bench.catalogue().materials()) {
    if (!material.particle_density_g_l) continue;
    ShelfItem item;
    item.key = QStringLiteral("material:%1").arg(to_qt(material.name));
    item.candidate.component.name = ShelfText::tr("%1, to buy").arg(material_words(material.name)).toStdString();
    item.candidate.component.parts = Parts(1);
    item.candidate.component.grain = typical_grain(material);
    item.candidate.component.material = material.name;
    item.candidate.component.sizes = printed_grading(band->from, band->to);
    item.candidate.family = material.name;
    item.is_printed_size = true;
    item.taken = false;
    if (check(item.candidate.component).empty()) grain.push_back(std::move(item));
  }
}

}  // namespace

Grading printed_grading(Aperture from, Aperture to) {
  Grading grading;
  grading.points = {{from, Passing(0)}, {to, Passing(1)}};
  return grading;
}

Shelf shelf_of(const OpenWorkbook& workbook, const Catalogue& catalogue) {
  Shelf shelf;
  const auto reserved = reserved_l(workbook);
  for (const RecordKind kind : {RecordKind::bag, RecordKind::fraction, RecordKind::batch}) {
    ListFilter part;
    part.limit = most_looked_at;
    for (const RecordLine& line : workbook.list(kind, part)) {
      if (shelf.grain.size() == most_offered) break;
      // Of a tub only what was left over is there.
      if (kind == RecordKind::batch ? !line.stock || !(*line.stock > Mass{}) : line.stock && !(*line.stock > Mass{})) continue;
      auto item = item_of(workbook, catalogue, line.ref, reserved);
      if (!item) continue;
      // More than can be searched: the newest are taken, the others are for the grower to choose.
      item->taken = shelf.grain.size() < most_candidates;
      shelf.grain.push_back(std::move(*item));
    }
  }
  for (const auto& stored : workbook.all<RecordedContainer>()) {
    if (!stored.record.given_away) shelf.pots.push_back({to_qt(stored.id.text), stored.record.container});
  }
  return shelf;
}

std::vector<ShelfItem> grain_to_choose_from(const Bench& bench, const Shelf& shelf) {
  std::vector<ShelfItem> grain = shelf.grain;
  std::set<std::string> recorded;
  for (const ShelfItem& item : grain) recorded.insert(item.source->id);
  const auto& components = bench.evaluation().components;
  for (std::size_t i = 0; i < components.size(); ++i) {
    if (!components[i].component || recorded.contains(bench.state().components[i].bag.toStdString())) continue;
    ShelfItem item;
    item.key = QStringLiteral("bench:%1").arg(bench.state().components[i].name);
    item.candidate.component = *components[i].component;
    item.sample = sample_of(components[i]);
    item.candidate.component.parts = Parts(1);
    item.candidate.family = components[i].component->material;
    item.taken = shelf.grain.empty();
    grain.push_back(std::move(item));
  }
  add_catalogue(grain, bench);
  return grain;
}

}  // namespace gritwright::desktop
