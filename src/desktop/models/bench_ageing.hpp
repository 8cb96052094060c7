#pragma once
// The mix on the bench in the years to come. No figure is computed here.

#include <QStringList>
#include <memory>
#include <stop_token>

#include "bench_ranges.hpp"
#include "charts/picture_table.hpp"
#include "gritwright/models/ageing.hpp"

namespace gritwright::desktop {

/// A mix in its pot with how fast each of its grains breaks down.
struct AgeingQuestion {
  MixQuestion mix;
  std::vector<std::optional<Breakdown>> breakdowns;  ///< in the mix's order
  friend bool operator==(const AgeingQuestion&, const AgeingQuestion&) = default;
};

/// By the crumble test where there is one, else by the catalogue's typical durability; empty where neither is known.
[[nodiscard]] std::optional<Breakdown> breakdown_of(const Component& component, const std::optional<Crumbling>& crumbling, const Catalogue& catalogue);

/// Empty without a mix that has volumes, or without a pot.
[[nodiscard]] std::optional<AgeingQuestion> ageing_question(const Bench& bench);

inline constexpr int seasons_ahead = 5;

struct BenchAgeing {
  AgeingQuestion of;
  AirOverYears years;
  std::size_t draws = 0;
};

/// Draws of a picture of the years that moves with a slider; they are the beginning of those of one that stands still.
inline constexpr SampleSize moving_years_sample{64, 1};

/// Null where nothing can be foretold, and when asked to stop.
[[nodiscard]] std::shared_ptr<const BenchAgeing> ageing_of(const AgeingQuestion& question, const Catalogue& catalogue, const SliceRunner& runner, const std::stop_token& stop = {},
                                                           const SampleSize& size = standing_sample);

/// "24.0 % air when new, after 5 seasons 17.1 % if ...; likely below 20 % in season 3 ..., an estimate"; why there is none where
/// `ageing` is null.
[[nodiscard]] QString ageing_sentence(const Bench& bench, const BenchAgeing* ageing);

/// "Likely below 20 % air in season 3"; empty where that is not foretold.
[[nodiscard]] QString repotting_hint(const AirOverYears& years);

/// Where the breaking of each grain comes from, and what else to know.
[[nodiscard]] QStringList ageing_notes(const Bench& bench, const BenchAgeing* ageing);

/// One row a season: air with its range for both fates of the crumbs, then what is finer than each sieve.
[[nodiscard]] PictureTable ageing_table(const BenchAgeing* ageing, UnitSystem units);
[[nodiscard]] PictureTable ageing_data(const BenchAgeing* ageing);

}  // namespace gritwright::desktop
