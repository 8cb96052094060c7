#pragma once
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/planned_day.hpp"
#include "gritwright/models/breakdown.hpp"
#include "gritwright/models/mix_ranges.hpp"
#include "inputs.hpp"

namespace CLI {
class App;
}

namespace gritwright::cli {

/// --range and --seed of the verbs that estimate.
class RangeOptions {
 public:
  void declare(CLI::App& app);
  [[nodiscard]] bool wanted() const { return wanted_; }
  [[nodiscard]] SampleSize size() const { return {SampleSize{}.draws, seed_}; }
  /// Above the tables of text.
  [[nodiscard]] std::string heading() const;

 private:
  bool wanted_ = false;
  std::uint64_t seed_ = SampleSize{}.seed;
};

/// What stands behind the figures of a mix as read.
struct MixBackground {
  MixSpread spread;  ///< by the catalogue where figures came from there, by its sieve tests where it names some
  std::vector<std::optional<Breakdown>> breakdowns;  ///< by component, typical; absent where nothing is known
};
/// Fails if the catalogue can't be read.
[[nodiscard]] Result<MixBackground> background_of(const MixFile& file);

/// What is uncertain about each mix of a day, in its order. Fails if the catalogue can't be read.
[[nodiscard]] Result<std::vector<MixSpread>> spreads_of(const PlannedDay& day);

}  // namespace gritwright::cli
