#pragma once
#include <QWidget>
#include <optional>

#include "gritwright/domain/material.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "models/record_book.hpp"

class QComboBox;
class QLabel;
class QLineEdit;

namespace gritwright::desktop {

/// An amount as it may be typed, in the units shown.
[[nodiscard]] QString amount_hint(UnitSystem units);

/// One line to enter what was counted, used, spilt, thrown out or put back of a bag, fraction or bin, by balance or by jug. A count never
/// overwrites: the difference is a line of the stock.
class StockLine : public QWidget {
  Q_OBJECT
 public:
  /// `prefix` of object names: "bag".
  StockLine(RecordBook& book, const Catalogue& catalogue, const QString& prefix, QWidget* parent = nullptr);

  /// Empty: there is none.
  void set_holder(const std::optional<RecordRef>& holder);
  void set_units(UnitSystem units);

 private:
  void enter();
  void show_fault(const QString& text);

  RecordBook& book_;
  const Catalogue& catalogue_;
  QLabel* of_;
  QComboBox* reason_;
  QLineEdit* amount_;
  QLabel* fault_;
  std::optional<RecordRef> holder_;
  UnitSystem units_ = UnitSystem::metric;
};

}  // namespace gritwright::desktop
