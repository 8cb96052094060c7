#include "typed_areas.hpp"

#include <QRegularExpression>
#include <QStringList>

#include "gritwright/formats/number.hpp"
#include "text.hpp"

namespace gritwright::desktop {

Result<std::vector<AreaAtHeight>> parse_areas(const QString& text) {
  static const QRegularExpression line_end(QStringLiteral("[\\n\\r\\x{2028}\\x{2029}]+"));
  // Where lines separate the rows, a semicolon stands between two cells.
  const QString typed = text.trimmed();
  const bool pasted = typed.contains(line_end);
  std::vector<AreaAtHeight> areas;
  for (const QString& row : pasted ? typed.split(line_end, Qt::SkipEmptyParts) : typed.split(u';', Qt::SkipEmptyParts)) {
    const QStringList pair = QString(row).replace(u';', u' ').simplified().split(u' ');
    if (pair.front().isEmpty() || (pasted && areas.empty() && pair.front().front().isLetter())) continue;
    const auto height = parse_number(pair.front().toStdString(), DecimalMark::point_or_comma);
    if (!height) return height.problems();
    const auto area = parse_number((pair.size() > 1 ? pair[1] : QString()).toStdString(), DecimalMark::point_or_comma);
    if (!area) return area.problems();
    areas.push_back({depth_cm(*height), area_cm2(*area)});
  }
  return areas;
}

QString areas_text(const std::vector<AreaAtHeight>& areas) {
  QStringList rows;
  for (const AreaAtHeight& row : areas) rows << QStringLiteral("%1 %2").arg(number_text(in_cm(row.height), 6), number_text(in_cm2(row.area), 6));
  return rows.join(QStringLiteral("; "));
}

}  // namespace gritwright::desktop
