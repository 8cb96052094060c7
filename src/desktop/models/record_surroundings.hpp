#pragma once
#include <span>

#include "bench_evaluation.hpp"
#include "bench_state.hpp"
#include "gritwright/domain/material.hpp"
#include "mix_comparison.hpp"
#include "record_book.hpp"
#include "surroundings.hpp"

namespace gritwright::desktop {

/// What the record knows around the bag of a sheet, at most eight earlier tests; `owned_sieves` are those of all sets. `calibrations`
/// are those of the record, here and below.
[[nodiscard]] Surroundings surroundings_of(const OpenWorkbook& workbook, const ComponentSheet& sheet, std::span<const MixCalibration> calibrations);

/// The newest kept mixes, at most 24, newest first, as the record now knows them.
[[nodiscard]] std::vector<KeptMix> kept_mixes(const OpenWorkbook& workbook, const Catalogue& catalogue, std::span<const MixCalibration> calibrations);

/// Jug and crumble test of a bag, or of the bag a fraction was screened from; empty without either.
[[nodiscard]] std::optional<GrainOfRecord> grain_of_record(const OpenWorkbook& workbook, const QString& id);

/// The same of the grains of `state`, by the numbers on their sheets.
[[nodiscard]] std::map<QString, GrainOfRecord> grains_of(const OpenWorkbook& workbook, const BenchState& state);

/// All that the record knows of the mix and the grains of `state`: what pot tests taught, jug and crumble tests of its bags.
[[nodiscard]] RecordKnowledge knowledge_of(const OpenWorkbook& workbook, const BenchState& state, std::span<const MixCalibration> calibrations);

/// What that hangs on: the name of the mix and the numbers of its grains.
[[nodiscard]] QStringList known_by(const BenchState& state);

/// The bag, fraction or bin of that number; empty if there is none.
[[nodiscard]] std::optional<RecordRef> grain_called(const OpenWorkbook& workbook, const QString& id);

/// The same, or a tree whose used ground is sieved, or a mix.
[[nodiscard]] std::optional<RecordRef> gradable_called(const OpenWorkbook& workbook, const QString& id);

/// A sheet with the latest sieve test of a bag or fraction, for a fraction without one the grading that was predicted, else an empty
/// stack, with material and densities. Empty if there is no such grain.
[[nodiscard]] std::optional<ComponentSheet> sheet_of_grain(const OpenWorkbook& workbook, const QString& id);
/// The litre weight of a bag, fraction, bin or batch in g/L, by `bulk_density_of`, as it stands in such a sheet; empty where the record knows none.
[[nodiscard]] QString litre_weight_text(const OpenWorkbook& workbook, const QString& id);

/// The sheet of a bag without a test, predicted by the size printed on the bag; as it is where none is printed.
[[nodiscard]] ComponentSheet by_printed_size(const OpenWorkbook& workbook, ComponentSheet sheet);

/// A sheet that gives a component of a kept mix again, its grading as if 100 g had been sieved; figures that are the catalogue's typical
/// ones stay the catalogue's.
[[nodiscard]] ComponentSheet sheet_as_designed(const Component& component, const Catalogue& catalogue);

}  // namespace gritwright::desktop
