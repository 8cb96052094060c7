#include "gritwright/models/screening.hpp"

#include <algorithm>
#include <boost/math/constants/constants.hpp>
#include <boost/math/special_functions/expint.hpp>
#include <cmath>
#include <numbers>
#include <string>

#include "gritwright/models/grading_curve.hpp"
#include "gritwright/models/packing.hpp"

namespace gritwright {

namespace {

constexpr double median_exponent = std::numbers::ln2;

/// Ein(u), the integral of (1 - exp(-t))/t from 0 to u, of u = exp(log_u): by its series for small u and by E1 beyond, because
/// E1 + ln u + gamma loses all digits where Ein is small.
double entire_exponential_integral(double log_u) {
  const double u = std::exp(log_u);
  if (u <= 1) {
    double term = u;
    double sum = u;
    for (int n = 2; n <= 20; ++n) {
      term *= -u * (n - 1) / (static_cast<double>(n) * n);
      sum += term;
    }
    return sum;
  }
  const double tail = u < 700 ? boost::math::expint(1, u) : 0;
  return tail + log_u + boost::math::constants::euler<double>();
}

double share_staying(double lower_mm, double upper_mm, double opening_mm, double s) {
  const double log_scale = std::log(median_exponent);
  const double upper = entire_exponential_integral(log_scale + s * std::log(upper_mm / opening_mm));
  const double lower = entire_exponential_integral(log_scale + s * std::log(lower_mm / opening_mm));
  return std::clamp((upper - lower) / (s * std::log(upper_mm / lower_mm)), 0.0, 1.0);
}

/// Passing several openings multiplies their shares; exponentials multiply by adding exponents, so the stack passes what one
/// opening a with a^-s = sum of a_i^-s would.
double opening_of_stack(std::span<const double> openings_mm, double s) {
  const double finest = *std::ranges::min_element(openings_mm);
  double sum = 0;
  for (const double opening : openings_mm) sum += std::pow(finest / opening, s);
  return finest * std::pow(sum, -1 / s);
}

Problems faults(const Grading& grading, std::span<const Aperture> openings, Sharpness sharpness) {
  Problems problems;
  const auto report = [&](const char* code, std::string pointer, Facts facts) {
    problems.push_back(problem_at(code, std::move(pointer), std::move(facts)));
  };
  if (openings.empty()) report("screen.no-opening", "/at", {});
  const GradingPoint& finest = grading.points.front();
  for (std::size_t i = 0; i < openings.size(); ++i) {
    const std::string pointer = "/at/" + std::to_string(i);
    const double mm = in_mm(openings[i]);
    if (!std::isfinite(mm) || mm <= 0) {
      report("screen.opening-not-positive", pointer, {{"aperture_mm", mm}});
    } else if (std::ranges::find(openings.first(i), openings[i]) != openings.begin() + static_cast<std::ptrdiff_t>(i)) {
      report("screen.opening-repeated", pointer, {{"aperture_mm", mm}});
    } else if (openings[i] < finest.aperture && finest.passing.value() > 0) {
      report("screen.opening-below-sieves", pointer,
             {{"aperture_mm", mm}, {"finest_mm", in_mm(finest.aperture)}, {"percent", in_percent(finest.passing)}});
    }
  }
  if (!std::isfinite(sharpness.value) || sharpness.value <= 0) {
    report("screen.sharpness-not-positive", "/sharpness", {{"sharpness", sharpness.value}});
  }
  return problems;
}

/// The class edges in mm, the mass below each, and which of them a fraction is reported at.
struct Edges {
  std::vector<double> mm;
  std::vector<double> passing;
  std::vector<bool> reported;
  std::optional<Aperture> top_size;
};

Edges edges_of(const Grading& grading, std::span<const Aperture> openings) {
  Grading closed = grading;
  Edges edges;
  if (closed.points.back().passing.value() < 1) {
    edges.top_size = top_size(grading);
    closed.points.push_back({*edges.top_size, Passing(1)});
  }
  std::vector<Aperture> sizes;
  for (const GradingPoint& point : grading.points) sizes.push_back(point.aperture);
  for (const Aperture& opening : openings) {
    if (opening > sizes.front()) sizes.push_back(opening);
  }
  const bool top_reported = edges.top_size && std::ranges::any_of(openings, [&](Aperture a) { return a >= *edges.top_size; });
  if (edges.top_size) sizes.push_back(*edges.top_size);
  std::ranges::sort(sizes);
  const auto repeated = std::ranges::unique(sizes);
  sizes.erase(repeated.begin(), repeated.end());
  const GradingCurve curve(closed);
  for (const Aperture& size : sizes) {
    edges.mm.push_back(in_mm(size));
    edges.passing.push_back(curve.passing_at(size)->value());
    edges.reported.push_back(!edges.top_size || size != *edges.top_size || top_reported);
  }
  if (top_reported) edges.top_size.reset();
  return edges;
}

/// Mass passing the first `cut_count` openings, by class: the pan first, then between edge i and i + 1.
std::vector<double> mass_through(const Edges& edges, std::span<const double> cuts_mm, std::size_t cut_count, double s) {
  std::vector<double> through{edges.passing.front()};
  for (std::size_t i = 0; i + 1 < edges.mm.size(); ++i) {
    const double mass = edges.passing[i + 1] - edges.passing[i];
    const double staying =
        cut_count == 0 || mass <= 0 ? 0 : share_staying(edges.mm[i], edges.mm[i + 1], opening_of_stack(cuts_mm.first(cut_count), s), s);
    through.push_back(mass * (1 - staying));
  }
  return through;
}

std::optional<Grading> grading_of(const Edges& edges, const std::vector<double>& mass, const Grading& parent) {
  // What came onto a screen less what fell through leaves some 1e-16 of a class that all fell through. That is no grain: packed, it would count as coarse.
  constexpr double residue = 1e-12;
  double total = 0;
  for (const double part : mass) total += part;
  if (total <= 0) return std::nullopt;
  const auto is_there = [&](double part) { return part > residue * total; };
  std::size_t coarsest = mass.size();
  while (coarsest > 0 && !is_there(mass[coarsest - 1])) --coarsest;
  Grading grading;
  grading.pan_size = parent.pan_size;
  double below = 0;
  for (std::size_t i = 0; i < edges.mm.size(); ++i) {
    if (is_there(mass[i])) below += mass[i];
    if (edges.reported[i]) grading.points.push_back({aperture_mm(edges.mm[i]), Passing(i + 1 >= coarsest ? 1 : std::min(1.0, below / total))});
  }
  if (grading.points.back().passing.value() < 1) grading.top_size = edges.top_size;
  return grading;
}

}  // namespace

MassShare stays_on(Aperture size, Aperture opening, Sharpness sharpness) {
  return MassShare(-std::expm1(-median_exponent * std::pow(size / opening, sharpness.value)));
}

MassShare class_stays_on(Aperture lower, Aperture upper, Aperture opening, Sharpness sharpness) {
  return MassShare(share_staying(in_mm(lower), in_mm(upper), in_mm(opening), sharpness.value));
}

Result<Screening> screen(const Grading& grading, std::span<const Aperture> openings, Sharpness sharpness,
                         const PackingDensityOf& packing) {
  if (Problems problems = faults(grading, openings, sharpness); !problems.empty()) return problems;
  std::vector<Aperture> cuts(openings.begin(), openings.end());
  std::ranges::sort(cuts, std::greater{});
  std::vector<double> cuts_mm;
  for (const Aperture& cut : cuts) cuts_mm.push_back(in_mm(cut));
  const Edges edges = edges_of(grading, openings);
  const auto parent_packing = packing ? packing(grading) : std::nullopt;

  Screening screening;
  std::vector<double> arriving = mass_through(edges, cuts_mm, 0, sharpness.value);
  for (std::size_t k = 0; k <= cuts.size(); ++k) {
    ScreenedFraction fraction;
    if (k > 0) fraction.to = cuts[k - 1];
    std::vector<double> mass = arriving;
    if (k < cuts.size()) {
      fraction.from = cuts[k];
      const std::vector<double> passing = mass_through(edges, cuts_mm, k + 1, sharpness.value);
      for (std::size_t i = 0; i < mass.size(); ++i) mass[i] = std::max(0.0, arriving[i] - passing[i]);
      arriving = passing;
    }
    double share = 0;
    for (const double part : mass) share += part;
    fraction.share = MassShare(share);
    fraction.grading = grading_of(edges, mass, grading);
    if (!fraction.grading) {
      if (parent_packing) fraction.loose_per_loose = LooseShare(0);
    } else if (parent_packing) {
      fraction.packing = packing(*fraction.grading);
      if (fraction.packing) fraction.loose_per_loose = LooseShare(share * parent_packing->value() / fraction.packing->value());
    }
    screening.fractions.push_back(std::move(fraction));
  }
  screening.packing = parent_packing;
  for (const Aperture& cut : cuts) {
    if (cut <= grading.points.back().aperture || grading.points.back().passing.value() >= 1) continue;
    screening.notes.push_back({"screen.opening-above-sieves", Level::note, "",
                               {{"aperture_mm", in_mm(cut)}, {"coarsest_mm", in_mm(grading.points.back().aperture)}}});
  }
  return screening;
}

std::vector<FractionAmount> fraction_amounts(const Screening& screening, std::optional<Mass> dry_mass, std::optional<LooseVolume> volume) {
  std::vector<FractionAmount> amounts;
  for (const ScreenedFraction& fraction : screening.fractions) {
    FractionAmount amount;
    if (dry_mass) amount.dry_mass = *dry_mass * fraction.share.value();
    if (volume && fraction.loose_per_loose) amount.volume = *volume * fraction.loose_per_loose->value();
    amounts.push_back(amount);
  }
  return amounts;
}

std::optional<BulkDensityRatio> bulk_density_ratio(const Screening& screening, const ScreenedFraction& fraction) {
  if (!screening.packing || !fraction.packing) return std::nullopt;
  return BulkDensityRatio(fraction.packing->value() / screening.packing->value());
}

Loss screening_loss(Mass screened, std::span<const Mass> weighed) {
  Mass sum{};
  for (const Mass& mass : weighed) sum = sum + mass;
  return Loss((screened - sum) / screened);
}

Mass out_of_bag(Mass weighed, Loss loss) { return weighed / (1 + std::max(0.0, -loss.value())); }

}  // namespace gritwright
