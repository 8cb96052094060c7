#include "design_json.hpp"

#include <cmath>
#include <nlohmann/json.hpp>

#include "gritwright/models/pot_geometry.hpp"
#include "mix_json.hpp"

namespace gritwright::cli {

namespace {

Json finite(double value) { return std::isfinite(value) ? Json(value) : Json(nullptr); }

Json whole_or_not(const std::vector<double>& parts, bool whole) {
  Json list = Json::array();
  for (const double part : parts) list.push_back(whole ? Json(std::llround(part)) : Json(part));
  return list;
}

Json recipe_json(const DesignProblem& problem, const RatedRecipe& recipe) {
  Json json;
  json["parts"] = whole_or_not(recipe.parts, problem.form.whole);
  json["shares"] = Json::array();
  for (const LooseShare& share : recipe.mix.loose_shares) json["shares"].push_back(share.value());
  json["score"] = finite(recipe.score);
  json["violations"] = Json::array();
  for (std::size_t i = 0; i < recipe.misses.size(); ++i)
    if (recipe.misses[i].violation > 0) json["violations"].push_back({{"wish", i}, {"amount", finite(recipe.misses[i].amount)}});
  json["binding"] = recipe.binding;
  json["used_up"] = recipe.used_up;
  json["price_per_l"] = recipe.price ? Json(recipe.price->value()) : Json(nullptr);
  json["mix"] = mix_json(recipe.mix);
  Json pots = Json::object();
  for (const auto& [name, container] : problem.pots) {
    const auto found = recipe.pots.find(name);
    pots[name] = found == recipe.pots.end()
                     ? Json(nullptr)
                     : pot_water_json(found->second, PotGeometry(container).volume(), recipe.mix.settled->bulk_density);
  }
  json["mix"]["pots"] = std::move(pots);
  json["mix"]["notes"] = to_json(recipe.mix.notes);
  return json;
}

Json trade_offs_json(const std::vector<TradeOff>& points, bool whole, const char* across, const char* up) {
  Json list = Json::array();
  for (const TradeOff& point : points)
    list.push_back({{"parts", whole_or_not(point.parts, whole)}, {across, point.across}, {up, point.up}});
  return list;
}

}  // namespace

Json design_json(const DesignProblem& problem, const DesignAnswer& answer) {
  Json json;
  json["recipes"] = Json::array();
  for (const RatedRecipe& recipe : answer.recipes) json["recipes"].push_back(recipe_json(problem, recipe));
  json["contradictions"] = answer.contradictions;
  json["nearest"] = answer.nearest ? recipe_json(problem, *answer.nearest) : Json(nullptr);
  json["examined"] = answer.examined;
  json["excluded"] = answer.excluded;
  json["proven"] = answer.proven;
  json["gap"] = to_json(answer.gap);
  json["room"] = Json::array();
  for (const WishRoom& room : answer.room)
    json["room"].push_back({{"wish", room.wish}, {"stricter", to_json(room.stricter)}, {"looser", to_json(room.looser)}});
  json["rounding_cost"] = to_json(answer.rounding_cost);
  json["trade_offs"] = {{"air_and_water", trade_offs_json(answer.air_and_water, problem.form.whole, "air_filled_porosity", "container_capacity")},
                        {"price_and_fit", trade_offs_json(answer.price_and_fit, problem.form.whole, "price_per_l", "score")}};
  json["contradictions_complete"] = answer.contradictions_complete;
  return json;
}

}  // namespace gritwright::cli
