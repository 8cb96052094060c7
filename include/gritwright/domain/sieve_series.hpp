#pragma once
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "gritwright/units.hpp"

namespace gritwright {

/// A standard sieve. Source: astm-e11-01 Table 1 (designations), iso-565 (R20/3).
struct StandardSieve {
  double aperture_mm;
  bool principal;                ///< of the R20/3 principal series
  std::string_view designation;  ///< ASTM E11 name ("No. 4", "3/8 in"), empty where there is none
  std::optional<double> tolerance_mm;  ///< plus or minus on the average aperture
};

/// All standard sieves, coarse to fine.
[[nodiscard]] std::span<const StandardSieve> standard_sieves();

/// The opening a trade or standard name stands for ("No. 4", "#4", "3/8 in", "4.75", "4,75 mm"); empty if it is none.
/// Garden mesh sold by pitch is not resolved here: see `mesh_opening`.
[[nodiscard]] std::optional<Aperture> aperture_named(std::string_view name);

/// Opening of woven mesh sold by pitch: pitch less the wire. Empty unless 0 < wire < pitch.
[[nodiscard]] std::optional<Aperture> mesh_opening(Length pitch, Length wire);

/// The next R20/3 sieve coarser than `aperture`; beyond 125 mm, sqrt(2) times it.
[[nodiscard]] Aperture next_coarser_principal(Aperture aperture);

}  // namespace gritwright
