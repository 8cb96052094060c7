#include "pdf.hpp"

#include <QAbstractTextDocumentLayout>
#include <QFontMetricsF>
#include <QCoreApplication>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QRegularExpression>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextTable>
#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

#include "drawing_object.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class LabelText {
  Q_DECLARE_TR_FUNCTIONS(PotLabels)
};

constexpr double inch_mm = 25.4;
/// Lengths inside text formats are pixels of a 96 dpi screen, whatever the device.
constexpr double format_pixels_per_mm = 96 / inch_mm;
constexpr double cell_padding_mm = 0.9;
constexpr int heading_points = 12;
constexpr int title_points = 16;

/// The text document of a printed document, laid out for one device.
class Layout {
 public:
  Layout(const PrintDocument& source, QPagedPaintDevice& device) : page_(page_of(device)), drawing_(new DrawingObject(page_.points_per_mm, &document_)) {
    document_.documentLayout()->setPaintDevice(&device);
    document_.documentLayout()->registerHandler(DrawingObject::object_type, drawing_);
    document_.setDefaultFont(print_font(body_points));
    document_.setDocumentMargin(0);
    document_.setUseDesignMetrics(true);
    QTextOption wrap;
    wrap.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    document_.setDefaultTextOption(wrap);
    document_.setPageSize(page_.body.size());
    write(source);
    keep_sections_together();
  }

  void paint(QPainter& painter, QPagedPaintDevice& device, const QString& foot) {
    const int pages = document_.pageCount();
    for (int number = 0; number < pages; ++number) {
      if (number > 0) device.newPage();
      paint_page(painter, document_, page_, number);
      paint_foot(painter, page_, foot, page_number(number + 1, pages));
    }
  }

 private:
  void write(const PrintDocument& source) {
    QTextCursor cursor(&document_);
    // One edit: otherwise all is laid out anew after every cell.
    cursor.beginEditBlock();
    paragraph(cursor, to_local(source.title), print_font(title_points, true), 0);
    if (!source.subtitle.empty()) paragraph(cursor, to_local(source.subtitle), print_font(body_points), 1);
    for (const PrintSection& section : source.sections) {
      const int first = paragraph(cursor, to_local(section.title), print_font(heading_points, true), 4);
      if (section.new_page && !sections_.empty()) {
        QTextBlockFormat format = cursor.blockFormat();
        format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
        cursor.setBlockFormat(format);
      }
      for (const PrintBlock& block : section.blocks) std::visit([&](const auto& each) { put(cursor, each); }, block);
      sections_.push_back({first, cursor.position()});
    }
    cursor.endEditBlock();
  }

  /// Gives the position where the paragraph begins.
  int paragraph(QTextCursor& cursor, const QString& text, const QFont& font, double above_mm) {
    QTextBlockFormat block;
    block.setTopMargin(above_mm * format_pixels_per_mm);
    QTextCharFormat letters;
    letters.setFont(font);
    if (started_)
      cursor.insertBlock(block, letters);
    else
      cursor.setBlockFormat(block);
    started_ = true;
    const int at = cursor.position();
    cursor.insertText(text, letters);
    return at;
  }

  void put(QTextCursor& cursor, const PrintText& text) { paragraph(cursor, to_local(text.text), print_font(body_points, text.strong), 1); }

  void put(QTextCursor& cursor, const PrintTicks& ticks) {
    for (const std::string& line : ticks.lines) paragraph(cursor, QStringLiteral("\u2610  ") + to_local(line), print_font(body_points), 1.2);
  }

  void put(QTextCursor& cursor, const PrintTable& source) {
    if (source.heading.empty()) return;
    QTextTableFormat format;
    format.setHeaderRowCount(1);
    format.setBorder(1);
    format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
    format.setBorderBrush(QColor(150, 150, 150));
    format.setBorderCollapse(true);
    format.setCellPadding(cell_padding_mm * format_pixels_per_mm);
    format.setTopMargin(1.5 * format_pixels_per_mm);
    format.setWidth(QTextLength(QTextLength::PercentageLength, 100));
    format.setColumnWidthConstraints(widths_of(source));
    QTextTable* table = cursor.insertTable(static_cast<int>(source.rows.size()) + 1, static_cast<int>(source.heading.size()), format);
    fill_row(*table, 0, source.heading, source, true);
    for (std::size_t row = 0; row < source.rows.size(); ++row) fill_row(*table, static_cast<int>(row) + 1, source.rows[row], source, false);
    cursor.movePosition(QTextCursor::End);
  }

