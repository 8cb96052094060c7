#pragma once
// What a search found, in words and as pictures' data.

#include <QString>
#include <QStringList>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "charts/picture_table.hpp"
#include "figures.hpp"
#include "find_problem.hpp"
#include "gritwright/domain/mix_version.hpp"
#include "gritwright/models/mix_ranges.hpp"
#include "gritwright/models/recipe_search.hpp"

namespace gritwright::desktop {

/// A search that has come to an end: what was asked, and the answer.
struct FoundParts {
  FindSetup setup;  ///< with its problem
  DesignAnswer answer;
  std::vector<MixRanges> ranges;  ///< of the listed recipes in the first pot

  [[nodiscard]] const DesignProblem& problem() const { return *setup.problem; }
  /// What a pot of the problem is called; empty for the first.
  [[nodiscard]] QString pot_name(const std::string& pot) const;
  /// The recipes, or where there is none the nearest.
  [[nodiscard]] std::vector<const RatedRecipe*> listed() const;
};

/// "air at least 10 %".
[[nodiscard]] QString wish_words(const FoundParts& found, const Wish& wish, UnitSystem units);

/// "2 akadama A-12 : 1 pumice P-03", or in percent for free shares.
[[nodiscard]] QString parts_words(const FoundParts& found, const std::vector<double>& parts);

/// One row a recipe: rank, parts, what is missed, air, water, price, score.
[[nodiscard]] PictureTable recipes_table(const FoundParts& found, UnitSystem units);

/// Of one listed recipe: what it misses and by how much, what binds, what it uses up.
[[nodiscard]] QStringList recipe_sentences(const FoundParts& found, std::size_t index, UnitSystem units);
/// Its figures.
[[nodiscard]] FigureGroup recipe_figures(const FoundParts& found, std::size_t index, UnitSystem units);

/// Wishes on sizes, air or water that even the best recipe misses by more than 10 points, and what would help: another search would not.
[[nodiscard]] QStringList far_off_sentences(const FoundParts& found, UnitSystem units);
/// Of the whole answer: contradictions, proof, how far wishes may move, what rounding costs, notes.
[[nodiscard]] QStringList answer_sentences(const FoundParts& found, UnitSystem units);

/// Draws what is uncertain about each listed recipe, until asked to stop; on a worker's thread.
void add_ranges(FoundParts& found, const Catalogue& catalogue, const SliceRunner& runner, const std::stop_token& stop);

/// A listed recipe as a version to keep, with its sources.
[[nodiscard]] MixVersion version_of(const FoundParts& found, std::size_t index, const std::string& name, const std::string& day);

/// One point of a trade-off; a listed recipe has its rank, from 1.
struct TradeOffPoint {
  double across = 0;
  double up = 0;
  int rank = 0;
  QString parts;
};
/// Air against water (shares), price against score. Points in the order of `across`.
struct TradeOffPicture {
  std::vector<TradeOffPoint> air_and_water;
  std::vector<TradeOffPoint> price_and_fit;
  QString currency;  ///< of the prices; empty where nobody wrote one
};
[[nodiscard]] TradeOffPicture trade_off_picture(const FoundParts& found);
[[nodiscard]] QString trade_off_sentence(const FoundParts* found);
[[nodiscard]] PictureTable trade_off_table(const FoundParts* found);
[[nodiscard]] PictureTable trade_off_data(const FoundParts* found);

}  // namespace gritwright::desktop
