#pragma once
#include <QWidget>
#include <map>
#include <optional>
#include <string>

#include "gritwright/domain/material.hpp"
#include "models/record_editor.hpp"
#include "models/record_list_model.hpp"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTabWidget;
class QTableView;

namespace gritwright::desktop {

class BinsTab;
class ColumnScroll;
class FigurePanel;
class GoneNotice;
class RecordForm;
class StockLine;

/// Bags as they came in: material, lot, printed size, amount, price; tested or not, and how much is left. Grain taken back from a tree
/// is a bag too. Beside them the bins and leftover tubs.
class BagsPage : public QWidget {
  Q_OBJECT
 public:
  BagsPage(RecordBook& book, const Catalogue& catalogue, QWidget* parent = nullptr);

  void receive();
  /// A bag of grain that was taken back from a tree, whose number may be empty yet.
  void take_back(const QString& tree);
  void remove();
  void grade();
  void take_into_stock();
  void find();
  void set_units(UnitSystem units);
  void show_bag(const QString& id);
  void show_fraction(const QString& id);
  void show_bags();
  void show_bins();
  [[nodiscard]] BinsTab& bins() { return *bins_; }
  /// The bag on screen, empty if there is none.
  [[nodiscard]] const QString& current_bag() const { return current_; }
  /// The fraction or bag that a mix would take: of the list used last.
  [[nodiscard]] QString chosen_grain() const;
  [[nodiscard]] QTableView& table() { return *table_; }
  [[nodiscard]] QTableView& fractions() { return *fraction_table_; }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void changeEvent(QEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void showEvent(QShowEvent* event) override;

 signals:
  void grade_wanted(const QString& bag);
  void mix_wanted(const QString& grain);
  void measure_wanted(const QString& bag);

 private:
  QWidget* list_side(const Catalogue& catalogue);
  QWidget* list_tools(QWidget* side, const Catalogue& catalogue);
  QWidget* form_side(const Catalogue& catalogue);
  void use_fraction(bool fraction);
  void show_bag_of_fraction();
  void fit_fractions();
  QWidget* form_buttons(QWidget* details);
  void add_fractions(QWidget* side, QLayout& layout);
  void add_arrival_rows(const Catalogue& catalogue);
  void add_grain_rows();
  void add_paper_rows();
  void add_reclaimed_rows();
  /// The fine end of a printed size whose coarse end is not typed yet.
  [[nodiscard]] std::optional<Aperture> typed_size_from() const;
  void set_material(const std::string& material);
  Problems set_size_from(const QString& text);
  Problems set_size_to(const QString& text);
  Problems set_reclaimed_tree(const QString& text);
  Problems set_reclaimed_mix(const QString& text);
  /// A bag of the chosen material that comes in today.
  [[nodiscard]] Bag bag_of_today() const;
  /// Adds it as one step and shows it; false if it was refused.
  bool add_bag(const Bag& fresh);
  void fit_columns();
  void choose();
  void refresh();
  void refresh_stock(const Stored<Bag>& stored);
  void keep_selection();
  /// The line of the stock is for the grain that was chosen last, bag or fraction.
  void show_stock_line();

  RecordBook& book_;
  RecordListModel* list_;
  RecordListModel* fraction_list_;
  QTabWidget* tabs_;
  BinsTab* bins_;
  QTableView* table_ = nullptr;
  QTableView* fraction_table_ = nullptr;
  QLabel* fraction_heading_ = nullptr;
  QLineEdit* find_ = nullptr;
  QComboBox* material_ = nullptr;
  QComboBox* own_material_ = nullptr;  ///< of the bag in front
  QComboBox* basis_ = nullptr;
  QPushButton* take_in_ = nullptr;
  QLabel* empty_ = nullptr;
  QLabel* title_ = nullptr;
  QLabel* tested_ = nullptr;
  FigurePanel* stock_ = nullptr;
  StockLine* stock_line_ = nullptr;
  QLabel* not_in_stock_ = nullptr;
  QWidget* details_ = nullptr;
  RecordForm* form_ = nullptr;
  GoneNotice* gone_ = nullptr;
  QString current_;
  RecordEditor<Bag> editor_;
  std::map<QString, Aperture> size_from_;      ///< by bag: typed, and waits for its other end
  std::map<QString, std::string> currency_;    ///< by bag: typed, and waits for a price
  bool rows_moved_ = true;  ///< since the selection was last looked at
  bool fraction_used_last_ = false;
  ColumnScroll* form_column_ = nullptr;
  UnitSystem units_ = UnitSystem::metric;
};

}  // namespace gritwright::desktop
