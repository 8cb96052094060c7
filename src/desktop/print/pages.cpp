#include "pages.hpp"

#include <QAbstractTextDocumentLayout>
#include <QCoreApplication>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QTextDocument>

namespace gritwright::desktop {

namespace {

class PageText {
  Q_DECLARE_TR_FUNCTIONS(PrintedPages)
};

constexpr double margin_mm = 14;
constexpr double foot_mm = 8;
constexpr double mm_per_inch = 25.4;

}  // namespace

Page page_of(const QPagedPaintDevice& device) {
  Page page{};
  page.points_per_mm = device.logicalDpiX() / mm_per_inch;
  const QSizeF paper_mm = device.pageLayout().pageSize().size(QPageSize::Millimeter);
  const double width = (paper_mm.width() - 2 * margin_mm) * page.points_per_mm;
  const double height = (paper_mm.height() - 2 * margin_mm - foot_mm) * page.points_per_mm;
  page.body = QRectF(margin_mm * page.points_per_mm, margin_mm * page.points_per_mm, width, height);
  page.foot = QRectF(page.body.left(), page.body.bottom(), width, foot_mm * page.points_per_mm);
  return page;
}

QFont print_font(int points, bool strong) {
  QFont font(QStringLiteral("DejaVu Sans"), points);
  font.setStyleHint(QFont::SansSerif);
  font.setBold(strong);
  return font;
}

void paint_page(QPainter& painter, QTextDocument& document, const Page& page, int number) {
  painter.save();
  painter.translate(page.body.left(), page.body.top() - number * page.body.height());
  const QRectF window(0, number * page.body.height(), page.body.width(), page.body.height());
  painter.setClipRect(window);
  QAbstractTextDocumentLayout::PaintContext context;
  context.clip = window;
  context.palette.setColor(QPalette::Text, Qt::black);
  document.documentLayout()->draw(&painter, context);
  painter.restore();
}

void paint_foot(QPainter& painter, const Page& page, const QString& foot, const QString& number) {
  painter.save();
  painter.setFont(print_font(body_points - 1));
  painter.setPen(Qt::black);
  const double number_width = painter.fontMetrics().horizontalAdvance(number) + 4 * page.points_per_mm;
  painter.drawText(page.foot.adjusted(0, 0, -number_width, 0), Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap, foot);
  painter.drawText(page.foot, Qt::AlignRight | Qt::AlignBottom, number);
  painter.restore();
}

QString page_number(int number, int pages) { return PageText::tr("page %1 of %2").arg(number).arg(pages); }

Result<Done> write_pages(const QString& file, const QString& title, Paper paper, int dots_per_inch, const std::function<bool(QPagedPaintDevice&)>& paint) {
  const auto failed = [&] { return Problem{"file.write-failed", {file.toStdString(), {}, {}, ""}, {}}; };
  QSaveFile target(file);
  if (!target.open(QIODevice::WriteOnly)) return failed();
  {
    QPdfWriter writer(&target);
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Gritwright"));
    writer.setResolution(dots_per_inch);
    writer.setPageSize(QPageSize(paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    if (!paint(writer)) return failed();
  }
  if (!target.commit()) return failed();
  return Done{};
}

}  // namespace gritwright::desktop
