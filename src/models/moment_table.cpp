#include "gritwright/models/moment_table.hpp"

#include <algorithm>
#include <cmath>

#include "gritwright/domain/mix.hpp"

namespace gritwright {

namespace {

constexpr int points = 4096;
constexpr double least_x = 1e-3;
constexpr double greatest_x = 1e4;
const double log_least = std::log(least_x);
const double log_greatest = std::log(greatest_x);
const double log_step = (log_greatest - log_least) / (points - 1);

/// Integral of u^(power - 1) from `low` to `high`.
double power_integral(double power, double low, double high) {
  if (std::abs(power) < 1e-12) return std::log(high / low);
  return (std::pow(high, power) - std::pow(low, power)) / power;
}

/// n = 2: S = 1/sqrt(1 + x^2) has elementary moments. Source: van-genuchten-1980 with n = 2.
MomentTable::Moments closed_for_two(double x) {
  const double root = std::sqrt(1 + x * x);
  return {std::asinh(x) / x, (root - 1) / (x * x), (x * root - std::asinh(x)) / (2 * x * x * x),
          (root * root * root / 3 - root + 2.0 / 3) / (x * x * x * x)};
}

}  // namespace

MomentTable::MomentTable(double n) : n_(n), exponent_(1 - 1 / n) {
  if (n == 2) return;
  nodes_.resize(points);
  // By Simpson's rule in ln u, where the integrand is u^(m+1)·S: 1e-11 at this step.
  const auto integrands = [&](double u, double saturation_there) {
    return Moments{u * saturation_there, u * u * saturation_there, u * u * u * saturation_there, u * u * u * u * saturation_there};
  };
  double x = least_x;
  Moments integrals = near_zero(x);  // of u^m·S from 0 to x
  for (std::size_t m = 0; m < 4; ++m) integrals[m] *= std::pow(x, static_cast<double>(m) + 1);
  for (int i = 0; i < points; ++i) {
    Node& node = nodes_[static_cast<std::size_t>(i)];
    if (i > 0) {
      const Moments low = integrands(x, nodes_[static_cast<std::size_t>(i) - 1].saturation);
      const double middle = std::exp(log_least + log_step * (i - 0.5));
      const Moments between = integrands(middle, saturation(middle));
      x = std::exp(log_least + log_step * i);
      node.saturation = saturation(x);
      const Moments high = integrands(x, node.saturation);
      for (std::size_t m = 0; m < 4; ++m) integrals[m] += log_step / 6 * (low[m] + 4 * between[m] + high[m]);
    } else {
      node.saturation = saturation(x);
    }
    double power = x;
    for (std::size_t m = 0; m < 4; ++m, power *= x) node.moments[m] = integrals[m] / power;
  }
}

std::shared_ptr<const MomentTable> MomentTable::for_shape(double n) {
  static const auto usual = std::make_shared<const MomentTable>(RetentionConstants{}.n);
  return n == usual->n() ? usual : std::make_shared<const MomentTable>(n);
}

double MomentTable::saturation(double x) const { return std::pow(1 + std::pow(x, n_), -exponent_); }

/// From S = 1 - p x^n + p(p+1)/2 x^2n - ..., p = 1 - 1/n.
MomentTable::Moments MomentTable::near_zero(double x) const {
  const double power = std::pow(x, n_);
  const double second = exponent_ * (exponent_ + 1) / 2;
  const double third = second * (exponent_ + 2) / 3;
  Moments moments;
  for (int m = 0; m < 4; ++m) {
    moments[static_cast<std::size_t>(m)] = 1.0 / (m + 1) - exponent_ * power / (n_ + m + 1) +
                                           second * power * power / (2 * n_ + m + 1) -
                                           third * power * power * power / (3 * n_ + m + 1);
  }
  return moments;
}

/// Past the table from S = x^(1-n)·(1 - p x^-n + ...).
MomentTable::Moments MomentTable::beyond(double x) const {
  Moments moments;
  for (int m = 0; m < 4; ++m) {
    const double inside = nodes_.back().moments[static_cast<std::size_t>(m)] * std::pow(greatest_x, m + 1);
    const double first = power_integral(m + 2 - n_, greatest_x, x);
    const double second = exponent_ * power_integral(m + 2 - 2 * n_, greatest_x, x);
    moments[static_cast<std::size_t>(m)] = (inside + first - second) / std::pow(x, m + 1);
  }
  return moments;
}

MomentTable::Moments MomentTable::at(double x) const { return x > 0 ? at_log(std::log(x)) : near_zero(0); }

MomentTable::Moments MomentTable::at_log(double log_x, int degree) const {
  if (n_ == 2) {
    const double x = std::exp(log_x);
    return x < 0.03 ? near_zero(x) : closed_for_two(x);
  }
  if (log_x <= log_least) return near_zero(std::exp(log_x));
  if (log_x >= log_greatest) return beyond(std::exp(log_x));
  const double position = (log_x - log_least) / log_step;
  const auto index = static_cast<std::size_t>(std::clamp(static_cast<int>(position), 0, points - 2));
  const double u = position - static_cast<double>(index);
  const Node& low = nodes_[index];
  const Node& high = nodes_[index + 1];
  const double one_minus = 1 - u;
  const double low_value = (1 + 2 * u) * one_minus * one_minus;
  const double high_value = u * u * (3 - 2 * u);
  const double low_slope = u * one_minus * one_minus * log_step;
  const double high_slope = -u * u * one_minus * log_step;
  Moments moments{};
  for (int m = 0; m <= degree; ++m) {
    const auto k = static_cast<std::size_t>(m);
    // dM_m/d ln x = S - (m + 1) M_m, so the slopes come from the nodes themselves.
    moments[k] = low_value * low.moments[k] + high_value * high.moments[k] +
                 low_slope * (low.saturation - (m + 1) * low.moments[k]) +
                 high_slope * (high.saturation - (m + 1) * high.moments[k]);
  }
  return moments;
}

}  // namespace gritwright
