#pragma once
#include "bench_evaluation.hpp"
#include "bench_state.hpp"
#include "gritwright/domain/material.hpp"
#include "mix_comparison.hpp"
#include "record_book.hpp"
#include "surroundings.hpp"

namespace gritwright::desktop {

/// What the record knows around the bag of a sheet, at most eight earlier tests; `owned_sieves` are those of all sets.
[[nodiscard]] Surroundings surroundings_of(const OpenWorkbook& workbook, const ComponentSheet& sheet);

/// The newest kept mixes, at most 24, newest first.
[[nodiscard]] std::vector<KeptMix> kept_mixes(const OpenWorkbook& workbook);

/// What pot tests taught about the kept mixes of a name, newest first.
[[nodiscard]] std::vector<MixCalibration> calibrations_called(const OpenWorkbook& workbook, const std::string& name);

/// The bag, fraction or bin of that number; empty if there is none.
[[nodiscard]] std::optional<RecordRef> grain_called(const OpenWorkbook& workbook, const QString& id);

/// The same, or a tree whose used ground is sieved, or a mix.
[[nodiscard]] std::optional<RecordRef> gradable_called(const OpenWorkbook& workbook, const QString& id);

/// A sheet with the latest sieve test of a bag or fraction, for a fraction without one the grading that was predicted, else an empty
/// stack, with material and densities. Empty if there is no such grain.
[[nodiscard]] std::optional<ComponentSheet> sheet_of_grain(const OpenWorkbook& workbook, const QString& id);

/// A sheet that gives a component of a kept mix again, its grading as if 100 g had been sieved; figures that are the catalogue's typical
/// ones stay the catalogue's.
[[nodiscard]] ComponentSheet sheet_as_designed(const Component& component, const Catalogue& catalogue);

}  // namespace gritwright::desktop
