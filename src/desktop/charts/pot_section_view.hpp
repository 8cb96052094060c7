#pragma once
#include <QWidget>
#include <optional>
#include <vector>

#include "gritwright/report/pot_section.hpp"
#include "models/bench_ranges.hpp"
#include "picture_table.hpp"
#include "section_painting.hpp"

namespace gritwright::desktop {

/// The pot of the bench in section, to scale: grain, water, trapped and free air by height, wet zone and fill line. Its rim can be
/// dragged, or moved with the arrow keys, to try another depth.
class PotSectionView : public QWidget {
  Q_OBJECT
 public:
  explicit PotSectionView(Bench& bench, QWidget* parent = nullptr);

  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void showEvent(QShowEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  using Scale = SectionScale;

  void refresh();
  [[nodiscard]] Scale scale() const;
  void paint_pot(QPainter& painter, const Scale& scale) const;
  void paint_lines(QPainter& painter, const Scale& scale) const;
  void paint_legend(QPainter& painter) const;
  [[nodiscard]] std::vector<QPointF> legend_places() const;
  [[nodiscard]] double legend_height() const;
  void set_depth_cm(double depth);

  Bench& bench_;
  std::optional<PotSection> section_;
  std::optional<Scale> dragging_;
};

/// The section of the bench's pot; empty while there is no pot.
[[nodiscard]] std::optional<PotSection> bench_pot_section(const Bench& bench);

/// Its summary in one sentence, or why there is no picture.
[[nodiscard]] QString pot_section_sentence(const Bench& bench);

/// Its table: height, grain, water, trapped and free air with their ranges, a dash without any, from the fill line down.
[[nodiscard]] PictureTable pot_section_table(const Bench& bench, const BenchRanges* ranges);
/// The same in cm and shares for a file.
[[nodiscard]] PictureTable pot_section_data(const Bench& bench, const BenchRanges* ranges);

}  // namespace gritwright::desktop
