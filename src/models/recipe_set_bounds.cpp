#include "recipe_set_bounds.hpp"

#include <algorithm>
#include <cmath>

namespace gritwright::recipe_search {

namespace {

// Room for rounding in sums of a few dozen products.
constexpr double set_percent_error = 1e-9;
constexpr double set_share_error = 1e-12;
// Steps towards the place whose tangent bounds best, and how near to the cost itself is good enough.
constexpr int tangent_steps = 8;
constexpr double tangent_close = 0.99;
constexpr double tangent_error = 1e-9;

/// Points by which even the best of a range misses the limits.
double points_outside(const Range& range, double least, double most) {
  return std::max({0.0, least - range.high - set_percent_error, range.low - most - set_percent_error});
}

/// How far a percentage lies outside limits: below them less than nothing.
double signed_outside(double percent, double low, double high) {
  if (percent > high + set_percent_error) return percent - high - set_percent_error;
  return std::min(0.0, percent - low + set_percent_error);
}

}  // namespace

SetBounds::SetBounds(const BoundTables& tables, Strictness strictness)
    : tables_(tables),
      ground_(tables.ground()),
      strictness_(strictness),
      air_and_water_(air_and_water(ground_, strictness)),
      apertures_(ground_.apertures().size()),
      place_(apertures_),
      slope_(apertures_) {
  for (const PlainWish& wish : ground_.wishes()) {
    if (wish.kind == PlainWish::Kind::share) named_.push_back(wish.candidates);
    if (wish.of_grading() && wish.weight > 0 && !must_hold(wish)) ++gradings_;
  }
}

SetRating SetBounds::of_whole_parts(std::span<const std::uint8_t> candidates, int total) {
  find_corners(candidates, 1.0 / total, Taken::all);
  return rating();
}

SetRating SetBounds::of_shares(std::span<const std::uint8_t> candidates, Taken taken) {
  find_corners(candidates, 0, taken);
  return rating();
}

void SetBounds::find_corners(std::span<const std::uint8_t> candidates, double least_share, Taken taken) {
  corners_ = candidates.size();
  const double rest = 1 - least_share * static_cast<double>(corners_);
  passing_.assign(corners_ * apertures_, 0);
  shares_.assign(corners_ * named_.size(), 0);
  double all_g = 0;
  for (const std::uint8_t each : candidates) all_g += tables_.grain(each).mass_g;
  for (std::size_t a = 0; a < apertures_; ++a) {
    double all_passing_g = 0;
    for (const std::uint8_t each : candidates) all_passing_g += tables_.grain(each).passing_g[a];
    for (std::size_t i = 0; i < corners_; ++i) {
      const BoundTables::Grain& grain = tables_.grain(candidates[i]);
      passing_[i * apertures_ + a] = 100 * (least_share * all_passing_g + rest * grain.passing_g[a]) / (least_share * all_g + rest * grain.mass_g);
    }
  }
  for (std::size_t w = 0; w < named_.size(); ++w) {
    std::size_t members = 0;
    for (const std::uint8_t each : candidates) members += named_[w] >> each & 1U;
    for (std::size_t i = 0; i < corners_; ++i)
      shares_[i * named_.size() + w] = least_share * static_cast<double>(members) + ((named_[w] >> candidates[i] & 1U) != 0 ? rest : 0);
  }
  // One candidate without a figure leaves every mix with it without.
  const auto lacking = [&](auto known) {
    const auto lacks = [&](std::uint8_t each) { return !known(tables_.grain(each)); };
    return taken == Taken::all ? std::ranges::any_of(candidates, lacks) : std::ranges::all_of(candidates, lacks);
  };
  lacks_volumes_ = lacking([](const BoundTables::Grain& grain) { return grain.has_volumes; });
  lacks_price_ = lacks_volumes_ || lacking([](const BoundTables::Grain& grain) { return grain.priced; });
  lacks_exchange_ = lacks_volumes_ || lacking([](const BoundTables::Grain& grain) { return grain.exchange_known; });
  if (!air_and_water_.empty()) find_room(candidates, least_share);
}

void SetBounds::find_room(std::span<const std::uint8_t> candidates, double least_share) {
  const double rest = 1 - least_share * static_cast<double>(candidates.size());
  double envelope_l = 0, additive_l = 0, water_l = 0;
  room_ = 0;
  for (const std::uint8_t each : candidates) {
    const BoundTables::Grain& grain = tables_.grain(each);
    envelope_l += least_share * grain.envelope_l;
    additive_l += least_share * grain.additive_l;
    water_l += least_share * grain.most_water_l;
  }
  for (const std::uint8_t each : candidates) {
    const BoundTables::Grain& grain = tables_.grain(each);
    if (!grain.has_volumes) continue;
    const double envelope = envelope_l + rest * grain.envelope_l;
    const double packing = envelope / (additive_l + rest * grain.additive_l);
    const double grain_water = (water_l + rest * grain.most_water_l) / envelope;
    room_ = std::max(room_, most_room(packing, grain_water, tables_.most_flooded_fill()));
  }
}

SetRating SetBounds::rating() {
  SetRating rating;
  double gradings = 0;
  const auto& wishes = ground_.wishes();
  for (std::size_t i = 0; i < wishes.size(); ++i) {
    const PlainWish& wish = wishes[i];
    const double square = least_square_missed(wish);
    if (must_hold(wish)) {
      if (square > no_violation * no_violation) rating.broken |= std::uint64_t{1} << i;
    } else if (wish.weight > 0) {
      (wish.of_grading() ? gradings : rating.least_score) += wish.weight * square;
    }
  }
  // By themselves wishes may come off better than they do together.
  if (gradings_ > 1) gradings = std::max(gradings, least_grading_cost());
  rating.least_score += gradings;
  if (!lacks_volumes_)
    for (const AirAndWater& pair : air_and_water_) rating.least_score += pair.least_cost(room_);
  return rating;
}

Range SetBounds::passing(std::size_t aperture) const {
  Range range{infinite, -infinite};
  for (std::size_t i = 0; i < corners_; ++i) {
    range.low = std::min(range.low, passing_at(i)[aperture]);
    range.high = std::max(range.high, passing_at(i)[aperture]);
  }
  return range;
}

/// Square of the points that every mix between the corners misses a wish by.
double SetBounds::least_square_missed(const PlainWish& wish) const {
  double missed = 0;
  switch (wish.kind) {
    case PlainWish::Kind::limits:
    case PlainWish::Kind::nearest: {
      double square = 0;
      for (std::size_t i = 0; i < wish.apertures.size(); ++i) {
        const double away = points_outside(passing(wish.apertures[i]), wish.low_percent[i], wish.high_percent[i]);
        square += away * away;
      }
      return square / static_cast<double>(wish.apertures.size());
    }
    case PlainWish::Kind::finer: missed = points_outside(passing(wish.apertures[0]), wish.least, wish.most); break;
    case PlainWish::Kind::band: {
      Range range{infinite, -infinite};
      for (std::size_t i = 0; i < corners_; ++i) {
        const double percent = passing_at(i)[wish.apertures[0]] - (wish.apertures.size() > 1 ? passing_at(i)[wish.apertures[1]] : 0);
        range.low = std::min(range.low, percent);
        range.high = std::max(range.high, percent);
      }
      missed = points_outside(range, wish.least, wish.most);
      break;
    }
    case PlainWish::Kind::share: {
      Range range{infinite, -infinite};
      for (std::size_t i = 0; i < corners_; ++i) {
        const double share = shares_[i * named_.size() + wish.place];
        range.low = std::min(range.low, share - set_share_error);
        range.high = std::max(range.high, share + set_share_error);
      }
      if (range.high < wish.least) missed = wish.points_missed(range.high);
      if (range.low > wish.most) missed = wish.points_missed(range.low);
      break;
    }
    case PlainWish::Kind::price: missed = lacks_price_ ? infinite : 0; break;
    case PlainWish::Kind::exchange: missed = lacks_exchange_ ? infinite : 0; break;
    default: missed = lacks_volumes_ ? infinite : 0;
  }
  return missed * missed;
}

/// What the soft wishes on gradings cost at place_, with its slope.
double SetBounds::grading_cost() {
  double cost = 0;
  std::ranges::fill(slope_, 0.0);
  for (const PlainWish& wish : ground_.wishes()) {
    if (!wish.of_grading() || !(wish.weight > 0) || must_hold(wish)) continue;
    if (wish.kind == PlainWish::Kind::limits || wish.kind == PlainWish::Kind::nearest) {
      const double weight = wish.weight / static_cast<double>(wish.apertures.size());
      for (std::size_t i = 0; i < wish.apertures.size(); ++i) {
        const double off = signed_outside(place_[wish.apertures[i]], wish.low_percent[i], wish.high_percent[i]);
        cost += weight * off * off;
        slope_[wish.apertures[i]] += 2 * weight * off;
      }
      continue;
    }
    const bool between = wish.apertures.size() > 1;
    const double off = signed_outside(place_[wish.apertures[0]] - (between ? place_[wish.apertures[1]] : 0), wish.least, wish.most);
    cost += wish.weight * off * off;
    slope_[wish.apertures[0]] += 2 * wish.weight * off;
    if (between) slope_[wish.apertures[1]] -= 2 * wish.weight * off;
  }
  return cost;
}

double SetBounds::least_grading_cost() {
  const auto along = [&](const double* percent) {
    double sum = 0;
    for (std::size_t a = 0; a < apertures_; ++a) sum += slope_[a] * (percent[a] - place_[a]);
    return sum;
  };
  for (std::size_t a = 0; a < apertures_; ++a) {
    place_[a] = 0;
    for (std::size_t i = 0; i < corners_; ++i) place_[a] += passing_at(i)[a] / static_cast<double>(corners_);
  }
  double best = 0;
  for (int step = 0; step < tangent_steps; ++step) {
    const double cost = grading_cost();
    if (cost == 0) return 0;
    std::size_t lowest = 0;
    double fall = 0;
    for (std::size_t i = 0; i < corners_; ++i) {
      const double change = along(passing_at(i));
      if (change < fall) {
        fall = change;
        lowest = i;
      }
    }
    best = std::max(best, cost + fall - tangent_error * (1 + cost));
    if (fall == 0 || best >= tangent_close * cost) break;
    // Along the way the cost curves upward by no more than all its terms do.
    double curving = 0;
    for (const PlainWish& wish : ground_.wishes()) {
      if (!wish.of_grading() || !(wish.weight > 0) || must_hold(wish)) continue;
      const auto way = [&](std::size_t i) { return passing_at(lowest)[wish.apertures[i]] - place_[wish.apertures[i]]; };
      if (wish.kind == PlainWish::Kind::limits || wish.kind == PlainWish::Kind::nearest) {
        for (std::size_t i = 0; i < wish.apertures.size(); ++i) curving += wish.weight / static_cast<double>(wish.apertures.size()) * way(i) * way(i);
      } else {
        const double change = way(0) - (wish.apertures.size() > 1 ? way(1) : 0);
        curving += wish.weight * change * change;
      }
    }
    if (!(curving > 0)) break;
    const double share = std::min(1.0, -fall / (2 * curving));
    for (std::size_t a = 0; a < apertures_; ++a) place_[a] += share * (passing_at(lowest)[a] - place_[a]);
  }
  return best;
}

}  // namespace gritwright::recipe_search
