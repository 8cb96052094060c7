#pragma once
#include <QWidget>
#include <optional>
#include <vector>

#include "models/range_keeper.hpp"
#include "picture_table.hpp"

namespace gritwright::desktop {

/// What goes in and what comes out: loose litres of each component, mixed litres, and what fills them.
struct PartsPicture {
  struct Part {
    QString name;
    double litres;  ///< loose
    int look;
    std::optional<Range> range = {};  ///< of the litres
  };
  struct Share {
    QString name;
    double share;  ///< of the mixed litres, 0..1
    std::optional<Range> range = {};
  };
  std::vector<Part> in;            ///< empty while there is no mix
  std::optional<double> litres_out;
  std::optional<Range> litres_out_range;
  std::vector<Share> filling;      ///< between grains, inside grains, solid; adds up to 1
  QString reason;                  ///< why it is empty
};
/// `ranges` null: none is known.
[[nodiscard]] PartsPicture parts_picture(const Bench& bench, const BenchRanges* ranges);
[[nodiscard]] QString parts_sentence(const Bench& bench, const BenchRanges* ranges);
[[nodiscard]] PictureTable parts_table(const Bench& bench, const BenchRanges* ranges);
[[nodiscard]] PictureTable parts_data(const Bench& bench, const BenchRanges* ranges);

/// The litres in and out as bars to one scale.
class PartsBar : public QWidget {
  Q_OBJECT
 public:
  PartsBar(Bench& bench, RangeKeeper& ranges, QWidget* parent = nullptr);

  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  void refresh();

  Bench& bench_;
  RangeKeeper& ranges_;
  PartsPicture picture_;
};

}  // namespace gritwright::desktop
