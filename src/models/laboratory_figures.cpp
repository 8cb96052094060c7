#include "gritwright/models/laboratory_figures.hpp"

#include <algorithm>
#include <cmath>

#include "gritwright/models/grading_curve.hpp"
#include "gritwright/models/sieve_analysis.hpp"

namespace gritwright {

namespace {

bool same_sieve(double a_mm, double b_mm) { return std::abs(a_mm - b_mm) <= 1e-6 * b_mm; }

/// FM = sum of cumulative percent retained on the listed sieves / 100.
void fineness(const Grading& grading, MassShare pan, LaboratoryFigures& figures) {
  const GradingPoint& finest = grading.points.front();
  const GradingPoint& coarsest = grading.points.back();
  const GradingCurve curve(grading);
  double modulus = 0;
  for (const double mm : fineness_sieves_mm) {
    const auto used = std::ranges::find_if(grading.points, [&](const GradingPoint& p) { return same_sieve(in_mm(p.aperture), mm); });
    if (used != grading.points.end()) {
      modulus += 1 - used->passing.value();
    } else if (aperture_mm(mm) < finest.aperture) {
      if (pan.value() > 0) {
        figures.notes.push_back({"laboratory.fineness-needs-finer-sieve", Level::note, "fineness_modulus",
                                 {{"aperture_mm", mm}, {"percent", pan.value() * 100}, {"finest_mm", in_mm(finest.aperture)}}});
        return;
      }
      modulus += 1;
    } else if (aperture_mm(mm) < coarsest.aperture) {
      modulus += 1 - curve.passing_at(aperture_mm(mm))->value();
      figures.notes.push_back({"laboratory.fineness-interpolated", Level::note, "fineness_modulus", {{"aperture_mm", mm}}});
    }
  }
  if (coarsest.passing.value() < 1) {
    figures.notes.push_back({"laboratory.fineness-open-top", Level::note, "fineness_modulus",
                             {{"aperture_mm", in_mm(coarsest.aperture)}, {"percent", 100 - in_percent(coarsest.passing)}}});
  }
  figures.fineness_modulus = modulus;
}

/// The phi size that `percent` of the mass is coarser than.
std::optional<double> phi_percentile(const Grading& grading, double percent) {
  const auto size = percentile(grading, 100 - percent);
  if (!size) return std::nullopt;
  return phi_of(*size);
}

void folk_and_ward(const Grading& grading, LaboratoryFigures& figures) {
  const auto f5 = phi_percentile(grading, 5);
  const auto f16 = phi_percentile(grading, 16);
  const auto f25 = phi_percentile(grading, 25);
  const auto f50 = phi_percentile(grading, 50);
  const auto f75 = phi_percentile(grading, 75);
  const auto f84 = phi_percentile(grading, 84);
  const auto f95 = phi_percentile(grading, 95);
  figures.median_phi = f50;
  if (f16 && f50 && f84) figures.mean_phi = (*f16 + *f50 + *f84) / 3;
  if (f5 && f16 && f84 && f95) figures.sorting_phi = (*f84 - *f16) / 4 + (*f95 - *f5) / 6.6;
  // On a curve without spread the ratios have no meaning.
  if (f5 && f16 && f50 && f84 && f95 && *f84 > *f16 && *f95 > *f5) {
    figures.skewness = (*f16 + *f84 - 2 * *f50) / (2 * (*f84 - *f16)) + (*f5 + *f95 - 2 * *f50) / (2 * (*f95 - *f5));
  }
  if (f5 && f25 && f75 && f95 && *f75 > *f25) figures.kurtosis = (*f95 - *f5) / (2.44 * (*f75 - *f25));
}

}  // namespace

double phi_of(Aperture size) { return -std::log2(in_mm(size)); }

LaboratoryFigures laboratory_figures(const Grading& grading, std::optional<MassShare> pan) {
  LaboratoryFigures figures;
  if (grading.points.empty()) return figures;
  const auto d10 = percentile(grading, 10);
  const auto d30 = percentile(grading, 30);
  const auto d60 = percentile(grading, 60);
  if (d10 && d30 && d60) figures.curvature = (*d30 / *d10) * (*d30 / *d60);
  fineness(grading, pan.value_or(MassShare(grading.points.front().passing.value())), figures);
  folk_and_ward(grading, figures);
  if (!figures.curvature || !figures.median_phi || !figures.mean_phi || !figures.sorting_phi || !figures.skewness || !figures.kurtosis) {
    figures.notes.push_back({"laboratory.outside-sieves", Level::note, "", {}});
  }
  return figures;
}

}  // namespace gritwright
