#include "protocol_drawing.hpp"

#include <QPainter>
#include <QPainterPath>
#include <cmath>

#include "theme.hpp"

namespace gritwright::desktop {

namespace {

constexpr double canvas_width = 300;
constexpr double canvas_height = 120;

/// Draws on a canvas of 300 x 120: vessels by their outline, grain as dots, water as a tint with a line on top.
class Sketch {
 public:
  explicit Sketch(QPainter& painter) : painter_(painter), ink_(current_colours().palette.color(QPalette::WindowText)), tint_(current_colours().curves[0].colour) {}

  void vessel(const QRectF& at, double splay = 0) {
    line(2);
    painter_.drawPolyline(QPolygonF{at.topLeft(), QPointF(at.left() + splay, at.bottom()), QPointF(at.right() - splay, at.bottom()), at.topRight()});
  }

  void water(const QRectF& at) {
    QColor fill = tint_;
    fill.setAlphaF(0.3F);
    painter_.fillRect(at, fill);
    painter_.setPen(QPen(tint_, 2));
    painter_.drawLine(at.topLeft(), at.topRight());
  }

  /// Close rows, every second one shifted; `heap` rises over the middle.
  void grain(const QRectF& at, double size, double heap = 0) {
    painter_.setPen(QPen(ink_, 1));
    painter_.setBrush(current_colours().palette.color(QPalette::Base));
    const double apart = size * 0.9;
    const int rows = static_cast<int>(std::ceil((at.height() + heap - size / 2) / apart));
    for (int row = 0; row < rows; ++row) {
      const double y = at.bottom() - size / 2 - row * apart;
      const double above = std::max(0.0, at.top() - y + size / 2);
      const double inset = heap > 0 ? above / heap * at.width() / 2 : 0;
      const double left = at.left() + size / 2 + inset + (row % 2 == 1 ? size / 2 : 0);
      const int in_row = static_cast<int>(std::ceil((at.right() - size / 2 - inset + 0.1 - left) / size));
      for (int one = 0; one < in_row; ++one) painter_.drawEllipse(QPointF(left + one * size, y), size / 2.3, size / 2.3);
    }
    painter_.setBrush(Qt::NoBrush);
  }

  void mark(double left, double right, double y) {
    painter_.setPen(QPen(ink_, 1, Qt::DashLine));
    painter_.drawLine(QPointF(left, y), QPointF(right, y));
  }

  void stroke(const QPointF& from, const QPointF& to, double width = 3) {
    line(width);
    painter_.drawLine(from, to);
  }

  void arrow(const QPointF& from, const QPointF& to) {
    stroke(from, to, 2);
    const QLineF back(to, from);
    for (const double turn : {-28.0, 28.0}) {
      QLineF barb = back;
      barb.setLength(9);
      barb.setAngle(back.angle() + turn);
      painter_.drawLine(barb);
    }
  }

  void balance(double left, double right, double y) {
    stroke({left, y}, {right, y}, 3);
    line(2);
    painter_.drawRect(QRectF(left + (right - left) / 4, y + 3, (right - left) / 2, 10));
  }

  void sieve(const QRectF& at) {
    stroke(at.topLeft(), at.bottomLeft(), 2);
    stroke(at.topRight(), at.bottomRight(), 2);
    mark(at.left(), at.right(), at.bottom());
  }

 private:
  void line(double width) { painter_.setPen(QPen(ink_, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin)); }

