#pragma once
#include <QString>
#include <QStringList>
#include <vector>

#include "bench.hpp"
#include "figures.hpp"

namespace gritwright::desktop {

/// The bag of the component on screen, judged against the wanted band, as it is read.
struct VerdictView {
  QString sentence;     ///< "Take it after screening at 2 mm", or why there is no verdict
  FigureGroup figures;
  QStringList fraction_heading;
  std::vector<QStringList> fractions;  ///< what screening gives, coarse to fine; one row for the whole bag where it is taken as it is
  QStringList opening_heading;
  std::vector<QStringList> openings;   ///< "which openings?" over the sieves of the sheet, best first
  QStringList notes;
};

[[nodiscard]] VerdictView verdict_view(const Bench& bench);

}  // namespace gritwright::desktop
