#include "gritwright/models/sieve_analysis.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <numbers>
#include <numeric>
#include <string>

#include "gritwright/domain/sieve_series.hpp"
#include "gritwright/models/grading_curve.hpp"

namespace gritwright {

namespace {

constexpr double noted_loss = 0.003;
constexpr double warned_loss = 0.01;
constexpr double warned_pan = 0.03;

/// Net amount of one fraction in g, or in L where litres were measured.
double net_amount(const Retained& retained) {
  if (const auto* net = std::get_if<Mass>(&retained)) return in_g(*net);
  if (const auto* weighed = std::get_if<GrossTare>(&retained)) return in_g(weighed->gross) - in_g(weighed->tare);
  return in_l(std::get<LooseVolume>(retained));
}

/// The amounts of a test, all at the moisture they were weighed at: shares don't depend on it.
struct Amounts {
  std::vector<double> grain;  ///< by sieve, crumbs taken off
  double pan = 0;
  double weighed = 0;  ///< all that came off the stack, crumbs included
  double crumbs = 0;
};

Amounts amounts_of(const SieveTest& test) {
  Amounts amounts;
  const auto take = [&](const Retained& retained, MassShare crumbs) {
    const double net = net_amount(retained);
    amounts.weighed += net;
    amounts.crumbs += net * crumbs.value();
    return net * (1 - crumbs.value());
  };
  for (const SieveRow& row : test.rows) amounts.grain.push_back(take(row.retained, row.crumbs));
  amounts.pan = take(test.pan, test.pan_crumbs);
  return amounts;
}

std::string mm_text(Aperture aperture) {
  std::array<char, 32> digits{};
  const double micrometres = std::round(in_mm(aperture) * 1000);
  const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), micrometres / 1000).ptr;
  return {digits.data(), end};
}

/// A share that meets a limit but for binary rounding is not above it.
bool above(double share, double limit) { return share > limit + 1e-12; }

void note_loss(SieveAnalysis& analysis) {
  if (!analysis.loss || !above(std::abs(analysis.loss->value()), noted_loss)) return;
  const bool large = above(std::abs(analysis.loss->value()), warned_loss);
  const bool gain = analysis.loss->value() < 0;
  analysis.notes.push_back({gain ? "sieve-test.gain" : large ? "sieve-test.loss-large" : "sieve-test.loss",
                            large ? Level::warning : Level::note, "", {{"percent", std::abs(analysis.loss->value()) * 100}}});
}

void note_overload(const SieveTest& test, SieveAnalysis& analysis) {
  if (!test.sieve_diameter || !analysis.total) return;
  for (const SieveRow& row : test.rows) {
    const double limit_g = in_g(overload_limit(row.aperture, *test.sieve_diameter, test.bulk_density));
    const double held_g = net_amount(row.retained);
    if (held_g <= limit_g * (1 + 1e-9)) continue;
    analysis.notes.push_back({"sieve-test.overload", Level::warning, mm_text(row.aperture),
                              {{"aperture_mm", in_mm(row.aperture)}, {"mass_g", held_g}, {"limit_g", limit_g}, {"goes", std::ceil(held_g / limit_g)}}});
  }
}

/// Nominal maximum size: the finest sieve that at least 90 % passes, else the sieve above the stack.
Aperture nominal_maximum(const SieveAnalysis& analysis) {
  const auto coarse_end = std::ranges::find_if(analysis.sieves, [](const SieveShare& s) { return s.passing < Passing(0.9); });
  if (coarse_end == analysis.sieves.begin()) return next_coarser_principal(coarse_end->aperture);
  return std::prev(coarse_end)->aperture;
}

/// A rule of thumb carries no more digits.
double up_to_two_digits(double above_zero) {
  const double step = std::pow(10, std::floor(std::log10(above_zero)) - 1);
  return std::ceil(above_zero / step - 1e-9) * step;
}

