#include "parts_bar.hpp"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <iterator>
#include <optional>

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

struct BarPiece {
  double width;
  QBrush fill;
  QPen edge;
  QString name;
  QString figure;
  QString range;  ///< empty where none is known
};

struct LitreBar {
  QString heading;
  std::vector<BarPiece> pieces;
};

LitreBar bar_in(const PartsPicture& picture, double litres_in, double pixels_per_litre, UnitSystem units) {
  LitreBar bar{PartsBar::tr("In: %1 loose, each by itself").arg(litres_text(litres_in, units)), {}};
  const QPen edge(current_colours().palette.color(QPalette::Base), 2);
  for (const PartsPicture::Part& part : picture.in)
    bar.pieces.push_back({part.litres * pixels_per_litre, look_of(part.look).colour, edge, part.name, litres_text(part.litres, units), part.range ? litres_range_text(part.range, units) : QString()});
  return bar;
}

LitreBar bar_out(const PartsPicture& picture, double pixels_per_litre, UnitSystem units, const QFontMetricsF& metrics, double room) {
  const auto heading = [](const QString& litres) { return PartsBar::tr("Out: %1 mixed; what fills it once settled").arg(litres); };
  LitreBar bar{heading(picture.litres_out ? with_litres_range(*picture.litres_out, picture.litres_out_range, units) : QStringLiteral("\u2013")), {}};
  if (picture.litres_out && metrics.horizontalAdvance(bar.heading) > room) bar.heading = heading(litres_text(*picture.litres_out, units));
  const ThemeColours& colours = current_colours();
  const QBrush fills[] = {QBrush(colours.curves[1].colour, Qt::BDiagPattern), QBrush(colours.curves[0].colour, Qt::Dense6Pattern), QBrush(colours.muted)};
  const double width = picture.litres_out.value_or(0) * pixels_per_litre;
  for (std::size_t i = 0; i < picture.filling.size(); ++i) {
    const PartsPicture::Share& share = picture.filling[i];
    const QString range = share.range ? range_text(share.range, [](double one) { return percent_text(one, 0); }) : QString();
    bar.pieces.push_back({width * share.share, fills[i % 3], QPen(colours.field_edge, 1), share.name, to_local(percent_text(share.share, 0)), range});
  }
  return bar;
}

/// How the pieces of both bars are told, alike for all.
struct Captions {
  enum class Place { below_piece, in_key };
  Place place;
  bool name_apart;
  bool with_range;
  bool range_apart;
};

// The first for which there is room. The table always tells the ranges.
constexpr Captions captions_wanted[] = {
    {Captions::Place::below_piece, false, true, false},
    {Captions::Place::below_piece, true, true, false},
    {Captions::Place::below_piece, true, true, true},
    {Captions::Place::in_key, false, true, false},
    {Captions::Place::below_piece, false, false, false},
    {Captions::Place::below_piece, true, false, false},
    {Captions::Place::in_key, false, false, false},
};

constexpr double between_captions = 12;
constexpr double key_swatch = 24;
constexpr double caption_gap = 6;
constexpr double below_bar = 2;

double caption_room(const BarPiece& piece) { return piece.width - between_captions; }

/// The lines that are not broken, without a name that stands above them.
QStringList caption_lines(const BarPiece& piece, const Captions& captions) {
  const bool with_range = captions.with_range && !piece.range.isEmpty();
  const QString figure = with_range && !captions.range_apart ? PartsBar::tr("%1 (%2)").arg(piece.figure, piece.range) : piece.figure;
  QStringList lines{captions.name_apart ? figure : PartsBar::tr("%1 %2").arg(piece.name, figure)};
  if (with_range && captions.range_apart) lines << piece.range;
  return lines;
}

QSizeF name_size(const QFontMetricsF& metrics, const BarPiece& piece) { return metrics.boundingRect(QRectF(0, 0, caption_room(piece), 1e6), Qt::TextWordWrap, piece.name).size(); }

/// Where the entries of a key begin, in a row that wraps, from the origin.
std::vector<QPointF> key_places(const QFontMetricsF& metrics, const LitreBar& bar, const Captions& captions, double room) {
  std::vector<QPointF> places;
  QPointF at;
  for (const BarPiece& piece : bar.pieces) {
    const double wide = key_swatch + caption_gap + metrics.horizontalAdvance(caption_lines(piece, captions).front());
    if (at.x() > 0 && at.x() + wide > room) at = QPointF(0, at.y() + metrics.height() + 2);
    places.push_back(at);
    at.rx() += wide + 2 * between_captions;
  }
  return places;
}

/// Nothing where one would have to be cut.
std::optional<double> captions_height(const QFontMetricsF& metrics, const LitreBar& bar, const Captions& captions, double room) {
  const auto is_too_wide = [&](double most) { return [&metrics, most](const QString& line) { return metrics.horizontalAdvance(line) > most; }; };
  if (captions.place == Captions::Place::in_key) {
    for (const BarPiece& piece : bar.pieces)
      if (std::ranges::any_of(caption_lines(piece, captions), is_too_wide(room - key_swatch - caption_gap))) return std::nullopt;
    return bar.pieces.empty() ? 0 : key_places(metrics, bar, captions, room).back().y() + metrics.height();
  }
  double height = 0;
  for (const BarPiece& piece : bar.pieces) {
    const QStringList lines = caption_lines(piece, captions);
    if (caption_room(piece) <= 0 || std::ranges::any_of(lines, is_too_wide(caption_room(piece)))) return std::nullopt;
    double high = static_cast<double>(lines.size()) * metrics.height();
    if (captions.name_apart) {
      const QSizeF name = name_size(metrics, piece);
      if (name.width() > caption_room(piece)) return std::nullopt;
      high += name.height();
    }
    height = std::max(height, high);
  }
  return height;
}

