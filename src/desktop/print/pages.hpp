#pragma once
// What every printed sheet shares: the page, the letters, the foot with the page number, and the way into a file.

#include <QFont>
#include <QRectF>
#include <QString>
#include <functional>

#include "gritwright/result.hpp"

class QPagedPaintDevice;
class QPainter;
class QTextDocument;

namespace gritwright::desktop {

enum class Paper { a4, letter };

/// Page geometry in the device's points, margins taken off.
struct Page {
  double points_per_mm;
  QRectF body;
  QRectF foot;
};
[[nodiscard]] Page page_of(const QPagedPaintDevice& device);

inline constexpr int body_points = 9;
[[nodiscard]] QFont print_font(int points, bool strong = false);

/// The part of `document` that stands on page `number` (from 0), in black.
void paint_page(QPainter& painter, QTextDocument& document, const Page& page, int number);
/// A long name takes a second line, it is not cut.
void paint_foot(QPainter& painter, const Page& page, const QString& foot, const QString& number);
/// "page 2 of 3"
[[nodiscard]] QString page_number(int number, int pages);

/// Writes what `paint` draws as a PDF, through a temporary name, so that a full disk leaves the former sheet as it was.
/// Error: file.write-failed.
[[nodiscard]] Result<Done> write_pages(const QString& file, const QString& title, Paper paper, int dots_per_inch,
                                       const std::function<bool(QPagedPaintDevice&)>& paint);

}  // namespace gritwright::desktop
