#include "gritwright/report/design_report.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "gritwright/report/mix_report.hpp"
#include "gritwright/report/text_table.hpp"
#include "message_templates.hpp"

namespace gritwright {

namespace {

std::string four_digits(double value) { return fmt::format("{:.4g}", value); }

/// An amount in a wish's own unit.
std::string amount_text(const WishFigure& figure, double amount, UnitSystem units) {
  struct {
    double value;
    UnitSystem system;
    std::string operator()(const PassingLimits&) const { return percent_text(value / 100); }
    std::string operator()(const NearestGrading&) const { return percent_text(value / 100); }
    std::string operator()(const BandShare&) const { return percent_text(value / 100); }
    std::string operator()(const FinerShare&) const { return percent_text(value / 100); }
    std::string operator()(const FigureInPot& in_pot) const {
      return in_pot.figure == PotFigure::wet_mass ? density_text(value, system) : percent_text(value);
    }
    std::string operator()(const ExchangeCapacity&) const { return four_digits(value) + " meq/L"; }
    std::string operator()(const MixPrice&) const { return four_digits(value) + " a litre"; }
    std::string operator()(const ShareOf&) const { return percent_text(value); }
  } told{amount, units};
  return std::visit(told, figure);
}

/// How far an amount lies from another: between shares that is points, for "by 31 %" reads as a part of the share itself.
std::string difference_text(const WishFigure& figure, double difference, UnitSystem units) {
  const auto* in_pot = std::get_if<FigureInPot>(&figure);
  const bool of_share = !std::holds_alternative<ExchangeCapacity>(figure) && !std::holds_alternative<MixPrice>(figure) &&
                        (in_pot == nullptr || in_pot->figure != PotFigure::wet_mass);
  if (!of_share) return amount_text(figure, difference, units);
  const double points = in_pot != nullptr || std::holds_alternative<ShareOf>(figure) ? 100 * difference : difference;
  return points < 0.05 ? std::string("less than 0.1 points") : fmt::format("{:.1f} points", points);
}

std::string figure_text(const WishFigure& figure, UnitSystem units) {
  struct {
    UnitSystem system;
    std::string operator()(const PassingLimits& band) const { return fmt::format("grading within limits at {} sizes", band.limits.size()); }
    std::string operator()(const NearestGrading& grading) const { return fmt::format("grading near {} points", grading.points.size()); }
    std::string operator()(const BandShare& band) const { return size_text(band.from, system) + " to " + size_text(band.to, system); }
    std::string operator()(const FinerShare& finer) const { return "finer than " + size_text(finer.size, system); }
    std::string operator()(const FigureInPot& in_pot) const {
      switch (in_pot.figure) {
        case PotFigure::air_filled_porosity: return "air in " + in_pot.pot;
        case PotFigure::container_capacity: return "water in " + in_pot.pot;
        case PotFigure::available_in_pot: return "water plants can take in " + in_pot.pot;
        case PotFigure::wet_mass: return "wet mass in " + in_pot.pot;
      }
      return {};
    }
    std::string operator()(const ExchangeCapacity&) const { return "exchange capacity"; }
    std::string operator()(const MixPrice&) const { return "price"; }
    std::string operator()(const ShareOf& share) const { return "share of " + share.name; }
  } told{units};
  return std::visit(told, figure);
}

std::string parts_text(const DesignProblem& problem, const std::vector<double>& parts) {
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (!(parts[i] > 0)) continue;
    text += (text.empty() ? "" : ", ") + (problem.form.whole ? four_digits(parts[i]) : percent_text(parts[i])) + " " +
            problem.candidates[i].component.name;
  }
  return text;
}

std::string misses_text(const DesignProblem& problem, const RatedRecipe& recipe, UnitSystem units) {
  std::string text;
  for (std::size_t i = 0; i < recipe.misses.size(); ++i)
    if (recipe.misses[i].violation > 0)
      text += "    misses " + wish_text(problem.wishes[i], units) + " by " +
              difference_text(problem.wishes[i].figure, recipe.misses[i].amount, units) + '\n';
  return text;
}

std::string recipe_text(const DesignProblem& problem, const RatedRecipe& recipe, const std::string& rank, UnitSystem units) {
  std::string text = rank + parts_text(problem, recipe.parts) + "  (score " + four_digits(recipe.score) +
                     (recipe.price ? ", " + four_digits(recipe.price->value()) + " a litre" : "") + ")\n" +
                     misses_text(problem, recipe, units);
  std::string binding;
  for (const std::size_t wish : recipe.binding)
    if (!(recipe.misses[wish].violation > 0)) binding += (binding.empty() ? "" : "; ") + wish_text(problem.wishes[wish], units);
  if (!binding.empty()) text += "    right at the limit: " + binding + '\n';
  for (const std::size_t candidate : recipe.used_up) text += "    uses up " + problem.candidates[candidate].component.name + '\n';
  for (const auto& [name, water] : recipe.pots) text += "    " + name + ": " + pot_water_text(water, units);
  return text;
}

std::string sets_text(const DesignProblem& problem, const DesignAnswer& answer, UnitSystem units) {
  std::string text;
  for (const auto& set : answer.contradictions) {
    std::string wishes;
    for (const std::size_t wish : set) wishes += (wishes.empty() ? "" : "; ") + wish_text(problem.wishes[wish], units);
    text += (set.size() == 1 ? "cannot hold: " : "cannot hold together: ") + wishes + '\n';
  }
  return text;
}

std::string proof_text(const DesignProblem& problem, const DesignAnswer& answer) {
  if (!problem.form.whole) return "";
  std::string text = fmt::format("{} recipes worked out, {} excluded by bounds", answer.examined, answer.excluded);
  if (answer.proven) return text + ": proven best\n";
  text += ": not proven best";
  if (answer.gap)
    text += *answer.gap > 0 ? "; the best score may be lower by up to " + four_digits(*answer.gap) : std::string(", but no recipe scores less");
  return text + '\n';
}

std::string room_text(const DesignProblem& problem, const DesignAnswer& answer, UnitSystem units) {
  std::string text;
  for (const WishRoom& room : answer.room) {
    const WishFigure& figure = problem.wishes[room.wish].figure;
    std::string moves;
    if (room.stricter) moves += difference_text(figure, *room.stricter, units) + " stricter";
    if (room.looser) moves += (moves.empty() ? "" : " or ") + difference_text(figure, *room.looser, units) + " looser";
    if (!moves.empty()) text += "another recipe comes first with " + wish_text(problem.wishes[room.wish], units) + " " + moves + '\n';
  }
  return text;
}

/// A few points of a trade-off picture, spread over it.
template <class Figures>
std::string trade_offs_text(const DesignProblem& problem, const std::vector<TradeOff>& points, const std::string& what, const Figures& figures) {
  if (points.size() < 2) return "";
  constexpr std::size_t most = 5;
  const std::size_t shown = std::min(most, points.size());
  std::string text = what + ", nothing found beats these in both:\n";
  for (std::size_t i = 0; i < shown; ++i) {
    const TradeOff& point = points[i * (points.size() - 1) / (shown - 1)];
    text += "    " + figures(point) + ": " + parts_text(problem, point.parts) + '\n';
  }
  return text;
}

std::string pictures_text(const DesignProblem& problem, const DesignAnswer& answer) {
  std::string text;
  if (!problem.pots.empty())
    text += trade_offs_text(problem, answer.air_and_water, "air against water in " + problem.pots.begin()->first, [](const TradeOff& point) {
      return "air " + percent_text(point.across) + ", water " + percent_text(point.up);
    });
  return text + trade_offs_text(problem, answer.price_and_fit, "price against fit", [](const TradeOff& point) {
           return four_digits(point.across) + " a litre, score " + four_digits(point.up);
         });
}

}  // namespace

