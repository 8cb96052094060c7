#pragma once
#include <QString>
#include <vector>

#include "bench.hpp"
#include "gritwright/report/explanations.hpp"

namespace gritwright::desktop {

/// One figure as it is read: text with unit, or a dash and the reason, and where it comes from.
struct Figure {
  QString key;     ///< stable, also the object name: "air_filled_porosity"
  QString label;
  QString value;   ///< a dash where it is not defined
  QString reason;  ///< why there is a dash, else empty
  std::vector<Explanation> explanations;
  QString range = {};         ///< 5 to 95 % of what it could be; a dash where nothing says how sure it is
  QString range_detail = {};  ///< with the middle, for "how so?"
};

struct FigureGroup {
  QString key;
  QString title;
  std::vector<Figure> figures;
  bool has_ranges = false;  ///< whether there is a column for them
};

/// What follows from the bench: the mix, the mix in the pot, the litres to measure out.
[[nodiscard]] std::vector<FigureGroup> bench_figures(const Bench& bench);

/// Sum and loss of the sieve test on screen; without explanations as long as it is not finished. Key balance.
[[nodiscard]] Figure balance_figure(const Bench& bench);

/// A text of an explanation in the reader's language, whole or the words around its names and numbers; as it is where it has none.
[[nodiscard]] QString explanation_words(const std::string& text);

/// The explanation of a figure for people: formula, inputs, source.
[[nodiscard]] QString explanation_text(const Figure& figure);

}  // namespace gritwright::desktop
