#pragma once
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/design_problem.hpp"
#include "gritwright/domain/species_profile.hpp"
#include "mix_learning.hpp"
#include "shelf.hpp"

namespace gritwright::desktop {

/// A search as it can be run, or what stands in its way.
struct FindSetup {
  std::optional<DesignProblem> problem;  ///< absent while something is missing or wrong
  std::vector<ShelfItem> grain;          ///< all that may be chosen from
  std::vector<ShelfPot> further_pots;    ///< asked besides the first
  std::vector<std::size_t> taken;        ///< of them, the problem's candidates in its order
  std::vector<MixCalibration> calibrations;  ///< that taught the candidates' constants
  std::vector<int> wish_of;              ///< row of each of the problem's wishes; -1 for a share of one candidate
  std::optional<MixedVolume> need;       ///< as typed, else one filling of each pot
  std::optional<Spill> spill;            ///< of what is mixed, as typed
  QString currency;                      ///< of all prices; empty where nobody wrote one
  QString waiting;                       ///< what is still missing, in words
  /// "/wishes/ROW/least", "/candidates/KEY/stock_l", "/candidates", "/parts/total", "/parts/components", "/need_l", "/dust", "/pots".
  Faults faults;
  Notes out_of_reach;  ///< hard wishes that nothing on the shelf touches; found before any search
};

/// The names the pots have in the problem.
inline const std::string first_pot = "pot";
/// Of a pot of the record that is asked besides; behind the first in the order of names, which is the one pictures show.
[[nodiscard]] std::string further_pot(const QString& id);

[[nodiscard]] FindSetup find_setup(const Bench& bench, const Shelf& shelf);

/// Puts the band a group wishes for on the bench, and remembers the grower's own.
void borrow_band(BenchState& state, const SpeciesProfile& profile);
/// The same with the band a kept mix was wanted in.
void borrow_band(BenchState& state, const SizeBand& band);

/// The band that stood on the bench before a group's, unless another was typed over it since.
void give_band_back(BenchState& state);

/// What of a profile the sheet has fields for, as typed in them; the band goes to the bench.
void start_from(BenchState& state, const SpeciesProfile& profile);

/// The wishes as typed, as a profile of that name. Empty where they can't be read.
[[nodiscard]] std::optional<SpeciesProfile> profile_of(const FindSetup& setup, const std::string& name, const SpeciesProfile& like);

/// The points of a curve as typed: "4.75 90-100; 2.36 34-50" for limits, single values for a grading to come near to.
[[nodiscard]] Result<WishFigure> curve_figure(WishRow row, const QString& text);

/// Whether `row` asks something of a pot.
[[nodiscard]] std::optional<PotFigure> pot_figure_of(WishRow row);

}  // namespace gritwright::desktop
