#pragma once
#include <QWidget>
#include <vector>

#include "models/lot_history.hpp"
#include "picture_table.hpp"

namespace gritwright::desktop {

[[nodiscard]] QString lot_sentence(const Bench& bench);
[[nodiscard]] PictureTable lot_table(const Bench& bench);
[[nodiscard]] PictureTable lot_data(const Bench& bench);

/// Dust, middle size, yield and air from lot to lot, each with its usual range.
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
  /// In one line or in two: what it is, and how much.
  [[nodiscard]] QStringList title(LotFigure figure, int lines) const;
  void paint_panel(QPainter& painter, const QRectF& room, LotFigure figure, int title_lines, double scale_width) const;
  void paint_names(QPainter& painter, const QRectF& plot) const;

  Bench& bench_;
  std::vector<LotPoint> points_;
};

}  // namespace gritwright::desktop
