#include "gritwright/models/free_shares.hpp"

#include <glpk.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <nlopt.hpp>
#include <numeric>
#include <stdexcept>

namespace gritwright {

namespace {

constexpr double smallest_coefficient = 1e-9;

struct DeleteProblem {
  void operator()(glp_prob* problem) const { glp_delete_prob(problem); }
};
using GlpkProblem = std::unique_ptr<glp_prob, DeleteProblem>;

/// Adds `row` with its limits; GLPK ends the process on a bad index, so only whole, finite rows get here.
void add_row(glp_prob& problem, const std::vector<double>& coefficients, double low, double high) {
  double largest = 0;
  for (const double each : coefficients) {
    if (!std::isfinite(each)) throw std::logic_error("a linear row needs finite coefficients");
    largest = std::max(largest, std::abs(each));
  }
  const int row = glp_add_rows(&problem, 1);
  std::vector<int> columns{0};
  std::vector<double> values{0};
  for (std::size_t k = 0; k < coefficients.size(); ++k) {
    if (std::abs(coefficients[k]) <= smallest_coefficient * largest) continue;
    columns.push_back(static_cast<int>(k) + 1);
    values.push_back(coefficients[k]);
  }
  glp_set_mat_row(&problem, row, static_cast<int>(columns.size()) - 1, columns.data(), values.data());
  const bool has_low = std::isfinite(low), has_high = std::isfinite(high);
  int kind = GLP_FR;
  if (has_low && has_high)
    kind = low == high ? GLP_FX : GLP_DB;
  else if (has_low)
    kind = GLP_LO;
  else if (has_high)
    kind = GLP_UP;
  glp_set_row_bnds(&problem, row, kind, has_low ? low : 0, has_high ? high : 0);
}

void check_row(const LinearRow& row, std::size_t count) {
  if (row.coefficients.size() != count) throw std::logic_error("a linear row needs one coefficient for each share");
  if (std::isnan(row.low) || std::isnan(row.high)) throw std::logic_error("a linear row needs limits that are numbers");
}

/// Shares >= 0 with sum 1 and their cost.
GlpkProblem shares_program(const std::vector<double>& cost) {
  const std::size_t count = cost.size();
  glp_term_out(GLP_OFF);
  GlpkProblem program(glp_create_prob());
  glp_set_obj_dir(program.get(), GLP_MIN);
  glp_add_cols(program.get(), static_cast<int>(count));
  for (std::size_t k = 0; k < count; ++k) {
    if (!std::isfinite(cost[k])) throw std::logic_error("a linear cost needs finite coefficients");
    glp_set_col_bnds(program.get(), static_cast<int>(k) + 1, GLP_LO, 0, 0);
    glp_set_obj_coef(program.get(), static_cast<int>(k) + 1, cost[k]);
  }
  add_row(*program, std::vector<double>(count, 1), 1, 1);
  return program;
}

bool solved(glp_prob& program) {
  glp_smcp settings;
  glp_init_smcp(&settings);
  settings.msg_lev = GLP_MSG_OFF;
  settings.tol_bnd = 1e-10;
  settings.tol_dj = 1e-10;
  return glp_simplex(&program, &settings) == 0 && glp_get_status(&program) == GLP_OPT;
}

void normalise(std::vector<double>& shares) {
  for (double& share : shares) share = std::max(0.0, share);
  const double sum = std::accumulate(shares.begin(), shares.end(), 0.0);
  if (sum > 0)
    for (double& share : shares) share /= sum;
}

/// What NLopt's callbacks share: values and slopes of everything at one place, worked out once. Slopes cost two values for each share, and
/// where the method only tries how far to go it asks for none.
class Sloped {
 public:
  explicit Sloped(const SmoothShares& problem) : problem_(problem), outside_(problem.constraints), low_(problem.constraints), high_(problem.constraints) {}

  double value(const std::vector<double>& x) {
    look(x);
    return value_;
  }
  const std::vector<double>& value_slope(const std::vector<double>& x) {
    look_around(x);
    return value_slope_;
  }
  const std::vector<double>& outside(const std::vector<double>& x) {
    look(x);
    return outside_;
  }
  /// By constraint, then by share.
  const std::vector<double>& outside_slopes(const std::vector<double>& x) {
    look_around(x);
    return outside_slopes_;
  }

 private:
  void look(const std::vector<double>& x) {
    if (x == at_) return;
    at_ = x;
    slopes_known_ = false;
    value_ = problem_.at(x, outside_);
    if (!std::isfinite(value_)) throw nlopt::forced_stop();
  }

  void look_around(const std::vector<double>& x) {
    look(x);
    if (slopes_known_) return;
    const std::size_t count = x.size();
    value_slope_.resize(count);
    outside_slopes_.resize(problem_.constraints * count);
    near_ = x;
    for (std::size_t k = 0; k < count; ++k) {
      constexpr double step = 1e-6;
      const double back = std::min(step, x[k]);
      near_[k] = x[k] + step;
      const double above = problem_.at(near_, high_);
      near_[k] = x[k] - back;
      const double below = problem_.at(near_, low_);
      near_[k] = x[k];
      value_slope_[k] = (above - below) / (step + back);
      for (std::size_t i = 0; i < problem_.constraints; ++i) outside_slopes_[i * count + k] = (high_[i] - low_[i]) / (step + back);
    }
    // The method loops for ever on a slope that is no number.
    const auto finite = [](double slope) { return std::isfinite(slope); };
    if (!std::ranges::all_of(value_slope_, finite) || !std::ranges::all_of(outside_slopes_, finite)) throw nlopt::forced_stop();
    slopes_known_ = true;
  }

