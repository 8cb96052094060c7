#include "parts_bar.hpp"

#include <QLocale>
#include <QPainter>
#include <algorithm>

#include "curve_look.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

QString litres_text(double litres, UnitSystem units) { return to_local(volume_text(litres, units)); }
QString litres_range_text(const std::optional<Range>& range, UnitSystem units) {
  return range_text(range, [units](double litres) { return volume_text(litres, units); });
}

/// "6.2 L (5.9 - 6.6 L)" where it is known how sure that is.
QString with_litres_range(double litres, const std::optional<Range>& range, UnitSystem units) {
  const QString middle = litres_text(litres, units);
  return range ? PartsBar::tr("%1 (%2)").arg(middle, litres_range_text(range, units)) : middle;
}

std::optional<Range> rest_of(const std::optional<Range>& share) { return share ? std::optional(Range{1 - share->high, 1 - share->median, 1 - share->low}) : share; }

/// A name gives way to the figure behind it, never the other way round.
QString shortened(const QFontMetricsF& metrics, const QString& name, const QString& figure, double room) {
  const double taken = metrics.horizontalAdvance(PartsBar::tr("%1 %2").arg(QString(), figure));
  return PartsBar::tr("%1 %2").arg(metrics.elidedText(name, Qt::ElideRight, std::max(0.0, room - taken)), figure);
}

}  // namespace

PartsPicture parts_picture(const Bench& bench, const BenchRanges* ranges) {
  PartsPicture picture;
  const BenchEvaluation& evaluation = bench.evaluation();
  if (!evaluation.mix_state || !evaluation.mix_state->settled) {
    picture.reason = PartsBar::tr("No mix yet: finish the sieve tests and give them parts.");
    return picture;
  }
  // For the pot where there is one, else the parts taken as litres.
  for (std::size_t i = 0; i < evaluation.mixed.size(); ++i) {
    const Component& component = evaluation.mix->components[i];
    const double litres = evaluation.to_measure_out ? in_l((*evaluation.to_measure_out)[i]) : component.parts.value();
    picture.in.push_back({to_qt(component.name), litres, static_cast<int>(evaluation.mixed[i])});
    // Parts taken as litres are what they are.
    if (ranges != nullptr && evaluation.to_measure_out && i < ranges->mix.measure_out_l.size()) picture.in.back().range = ranges->mix.measure_out_l[i];
  }
  const PackedState& settled = *evaluation.mix_state->settled;
  if (evaluation.to_fill) picture.litres_out = in_l(*evaluation.to_fill);
  else if (evaluation.mix_state->poured) picture.litres_out = in_l(evaluation.mix_state->poured->volume);
  const auto range = [&](MixFigure figure) { return ranges != nullptr ? ranges->mix.of(figure) : std::nullopt; };
  picture.litres_out_range = range(evaluation.to_fill ? MixFigure::mixed_l : MixFigure::volume_l);
  picture.filling = {{PartsBar::tr("voids between grains"), settled.voids_between_grains.value(), range(MixFigure::voids_between_grains)},
                     {PartsBar::tr("voids in grains"), settled.voids_in_grains.value(), range(MixFigure::voids_in_grains)},
                     {PartsBar::tr("solid grain"), (Porosity(1) - settled.total_porosity).value(), rest_of(range(MixFigure::total_porosity))}};
  return picture;
}

QString parts_sentence(const Bench& bench, const BenchRanges* ranges) {
  const PartsPicture picture = parts_picture(bench, ranges);
  if (picture.in.empty()) return picture.reason;
  QStringList parts;
  for (const PartsPicture::Part& part : picture.in) parts << PartsBar::tr("%1 of %2").arg(with_litres_range(part.litres, part.range, bench.units()), part.name);
  QStringList shares;
  for (const PartsPicture::Share& share : picture.filling) shares << PartsBar::tr("%1 %2").arg(to_local(percent_text(share.share, 0)), share.name);
  const QString out = picture.litres_out ? with_litres_range(*picture.litres_out, picture.litres_out_range, bench.units()) : QStringLiteral("\u2013");
  return PartsBar::tr("In go %1; out come %2 mixed, of which %3 once settled.").arg(comma_list(parts), out, comma_list(shares));
}

PictureTable parts_table(const Bench& bench, const BenchRanges* ranges) {
  const PartsPicture picture = parts_picture(bench, ranges);
  const UnitSystem units = bench.units();
  PictureTable table;
  table.heading << PartsBar::tr("what") << PartsBar::tr("how much") << PartsBar::tr("90 of 100 cases");
  for (const PartsPicture::Part& part : picture.in)
    table.rows.push_back({PartsBar::tr("%1, loose").arg(part.name), litres_text(part.litres, units), litres_range_text(part.range, units)});
  if (picture.litres_out) table.rows.push_back({PartsBar::tr("mixed, poured"), litres_text(*picture.litres_out, units), litres_range_text(picture.litres_out_range, units)});
  for (const PartsPicture::Share& share : picture.filling)
    table.rows.push_back({PartsBar::tr("%1, settled").arg(share.name), to_local(percent_text(share.share)), range_text(share.range, [](double one) { return percent_text(one); })});
  return table;
}

