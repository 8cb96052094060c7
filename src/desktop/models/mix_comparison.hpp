#pragma once
#include <QString>
#include <functional>
#include <optional>
#include <stop_token>
#include <vector>

#include "bench_ranges.hpp"
#include "charts/picture_table.hpp"
#include "gritwright/models/range.hpp"
#include "gritwright/models/slice_runner.hpp"
#include "gritwright/report/explanations.hpp"

namespace gritwright::desktop {

/// A mix that can be compared: a kept one, or the one on the bench.
struct KeptMix {
  QString id;  ///< empty for the mix on the bench
  QString name;
  MixQuestion of;  ///< without a pot
  friend bool operator==(const KeptMix&, const KeptMix&) = default;
};

/// One mix in the pot of the comparison. A figure is empty where it is not defined.
struct ComparedMix {
  QString id;
  QString name;
  QString pot_tests;  ///< "T-01, T-02"; empty without
  bool tested_itself = false;  ///< else they are tests of mixes of much the same grain
  Grading grading;
  std::optional<Porosity> air;
  std::optional<Porosity> water;
  std::optional<Porosity> available;
  std::optional<MassShare> in_band;
  std::optional<MassShare> finer;
  std::optional<BulkDensity> bulk_density;
  std::optional<Range> air_range;
  std::optional<Range> water_range;
  std::vector<Explanation> explanations;  ///< of its figures
};

struct Comparison {
  std::optional<Band> band;
  std::optional<Depth> depth;  ///< of the pot; empty: no pot, no air and water
  std::vector<ComparedMix> mixes;
};

/// Every mix in the same pot, in order; ends early, with what it has, when asked to stop. `pot` may be null.
[[nodiscard]] Comparison compared(const std::vector<KeptMix>& mixes, const PotGeometry* pot, const std::optional<Band>& band, const Catalogue& catalogue,
                                  const SliceRunner& runner, const std::stop_token& stop, const std::function<void(int done, int of)>& progress);

[[nodiscard]] QString comparison_sentence(const Comparison& comparison, UnitSystem units);
[[nodiscard]] PictureTable comparison_table(const Comparison& comparison, UnitSystem units);
[[nodiscard]] PictureTable comparison_data(const Comparison& comparison);

}  // namespace gritwright::desktop
