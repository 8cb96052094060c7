#pragma once
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "gritwright/models/bag_verdict.hpp"
#include "gritwright/models/laboratory_figures.hpp"
#include "gritwright/models/screening.hpp"
#include "gritwright/models/sieve_analysis.hpp"
#include "gritwright/models/sieve_pooling.hpp"

namespace gritwright {

/// Where a figure comes from: its formula, the numbers that went in (as text with units) and the source.
struct Explanation {
  std::string figure;
  std::string formula;
  std::vector<std::pair<std::string, std::string>> inputs;
  std::string source;
};

/// Loss, percentages, percentiles and the coefficient of uniformity of a worked-out sieve test.
[[nodiscard]] std::vector<Explanation> explain(const SieveAnalysis& analysis);

/// How samples of one bag become one curve. Key pooled.
[[nodiscard]] Explanation explain_pooling(const PooledTests& pooled);

/// The size that so much of a curve is finer than, 0..100, with the sieves it is read between. Key d10, d50 and the like.
[[nodiscard]] Explanation explain_size(const Grading& grading, double percent);

/// Partition and loose litres of the fractions, screened so sharply.
[[nodiscard]] std::vector<Explanation> explain(const Screening& screening, Sharpness sharpness = {});

/// Dry mass and litres of the fractions of so much dry grain. Key amount.
[[nodiscard]] Explanation explain_amounts(const std::optional<Mass>& screened, const std::optional<BulkDensity>& litre_weight);

/// The ways to screen a bag that are compared. Key openings.
[[nodiscard]] Explanation explain_openings();

/// Sizes, uniformity and band shares of a blend's curve. Keys d10, d50, d90, cu, in_band, finer.
[[nodiscard]] std::vector<Explanation> explain_blend(const Grading& grading, const std::optional<Band>& band);

/// Share of one band of a curve. Key bands.
[[nodiscard]] std::vector<Explanation> explain_band(const Grading& grading, const Band& band);

/// Verdict, shares and usable litres of a judged bag. Keys verdict, in_band, finer, coarser, usable.
[[nodiscard]] std::vector<Explanation> explain(const BagVerdict& judged);

/// Price of a usable litre of a bag whose price and litres are known. Key price.
[[nodiscard]] Explanation explain_price(const Bag& bag, const BagVerdict& judged);

/// The laboratory figures of that curve, by their keys in the answer of `grade`.
[[nodiscard]] std::vector<Explanation> explain(const LaboratoryFigures& figures, const Grading& grading);

/// The explanations as lines for people.
[[nodiscard]] std::string explanation_text(const std::vector<Explanation>& explanations);

}  // namespace gritwright
