#pragma once
#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "bench.hpp"
#include "gritwright/domain/fraction.hpp"
#include "gritwright/models/screening.hpp"
#include "gritwright/report/explanations.hpp"

namespace gritwright::desktop {

/// One fraction of the bag on screen: what is predicted, and what was measured.
struct ScreeningRow {
  QString name;
  ScreenedFraction predicted;
  std::optional<BulkDensityRatio> ratio;  ///< of the litre weights, fraction over bag
  FractionAmount amount;
  std::optional<Mass> weighed;
  std::optional<LooseVolume> litres;
  QString fault;  ///< of what was typed
};

/// The screening of the bag on screen, before and after it was done.
struct ScreeningView {
  QString reason;  ///< why there is nothing to predict, else empty
  std::vector<Aperture> openings;
  std::optional<Mass> screened;
  std::string day;  ///< on which it was done: as typed, else today
  std::vector<ScreeningRow> rows;  ///< coarse to fine
  QString balance;                 ///< sum of what was weighed and the loss
  std::optional<Loss> loss;        ///< once every fraction is weighed
  std::vector<Explanation> explanations;  ///< of what is predicted
  QString far_from_screened;            ///< where all that is left of the bag would be screened and much of it is in no fraction, or much more was weighed than went in: asks how much was screened
  QString openings_fault;
  QString screened_fault;
  QString day_fault;
  bool is_measured = false;  ///< every fraction weighed, no fault
};
[[nodiscard]] ScreeningView screening_view(const Bench& bench);

/// The fractions as records of the workbook, measured where they were, their gradings as predicted.
[[nodiscard]] std::vector<Fraction> fractions_of(const ScreeningView& view, const Bag& bag, const QString& bag_id);

}  // namespace gritwright::desktop