  void fill_row(QTextTable& table, int row, const std::vector<std::string>& cells, const PrintTable& source, bool strong) {
    for (std::size_t column = 0; column < cells.size(); ++column) {
      QTextCursor cursor = table.cellAt(row, static_cast<int>(column)).firstCursorPosition();
      QTextBlockFormat block;
      if (column < source.numbers.size() && source.numbers[column]) block.setAlignment(Qt::AlignRight);
      cursor.setBlockFormat(block);
      QTextCharFormat letters;
      letters.setFont(print_font(body_points, strong));
      cursor.insertText(shown(source, column, cells[column]), letters);
    }
  }

  struct ColumnNeed {
    double word = 0;    ///< longest word
    double wanted = 0;  ///< room to write, short texts on one line
    double all = 0;     ///< longest text
  };

  ColumnNeed need_of(const PrintTable& source, std::size_t column, double line) {
    ColumnNeed need;
    const auto measure = [&](const std::string& cell, bool strong) {
      const QFontMetricsF metrics(print_font(body_points, strong), document_.documentLayout()->paintDevice());
      const QString text = shown(source, column, cell);
      need.all = std::max(need.all, metrics.horizontalAdvance(text));
      for (const QString& word : text.split(QLatin1Char(' '))) need.word = std::max(need.word, std::min(line / 3, metrics.horizontalAdvance(word)));
    };
    measure(source.heading[column], true);
    for (const auto& row : source.rows) measure(row.at(column), false);
    const double around = 2 * (cell_padding_mm + 0.4) * page_.points_per_mm;
    need.wanted = (need.all < line / 7 ? need.all : need.word) + around;
    need.word += around;
    if (static_cast<int>(column) == source.written_by_hand) need.wanted = std::max(need.wanted, line / 4);
    need.all = std::max(need.all + around, need.wanted);
    return need;
  }

  /// Every column has room for its longest word, unless that alone is a third of the line; then comes the room to write by hand, then
  /// short texts on one line; what is left goes by the longest text.
  QVector<QTextLength> widths_of(const PrintTable& source) {
    const double line = page_.body.width();
    std::vector<ColumnNeed> needs;
    std::vector<double> widths;
    double left = line;
    for (std::size_t column = 0; column < source.heading.size(); ++column) {
      needs.push_back(need_of(source, column, line));
      widths.push_back(needs.back().word);
      left -= widths.back();
    }
    // Of what is left each column gets as much of what it lacks as all of them can.
    const auto give = [&](auto lacks) {
      double in_all = 0;
      for (std::size_t column = 0; column < needs.size(); ++column) in_all += lacks(column);
      if (in_all <= 0 || left <= 0) return;
      const double share = std::min(1.0, left / in_all);
      for (std::size_t column = 0; column < needs.size(); ++column) {
        const double more = share * lacks(column);
        widths[column] += more;
        left -= more;
      }
    };
    give([&](std::size_t column) { return static_cast<int>(column) == source.written_by_hand ? needs[column].wanted - widths[column] : 0.0; });
    give([&](std::size_t column) { return needs[column].wanted - widths[column]; });
    give([&](std::size_t column) { return needs[column].all - widths[column]; });
    const double taken = std::accumulate(widths.begin(), widths.end(), 0.0);
    QVector<QTextLength> shares;
    for (const double width : widths) shares.push_back(QTextLength(QTextLength::PercentageLength, 100 * width / taken));
    return shares;
  }

  /// A number and its unit stay on one line.
  static QString shown(const PrintTable& source, std::size_t column, const std::string& cell) {
    QString text = to_local(cell);
    if (column < source.numbers.size() && source.numbers[column]) return text.replace(QLatin1Char(' '), QChar(QChar::Nbsp));
    static const QRegularExpression before_unit(QStringLiteral("(?<=\\d) (?=(m?L|qt|k?g|lb|[cm]m|in|%)(?![A-Za-z]))"));
    return text.replace(before_unit, QString(QChar(QChar::Nbsp)));
  }

  void put(QTextCursor& cursor, const PrintDrawing& drawing) {
    if (!drawing.title.empty()) paragraph(cursor, to_local(drawing.title), print_font(body_points, true), 2);
    paragraph(cursor, QString(), print_font(body_points), 1);
    QTextCharFormat format;
    format.setObjectType(DrawingObject::object_type);
    format.setProperty(DrawingObject::index_property, drawing_->add(drawing));
    cursor.insertText(QString(QChar::ObjectReplacementCharacter), format);
  }

  /// From the first section on: one that runs over the end of a page and would fit on one starts the next page.
  void keep_sections_together() {
    const double height = page_.body.height();
    for (const Place& section : sections_) {
      const QTextBlock first = document_.findBlock(section.from);
      const double top = document_.documentLayout()->blockBoundingRect(first).top();
      const double bottom = bottom_of(section);
      const bool runs_over = std::floor(top / height) < std::floor((bottom - 1) / height);
      if (!runs_over || bottom - top > height || std::fmod(top, height) < 1) continue;
      QTextCursor cursor(first);
      QTextBlockFormat format = first.blockFormat();
      format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
      cursor.setBlockFormat(format);
    }
  }

