#include "gritwright/models/day_ranges.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "draw_slices.hpp"
#include "drawn_mix.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/pot_ranges.hpp"

namespace gritwright {

namespace {

/// A measured yield and one by a real grading are off by so much, as a factor; what is typical loses a tenth to a third. Our assumptions.
constexpr double measured_yield_deviation = 0.03;
constexpr double graded_yield_deviation = 0.05;
constexpr double least_typical_yield = 0.67, greatest_typical_yield = 0.9;
constexpr double greatest_yield = 1.2;
/// A fill that no pot of known lengths stands behind, as a factor.
constexpr double fill_deviation = 0.03;
constexpr std::size_t scores_of_tree = 3;

/// The shared axes and those of mixes, trees and shelf, one after the other.
enum DayScore { typical_yield_score, first_mix };

FactorSpread typical_yield_spread() { return factor_within(typical_yield.value(), least_typical_yield, greatest_typical_yield); }

/// Draws plans of the day as it could come out.
class DrawnDay {
 public:
  DrawnDay(PlannedDay day, std::span<const MixSpread> spreads, const std::vector<MixOfDay>& worked_out) : day_(std::move(day)) {
    for (std::size_t i = 0; i < day_.mixes.size(); ++i) {
      DayMix& mix = day_.mixes[i];
      // What was learnt from earlier days stands where the day was worked out.
      const auto known = std::ranges::find(worked_out, mix.name, &MixOfDay::name);
      if (known != worked_out.end()) {
        mix.mix.settling = known->settling;
        mix.mix.spill = known->spill;
      }
      mixes_.emplace_back(mix.mix, spreads[i]);
      const auto state = mix_state(mix.mix);
      Packed packed;
      if (state && state->poured) {
        packed.density = state->poured->packing_density.value();
        for (const EnvelopeShare& share : *state->envelope_shares) packed.largest_share = std::max(packed.largest_share, share.value());
      }
      packed_.push_back(packed);
      at_mix_.push_back(dimensions_);
      dimensions_ += mixes_.back().dimensions();
    }
    for (const auto& [name, pot] : day_.pots) pots_.emplace(name, PotGeometry(pot));
    for (PlannedTree& tree : day_.trees)
      if (!tree.fill) tree.fill = pots_.at(tree.pot).main_mix_volume();
    at_trees_ = dimensions_;
    at_shelf_ = at_trees_ + scores_of_tree * day_.trees.size();
    dimensions_ = at_shelf_ + day_.shelf.size();
    for (const GrainSupply& supply : day_.shelf) yields_.push_back(yield_of(supply));
  }

  [[nodiscard]] std::size_t dimensions() const { return dimensions_; }
  [[nodiscard]] std::size_t mixes() const { return mixes_.size(); }

  /// The packing model's error in each mix, as a factor on its grain.
  [[nodiscard]] std::vector<double> packing_factors(std::span<const double> scores) const {
    std::vector<double> factors;
    for (std::size_t i = 0; i < mixes_.size(); ++i) {
      const auto own = scores.subspan(at_mix_[i], mixes_[i].dimensions());
      factors.push_back(packed_[i].density > 0 ? mixes_[i].packing_factor(own, packed_[i].density, packed_[i].largest_share) : 1);
    }
    return factors;
  }

  /// Fills are those of the grain: the packing model's error is in them.
  [[nodiscard]] PlannedDay draw(std::span<const double> scores, const std::vector<double>& packing) {
    PlannedDay drawn = day_;
    for (std::size_t i = 0; i < mixes_.size(); ++i) drawn.mixes[i].mix = mixes_[i].draw(scores.subspan(at_mix_[i], mixes_[i].dimensions()));
    for (std::size_t t = 0; t < drawn.trees.size(); ++t) {
      PlannedTree& tree = drawn.trees[t];
      const double factor = fill_factor(tree, scores.subspan(at_trees_ + scores_of_tree * t, scores_of_tree)) * packing[mix_of(tree)];
      tree.fill = *tree.fill * factor;
      for (PotVolume& worse : tree.worse_fills) worse = worse * factor;
    }
    for (std::size_t s = 0; s < drawn.shelf.size(); ++s) {
      if (!has_yield(day_.shelf[s])) continue;
      const double score = yields_[s].shared ? scores[typical_yield_score] : scores[at_shelf_ + s];
      drawn.shelf[s].yield = ScreenYield(std::min(greatest_yield, yields_[s].value * yields_[s].spread.at(score)));
    }
    return drawn;
  }

 private:
  struct Packed {
    double density = 0;
    double largest_share = 0;
  };
  struct Yield {
    double value = 1;
    FactorSpread spread;
    bool shared = false;  ///< typical: what is not known of one bag is not known of the next
  };

  static Yield yield_of(const GrainSupply& supply) {
    const auto known = known_yield(supply);
    if (!known) return {typical_yield.value(), typical_yield_spread(), true};
    const double deviation = supply.yield ? measured_yield_deviation : graded_yield_deviation;
    return {known->value(), {deviation, deviation}, false};
  }

