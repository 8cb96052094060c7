#pragma once
#include <QWidget>

#include "models/bench.hpp"

namespace gritwright::desktop {

class TypedField;

/// The wanted band: from and to, each with its fault. `prefix` makes its object names unique ("mix" gives "mix_band_from").
class BandRow : public QWidget {
  Q_OBJECT
 public:
  BandRow(Bench& bench, const QString& prefix, QWidget* parent = nullptr);

  /// The finer end, chosen whole, so that what is typed takes its place.
  void take_focus();

 private:
  TypedField* from_;
};

}  // namespace gritwright::desktop
