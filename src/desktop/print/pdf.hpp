#pragma once
// Lays plain documents of report/ out on pages and writes them as PDF: vector lines, embedded fonts, black and grey only.

#include <QString>

#include "gritwright/report/print_document.hpp"
#include "gritwright/result.hpp"
#include "pages.hpp"

class QPagedPaintDevice;

namespace gritwright::desktop {

/// Writes `document` to `file`. Sections stay on one page where they fit on one; table headings stand on every page; pages are
/// numbered. Error: file.write-failed.
[[nodiscard]] Result<Done> write_pdf(const PrintDocument& document, const QString& file, Paper paper);

/// The same for labels, in rows with lines to cut along. Long text makes a label taller, never shorter.
[[nodiscard]] Result<Done> write_pdf(const LabelSheet& sheet, const QString& file, Paper paper);

/// Lays out on any paged device, a printer or a preview, set to `paper` before. False if the device can't be painted on.
bool paint_pages(const PrintDocument& document, QPagedPaintDevice& device);
bool paint_pages(const LabelSheet& sheet, QPagedPaintDevice& device);

}  // namespace gritwright::desktop