std::string wish_text(const Wish& wish, UnitSystem units) {
  std::string text = figure_text(wish.figure, units);
  if (wish.least) text += " at least " + amount_text(wish.figure, *wish.least, units);
  if (wish.most) text += std::string(wish.least ? " and" : "") + " at most " + amount_text(wish.figure, *wish.most, units);
  return text;
}

std::string design_text(const DesignProblem& problem, const DesignAnswer& answer, UnitSystem units) {
  std::string text;
  int rank = 0;
  for (const RatedRecipe& recipe : answer.recipes) text += recipe_text(problem, recipe, fmt::format("{:2}. ", ++rank), units);
  if (answer.recipes.empty()) {
    const bool sure = answer.proven || !answer.contradictions.empty();
    text += (sure ? "no recipe holds every wish that must hold\n" : "no recipe was found that holds every wish that must hold\n") + sets_text(problem, answer, units);
    if (answer.nearest) text += recipe_text(problem, *answer.nearest, "nearest: ", units);
  }
  if (answer.rounding_cost) text += "whole parts instead of free shares cost " + four_digits(*answer.rounding_cost) + " of score\n";
  return text + room_text(problem, answer, units) + pictures_text(problem, answer) + proof_text(problem, answer);
}

std::vector<Explanation> explain_design() {
  return {{"score",
           GRITWRIGHT_TEXT("sum of weight (points missed)^2 over the wishes that need not hold; points: percent of the mass, 100 x shares, 20 g/L, 5 meq/L, 5 % of a "
           "price limit; limits and gradings by root mean square over their openings"),
           {},
           "docs/science/recipe-search.md"},
          {"order", GRITWRIGHT_TEXT("score, price (unpriced last), fewer components, names, smaller total, larger parts in the order of the names; "
                    "a recipe is listed if some component differs by 10 points of loose volume from every better one listed"),
           {},
           "docs/science/recipe-search.md"},
          {"proven", GRITWRIGHT_TEXT("examined + excluded = all recipes; a recipe is excluded only if a lower bound of its score, or a wish that must hold, "
                     "puts it behind the list"),
           {},
           "docs/science/recipe-search.md"}};
}

Explanation explain_price(const DesignProblem& problem, const RatedRecipe& recipe) {
  Explanation price{"price", "sum (v x p) / V", {}, "docs/science/recipe-search.md"};
  for (std::size_t i = 0; i < recipe.parts.size(); ++i) {
    if (!(recipe.parts[i] > 0)) continue;
    const Candidate& candidate = problem.candidates[i];
    price.inputs.emplace_back(candidate.component.name, fmt::format("{} x {}", four_digits(recipe.parts[i]), figure(candidate.price->value(), 2)));
  }
  price.inputs.emplace_back("V", volume_text(in_l(recipe.mix.poured->volume), UnitSystem::metric));
  return price;
}

}  // namespace gritwright
