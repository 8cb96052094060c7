#pragma once
#include <QWidget>

#include "models/bench.hpp"

class QComboBox;

namespace gritwright::desktop {

class FieldForm;

/// The container: shape, inside lengths, fill line and how the mix is placed.
class PotForm : public QWidget {
  Q_OBJECT
 public:
  explicit PotForm(Bench& bench, QWidget* parent = nullptr);

 private:
  void refresh();
  [[nodiscard]] QString settling_hint() const;
  void add_lengths();
  void add_fill();

  Bench& bench_;
  FieldForm* form_;
  QComboBox* shapes_;
};

}  // namespace gritwright::desktop
