#include "root_plan_view.hpp"

#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <span>
#include <vector>

#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

namespace {

constexpr double plan_gap = 10;
constexpr double key_step_cm = 0.5;
constexpr double key_turn_deg = 5;
constexpr double key_tip_deg = 2;
constexpr double ring_px = 6;
constexpr double reach_of_ring_px = 13;
constexpr double trunk_drawn_cm = 4;
constexpr double front_drawn_cm = 6;
constexpr double radians_of_degree = std::numbers::pi / 180;

struct PlanInk {
  QString name;
  QPen pen;
  QBrush brush;
};

/// Pattern or line first, colour second: each can be told apart in grey.
struct PlanInks {
  PlanInk removed, kept, untouched, left_before, layers, shoulder, soil, wall;
};

PlanInks plan_inks(const QPalette& palette) {
  const ThemeColours& theme = current_colours();
  const QColor text = palette.color(QPalette::Text);
  QColor kept = theme.curves[4].colour;
  kept.setAlpha(70);
  return {{RootPlanView::tr("taken off"), QPen(text, 1.2, Qt::DashLine), QBrush(theme.fault, Qt::BDiagPattern)},
          {RootPlanView::tr("kept root mass"), QPen(text, 1.6), QBrush(kept)},
          {RootPlanView::tr("untouched"), QPen(Qt::NoPen), QBrush(theme.curves[4].colour, Qt::Dense5Pattern)},
          {RootPlanView::tr("untouched last time"), QPen(text, 1, Qt::DotLine), QBrush(text, Qt::HorPattern)},
          {RootPlanView::tr("bottom layer, dressing"), QPen(theme.muted, 1), QBrush(theme.muted, Qt::Dense6Pattern)},
          {RootPlanView::tr("shoulder"), QPen(theme.muted, 1), QBrush(theme.curves[2].colour, Qt::CrossPattern)},
          {RootPlanView::tr("soil surface"), QPen(text, 1.4, Qt::DotLine), QBrush(Qt::NoBrush)},
          {RootPlanView::tr("pot"), QPen(text, 2.6), QBrush(Qt::NoBrush)}};
}

/// What is in the picture: a thing that is not there needs no explaining.
std::vector<const PlanInk*> legend_looks(const PlanInks& all, const RootViews& views) {
  std::vector<const PlanInk*> looks{&all.removed, &all.kept};
  if (!views.side.untouched.empty()) looks.push_back(&all.untouched);
  if (!views.side.left_before.empty()) looks.push_back(&all.left_before);
  if (!views.side.layers.empty()) looks.push_back(&all.layers);
  if (!views.side.shoulder.empty()) looks.push_back(&all.shoulder);
  if (!views.side.soil.empty()) looks.push_back(&all.soil);
  return looks;
}

/// Upper left corners of the legend's entries, line after line.
std::vector<QPointF> legend_places(const QFontMetrics& metrics, double width, std::span<const PlanInk* const> looks) {
  const double line = metrics.height();
  std::vector<QPointF> places;
  double x = plan_gap;
  double y = plan_gap;
  for (const PlanInk* look : looks) {
    const double taken = 2 * line + 3 * plan_gap + metrics.horizontalAdvance(look->name);
    if (x > plan_gap && x + taken > width) {
      x = plan_gap;
      y += line + 4;
    }
    places.emplace_back(x, y);
    x += taken;
  }
  return places;
}

QString trunk_name() { return RootPlanView::tr("trunk"); }
QString front_name() { return RootPlanView::tr("old front"); }

/// Letters, for the steps of a plan have numbers.
QString letter_of(qsizetype at) { return QString(QChar(static_cast<char16_t>(u'a' + at))); }

QString plan_cm_text(Length length, UnitSystem units) { return to_local(depth_text(Depth(length), units)); }

}  // namespace

QString direction_text(Direction direction) {
  switch (direction) {
    case Direction::right: return RootPlanView::tr("right");
    case Direction::left: return RootPlanView::tr("left");
    case Direction::back: return RootPlanView::tr("back");
    case Direction::front: return RootPlanView::tr("front");
    case Direction::up: return RootPlanView::tr("up");
    case Direction::down: return RootPlanView::tr("down");
  }
  return {};
}

QString old_face_text(Face face) {
  switch (face) {
    case Face::right: return RootPlanView::tr("old right");
    case Face::left: return RootPlanView::tr("old left");
    case Face::back: return RootPlanView::tr("old back");
    case Face::front: return RootPlanView::tr("old front");
    case Face::top: return RootPlanView::tr("old top");
    case Face::bottom: return RootPlanView::tr("old bottom");
  }
  return {};
}

