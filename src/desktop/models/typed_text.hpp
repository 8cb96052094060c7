#pragma once
// What a typed text means: the kind of quantity, and the unit a bare number has in the chosen units. Texts are kept as typed
// with a unit wherever the bare number would not be metric, so that switching units never changes what was recorded.

#include <QString>

#include "gritwright/report/quantity_text.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"

namespace gritwright::desktop {

enum class Kind {
  words,          ///< a name, no number
  aperture,       ///< mm or a sieve's name
  mass,           ///< g | oz
  length,         ///< cm | in
  frame,          ///< mm | in
  volume,         ///< L | qt
  pot_volume,     ///< mL | qt
  density,        ///< g/L | lb/ft3
  percent,
  number,
};

/// The unit of a bare number, as shown behind the field; empty for pure numbers and words.
[[nodiscard]] QString unit_of(Kind kind, UnitSystem units);

/// The text to keep for what was typed while `units` were shown.
[[nodiscard]] QString kept_text(const QString& typed, Kind kind, UnitSystem units);

/// The text to show for what was kept: as typed where its unit is the shown one, converted otherwise; rubbish stays as it is. Digits of
/// a computed density, share or mass that nobody typed are rounded off; what is kept has them all.
[[nodiscard]] QString shown_text(const QString& kept, Kind kind, UnitSystem units);

/// A hint whose lengths, like "0.3 to 1 cm", are in the units shown.
[[nodiscard]] QString hint_text(const QString& hint, UnitSystem units);

}  // namespace gritwright::desktop
