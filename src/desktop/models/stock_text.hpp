#pragma once
#include <QString>

#include "figures.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright::desktop {

/// What is left of a bag or bin, in loose litres and dry grain, each with the ledger's lines behind it.
[[nodiscard]] FigureGroup stock_figures(const OpenWorkbook& workbook, const RecordRef& holder, UnitSystem units);

/// What is left in short, for lists: litres, else the dry mass, else a dash.
[[nodiscard]] QString short_stock_text(const OpenWorkbook& workbook, const RecordLine& line, UnitSystem units);

/// Whether it was sieved, how often and when last.
[[nodiscard]] QString tested_text(const OpenWorkbook& workbook, const RecordRef& holder);

/// A figure of grain that a balance or a jug gave, typed or worked out: with more than the two decimals that somebody types it is
/// shown to one.
[[nodiscard]] QString measured_text(double value);

}  // namespace gritwright::desktop
