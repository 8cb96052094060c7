#include "gritwright/models/placing_experience.hpp"

#include <algorithm>
#include <cstddef>

namespace gritwright {

namespace {

constexpr std::ptrdiff_t remembered = 10;

template <class T>
std::vector<T> last_of(const std::vector<T>& all) {
  return {all.end() - std::min<std::ptrdiff_t>(remembered, std::ssize(all)), all.end()};
}

template <class Share>
std::optional<Share> median(std::vector<Share> shares) {
  if (shares.empty()) return std::nullopt;
  std::ranges::sort(shares);
  const std::size_t middle = shares.size() / 2;
  const double value = shares.size() % 2 == 1 ? shares[middle].value() : (shares[middle - 1].value() + shares[middle].value()) / 2;
  // Litres that grew on the way say that the plan or the jug was wrong, not how the mix settles.
  if (value < 0) return std::nullopt;
  return Share(value);
}

}  // namespace

PlacingExperience placing_experience(const std::vector<FilledTree>& trees, const std::vector<EmptiedBatch>& batches) {
  PlacingExperience learnt;
  for (const FilledTree& tree : last_of(trees)) learnt.settlings.emplace_back(1 - tree.fill.quantity().value() / tree.used.quantity().value());
  for (const EmptiedBatch& batch : last_of(batches)) {
    const double gone = batch.made.quantity().value() - batch.left_over.quantity().value();
    learnt.spills.emplace_back(1 - batch.used.quantity().value() / gone);
  }
  learnt.settling = median(learnt.settlings);
  learnt.spill = median(learnt.spills);
  return learnt;
}

}  // namespace gritwright
