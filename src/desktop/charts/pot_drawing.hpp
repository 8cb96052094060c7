#pragma once
#include <QWidget>
#include <optional>
#include <vector>

#include "gritwright/report/pot_section.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "picture_table.hpp"

namespace gritwright::desktop {

/// A container to scale: its inside from the front and from above, with its lengths.
class PotDrawing : public QWidget {
  Q_OBJECT
 public:
  explicit PotDrawing(QWidget* parent = nullptr);

  /// Null: there is no pot to draw.
  void show_pot(const Container* pot, UnitSystem units);
  /// The pot that is drawn; empty where none is.
  [[nodiscard]] const std::optional<PotGeometry>& pot() const { return geometry_; }
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] PictureTable table() const;
  [[nodiscard]] PictureTable data() const;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  /// Heights of the words, with the gap to what they are about.
  struct Words {
    double rim;
    double floor;
    double above;
    [[nodiscard]] double sum() const { return rim + floor + above; }
  };

  [[nodiscard]] QString rim_words() const;
  [[nodiscard]] QString floor_words() const;
  [[nodiscard]] QString above_words() const;
  [[nodiscard]] double height_of(const QString& words, double room) const;
  void paint_front(QPainter& painter, const QRectF& room, const Words& words, double pixels_per_cm) const;
  void paint_above(QPainter& painter, const QRectF& room, double pixels_per_cm) const;

  std::optional<PotGeometry> geometry_;
  std::optional<PotSection> section_;
  std::vector<PotRing> rings_;
  std::vector<Section> sections_;  ///< of the rings
  UnitSystem units_ = UnitSystem::metric;
};

}  // namespace gritwright::desktop
