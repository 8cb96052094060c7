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
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] PictureTable table() const;
  [[nodiscard]] PictureTable data() const;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void paint_front(QPainter& painter, QPointF floor, double pixels_per_cm) const;
  void paint_above(QPainter& painter, QPointF middle, double pixels_per_cm) const;

  std::optional<PotSection> section_;
  std::vector<PotRing> rings_;
  std::vector<Section> sections_;  ///< of the rings
  UnitSystem units_ = UnitSystem::metric;
};

}  // namespace gritwright::desktop
