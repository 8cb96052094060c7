#pragma once
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/component.hpp"

namespace gritwright {

/// Constants of the retention chain (docs/science/water.md). Defaults fitted to clean sands of UNSODA 2.0.
struct RetentionConstants {
  double k_cm_mm = 9.5;         ///< capillary constant, cm·mm, 2..40
  double spread = 0.7;          ///< b, how much of the grading's spread the pores show, 0..1
  double n = 6;                 ///< shape, 1.1..50
  double residual = 0.045;      ///< theta_r, 0..<1
  double flooded_fill = 0.84;   ///< f, share of the inter-particle voids a flood fills, 0..1
  double grain_fill = 0.7;      ///< w, share of the open grain pores that holds water, 0..1
  friend bool operator==(const RetentionConstants&, const RetentionConstants&) = default;
};

/// A mix as designed: components by loose parts, the water constants if calibrated, and how it is placed.
struct Mix {
  std::string name;
  std::vector<Component> components;
  RetentionConstants water;
  std::optional<Settling> settling;  ///< absent: not known; 0: as poured
  std::optional<Spill> spill;        ///< absent: not known
  friend bool operator==(const Mix&, const Mix&) = default;
};

/// As worked out where nothing better is known: 0 where the mix does not tell.
[[nodiscard]] inline Settling counted_settling(const Mix& mix) { return mix.settling.value_or(Settling{}); }
[[nodiscard]] inline Spill counted_spill(const Mix& mix) { return mix.spill.value_or(Spill{}); }

[[nodiscard]] Problems check(const RetentionConstants& constants);
[[nodiscard]] Problems check(const Mix& mix);

}  // namespace gritwright
