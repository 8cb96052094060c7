#pragma once
#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "bench.hpp"
#include "gritwright/domain/design_problem.hpp"
#include "gritwright/models/sieving_spread.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright::desktop {

/// Grain that can go into a recipe.
struct ShelfItem {
  QString key;                      ///< "bag:K-07", "bench:2", "material:pumice"
  std::optional<RecordRef> source;  ///< a bag, fraction or tub of the record
  Candidate candidate;              ///< stock and price as the record has them, what is reserved taken off
  std::string currency;             ///< of the price, in the grower's own word
  std::optional<LooseVolume> reserved;
  bool is_printed_size = false;  ///< graded by what is printed on the bag, not sieved yet
  bool taken = true;             ///< unless the grower says otherwise
  std::optional<SievedSample> sample;  ///< that its grading rests on
  friend bool operator==(const ShelfItem&, const ShelfItem&) = default;
};

/// A pot of the record.
struct ShelfPot {
  QString id;
  Container container;
  friend bool operator==(const ShelfPot&, const ShelfPot&) = default;
};

/// What the record has for a search: grain in stock, newest first, at most 60, and pots.
struct Shelf {
  std::vector<ShelfItem> grain;
  std::vector<ShelfPot> pots;
  friend bool operator==(const Shelf&, const Shelf&) = default;
};

/// Grain from `from` to `to` with even shares over the logarithm of its size: what a printed size says until the bag is sieved.
[[nodiscard]] Grading printed_grading(Aperture from, Aperture to);

[[nodiscard]] Shelf shelf_of(const OpenWorkbook& workbook, const Catalogue& catalogue);

/// The record's grain, the bench's that is in no bag, and, left out unless asked for, the catalogue's materials in the wanted band.
[[nodiscard]] std::vector<ShelfItem> grain_to_choose_from(const Bench& bench, const Shelf& shelf);

}  // namespace gritwright::desktop
