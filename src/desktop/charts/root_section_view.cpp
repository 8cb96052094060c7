#include "root_section_view.hpp"

#include <QLocale>
#include <QPainter>
#include <QPolygonF>
#include <algorithm>
#include <cmath>

#include "gritwright/report/root_section.hpp"
#include "section_painting.hpp"
#include "section_table.hpp"
#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

namespace {

constexpr double root_section_gap = 8;

QBrush not_known_brush() { return {current_colours().muted, Qt::DiagCrossPattern}; }

QString share_or_its_range(Porosity share, const std::optional<Range>& range) {
  if (!range) return to_local(percent_text(share.value()));
  return RootSectionView::tr("%1 to %2").arg(to_local(percent_text(range->low)), to_local(percent_text(range->high)));
}

QString new_mix_only(const RootSection& section) { return to_local(new_mix_only_text(section, translated)); }

/// Air and water held, as ranges where they are known.
QString air_and_water_text(const RootSection& section) {
  const auto of = [&](MixFigure figure) { return section.ranges ? section.ranges->of(figure) : std::nullopt; };
  return RootSectionView::tr("air %1, water held %2")
      .arg(share_or_its_range(section.water.air_filled_porosity, of(MixFigure::air_filled_porosity)), share_or_its_range(section.water.container_capacity, of(MixFigure::container_capacity)));
}

}  // namespace

RootSectionView::RootSectionView(RootPlanDesk& desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  setObjectName(QStringLiteral("root_section"));
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("The pot in section with the new mix around the root mass"));
  connect(&desk_, &RootPlanDesk::answered, this, &RootSectionView::refresh);
  connect(&desk_, &RootPlanDesk::changed, this, &RootSectionView::refresh);
  refresh();
}

QSize RootSectionView::minimumSizeHint() const { return {300, 15 * fontMetrics().height()}; }

void RootSectionView::set_units(UnitSystem units) {
  units_ = units;
  refresh();
}

const RootSection* RootSectionView::section() const {
  const RootPlanOutcome* outcome = desk_.outcome();
  return outcome != nullptr && outcome->section ? &*outcome->section : nullptr;
}

void RootSectionView::refresh() {
  const RootPlanOutcome* outcome = desk_.outcome();
  const WorkedPlan* worked = desk_.worked();
  if (const RootSection* drawn = section()) {
    const QString known = tr("%1 (%2): %3; the lowest %4 stay wet.")
                              .arg(new_mix_only(*drawn), to_qt(outcome->mix_name), air_and_water_text(*drawn), to_local(depth_text(drawn->pot.perched, units_)));
    setAccessibleDescription(drawn->kept.empty() ? known : known + QStringLiteral(" ") + tr("What the kept root mass holds is not known."));
  } else if (worked == nullptr) {
    setAccessibleDescription(desk_.wanted_first());
  } else if (!worked->fits) {
    setAccessibleDescription(tr("Plan %1 goes in stages, back into the old pot: its section is not known.").arg(to_qt(worked->name)));
  } else if (outcome->mix_name.empty()) {
    setAccessibleDescription(tr("No mix yet: choose on \u201cRoot mass\u201d what fills the rest of the pot."));
  } else {
    setAccessibleDescription(tr("%1 has a component without a grain density, so its water is not known: measure it.").arg(to_qt(outcome->mix_name)));
  }
  update();
}

PictureTable RootSectionView::table() const {
  const RootSection* drawn = section();
  PictureTable table = section_table(drawn != nullptr ? &drawn->pot : nullptr, drawn != nullptr && drawn->ranges ? &*drawn->ranges : nullptr, units_);
  if (drawn == nullptr) return table;
  table.rows.push_back({new_mix_only(*drawn)});
  table.rows.back().resize(table.heading.size());
  return table;
}

PictureTable RootSectionView::data() const {
  const RootSection* drawn = section();
  PictureTable table = section_data(drawn != nullptr ? &drawn->pot : nullptr, drawn != nullptr && drawn->ranges ? &*drawn->ranges : nullptr);
  table.heading << QStringLiteral("new_mix_share_of_pot");
  for (QStringList& row : table.rows) row << QLocale::c().toString(drawn->new_mix_share, 'f', 4);
  return table;
}

double RootSectionView::paint_legend(QPainter& painter) const {
  const double line = fontMetrics().height();
  QPointF at(root_section_gap, root_section_gap);
  const auto entry = [&](const QBrush& brush, const QString& name) {
    const double taken = 2 * line + 3 * root_section_gap + fontMetrics().horizontalAdvance(name);
    if (at.x() > root_section_gap && at.x() + taken > width()) at = QPointF(root_section_gap, at.y() + line + 4);
    const QRectF swatch(at, QSizeF(1.6 * line, line));
    painter.setPen(QPen(current_colours().field_edge, 1));
    painter.setBrush(brush);
    painter.drawRect(swatch);
    painter.setPen(palette().color(QPalette::Text));
    painter.drawText(QPointF(swatch.right() + root_section_gap, at.y() + fontMetrics().ascent()), name);
    at.rx() += taken;
  };
  for (const SectionFilling& filling : section_fillings()) entry(filling.brush, filling.name);
  if (!section()->kept.empty()) entry(not_known_brush(), tr("kept root mass: not known"));
  return at.y() + line + root_section_gap;
}

