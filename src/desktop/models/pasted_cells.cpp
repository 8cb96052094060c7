#include "pasted_cells.hpp"

#include <QRegularExpression>
#include <algorithm>

namespace gritwright::desktop {

namespace {

bool has_digit(const QString& text) {
  return std::ranges::any_of(text, [](QChar sign) { return sign.isDigit(); });
}

bool names_the_pan(const QString& cell) {
  const QString word = cell.trimmed().toLower();
  return word == QStringLiteral("pan") || word == QStringLiteral("0");
}

/// "8,12.5" has its comma between cells; "12,5" has it inside a number.
bool commas_separate(const QStringList& lines) {
  static const QRegularExpression cells(QStringLiteral("^\\s*(pan|[0-9.]+)\\s*(,\\s*[0-9.]+\\s*)+$"), QRegularExpression::CaseInsensitiveOption);
  bool any_point = false;
  for (const QString& line : lines) {
    if (!has_digit(line)) continue;
    if (!cells.match(line).hasMatch()) return false;
    any_point = any_point || line.contains(u'.') || line.count(u',') > 1 || line.trimmed().startsWith(QStringLiteral("pan"), Qt::CaseInsensitive);
  }
  return any_point;
}

}  // namespace

bool PastedCells::is_pan(std::size_t row) const {
  return row + 1 == rows.size() && !rows[row].isEmpty() && names_the_pan(rows[row].front());
}

PastedCells pasted_cells(const QString& text) {
  static const QRegularExpression line_end(QStringLiteral("\r\n|\r|\n"));
  static const QRegularExpression wide_space(QStringLiteral("\\s{2,}"));
  const QStringList lines = text.split(line_end, Qt::SkipEmptyParts);
  const bool by_tab = text.contains(u'\t');
  const bool by_semicolon = !by_tab && text.contains(u';');
  const bool by_comma = !by_tab && !by_semicolon && commas_separate(lines);
  PastedCells cells;
  for (const QString& line : lines) {
    QStringList row = by_tab ? line.split(u'\t') : by_semicolon ? line.split(u';') : by_comma ? line.split(u',') : line.trimmed().split(wide_space);
    for (QString& cell : row) cell = cell.trimmed();
    const bool names_only = !has_digit(line);
    // A heading; or "pan" alone with nothing measured beside it.
    if (names_only && (cells.rows.empty() || row.join(QString()).isEmpty())) continue;
    while (row.size() > 1 && row.back().isEmpty()) row.removeLast();
    cells.columns = std::max(cells.columns, static_cast<int>(row.size()));
    cells.rows.push_back(row);
  }
  return cells;
}

}  // namespace gritwright::desktop