  const SmoothShares& problem_;
  std::vector<double> at_;
  double value_ = 0;
  std::vector<double> outside_;
  bool slopes_known_ = false;  ///< at at_
  std::vector<double> value_slope_;
  std::vector<double> outside_slopes_;
  std::vector<double> near_;  // room for work
  std::vector<double> low_;
  std::vector<double> high_;
};

double objective(const std::vector<double>& x, std::vector<double>& slope, void* data) {
  auto& sloped = *static_cast<Sloped*>(data);
  if (!slope.empty()) slope = sloped.value_slope(x);
  return sloped.value(x);
}

void limits(unsigned count, double* values, unsigned shares, const double* x, double* slopes, void* data) {
  auto& sloped = *static_cast<Sloped*>(data);
  const std::vector<double> at(x, x + shares);
  std::copy_n(sloped.outside(at).begin(), count, values);
  if (slopes != nullptr) std::copy_n(sloped.outside_slopes(at).begin(), std::size_t{count} * shares, slopes);
}

double sum_less_one(const std::vector<double>& x, std::vector<double>& slope, void*) {
  if (!slope.empty()) std::ranges::fill(slope, 1.0);
  return std::accumulate(x.begin(), x.end(), -1.0);
}

}  // namespace

std::optional<std::vector<double>> least_cost_shares(const LinearShares& problem) {
  const std::size_t count = problem.cost.size();
  if (count == 0) return std::nullopt;
  const GlpkProblem program = shares_program(problem.cost);
  for (const LinearRow& row : problem.rows) {
    check_row(row, count);
    if (row.low > row.high) return std::nullopt;
    add_row(*program, row.coefficients, row.low, row.high);
  }
  if (!solved(*program)) return std::nullopt;
  std::vector<double> shares(count);
  for (std::size_t k = 0; k < count; ++k) shares[k] = glp_get_col_prim(program.get(), static_cast<int>(k) + 1);
  // The solver has its own idea of what keeps a limit; look again.
  for (const LinearRow& row : problem.rows) {
    const double value = std::inner_product(shares.begin(), shares.end(), row.coefficients.begin(), 0.0);
    const double slack = 1e-7 * (1 + std::abs(value));
    if (value < row.low - slack || value > row.high + slack) return std::nullopt;
  }
  normalise(shares);
  return shares;
}

std::optional<double> least_excess(const std::vector<LinearRow>& rows) {
  if (rows.empty()) return 0;
  const std::size_t count = rows.front().coefficients.size();
  const GlpkProblem program = shares_program(std::vector<double>(count, 0));
  const int excess = glp_add_cols(program.get(), 1);
  glp_set_col_bnds(program.get(), excess, GLP_LO, 0, 0);
  glp_set_obj_coef(program.get(), excess, 1);
  for (const LinearRow& row : rows) {
    check_row(row, count);
    std::vector<double> coefficients = row.coefficients;
    coefficients.push_back(1);
    if (std::isfinite(row.low)) add_row(*program, coefficients, row.low, HUGE_VAL);
    coefficients.back() = -1;
    if (std::isfinite(row.high)) add_row(*program, coefficients, -HUGE_VAL, row.high);
  }
  if (!solved(*program)) return std::nullopt;
  return std::max(0.0, glp_get_col_prim(program.get(), excess));
}

std::vector<double> improve_shares(const SmoothShares& problem, std::vector<double> start, int most_steps) {
  normalise(start);
  if (start.size() == 1) return start;
  Sloped sloped(problem);
  nlopt::opt method(nlopt::LD_SLSQP, static_cast<unsigned>(start.size()));
  method.set_lower_bounds(0);
  method.set_upper_bounds(1);
  method.set_min_objective(objective, &sloped);
  constexpr double sum_tolerance = 1e-12;
  method.add_equality_constraint(sum_less_one, nullptr, sum_tolerance);
  if (problem.constraints > 0)
    method.add_inequality_mconstraint(limits, &sloped, std::vector<double>(problem.constraints, 1e-10));
  method.set_maxeval(most_steps);
  method.set_maxtime(5);
  method.set_xtol_abs(1e-11);
  method.set_ftol_abs(1e-14);
  std::vector<double> shares = start;
  double value = 0;
  try {
    method.optimize(shares, value);
  } catch (const std::runtime_error&) {
    // Round-off, or a place without figures: what it had reached is still a proposal.
  }
  if (!std::ranges::all_of(shares, [](double share) { return std::isfinite(share); })) return start;
  normalise(shares);
  return shares;
}

std::vector<double> nearest_shares(const std::vector<std::vector<double>>& columns, const std::vector<double>& target) {
  // Scaled to the size of the figures, so that the method's tolerances mean the same for percent and for shares.
  double scale = 1e-300;
  for (const auto& column : columns)
    for (const double each : column) scale = std::max(scale, std::abs(each));
  const SmoothShares problem{[&](std::span<const double> x, std::span<double>) {
                               double sum = 0;
                               for (std::size_t i = 0; i < target.size(); ++i) {
                                 double value = -target[i];
                                 for (std::size_t k = 0; k < x.size(); ++k) value += x[k] * columns[k][i];
                                 sum += value / scale * value / scale;
                               }
                               return sum;
                             },
                             0};
  return improve_shares(problem, std::vector<double>(columns.size(), 1.0 / static_cast<double>(columns.size())), 500);
}

}  // namespace gritwright
