#pragma once
#include <QGraphicsItem>
#include <QPixmap>
#include <QStringList>
#include <array>
#include <optional>
#include <utility>
#include <vector>

#include "grading_series.hpp"

class QChart;

namespace gritwright::desktop {

/// What the axis of percent passing shows: markers at none and at all are whole.
inline constexpr double least_shown_percent = -3;
inline constexpr double most_shown_percent = 103;

/// All of the grading chart but its curves: legend, wanted band, sieve lines and labels, percent labels, the marked point. Drawn by us
/// because an axis of the chart has even ticks only and its legend doesn't show line and marker together.
class ChartFrame : public QGraphicsItem {
 public:
  explicit ChartFrame(QChart* chart);

  /// `picture` must outlive the next paint.
  void set(const GradingPicture* picture);
  /// Something else than the picture, as axis, size, colours or font, is other than before.
  void dress();

  /// Where the plot goes in a chart of `size` so that legend and labels have room.
  [[nodiscard]] QRectF plot_area(const QSizeF& size, const QFont& font) const;

  QRectF boundingRect() const override;
  void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

 private:
  struct Entry {
    QString text;
    std::optional<int> look;  ///< absent: of the faint curves
    QPointF at;
  };

  /// What stands still in the picture while curves move.
  struct Still {
    std::vector<std::pair<QString, int>> entries;  ///< name and look
    QStringList faint_words;
    int faint_look = 0;
    std::vector<double> sieves_mm;
    std::optional<QPointF> band_mm;
    friend bool operator==(const Still&, const Still&) = default;
  };
  [[nodiscard]] Still still() const;

  /// All but the ribbon and the marked point, which move at every sign.
  void paint_still(QPainter& painter, const QRectF& plot) const;
  /// The entries in place; `height` receives what they take.
  std::vector<Entry> legend(double width, const QFont& font, double& height) const;
  [[nodiscard]] double x_of(double mm) const;
  [[nodiscard]] bool is_of_shown_curve(double mm) const;
  void paint_legend(QPainter& painter) const;
  /// Empty where none is wanted or none of it is in the plot.
  [[nodiscard]] std::optional<QRectF> band_place(const QRectF& plot) const;
  void paint_band(QPainter& painter, const QRectF& plot) const;
  void paint_band_name(QPainter& painter, const QRectF& plot) const;
  void paint_percents(QPainter& painter, const QRectF& plot) const;
  void paint_sieves(QPainter& painter, const QRectF& plot) const;
  void paint_ribbon(QPainter& painter, const QRectF& plot) const;
  void paint_mark(QPainter& painter) const;

  QChart* chart_;
  const GradingPicture* picture_ = nullptr;
  Still painted_;                       ///< what the pixmap shows
  std::array<double, 4> painted_at_{};  ///< left and foot of the plot, where 1 mm and 10 mm lie in it
  QPixmap pixmap_;                      ///< null where it must be painted anew
};

}  // namespace gritwright::desktop