void note_small_sample(const SieveTest& test, SieveAnalysis& analysis) {
  if (!analysis.base) return;
  const Aperture largest = nominal_maximum(analysis);
  const double least_g = in_g(least_sample(largest, test.particle_density));
  const double start_g = in_g(*analysis.base);
  if (start_g >= least_g * (1 - 1e-9)) return;
  analysis.notes.push_back({test.particle_density ? "sieve-test.sample-small" : "sieve-test.sample-small-for-stone", Level::warning, "",
                            {{"mass_g", start_g}, {"least_g", up_to_two_digits(least_g)}, {"size_mm", in_mm(largest)}}});
}

void note_ends(SieveAnalysis& analysis) {
  const SieveShare& top = analysis.sieves.front();
  if (top.retained.value() > 0) {
    analysis.notes.push_back({"sieve-test.top-open", Level::note, mm_text(top.aperture),
                              {{"aperture_mm", in_mm(top.aperture)},
                               {"percent", top.retained.value() * 100},
                               {"top_mm", in_mm(next_coarser_principal(top.aperture))}}});
  }
  if (above(analysis.pan.value(), warned_pan)) {
    analysis.notes.push_back({"sieve-test.pan", Level::warning, "pan",
                              {{"percent", analysis.pan.value() * 100}, {"aperture_mm", in_mm(analysis.sieves.back().aperture)}}});
  }
}

/// A percentile finer than the finest or coarser than the coarsest sieve has no value; the reader is told why.
void note_undefined_percentiles(SieveAnalysis& analysis) {
  std::string fine;
  std::string coarse;
  const GradingPoint& finest = analysis.grading.points.front();
  for (const int percent : reported_percentiles) {
    if (percentile(analysis.grading, percent)) continue;
    std::string& side = Passing(percent / 100.0) < finest.passing ? fine : coarse;
    side += (side.empty() ? "D" : ", D") + std::to_string(percent);
  }
  const GradingPoint& coarsest = analysis.grading.points.back();
  if (!fine.empty()) {
    analysis.notes.push_back({"sieve-test.percentile-below-sieves", Level::note, "",
                              {{"list", fine}, {"percent", in_percent(finest.passing)}, {"aperture_mm", in_mm(finest.aperture)}}});
  }
  if (!coarse.empty()) {
    analysis.notes.push_back({"sieve-test.percentile-above-sieves", Level::note, "",
                              {{"list", coarse}, {"percent", in_percent(coarsest.passing)}, {"aperture_mm", in_mm(coarsest.aperture)}}});
  }
}

}  // namespace

Result<SieveAnalysis> analyse(const SieveTest& test) {
  if (Problems problems = check(test); !problems.empty()) return problems;
  const Amounts amounts = amounts_of(test);
  const bool by_volume = std::holds_alternative<LooseVolume>(test.pan);
  const bool has_start = test.dry_mass && !by_volume;
  const bool on_original = has_start && test.basis == PercentBasis::original;
  const double start = has_start ? in_g(*test.dry_mass) : amounts.weighed;
  const double sieved = has_start && test.washed_dry_mass ? in_g(*test.washed_dry_mass) : start;
  // Crumbs are no grain of this size, so they leave the base as well. What washed out counts with the pan on either base.
  const double base = (on_original ? start : amounts.weighed + (start - sieved)) - amounts.crumbs;
  if (base <= 0) return problem_at("sieve-test.nothing-retained", "/retained");

  SieveAnalysis analysis;
  if (!by_volume) {
    const double wet_per_dry = 1 + test.moisture.value();
    analysis.total = mass_g(amounts.weighed / wet_per_dry);
    analysis.base = mass_g(base / wet_per_dry);
    if (has_start) analysis.start = mass_g(start / wet_per_dry);
    analysis.washed_out = mass_g((start - sieved) / wet_per_dry);
  }
  if (has_start) analysis.loss = Loss((sieved - amounts.weighed) / start);

  double cumulative = 0;
  for (std::size_t i = 0; i < test.rows.size(); ++i) {
    cumulative += amounts.grain[i];
    // A gain that the balance explains may carry the sum a hair above the base: passing ends at 0.
    const double retained_so_far = std::min(1.0, cumulative / base);
    analysis.sieves.push_back({test.rows[i].aperture, MassShare(amounts.grain[i] / base), MassShare(retained_so_far),
                               Passing(cumulative >= base ? 0 : (base - cumulative) / base)});
  }
  // What was lost lay nowhere: the curve on the original base counts it as finer than every sieve, but it is no dust that was seen.
  analysis.pan = MassShare((amounts.pan + (start - sieved)) / base);
  for (auto sieve = analysis.sieves.rbegin(); sieve != analysis.sieves.rend(); ++sieve) {
    analysis.grading.points.push_back({sieve->aperture, sieve->passing});
  }

  if (by_volume) analysis.notes.push_back({"sieve-test.by-volume", Level::note, "", {}});
  else if (!has_start) analysis.notes.push_back({"sieve-test.base-recovered", Level::note, "", {{"mass_g", in_g(*analysis.base)}}});
  note_loss(analysis);
  note_overload(test, analysis);
  note_small_sample(test, analysis);
  note_ends(analysis);
  note_undefined_percentiles(analysis);
  return analysis;
}

