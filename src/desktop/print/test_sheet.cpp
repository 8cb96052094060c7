#include "test_sheet.hpp"

#include <QAbstractTextDocumentLayout>
#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QTextBlock>
#include <QTextDocument>
#include <algorithm>

#include "charts/grading_chart.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "models/material_words.hpp"
#include "models/typed_text.hpp"
#include "models/verdict_figures.hpp"
#include "pages.hpp"
#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

namespace {

class TestSheetText {
  Q_DECLARE_TR_FUNCTIONS(TestSheet)
};

constexpr QSize chart_size(640, 360);

QString row_of(const QStringList& cells, const char* tag) {
  QString row = QStringLiteral("<tr>");
  for (int i = 0; i < cells.size(); ++i) {
    row += QStringLiteral("<%1 align=\"%2\">%3</%1>").arg(QLatin1String(tag), i == 0 ? QStringLiteral("left") : QStringLiteral("right"), cells[i].toHtmlEscaped());
  }
  return row + QStringLiteral("</tr>");
}

QString table_of(const QStringList& heading, const std::vector<QStringList>& rows) {
  QString html = QStringLiteral("<table cellspacing=\"0\" cellpadding=\"3\" width=\"100%\" border=\"0.5\">") + row_of(heading, "th");
  for (const QStringList& row : rows) html += row_of(row, "td");
  return html + QStringLiteral("</table>");
}

QString stack_html(const ComponentSheet& sheet, const ComponentEvaluation& evaluation, UnitSystem units) {
  const bool by_litres = sheet.sheet.measure == Measure::litres;
  const Kind kind = by_litres ? Kind::volume : Kind::mass;
  std::vector<QStringList> rows;
  const auto amount = [&](const PanText& pan, std::size_t at) {
    if (sheet.sheet.measure == Measure::gross_and_tare) return to_local(weighed_text(at < evaluation.net.size() ? evaluation.net[at] : std::nullopt, units));
    const QString text = shown_text(pan.retained, kind, units);
    return text.isEmpty() ? QStringLiteral("\u2013") : QStringLiteral("%1 %2").arg(text, unit_of(kind, units));
  };
  for (std::size_t i = 0; i < sheet.sheet.rows.size(); ++i) {
    const bool known = evaluation.analysis && i < evaluation.analysis->sieves.size();
    const auto share = [&](auto value) { return to_local(percent_text(known ? std::optional(value(evaluation.analysis->sieves[i])) : std::nullopt)); };
    rows.push_back({sheet.sheet.rows[i].aperture, amount(sheet.sheet.rows[i], i), share([](const SieveShare& s) { return s.retained.value(); }),
                    share([](const SieveShare& s) { return s.passing.value(); })});
  }
  rows.push_back({TestSheetText::tr("pan"), amount(sheet.sheet.pan, sheet.sheet.rows.size()),
                  to_local(percent_text(evaluation.analysis ? std::optional(evaluation.analysis->pan.value()) : std::nullopt)), {}});
  return table_of({TestSheetText::tr("sieve, mm"), TestSheetText::tr("stayed on"), TestSheetText::tr("of the mass"), TestSheetText::tr("passing")}, rows);
}

QString notes_html(const ComponentEvaluation& evaluation, UnitSystem units) {
  QStringList sentences;
  for (const auto& [place, problem] : evaluation.faults) sentences << sentence_text(problem, units);
  if (evaluation.analysis) {
    for (const Note& note : evaluation.analysis->notes) sentences << sentence_text(note, units);
  }
  sentences.removeDuplicates();
  QString html;
  for (const QString& sentence : sentences) html += QStringLiteral("<li>%1</li>").arg(sentence.toHtmlEscaped());
  return html.isEmpty() ? html : QStringLiteral("<h3>%1</h3><ul>%2</ul>").arg(TestSheetText::tr("Checks").toHtmlEscaped(), html);
}

QString verdict_html(const Bench& bench) {
  const VerdictView view = verdict_view(bench);
  QString html = QStringLiteral("<h3>%1</h3><p><b>%2</b></p>").arg(TestSheetText::tr("Verdict").toHtmlEscaped(), view.sentence.toHtmlEscaped());
  std::vector<QStringList> figures;
  for (const Figure& figure : view.figures.figures) figures.push_back({figure.label, figure.value});
  html += table_of({view.figures.title, QString()}, figures);
  if (!view.fractions.empty()) html += QStringLiteral("<p></p>") + table_of(view.fraction_heading, view.fractions);
  return html;
}

/// The curve as it is on screen, in ink. Lengths and fonts are the screen's, so the device must have the screen's resolution.
void paint_chart(QPainter& painter, const Bench& bench, const QRectF& place) {
  GradingChart chart;
  // Laid out as if it were shown, without showing it.
  chart.setAttribute(Qt::WA_DontShowOnScreen);
  chart.resize(chart_size);
  chart.show();
  chart.show_picture(grading_picture(bench, -1, Curves::on_screen), {});
  (void)chart.grab();
  painter.save();
  painter.translate(place.topLeft());
  const double scale = place.width() / chart_size.width();
  painter.scale(scale, scale);
  chart.render(&painter, QRectF(QPointF(0, 0), chart_size), QRect(QPoint(0, 0), chart_size));
  painter.restore();
}

}  // namespace

