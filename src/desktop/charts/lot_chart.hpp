#pragma once
#include <QWidget>
#include <optional>
#include <vector>

#include "models/bench.hpp"
#include "picture_table.hpp"

namespace gritwright::desktop {

/// What one lot of a material gave in the wanted band, as shares 0..1; empty where its sieves do not reach the band.
struct LotPoint {
  QString bag;
  QString day;
  std::optional<double> dust;    ///< finer than the band, by mass
  std::optional<double> usable;  ///< loose litres per litre of bag, screened if need be
};

/// Earlier lots of the material on screen oldest first, the bag on screen last.
[[nodiscard]] std::vector<LotPoint> lot_points(const Bench& bench);
[[nodiscard]] QString lot_sentence(const Bench& bench);
[[nodiscard]] PictureTable lot_table(const Bench& bench);
[[nodiscard]] PictureTable lot_data(const Bench& bench);

/// Dust and yield from lot to lot.
class LotChart : public QWidget {
  Q_OBJECT
 public:
  explicit LotChart(Bench& bench, QWidget* parent = nullptr);

  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  void refresh();
  void paint_axis(QPainter& painter, const QRectF& plot) const;
  void paint_lots(QPainter& painter, const QRectF& plot) const;
  void paint_legend(QPainter& painter, const QRectF& plot) const;

  Bench& bench_;
  std::vector<LotPoint> points_;
};

}  // namespace gritwright::desktop
