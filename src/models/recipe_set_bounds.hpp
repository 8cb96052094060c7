#pragma once
// What holds for every recipe of a set of candidates at once, whatever its parts. Proofs: docs/science/recipe-search.md.

#include <cstdint>
#include <span>
#include <vector>

#include "recipe_bounds.hpp"

namespace gritwright::recipe_search {

struct SetRating {
  double least_score = 0;
  std::uint64_t broken = 0;  ///< hard wishes that can't hold
};

/// Whether recipes have parts of each of the candidates, or of some of them.
enum class Taken { all, some };

/// Bounds of one set of candidates after the other. One for each thread.
class SetBounds {
 public:
  SetBounds(const BoundTables& tables, Strictness strictness);

  /// Of recipes with whole parts of each candidate, at most `total` in all. Precondition: no more candidates than that.
  [[nodiscard]] SetRating of_whole_parts(std::span<const std::uint8_t> candidates, int total);
  /// Of recipes in whatever shares.
  [[nodiscard]] SetRating of_shares(std::span<const std::uint8_t> candidates, Taken taken);

 private:
  void find_corners(std::span<const std::uint8_t> candidates, double least_share, Taken taken);
  void find_room(std::span<const std::uint8_t> candidates, double least_share);
  [[nodiscard]] SetRating rating();
  [[nodiscard]] double least_square_missed(const PlainWish& wish) const;
  [[nodiscard]] Range passing(std::size_t aperture) const;
  [[nodiscard]] double least_grading_cost();
  [[nodiscard]] double grading_cost();

  [[nodiscard]] bool must_hold(const PlainWish& wish) const { return wish.hard && strictness_ == Strictness::as_wished; }
  [[nodiscard]] const double* passing_at(std::size_t corner) const { return passing_.data() + corner * apertures_; }

  const BoundTables& tables_;
  const Ground& ground_;
  Strictness strictness_;
  std::vector<AirAndWater> air_and_water_;
  std::size_t apertures_;
  std::vector<std::uint64_t> named_;  ///< candidates of each share wish
  std::size_t gradings_ = 0;          ///< soft wishes on gradings that count

  // Of the set in hand.
  std::size_t corners_ = 0;
  std::vector<double> passing_;  ///< percent by corner, then by aperture
  std::vector<double> shares_;   ///< by corner, then by share wish
  double room_ = 0;
  bool lacks_volumes_ = false;
  bool lacks_price_ = false;
  bool lacks_exchange_ = false;

  // Between the corners.
  std::vector<double> place_;  ///< percent by aperture
  std::vector<double> slope_;
};

}  // namespace gritwright::recipe_search
