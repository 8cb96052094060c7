#pragma once
#include "gritwright/models/mix_ranges.hpp"
#include "gritwright/report/pot_section.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "picture_table.hpp"

namespace gritwright::desktop {

/// A section as a table: height, grain, water, trapped and free air with their ranges, from the fill line down. `section` null: the
/// heading alone; `ranges` null: dashes.
[[nodiscard]] PictureTable section_table(const PotSection* section, const MixRanges* ranges, UnitSystem units);

/// The same in cm and shares for a file.
[[nodiscard]] PictureTable section_data(const PotSection* section, const MixRanges* ranges);

}  // namespace gritwright::desktop
