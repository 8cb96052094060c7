#pragma once
#include <QWidget>
#include <optional>

#include "gritwright/report/quantity_text.hpp"
#include "models/root_plan_desk.hpp"
#include "picture_table.hpp"

namespace gritwright::desktop {

/// The new mix around a kept root mass in section, to scale: grain, water and air by height; the root mass hatched, since what it holds
/// is not known.
class RootSectionView : public QWidget {
  Q_OBJECT
 public:
  explicit RootSectionView(RootPlanDesk& desk, QWidget* parent = nullptr);

  void set_units(UnitSystem units);
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] PictureTable table() const;
  [[nodiscard]] PictureTable data() const;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void refresh();
  /// Null while there is none.
  [[nodiscard]] const RootSection* section() const;
  [[nodiscard]] double paint_legend(QPainter& painter) const;

  RootPlanDesk& desk_;
  UnitSystem units_ = UnitSystem::metric;
};

}  // namespace gritwright::desktop
