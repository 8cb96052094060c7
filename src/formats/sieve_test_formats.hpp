#pragma once
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "gritwright/domain/sieve_test.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

[[nodiscard]] Result<SieveTest> read_sieve_test_csv(std::string_view text);
[[nodiscard]] Result<SieveTest> read_sieve_test_json(std::string_view text);

/// No stack of sieves is higher; a longer list is some other file, and its faults would run to millions.
inline constexpr std::size_t most_sieve_rows = 1'000;

/// The finest decimal written among the weighings: what a balance shows is taken for its resolution.
class WrittenResolution {
 public:
  void saw(int decimals) { decimals_ = std::max(decimals_, decimals); }
  [[nodiscard]] Mass resolution() const { return mass_g(std::pow(10.0, -std::max(decimals_, 0))); }

 private:
  int decimals_ = 0;
};

/// The domain's problems with what was read. `rows` says which written row each row of `test` came from. Where the text itself had
/// faults the record is not whole, so only what concerns single rows and the pan is told beside them.
[[nodiscard]] Problems check_what_was_read(const SieveTest& test, const std::vector<std::size_t>& rows, bool whole);

}  // namespace gritwright
