#pragma once
#include <functional>
#include <limits>
#include <optional>
#include <span>
#include <vector>

namespace gritwright {

/// low <= coefficients · x <= high; infinite where there is no limit.
struct LinearRow {
  std::vector<double> coefficients;
  double low = -std::numeric_limits<double>::infinity();
  double high = std::numeric_limits<double>::infinity();
};

/// Shares x >= 0 with sum 1 that cost least, cost · x, within the rows.
struct LinearShares {
  std::vector<double> cost;
  std::vector<LinearRow> rows;
};

/// Solves by the simplex method. Empty where no shares keep to the rows. Coefficients below 1e-9 of their row's largest count as
/// 0: they are tails of curves, and solvers stumble over them. Precondition: finite coefficients, rows as long as the cost.
[[nodiscard]] std::optional<std::vector<double>> least_cost_shares(const LinearShares& problem);

/// The least amount by which shares x >= 0 with sum 1 have to pass the limits of some row; 0 where shares keep to all of them. Empty
/// where the solver fails. Same precondition.
[[nodiscard]] std::optional<double> least_excess(const std::vector<LinearRow>& rows);

/// Shares x >= 0 with sum 1 for which columns · x comes nearest to the target, by least squares; one column for each share, as
/// long as the target. Found by sequential quadratic programming from equal shares; the problem is convex.
[[nodiscard]] std::vector<double> nearest_shares(const std::vector<std::vector<double>>& columns, const std::vector<double>& target);

/// A smooth problem over shares x >= 0 with sum 1.
struct SmoothShares {
  /// Gives the value to make small and fills `outside` (> 0: broken) at shares x.
  std::function<double(std::span<const double> x, std::span<double> outside)> at;
  std::size_t constraints = 0;
};

/// A local optimum near `start` by sequential quadratic programming with differences for gradients; at most `most_steps` steps.
/// The result is only a proposal: the caller works it out and checks every limit.
[[nodiscard]] std::vector<double> improve_shares(const SmoothShares& problem, std::vector<double> start, int most_steps = 200);

}  // namespace gritwright
