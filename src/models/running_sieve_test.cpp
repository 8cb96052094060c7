#include "gritwright/models/running_sieve_test.hpp"

namespace gritwright {

std::optional<Mass> net_mass(const Retained& retained) {
  if (const auto* net = std::get_if<Mass>(&retained)) return *net;
  if (const auto* weighed = std::get_if<GrossTare>(&retained)) return weighed->gross - weighed->tare;
  return std::nullopt;
}

std::optional<Mass> weighed_so_far(const SieveTest& test, bool with_pan) {
  Mass sum{};
  for (const SieveRow& row : test.rows) {
    const auto net = net_mass(row.retained);
    if (!net) return std::nullopt;
    sum += *net;
  }
  if (!with_pan) return sum;
  const auto pan = net_mass(test.pan);
  if (!pan) return std::nullopt;
  return sum + *pan;
}

std::optional<LooseVolume> collected_so_far(const SieveTest& test, bool with_pan) {
  double litres = 0;  // of buckets side by side: nothing is poured together
  const auto add = [&litres](const Retained& retained) {
    const auto* bucket = std::get_if<LooseVolume>(&retained);
    if (bucket != nullptr) litres += in_l(*bucket);
    return bucket != nullptr;
  };
  for (const SieveRow& row : test.rows)
    if (!add(row.retained)) return std::nullopt;
  if (with_pan && !add(test.pan)) return std::nullopt;
  return loose_l(litres);
}

std::optional<Mass> still_in_the_stack(const SieveTest& test) {
  const auto start = test.washed_dry_mass ? test.washed_dry_mass : test.dry_mass;
  const auto sum = weighed_so_far(test, false);
  if (!start || !sum || *sum > *start) return std::nullopt;
  return *start - *sum;
}

}  // namespace gritwright