QString rung_words(Rung rung) {
  switch (rung) {
    case Rung::shifted: return RootPlanView::tr("move the tree");
    case Rung::turned: return RootPlanView::tr("turn it");
    case Rung::cut: return RootPlanView::tr("cut");
    case Rung::corners: return RootPlanView::tr("round off corners");
    case Rung::tipped_less: return RootPlanView::tr("tip it less");
    case Rung::sunk: return RootPlanView::tr("sink it");
    case Rung::raised: return RootPlanView::tr("raise it to the soil");
    case Rung::shoulder: return RootPlanView::tr("build a shoulder");
    case Rung::other_pot: return RootPlanView::tr("take another pot");
    case Rung::staging: return RootPlanView::tr("in stages");
  }
  return {};
}

RootPlanView::RootPlanView(RootPlanDesk& desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  setObjectName(QStringLiteral("root_plan_view"));
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("The plan from the side and from above; arrow keys move the tree, Page Up and Page Down raise and sink it, Shift with left and right turns it, Shift with up and down tips it"));
  connect(&desk_, &RootPlanDesk::answered, this, &RootPlanView::refresh);
  connect(&desk_, &RootPlanDesk::changed, this, &RootPlanView::refresh);
  refresh();
}

QSize RootPlanView::minimumSizeHint() const { return {300, 14 * fontMetrics().height()}; }

void RootPlanView::set_units(UnitSystem units) {
  units_ = units;
  refresh();
}

void RootPlanView::refresh() {
  const WorkedPlan* worked = desk_.worked();
  if (worked == nullptr) {
    const RootPlanOutcome* outcome = desk_.outcome();
    setAccessibleDescription(outcome != nullptr && !outcome->problems.empty() ? sentence_text(outcome->problems.front(), units_) : desk_.wanted_first());
  } else if (!worked->fits) {
    setAccessibleDescription(tr("Plan %1 goes in stages: %2 comes off now and the tree goes back into its old pot, as drawn here.")
                                 .arg(to_qt(worked->name), to_local(percent_text(worked->removed_share))));
  } else {
    setAccessibleDescription(tr("Plan %1: %2 is taken off, %3 stays untouched, the trunk base stands %4 over the floor and the soil line lies at %5.")
                                 .arg(to_qt(worked->name), to_local(percent_text(worked->removed_share)), to_local(percent_text(worked->untouched_share)),
                                      to_local(depth_text(worked->trunk_base, units_)), to_local(depth_text(worked->soil_line, units_))));
  }
  setToolTip(worked != nullptr && worked->fits ? tr("Drag the tree in either picture, or use the arrow keys, Page Up and Page Down; the ring at the old front turns it, the ring on the trunk tips it, as do the arrow keys with Shift")
                                               : QString());
  update();
}

PictureTable RootPlanView::table() const {
  PictureTable table{{tr("what"), tr("where"), tr("how much")}, {}};
  const WorkedPlan* worked = desk_.worked();
  if (worked == nullptr) return table;
  for (const PlannedCut& cut : worked->cuts) table.rows.push_back({tr("cut"), tr("%1 (%2)").arg(old_face_text(cut.face), direction_text(cut.direction)), plan_cm_text(cut.depth, units_)});
  for (const ShavedCorners& corners : worked->shaved)
    table.rows.push_back({tr("rounded off"), tr("%1 (%2)").arg(old_face_text(corners.face), direction_text(corners.direction)), plan_cm_text(corners.depth, units_)});
  for (const CombedFace& combed : worked->combed) table.rows.push_back({tr("combed"), old_face_text(combed.face), plan_cm_text(combed.depth, units_)});
  table.rows.push_back({tr("taken off"), tr("of the root mass"), to_local(percent_text(worked->removed_share))});
  table.rows.push_back({tr("untouched"), tr("of the root mass"), to_local(percent_text(worked->untouched_share))});
  if (!worked->fits) return table;
  table.rows.push_back({tr("trunk base"), tr("right of the middle"), plan_cm_text(worked->right, units_)});
  table.rows.push_back({tr("trunk base"), tr("behind the middle"), plan_cm_text(worked->back, units_)});
  table.rows.push_back({tr("trunk base"), tr("over the floor"), to_local(depth_text(worked->trunk_base, units_))});
  table.rows.push_back({tr("soil surface"), tr("at the trunk, over the floor"), to_local(depth_text(worked->soil_line, units_))});
  table.rows.push_back({tr("shoulder"), tr("over the soil"), to_local(depth_text(worked->shoulder, units_))});
  return table;
}

