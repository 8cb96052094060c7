#pragma once
#include <QString>

#include "gritwright/report/quantity_text.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright::desktop {

/// What is left of a bag, fraction or bin by the ledger: "10.3 L (7.00 kg dry)", the mass alone where no litre weight is known, else a
/// dash.
[[nodiscard]] QString stock_text(const OpenWorkbook& workbook, const RecordRef& holder, UnitSystem units);

/// The same in short, for lists: litres, else the dry mass, else a dash.
[[nodiscard]] QString short_stock_text(const OpenWorkbook& workbook, const RecordLine& line, UnitSystem units);

/// Whether it was sieved, how often and when last.
[[nodiscard]] QString tested_text(const OpenWorkbook& workbook, const RecordRef& holder);

}  // namespace gritwright::desktop