  QPainter& painter_;
  QColor ink_;
  QColor tint_;
};

void draw_jug(Sketch& sketch) {
  sketch.grain({42, 42, 76, 66}, 11, 12);
  sketch.vessel({40, 40, 80, 70});
  sketch.stroke({28, 37}, {140, 37}, 4);
  sketch.arrow({134, 75}, {166, 75});
  sketch.grain({182, 54, 76, 54}, 11);
  sketch.vessel({180, 40, 80, 70});
  sketch.mark(174, 266, 52);
  sketch.stroke({240, 6}, {222, 92}, 5);
}

void draw_displacement(Sketch& sketch) {
  for (const double left : {40.0, 180.0}) {
    sketch.water({left + 2, 36, 76, 72});
    if (left > 100) sketch.grain({left + 4, 72, 72, 36}, 12);
    sketch.vessel({left, 16, 80, 94});
    sketch.mark(left - 8, left + 88, 36);
  }
  sketch.arrow({134, 70}, {166, 70});
}

void draw_absorption(Sketch& sketch) {
  sketch.water({32, 46, 96, 56});
  sketch.grain({36, 72, 88, 30}, 12);
  sketch.vessel({30, 30, 100, 74}, 2);
  sketch.arrow({142, 70}, {172, 70});
  sketch.grain({184, 80, 92, 22}, 12);
  sketch.stroke({178, 104}, {282, 104});
  for (const double x : {205.0, 230.0, 255.0}) sketch.arrow({x, 70}, {x, 44});
}

void draw_crumble(Sketch& sketch) {
  sketch.grain({42, 64, 66, 40}, 11);
  sketch.vessel({40, 30, 70, 76});
  sketch.stroke({36, 28}, {114, 28}, 5);
  sketch.arrow({24, 82}, {24, 40});
  sketch.arrow({126, 40}, {126, 82});
  sketch.arrow({146, 66}, {176, 66});
  for (const double y : {18.0, 46.0, 74.0}) sketch.sieve({190, y, 84, 22});
  sketch.grain({196, 28, 72, 11}, 10);
  sketch.grain({196, 58, 72, 9}, 7);
  sketch.grain({196, 88, 72, 7}, 4);
  sketch.vessel({190, 100, 84, 12});
}

void draw_thoroughness(Sketch& sketch) {
  sketch.grain({94, 36, 112, 22}, 12);
  sketch.sieve({90, 24, 120, 36});
  sketch.arrow({72, 42}, {34, 42});
  sketch.arrow({228, 42}, {266, 42});
  for (const double x : {120.0, 150.0, 178.0}) sketch.grain({x, 74, 6, 5}, 5);
  sketch.grain({128, 98, 44, 6}, 5);
  sketch.stroke({70, 106}, {230, 106}, 2);
}

void draw_pot_by_balance(Sketch& sketch) {
  constexpr double levels[] = {22, 66, 200};  // of the water: flooded, drained, none
  for (int i = 0; i < 3; ++i) {
    const double left = 14 + 96 * i;
    if (levels[i] < 92) sketch.water({left + 4, levels[i], 72, 86 - levels[i]});
    sketch.grain({left + 6, 26, 68, 60}, 12);
    sketch.vessel({left, 18, 80, 70}, 4);
    sketch.balance(left, left + 80, 94);
  }
}

void draw_pot_by_volumes(Sketch& sketch) {
  sketch.water({34, 26, 46, 34});
  sketch.vessel({32, 8, 50, 54});
  sketch.arrow({92, 24}, {128, 32});
  sketch.water({136, 36, 110, 44});
  sketch.grain({138, 38, 106, 42}, 12);
  sketch.vessel({132, 28, 118, 54}, 4);
  sketch.arrow({192, 86}, {192, 98});
  sketch.water({152, 104, 80, 8});
  sketch.vessel({146, 94, 92, 20}, 4);
}

}  // namespace

ProtocolDrawing::ProtocolDrawing(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("protocol_drawing"));
  show_protocol(Protocol::jug);
}

void ProtocolDrawing::show_protocol(Protocol protocol) {
  protocol_ = protocol;
  const ProtocolWords words = words_of(protocol);
  setAccessibleName(tr("How it is done: %1").arg(words.name));
  setAccessibleDescription(words.picture);
  setToolTip(words.picture);
  update();
}

QSize ProtocolDrawing::sizeHint() const { return {static_cast<int>(canvas_width), static_cast<int>(canvas_height)}; }

void ProtocolDrawing::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const double scale = std::min(width() / canvas_width, height() / canvas_height);
  painter.translate((width() - scale * canvas_width) / 2, (height() - scale * canvas_height) / 2);
  painter.scale(scale, scale);
  Sketch sketch(painter);
  switch (protocol_) {
    case Protocol::jug: return draw_jug(sketch);
    case Protocol::displacement: return draw_displacement(sketch);
    case Protocol::absorption: return draw_absorption(sketch);
    case Protocol::crumble: return draw_crumble(sketch);
    case Protocol::thoroughness: return draw_thoroughness(sketch);
    case Protocol::pot_by_balance: return draw_pot_by_balance(sketch);
    case Protocol::pot_by_volumes: return draw_pot_by_volumes(sketch);
  }
}

}  // namespace gritwright::desktop
