#pragma once
#include <QStringList>
#include <QWidget>

#include "models/bench.hpp"

class QComboBox;
class QLabel;

namespace gritwright::desktop {

class FieldForm;
class SieveTable;

/// The sieve test of the component on screen: the sample, the stack, running sum and loss, and its checks in words.
class SheetEditor : public QWidget {
  Q_OBJECT
 public:
  explicit SheetEditor(Bench& bench, QWidget* parent = nullptr);

  [[nodiscard]] SieveTable& table() { return *table_; }
  /// Running sum and loss, for whoever lays them out where they stay in view.
  [[nodiscard]] QLabel& balance() { return *balance_; }

 private:
  void refresh();
  [[nodiscard]] QString balance_text() const;
  [[nodiscard]] QString first_balance() const;
  [[nodiscard]] QStringList faults_of_stack(const Faults& faults) const;

  Bench& bench_;
  FieldForm* sample_;
  QComboBox* measure_;
  SieveTable* table_;
  QLabel* balance_;
  QLabel* checks_;
};

/// The component on screen in `state`, null if there is none.
[[nodiscard]] ComponentSheet* current_component(Bench& bench, BenchState& state);
/// Its faults.
[[nodiscard]] const Faults* current_faults(const Bench& bench);

}  // namespace gritwright::desktop
