#pragma once
#include <QtCharts/QChartView>

#include "grading_series.hpp"

class QLineSeries;
class QScatterSeries;
class QValueAxis;

namespace gritwright::desktop {

class ChartFrame;

/// Percent passing over log10 of the size. The sieves used are the ticks; the wanted band is shaded; curves differ by line and
/// marker as well as by colour.
class GradingChart : public QChartView {
  Q_OBJECT
 public:
  explicit GradingChart(QWidget* parent = nullptr);

  void show_picture(const GradingPicture& picture, const QString& sentence);
  [[nodiscard]] const GradingPicture& picture() const { return picture_; }

  /// Value under the cursor, in words; empty outside the plot.
  [[nodiscard]] QString reading_at(const QPointF& position) const;

  /// Shows a part of the sizes: `factor` below 1 comes nearer to `around_mm`. The wheel and the keys + - 0 do the same.
  void zoom(double factor, double around_mm);
  void show_all();
  [[nodiscard]] bool is_zoomed() const { return zoom_.has_value(); }

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  struct Curve {
    QLineSeries* line;
    QScatterSeries* points;
  };

  void lay_out();
  void set_axis();
  void dress();
  static void dress_curve(const Curve& curve, const GradingSeries& series);
  void ensure_curves(std::size_t count);
  [[nodiscard]] bool same_curves(const GradingPicture& picture) const;

  GradingPicture picture_;
  QValueAxis* size_axis_;
  QValueAxis* percent_axis_;
  ChartFrame* frame_;
  std::vector<Curve> curves_;
  std::optional<QPointF> zoom_;  ///< log10 of the sizes at the ends, in place of the picture's own
};

}  // namespace gritwright::desktop
