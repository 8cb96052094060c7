#pragma once
// How sure the figures on the bench are: what is drawn about them, from everything that is uncertain. No figure is computed here.

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "bench.hpp"
#include "figures.hpp"
#include "gritwright/models/grading_ranges.hpp"
#include "gritwright/models/mix_ranges.hpp"
#include "screening_view.hpp"
#include "verdict_figures.hpp"

namespace gritwright::desktop {

/// A mix with all that its ranges hang on.
struct MixQuestion {
  Mix mix;
  std::vector<std::optional<SievedSample>> samples;
  std::optional<CalibratedBelief> belief;
  std::optional<Container> container;
  std::optional<Band> band;
  SettledBy settled_by = SettledBy::usual;
  std::vector<std::string> pot_tests;  ///< that its water constants rest on; to be quoted beside the figures
  bool tested_itself = false;          ///< else they are tests of mixes of much the same grain
  friend bool operator==(const MixQuestion& a, const MixQuestion& b);
};

/// What the grading of a component rests on: all finished samples of its sheet together. Empty without one.
[[nodiscard]] std::optional<SievedSample> sample_of(const ComponentEvaluation& component);

/// The mix on the bench as a question; empty where there is no mix.
[[nodiscard]] std::optional<MixQuestion> mix_question(const Bench& bench);

/// Draws of a picture that moves with a slider, and of one that stands still; the smaller sample is the beginning of the larger.
inline constexpr SampleSize moving_sample{64, 1};
inline constexpr SampleSize standing_sample{4096, 1};

struct BenchRanges {
  MixQuestion of;
  MixRanges mix;
  BlendRanges grain;
  std::vector<Aperture> sieves;     ///< of the ribbon, rising
  std::vector<Narrowing> air;       ///< what would narrow it most; only of a picture that stands still
  std::vector<Narrowing> water;
  std::size_t draws = 0;
};

/// ", by pot test T-01" behind the name of a mix, ", leaning on ..." where another mix was tested; empty without a test.
[[nodiscard]] QString by_pot_tests(const MixQuestion& question);

/// What is uncertain about the mix: the one place that says so, for every page.
[[nodiscard]] MixSpread spread_of(const MixQuestion& question, const Catalogue& catalogue);
[[nodiscard]] UncertainMix::Pot pot_of(const MixQuestion& question);
/// The mix ready to be drawn; quicker after the one `before`, which may be null.
[[nodiscard]] std::shared_ptr<const UncertainMix> uncertain(const MixQuestion& question, const Catalogue& catalogue, const UncertainMix* before);
[[nodiscard]] BenchRanges ranges_of(const MixQuestion& question, const UncertainMix& mix, const SampleSize& size, const SliceRunner& runner);
/// Adds what would narrow air and water most. Takes as long as several samples.
void add_narrowing(BenchRanges& ranges, const UncertainMix& mix, const SampleSize& size, const SliceRunner& runner);

/// A finished sieve test, or several samples taken as one, with all that its ranges hang on.
struct TestQuestion {
  SievedGrading sieved;
  std::optional<Band> band;
  std::optional<BulkDensity> bulk_density;
  bool laboratory = false;  ///< whether its figures are wanted too
  std::vector<Aperture> owned_sieves;
  std::vector<Aperture> screening;  ///< openings of the screening that is planned
  friend bool operator==(const TestQuestion&, const TestQuestion&) = default;
};
/// The finished test on screen; empty without one.
[[nodiscard]] std::optional<TestQuestion> test_question(const Bench& bench);

struct TestRanges {
  TestQuestion of;
  CurveRanges curve;
  std::optional<VerdictRanges> verdict;
  LaboratoryRanges laboratory;
  std::vector<FractionRange> fractions;  ///< of screening as the verdict says
  std::vector<OpeningRange> openings;    ///< of the shown choices
  std::vector<FractionRange> screening;  ///< of the screening that is planned
};
[[nodiscard]] TestRanges ranges_of(const TestQuestion& question, const SliceRunner& runner);

/// "15.9 - 21.3 %" of shares.
[[nodiscard]] QString share_range_text(const Range& range, int decimals);
/// The same beside a share of one decimal: in whole percents where these hold it; a dash without a range.
[[nodiscard]] QString range_beside(const std::optional<Range>& range, double share);
/// "9.8 - 10.5 L", each end as `text` gives it; a dash where there is none.
[[nodiscard]] QString range_text(const std::optional<Range>& range, const std::function<std::string(double)>& text);

/// Writes a range beside a figure, a dash where there is none; a figure that is not defined has no range either.
void put_range(Figure& figure, const std::optional<Range>& range, const std::function<std::string(double)>& text);

/// Writes the ranges beside the figures they belong to; a dash where there is none.
void add_ranges(std::vector<FigureGroup>& groups, const Bench& bench, const BenchRanges* ranges);
void add_ranges(VerdictView& verdict, const Bench& bench, const TestRanges* ranges);
/// Where share, mass and litres of a planned fraction lie; dashes without ranges.
struct FractionRangeTexts {
  QString share;
  QString mass;
  QString litres;
};
[[nodiscard]] FractionRangeTexts fraction_range_texts(const ScreeningRow& row, const FractionRange* range, UnitSystem units);
void add_laboratory_ranges(FigureGroup& laboratory, const TestRanges* ranges);
/// "holds in 83 of 100 cases"; empty without ranges.
[[nodiscard]] QString verdict_certainty(const TestRanges* ranges);

/// "Weigh a litre of the pumice: range of air from ±6.1 to ±3.2 points", largest first, air before water.
[[nodiscard]] QStringList narrowing_sentences(const BenchRanges* ranges);

}  // namespace gritwright::desktop
