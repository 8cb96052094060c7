#pragma once
#include <QWidget>

#include "models/parts_finder.hpp"

namespace gritwright::desktop {

/// Air against water and price against fit, of the last search: what one figure costs of the other.
class TradeOffView : public QWidget {
  Q_OBJECT
 public:
  explicit TradeOffView(PartsFinder& finder, QWidget* parent = nullptr);

  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void refresh();

  PartsFinder& finder_;
  TradeOffPicture picture_;
};

}  // namespace gritwright::desktop
