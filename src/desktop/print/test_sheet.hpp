#pragma once
#include <QString>

#include "models/bench.hpp"

class QPagedPaintDevice;

namespace gritwright::desktop {

/// The sieve test on screen as a page of HTML: sample, stack, curve's figures, checks, verdict. Empty without a component.
[[nodiscard]] QString test_sheet_html(const Bench& bench);

/// What a device for the sheet is set to: text and lines stay drawings at any resolution, and the curve is laid out for a screen.
inline constexpr int sheet_dots_per_inch = 96;

/// The sheet and its curve below it, on as many pages as it takes, numbered. The device has no margins of its own.
void print_test_sheet(const Bench& bench, QPagedPaintDevice& device);

/// As a PDF file. False if it could not be written.
[[nodiscard]] bool write_test_sheet(const Bench& bench, const QString& path, bool on_letter_paper);

}  // namespace gritwright::desktop