  [[nodiscard]] std::size_t mix_of(const PlannedTree& tree) const {
    return static_cast<std::size_t>(std::ranges::find(day_.mixes, tree.mix, &DayMix::name) - day_.mixes.begin());
  }

  [[nodiscard]] double fill_factor(const PlannedTree& tree, std::span<const double> scores) const {
    const auto pot = pots_.find(tree.pot);
    if (pot == pots_.end()) return std::exp(fill_deviation * scores[0]);
    return pot_factors(pot->second, usual_pot_spread(), {scores[0], scores[1], scores[2]}).volume;
  }

  PlannedDay day_;
  std::map<std::string, PotGeometry> pots_;
  std::vector<DrawnMix> mixes_;
  std::vector<Packed> packed_;
  std::vector<Yield> yields_;
  std::vector<std::size_t> at_mix_;
  std::size_t at_trees_ = 0, at_shelf_ = 0, dimensions_ = first_mix;
};

/// The parts of a worked-out day or season that get ranges.
struct Lists {
  const std::vector<MixOfDay>* mixes;
  const std::vector<GrainLitres>* components;
  const std::vector<GrainToBuy>* buy;
  const std::vector<GrainTaken>* taken = nullptr;
  const std::vector<Lift>* lifts = nullptr;
};
Lists lists_of(const DayAnswer& answer) { return {&answer.mixes, &answer.components, &answer.buy, &answer.taken, &answer.lifts}; }
Lists lists_of(const SeasonAnswer& answer) { return {&answer.mixes, &answer.components, &answer.buy}; }

/// Figures of one draw by name; a list gets a column for every name that some draw has.
using Figures = std::map<std::string, double>;

void put(Figures& figures, const std::string& sort, const std::string& name, double value) { figures[sort + '\n' + name] += value; }

void put_grain(Figures& figures, const std::string& sort, const std::string& name, const GrainLitres& grain) {
  put(figures, sort + " loose", name, in_l(grain.loose));
  put(figures, sort + " ready", name, in_l(grain.ready));
  if (grain.dry_mass) put(figures, sort + " mass", name, in_kg(*grain.dry_mass));
}

std::string taken_name(const GrainTaken& grain) { return std::to_string(grain.supply) + '\n' + grain.component; }
std::string lift_name_of(const Lift& lift) { return std::to_string(static_cast<int>(lift.sort)) + '\n' + std::to_string(lift.index); }

Figures figures_of(const Lists& lists, const std::vector<double>& packing, double yield_factor) {
  Figures figures;
  for (std::size_t i = 0; i < lists.mixes->size(); ++i) {
    const MixOfDay& mix = (*lists.mixes)[i];
    put(figures, "needed", mix.name, in_l(mix.needed) / packing[i]);
    for (const GrainLitres& grain : mix.components) put_grain(figures, "mix", mix.name + '\n' + grain.name, grain);
  }
  for (const GrainLitres& grain : *lists.components) put_grain(figures, "grain", grain.name, grain);
  if (lists.taken != nullptr) {
    for (const GrainTaken& grain : *lists.taken) {
      put(figures, "raw", taken_name(grain), in_l(grain.raw));
      put(figures, "taken ready", taken_name(grain), in_l(grain.ready));
    }
  }
  for (const GrainToBuy& purchase : *lists.buy) {
    const double raw_l = in_l(purchase.raw) / (purchase.typical_yield ? yield_factor : 1);
    put(figures, "short", purchase.material, in_l(purchase.short_of));
    put(figures, "buy raw", purchase.material, raw_l);
    if (purchase.bag_volume) put(figures, "bags", purchase.material, std::ceil(raw_l / in_l(*purchase.bag_volume) - 1e-9));
  }
  if (lists.lifts != nullptr)
    for (const Lift& lift : *lists.lifts) put(figures, "lift", lift_name_of(lift), in_kg(lift.mass));
  return figures;
}

class Columns {
 public:
  explicit Columns(const std::vector<Figures>& draws) : draws_(draws) {}