PictureTable RootPlanView::data() const {
  PictureTable table{{QStringLiteral("view"), QStringLiteral("outline"), QStringLiteral("across_cm"), QStringLiteral("along_cm")}, {}};
  const RootPlanOutcome* outcome = desk_.outcome();
  if (outcome == nullptr || !outcome->views) return table;
  const QLocale plain = QLocale::c();
  const auto add = [&](const char* view, const char* name, const ViewOutline& outline) {
    for (const ViewPoint& point : outline)
      table.rows.push_back({QString::fromLatin1(view), QString::fromLatin1(name), plain.toString(in_cm(point.across), 'f', 3), plain.toString(in_cm(point.along), 'f', 3)});
  };
  for (const auto& [name, view] : {std::pair{"side", &outcome->views->side}, std::pair{"top", &outcome->views->top}}) {
    for (const ViewOutline& wall : view->pot) add(name, "pot", wall);
    add(name, "before", view->before);
    add(name, "kept", view->kept);
  }
  return table;
}

double RootPlanView::legend_height() const {
  const PlanInks all = plan_inks(palette());
  return legend_places(fontMetrics(), width(), legend_looks(all, *desk_.outcome()->views)).back().y() + fontMetrics().height() + plan_gap;
}

void RootPlanView::paint_legend(QPainter& painter) const {
  const PlanInks all = plan_inks(palette());
  const double line = fontMetrics().height();
  const auto looks = legend_looks(all, *desk_.outcome()->views);
  const std::vector<QPointF> places = legend_places(fontMetrics(), width(), looks);
  for (std::size_t i = 0; i < looks.size(); ++i) {
    const PlanInk* look = looks[i];
    const double y = places[i].y();
    const QRectF swatch(places[i].x(), y, 1.6 * line, line);
    painter.setPen(look->pen.style() == Qt::NoPen ? QPen(current_colours().field_edge, 1) : look->pen);
    painter.setBrush(look->brush);
    if (look == &all.soil) painter.drawLine(QPointF(swatch.left(), swatch.center().y()), QPointF(swatch.right(), swatch.center().y()));
    else painter.drawRect(swatch);
    painter.setPen(palette().color(QPalette::Text));
    painter.drawText(QPointF(swatch.right() + plan_gap, y + fontMetrics().ascent()), look->name);
  }
}

std::vector<RootPlanView::NamedCut> RootPlanView::named_cuts(const RootView& view) const {
  std::vector<NamedCut> cuts;
  for (const ViewCut& cut : view.cuts) cuts.push_back({QStringLiteral("%1 %2").arg(old_face_text(cut.cut.face), plan_cm_text(cut.cut.depth, units_)), cut.at});
  return cuts;
}

QStringList RootPlanView::all_names() const {
  QStringList names;
  const RootViews& views = *desk_.outcome()->views;
  for (const RootView* view : {&views.side, &views.top})
    for (const NamedCut& cut : named_cuts(*view))
      if (!names.contains(cut.name)) names << cut.name;
  if (desk_.worked() != nullptr && desk_.worked()->fits) names << trunk_name() << front_name();
  return names;
}

QStringList RootPlanView::key() const { return laid_key().names; }

QRectF RootPlanView::drawn(const RootView& view, const Place& place) const {
  QPolygonF points;
  const auto add = [&](const ViewOutline& outline) {
    for (const ViewPoint& point : outline) points << QPointF(place.origin.x() + in_cm(point.across) * place.pixels_per_cm, place.origin.y() - in_cm(point.along) * place.pixels_per_cm);
  };
  for (const ViewOutline& wall : view.pot) add(wall);
  add(view.before);
  return points.boundingRect();
}

QRectF RootPlanView::beside_drawn(const NamedCut& cut, const QRectF& drawn, const Place& place) const {
  constexpr double off = 4;
  const QPointF middle(place.origin.x() + in_cm(cut.at.across) * place.pixels_per_cm, place.origin.y() - in_cm(cut.at.along) * place.pixels_per_cm);
  const double wide = fontMetrics().horizontalAdvance(cut.name) + 4;
  const double high = fontMetrics().height();
  QRectF words(middle.x() - wide / 2, middle.y() - high / 2, wide, high);
  const QPointF away = middle - drawn.center();
  if (std::abs(away.x()) * drawn.height() > std::abs(away.y()) * drawn.width()) {
    if (away.x() > 0) words.moveLeft(drawn.right() + off);
    else words.moveRight(drawn.left() - off);
  } else if (away.y() > 0) {
    words.moveTop(drawn.bottom() + off);
  } else {
    words.moveBottom(drawn.top() - off);
  }
  return words;
}

