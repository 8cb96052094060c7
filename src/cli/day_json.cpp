#include "day_json.hpp"

#include <nlohmann/json.hpp>

#include "gritwright/report/day_report.hpp"

namespace gritwright::cli {

namespace {

Json litres(const std::optional<LooseVolume>& volume) { return volume ? Json(in_l(*volume)) : Json(nullptr); }
Json litres(const std::optional<MixedVolume>& volume) { return volume ? Json(in_l(*volume)) : Json(nullptr); }
Json kilograms(const std::optional<Mass>& mass) { return mass ? Json(in_kg(*mass)) : Json(nullptr); }
template <class T>
Json or_null(const std::optional<T>& value) {
  return value ? Json(*value) : Json(nullptr);
}

Json grains_json(const std::vector<GrainLitres>& grains) {
  Json list = Json::array();
  for (const GrainLitres& grain : grains)
    list.push_back({{"name", grain.name}, {"loose_l", in_l(grain.loose)}, {"mass_kg", kilograms(grain.dry_mass)}, {"ready_l", in_l(grain.ready)}});
  return list;
}

Json batches_json(const MixOfDay& mix) {
  if (!mix.batches) return nullptr;
  Json list = Json::array();
  for (const TubBatch& batch : mix.batches->batches) {
    Json components = Json::array();
    for (std::size_t k = 0; k < batch.loose.size(); ++k)
      components.push_back({{"name", mix.components[k].name},
                            {"loose_l", in_l(batch.loose[k])},
                            {"scoops", batch.scoops.empty() ? Json(nullptr) : Json(batch.scoops[k])}});
    list.push_back({{"made_l", in_l(batch.made)}, {"components", std::move(components)}});
  }
  return list;
}

/// Components are null where a particle density is missing.
Json mixes_json(const std::vector<MixOfDay>& mixes) {
  Json list = Json::array();
  for (const MixOfDay& mix : mixes)
    list.push_back({{"name", mix.name},
                    {"needed_l", in_l(mix.needed)},
                    {"components", mix.shrinkage ? grains_json(mix.components) : Json(nullptr)},
                    {"version", or_null(mix.version)},
                    {"fill_l", in_ml(mix.fill) / 1000},
                    {"reserve_l", in_ml(mix.reserve) / 1000},
                    {"settling", mix.settling.value()},
                    {"spill", mix.spill.value()},
                    {"shrinkage_percent", mix.shrinkage ? Json(mix.shrinkage->value() * 100) : Json(nullptr)},
                    {"batches", batches_json(mix)},
                    {"made_l", mix.batches ? Json(in_l(mix.batches->made)) : Json(nullptr)},
                    {"left_over_l", litres(mix.left_over)}});
  return list;
}

void add_taken(Json& raw, Json& ready, const PlannedDay& day, const std::vector<GrainTaken>& taken) {
  for (const GrainTaken& grain : taken) {
    const GrainSupply& supply = day.shelf[grain.supply];
    if (!grain.yield) {
      ready.push_back({{"bag", supply.bag}, {"component", grain.component}, {"take_l", in_l(grain.raw)}});
      continue;
    }
    raw.push_back({{"bag", supply.bag},
                   {"screen_l", in_l(grain.raw)},
                   {"yield", grain.yield->value()},
                   {"typical", grain.typical_yield},
                   {"component", grain.component},
                   {"ready_l", in_l(grain.ready)},
                   {"from_mm", supply.keeps ? Json(in_mm(supply.keeps->from)) : Json(nullptr)},
                   {"to_mm", supply.keeps ? Json(in_mm(supply.keeps->to)) : Json(nullptr)}});
  }
}

Json purchases_json(const std::vector<GrainToBuy>& buy) {
  Json list = Json::array();
  for (const GrainToBuy& purchase : buy)
    list.push_back({{"material", purchase.material},
                    {"bags", or_null(purchase.bags)},
                    {"short_l", in_l(purchase.short_of)},
                    {"raw_l", in_l(purchase.raw)},
                    {"yield", purchase.yield.value()},
                    {"typical", purchase.typical_yield},
                    {"bag_l", litres(purchase.bag_volume)},
                    {"cost", purchase.cost ? Json(purchase.cost->amount) : Json(nullptr)},
                    {"currency", purchase.cost && !purchase.cost->currency.empty() ? Json(purchase.cost->currency) : Json(nullptr)},
                    {"left_over_l", litres(purchase.left_over)}});
  return list;
}

Json lifts_json(const std::vector<Lift>& lifts) {
  Json list = Json::array();
  for (const Lift& lift : lifts)
    list.push_back({{"what", lift_name(lift)}, {"mass_kg", in_kg(lift.mass)}, {"complete", lift.complete}, {"missing", lift.missing}});
  return list;
}

Json trees_json(const PlannedDay& day, const DayAnswer& answer) {
  Json list = Json::array();
  for (const std::size_t place : answer.order) {
    const TreeOfDay& tree = answer.trees[place];
    const PlannedTree& planned = day.trees[tree.tree];
    list.push_back({{"name", planned.name},
                    {"mix", planned.mix},
                    {"plan", tree.whole_pot ? Json(nullptr) : Json(planned.plan)},
                    {"fill_ml", in_ml(tree.fill)},
                    {"worse_by_ml", in_ml(tree.worse_by)},
                    {"pour_l", in_l(tree.poured)},
                    {"scoops", or_null(tree.scoops)}});
  }
  return list;
}

Json shelf_json(const PlannedDay& day, const std::vector<ShelfAfter>& shelf) {
  Json list = Json::array();
  for (std::size_t i = 0; i < shelf.size(); ++i)
    list.push_back({{"bag", day.shelf[i].bag}, {"taken_l", litres(shelf[i].taken)}, {"left_l", litres(shelf[i].left)}});
  return list;
}

const char* due_word(Due due) {
  switch (due) {
    case Due::not_yet: return "not-yet";
    case Due::may_be: return "may-be";
    case Due::due: return "due";
    case Due::unknown: return "unknown";
  }
  return "";
}

}  // namespace

Json day_json(const PlannedDay& day, const DayAnswer& answer) {
  Json raw = Json::array(), ready = Json::array();
  add_taken(raw, ready, day, answer.taken);
  Json json;
  json["mixes"] = mixes_json(answer.mixes);
  json["components"] = grains_json(answer.components);
  json["raw"] = std::move(raw);
  json["ready"] = std::move(ready);
  json["buy"] = purchases_json(answer.buy);
  json["lifts"] = lifts_json(answer.lifts);
  json["trees"] = trees_json(day, answer);
  json["shelf"] = shelf_json(day, answer.shelf);
  json["sheet_revision"] = day.sheet_revision;
  return json;
}

Json season_json(const PlannedSeason& season, const SeasonAnswer& answer) {
  Json raw = Json::array(), ready = Json::array(), lifts = Json::array(), days = Json::array();
  for (const DayOfSeason& day : answer.days) {
    add_taken(raw, ready, day.plan, day.answer.taken);
    for (Json& lift : lifts_json(day.answer.lifts)) lifts.push_back(std::move(lift));
    Json json = day_json(day.plan, day.answer);
    json["date"] = or_null(day.day);
    days.push_back(std::move(json));
  }
  Json json;
  json["mixes"] = mixes_json(answer.mixes);
  json["components"] = grains_json(answer.components);
  json["raw"] = std::move(raw);
  json["ready"] = std::move(ready);
  json["buy"] = purchases_json(answer.buy);
  json["lifts"] = std::move(lifts);
  json["due"] = Json::array();
  for (const DueTree& tree : answer.trees)
    json["due"].push_back({{"name", season.ground.trees[tree.tree].name},
                           {"due", due_word(tree.due)},
                           {"from", or_null(tree.from)},
                           {"counted", tree.counted}});
  json["reservations"] = Json::array();
  for (const Reservation& reservation : answer.reservations) {
    Json claims = Json::array();
    for (const Claim& claim : reservation.claims)
      claims.push_back({{"date", or_null(claim.day)}, {"wanted_l", in_l(claim.wanted)}, {"gets_l", in_l(claim.gets)}});
    json["reservations"].push_back(
        {{"bag", season.ground.shelf[reservation.supply].bag}, {"runs_out", reservation.runs_out}, {"claims", std::move(claims)}});
  }
  json["days"] = std::move(days);
  return json;
}

}  // namespace gritwright::cli