  struct Place {
    int from;
    int to;
  };

  double bottom_of(const Place& section) const {
    double bottom = 0;
    for (QTextBlock block = document_.findBlock(section.from); block.isValid() && block.position() <= section.to; block = block.next())
      bottom = std::max(bottom, document_.documentLayout()->blockBoundingRect(block).bottom());
    return bottom;
  }

  Page page_;
  QTextDocument document_;
  DrawingObject* drawing_;
  bool started_ = false;
  std::vector<Place> sections_;
};

/// Labels side by side; the tallest of a row sets the row's height.
class LabelLayout {
 public:
  LabelLayout(const LabelSheet& sheet, QPagedPaintDevice& device) : sheet_(sheet), device_(device), page_(page_of(device)) {}

  bool paint() {
    QPainter painter(&device_);
    if (!painter.isActive()) return false;
    constexpr std::size_t across = 3;
    const double width = page_.body.width() / across;
    double top = page_.body.top();
    for (std::size_t first = 0; first < sheet_.labels.size(); first += across) {
      const std::size_t last = std::min(first + across, sheet_.labels.size());
      double height = least_height_mm * page_.points_per_mm;
      for (std::size_t i = first; i < last; ++i) height = std::max(height, height_of(sheet_.labels[i], width));
      if (top + height > page_.body.bottom() + 0.5 && top > page_.body.top()) {
        foot(painter);
        device_.newPage();
        top = page_.body.top();
      }
      for (std::size_t i = first; i < last; ++i)
        label(painter, sheet_.labels[i], QRectF(page_.body.left() + static_cast<double>(i - first) * width, top, width, height));
      top += height;
    }
    foot(painter);
    return true;
  }

 private:
  static constexpr double least_height_mm = 32;
  static constexpr double padding_mm = 2.5;

  void fill(QTextDocument& document, const PrintLabel& label, double width) {
    document.documentLayout()->setPaintDevice(&device_);
    document.setDocumentMargin(0);
    QTextOption wrap;
    wrap.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    document.setDefaultTextOption(wrap);
    document.setDefaultFont(print_font(body_points));
    QTextCursor cursor(&document);
    QTextCharFormat heading;
    heading.setFont(print_font(heading_points, true));
    cursor.insertText(to_local(label.heading), heading);
    QTextCharFormat line;
    line.setFont(print_font(body_points));
    for (const std::string& text : label.lines) {
      cursor.insertBlock(QTextBlockFormat(), line);
      cursor.insertText(to_local(text), line);
    }
    document.setTextWidth(width - 2 * padding_mm * page_.points_per_mm);
  }

  double height_of(const PrintLabel& label, double width) {
    QTextDocument document;
    fill(document, label, width);
    return document.size().height() + 2 * padding_mm * page_.points_per_mm;
  }

  void label(QPainter& painter, const PrintLabel& label, const QRectF& area) {
    painter.save();
    QPen cut(QColor(90, 90, 90), 0.15 * page_.points_per_mm);
    cut.setDashPattern({10, 8});
    painter.setPen(cut);
    painter.drawRect(area);
    QTextDocument document;
    fill(document, label, area.width());
    painter.translate(area.topLeft() + QPointF(padding_mm, padding_mm) * page_.points_per_mm);
    QAbstractTextDocumentLayout::PaintContext context;
    context.palette.setColor(QPalette::Text, Qt::black);
    document.documentLayout()->draw(&painter, context);
    painter.restore();
  }

  void foot(QPainter& painter) { paint_foot(painter, page_, to_local(sheet_.foot), LabelText::tr("page %1").arg(++pages_)); }

  const LabelSheet& sheet_;
  QPagedPaintDevice& device_;
  Page page_;
  int pages_ = 0;
};

constexpr int sheet_resolution = 1200;

}  // namespace

bool paint_pages(const PrintDocument& document, QPagedPaintDevice& device) {
  Layout layout(document, device);
  QPainter painter(&device);
  if (!painter.isActive()) return false;
  layout.paint(painter, device, to_local(document.foot));
  return true;
}

bool paint_pages(const LabelSheet& sheet, QPagedPaintDevice& device) { return LabelLayout(sheet, device).paint(); }

Result<Done> write_pdf(const PrintDocument& document, const QString& file, Paper paper) {
  return write_pages(file, to_qt(document.title), paper, sheet_resolution, [&](QPagedPaintDevice& device) { return paint_pages(document, device); });
}
Result<Done> write_pdf(const LabelSheet& sheet, const QString& file, Paper paper) {
  return write_pages(file, to_qt(sheet.foot), paper, sheet_resolution, [&](QPagedPaintDevice& device) { return paint_pages(sheet, device); });
}

}  // namespace gritwright::desktop