// Beside both drawings, on neither and none on another.
bool RootPlanView::names_have_room(const Place& side, const Place& top) const {
  const RootViews& views = *desk_.outcome()->views;
  std::vector<QRectF> taken{drawn(views.side, side), drawn(views.top, top)};
  const QRectF room = QRectF(rect()).adjusted(0, legend_height(), 0, 0);
  const auto take = [&](const RootView& view, const QRectF& of, const Place& place) {
    return std::ranges::all_of(named_cuts(view), [&](const NamedCut& cut) {
      const QRectF words = beside_drawn(cut, of, place);
      const bool free = room.contains(words) && std::ranges::none_of(taken, [&](const QRectF& other) { return other.intersects(words); });
      taken.push_back(words);
      return free;
    });
  };
  const QRectF of_side = taken[0];
  const QRectF of_top = taken[1];
  return take(views.side, of_side, side) && take(views.top, of_top, top);
}

std::pair<double, double> RootPlanView::room_for_names(const RootView& view) const {
  const Place any{{0, 0}, 1};
  const QRectF box = drawn(view, any);
  std::pair<double, double> room{0, 0};
  for (const NamedCut& cut : named_cuts(view)) {
    const QRectF words = beside_drawn(cut, box, any);
    if (words.right() <= box.left()) room.first = std::max(room.first, box.left() - words.left() + 1);
    if (words.left() >= box.right()) room.second = std::max(room.second, words.right() - box.right() + 1);
  }
  return room;
}

RootPlanView::Key RootPlanView::laid_key() const {
  const auto named = places_beside({0, 0});
  if (!named) return {};
  Key lettered = letters();
  // Names are read at once, letters leave room for larger pictures.
  constexpr double least_of_lettered = 0.75;
  const bool large = named->first.pixels_per_cm >= least_of_lettered * places_beside(lettered.taken)->first.pixels_per_cm;
  return large && names_have_room(named->first, named->second) ? Key{} : lettered;
}

RootPlanView::Key RootPlanView::letters() const {
  Key below{all_names(), {}, {0, 0}};
  if (below.names.isEmpty()) return below;
  Key beside = below;
  const double line = fontMetrics().height();
  double widest = 0;
  QPointF next(plan_gap, plan_gap);
  for (const QString& name : below.names) {
    const double taken = 1.5 * line + fontMetrics().horizontalAdvance(name) + plan_gap;
    if (next.x() > plan_gap && next.x() + taken > width()) next = {plan_gap, next.y() + line + 4};
    below.places.push_back(next);
    next.rx() += taken;
    widest = std::max(widest, taken);
    beside.places.emplace_back(0.0, legend_height() + plan_gap + static_cast<double>(beside.places.size()) * (line + 4));
  }
  below.taken = {0, next.y() + line + 4};
  for (QPointF& place : below.places) place.ry() += height() - below.taken.height();
  for (QPointF& place : beside.places) place.setX(width() - widest);
  beside.taken = {widest, 0};
  // Where the pictures are the larger.
  const bool has_room = beside.places.back().y() + line <= height();
  return has_room && places_beside(beside.taken)->first.pixels_per_cm > places_beside(below.taken)->first.pixels_per_cm ? beside : below;
}

void RootPlanView::paint_key(QPainter& painter, const Key& key) const {
  const double line = fontMetrics().height();
  for (qsizetype at = 0; at < key.names.size(); ++at) {
    const QPointF& corner = key.places[static_cast<std::size_t>(at)];
    paint_letter(painter, letter_of(at), QRectF(corner, QSizeF(line, line)));
    painter.drawText(corner + QPointF(1.5 * line, fontMetrics().ascent()), key.names[at]);
  }
}

std::optional<std::pair<RootPlanView::Place, RootPlanView::Place>> RootPlanView::places() const { return places_beside(laid_key().taken); }

