#pragma once
#include <QWidget>

#include "models/bench.hpp"

namespace gritwright::desktop {

/// The wanted band: from and to, each with its fault. `prefix` makes its object names unique ("mix" gives "mix_band_from").
class BandRow : public QWidget {
  Q_OBJECT
 public:
  BandRow(Bench& bench, const QString& prefix, QWidget* parent = nullptr);

  void take_focus();

 private:
  QWidget* from_;
};

}  // namespace gritwright::desktop
