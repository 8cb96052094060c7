#pragma once
#include <QWidget>

#include "models/bench.hpp"

class QComboBox;
class QLabel;

namespace gritwright::desktop {

class FieldForm;

/// The grain of the component on screen: its material and what of it was measured; the catalogue's typical figures stand in.
class GrainForm : public QWidget {
  Q_OBJECT
 public:
  explicit GrainForm(Bench& bench, QWidget* parent = nullptr);

 private:
  void refresh();
  [[nodiscard]] const Material* material() const;

  Bench& bench_;
  FieldForm* form_;
  QComboBox* materials_;
  QLabel* description_;
};

}  // namespace gritwright::desktop
