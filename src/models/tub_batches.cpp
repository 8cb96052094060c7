#include "gritwright/models/tub_batches.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <numeric>
#include <utility>

namespace gritwright {

namespace {

// A litre that came out of divisions is off by some 1e-15 of itself; a scoop more for that would be wrong.
constexpr double rounding_error = 1e-9;

double whole_up(double value) { return std::ceil(value - rounding_error * std::max(1.0, std::abs(value))); }
double whole_down(double value) { return std::floor(value + rounding_error * std::max(1.0, std::abs(value))); }

/// The parts as the smallest whole numbers of the same ratio; empty where no multiple up to 24 makes them whole.
std::vector<int> whole_parts(const std::vector<double>& parts) {
  constexpr int largest_multiple = 24;
  for (int multiple = 1; multiple <= largest_multiple; ++multiple) {
    const bool whole = std::ranges::all_of(parts, [&](double part) {
      return std::abs(part * multiple - std::round(part * multiple)) < rounding_error * std::max(1.0, part);
    });
    if (!whole) continue;
    std::vector<int> numbers;
    int divisor = 0;
    for (const double part : parts) {
      numbers.push_back(static_cast<int>(std::lround(part * multiple)));
      divisor = std::gcd(divisor, numbers.back());
    }
    for (int& number : numbers) number /= std::max(divisor, 1);
    return numbers;
  }
  return {};
}

class Scoops {
 public:
  Scoops(const BatchTask& task, double tub_l) : task_(task), tub_l_(tub_l), scoop_l_(in_l(*task.scoop)) {}

  /// Scoops of each component in each batch.
  std::vector<std::vector<int>> spread(bool& recipe_kept) const {
    std::vector<int> least;
    for (const LooseVolume& loose : task_.loose) least.push_back(static_cast<int>(whole_up(in_l(loose) / scoop_l_)));
    const int least_total = std::accumulate(least.begin(), least.end(), 0);
    const int tub_scoops = static_cast<int>(std::min(1e6, whole_down(tub_l_ / scoop_l_)));
    const std::vector<int> round = whole_parts(task_.parts);
    const int round_total = std::accumulate(round.begin(), round.end(), 0);
    recipe_kept = false;
    if (round_total > 0 && round_total <= tub_scoops) {
      const int rounds = rounds_for(round);
      if (std::ranges::equal(round, least, [&](int part, int needed) { return rounds * part <= needed + 1; })) {
        recipe_kept = true;
        return in_rounds(round, rounds, tub_scoops / round_total);
      }
    }
    return in_least_scoops(least, least_total, std::max(tub_scoops, 1));
  }

 private:
  int rounds_for(const std::vector<int>& round) const {
    int rounds = 0;
    for (std::size_t k = 0; k < round.size(); ++k)
      if (round[k] > 0) rounds = std::max(rounds, static_cast<int>(whole_up(in_l(task_.loose[k]) / (scoop_l_ * round[k]))));
    return rounds;
  }

  static std::vector<std::vector<int>> in_rounds(const std::vector<int>& round, int rounds, int rounds_in_tub) {
    const int batches = (rounds + rounds_in_tub - 1) / rounds_in_tub;
    std::vector<std::vector<int>> scoops;
    for (int b = 0; b < batches; ++b) {
      const int here = rounds / batches + (b < rounds % batches ? 1 : 0);
      std::vector<int> batch;
      for (const int part : round) batch.push_back(part * here);
      scoops.push_back(std::move(batch));
    }
    return scoops;
  }

  /// Each component's scoops stand evenly along one row, which is cut into as few pieces as fit the tub: none is fuller than it, and each is near the recipe.
  static std::vector<std::vector<int>> in_least_scoops(const std::vector<int>& least, int total, int tub_scoops) {
    std::vector<std::pair<double, std::size_t>> row;
    for (std::size_t k = 0; k < least.size(); ++k)
      for (int scoop = 0; scoop < least[k]; ++scoop) row.emplace_back((scoop + 0.5) / least[k], k);
    std::ranges::sort(row);
    const auto pieces = static_cast<std::size_t>((total + tub_scoops - 1) / tub_scoops);
    std::vector<std::vector<int>> scoops(pieces, std::vector<int>(least.size(), 0));
    for (std::size_t piece = 0; piece < pieces; ++piece)
      for (std::size_t at = piece * row.size() / pieces; at < (piece + 1) * row.size() / pieces; ++at) ++scoops[piece][row[at].second];
    return scoops;
  }

  const BatchTask& task_;
  double tub_l_;
  double scoop_l_;
};

/// What fits into the tub as it is tipped in; a mix that swells needs more room once it is mixed.
double usable_tub_l(const BatchTask& task) {
  if (!task.tub) return std::numeric_limits<double>::infinity();
  return in_l(*task.tub) / std::max(1.0, 1 - task.shrinkage.value());
}

std::vector<std::vector<double>> unrounded_litres(const BatchTask& task, double tub_l) {
  double total_l = 0;
  for (const LooseVolume& loose : task.loose) total_l += in_l(loose);
  const double batches = std::max(1.0, whole_up(total_l / tub_l));
  std::vector<double> batch;
  for (const LooseVolume& loose : task.loose) batch.push_back(in_l(loose) / batches);
  return std::vector<std::vector<double>>(static_cast<std::size_t>(batches), batch);
}

double farthest_off_recipe(const std::vector<double>& litres, const std::vector<double>& parts) {
  const double litres_total = std::accumulate(litres.begin(), litres.end(), 0.0);
  const double parts_total = std::accumulate(parts.begin(), parts.end(), 0.0);
  double farthest = 0;
  for (std::size_t k = 0; k < litres.size(); ++k) farthest = std::max(farthest, std::abs(litres[k] / litres_total - parts[k] / parts_total));
  return farthest;
}

}  // namespace

double rounded_up(double value, double step) { return whole_up(value / step) * step; }

TubBatches tub_batches(const BatchTask& task) {
  TubBatches answer;
  const double tub_l = usable_tub_l(task);
  std::vector<std::vector<double>> litres;
  std::vector<std::vector<int>> scoops;
  if (task.scoop) {
    scoops = Scoops(task, tub_l).spread(answer.recipe_kept);
    for (const std::vector<int>& batch : scoops) {
      litres.emplace_back();
      for (const int count : batch) litres.back().push_back(count * in_l(*task.scoop));
    }
  } else {
    litres = unrounded_litres(task, tub_l);
  }
  std::vector<double> totals(task.loose.size(), 0.0);
  double made_l = 0;
  for (std::size_t b = 0; b < litres.size(); ++b) {
    TubBatch batch;
    if (!scoops.empty()) batch.scoops = scoops[b];
    double sum_l = 0;
    for (std::size_t k = 0; k < litres[b].size(); ++k) {
      batch.loose.push_back(loose_l(litres[b][k]));
      totals[k] += litres[b][k];
      sum_l += litres[b][k];
    }
    batch.made = mixed_l(sum_l * (1 - task.shrinkage.value()));
    made_l += in_l(batch.made);
    answer.off_recipe = std::max(answer.off_recipe, farthest_off_recipe(litres[b], task.parts));
    answer.batches.push_back(std::move(batch));
  }
  for (const double total : totals) answer.loose.push_back(loose_l(total));
  answer.made = mixed_l(made_l);
  return answer;
}

}  // namespace gritwright
