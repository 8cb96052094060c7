#pragma once
#include <optional>
#include <string>

#include "gritwright/domain/record_ref.hpp"
#include "gritwright/domain/sieve_set.hpp"
#include "gritwright/domain/sieve_test.hpp"

namespace gritwright {

/// A sieving in the workbook: what was sieved, and which of several tests of it this is.
struct RecordedSieveTest {
  SieveTest test;
  std::optional<RecordRef> of;  ///< bag, bin, fraction, batch, mix, or a tree's used ground
  int replicate = 1;            ///< >= 1
  std::optional<Id<SieveSet>> sieve_set;
  std::string draft;  ///< the form as typed while it is not yet a whole test; nobody but the form reads it
  std::string note;
  friend bool operator==(const RecordedSieveTest&, const RecordedSieveTest&) = default;
};

/// What `check(SieveTest)` finds, unless it is a draft; something that can't be sieved; replicate below 1.
[[nodiscard]] Problems check(const RecordedSieveTest& test);

}  // namespace gritwright