QString test_sheet_html(const Bench& bench) {
  const auto index = static_cast<std::size_t>(bench.current_component());
  if (index >= bench.state().components.size()) return {};
  const ComponentSheet& sheet = bench.state().components[index];
  const ComponentEvaluation& evaluation = bench.evaluation().components[index];
  const UnitSystem units = bench.units();
  QString html = QStringLiteral("<h2>%1</h2>").arg(TestSheetText::tr("Sieve test of %1").arg(sheet.name).toHtmlEscaped());
  QStringList lines;
  if (!sheet.bag.isEmpty()) lines << TestSheetText::tr("Bag %1").arg(sheet.bag);
  if (!sheet.material.isEmpty()) lines << material_words(sheet.material.toStdString());
  lines << QLocale().toString(QDate::currentDate(), QLocale::ShortFormat);
  if (evaluation.test && evaluation.test->dry_mass) lines << TestSheetText::tr("sample %1, dry").arg(to_local(weighed_text(evaluation.test->dry_mass, units)));
  if (evaluation.analysis && evaluation.analysis->loss) lines << TestSheetText::tr("loss %1").arg(to_local(percent_text(evaluation.analysis->loss->value(), 2)));
  html += QStringLiteral("<p>%1</p>").arg(lines.join(QStringLiteral(" \u00b7 ")).toHtmlEscaped());
  return html + stack_html(sheet, evaluation, units) + notes_html(evaluation, units) + verdict_html(bench);
}

void print_test_sheet(const Bench& bench, QPagedPaintDevice& device) {
  const OnPaper on_paper;
  const Page page = page_of(device);
  QTextDocument document;
  document.setDefaultFont(print_font(body_points));
  // Before anything is laid out, or lengths are those of the screen.
  document.documentLayout()->setPaintDevice(&device);
  document.setDocumentMargin(0);
  document.setHtml(test_sheet_html(bench));
  document.setPageSize(page.body.size());
  const int text_pages = document.pageCount();
  // The curve goes below the text where there is room, else on a page of its own.
  double text_end = 0;
  for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) text_end = std::max(text_end, document.documentLayout()->blockBoundingRect(block).bottom());
  text_end -= (text_pages - 1) * page.body.height();
  const QSizeF chart_place(page.body.width(), page.body.width() * chart_size.height() / chart_size.width());
  constexpr double gap = 12;
  const bool below = page.body.height() - text_end - gap > chart_place.height();
  const int pages = text_pages + (below ? 0 : 1);
  QPainter painter(&device);
  for (int number = 0; number < pages; ++number) {
    if (number > 0) device.newPage();
    if (number < text_pages) paint_page(painter, document, page, number);
    if (number == pages - 1) paint_chart(painter, bench, QRectF(page.body.topLeft() + QPointF(0, below ? text_end + gap : 0), chart_place));
    paint_foot(painter, page, {}, page_number(number + 1, pages));
  }
}

bool write_test_sheet(const Bench& bench, const QString& path, bool on_letter_paper) {
  return write_pages(path, TestSheetText::tr("Sieve test"), on_letter_paper ? Paper::letter : Paper::a4, sheet_dots_per_inch, [&](QPagedPaintDevice& device) {
           print_test_sheet(bench, device);
           return true;
         })
      .ok();
}

}  // namespace gritwright::desktop
