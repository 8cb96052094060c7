#pragma once
// The shelf while a day's grain is taken from it.

#include <string>
#include <vector>

#include "gritwright/models/day_litres.hpp"

namespace gritwright {

class GrainShelf {
 public:
  explicit GrainShelf(const PlannedDay& day);

  /// Takes what `need` is to have ready; what is missing goes to the buying list.
  void take(const GrainLitres& need);

  /// Bags, cost and what is left are worked out here.
  void hand_over(DayAnswer& answer);

 private:
  struct Row {
    const GrainSupply* supply;
    std::optional<ScreenYield> yield;  ///< known one; screened grain has 1
    std::optional<double> free_l;      ///< raw; absent where the stock is not known
    double taken_l = 0;
  };

  [[nodiscard]] std::vector<std::size_t> rows_for(const GrainLitres& need) const;
  double take_from(std::size_t row, const GrainLitres& need, double ready_l);
  void buy(const GrainLitres& need, const std::vector<std::size_t>& rows, double short_l);
  GrainToBuy& purchase_of(const std::string& material, const std::vector<std::size_t>& rows);

  const PlannedDay& day_;
  std::vector<Row> rows_;
  std::vector<GrainTaken> taken_;
  std::vector<GrainToBuy> buy_;
  Notes notes_;
};

/// Whole bags for the raw litres, their cost, and what is left of them; nothing where no bag size is known.
void count_bags(GrainToBuy& purchase);

}  // namespace gritwright
