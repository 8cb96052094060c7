#pragma once
// What the grading chart shows, as plain data: a test looks at this and not at pixels.

#include <QPointF>
#include <QString>
#include <optional>
#include <vector>

#include "gritwright/domain/grading.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "models/bench.hpp"

namespace gritwright::desktop {

/// One curve: size in mm against percent passing.
struct GradingSeries {
  QString name;
  Grading grading;  ///< what the points come from, to be read between them
  std::vector<QPointF> points_mm_percent;
  int look = 0;          ///< index of the component's look; -1 the blend
  bool finished = true;  ///< false while the stack is still being worked through
};

struct GradingPicture {
  std::vector<GradingSeries> series;        ///< components in order, the blend last
  std::optional<QPointF> band_mm;           ///< x from, y to
  std::vector<double> sieves_mm;            ///< the sieves used, rising: they are the ticks
  std::optional<QPointF> marked_mm_percent; ///< the point of the cell that is being typed
  double least_mm = 0.5;                    ///< ends of the axis
  double most_mm = 10;
};

/// The chart of what lies on the bench; `marked_row` is the row of the current component's sheet that has the cursor.
[[nodiscard]] GradingPicture grading_picture(const Bench& bench, int marked_row);

/// The picture in one sentence, for who doesn't see it.
[[nodiscard]] QString grading_sentence(const Bench& bench);

/// The table twin: percent passing by sieve, one column a curve, a dash where a curve is not defined.
struct GradingTable {
  QStringList heading;
  std::vector<QStringList> rows;
};
[[nodiscard]] GradingTable grading_table(const Bench& bench);

}  // namespace gritwright::desktop
