#pragma once
#include <QString>
#include <QStringList>
#include <optional>
#include <string>
#include <vector>

#include "bench.hpp"
#include "figures.hpp"
#include "gritwright/models/bag_verdict.hpp"
#include "gritwright/models/fraction_packing.hpp"

namespace gritwright::desktop {

/// The bag of the component on screen, judged against the wanted band, as it is read.
struct VerdictView {
  QString sentence;     ///< "Take it after screening at 2 mm", or why there is no verdict
  FigureGroup figures;
  FigureGroup laboratory;              ///< empty where they are not wanted
  QStringList fraction_heading;
  std::vector<QStringList> fractions;  ///< what screening gives, coarse to fine; one row for the whole bag where it is taken as it is
  std::vector<Explanation> fractions_how;
  std::vector<double> fraction_shares; ///< of the mass, 0..1
  QStringList opening_heading;
  std::vector<QStringList> openings;   ///< "which openings?" over the sieves of the sheet, best first
  struct OpeningShares {
    double kept;
    double usable;
    double dust;
  };
  std::vector<OpeningShares> opening_shares;  ///< 0..1
  bool openings_are_owned = false;     ///< over the sieves owned, else over those of the test
  QStringList lots;  ///< what is unusual about the bag for its material, and what it would change
  QStringList notes;
};

[[nodiscard]] VerdictView verdict_view(const Bench& bench);

/// What is usable of a litre: in litres, and as a share where volumes are shown in quarts.
[[nodiscard]] std::string usable_text(double share, UnitSystem units);

/// "2 mm to 4 mm", "over 4 mm", "under 2 mm".
[[nodiscard]] QString fraction_name(const ScreenedFraction& fraction, UnitSystem units);

/// The sieves that a wanted band is judged at: those owned, without any those of the test.
[[nodiscard]] std::vector<Aperture> sieves_at_hand(const Grading& grading, const std::vector<Aperture>& owned);

/// The ways to screen that are listed, best first, `lost` as in judge: over the owned sieves, without any over those of the test.
[[nodiscard]] std::vector<OpeningChoice> shown_choices(const Grading& grading, const Band& band, const std::vector<Aperture>& owned, MassShare lost);

/// The grading and densities of the component on screen as the verdict takes them; empty without a finished test.
struct GradedBag {
  Grading grading;
  FractionPacking packing;
  std::optional<BulkDensity> bulk_density;          ///< that the packing goes by
  std::optional<ParticleDensity> particle_density;  ///< the same
  MassShare lost{};          ///< found nowhere, though the curve counts it as finer than every sieve
  std::optional<Band> band;  ///< the wanted grain, its ends at the nearest sieves owned, without any at those of the test
};
[[nodiscard]] std::optional<GradedBag> graded_bag(const Bench& bench);

}  // namespace gritwright::desktop
