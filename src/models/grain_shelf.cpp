#include "grain_shelf.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gritwright {

namespace {

constexpr double no_grain_l = 1e-9;

bool meant_for(const GrainSupply& supply, const GrainLitres& need) { return supply.bag == need.name || supply.component == need.name; }
bool of_its_material(const GrainSupply& supply, const GrainLitres& need) {
  return supply.component.empty() && !supply.material.empty() && (supply.material == need.material || supply.material == need.name);
}

}  // namespace

GrainShelf::GrainShelf(const PlannedDay& day) : day_(day) {
  for (const GrainSupply& supply : day.shelf) {
    Row row{&supply, known_yield(supply), {}};
    // Promised beyond the stock leaves nothing, not less than nothing.
    if (supply.stock) row.free_l = std::max(0.0, in_l(*supply.stock) - in_l(supply.reserved.value_or(LooseVolume{})));
    rows_.push_back(row);
  }
}

std::vector<std::size_t> GrainShelf::rows_for(const GrainLitres& need) const {
  std::vector<std::size_t> found;
  const auto collect = [&](auto belongs) {
    for (std::size_t i = 0; i < rows_.size(); ++i)
      if (belongs(*rows_[i].supply, need)) found.push_back(i);
  };
  collect(meant_for);
  // Another lot of the material is another grain: only where none is named for the component.
  if (found.empty()) collect(of_its_material);
  std::ranges::stable_sort(found, {}, [&](std::size_t row) { return rows_[row].supply->screened ? 0 : 1; });
  return found;
}

void GrainShelf::take(const GrainLitres& need) {
  const std::vector<std::size_t> rows = rows_for(need);
  double open_l = in_l(need.ready);
  for (const std::size_t row : rows) {
    if (open_l <= no_grain_l) break;
    open_l -= take_from(row, need, open_l);
  }
  if (open_l > no_grain_l) buy(need, rows, open_l);
}

double GrainShelf::take_from(std::size_t index, const GrainLitres& need, double ready_l) {
  Row& row = rows_[index];
  const ScreenYield yield = row.yield.value_or(typical_yield);
  const double raw_l = row.free_l ? std::min(ready_l / yield.value(), *row.free_l) : ready_l / yield.value();
  if (raw_l <= no_grain_l) return 0;
  const bool typical = !row.yield;
  if (typical && row.taken_l == 0)
    notes_.push_back({"day.typical-yield", Level::note, row.supply->bag, {{"percent", typical_yield.value() * 100}}});
  if (!row.free_l && row.taken_l == 0) notes_.push_back({"day.stock-unknown", Level::note, row.supply->bag, {}});
  row.taken_l += raw_l;
  if (row.free_l) *row.free_l -= raw_l;
  GrainTaken taken{index, need.name, loose_l(raw_l), loose_l(raw_l * yield.value()), {}, typical, {}};
  if (has_yield(*row.supply)) taken.yield = yield;
  if (row.supply->bulk_density) taken.dry_mass = loose_l(raw_l) * *row.supply->bulk_density;
  taken_.push_back(std::move(taken));
  return raw_l * yield.value();
}

GrainToBuy& GrainShelf::purchase_of(const std::string& material, const std::vector<std::size_t>& rows) {
  const auto known = std::ranges::find(buy_, material, &GrainToBuy::material);
  if (known != buy_.end()) return *known;
  GrainToBuy purchase;
  purchase.material = material;
  purchase.typical_yield = !used_unscreened(material);
  purchase.yield = purchase.typical_yield ? typical_yield : ScreenYield(1);
  const auto learn_from = [&](const Row& row) {
    // A bag of another size had another price.
    if (row.supply->bag_volume && row.supply->bag_volume != purchase.bag_volume) {
      purchase.bag_volume = row.supply->bag_volume;
      purchase.bag_price.reset();
    }
    if (row.supply->price) purchase.bag_price = row.supply->price;
    if (row.yield && (!row.supply->screened || row.supply->bag_volume)) {
      purchase.yield = *row.yield;
      purchase.typical_yield = false;
    }
  };
  for (const Row& row : rows_)
    if (row.supply->material == material) learn_from(row);
  for (const std::size_t row : rows) learn_from(rows_[row]);
  if (const auto typical = day_.typical_bags.find(material); !purchase.bag_volume && typical != day_.typical_bags.end()) {
    purchase.bag_volume = typical->second;
    purchase.typical_bag = true;
  }
  buy_.push_back(std::move(purchase));
  return buy_.back();
}

void GrainShelf::buy(const GrainLitres& need, const std::vector<std::size_t>& rows, double short_l) {
  std::string material = need.material.empty() ? need.name : need.material;
  for (const std::size_t row : rows)
    if (!rows_[row].supply->material.empty()) material = rows_[row].supply->material;
  GrainToBuy& purchase = purchase_of(material, rows);
  purchase.short_of = loose_l(in_l(purchase.short_of) + short_l);
  purchase.raw = loose_l(in_l(purchase.raw) + short_l / purchase.yield.value());
  purchase.components.push_back(need.name);
  for (const std::size_t row : rows) {
    const GrainSupply& supply = *rows_[row].supply;
    const double promised_l = in_l(supply.reserved.value_or(LooseVolume{}));
    if (promised_l > no_grain_l)
      notes_.push_back({"day.promised-elsewhere", Level::warning, supply.bag, {{"reserved_l", promised_l}, {"short_l", short_l}}});
  }
}

void GrainShelf::hand_over(DayAnswer& answer) {
  for (GrainToBuy& purchase : buy_) {
    count_bags(purchase);
    const Facts facts{{"short_l", in_l(purchase.short_of)}, {"raw_l", in_l(purchase.raw)}};
    notes_.push_back({"day.short", Level::note, purchase.material, facts});
    if (purchase.typical_yield)
      notes_.push_back({"day.typical-yield", Level::note, purchase.material, {{"percent", typical_yield.value() * 100}}});
    if (purchase.typical_bag) notes_.push_back({"day.typical-bag", Level::note, purchase.material, {{"bag_l", in_l(*purchase.bag_volume)}}});
    if (!purchase.bag_volume) notes_.push_back({"day.no-bag-size", Level::note, purchase.material, {{"raw_l", in_l(purchase.raw)}}});
  }
  for (const Row& row : rows_) {
    ShelfAfter after;
    if (row.taken_l > 0) after.taken = loose_l(row.taken_l);
    if (row.free_l) after.left = loose_l(*row.free_l);
    answer.shelf.push_back(after);
  }
  answer.taken = std::move(taken_);
  answer.buy = std::move(buy_);
  append(answer.notes, std::move(notes_));
}

void count_bags(GrainToBuy& purchase) {
  if (!purchase.bag_volume) return;
  const double bag_l = in_l(*purchase.bag_volume);
  const double bought_l = rounded_up(in_l(purchase.raw), bag_l);
  purchase.bags = static_cast<int>(std::lround(bought_l / bag_l));
  purchase.left_over = loose_l(std::max(0.0, bought_l - in_l(purchase.raw)));
  if (purchase.bag_price) purchase.cost = Price{purchase.bag_price->amount * *purchase.bags, purchase.bag_price->currency};
}

}  // namespace gritwright
