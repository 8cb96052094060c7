#pragma once
#include <QSizeF>
#include <QStringList>
#include <QWidget>
#include <optional>
#include <vector>

#include "gritwright/report/quantity_text.hpp"
#include "models/root_plan_desk.hpp"
#include "picture_table.hpp"

namespace gritwright::desktop {

/// A worked plan to scale, from the side and from above: pot wall, layers, soil line, block before and after, cuts hatched, untouched
/// core, shoulder, and what was left untouched the time before. The tree can be dragged, or moved with the arrow keys; Page Up and Page
/// Down raise and sink it. The ring at the old front turns it, the ring on the trunk tips it; Shift with the arrow keys does the same.
/// A plan in stages is shown in the old pot, where nothing moves.
class RootPlanView : public QWidget {
  Q_OBJECT
 public:
  explicit RootPlanView(RootPlanDesk& desk, QWidget* parent = nullptr);

  void set_units(UnitSystem units);
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] PictureTable table() const;
  [[nodiscard]] PictureTable data() const;
  /// Names that would cover the pictures and so stand beside or below them, after the letters that stand there instead; empty where the pictures have room for them.
  [[nodiscard]] QStringList key() const;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  /// One of the two pictures on the widget: where its origin lies.
  struct Place {
    QPointF origin;
    double pixels_per_cm;
  };
  struct NamedCut {
    QString name;
    ViewPoint at;
  };
  /// The upper left corners of its entries, and what it takes of the widget's width or height.
  struct Key {
    QStringList names;
    std::vector<QPointF> places;
    QSizeF taken;
  };
  enum class Hold { from_above, from_side, turn, tip };
  struct Drag {
    Hold hold;
    QPointF start;
    Place place;
    Pose pose;
  };

  void refresh();
  [[nodiscard]] std::optional<std::pair<Place, Place>> places() const;
  /// With so much room left free at the right and below.
  [[nodiscard]] std::optional<std::pair<Place, Place>> places_beside(const QSizeF& taken) const;
  [[nodiscard]] std::vector<NamedCut> named_cuts(const RootView& view) const;
  [[nodiscard]] QStringList all_names() const;
  [[nodiscard]] Key laid_key() const;
  void paint_key(QPainter& painter, const Key& key) const;
  void paint_letter(QPainter& painter, const QString& letter, const QRectF& place) const;
  /// What a view takes on the widget, pot and root mass.
  [[nodiscard]] QRectF drawn(const RootView& view, const Place& place) const;
  /// Where the name of a cut stands beside what is drawn, on the side of the cut.
  [[nodiscard]] QRectF beside_drawn(const NamedCut& cut, const QRectF& drawn, const Place& place) const;
  [[nodiscard]] bool names_have_room(const Place& side, const Place& top) const;
  /// What the names of cuts take left and right of what is drawn.
  [[nodiscard]] std::pair<double, double> room_for_names(const RootView& view) const;
  [[nodiscard]] Key letters() const;
  void paint_view(QPainter& painter, const RootView& view, const Place& place, bool from_above, const std::vector<QRectF>& handles, const Key& key,
                  std::vector<QRectF>& names) const;
  /// Where it is wanted, or a little above or below where another of the `names` stands there; its letter if there is a key.
  void paint_name(QPainter& painter, const QString& name, const QRectF& wanted, const Key& key, std::vector<QRectF>& names) const;
  void paint_legend(QPainter& painter) const;
  [[nodiscard]] double legend_height() const;
  /// The pose with the trunk base where the plan drawn has it, so that a move starts there.
  [[nodiscard]] std::optional<Pose> pose_now() const;
  void move(const Pose& from, Length right, Length back, Length up);
  /// As the plan asks for it, with nothing but the angles changed.
  void turn_to(double degrees);
  void tip_to(double degrees, double toward_degrees);
  /// Where the rings are that turn and tip the tree.
  [[nodiscard]] QPointF turn_ring(const Place& place) const;
  [[nodiscard]] QPointF tip_ring(const Place& place) const;
  /// Where the rings stand and what joins them to the trunk base: no name may hide there.
  [[nodiscard]] std::vector<QRectF> handle_places(const Place& side, const Place& top) const;
  void paint_rings(QPainter& painter, const Place& side, const Place& top, const Key& key, std::vector<QRectF>& names) const;

  RootPlanDesk& desk_;
  UnitSystem units_ = UnitSystem::metric;
  std::optional<Drag> drag_;
};

/// A cut, limit or rung in the reader's words.
[[nodiscard]] QString direction_text(Direction direction);
[[nodiscard]] QString old_face_text(Face face);
[[nodiscard]] QString rung_words(Rung rung);

}  // namespace gritwright::desktop
