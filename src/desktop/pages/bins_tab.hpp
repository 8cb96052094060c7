#pragma once
#include <QWidget>

#include "gritwright/domain/material.hpp"
#include "models/record_editor.hpp"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace gritwright::desktop {

class FigurePanel;
class GoneNotice;
class RecordForm;
class RecordListSide;
class StockLine;
class TracedTable;

/// Bins and leftover tubs: what was tipped in, from which lots, until when; so what is taken out may contain them all.
class BinsTab : public QWidget {
  Q_OBJECT
 public:
  BinsTab(RecordBook& book, const Catalogue& catalogue, QWidget* parent = nullptr);

  void add_bin();
  void remove_bin();
  /// Notes that what was named is in the bin from that day on, and books its grain from there.
  void tip_in();
  /// Notes that nothing of what lay in it is left.
  void empty_out();
  void set_units(UnitSystem units);
  [[nodiscard]] RecordListSide& list() { return *list_; }
  [[nodiscard]] TracedTable& tubs() { return *tubs_; }
  /// The tub, where the keys are in their table, else the bin.
  [[nodiscard]] QString chosen_grain() const;

 signals:
  void grade_wanted(const QString& bin);
  void mix_wanted(const QString& bin);
  void trace_wanted(const QString& id);

 protected:
  void changeEvent(QEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* list_side(const Catalogue& catalogue);
  QWidget* bin_side(const Catalogue& catalogue);
  void show_tubs();
  [[nodiscard]] std::optional<RecordRef> tub_at(int row) const;
  void add_rows(const Catalogue& catalogue);
  QWidget* tipping_lines(QWidget* parent);
  void chosen();
  void fit_day();
  void refresh();
  void show_fault(const QString& text);
  [[nodiscard]] QString list_text(const RecordLine& bin) const;
  /// The dry grain that was typed, in grams or litres; empty text: not known.
  [[nodiscard]] Result<std::optional<Mass>> amount_of(const RecordRef& source) const;

  RecordBook& book_;
  RecordEditor<Bin> editor_;
  RecordListSide* list_ = nullptr;
  QWidget* tubs_side_ = nullptr;
  TracedTable* tubs_ = nullptr;
  StockLine* tub_line_ = nullptr;
  QWidget* details_ = nullptr;
  QLabel* title_ = nullptr;
  RecordForm* form_ = nullptr;
  StockLine* stock_line_ = nullptr;
  GoneNotice* gone_ = nullptr;
  QComboBox* material_ = nullptr;
  QLabel* tested_ = nullptr;
  FigurePanel* left_ = nullptr;
  QLabel* may_contain_ = nullptr;
  TracedTable* contents_ = nullptr;
  QLineEdit* source_ = nullptr;
  QLineEdit* amount_ = nullptr;
  QLineEdit* day_ = nullptr;
  QLabel* fault_ = nullptr;
  UnitSystem units_ = UnitSystem::metric;
};

}  // namespace gritwright::desktop
