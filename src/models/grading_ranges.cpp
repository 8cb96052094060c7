#include "gritwright/models/grading_ranges.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>
#include <span>
#include <utility>

#include "draw_slices.hpp"
#include "drawn_grading.hpp"
#include "gritwright/models/laboratory_figures.hpp"

namespace gritwright {

namespace {

enum Score { operators_score, lost_score, first_class_score };

const double reading_deviation = 1 / std::sqrt(12.0);

/// A grading as it could have come out.
class DrawnSieving {
 public:
  explicit DrawnSieving(const SievedGrading& sieved) : grading_(sieved.grading, sieving_spread(sieved.grading, sieved.particle_density, sieved.sample)) {}

  [[nodiscard]] std::size_t dimensions() const { return first_class_score + grading_.classes(); }
  [[nodiscard]] Grading draw(std::span<const double> scores) {
    return grading_.draw({scores.subspan(first_class_score), scores[operators_score], scores[lost_score]});
  }
  /// Of `lost`, the share that the curve of the draw counts as finer than every sieve.
  [[nodiscard]] static MassShare lost_in_draw(std::span<const double> scores, MassShare lost) {
    const double elsewhere = lost.value() * no_dust_in_lost(scores[lost_score]);
    return MassShare((lost.value() - elsewhere) / (1 - elsewhere));
  }

