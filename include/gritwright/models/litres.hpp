#pragma once
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/bag.hpp"
#include "gritwright/domain/design_problem.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/units.hpp"

namespace gritwright {

/// Loose litres that a dry mass of grain fills. Precondition: density above 0.
[[nodiscard]] LooseVolume loose_volume(Mass dry, BulkDensity density);

/// Loose litres of one bag: its dry grain, weighed or by its own litre weight, by `density`; the litres it came with where either is not
/// known. Empty where those are not known either.
[[nodiscard]] std::optional<LooseVolume> litres_of_one(const Bag& bag, std::optional<BulkDensity> density);

/// How a mix is placed in its pot.
enum class Placing { poured, worked_in, shaken_hard_rounded, shaken_hard_angular };

/// What a mix settles by where no jug test was made: 0, .08, .14, .19. Source: gillette-hill-1908 (Table IX; Feret's sands).
[[nodiscard]] Settling default_settling(Placing placing);

/// Share of a mix that lands beside the pot where nobody measured it, common practice 5 to 10 %.
inline constexpr Spill default_spill{0.07};

/// Mixed litres, as poured, that fill `fill` after settling and spill: P/((1 - settling)(1 - spill)).
[[nodiscard]] MixedVolume mixed_volume_to_fill(PotVolume fill, Settling settling, Spill spill);
/// The same with what `mix` loses.
[[nodiscard]] MixedVolume mixed_volume_to_fill(PotVolume fill, const Mix& mix);

/// Loose litres of one component in `mixed` litres as poured: mixed·share/(1 - shrinkage).
[[nodiscard]] LooseVolume component_volume(MixedVolume mixed, LooseShare share, Shrinkage shrinkage);

/// Loose litres of every component in `mixed` litres as poured. Empty where the shrinkage is unknown.
[[nodiscard]] std::optional<std::vector<LooseVolume>> component_volumes(MixedVolume mixed, const MixState& state);

/// Price of a mixed litre, as poured: the loose litres that go into the mix, each at its price, over what they make. Empty where a price or
/// the shrinkage is unknown. Precondition: one price per component.
[[nodiscard]] std::optional<PricePerLitre> price_per_mixed_l(const MixState& state, std::span<const std::optional<PricePerLitre>> prices);

}  // namespace gritwright