void paint_captions(QPainter& painter, const QFontMetricsF& metrics, const QRectF& room, const LitreBar& bar, const Captions& captions) {
  const QColor ink = current_colours().palette.color(QPalette::Text);
  if (captions.place == Captions::Place::in_key) {
    const std::vector<QPointF> places = key_places(metrics, bar, captions, room.width());
    for (std::size_t i = 0; i < bar.pieces.size(); ++i) {
      const QPointF at = room.topLeft() + places[i];
      const QRectF swatch(at.x(), at.y() + 0.15 * metrics.height(), key_swatch, 0.7 * metrics.height());
      painter.fillRect(swatch, bar.pieces[i].fill);
      painter.setPen(bar.pieces[i].edge);
      painter.drawRect(swatch);
      painter.setPen(ink);
      painter.drawText(QPointF(swatch.right() + caption_gap, at.y() + metrics.ascent()), caption_lines(bar.pieces[i], captions).front());
    }
    return;
  }
  painter.setPen(ink);
  double x = room.left();
  for (const BarPiece& piece : bar.pieces) {
    double y = room.top();
    if (captions.name_apart) {
      const double height = name_size(metrics, piece).height();
      painter.drawText(QRectF(x, y, caption_room(piece), height), Qt::AlignLeading | Qt::AlignTop | Qt::TextWordWrap, piece.name);
      y += height;
    }
    for (const QString& line : caption_lines(piece, captions)) {
      painter.drawText(QRectF(x, y, caption_room(piece), metrics.height()), Qt::AlignLeading | Qt::AlignVCenter | Qt::TextSingleLine, line);
      y += metrics.height();
    }
    x += piece.width;
  }
}

/// Where not even a key has room, names and figures are cut.
void paint_cut_captions(QPainter& painter, const QFontMetricsF& metrics, const QRectF& room, const LitreBar& bar) {
  painter.setPen(current_colours().palette.color(QPalette::Text));
  double x = room.left();
  for (const BarPiece& piece : bar.pieces) {
    double y = room.top() + metrics.ascent();
    for (const QString& line : {piece.name, piece.figure}) {
      painter.drawText(QPointF(x, y), metrics.elidedText(line, Qt::ElideRight, std::max(0.0, caption_room(piece))));
      y += metrics.height();
    }
    x += piece.width;
  }
}

void paint_pieces(QPainter& painter, const QRectF& room, const LitreBar& bar) {
  double x = room.left();
  for (const BarPiece& piece : bar.pieces) {
    const QRectF rect(x, room.top(), piece.width, room.height());
    painter.fillRect(rect, piece.fill);
    painter.setPen(piece.edge);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect);
    x += piece.width;
  }
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
  const LitreBar bars[] = {bar_in(picture_, litres_in, scale, bench_.units()), bar_out(picture_, scale, bench_.units(), metrics, inside.width())};
  const auto heading_height = [&](const LitreBar& bar) { return metrics.boundingRect(QRectF(0, 0, inside.width(), 1e6), Qt::TextWordWrap, bar.heading).height() + 4; };
  constexpr double between_bars = 6;
  double free = inside.height() - between_bars;
  for (const LitreBar& bar : bars) free -= heading_height(bar) + below_bar;
  const double least_bar = 0.8 * metrics.height();
  const Captions* captions = nullptr;
  double caption_heights[] = {2 * metrics.height(), 2 * metrics.height()};
  for (const Captions& wanted : captions_wanted) {
    const auto in = captions_height(metrics, bars[0], wanted, inside.width());
    const auto out = captions_height(metrics, bars[1], wanted, inside.width());
    if (!in || !out || free - *in - *out < 2 * least_bar) continue;
    captions = &wanted;
    caption_heights[0] = *in;
    caption_heights[1] = *out;
    break;
  }
  free -= caption_heights[0] + caption_heights[1];
  const double height = std::clamp(free / 2, least_bar, std::max(4 * metrics.height(), 0.3 * inside.height()));
  const double apart = between_bars + std::clamp(free / 2 - height, 0.0, 2 * metrics.height());
  double y = inside.top();
  for (std::size_t i = 0; i < std::size(bars); ++i) {
    painter.setPen(current_colours().palette.color(QPalette::Text));
    const double heading = heading_height(bars[i]);
    painter.drawText(QRectF(inside.left(), y, inside.width(), heading), Qt::AlignLeading | Qt::AlignTop | Qt::TextWordWrap, bars[i].heading);
    y += heading;
    paint_pieces(painter, QRectF(inside.left(), y, inside.width(), height), bars[i]);
    y += height + below_bar;
    const QRectF below(inside.left(), y, inside.width(), caption_heights[i]);
    if (captions != nullptr) paint_captions(painter, metrics, below, bars[i], *captions);
    else paint_cut_captions(painter, metrics, below, bars[i]);
    y += caption_heights[i] + apart;
  }
}

}  // namespace gritwright::desktop