 private:
  DrawnGrading grading_;
};

constexpr double beyond = std::numeric_limits<double>::infinity();

/// As percentile(), with what lies beyond the sieves at either infinity.
double percentile_mm(const Grading& grading, double percent) {
  if (const auto size = percentile(grading, percent)) return in_mm(*size);
  return percent < in_percent(grading.points.front().passing) ? -beyond : beyond;
}

std::size_t rank_of(double share, std::size_t count) { return static_cast<std::size_t>(std::lround(share * static_cast<double>(count - 1))); }

std::optional<double> if_inside(double value) { return std::isfinite(value) ? std::optional(value) : std::nullopt; }

OpenRange open_range_of(std::vector<double> values) {
  std::ranges::sort(values);
  const auto quantile = [&](double share) { return if_inside(values[rank_of(share, values.size())]); };
  return {quantile(0.05), quantile(0.5), quantile(0.95)};
}

/// Where on its curve so much passes, in points from the finest: of gradings of the same sizes it rises with percentile_mm(), without its powers.
double place_of(const Grading& grading, double percent) {
  const auto& points = grading.points;
  constexpr double same = 1e-12;  // as percentile()
  const double share = percent / 100;
  if (std::abs(share - points.front().passing.value()) < same) return 0;
  if (std::abs(share - points.back().passing.value()) < same) return static_cast<double>(points.size() - 1);
  if (share < points.front().passing.value()) return -beyond;
  if (share > points.back().passing.value()) return beyond;
  const auto upper = std::ranges::lower_bound(points, Passing(share), {}, &GradingPoint::passing);
  const auto lower = std::prev(upper);
  return static_cast<double>(lower - points.begin()) + (share - lower->passing.value()) / (upper->passing.value() - lower->passing.value());
}

/// As open_range_of() their percentile_mm().
OpenRange percentile_range(std::span<const Grading> draws, double percent) {
  std::vector<std::pair<double, std::size_t>> places;
  for (std::size_t i = 0; i < draws.size(); ++i) places.emplace_back(place_of(draws[i], percent), i);
  std::ranges::sort(places);
  const auto quantile = [&](double share) { return if_inside(percentile_mm(draws[places[rank_of(share, places.size())].second], percent)); };
  return {quantile(0.05), quantile(0.5), quantile(0.95)};
}

/// What independent roundings leave of a figure.
Range rounded(double value, double deviation) {
  return {value - score_of_95_percent * deviation, value, value + score_of_95_percent * deviation};
}

/// Where nominally nothing lies beyond the outermost sieves, a draw tells nothing of it either: sums of drawn shares miss a whole by their
/// last digit, and grain that is drawn below the finest sieve lies somewhere below it.
void settle_ends(const Grading& nominal, Grading& drawn) {
  if (nominal.points.front().passing == Passing(0)) drawn.points.front().passing = Passing(0);
  if (nominal.points.back().passing == Passing(1)) drawn.points.back().passing = Passing(1);
}

/// As band_share() of a draw with settled ends.
double band_of(const Grading& nominal, const Grading& drawn, const Band& band) {
  const auto share = band_share(drawn, band);
  if (share) return share->value();
  Grading settled = drawn;
  settle_ends(nominal, settled);
  return band_share(settled, band).value().value();
}

std::vector<std::optional<OpenRange>> percentile_ranges(const Grading& nominal, std::span<const Grading> draws) {
  std::vector<std::optional<OpenRange>> ranges;
  for (const int percent : reported_percentiles) {
    ranges.emplace_back();
    if (percentile(nominal, percent)) ranges.back() = percentile_range(draws, percent);
  }
  return ranges;
}

/// Of sizes and bands over gradings that were drawn about `nominal`.
BlendRanges size_ranges(const Grading& nominal, std::span<const Grading> draws, std::span<const Band> bands) {
  std::vector<double> values(draws.size());
  const auto gather = [&](auto figure) -> std::vector<double>& {
    std::ranges::transform(draws, values.begin(), figure);
    return values;
  };
  BlendRanges ranges;
  ranges.percentiles_mm = percentile_ranges(nominal, draws);
  if (uniformity(nominal)) {
    ranges.uniformity = open_range_of(gather([](const Grading& drawn) {
      const double coarse = percentile_mm(drawn, 60), fine = percentile_mm(drawn, 10);
      return fine > 0 ? coarse / fine : beyond;
    }));
  }
  for (const Band& band : bands) {
    ranges.bands.emplace_back();
    if (band_share(nominal, band)) ranges.bands.back() = range_of(gather([&](const Grading& drawn) { return band_of(nominal, drawn, band); }));
  }
  return ranges;
}

std::vector<Grading> drawn_gradings(const SievedGrading& sieved, const SampleSize& size, const SliceRunner& runner) {
  const DrawnSieving drawing(sieved);
  std::vector<Grading> draws(size.draws);
  over_draws(NormalScores(drawing.dimensions(), size.seed), size, runner,
             [&](std::size_t first, std::size_t last, std::span<const double> points) {
               DrawnSieving mine = drawing;
               for (std::size_t i = first; i < last; ++i)
                 draws[i] = mine.draw(points.subspan((i - first) * mine.dimensions(), mine.dimensions()));
             });
  return draws;
}

/// At each point of the gradings. Precondition: at least one, all of the same sizes.
std::vector<Range> passing_of(std::span<const Grading> draws) {
  std::vector<double> values(draws.size());
  std::vector<Range> ranges;
  for (std::size_t i = 0; i < draws.front().points.size(); ++i) {
    std::ranges::transform(draws, values.begin(), [&](const Grading& drawn) { return drawn.points[i].passing.value(); });
    ranges.push_back(range_of(values));
  }
  return ranges;
}

}  // namespace

SievedGrading sieved_grading(const SieveTest& test, const SieveAnalysis& analysis) {
  return {analysis.grading, analysis.pan, test.particle_density, sample_of(test, analysis)};
}

SievedGrading sieved_grading(const PooledTests& pooled, std::span<const SievedSample> samples, std::optional<ParticleDensity> density) {
  return {pooled.grading, pooled.pan, density, taken_together(samples, pooled)};
}

CurveRanges curve_ranges(const SievedGrading& sieved, const SampleSize& size, const SliceRunner& runner) {
  const std::vector<Grading> draws = drawn_gradings(sieved, size, runner);
  return {passing_of(draws), percentile_ranges(sieved.grading, draws)};
}

BlendRanges blend_ranges(const Grading& nominal, std::span<const std::vector<double>> passing_draws, std::span<const Band> bands) {
  std::vector<Grading> draws;
  draws.reserve(passing_draws.size());
  for (const std::vector<double>& passing : passing_draws) {
    draws.push_back(nominal);
    for (std::size_t i = 0; i < passing.size(); ++i) draws.back().points[i].passing = Passing(passing[i]);
  }
  return size_ranges(nominal, draws, bands);
}

LaboratoryRanges laboratory_ranges(const SievedGrading& sieved, const SampleSize& size, const SliceRunner& runner) {
  std::vector<LaboratoryFigures> draws(size.draws);
  // A draw moves grain from sieve to sieve; it puts nothing into a pan that was empty.
  std::ranges::transform(drawn_gradings(sieved, size, runner), draws.begin(), [&](const Grading& drawn) { return laboratory_figures(drawn, sieved.pan); });
  const LaboratoryFigures nominal = laboratory_figures(sieved.grading, sieved.pan);
  const auto range = [&](std::optional<double> LaboratoryFigures::*figure) -> std::optional<Range> {
    if (!(nominal.*figure)) return std::nullopt;
    std::vector<double> values;
    for (const LaboratoryFigures& drawn : draws) {
      if (!(drawn.*figure)) return std::nullopt;
      values.push_back(*(drawn.*figure));
    }
    return range_of(values);
  };
  return {range(&LaboratoryFigures::curvature),   range(&LaboratoryFigures::fineness_modulus), range(&LaboratoryFigures::mean_phi),
          range(&LaboratoryFigures::sorting_phi), range(&LaboratoryFigures::skewness),         range(&LaboratoryFigures::kurtosis)};
}

GradingRanges grading_ranges(const SieveTest& test, const SieveAnalysis& analysis, std::span<const Band> bands, const SampleSize& size,
                             const SliceRunner& runner) {
  const std::vector<Grading> draws = drawn_gradings(sieved_grading(test, analysis), size, runner);
  std::vector<double> values(size.draws);
  const auto gather = [&](auto figure) -> std::vector<double>& {
    std::ranges::transform(draws, values.begin(), figure);
    return values;
  };
  GradingRanges ranges;
  const std::size_t sieves = analysis.sieves.size();
  // The analysis lists sieves coarse to fine, the grading fine to coarse.
  ranges.passing = passing_of(draws);
  std::ranges::reverse(ranges.passing);
  for (std::size_t i = 0; i < sieves; ++i) {
    const std::size_t at = sieves - 1 - i;
    ranges.retained.push_back(range_of(gather([&](const Grading& drawn) {
      return (at + 1 == sieves ? 1 : drawn.points[at + 1].passing.value()) - drawn.points[at].passing.value();
    })));
  }
  BlendRanges sizes = size_ranges(analysis.grading, draws, bands);
  ranges.percentiles_mm = std::move(sizes.percentiles_mm);
  ranges.uniformity = sizes.uniformity;
  ranges.bands = std::move(sizes.bands);
  const SievedSample sample = sample_of(test, analysis);
  const double weighing_g = in_g(sample.resolution) * reading_deviation;
  // A tared pan was weighed twice.
  const double total_g = weighing_g * std::sqrt(static_cast<double>(sample.weighings * (static_cast<int>(sieves) + 1)));
  if (analysis.total) ranges.total_g = rounded(in_g(*analysis.total), total_g);
  const bool weighed_start = test.dry_mass && test.basis == PercentBasis::original;
  if (analysis.base) ranges.base_g = rounded(in_g(*analysis.base), weighed_start ? weighing_g : total_g);
  if (analysis.loss && test.dry_mass)
    ranges.loss = rounded(analysis.loss->value(), std::hypot(total_g, weighing_g) * (1 + test.moisture.value()) / in_g(*test.dry_mass));
  return ranges;
}

std::optional<VerdictRanges> verdict_ranges(const SievedGrading& sieved, const Band& wanted, const PackingDensityOf& packing, const VerdictLimits& limits,
                                            const SampleSize& size, const SliceRunner& runner) {
  const auto reached = judge(sieved.grading, wanted, limits, {}, packing, sieved.sample.lost);
  if (!reached.value) return std::nullopt;
  const DrawnSieving drawing(sieved);
  std::vector<double> in_band(size.draws), finer(size.draws), coarser(size.draws), usable(size.draws), same(size.draws);
  over_draws(NormalScores(drawing.dimensions(), size.seed), size, runner,
             [&](std::size_t first, std::size_t last, std::span<const double> points) {
               DrawnSieving mine = drawing;
               for (std::size_t i = first; i < last; ++i) {
                 const auto scores = points.subspan((i - first) * mine.dimensions(), mine.dimensions());
                 Grading grading = mine.draw(scores);
                 settle_ends(sieved.grading, grading);
                 const auto drawn = judge(grading, wanted, limits, {}, packing, DrawnSieving::lost_in_draw(scores, sieved.sample.lost));
                 const BagVerdict& verdict = drawn.value.value();
                 in_band[i] = verdict.in_band.value();
                 finer[i] = verdict.finer.value();
                 coarser[i] = verdict.coarser.value();
                 // Of the openings that are told; a draw's own verdict could name others.
                 usable[i] = usable_at_openings_of(*reached.value, grading, packing).value();
                 same[i] = verdict.verdict == reached.value->verdict ? 1 : 0;
               }
             });
  VerdictRanges ranges{range_of(in_band), range_of(finer), range_of(coarser), range_of(usable), 0};
  for (const double each : same) ranges.holds += each / static_cast<double>(size.draws);
  return ranges;
}

std::vector<FractionRange> screening_ranges(const SievedGrading& sieved, std::span<const Aperture> openings, const PackingDensityOf& packing, Sharpness sharpness,
                                            const SampleSize& size, const SliceRunner& runner) {
  const auto nominal = screen(sieved.grading, openings, sharpness, packing);
  if (!nominal) return {};
  std::vector<std::vector<ScreenedFraction>> draws(size.draws);
  const std::vector<Grading> gradings = drawn_gradings(sieved, size, runner);
  runner(size.draws, [&](std::size_t i) {
    Grading grading = gradings[i];
    settle_ends(sieved.grading, grading);
    draws[i] = screen(grading, openings, sharpness, packing).value().fractions;
  });
  std::vector<FractionRange> ranges;
  for (std::size_t k = 0; k < nominal->fractions.size(); ++k) {
    std::vector<double> shares, litres, middles;
    for (const auto& drawn : draws) {
      const ScreenedFraction& fraction = drawn[k];
      shares.push_back(fraction.share.value());
      if (fraction.loose_per_loose) litres.push_back(fraction.loose_per_loose->value());
      // A fraction that a draw leaves empty has no sizes; it says nothing of them.
      if (fraction.grading) middles.push_back(percentile_mm(*fraction.grading, 50));
    }
    ranges.push_back({range_of(shares), {}, {}});
    if (nominal->fractions[k].loose_per_loose && !litres.empty()) ranges.back().loose_per_loose = range_of(litres);
    if (nominal->fractions[k].grading && percentile(*nominal->fractions[k].grading, 50) && !middles.empty()) ranges.back().middle_mm = open_range_of(std::move(middles));
  }
  return ranges;
}

std::vector<OpeningRange> opening_ranges(const SievedGrading& sieved, const Band& wanted, std::span<const OpeningChoice> choices, const VerdictLimits& limits,
                                         const SampleSize& size, const SliceRunner& runner) {
  std::vector<Grading> gradings = drawn_gradings(sieved, size, runner);
  for (Grading& grading : gradings) settle_ends(sieved.grading, grading);
  std::vector<OpeningRange> ranges(choices.size());
  runner(choices.size(), [&](std::size_t k) {
    std::vector<double> kept, usable, dust;
    for (const Grading& grading : gradings) {
      const auto drawn = opening_choice(grading, wanted, choices[k].coarse, choices[k].fine, limits, {}, sieved.sample.lost);
      kept.push_back(drawn ? drawn->kept.value() : 0);
      usable.push_back(drawn ? drawn->usable.value() : 0);
      dust.push_back(drawn ? drawn->dust.value() : 0);
      if (drawn && drawn->takes) ranges[k].takes += 1 / static_cast<double>(size.draws);
    }
    ranges[k].kept = range_of(kept);
    ranges[k].usable = range_of(usable);
    ranges[k].dust = range_of(dust);
  });
  return ranges;
}

}  // namespace gritwright
