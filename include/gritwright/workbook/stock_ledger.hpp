#pragma once
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/bag.hpp"
#include "gritwright/domain/fraction.hpp"
#include "gritwright/domain/stock_entry.hpp"
#include "gritwright/result.hpp"
#include "gritwright/units.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright {

/// An amount as the grower measured it: weighed, or by jug.
struct Measured {
  std::optional<Mass> weighed;
  Moisture moisture{};  ///< of the grain that was weighed
  std::optional<LooseVolume> by_jug;
  /// Turns litres into dry grain where the record has no density of its own, as the catalogue's typical one.
  std::optional<BulkDensity> fallback_density;
};

/// Where a litre weight comes from: of the grain itself, of the bag it was screened out of, or of that bag as the fraction was predicted to pack.
enum class LitreWeightOrigin { own, of_bag, predicted };
struct LitreWeight {
  BulkDensity value;
  LitreWeightOrigin origin = LitreWeightOrigin::own;
  std::optional<BulkDensity> of_bag{};      ///< what it follows from
  std::optional<BulkDensityRatio> ratio{};  ///< of a predicted one, over that of its bag
};

/// The dry bulk density of what lies in a bag, bin or fraction: its own, else that of its newest sieve test that has one, else mass by
/// volume as they were written down; for a fraction without any of these its bag's times the predicted ratio. Litres and grams of the
/// stock are turned into each other by it, everywhere; a catalogue's typical one only where it is empty.
[[nodiscard]] std::optional<LitreWeight> litre_weight_of(const OpenWorkbook& workbook, const RecordRef& holder);
/// The same without where it comes from.
[[nodiscard]] std::optional<BulkDensity> bulk_density_of(const OpenWorkbook& workbook, const RecordRef& holder);

/// The stock by the ledger in loose litres, by `bulk_density_of`; empty where stock or density is not known.
[[nodiscard]] std::optional<LooseVolume> litres_in_stock(const OpenWorkbook& workbook, const RecordRef& holder);

/// Enters grain that came or went; the sign follows from the reason. The density that turned litres into grams is stored with it.
/// `told` is what log and undo call it; empty: a few plain words.
/// Errors: stock.nothing-measured, stock.no-density-known, workbook.not-there, those of check(StockEntry) and `apply`.
[[nodiscard]] Result<Applied> enter_stock(OpenWorkbook& workbook, const RecordRef& holder, StockReason reason, const Measured& amount,
                                          const std::string& day, std::optional<RecordRef> other = {}, const std::string& note = {},
                                          const std::string& told = {});

/// Enters what a count found. The books stay as they are; the difference is an entry of its own. Errors as above.
[[nodiscard]] Result<Applied> enter_count(OpenWorkbook& workbook, const RecordRef& holder, const Measured& found, const std::string& day,
                                          const std::string& note = {}, const std::string& told = {});

/// The entry of what came with a bag: weighed, else its litres with the density that turned them into grams. Empty where neither is known.
[[nodiscard]] std::optional<StockEntry> arrival_of(const RecordRef& holder, const Bag& bag, const std::string& day,
                                                   std::optional<BulkDensity> fallback_density = {});

/// Whether the entry of what came in with a bag changes with it, as it does in every change of a bag: what came in is what the bag says,
/// until somebody counts what is left of it.
[[nodiscard]] bool corrects_receipt(const OpenWorkbook& workbook, const Stored<Bag>& was, const Bag& now);

/// Adds a bag and, where its dry mass is known, the entry of what was received, as one step. The bag is the first of the revisions.
/// Litres are converted with the bag's own density, else with `fallback_density`.
[[nodiscard]] Result<Applied> receive(OpenWorkbook& workbook, const Bag& bag, const std::string& id = {},
                                      std::optional<BulkDensity> fallback_density = {});

/// Adds the fractions that a screening of `source` gave, takes their grain out of the source and enters what was lost as spilt, as one
/// step. Fractions without mass or (with their own density) volume enter no stock. The fractions are the first of the revisions.
[[nodiscard]] Result<Applied> screen_into(OpenWorkbook& workbook, const RecordRef& source, std::vector<Fraction> fractions,
                                          std::optional<Mass> spilt, const std::string& day);

}  // namespace gritwright
