#include "recipe_order.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace gritwright::recipe_search {

namespace {

/// The names' order settles nothing between recipes of the same candidates.
std::strong_ordering by_names(const WholeRecipe& a, const WholeRecipe& b, const std::vector<int>& ranks) {
  for (std::size_t i = 0; i < a.count; ++i)
    if (const auto order = ranks[a.candidates[i]] <=> ranks[b.candidates[i]]; order != 0) return order;
  return std::strong_ordering::equal;
}

std::strong_ordering order_without_figures(const WholeRecipe& a, const WholeRecipe& b, const std::vector<int>& ranks) {
  if (const auto order = a.count <=> b.count; order != 0) return order;
  if (const auto order = by_names(a, b, ranks); order != 0) return order;
  if (const auto order = a.total() <=> b.total(); order != 0) return order;
  for (std::size_t i = 0; i < a.count; ++i)
    if (const auto order = b.parts[i] <=> a.parts[i]; order != 0) return order;
  return a.candidates <=> b.candidates;
}

}  // namespace

FigureKey figure_key(double score, double price) { return {std::round(score * cells_per_unit), std::round(price * cells_per_unit)}; }

bool comes_before(const WholeRecipe& a, const WholeRecipe& b, const std::vector<int>& name_ranks) {
  return order_without_figures(a, b, name_ranks) < 0;
}

bool distinct(const WholeRecipe& a, const WholeRecipe& b) {
  const int total_a = a.total(), total_b = b.total();
  std::size_t i = 0, j = 0;
  while (i < a.count || j < b.count) {
    const int next_a = i < a.count ? a.candidates[i] : 255;
    const int next_b = j < b.count ? b.candidates[j] : 255;
    const int parts_a = next_a <= next_b ? a.parts[i++] : 0;
    const int parts_b = next_b <= next_a ? b.parts[j++] : 0;
    if (10 * std::abs(parts_a * total_b - parts_b * total_a) >= total_a * total_b) return true;
  }
  return false;
}

std::vector<Entry> distinct_first(std::vector<Entry> entries, std::size_t count, const std::vector<int>& name_ranks) {
  std::ranges::sort(entries, [&](const Entry& a, const Entry& b) {
    if (const auto order = a.high <=> b.high; order != 0) return order < 0;
    return comes_before(a.recipe, b.recipe, name_ranks);
  });
  std::vector<Entry> first;
  for (const Entry& entry : entries) {
    if (first.size() == count) break;
    if (std::ranges::all_of(first, [&](const Entry& better) { return distinct(better.recipe, entry.recipe); })) first.push_back(entry);
  }
  return first;
}

}  // namespace gritwright::recipe_search
