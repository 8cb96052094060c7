#pragma once
// All benches print rows of one table, so that a run of them reads as one; its heading is printed by whoever runs them.

#include <fmt/format.h>

#include <cstdio>
#include <optional>
#include <string>

namespace gritwright::bench {

/// One figure, in `unit`, with the limit it must keep and a peer that does the same job, where there are such.
struct Row {
  std::string what;
  std::string unit;
  double ours = 0;
  std::optional<double> limit{};
  std::string peer{};  ///< its name
  std::optional<double> theirs{};
};

/// At least three digits, whatever the size.
inline std::string digits(double value) { return fmt::format("{:.{}f}", value, value < 1 ? 3 : value < 10 ? 2 : value < 100 ? 1 : 0); }

inline void print(const Row& row) {
  const bool over = row.limit && row.ours > *row.limit;
  fmt::print("{:<64} {:>9} {:<5} {:>7} {:<6} {:>9} {:>7}  {}\n", row.what, digits(row.ours), row.unit, row.limit ? digits(*row.limit) : "-", over ? "MISSED" : "",
             row.theirs ? digits(*row.theirs) : "-", row.theirs && row.ours > 0 ? digits(*row.theirs / row.ours) + "x" : "-", row.peer);
  std::fflush(stdout);
}

}  // namespace gritwright::bench