void RootSectionView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), palette().color(QPalette::Base));
  const QColor text = palette().color(QPalette::Text);
  painter.setPen(text);
  const RootSection* drawn = section();
  if (drawn == nullptr) {
    painter.drawText(rect().adjusted(12, 12, -12, -12), Qt::AlignCenter | Qt::TextWordWrap, accessibleDescription());
    return;
  }
  const double line = fontMetrics().height();
  const double top = paint_legend(painter) + root_section_gap;
  double half_cm = 0;
  for (const PotWidth& wide : drawn->pot.widths) half_cm = std::max(half_cm, in_cm(wide.length) / 2);
  double high_cm = in_cm(drawn->pot.rim);
  for (const ViewPoint& point : drawn->kept) {
    half_cm = std::max(half_cm, std::abs(in_cm(point.across)));
    high_cm = std::max(high_cm, in_cm(point.along));
  }
  const QString filled = tr("filled %1").arg(to_local(depth_text(drawn->pot.fill_line, units_)));
  const QString wet = drawn->pot.perched ? tr("wet zone %1").arg(to_local(depth_text(drawn->pot.perched, units_))) : QString();
  const double beside = std::max(fontMetrics().horizontalAdvance(filled), fontMetrics().horizontalAdvance(wet)) + 3 * root_section_gap;
  // Where names beside the pot would leave it no room they stand below it.
  const bool named_beside = beside < width() / 3.0;
  const double names = named_beside ? beside : 0;
  QString caption = tr("%1: %2").arg(new_mix_only(*drawn), air_and_water_text(*drawn));
  if (!named_beside) caption += u'\n' + (wet.isEmpty() ? filled : comma_list({filled, wet}));
  const double wide_caption = width() - 2 * root_section_gap;
  const double caption_height = QFontMetricsF(font()).boundingRect(QRectF(0, 0, wide_caption, height()), Qt::AlignHCenter | Qt::TextWordWrap, caption).height();
  const QRectF room(root_section_gap, top, std::max(40.0, width() - names - 2 * root_section_gap), std::max(20.0, height() - top - caption_height - 3 * root_section_gap));
  const double pixels = std::max(0.5, std::min(room.width() / (2 * half_cm), room.height() / high_cm));
  const SectionScale scale{pixels, QPointF(room.center().x(), room.top() + (room.height() + high_cm * pixels) / 2)};
  paint_section_fill(painter, drawn->pot, scale);
  if (!drawn->kept.empty()) {
    QPolygonF kept;
    for (const ViewPoint& point : drawn->kept) kept << QPointF(scale.floor.x() + in_cm(point.across) * pixels, scale.floor.y() - in_cm(point.along) * pixels);
    painter.setPen(QPen(text, 1.6));
    painter.setBrush(palette().color(QPalette::Base));
    painter.drawPolygon(kept);
    painter.setBrush(not_known_brush());
    painter.drawPolygon(kept);
    const QString words = tr("not known");
    const QRectF box = kept.boundingRect();
    const double wide = fontMetrics().horizontalAdvance(words);
    const QRectF ground(box.center().x() - wide / 2 - 4, box.center().y() - line / 2 - 1, wide + 8, line + 2);
    // The legend says it too.
    if (box.contains(ground)) {
      painter.fillRect(ground, palette().color(QPalette::Base));
      painter.setPen(text);
      painter.drawText(ground, Qt::AlignCenter, words);
    }
  }
  paint_section_wall(painter, drawn->pot, scale, hasFocus() ? palette().color(QPalette::Highlight) : text);
  const auto level = [&](Depth height, Qt::PenStyle style, const QString& words) {
    const double y = scale.floor.y() - in_cm(height) * pixels;
    const double half = section_half_px(drawn->pot, in_cm(height), scale);
    painter.setPen(QPen(text, 1.5, style));
    painter.drawLine(QPointF(scale.floor.x() - half, y), QPointF(scale.floor.x() + half + 2 * root_section_gap, y));
    if (named_beside) painter.drawText(QPointF(scale.floor.x() + half + 3 * root_section_gap, y + fontMetrics().ascent() / 2.0), words);
  };
  level(drawn->pot.fill_line, Qt::DashLine, filled);
  if (drawn->pot.perched && (!named_beside || in_cm(drawn->pot.fill_line) - in_cm(*drawn->pot.perched) > line / pixels)) level(*drawn->pot.perched, Qt::DotLine, wet);
  painter.setPen(text);
  painter.drawText(QRectF(root_section_gap, scale.floor.y() + root_section_gap, wide_caption, caption_height), Qt::AlignHCenter | Qt::TextWordWrap, caption);
}

}  // namespace gritwright::desktop