SieveTest test_of(const Grading& grading, Mass sample) {
  SieveTest test;
  Passing above(1);
  for (auto point = grading.points.rbegin(); point != grading.points.rend(); ++point) {
    test.rows.push_back({point->aperture, sample * (above - point->passing).value(), {}});
    above = point->passing;
  }
  test.pan = sample * above.value();
  return test;
}

std::optional<Aperture> percentile(const Grading& grading, double percent) {
  if (grading.points.empty()) return std::nullopt;
  // A share that meets the end of the curve but for binary rounding is on it.
  constexpr double same = 1e-12;
  double share = percent / 100;
  for (const double end : {grading.points.front().passing.value(), grading.points.back().passing.value()}) {
    if (std::abs(share - end) < same) share = end;
  }
  return GradingCurve(grading).size_at(Passing(share));
}

std::optional<double> uniformity(const Grading& grading) {
  const auto d60 = percentile(grading, 60);
  const auto d10 = percentile(grading, 10);
  if (!d60 || !d10) return std::nullopt;
  return *d60 / *d10;
}

std::optional<MassShare> band_share(const Grading& grading, const Band& band) {
  const GradingCurve curve(grading);
  const auto below = band.from <= aperture_mm(0) ? std::optional(Passing(0)) : curve.passing_at(band.from);
  const auto up_to = curve.passing_at(band.to);
  if (!below || !up_to) return std::nullopt;
  return MassShare(up_to->value() - below->value());
}

Mass least_sample(Aperture largest, std::optional<ParticleDensity> density) {
  const double size_mm = in_mm(largest);
  const double g_per_l = density ? in_g_l(*density) : 2650;
  // The rule holds from 2000 to 3000 g/L; beyond, in proportion to the nearer end.
  const double scale = g_per_l / std::clamp(g_per_l, 2000.0, 3000.0);
  const double by_size_kg = std::max(0.2, size_mm * size_mm / 100) * scale;
  const double grain_kg = std::numbers::pi / 6 * g_per_l * std::pow(size_mm / 1000, 3);
  return mass_kg(std::max(by_size_kg, 100 * grain_kg));
}

Mass overload_limit(Aperture aperture, Length frame_diameter, std::optional<BulkDensity> density) {
  // Half an inch of the frame's diameter is rim: 0.0285 m2 is left of an 8 in frame.
  const double effective_m = in_mm(frame_diameter) / 1000 - 0.0127;
  const double area_m2 = std::numbers::pi / 4 * effective_m * effective_m;
  const double kg_per_m2 = in_mm(aperture) < 4.75 * (1 - 1e-9) ? 7 : 2.5 * in_mm(aperture);
  const double scale = density ? std::min(1.0, in_g_l(*density) / 1500) : 1;
  return mass_kg(kg_per_m2 * area_m2 * scale);
}

}  // namespace gritwright