std::optional<std::pair<RootPlanView::Place, RootPlanView::Place>> RootPlanView::places_beside(const QSizeF& taken) const {
  const RootPlanOutcome* outcome = desk_.outcome();
  if (outcome == nullptr || !outcome->views) return std::nullopt;
  const auto bounds = [](const RootView& view) {
    QRectF box;
    const auto add = [&](const ViewOutline& outline) {
      QPolygonF polygon;
      for (const ViewPoint& point : outline) polygon << QPointF(in_cm(point.across), in_cm(point.along));
      box = box.united(polygon.boundingRect());
    };
    for (const ViewOutline& wall : view.pot) add(wall);
    add(view.before);
    return box;
  };
  QRectF side = bounds(outcome->views->side);
  QRectF top = bounds(outcome->views->top);
  if (const WorkedPlan* worked = desk_.worked(); worked != nullptr && worked->fits) {
    // Room for the rings, wherever the tree is turned and tipped to.
    const auto around = [](const ViewPoint& middle, double reach_cm) { return QRectF(in_cm(middle.across) - reach_cm, in_cm(middle.along) - reach_cm, 2 * reach_cm, 2 * reach_cm); };
    QRectF trunk = around(outcome->views->side.trunk_base, trunk_drawn_cm);
    trunk.setTop(in_cm(outcome->views->side.trunk_base.along));
    side = side.united(trunk);
    top = top.united(around(outcome->views->top.trunk_base, front_drawn_cm));
  }
  const double line = fontMetrics().height();
  const bool has_key = taken.width() > 0 || taken.height() > 0;
  // The names of cuts stand out on all sides; two of them must not meet. Letters need less.
  const double around = has_key ? line / 2 : line + 4;
  double between = line + plan_gap;
  std::pair<double, double> of_side{0, 0};
  std::pair<double, double> of_top{0, 0};
  if (!has_key) {
    of_side = room_for_names(outcome->views->side);
    of_top = room_for_names(outcome->views->top);
    between = std::max({between, of_side.second + of_top.first + plan_gap, fontMetrics().horizontalAdvance(trunk_name()) + plan_gap});
  }
  const double wide = width() - taken.width();
  const double head = legend_height() + around;
  const double room_x = wide - 3 * plan_gap;
  const double room_y = height() - taken.height() - head - 2 * plan_gap - around;
  const double beside = std::min((room_x - between - of_side.first - of_top.second) / (side.width() + top.width()), room_y / std::max(side.height(), top.height()));
  const double stacked = std::min((room_x + plan_gap - 2 * std::max({of_side.first, of_side.second, of_top.first, of_top.second})) / std::max(side.width(), top.width()), (room_y - line - plan_gap) / (side.height() + top.height()));
  const double scale = std::max(0.5, std::max(beside, stacked));
  // The origin is the middle of the floor; up on the widget is up or back in the pot.
  if (beside >= stacked) {
    const double y = head + room_y / 2;
    const double left = of_side.first + (wide - (side.width() + top.width()) * scale - between - of_side.first - of_top.second) / 2;
    return std::pair{Place{{left - side.left() * scale, y + (side.top() + side.height() / 2) * scale}, scale},
                     Place{{left + side.width() * scale + between - top.left() * scale, y + (top.top() + top.height() / 2) * scale}, scale}};
  }
  const double first = head;
  return std::pair{Place{{wide / 2, first + (side.top() + side.height()) * scale}, scale},
                   Place{{wide / 2, first + side.height() * scale + plan_gap + line + (top.top() + top.height()) * scale}, scale}};
}

void RootPlanView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), palette().color(QPalette::Base));
  painter.setPen(palette().color(QPalette::Text));
  const auto both = places();
  if (!both) {
    painter.drawText(rect().adjusted(12, 12, -12, -12), Qt::AlignCenter | Qt::TextWordWrap, accessibleDescription());
    return;
  }
  const std::vector<QRectF> handles = handle_places(both->first, both->second);
  const Key listed = laid_key();
  std::vector<QRectF> names = handles;
  paint_view(painter, desk_.outcome()->views->side, both->first, false, handles, listed, names);
  paint_view(painter, desk_.outcome()->views->top, both->second, true, handles, listed, names);
  paint_rings(painter, both->first, both->second, listed, names);
  paint_key(painter, listed);
  paint_legend(painter);
  if (hasFocus()) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
    painter.drawRect(rect().adjusted(1, 1, -2, -2));
  }
}

