#include "gritwright/models/repeated_sieving.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <variant>

#include "gritwright/units.hpp"

namespace gritwright {

namespace {

bool is_same_number(double a, double b) {
  constexpr double as_written = 1e-8;  // nine digits are typed and shown
  return std::abs(a - b) <= as_written * std::max(std::abs(a), std::abs(b));
}

/// A net mass is a gross one in a pan of no mass.
struct Reading {
  bool in_litres;
  double value;
  double tare = 0;
};

Reading reading_of(const Retained& retained) {
  if (const auto* net = std::get_if<Mass>(&retained)) return {false, in_g(*net)};
  if (const auto* weighed = std::get_if<GrossTare>(&retained)) return {false, in_g(weighed->gross), in_g(weighed->tare)};
  return {true, in_l(std::get<LooseVolume>(retained))};
}

/// As read off the balance: a tare is of the pan, not of the sample.
bool is_same_reading(const Retained& a, const Retained& b) {
  const Reading one = reading_of(a);
  const Reading other = reading_of(b);
  return one.in_litres == other.in_litres && is_same_number(one.value, other.value);
}

bool is_same_pan(const Retained& a, MassShare crumbs_a, const Retained& b, MassShare crumbs_b) {
  return is_same_reading(a, b) && is_same_number(reading_of(a).tare, reading_of(b).tare) && is_same_number(crumbs_a.value(), crumbs_b.value());
}

bool has_grain(const Retained& retained) {
  const Reading reading = reading_of(retained);
  return reading.value > reading.tare;
}

template <typename Quantity, typename InUnit>
bool is_same_figure(const std::optional<Quantity>& a, const std::optional<Quantity>& b, InUnit in_unit) {
  return a.has_value() == b.has_value() && (!a || is_same_number(in_unit(*a), in_unit(*b)));
}

const auto as_g = [](Mass mass) { return in_g(mass); };

bool is_same_opening_mm(Aperture a, Aperture b) { return is_same_number(in_mm(a), in_mm(b)); }

}  // namespace

bool same_weighings(const SieveTest& a, const SieveTest& b) {
  const auto same_row = [](const SieveRow& one, const SieveRow& other) {
    return is_same_opening_mm(one.aperture, other.aperture) && is_same_pan(one.retained, one.crumbs, other.retained, other.crumbs);
  };
  return std::ranges::equal(a.rows, b.rows, same_row) && is_same_pan(a.pan, a.pan_crumbs, b.pan, b.pan_crumbs) && is_same_figure(a.dry_mass, b.dry_mass, as_g);
}

bool same_sieving(const SieveTest& a, const SieveTest& b) {
  return same_weighings(a, b) && is_same_figure(a.sieve_diameter, b.sieve_diameter, [](Length width) { return in_mm(width); }) &&
         is_same_number(a.moisture.value(), b.moisture.value()) && is_same_figure(a.washed_dry_mass, b.washed_dry_mass, as_g);
}

bool is_put_right(const SieveTest& kept, const SieveTest& now) {
  int weighed = 0;
  int same = 0;
  const auto count = [&](bool is_same) {
    ++weighed;
    same += is_same ? 1 : 0;
  };
  for (const SieveRow& row : now.rows) {
    if (!has_grain(row.retained)) continue;
    const auto was = std::ranges::find_if(kept.rows, [&](const SieveRow& one) { return is_same_opening_mm(one.aperture, row.aperture); });
    count(was != kept.rows.end() && is_same_reading(was->retained, row.retained));
  }
  if (has_grain(now.pan)) count(is_same_reading(kept.pan, now.pan));
  if (now.dry_mass) count(is_same_figure(kept.dry_mass, now.dry_mass, as_g));
  return 2 * same > weighed;
}

}  // namespace gritwright
