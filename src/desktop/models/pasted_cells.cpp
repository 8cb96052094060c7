#include "pasted_cells.hpp"

#include <QRegularExpression>
#include <algorithm>
#include <utility>

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

/// Words, with a number in them or without: "Test 1 (g)". A mistyped number has fewer letters.
bool is_heading(const QStringList& row) {
  static const QRegularExpression words(QStringLiteral("^\\p{L}[^;\\t]*$"));
  static const QRegularExpression word(QStringLiteral("\\p{L}{3}"));
  return std::ranges::all_of(row, [](const QString& cell) { return cell.isEmpty() || (words.match(cell).hasMatch() && word.match(cell).hasMatch() && !names_the_pan(cell)); });
}

QStringList without_empty_ends(QStringList lines) {
  const auto is_empty = [](const QString& line) { return line.trimmed().isEmpty(); };
  while (!lines.isEmpty() && is_empty(lines.back())) lines.removeLast();
  while (!lines.isEmpty() && is_empty(lines.front())) lines.removeFirst();
  return lines;
}

/// Every other line is empty: they part the lines and are no cells.
bool is_double_spaced(const QStringList& lines) {
  for (qsizetype i = 1; i < lines.size(); i += 2) {
    if (!lines[i].trimmed().isEmpty()) return false;
  }
  return lines.size() > 1;
}

}  // namespace

bool PastedCells::is_pan(std::size_t row) const {
  if (rows[row].isEmpty() || !names_the_pan(rows[row].front())) return false;
  // A sieve of no opening is the pan where it stands at an end of the stack.
  return !has_digit(rows[row].front()) || row == 0 || row + 1 == rows.size();
}

PastedCells pasted_cells(const QString& text) {
  static const QRegularExpression line_end(QStringLiteral("\r\n|\r|\n"));
  static const QRegularExpression wide_space(QStringLiteral("\\s{2,}"));
  const QStringList lines = without_empty_ends(text.split(line_end));
  const bool by_tab = text.contains(u'\t');
  const bool by_semicolon = !by_tab && text.contains(u';');
  const bool by_comma = !by_tab && !by_semicolon && commas_separate(lines);
  PastedCells cells;
  bool has_pan = false;
  for (const QString& line : lines) {
    QStringList row = by_tab ? line.split(u'\t') : by_semicolon ? line.split(u';') : by_comma ? line.split(u',') : line.trimmed().split(wide_space);
    for (QString& cell : row) cell = cell.trimmed();
    while (row.size() > 1 && row.back().isEmpty()) row.removeLast();
    if (cells.rows.empty() && (!has_digit(line) || is_heading(row))) continue;
    if (has_pan && !has_digit(row.front())) {
      if (!line.trimmed().isEmpty()) cells.below_pan << line.simplified();
      continue;
    }
    cells.columns = std::max(cells.columns, static_cast<int>(row.size()));
    has_pan = has_pan || (row.size() > 1 && names_the_pan(row.front()));
    cells.rows.push_back(std::move(row));
  }
  // In a column of its own an empty line is a cell in which nothing stands.
  if (cells.columns > 1 || is_double_spaced(lines)) std::erase_if(cells.rows, [](const QStringList& row) { return row.join(QString()).isEmpty(); });
  return cells;
}

}  // namespace gritwright::desktop
