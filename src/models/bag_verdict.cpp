#include "gritwright/models/bag_verdict.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "gritwright/models/grading_curve.hpp"

namespace gritwright {

namespace {

struct BandShares {
  MassShare in_band;
  MassShare finer;
  MassShare coarser;
};

/// `lost` is finer by the curve alone.
std::optional<BandShares> shares_of(const Grading& grading, const Band& band, MassShare lost) {
  const auto in_band = band_share(grading, band);
  const auto up_to = GradingCurve(grading).passing_at(band.to);
  if (!in_band || !up_to) return std::nullopt;
  const double nowhere = std::min(lost.value(), up_to->value());
  const double finer = up_to->value() - in_band->value() - nowhere;
  // From 0 all that is finer than the coarse end is welcome, but what was lost still was not there.
  return BandShares{MassShare(in_band->value() + std::min(finer, 0.0)), MassShare(std::max(0.0, finer)), MassShare(1 - up_to->value())};
}

bool takes(const BandShares& shares, const VerdictLimits& limits) {
  // A share that was typed to sit on its limit must not fail by a binary digit.
  constexpr double same = 1e-12;
  return shares.in_band.value() >= limits.least_in_band.value() - same && shares.finer.value() <= limits.most_finer.value() + same;
}

struct GradedBag {
  const Grading& grading;
  MassShare lost;
};

/// The fraction below the coarse opening, if there is one, and above the fine one.
const ScreenedFraction& kept_of(const Screening& screening, bool has_coarse) { return screening.fractions[has_coarse ? 1 : 0]; }

struct Kept {
  ScreenedFraction fraction;
  std::optional<BandShares> shares;  ///< of the fraction
  std::optional<PackingDensity> packing_of_bag;
};

std::optional<Kept> keep(const GradedBag& bag, const Band& wanted, std::optional<Aperture> coarse, std::optional<Aperture> fine,
                         Sharpness sharpness, const PackingDensityOf& packing) {
  std::vector<Aperture> openings;
  if (coarse) openings.push_back(*coarse);
  if (fine) openings.push_back(*fine);
  const auto screening = screen(bag.grading, openings, sharpness, packing);
  if (!screening.ok()) return std::nullopt;
  Kept kept{kept_of(screening.value(), coarse.has_value()), {}, screening->packing};
  // With the pan goes what was lost; where nothing fine is screened off it stays in the fraction's curve.
  const MassShare lost(fine ? 0 : bag.lost.value() / kept.fraction.share.value());
  if (kept.fraction.grading) kept.shares = shares_of(*kept.fraction.grading, wanted, lost);
  return kept;
}

LooseShare usable_of(const ScreenedFraction& fraction) { return fraction.loose_per_loose.value_or(LooseShare(fraction.share.value())); }

std::optional<Kept> screened(const GradedBag& bag, BagVerdict& verdict, const VerdictLimits& limits, Sharpness sharpness,
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
    const auto attempt = keep(bag, verdict.band, way.coarse, way.fine, sharpness, packing);
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

MassShare lost_share(const SieveAnalysis& analysis) {
  return MassShare(std::max(0.0, analysis.sieves.back().passing.value() - analysis.pan.value()));
}

Estimate<BagVerdict> judge(const Grading& grading, const Band& wanted, const VerdictLimits& limits, Sharpness sharpness,
                           const PackingDensityOf& packing, MassShare lost) {
  Estimate<BagVerdict> estimate;
  const Facts band_facts{{"from_mm", in_mm(wanted.from)}, {"to_mm", in_mm(wanted.to)}};
  const auto shares = shares_of(grading, wanted, lost);
  if (!shares) {
    estimate.notes.push_back({"verdict.band-outside-sieves", Level::note, "", band_facts});
    return estimate;
  }
  BagVerdict verdict{Verdict::take, wanted, shares->in_band, shares->finer, shares->coarser, {}, {}, LooseShare(1)};
  if (!takes(*shares, limits)) {
    const auto kept = screened({grading, lost}, verdict, limits, sharpness, packing);
    verdict.usable = kept ? usable_of(kept->fraction) : LooseShare(0);
    if (kept) {
      verdict.kept = kept->fraction.share;
      verdict.packing_of_bag = kept->packing_of_bag;
      verdict.packing_of_kept = kept->fraction.packing;
    }
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

LooseShare usable_at_openings_of(const BagVerdict& verdict, const Grading& grading, const PackingDensityOf& packing) {
  if (verdict.openings.empty()) return LooseShare(1);
  const Screening screening = screen(grading, verdict.openings, {}, packing).value();
  return usable_of(kept_of(screening, verdict.openings.front() == verdict.band.to));
}

Band snapped(const Band& band, std::span<const Aperture> owned) {
  if (owned.empty()) return band;
  // Half a step of the R20/3 series; a sieve further off is another sieve, not the one that was meant.
  const double most_log_ratio = 0.25 * std::numbers::ln2 + 1e-9;
  const auto nearest = [&](Aperture end) {
    const auto distance = [&](Aperture sieve) { return std::abs(std::log(sieve / end)); };
    const Aperture sieve = *std::ranges::min_element(owned, {}, distance);
    return distance(sieve) <= most_log_ratio ? sieve : end;
  };
  const Band snapped{band.from > aperture_mm(0) ? nearest(band.from) : band.from, nearest(band.to)};
  return snapped.from < snapped.to ? snapped : band;
}

std::optional<OpeningChoice> opening_choice(const Grading& grading, const Band& wanted, std::optional<Aperture> coarse, std::optional<Aperture> fine,
                                            const VerdictLimits& limits, Sharpness sharpness, MassShare lost) {
  if (!band_share(grading, wanted)) return std::nullopt;
  const auto kept = keep({grading, lost}, wanted, coarse, fine, sharpness, {});
  if (!kept || !kept->shares) return std::nullopt;
  return OpeningChoice{coarse, fine, kept->fraction.share, MassShare(kept->fraction.share.value() * kept->shares->in_band.value()), kept->shares->finer, takes(*kept->shares, limits)};
}

std::vector<OpeningChoice> opening_choices(const Grading& grading, const Band& wanted, std::span<const Aperture> owned,
                                           const VerdictLimits& limits, Sharpness sharpness, MassShare lost) {
  std::vector<OpeningChoice> choices;
  const auto consider = [&](std::optional<Aperture> coarse, std::optional<Aperture> fine) {
    if (const auto choice = opening_choice(grading, wanted, coarse, fine, limits, sharpness, lost)) choices.push_back(*choice);
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
