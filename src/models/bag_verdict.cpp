#include "gritwright/models/bag_verdict.hpp"

#include <algorithm>
#include <cmath>

#include "gritwright/models/grading_curve.hpp"

namespace gritwright {

namespace {

struct BandShares {
  MassShare in_band;
  MassShare finer;
  MassShare coarser;
};

std::optional<BandShares> shares_of(const Grading& grading, const Band& band) {
  const GradingCurve curve(grading);
  const auto below = band.from <= aperture_mm(0) ? std::optional(Passing(0)) : curve.passing_at(band.from);
  const auto up_to = curve.passing_at(band.to);
  if (!below || !up_to) return std::nullopt;
  return BandShares{MassShare(up_to->value() - below->value()), MassShare(below->value()), MassShare(1 - up_to->value())};
}

bool takes(const BandShares& shares, const VerdictLimits& limits) {
  // A share that was typed to sit on its limit must not fail by a binary digit.
  constexpr double same = 1e-12;
  return shares.in_band.value() >= limits.least_in_band.value() - same && shares.finer.value() <= limits.most_finer.value() + same;
}

/// The kept fraction: below the coarse opening, if there is one, and above the fine one.
struct Kept {
  ScreenedFraction fraction;
  std::optional<BandShares> shares;  ///< of the fraction
};

std::optional<Kept> keep(const Grading& grading, const Band& wanted, std::optional<Aperture> coarse, std::optional<Aperture> fine,
                         Sharpness sharpness, const PackingDensityOf& packing) {
  std::vector<Aperture> openings;
  if (coarse) openings.push_back(*coarse);
  if (fine) openings.push_back(*fine);
  const auto screening = screen(grading, openings, sharpness, packing);
  if (!screening.ok()) return std::nullopt;
  Kept kept{screening->fractions[coarse ? 1 : 0], {}};
  if (kept.fraction.grading) kept.shares = shares_of(*kept.fraction.grading, wanted);
  return kept;
}

LooseShare usable_of(const ScreenedFraction& fraction) { return fraction.loose_per_loose.value_or(LooseShare(fraction.share.value())); }

std::optional<Kept> screened(const Grading& grading, BagVerdict& verdict, const VerdictLimits& limits, Sharpness sharpness,
                             const PackingDensityOf& packing) {
  const std::optional<Aperture> upper = verdict.coarser.value() > 0 ? std::optional(verdict.band.to) : std::nullopt;
  const std::optional<Aperture> lower = verdict.finer.value() > 0 ? std::optional(verdict.band.from) : std::nullopt;
  struct Way {
    std::optional<Aperture> coarse;
    std::optional<Aperture> fine;
  };
  std::vector<Way> ways;
  if (lower) ways.push_back({{}, lower});
  if (upper) ways.push_back({upper, {}});
  if (lower && upper) ways.push_back({upper, lower});
  std::optional<Kept> kept;
  for (const Way& way : ways) {
    const auto attempt = keep(grading, verdict.band, way.coarse, way.fine, sharpness, packing);
    if (!attempt) continue;
    kept = attempt;
    verdict.openings.clear();
    if (way.coarse) verdict.openings.push_back(*way.coarse);
    if (way.fine) verdict.openings.push_back(*way.fine);
    if (kept->shares && takes(*kept->shares, limits)) break;
  }
  return kept;
}

}  // namespace

Estimate<BagVerdict> judge(const Grading& grading, const Band& wanted, const VerdictLimits& limits, Sharpness sharpness,
                           const PackingDensityOf& packing) {
  Estimate<BagVerdict> estimate;
  const Facts band_facts{{"from_mm", in_mm(wanted.from)}, {"to_mm", in_mm(wanted.to)}};
  const auto shares = shares_of(grading, wanted);
  if (!shares) {
    estimate.notes.push_back({"verdict.band-outside-sieves", Level::note, "", band_facts});
    return estimate;
  }
  BagVerdict verdict{Verdict::take, wanted, shares->in_band, shares->finer, shares->coarser, {}, {}, LooseShare(1)};
  if (!takes(*shares, limits)) {
    const auto kept = screened(grading, verdict, limits, sharpness, packing);
    verdict.usable = kept ? usable_of(kept->fraction) : LooseShare(0);
    if (kept) verdict.kept = kept->fraction.share;
    verdict.verdict = kept && verdict.usable >= limits.least_usable ? Verdict::take_after_screening : Verdict::other_use_or_complain;
    if (kept && !kept->fraction.loose_per_loose) estimate.notes.push_back({"verdict.litres-by-mass", Level::note, "", {}});
    if (kept && (!kept->shares || !takes(*kept->shares, limits))) {
      estimate.notes.push_back({"verdict.screening-leaves-misplaced", Level::note, "",
                                {{"percent", kept->shares ? kept->shares->in_band.value() * 100 : 0},
                                 {"finer_percent", kept->shares ? kept->shares->finer.value() * 100 : 0}}});
    }
  }
  if (verdict.verdict == Verdict::other_use_or_complain) {
    const auto small = band_share(grading, {aperture_mm(1), aperture_mm(2)});
    if (small && *small >= MassShare(0.1)) {
      estimate.notes.push_back({"verdict.small-pots", Level::note, "", {{"percent", small->value() * 100}}});
    }
  }
  estimate.value = std::move(verdict);
  return estimate;
}

Band snapped(const Band& band, std::span<const Aperture> owned) {
  if (owned.empty()) return band;
  const auto nearest = [&](Aperture end) {
    return *std::ranges::min_element(owned, {}, [&](Aperture sieve) { return std::abs(std::log(sieve / end)); });
  };
  const Band snapped{band.from > aperture_mm(0) ? nearest(band.from) : band.from, nearest(band.to)};
  return snapped.from < snapped.to ? snapped : band;
}

std::vector<OpeningChoice> opening_choices(const Grading& grading, const Band& wanted, std::span<const Aperture> owned,
                                           const VerdictLimits& limits, Sharpness sharpness) {
  std::vector<OpeningChoice> choices;
  if (!shares_of(grading, wanted)) return choices;
  const auto consider = [&](std::optional<Aperture> coarse, std::optional<Aperture> fine) {
    const auto kept = keep(grading, wanted, coarse, fine, sharpness, {});
    if (!kept || !kept->shares) return;
    choices.push_back({coarse, fine, kept->fraction.share, MassShare(kept->fraction.share.value() * kept->shares->in_band.value()),
                       kept->shares->finer, takes(*kept->shares, limits)});
  };
  for (const Aperture& one : owned) {
    consider({}, one);
    consider(one, {});
    for (const Aperture& finer : owned) {
      if (finer < one) consider(one, finer);
    }
  }
  const auto openings = [](const OpeningChoice& c) { return int{c.coarse.has_value()} + int{c.fine.has_value()}; };
  std::ranges::stable_sort(choices, [&](const OpeningChoice& a, const OpeningChoice& b) {
    if (a.takes != b.takes) return a.takes;
    if (a.usable != b.usable) return a.usable > b.usable;
    return openings(a) < openings(b);
  });
  return choices;
}

std::optional<double> price_per_usable_l(double price_per_l, LooseShare usable) {
  if (usable.value() <= 0) return std::nullopt;
  return price_per_l / usable.value();
}

std::optional<Price> price_per_usable_l(const Bag& bag, LooseShare usable) {
  if (!bag.price || !bag.volume || in_l(*bag.volume) <= 0) return std::nullopt;
  const auto amount = price_per_usable_l(bag.price->amount / in_l(*bag.volume), usable);
  if (!amount) return std::nullopt;
  return Price{*amount, bag.price->currency};
}

}  // namespace gritwright
