#pragma once
#include <array>
#include <optional>

#include "gritwright/domain/grading.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// Size on the phi scale, -log2(d / 1 mm). Precondition: size > 0.
[[nodiscard]] double phi_of(Aperture size);

/// The sieves whose cumulative percents the fineness modulus sums, in mm. Source: astm-c136
inline constexpr std::array fineness_sieves_mm{0.150, 0.300, 0.600, 1.18, 2.36, 4.75, 9.5, 19.0, 37.5, 75.0, 150.0};

/// Figures a soils or concrete laboratory reports; each is absent where the curve doesn't reach far enough, with a note.
struct LaboratoryFigures {
  std::optional<double> curvature;         ///< Cc = D30^2 / (D10 D60). Source: astm-d2487
  std::optional<double> fineness_modulus;  ///< Source: astm-c136, crd-c-104-80
  std::optional<double> mean_phi;          ///< this and the four below: Folk & Ward 1957
  std::optional<double> median_phi;
  std::optional<double> sorting_phi;
  std::optional<double> skewness;  ///< -1..1, positive for a fine tail
  std::optional<double> kurtosis;  ///< 1 for a normal curve
  Notes notes;
};

/// `pan` is what lay under the finest sieve: what was lost passes by the curve but asks for no finer sieve. Without it the curve's own
/// share counts. Precondition: check(grading) is empty.
[[nodiscard]] LaboratoryFigures laboratory_figures(const Grading& grading, std::optional<MassShare> pan = {});

}  // namespace gritwright
