#pragma once
// What pot tests of the record taught about its mixes, and which of it holds for a mix at hand.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "gritwright/domain/mix.hpp"
#include "gritwright/domain/record_ref.hpp"
#include "gritwright/models/calibration.hpp"
#include "gritwright/models/prediction_score.hpp"
#include "gritwright/result.hpp"

namespace gritwright::desktop {

/// What the pot tests of one mix taught. They hold for every version of it with the same recipe in substance, whichever was tested.
struct MixCalibration {
  std::string mix;                 ///< the newest version that was tested: "M-03/2"
  std::vector<std::string> names;  ///< what the mix is called in its versions
  std::vector<Mix> recipes;        ///< the tested versions
  RecordRef calibrated_by;         ///< the newest test
  std::size_t tests = 0;           ///< 0: the constants came without their tests
  RetentionConstants constants;
  std::optional<CalibratedBelief> belief;
  MaterialShares materials;        ///< of the newest tested version
  friend bool operator==(const MixCalibration& a, const MixCalibration& b);
};

/// Which constants a mix has.
struct LearntConstants {
  RetentionConstants constants;
  std::optional<std::size_t> own;      ///< of the calibrations: by its own tests
  std::optional<PooledForMix> pooled;  ///< else by tests of mixes that share its materials; `mixes` are places among the calibrations
};

/// As pooling asks for them, in their order.
[[nodiscard]] std::vector<TestedShares> tested_shares(std::span<const MixCalibration> calibrations);

/// `name` is what the mix is called. Without any test the usual constants stand.
[[nodiscard]] LearntConstants learnt_for(const Mix& mix, const std::string& name, std::span<const MixCalibration> calibrations);

/// The pot tests that a mix's constants rest on, each once; empty: the usual constants.
[[nodiscard]] std::vector<std::string> tests_behind(const LearntConstants& learnt, std::span<const MixCalibration> calibrations);

/// The same in words, for beside what they predict; empty: the usual constants.
[[nodiscard]] std::optional<Note> note_of_tests(const LearntConstants& learnt, std::span<const MixCalibration> calibrations);

/// Each name once, in order: "A-01, A-02".
[[nodiscard]] std::string joined_names(std::vector<std::string> names);

}  // namespace gritwright::desktop