PictureTable parts_data(const Bench& bench, const BenchRanges* ranges) {
  const PartsPicture picture = parts_picture(bench, ranges);
  const QLocale plain = QLocale::c();
  PictureTable table;
  table.heading << QStringLiteral("what") << QStringLiteral("litres") << QStringLiteral("share") << QStringLiteral("low") << QStringLiteral("high");
  const auto end = [&](const std::optional<Range>& range, double Range::*member) { return range ? plain.toString((*range).*member, 'f', 4) : QString(); };
  const auto add = [&](const QString& what, const QString& litres, const QString& share, const std::optional<Range>& range) {
    table.rows.push_back({what, litres, share, end(range, &Range::low), end(range, &Range::high)});
  };
  for (const PartsPicture::Part& part : picture.in) add(part.name, plain.toString(part.litres, 'f', 3), {}, part.range);
  if (picture.litres_out) add(PartsBar::tr("mixed, poured"), plain.toString(*picture.litres_out, 'f', 3), {}, picture.litres_out_range);
  for (const PartsPicture::Share& share : picture.filling) add(share.name, {}, plain.toString(share.share, 'f', 4), share.range);
  return table;
}

PartsBar::PartsBar(Bench& bench, RangeKeeper& ranges, QWidget* parent) : QWidget(parent), bench_(bench), ranges_(ranges) {
  setObjectName(QStringLiteral("parts_bar"));
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Litres in and litres out"));
  setBackgroundRole(QPalette::Base);
  setAutoFillBackground(true);
  connect(&bench_, &Bench::changed, this, &PartsBar::refresh);
  connect(&bench_, &Bench::units_changed, this, &PartsBar::refresh);
  connect(&ranges_, &RangeKeeper::mix_changed, this, &PartsBar::refresh);
}

QSize PartsBar::minimumSizeHint() const { return {280, 10 * fontMetrics().height()}; }

void PartsBar::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void PartsBar::refresh() {
  if (!isVisible()) return;
  const BenchRanges* const ranges = ranges_.mix();
  picture_ = parts_picture(bench_, ranges);
  setAccessibleDescription(parts_sentence(bench_, ranges));
  update();
}

void PartsBar::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QFontMetricsF metrics(font());
  const QRectF inside = QRectF(rect()).adjusted(12, 8, -12, -8);
  if (picture_.in.empty()) {
    painter.setPen(current_colours().muted);
    painter.drawText(inside, Qt::AlignCenter | Qt::TextWordWrap, picture_.reason);
    return;
  }
  double litres_in = 0;
  for (const PartsPicture::Part& part : picture_.in) litres_in += part.litres;
  const double scale = inside.width() / std::max({litres_in, picture_.litres_out.value_or(0), 1e-9});
  const double line = metrics.height() + 4;
  const double height = std::clamp((inside.height() - 4 * line) / 2, metrics.height(), 4 * metrics.height());
  painter.setPen(current_colours().palette.color(QPalette::Text));
  painter.drawText(QRectF(inside.left(), inside.top(), inside.width(), line), Qt::AlignLeading | Qt::AlignVCenter,
                   tr("In: %1 loose, each by itself").arg(litres_text(litres_in, bench_.units())));
  paint_in(painter, QRectF(inside.left(), inside.top() + line, inside.width(), height), scale);
  const double second = inside.top() + 2 * line + height + 6;
  painter.setPen(current_colours().palette.color(QPalette::Text));
  const auto out = [](const QString& litres) { return tr("Out: %1 mixed; what fills it once settled").arg(litres); };
  QString words = out(picture_.litres_out ? with_litres_range(*picture_.litres_out, picture_.litres_out_range, bench_.units()) : QStringLiteral("\u2013"));
  if (picture_.litres_out && metrics.horizontalAdvance(words) > inside.width()) words = out(litres_text(*picture_.litres_out, bench_.units()));
  painter.drawText(QRectF(inside.left(), second, inside.width(), line), Qt::AlignLeading | Qt::AlignVCenter, words);
  paint_out(painter, QRectF(inside.left(), second + line, inside.width(), height), scale);
}

void PartsBar::paint_in(QPainter& painter, const QRectF& bar, double pixels_per_litre) const {
  const QFontMetricsF metrics(font());
  double x = bar.left();
  for (const PartsPicture::Part& part : picture_.in) {
    const QRectF piece(x, bar.top(), part.litres * pixels_per_litre, bar.height());
    const CurveLook look = look_of(part.look);
    painter.fillRect(piece, look.colour);
    painter.setPen(QPen(current_colours().palette.color(QPalette::Base), 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(piece);
    QString text = tr("%1 %2").arg(part.name, with_litres_range(part.litres, part.range, bench_.units()));
    // The range is told where there is room for it; the table always does.
    if (metrics.horizontalAdvance(text) > piece.width() - 6) text = shortened(metrics, part.name, litres_text(part.litres, bench_.units()), piece.width() - 6);
    painter.setPen(current_colours().palette.color(QPalette::Text));
    painter.drawText(QPointF(x, bar.bottom() + metrics.ascent() + 2), text);
    x += piece.width();
  }
}

void PartsBar::paint_out(QPainter& painter, const QRectF& bar, double pixels_per_litre) const {
  const QFontMetricsF metrics(font());
  const ThemeColours& colours = current_colours();
  const QBrush brushes[] = {QBrush(colours.curves[1].colour, Qt::BDiagPattern), QBrush(colours.curves[0].colour, Qt::Dense6Pattern), QBrush(colours.muted)};
  const double width = picture_.litres_out.value_or(0) * pixels_per_litre;
  double x = bar.left();
  for (std::size_t i = 0; i < picture_.filling.size(); ++i) {
    const QRectF piece(x, bar.top(), width * picture_.filling[i].share, bar.height());
    painter.fillRect(piece, brushes[i % 3]);
    painter.setPen(QPen(colours.field_edge, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(piece);
    painter.setPen(colours.palette.color(QPalette::Text));
    painter.drawText(QPointF(x, bar.bottom() + metrics.ascent() + 2),
                     shortened(metrics, picture_.filling[i].name, to_local(percent_text(picture_.filling[i].share, 0)), piece.width() - 6));
    x += piece.width();
  }
}

}  // namespace gritwright::desktop
