#pragma once
#include <QTableWidget>
#include <array>
#include <functional>
#include <optional>

#include "gritwright/models/sieve_analysis.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "models/find_sheet.hpp"

namespace gritwright::desktop {

/// A table that is typed into: its looks, its names, and keys that start typing.
void prepare_typed_table(QTableWidget& table, const char* object_name, const QString& is, const QStringList& heading);
/// The cell, made where there is none.
QTableWidgetItem* typed_cell(QTableWidget& table, int row, int column);
/// Text and fault of a cell; what was not typed is muted.
void set_typed_cell(QTableWidgetItem& item, const QString& text, const QString& fault, bool editable, bool typed);
/// Columns as wide as a number; the first takes what they leave.
void fit_columns(QTableWidget& table);
/// Rows as high as their names in the first column need at this `width` of it (the table takes it only after it told of it), and the table as high as its
/// rows up to `most_rows`, then it scrolls by itself.
void fit_rows(QTableWidget& table, int most_rows, int width);

/// What a wish is called; the wanted grain is told where it is known.
[[nodiscard]] QString wish_label(WishRow row, const std::optional<Band>& band, UnitSystem units);

/// The wishes one by one: least, most, whether it must hold, and else its weight.
class WishTable : public QTableWidget {
  Q_OBJECT
 public:
  WishTable(const char* object_name, const QString& is, QWidget* parent = nullptr);

  /// `fault` says what is wrong at "/least", "/most" or "/weight" of a row.
  void show_wishes(const std::array<WishText, wish_rows>& wishes, const std::optional<Band>& band, UnitSystem units,
                   const std::function<QString(WishRow, const char*)>& fault);
  /// Columns and rows, with room for what the wishes are called.
  void fit();

 signals:
  void wish_typed(gritwright::desktop::WishRow row, const gritwright::desktop::WishText& wish);

 private:
  void typed(const QTableWidgetItem* item);

  std::array<WishText, wish_rows> shown_;
  UnitSystem units_ = UnitSystem::metric;
  bool filling_ = false;
};

}  // namespace gritwright::desktop
