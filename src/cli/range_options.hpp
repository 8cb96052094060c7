#pragma once
#include <memory>
#include <string>

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

/// What is uncertain about a mix as read: by the catalogue where it took figures from there, by its sieve tests where it names some.
/// Fails if the catalogue can't be read.
[[nodiscard]] Result<MixSpread> spread_of(const MixFile& file);

/// As many threads as the machine has.
[[nodiscard]] SliceRunner all_cores();

}  // namespace gritwright::cli