  [[nodiscard]] std::vector<double> of(const std::string& sort, const std::string& name) const {
    std::vector<double> values;
    for (const Figures& figures : draws_) {
      const auto found = figures.find(sort + '\n' + name);
      values.push_back(found == figures.end() ? 0 : found->second);
    }
    return values;
  }
  [[nodiscard]] Range range(const std::string& sort, const std::string& name) const {
    std::vector<double> values = of(sort, name);
    return range_of(values);
  }
  [[nodiscard]] GrainLitresRange grain(const std::string& sort, const std::string& name, bool weighed) const {
    GrainLitresRange ranges{range(sort + " loose", name), range(sort + " ready", name), {}};
    if (weighed) ranges.mass_kg = range(sort + " mass", name);
    return ranges;
  }
  [[nodiscard]] GrainToBuyRange purchase(const std::string& material, bool in_bags) const {
    GrainToBuyRange ranges{material, range("short", material), range("buy raw", material), {}, 0};
    if (in_bags) ranges.bags = range("bags", material);
    const std::vector<double> shortages = of("short", material);
    const auto short_of = std::ranges::count_if(shortages, [](double litres) { return litres > 0; });
    ranges.chance = static_cast<double>(short_of) / static_cast<double>(shortages.size());
    return ranges;
  }
  [[nodiscard]] std::vector<std::string> names(const std::string& sort) const {
    std::vector<std::string> all;
    for (const Figures& figures : draws_)
      for (auto each = figures.lower_bound(sort + '\n'); each != figures.end() && each->first.starts_with(sort + '\n'); ++each)
        all.push_back(each->first.substr(sort.size() + 1));
    std::ranges::sort(all);
    all.erase(std::ranges::unique(all).begin(), all.end());
    return all;
  }

 private:
  const std::vector<Figures>& draws_;
};

DayRanges ranges_of(const Lists& answer, const std::vector<Figures>& draws) {
  const Columns columns(draws);
  DayRanges ranges;
  for (const MixOfDay& mix : *answer.mixes) {
    MixOfDayRange of_mix{columns.range("needed", mix.name), {}};
    for (const GrainLitres& grain : mix.components)
      of_mix.components.push_back(columns.grain("mix", mix.name + '\n' + grain.name, grain.dry_mass.has_value()));
    ranges.mixes.push_back(std::move(of_mix));
  }
  for (const GrainLitres& grain : *answer.components) ranges.components.push_back(columns.grain("grain", grain.name, grain.dry_mass.has_value()));
  if (answer.taken != nullptr)
    for (const GrainTaken& grain : *answer.taken)
      ranges.taken.push_back({columns.range("raw", taken_name(grain)), columns.range("taken ready", taken_name(grain))});
  const auto bagged = columns.names("bags");
  const auto in_bags = [&](const std::string& material) { return std::ranges::binary_search(bagged, material); };
  for (const GrainToBuy& purchase : *answer.buy) ranges.buy.push_back(columns.purchase(purchase.material, in_bags(purchase.material)));
  for (const std::string& material : columns.names("short")) {
    if (std::ranges::find(*answer.buy, material, &GrainToBuy::material) == answer.buy->end())
      ranges.may_buy.push_back(columns.purchase(material, in_bags(material)));
  }
  if (answer.lifts != nullptr)
    for (const Lift& lift : *answer.lifts) ranges.lifts_kg.push_back(columns.range("lift", lift_name_of(lift)));
  return ranges;
}

/// Draws `ground` and works out `plan_of` it; a draw that can't be worked out counts as the answer itself.
template <class Answer, class PlanOf>
DayRanges drawn_ranges(const PlannedDay& ground, std::span<const MixSpread> spreads, const Answer& answer, const SampleSize& size,
                       const SliceRunner& runner, const PlanOf& plan_of) {
  const DrawnDay drawing(ground, spreads, answer.mixes);
  std::vector<Figures> draws(size.draws);
  over_draws(NormalScores(drawing.dimensions(), size.seed), size, runner,
             [&](std::size_t first, std::size_t last, std::span<const double> points) {
               DrawnDay mine = drawing;
               for (std::size_t i = first; i < last; ++i) {
                 const auto scores = points.subspan((i - first) * mine.dimensions(), mine.dimensions());
                 const std::vector<double> packing = mine.packing_factors(scores);
                 const auto drawn = work_out(plan_of(mine.draw(scores, packing)));
                 const double yield_factor = typical_yield_spread().at(scores[typical_yield_score]);
                 std::vector<double> by_answer;
                 for (const MixOfDay& mix : answer.mixes)
                   by_answer.push_back(packing[static_cast<std::size_t>(std::ranges::find(ground.mixes, mix.name, &DayMix::name) - ground.mixes.begin())]);
                 draws[i] = drawn ? figures_of(lists_of(*drawn), by_answer, yield_factor)
                                  : figures_of(lists_of(answer), std::vector<double>(by_answer.size(), 1), 1);
               }
             });
  return ranges_of(lists_of(answer), draws);
}

}  // namespace

DayRanges day_ranges(const PlannedDay& day, std::span<const MixSpread> spreads, const SampleSize& size, const SliceRunner& runner) {
  return drawn_ranges(day, spreads, work_out(day).value(), size, runner, [](PlannedDay drawn) { return drawn; });
}

DayRanges season_ranges(const PlannedSeason& season, std::span<const MixSpread> spreads, const SampleSize& size, const SliceRunner& runner) {
  return drawn_ranges(season.ground, spreads, work_out(season).value(), size, runner, [&](PlannedDay drawn) {
    PlannedSeason plan = season;
    plan.ground = std::move(drawn);
    return plan;
  });
}

}  // namespace gritwright