void RootPlanView::paint_view(QPainter& painter, const RootView& view, const Place& place, bool from_above, const std::vector<QRectF>& handles, const Key& key, std::vector<QRectF>& names) const {
  const PlanInks all = plan_inks(palette());
  const auto at = [&](Length across, Length along) { return QPointF(place.origin.x() + in_cm(across) * place.pixels_per_cm, place.origin.y() - in_cm(along) * place.pixels_per_cm); };
  const auto polygon = [&](const ViewOutline& outline) {
    QPolygonF points;
    for (const ViewPoint& point : outline) points << at(point.across, point.along);
    return points;
  };
  const auto use = [&](const PlanInk& look) {
    painter.setPen(look.pen);
    painter.setBrush(look.brush);
  };
  use(all.layers);
  for (const ViewOutline& layer : view.layers) painter.drawPolygon(polygon(layer));
  use(all.shoulder);
  for (const ViewOutline& shoulder : view.shoulder) painter.drawPolygon(polygon(shoulder));
  use(all.removed);
  painter.drawPolygon(polygon(view.before));
  // The kept part covers the hatching of what was there before.
  painter.setBrush(palette().color(QPalette::Base));
  painter.drawPolygon(polygon(view.kept));
  use(all.kept);
  painter.drawPolygon(polygon(view.kept));
  // Runs are as high as they are reckoned with; what is kept has a smooth edge.
  painter.save();
  QPainterPath smooth;
  smooth.addPolygon(polygon(view.kept));
  painter.setClipPath(smooth);
  use(all.untouched);
  const Length step = length_mm(5);
  for (const ViewRun& run : view.untouched) painter.drawRect(QRectF(at(run.from, run.low + step), at(run.to, run.low)));
  use(all.left_before);
  painter.setPen(Qt::NoPen);
  for (const ViewRun& run : view.left_before) painter.drawRect(QRectF(at(run.from, run.low + step), at(run.to, run.low)));
  painter.restore();
  painter.setBrush(Qt::NoBrush);
  for (std::size_t i = 0; i < view.pot.size(); ++i) {
    QPen wall = all.wall.pen;
    if (i > 0) wall = QPen(palette().color(QPalette::Text), 1, Qt::DotLine);
    painter.setPen(wall);
    if (from_above) painter.drawPolygon(polygon(view.pot[i]));
    else painter.drawPolyline(polygon(view.pot[i]));
  }
  if (!view.soil.empty()) {
    painter.setPen(all.soil.pen);
    painter.drawPolyline(polygon(view.soil));
  }
  const QPointF trunk = at(view.trunk_base.across, view.trunk_base.along);
  painter.setPen(QPen(palette().color(QPalette::Text), 2));
  painter.drawLine(trunk - QPointF(6, 0), trunk + QPointF(6, 0));
  painter.drawLine(trunk - QPointF(0, 6), trunk + QPointF(0, 6));
  const QRectF box = drawn(view, place);
  for (const NamedCut& cut : named_cuts(view)) {
    if (key.names.isEmpty()) {
      paint_name(painter, cut.name, beside_drawn(cut, box, place), key, names);
      continue;
    }
    const double high = fontMetrics().height();
    const double wide = high;
    const QPointF middle = at(cut.at.across, cut.at.along);
    QRectF words(0, 0, wide, high);
    words.moveLeft(std::clamp(middle.x() - wide / 2, 0.0, std::max(0.0, width() - key.taken.width() - wide)));
    words.moveTop(std::clamp(middle.y() - 3 - fontMetrics().ascent(), legend_height(), std::max(legend_height(), height() - key.taken.height() - high)));
    for (const QRectF& handle : handles)
      if (words.intersects(handle) && handle.left() > words.width() + 2) words.moveRight(handle.left());
    paint_name(painter, cut.name, words, key, names);
  }
}

void RootPlanView::paint_letter(QPainter& painter, const QString& letter, const QRectF& place) const {
  painter.setPen(QPen(palette().color(QPalette::Text), 1));
  painter.setBrush(palette().color(QPalette::Base));
  painter.drawEllipse(place.adjusted(1, 1, -1, -1));
  painter.drawText(place, Qt::AlignCenter, letter);
}

void RootPlanView::paint_name(QPainter& painter, const QString& name, const QRectF& wanted, const Key& key, std::vector<QRectF>& names) const {
  const auto is_free = [&](const QRectF& place) { return std::ranges::none_of(names, [&](const QRectF& other) { return other.intersects(place); }); };
  const double highest = legend_height();
  const double lowest = height() - key.taken.height() - wanted.height();
  QRectF words = wanted;
  for (double away = 0; away < height() && !is_free(words); away += 1) {
    for (const double y : {wanted.top() + away, wanted.top() - away}) {
      QRectF moved = wanted;
      moved.moveTop(y);
      if (y >= highest && y <= lowest && is_free(moved)) words = moved;
    }
  }
  names.push_back(words);
  if (!key.names.isEmpty()) return paint_letter(painter, letter_of(key.names.indexOf(name)), words);
  QColor ground = palette().color(QPalette::Base);
  ground.setAlpha(215);
  painter.fillRect(words, ground);
  painter.setPen(palette().color(QPalette::Text));
  painter.drawText(words, Qt::AlignCenter, name);
}

std::optional<Pose> RootPlanView::pose_now() const {
  const WorkedPlan* worked = desk_.worked();
  if (worked == nullptr || !worked->fits || !desk_.plan()) return std::nullopt;
  Pose pose = desk_.plan()->pose;
  pose.right = worked->right;
  pose.back = worked->back;
  pose.trunk_base = worked->trunk_base;
  return pose;
}

