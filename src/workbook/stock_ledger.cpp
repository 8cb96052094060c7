#include "gritwright/workbook/stock_ledger.hpp"

#include <utility>

#include "corrected_receipt.hpp"
#include "inside.hpp"

namespace gritwright {

namespace {

bool goes_away(StockReason reason) {
  return reason == StockReason::screened_out_of || reason == StockReason::used || reason == StockReason::spilt ||
         reason == StockReason::thrown_out;
}

std::string word_of(StockReason reason) {
  switch (reason) {
    case StockReason::received: return "received";
    case StockReason::screened_into: return "screened into";
    case StockReason::screened_out_of: return "screened out of";
    case StockReason::used: return "used";
    case StockReason::returned: return "returned";
    case StockReason::spilt: return "spilt";
    case StockReason::thrown_out: return "thrown out";
    case StockReason::counted: return "counted";
  }
  return {};
}

std::optional<BulkDensity> own_density(const Fraction& fraction) {
  if (fraction.grain) return dry_bulk_density(*fraction.grain);
  if (fraction.dry_mass && fraction.volume) return bulk_g_l(in_g(*fraction.dry_mass) / in_l(*fraction.volume));
  return std::nullopt;
}

std::optional<BulkDensity> tested_density(const OpenWorkbook& workbook, const RecordRef& holder) {
  std::optional<BulkDensity> newest;
  for (const Stored<RecordedSieveTest>& test : workbook.sieve_tests_of(holder))
    if (test.record.test.bulk_density) newest = test.record.test.bulk_density;
  return newest;
}

/// What a tub weighed by the litre when it was put into stock.
std::optional<BulkDensity> booked_density(const OpenWorkbook& workbook, const RecordRef& holder) {
  ListFilter of_holder;
  of_holder.about = holder;
  for (const RecordLine& line : workbook.list(RecordKind::stock_entry, of_holder)) {
    const auto entry = workbook.find(Id<StockEntry>{line.ref.id});
    if (entry && entry->record.holder == holder && entry->record.density_used) return entry->record.density_used;
  }
  return std::nullopt;
}

struct InGrams {
  Mass mass;
  std::optional<LooseVolume> measured;
  std::optional<BulkDensity> density;
};

Result<InGrams> in_grams(const OpenWorkbook& workbook, const RecordRef& holder, const Measured& amount) {
  // dry = weighed / (1 + w)
  if (amount.weighed) return InGrams{*amount.weighed / (1 + amount.moisture.value()), {}, {}};
  if (!amount.by_jug) return Problem{"stock.nothing-measured", {}, {{"id", holder.id}}};
  std::optional<BulkDensity> density = bulk_density_of(workbook, holder);
  if (!density) density = amount.fallback_density;
  if (!density) return Problem{"stock.no-density-known", {}, {{"id", holder.id}}};
  return InGrams{*amount.by_jug * *density, amount.by_jug, density};
}

Edit added(RecordKind kind, Record record) { return {{kind, {}}, 0, std::move(record)}; }

std::string label_of(const StockEntry& entry, const std::string& told) {
  if (!told.empty()) return told;
  std::string label = word_of(entry.reason);
  label.append(": ").append(entry.holder.id);
  return label;
}

std::string with_note(std::string text, const std::string& note) {
  if (!note.empty()) text.append(", ").append(note);
  return text;
}

Result<Applied> enter(OpenWorkbook& workbook, StockEntry entry, const std::string& told) {
  if (Problems problems = check(entry); !problems.empty()) return problems;
  Change change;
  change.label = label_of(entry, told);
  LogEntry log{entry.day, {}, LogSort::event, with_note(change.label, entry.note), {entry.holder}};
  if (entry.other) log.about.push_back(*entry.other);
  change.log = std::move(log);
  change.edits.push_back(added(RecordKind::stock_entry, std::move(entry)));
  return workbook.apply(std::move(change));
}

std::string two_digits(long number) {
  std::string text(number < 10 ? "0" : "");
  text += std::to_string(number);
  return text;
}

Problem not_there(const RecordRef& ref) {
  return {"workbook.not-there", {}, {{"kind", std::string(kind_name(ref.kind))}, {"id", ref.id}}};
}

}  // namespace

std::optional<BulkDensity> bulk_density_of(const OpenWorkbook& workbook, const RecordRef& holder) {
  const auto weight = litre_weight_of(workbook, holder);
  return weight ? std::optional(weight->value) : std::nullopt;
}

std::optional<LitreWeight> litre_weight_of(const OpenWorkbook& workbook, const RecordRef& holder) {
  const auto own = [](const std::optional<BulkDensity>& value) { return value ? std::optional(LitreWeight{*value}) : std::nullopt; };
  const auto found = workbook.find(holder);
  if (!found) return std::nullopt;
  std::optional<BulkDensity> density;
  if (const auto* bag = std::get_if<Bag>(&found->record)) {
    if (bag->bulk_density) return own(bag->bulk_density);
    density = tested_density(workbook, holder);
    return own(density ? density : bulk_density_received(*bag));
  }
  if (const auto* fraction = std::get_if<Fraction>(&found->record)) density = own_density(*fraction);
  if (const auto* bin = std::get_if<Bin>(&found->record)) density = bin->bulk_density;
  if (std::holds_alternative<Batch>(found->record)) density = booked_density(workbook, holder);
  if (!density) density = tested_density(workbook, holder);
  const auto* fraction = std::get_if<Fraction>(&found->record);
  if (density || fraction == nullptr || fraction->source.kind != RecordKind::bag) return own(density);
  const auto of_bag = bulk_density_of(workbook, fraction->source);
  if (!of_bag) return std::nullopt;
  if (!fraction->bulk_density_ratio) return LitreWeight{*of_bag, LitreWeightOrigin::of_bag, of_bag};
  return LitreWeight{*of_bag * fraction->bulk_density_ratio->value(), LitreWeightOrigin::predicted, of_bag, fraction->bulk_density_ratio};
}

std::optional<LooseVolume> litres_in_stock(const OpenWorkbook& workbook, const RecordRef& holder) {
  const auto stock = workbook.stock_of(holder);
  const auto density = bulk_density_of(workbook, holder);
  if (!stock || !density || !(*density > BulkDensity{})) return std::nullopt;
  return loose_l(in_g(*stock) / in_g_l(*density));
}

Result<Applied> enter_stock(OpenWorkbook& workbook, const RecordRef& holder, StockReason reason, const Measured& amount,
                            const std::string& day, std::optional<RecordRef> other, const std::string& note, const std::string& told) {
  if (reason == StockReason::counted) return enter_count(workbook, holder, amount, day, note, told);
  if (!workbook.find(holder)) return not_there(holder);
  const Result<InGrams> grams = in_grams(workbook, holder, amount);
  if (!grams) return grams.problems();
  const Mass change = goes_away(reason) ? -1.0 * grams->mass : grams->mass;
  return enter(workbook, {holder, reason, change, grams->measured, grams->density, {}, std::move(other), day, note}, told);
}

Result<Applied> enter_count(OpenWorkbook& workbook, const RecordRef& holder, const Measured& found, const std::string& day,
                            const std::string& note, const std::string& told) {
  // Another window may enter something between the look at the books and the entry.
  constexpr int most_attempts = 20;
  for (int attempt = 1;; ++attempt) {
    if (!workbook.find(holder)) return not_there(holder);
    const Result<InGrams> grams = in_grams(workbook, holder, found);
    if (!grams) return grams.problems();
    StockEntry entry{holder, StockReason::counted, grams->mass, grams->measured, grams->density, grams->mass, {}, day, note};
    Change change;
    const Footing footing{workbook.revision(), {}};
    entry.change = grams->mass - workbook.stock_of(holder).value_or(Mass{});
    if (Problems problems = check(entry); !problems.empty()) return problems;
    change.label = label_of(entry, told);
    change.log = LogEntry{day, {}, LogSort::event, with_note(change.label, note), {holder}};
    change.edits.push_back(added(RecordKind::stock_entry, std::move(entry)));
    Result<Applied> applied = workbook.inside().apply(std::move(change), footing);
    if (applied || applied.problems().front().code != "workbook.changed-meanwhile" || attempt == most_attempts) return applied;
  }
}

std::optional<StockEntry> arrival_of(const RecordRef& holder, const Bag& bag, const std::string& day, std::optional<BulkDensity> fallback_density) {
  StockEntry entry;
  entry.holder = holder;
  entry.day = day;
  const bool weighed = bag.mass_as_bagged && (bag.moisture || bag.moisture_basis == MoistureBasis::oven_dry);
  if (!weighed) {
    entry.density_used = bag.bulk_density ? bag.bulk_density : fallback_density;
    if (!bag.volume || !entry.density_used) return std::nullopt;
    entry.measured = loose_l(in_l(*bag.volume) * bag.count);
    entry.change = *entry.measured * *entry.density_used;
  } else {
    entry.change = *dry_mass_received(bag);
  }
  return entry;
}

bool corrects_receipt(const OpenWorkbook& workbook, const Stored<Bag>& was, const Bag& now) {
  OpenWorkbook::Inside& inside = workbook.inside();
  return inside.read([&] { return corrected_receipt(inside, ref_to(was.id), was.record, now).has_value(); });
}

namespace {

Change receiving(const Bag& bag, const std::string& name, std::optional<BulkDensity> fallback_density) {
  const RecordRef ref{RecordKind::bag, name};
  Change change;
  change.label = std::string("bag ").append(name);
  change.edits.push_back({ref, 0, bag});
  auto entry = bag.received ? arrival_of(ref, bag, *bag.received, fallback_density) : std::nullopt;
  if (entry) change.edits.push_back(added(RecordKind::stock_entry, *std::move(entry)));
  return change;
}

}  // namespace

Result<Applied> receive(OpenWorkbook& workbook, const Bag& bag, const std::string& id, std::optional<BulkDensity> fallback_density) {
  if (Problems problems = check(bag); !problems.empty()) return problems;
  // The stock entry names the bag, so its id is chosen here; where another window takes it first, another one is.
  constexpr int most_attempts = 20;
  for (int attempt = 1;; ++attempt) {
    const std::string name = id.empty() ? workbook.suggest_id(RecordKind::bag, bag.material) : id;
    Result<Applied> applied = workbook.apply(receiving(bag, name, fallback_density));
    if (applied || !id.empty() || applied.problems().front().code != "workbook.id-used" || attempt == most_attempts) return applied;
  }
}
Result<Applied> screen_into(OpenWorkbook& workbook, const RecordRef& source, std::vector<Fraction> fractions, std::optional<Mass> spilt,
                            const std::string& day) {
  if (!workbook.find(source)) return not_there(source);
  Problems problems;
  for (std::size_t i = 0; i < fractions.size(); ++i) {
    fractions[i].source = source;
    fractions[i].day = day;
    append(problems, under(check(fractions[i]), std::string("/").append(std::to_string(i))));
  }
  if (!problems.empty()) return problems;
  // The stock entries name the fractions, so their ids are chosen here; another window's quicker use of one is refused and tried again.
  constexpr int most_attempts = 20;
  for (int attempt = 1;; ++attempt) {
    Change change;
    const Footing footing{workbook.revision(), {}};
    change.label = "screening of " + source.id;
    change.log = LogEntry{day, {}, LogSort::event, change.label, {source}};
    std::vector<Edit> stock;
    std::string id = workbook.suggest_id(RecordKind::fraction);
    const auto dash = id.rfind('-') + 1;
    const long first = std::stol(id.substr(dash));
    for (std::size_t i = 0; i < fractions.size(); ++i) {
      const RecordRef ref{RecordKind::fraction, id.substr(0, dash) + two_digits(first + static_cast<long>(i))};
      change.edits.push_back({ref, 0, fractions[i]});
      std::optional<Mass> mass = fractions[i].dry_mass;
      const auto density = own_density(fractions[i]);
      const bool by_volume = !mass && fractions[i].volume && density;
      if (by_volume) mass = *fractions[i].volume * *density;
      if (!mass) continue;
      StockEntry into{ref, StockReason::screened_into, *mass, {}, {}, {}, source, day, {}};
      if (by_volume) {
        into.measured = fractions[i].volume;
        into.density_used = density;
      }
      StockEntry out{source, StockReason::screened_out_of, -1.0 * *mass, into.measured, into.density_used, {}, ref, day, {}};
      stock.push_back(added(RecordKind::stock_entry, std::move(into)));
      stock.push_back(added(RecordKind::stock_entry, std::move(out)));
    }
    if (spilt) stock.push_back(added(RecordKind::stock_entry, StockEntry{source, StockReason::spilt, -1.0 * *spilt, {}, {}, {}, {}, day, {}}));
    for (Edit& edit : stock) change.edits.push_back(std::move(edit));
    Result<Applied> applied = workbook.inside().apply(std::move(change), footing);
    if (applied || applied.problems().front().code != "workbook.changed-meanwhile" || attempt == most_attempts) return applied;
  }
}

}  // namespace gritwright
