#pragma once
#include <string>
#include <vector>

#include "gritwright/models/day_litres.hpp"
#include "gritwright/models/season.hpp"
#include "gritwright/report/messages.hpp"
#include "gritwright/report/print_document.hpp"
#include "gritwright/report/quantity_text.hpp"

namespace gritwright {

/// What is done the evening before and what in the morning: from the day's figures, then the grower's own lines.
struct DayChecklist {
  std::vector<std::string> buy;
  std::vector<std::string> evening;
  std::vector<std::string> morning;
  std::vector<std::string> each_tree;
};
[[nodiscard]] DayChecklist day_checklist(const PlannedDay& day, const DayAnswer& answer, UnitSystem units, const Translate& translate = {});

/// The sheet of the day: evening before, trees in working order with room to write, batches, grain, buying, lifts, cautions.
[[nodiscard]] PrintDocument day_sheet(const PlannedDay& day, const DayAnswer& answer, UnitSystem units, const Translate& translate = {});

/// The same by topic, for a screen.
struct DaySections {
  std::vector<PrintSection> litres;   ///< by mix, by grain
  std::vector<PrintSection> shelf;    ///< what bags and fractions give, what to buy
  std::vector<PrintSection> batches;
  std::vector<PrintSection> lifts;
  std::vector<PrintSection> notes;
};
[[nodiscard]] DaySections day_sections(const PlannedDay& day, const DayAnswer& answer, UnitSystem units, const Translate& translate = {});

/// The trees due, their litres by mix and grain, what to buy, and the bags that several days want.
[[nodiscard]] PrintDocument season_sheet(const PlannedSeason& season, const SeasonAnswer& answer, UnitSystem units, const Translate& translate = {});

/// One card for each batch: what goes in, and which trees it is for.
[[nodiscard]] PrintDocument batch_cards(const PlannedDay& day, const DayAnswer& answer, UnitSystem units, const Translate& translate = {});

/// One label for each tree: name, species, day, mix with its version and grain, pot, plan.
[[nodiscard]] LabelSheet pot_labels(const PlannedDay& day, const DayAnswer& answer, const Translate& translate = {});

/// Cautions of the work of a day: dust, lifting, moss and bark, old vermiculite where the grain asks for them.
[[nodiscard]] std::vector<std::string> day_cautions(const PlannedDay& day, const DayAnswer& answer, const Translate& translate = {});

}  // namespace gritwright
