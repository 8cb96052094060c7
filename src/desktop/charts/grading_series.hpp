#pragma once
// What the grading chart shows, as plain data: a test looks at this and not at pixels.

#include <QPointF>
#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "gritwright/domain/grading.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "picture_table.hpp"
#include "models/bench.hpp"

namespace gritwright::desktop {

struct BenchRanges;
struct TestRanges;

/// One curve: size in mm against percent passing.
struct GradingSeries {
  QString name;
  Grading grading;  ///< what the points come from, to be read between them
  std::vector<QPointF> points_mm_percent;
  int look = 0;          ///< index of the component's look; -1 the blend
  bool finished = true;  ///< false while the stack is still being worked through
  bool faint = false;    ///< an earlier bag or one of several samples: behind, without markers; the legend has one line for all of them
};

struct GradingPicture {
  std::vector<GradingSeries> series;        ///< components in order, the blend last
  std::optional<QPointF> band_mm;           ///< x from, y to
  QStringList faint_words;                  ///< what the faint curves are; empty without any
  int faint_look = 0;                       ///< theirs, which they share
  std::vector<double> sieves_mm;            ///< the sieves used, rising: they are the ticks
  std::vector<QPointF> ribbon_low_mm_percent;   ///< least of all samples, or 5 % of what passes, rising; may be empty
  std::vector<QPointF> ribbon_high_mm_percent;  ///< most of all samples, or 95 %, at the same sizes
  std::optional<QPointF> marked_mm_percent; ///< the point of the cell that is being typed
  double least_mm = 0.5;                    ///< ends of the axis
  double most_mm = 10;
};

/// Whose curves a chart shows.
enum class Curves {
  all_components,  ///< every component and the blend
  on_screen,       ///< the component on screen, its samples and earlier bags of its material faint behind it
};

/// The chart of what lies on the bench; `marked_row` is the row of the current component's sheet that has the cursor.
[[nodiscard]] GradingPicture grading_picture(const Bench& bench, int marked_row, Curves curves = Curves::all_components);

/// The ribbon of the mix's curve, or of the finished test's: 5 to 95 % of what passes. That of several samples, from the least to the most of them,
/// stands until then.
void add_ribbon(GradingPicture& picture, const BenchRanges* ranges);
void add_ribbon(GradingPicture& picture, const TestRanges* ranges);

/// The picture in one sentence, for who doesn't see it.
[[nodiscard]] QString grading_sentence(const Bench& bench, Curves curves = Curves::all_components);

/// The table twin: percent passing by sieve, one column a curve, a dash where a curve is not defined.
[[nodiscard]] PictureTable grading_table(const Bench& bench, Curves curves = Curves::all_components);
/// The same in mm and percent for a file, empty where a curve is not defined.
[[nodiscard]] PictureTable grading_data(const Bench& bench, Curves curves = Curves::all_components);

}  // namespace gritwright::desktop
