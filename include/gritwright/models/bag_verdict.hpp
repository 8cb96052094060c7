#pragma once
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/bag.hpp"
#include "gritwright/estimate.hpp"
#include "gritwright/models/screening.hpp"
#include "gritwright/models/sieve_analysis.hpp"

namespace gritwright {

/// When a bag is good enough. The defaults are our assumption; the grower changes them.
struct VerdictLimits {
  MassShare least_in_band{0.85};
  MassShare most_finer{0.03};
  LooseShare least_usable{0.60};  ///< usable litres per litre of bag, after screening
  friend bool operator==(const VerdictLimits&, const VerdictLimits&) = default;
};

enum class Verdict { take, take_after_screening, other_use_or_complain };

/// A bag judged against the wanted band.
struct BagVerdict {
  Verdict verdict;
  Band band;  ///< as judged
  MassShare in_band;
  MassShare finer;
  MassShare coarser;
  std::vector<Aperture> openings;  ///< to screen at, coarse to fine; empty for a bag that is taken as it is
  std::optional<MassShare> kept;   ///< share of the mass that the screening keeps; absent without openings
  LooseShare usable;               ///< usable loose litres per loose litre of bag; by mass share where packing is unknown
  std::optional<PackingDensity> packing_of_bag{};   ///< where it is screened and packing is known
  std::optional<PackingDensity> packing_of_kept{};
};

/// Share of the base that the curve counts as finer than every sieve although it was found nowhere; 0 for a gain.
[[nodiscard]] MassShare lost_share(const SieveAnalysis& analysis);

/// Take: enough in the band and little enough finer. Else: screened at the lower, the upper or both ends of the band, at the first
/// of these whose kept fraction is a bag to take, or at all that apply; taken if the usable litres suffice. The value is absent
/// where the sieves don't reach the band's ends. Precondition: check(grading) is empty, 0 <= from < to; from 0
/// means that dust is welcome. `lost` is the share of the bag that the curve counts as finer than every sieve although it was found
/// nowhere (lost_share); it counts neither as finer nor as inside.
[[nodiscard]] Estimate<BagVerdict> judge(const Grading& grading, const Band& wanted, const VerdictLimits& limits = {},
                                         Sharpness sharpness = {}, const PackingDensityOf& packing = {}, MassShare lost = MassShare(0));

/// What a bag of this grading gives in loose litres per litre, screened by a thorough shake at just the openings of `verdict`; 1 where it has none.
/// Precondition: as judge, and the grading has the sieves of the one that was judged.
[[nodiscard]] LooseShare usable_at_openings_of(const BagVerdict& verdict, const Grading& grading, const PackingDensityOf& packing = {});

/// The band with its ends at the owned openings nearest by ratio, an end that has none within half a step of R20/3 (a factor of 1.19)
/// left as it is; as it was if both ends meet in one.
[[nodiscard]] Band snapped(const Band& band, std::span<const Aperture> owned);

/// A way to screen a bag with the sieves at hand.
struct OpeningChoice {
  std::optional<Aperture> coarse;  ///< absent: nothing is taken off the top
  std::optional<Aperture> fine;    ///< absent: nothing is taken off below
  MassShare kept;                  ///< of the bag
  MassShare usable;                ///< of the bag: kept and inside the wanted band
  MassShare dust;                  ///< of what is kept: finer than the band
  bool takes;                      ///< what is kept meets the limits
};

/// One way, `lost` as in judge; empty where the openings are below the test's sieves, the wanted band is outside them, or nothing is kept.
[[nodiscard]] std::optional<OpeningChoice> opening_choice(const Grading& grading, const Band& wanted, std::optional<Aperture> coarse, std::optional<Aperture> fine,
                                                          const VerdictLimits& limits = {}, Sharpness sharpness = {}, MassShare lost = MassShare(0));

/// Which openings? Every pair of owned openings and every single one; those that meet the limits first, then by usable share,
/// fewer openings on a tie. Openings below the test's sieves are left out. Empty where the wanted band is outside the sieves.
[[nodiscard]] std::vector<OpeningChoice> opening_choices(const Grading& grading, const Band& wanted, std::span<const Aperture> owned,
                                                         const VerdictLimits& limits = {}, Sharpness sharpness = {}, MassShare lost = MassShare(0));

/// Price of a litre that can be used; empty if none can. Precondition: price >= 0, in the grower's currency per loose litre.
[[nodiscard]] std::optional<double> price_per_usable_l(double price_per_l, LooseShare usable);

/// The same of a bag, from its price and its litres; empty without either.
[[nodiscard]] std::optional<Price> price_per_usable_l(const Bag& bag, LooseShare usable);

}  // namespace gritwright
