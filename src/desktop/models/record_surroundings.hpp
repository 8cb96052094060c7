#pragma once
#include "bench_state.hpp"
#include "mix_comparison.hpp"
#include "record_book.hpp"
#include "surroundings.hpp"

namespace gritwright::desktop {

/// What the record knows around the bag of a sheet, at most eight earlier tests; `owned_sieves` are those of all sets.
[[nodiscard]] Surroundings surroundings_of(const OpenWorkbook& workbook, const ComponentSheet& sheet);

/// The newest kept mixes, at most 24, newest first.
[[nodiscard]] std::vector<KeptMix> kept_mixes(const OpenWorkbook& workbook);

/// A sheet with the bag's latest sieve test, or an empty stack with its material and densities. Empty if there is no such bag.
[[nodiscard]] std::optional<ComponentSheet> sheet_of_bag(const OpenWorkbook& workbook, const QString& bag);

}  // namespace gritwright::desktop