void RootPlanView::move(const Pose& from, Length right, Length back, Length up) {
  Pose pose = from;
  pose.right = *from.right + right;
  pose.back = *from.back + back;
  pose.trunk_base = Depth(std::max(Length{}, from.trunk_base->quantity() + up));
  desk_.drag(pose);
}

void RootPlanView::turn_to(double degrees) {
  Pose pose = desk_.plan()->pose;
  pose.turn = angle_deg(std::remainder(degrees, 360));
  desk_.drag(pose);
}

void RootPlanView::tip_to(double degrees, double toward_degrees) {
  Pose pose = desk_.plan()->pose;
  const double least = desk_.plan()->tip_least ? in_deg(*desk_.plan()->tip_least) : 0;
  pose.tip = angle_deg(std::clamp(degrees, least, 90.0));
  pose.tip_toward = angle_deg(std::remainder(toward_degrees, 360));
  desk_.drag(pose);
}

QPointF RootPlanView::turn_ring(const Place& place) const {
  const ViewPoint& trunk = desk_.outcome()->views->top.trunk_base;
  const double turn = desk_.dragged() ? desk_.dragged()->turn.value() : desk_.worked()->turn.value();
  // The old front looks toward the reader and turns with the tree.
  return {place.origin.x() + (in_cm(trunk.across) + front_drawn_cm * std::sin(turn)) * place.pixels_per_cm,
          place.origin.y() - (in_cm(trunk.along) - front_drawn_cm * std::cos(turn)) * place.pixels_per_cm};
}

QPointF RootPlanView::tip_ring(const Place& place) const {
  const ViewPoint& trunk = desk_.outcome()->views->side.trunk_base;
  const double tip = desk_.dragged() ? desk_.dragged()->tip.value() : desk_.worked()->tip.value();
  const double toward = desk_.dragged() ? desk_.dragged()->tip_toward.value() : desk_.worked()->tip_toward.value();
  return {place.origin.x() + (in_cm(trunk.across) + trunk_drawn_cm * std::sin(tip) * std::cos(toward)) * place.pixels_per_cm,
          place.origin.y() - (in_cm(trunk.along) + trunk_drawn_cm * std::cos(tip)) * place.pixels_per_cm};
}

std::vector<QRectF> RootPlanView::handle_places(const Place& side, const Place& top) const {
  std::vector<QRectF> places;
  if (desk_.worked() == nullptr || !desk_.worked()->fits) return places;
  const auto add = [&](const ViewPoint& trunk, const Place& place, const QPointF& ring) {
    const QPointF base(place.origin.x() + in_cm(trunk.across) * place.pixels_per_cm, place.origin.y() - in_cm(trunk.along) * place.pixels_per_cm);
    const auto around = [&](const QPointF& at, double half) { places.emplace_back(at.x() - half, at.y() - half, 2 * half, 2 * half); };
    around(ring, ring_px + 1);
    constexpr int parts = 8;
    for (int part = 0; part < parts; ++part) around(base + (ring - base) * part / parts, 4);
  };
  const RootViews& views = *desk_.outcome()->views;
  add(views.side.trunk_base, side, tip_ring(side));
  add(views.top.trunk_base, top, turn_ring(top));
  return places;
}

void RootPlanView::paint_rings(QPainter& painter, const Place& side, const Place& top, const Key& key, std::vector<QRectF>& names) const {
  if (desk_.worked() == nullptr || !desk_.worked()->fits) return;
  const RootViews& views = *desk_.outcome()->views;
  const auto ring = [&](const ViewPoint& trunk, const Place& place, const QPointF& at, const QString& name) {
    painter.setPen(QPen(palette().color(QPalette::Text), 1.5));
    painter.drawLine(QPointF(place.origin.x() + in_cm(trunk.across) * place.pixels_per_cm, place.origin.y() - in_cm(trunk.along) * place.pixels_per_cm), at);
    painter.setBrush(palette().color(QPalette::Base));
    painter.drawEllipse(at, ring_px, ring_px);
    const double wide = key.names.isEmpty() ? fontMetrics().horizontalAdvance(name) : fontMetrics().height() - 4;
    const double left = at.x() + ring_px + 4 + wide > width() - key.taken.width() ? at.x() - ring_px - 4 - wide : at.x() + ring_px + 4;
    paint_name(painter, name, QRectF(left - 2, at.y() - fontMetrics().height() / 2.0, wide + 4, fontMetrics().height()), key, names);
  };
  ring(views.side.trunk_base, side, tip_ring(side), trunk_name());
  ring(views.top.trunk_base, top, turn_ring(top), front_name());
}

