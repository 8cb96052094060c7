#pragma once
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <string_view>

#include "gritwright/domain/sieve_test.hpp"
#include "gritwright/formats/number.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

[[nodiscard]] Result<SieveTest> read_sieve_test_csv(std::string_view text);
[[nodiscard]] Result<SieveTest> read_sieve_test_json(std::string_view text);

/// No stack of sieves is higher; a longer list is some other file, and its faults would run to millions.
inline constexpr std::size_t most_sieve_rows = 1'000;

/// The finest digit written among the masses in g, the sample's as well as the pans': what a balance shows is taken for its
/// resolution, and a balance that shows 0.1 g is often written down as "12" too. 1 g where no mass was written.
class WrittenResolution {
 public:
  /// `decimals` as written_decimals counts them.
  void saw(int decimals) { decimals_ = decimals_ ? std::max(*decimals_, decimals) : decimals; }
  [[nodiscard]] Mass resolution() const { return mass_g(std::pow(10.0, -decimals_.value_or(0))); }

 private:
  std::optional<int> decimals_;
};

/// The domain's problems with what was read, beyond the faults of the text in `told`, whose pointers are those of the JSON form. What
/// could not be read stands as 0 in `test`, each row at its place.
[[nodiscard]] Problems check_what_was_read(const SieveTest& test, const Problems& told);

}  // namespace gritwright
