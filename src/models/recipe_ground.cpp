#include "recipe_ground.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "gritwright/models/blended_grading.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/packing.hpp"
#include "gritwright/models/prediction_score.hpp"

namespace gritwright::recipe_search {

namespace {

// Points a violation counts for each unit it is off.
constexpr double points_per_share = 100;
constexpr double wet_g_l_per_point = 20;
constexpr double exchange_meq_l_per_point = 5;
constexpr double price_share_per_point = 0.05;

// Half-widths of what the fast evaluator leaves open: it promises shares of the bulk volume within 1e-7; sums differ in the last
// bits only.
constexpr double share_error = 2e-7;
constexpr double model_percent_error = 2e-10;
constexpr double model_relative_error = 1e-11;
constexpr double stock_slack_l = 1e-9;

/// The suction down to which plants take water from a pot.
const Depth available_suction = depth_cm(50);

const Retention* layer_in(const PotToFill& pot) { return pot.layer ? &*pot.layer : nullptr; }

Range around(double value, double error) { return {value - error, value + error}; }
Range around_relative(double value) { return around(value, model_relative_error * std::abs(value)); }

/// Order of candidates that are called the same: by what they are, so that the order of the input never decides.
std::vector<double> content(const Candidate& candidate) {
  const GrainProperties& grain = candidate.component.grain;
  std::vector<double> numbers{in_g_l(dry_bulk_density(grain)),
                              grain.particle_density ? in_g_l(*grain.particle_density) : -1,
                              grain.skeletal_density ? in_g_l(*grain.skeletal_density) : -1,
                              grain.open_share.value(),
                              grain.water_absorption ? grain.water_absorption->value() : -1,
                              grain.cation_exchange ? grain.cation_exchange->value() : -1,
                              candidate.price ? candidate.price->value() : -1,
                              candidate.stock ? in_l(*candidate.stock) : -1};
  if (const auto& learnt = candidate.learnt) numbers.insert(numbers.end(), {learnt->k_cm_mm, learnt->flooded_fill, learnt->grain_fill});
  for (const GradingPoint& point : closed_grading(candidate.component.sizes)) {
    numbers.push_back(in_mm(point.aperture));
    numbers.push_back(point.passing.value());
  }
  return numbers;
}

double distance_outside(double value, double low, double high) { return std::max({0.0, low - value, value - high}); }

/// Distance of the nearest and of the farthest point of a range to what lies between two limits.
Range distance_outside(const Range& range, double low, double high) {
  return {std::max({0.0, low - range.high, range.low - high}),
          std::max(distance_outside(range.low, low, high), distance_outside(range.high, low, high))};
}

}  // namespace

double PlainWish::points_missed(double figure) const {
  if (kind == Kind::price) {
    if (figure < least) return (least - figure) / (price_share_per_point * least);
    return figure > most ? (figure - most) / (price_share_per_point * most) : 0;
  }
  return points_per_unit * distance_outside(figure, least, most);
}

Ground::Ground(const DesignProblem& problem) : problem_(problem) {
  put_in_order();
  for (std::size_t i = 0; i < size(); ++i) {
    const Component& component = candidate(i).component;
    const auto own = own_packing_density(component.grain);
    class_betas_.push_back(own ? std::optional(class_beta(size_classes(component.sizes), *own)) : std::nullopt);
  }
  for (const auto& [name, container] : problem_.pots) {
    pot_names_.push_back(name);
    pots_.push_back({PotGeometry(container), layer_retention(container, problem_.water)});
  }
  for (const Wish& wish : problem_.wishes) compile(wish);
  checks_stock_ = problem_.need && std::ranges::any_of(problem_.candidates, [](const Candidate& each) { return each.stock.has_value(); });
  has_prices_ = std::ranges::any_of(problem_.candidates, [](const Candidate& each) { return each.price.has_value(); });
  has_learnt_ = std::ranges::any_of(problem_.candidates, [](const Candidate& each) { return each.learnt.has_value(); });
  asks_for_volumes_ = asks_for_volumes_ || checks_stock_ || has_prices_;
}

void Ground::prepare_evaluator() {
  EvaluatorSetup setup;
  for (std::size_t i = 0; i < size(); ++i) setup.candidates.push_back(candidate(i).component);
  setup.water = problem_.water;
  if (has_learnt_)
    for (std::size_t i = 0; i < size(); ++i) setup.learnt.push_back(learnt_constants(candidate(i), problem_.water));
  setup.settling = problem_.settling;
  if (asks_for_water_) setup.pots = pots_;
  if (asks_for_available_) setup.suctions = {available_suction};
  setup.apertures = apertures_;
  evaluator_ = std::make_unique<MixEvaluator>(std::move(setup));
}

void Ground::put_in_order() {
  order_.resize(problem_.candidates.size());
  std::iota(order_.begin(), order_.end(), std::size_t{0});
  const auto name = [&](std::size_t place) -> const std::string& { return problem_.candidates[place].component.name; };
  std::ranges::stable_sort(order_, [&](std::size_t a, std::size_t b) {
    if (name(a) != name(b)) return name(a) < name(b);
    return content(problem_.candidates[a]) < content(problem_.candidates[b]);
  });
  for (std::size_t i = 0; i < order_.size(); ++i) {
    const bool same = i > 0 && name(order_[i]) == name(order_[i - 1]);
    name_ranks_.push_back(i == 0 ? 0 : name_ranks_.back() + (same ? 0 : 1));
  }
}

std::size_t Ground::aperture_index(Aperture aperture) {
  const auto found = std::ranges::find(apertures_, aperture);
  if (found != apertures_.end()) return static_cast<std::size_t>(found - apertures_.begin());
  apertures_.push_back(aperture);
  return apertures_.size() - 1;
}

void Ground::compile(const Wish& wish) {
  PlainWish plain;
  plain.hard = wish.hard;
  plain.weight = wish.weight;
  plain.least = wish.least.value_or(-infinite);
  plain.most = wish.most.value_or(infinite);
  using Kind = PlainWish::Kind;
  if (const auto* band = std::get_if<PassingLimits>(&wish.figure)) {
    plain.kind = Kind::limits;
    for (const PassingLimit& limit : band->limits) {
      plain.apertures.push_back(aperture_index(limit.aperture));
      plain.low_percent.push_back(limit.low ? in_percent(*limit.low) : -infinite);
      plain.high_percent.push_back(limit.high ? in_percent(*limit.high) : infinite);
    }
  } else if (const auto* grading = std::get_if<NearestGrading>(&wish.figure)) {
    plain.kind = Kind::nearest;
    for (const GradingPoint& point : grading->points) {
      plain.apertures.push_back(aperture_index(point.aperture));
      plain.low_percent.push_back(in_percent(point.passing));
      plain.high_percent.push_back(in_percent(point.passing));
    }
  } else if (const auto* share = std::get_if<BandShare>(&wish.figure)) {
    plain.kind = Kind::band;
    plain.apertures = {aperture_index(share->to)};
    if (in_mm(share->from) > 0) plain.apertures.push_back(aperture_index(share->from));
  } else if (const auto* finer = std::get_if<FinerShare>(&wish.figure)) {
    plain.kind = Kind::finer;
    plain.apertures = {aperture_index(finer->size)};
  } else if (const auto* in_pot = std::get_if<FigureInPot>(&wish.figure)) {
    asks_for_volumes_ = asks_for_water_ = true;
    plain.place = static_cast<std::size_t>(std::ranges::find(pot_names_, in_pot->pot) - pot_names_.begin());
    plain.points_per_unit = points_per_share;
    switch (in_pot->figure) {
      case PotFigure::air_filled_porosity: plain.kind = Kind::air; break;
      case PotFigure::container_capacity: plain.kind = Kind::capacity; break;
      case PotFigure::available_in_pot:
        plain.kind = Kind::available;
        asks_for_available_ = true;
        break;
      case PotFigure::wet_mass:
        plain.kind = Kind::wet;
        plain.points_per_unit = 1 / wet_g_l_per_point;
        break;
    }
  } else if (std::holds_alternative<ExchangeCapacity>(wish.figure)) {
    plain.kind = Kind::exchange;
    plain.points_per_unit = 1 / exchange_meq_l_per_point;
    asks_for_volumes_ = true;
  } else if (std::holds_alternative<MixPrice>(wish.figure)) {
    plain.kind = Kind::price;
    asks_for_volumes_ = true;
  } else if (const auto* named = std::get_if<ShareOf>(&wish.figure)) {
    plain.kind = Kind::share;
    plain.points_per_unit = points_per_share;
    plain.place = named_.size();
    for (std::size_t i = 0; i < size(); ++i)
      if (candidate(i).component.name == named->name || candidate(i).family == named->name) plain.candidates |= std::uint64_t{1} << i;
    named_.push_back(plain.candidates);
  }
  if (plain.hard) hard_wishes_ |= std::uint64_t{1} << wishes_.size();
  wishes_.push_back(std::move(plain));
}

Range Ground::missed(const PlainWish& wish, const FigureRanges& figures) const {
  using Kind = PlainWish::Kind;
  const auto by = [&](const Range& figure) {
    const double low = wish.points_missed(figure.low), high = wish.points_missed(figure.high);
    const bool spans = figure.low <= wish.most && figure.high >= wish.least;
    return Range{spans ? 0 : std::min(low, high), std::max(low, high)};
  };
  const auto passing = [&](std::size_t i) { return figures.passing_percent[wish.apertures[i]]; };
  switch (wish.kind) {
    case Kind::limits:
    case Kind::nearest: {
      Range squares;
      for (std::size_t i = 0; i < wish.apertures.size(); ++i) {
        const Range off = distance_outside(passing(i), wish.low_percent[i], wish.high_percent[i]);
        squares.low += off.low * off.low;
        squares.high += off.high * off.high;
      }
      const auto count = static_cast<double>(wish.apertures.size());
      return {std::sqrt(squares.low / count), std::sqrt(squares.high / count)};
    }
    case Kind::band: {
      const Range to = passing(0);
      const Range from = wish.apertures.size() > 1 ? passing(1) : Range{};
      return by({to.low - from.high, to.high - from.low});
    }
    case Kind::finer: return by(passing(0));
    case Kind::share: return by(figures.named_share[wish.place]);
    case Kind::price: return figures.price ? by(*figures.price) : Range{infinite, infinite};
    case Kind::exchange: return figures.exchange_meq_l ? by(*figures.exchange_meq_l) : Range{infinite, infinite};
    default: break;
  }
  if (!figures.has_volumes) return {infinite, infinite};
  if (wish.kind == Kind::capacity) return by(figures.capacity[wish.place]);
  if (wish.kind == Kind::air) return by(figures.air[wish.place]);
  if (wish.kind == Kind::available) return by(figures.available[wish.place]);
  return by(figures.wet_g_l[wish.place]);
}

Rating Ground::rate(const FigureRanges& figures, Strictness strictness, Counted counted) const {
  Rating rating;
  for (std::size_t i = 0; i < wishes_.size(); ++i) {
    const PlainWish& wish = wishes_[i];
    if (counted == Counted::of_volumes && !wish.of_volumes()) continue;
    Range off = missed(wish, figures);
    if (off.low <= no_violation) off.low = 0;
    if (off.high <= no_violation) off.high = 0;
    if (wish.hard && strictness == Strictness::as_wished) {
      if (off.low > 0)
        rating.broken |= std::uint64_t{1} << i;
      else if (off.high > 0)
        rating.doubtful |= std::uint64_t{1} << i;
    } else if (wish.weight > 0) {
      rating.score.low += wish.weight * off.low * off.low;
      rating.score.high += wish.weight * off.high * off.high;
    }
  }
  rating.within_stock = figures.most_over_stock_l.low <= stock_slack_l;
  rating.stock_doubtful = rating.within_stock && figures.most_over_stock_l.high > stock_slack_l;
  return rating;
}

void Ground::shares_and_stock(std::span<const Dose> doses, double loose_l, std::optional<Range> volume_l, FigureRanges& figures) const {
  figures.named_share.clear();
  for (const std::uint64_t named : named_) {
    double parts = 0;
    for (const Dose& dose : doses)
      if ((named >> dose.candidate & 1U) != 0) parts += dose.parts;
    figures.named_share.push_back({parts / loose_l, parts / loose_l});
  }
  figures.price.reset();
  figures.most_over_stock_l = {-infinite, -infinite};
  double money = 0;
  bool priced = true;
  for (const Dose& dose : doses) {
    const Candidate& each = candidate(dose.candidate);
    priced = priced && each.price;
    if (each.price) money += dose.parts * each.price->value();
    if (!checks_stock_ || !each.stock) continue;
    // Without volumes the loose litres aren't known, and what isn't known is not within stock.
    if (!volume_l) {
      figures.most_over_stock_l = {infinite, infinite};
      continue;
    }
    const double needed_by_volume = in_l(*problem_.need) * dose.parts;
    const double stock_l = in_l(*each.stock);
    figures.most_over_stock_l.low = std::max(figures.most_over_stock_l.low, needed_by_volume / volume_l->high - stock_l);
    figures.most_over_stock_l.high = std::max(figures.most_over_stock_l.high, needed_by_volume / volume_l->low - stock_l);
  }
  if (priced && volume_l) figures.price = Range{money / volume_l->high, money / volume_l->low};
}

void Ground::nothing_defined(std::span<const Dose> doses, double loose_l, FigureRanges& figures) const {
  figures.passing_percent.assign(apertures_.size(), {infinite, infinite});
  figures.has_volumes = false;
  shares_and_stock(doses, loose_l, std::nullopt, figures);
}

void Ground::evaluate(std::span<const Dose> doses, MixEvaluator::Workspace& workspace, RecipeFigures& scratch,
                      FigureRanges& figures) const {
  evaluator_->evaluate(doses, workspace, scratch);
  figures.passing_percent.clear();
  for (const double passing : scratch.passing) figures.passing_percent.push_back(around(passing * 100, model_percent_error));
  double loose_l = 0;
  for (const Dose& dose : doses) loose_l += dose.parts;
  if (scratch.has_volumes && !(scratch.voids_between_grains > 0)) {
    nothing_defined(doses, loose_l, figures);
    return;
  }
  figures.has_volumes = scratch.has_volumes;
  shares_and_stock(doses, loose_l, scratch.has_volumes ? std::optional(around_relative(scratch.volume_l)) : std::nullopt, figures);
  figures.exchange_meq_l.reset();
  figures.capacity.clear();
  figures.air.clear();
  figures.available.clear();
  figures.wet_g_l.clear();
  if (!scratch.has_volumes) return;
  if (scratch.cation_exchange_meq_l) figures.exchange_meq_l = around_relative(*scratch.cation_exchange_meq_l);
  for (const double capacity : scratch.container_capacity) {
    figures.capacity.push_back(around(capacity, share_error));
    figures.air.push_back(around(scratch.flooded - capacity, share_error));
    if (asks_for_available_) figures.available.push_back(around(capacity - scratch.water_at_suction.front(), 2 * share_error));
    figures.wet_g_l.push_back(around(scratch.bulk_density_g_l + 1000 * capacity, 1000 * share_error));
  }
}

RetentionConstants Ground::constants_of(std::span<const Dose> doses) const {
  if (!has_learnt_) return problem_.water;
  std::vector<CalibratedMix> grains;
  for (const Dose& dose : doses) {
    const auto envelope_share = own_packing_density(candidate(dose.candidate).component.grain);
    if (!envelope_share) return problem_.water;
    grains.push_back({learnt_constants(candidate(dose.candidate), problem_.water), EnvelopeShare(dose.parts * envelope_share->value())});
  }
  return pooled_constants(grains).value_or(problem_.water);
}

PotWater Ground::water_in(const PotToFill& pot, const WorkedOut& recipe) {
  return pot_water(Retention(*retention_input(*recipe.state, recipe.water)), pot.pot, layer_in(pot));
}

WorkedOut Ground::worked_out(std::span<const Dose> doses, WaterAsked asked) const {
  WorkedOut recipe;
  recipe.water = constants_of(doses);
  Mix mix;
  mix.water = recipe.water;
  mix.settling = problem_.settling;
  double loose_l = 0;
  for (const Dose& dose : doses) {
    mix.components.push_back(candidate(dose.candidate).component);
    mix.components.back().parts = Parts(dose.parts);
    loose_l += dose.parts;
  }
  const auto known = [](double value) { return Range{value, value}; };
  FigureRanges& figures = recipe.figures;
  auto mixed = mix_state(mix);
  if (!mixed) {
    nothing_defined(doses, loose_l, figures);
    return recipe;
  }
  const MixState& state = recipe.state.emplace(std::move(mixed).value());
  for (const Aperture& aperture : apertures_) {
    double passing = 0;
    for (std::size_t k = 0; k < mix.components.size(); ++k)
      passing += state.mass_shares[k].value() * share_passing(closed_grading(mix.components[k].sizes), aperture);
    figures.passing_percent.push_back(known(passing * 100));
  }
  figures.has_volumes = state.settled.has_value();
  shares_and_stock(doses, loose_l, state.poured ? std::optional(known(in_l(state.poured->volume))) : std::nullopt, figures);
  if (!state.settled) return recipe;
  if (state.settled->cation_exchange) figures.exchange_meq_l = known(state.settled->cation_exchange->value());
  if (!asks_for_water_) return recipe;
  const Retention mixed_water(*retention_input(state, recipe.water));
  for (const PotToFill& pot : pots_) {
    Porosity capacity, air, available;
    if (asked == WaterAsked::told) {
      const PotWater& water = recipe.in_pots.emplace_back(pot_water(mixed_water, pot.pot, layer_in(pot)));
      capacity = water.container_capacity;
      air = water.air_filled_porosity;
      available = water.available_in_pot;
    } else {
      capacity = container_capacity(mixed_water.curve(), pot.pot, layer_in(pot));
      air = mixed_water.flooded() - capacity;
      if (asks_for_available_) available = capacity - mixed_water.water_at(available_suction);
    }
    figures.capacity.push_back(known(capacity.value()));
    figures.air.push_back(known(air.value()));
    figures.available.push_back(known(available.value()));
    figures.wet_g_l.push_back(known(in_g_l(state.settled->bulk_density) + 1000 * capacity.value()));
  }
  return recipe;
}

std::vector<Dose> doses_of(const WholeRecipe& recipe) {
  std::vector<Dose> doses;
  for (std::size_t i = 0; i < recipe.count; ++i) doses.push_back({recipe.candidates[i], static_cast<double>(recipe.parts[i])});
  return doses;
}

}  // namespace gritwright::recipe_search