void RootPlanView::mousePressEvent(QMouseEvent* event) {
  const auto both = places();
  const auto pose = pose_now();
  if (event->button() != Qt::LeftButton || !both || !pose) return;
  const auto away = [&](const QPointF& from) { return std::hypot(event->position().x() - from.x(), event->position().y() - from.y()); };
  if (away(turn_ring(both->second)) <= reach_of_ring_px) {
    drag_ = Drag{Hold::turn, event->position(), both->second, *pose};
  } else if (away(tip_ring(both->first)) <= reach_of_ring_px) {
    drag_ = Drag{Hold::tip, event->position(), both->first, *pose};
  } else {
    const bool from_above = away(both->second.origin) < away(both->first.origin);
    drag_ = Drag{from_above ? Hold::from_above : Hold::from_side, event->position(), both->first, *pose};
  }
}

void RootPlanView::mouseMoveEvent(QMouseEvent* event) {
  if (!drag_) return;
  const RootPlanOutcome* outcome = desk_.outcome();
  if (drag_->hold == Hold::turn || drag_->hold == Hold::tip) {
    if (outcome == nullptr || !outcome->views) return;
    const ViewPoint& trunk = drag_->hold == Hold::turn ? outcome->views->top.trunk_base : outcome->views->side.trunk_base;
    const double across = (event->position().x() - drag_->place.origin.x()) / drag_->place.pixels_per_cm - in_cm(trunk.across);
    const double along = (drag_->place.origin.y() - event->position().y()) / drag_->place.pixels_per_cm - in_cm(trunk.along);
    if (std::hypot(across, along) < 0.2) return;
    if (drag_->hold == Hold::turn) return turn_to(std::round(std::atan2(across, -along) / radians_of_degree));
    // What is seen from the side is the part of the tip toward right or left; a bearing between them is kept.
    const double seen = std::atan2(across, std::max(0.0, along));
    double toward = drag_->pose.tip_toward.value();
    if (std::abs(std::cos(toward)) < 0.2) toward = 0;
    if ((seen < 0) != (std::cos(toward) < 0)) toward += std::numbers::pi;
    const double tip = std::atan2(std::abs(std::sin(seen)), std::abs(std::cos(toward)) * std::cos(seen));
    return tip_to(std::round(tip / radians_of_degree), std::round(toward / radians_of_degree));
  }
  const QPointF moved = (event->position() - drag_->start) / drag_->place.pixels_per_cm;
  const Length across = length_cm(moved.x());
  const Length along = length_cm(-moved.y());
  if (drag_->hold == Hold::from_above) move(drag_->pose, across, along, Length{});
  else move(drag_->pose, across, Length{}, along);
}

void RootPlanView::mouseReleaseEvent(QMouseEvent*) {
  if (!drag_) return;
  drag_.reset();
  desk_.drop();
}

void RootPlanView::keyPressEvent(QKeyEvent* event) {
  const auto pose = pose_now();
  if (pose && event->modifiers() == Qt::ShiftModifier) {
    const double turn = in_deg(desk_.plan()->pose.turn);
    const double tip = in_deg(desk_.plan()->pose.tip);
    const double toward = in_deg(desk_.plan()->pose.tip_toward);
    switch (event->key()) {
      case Qt::Key_Left: turn_to(turn + key_turn_deg); return desk_.drop();
      case Qt::Key_Right: turn_to(turn - key_turn_deg); return desk_.drop();
      case Qt::Key_Up: tip_to(tip + key_tip_deg, toward); return desk_.drop();
      case Qt::Key_Down: tip_to(tip - key_tip_deg, toward); return desk_.drop();
      default: break;
    }
  }
  const Length step = length_cm(key_step_cm);
  const std::array<std::pair<int, std::array<int, 3>>, 6> moves{{{Qt::Key_Right, {1, 0, 0}}, {Qt::Key_Left, {-1, 0, 0}}, {Qt::Key_Up, {0, 1, 0}}, {Qt::Key_Down, {0, -1, 0}}, {Qt::Key_PageUp, {0, 0, 1}}, {Qt::Key_PageDown, {0, 0, -1}}}};
  const auto found = std::ranges::find(moves, event->key(), &std::pair<int, std::array<int, 3>>::first);
  if (!pose || found == moves.end()) return QWidget::keyPressEvent(event);
  const auto& [right, back, up] = found->second;
  move(*pose, static_cast<double>(right) * step, static_cast<double>(back) * step, static_cast<double>(up) * step);
  desk_.drop();
}

}  // namespace gritwright::desktop
