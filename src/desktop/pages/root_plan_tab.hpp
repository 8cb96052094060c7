#pragma once
#include <QWidget>

#include "models/root_plan_desk.hpp"
#include "models/typed_text.hpp"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableWidget;
class QTabWidget;

namespace gritwright {
struct PrintDocument;
}

namespace gritwright::desktop {

class FigurePanel;
class GoneNotice;
class PictureTabs;
class RecordForm;
class RecordListSide;
class RootPlanView;
class RootSectionView;

/// The plan of one repotting: root mass, pot, pose, permission and the bench; what limits the fit, plans A, B, C, the stop table.
class RootPlanTab : public QWidget {
  Q_OBJECT
 public:
  RootPlanTab(RecordBook& book, const Catalogue& catalogue, QWidget* parent = nullptr);

  /// Shows the newest plan of the tree; a tree without one gets its first.
  void plan_tree(const QString& tree);
  void add_plan();
  void remove_plan();
  void set_units(UnitSystem units);
  /// Writes the sheet for the bench as a PDF file; false if there is no answer yet or it could not be written.
  bool save_sheet(const QString& file);
  /// Asks for the file, or the printer, first.
  void choose_sheet_file();
  void print_sheet();
  [[nodiscard]] RecordListSide& list() { return *list_; }
  [[nodiscard]] RootPlanDesk& desk() { return *desk_; }

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* list_side();
  QWidget* form_side();
  QWidget* answer_side();
  QWidget* mass_form();
  QWidget* pose_form();
  QWidget* permission_form();
  QWidget* bench_form();
  RecordForm* new_form(QWidget* parent);
  void add_row(RecordForm& form, const char* name, const QString& label, Kind kind, const QString& hint, std::function<QString(const RootMassPlan&)> show,
               std::function<Problems(RootMassPlan&, const QString&)> set, std::function<bool()> is_shown = {});
  /// A length, cm where no unit is typed; what is empty is not known or the default.
  void add_length(RecordForm& form, const char* name, const QString& label, const QString& hint, std::function<std::optional<Length>(const RootMassPlan&)> get,
                  std::function<void(RootMassPlan&, std::optional<Length>)> set, std::function<bool()> is_shown = {});
  void add_angle(RecordForm& form, const char* name, const QString& label, const QString& hint, std::function<std::optional<Angle>(const RootMassPlan&)> get,
                 std::function<void(RootMassPlan&, std::optional<Angle>)> set);
  void save(const QString& what, const std::function<void(RootMassPlan&)>& change);
  void choose_block(int form);
  void choose_pot(const QString& id);
  void stop_at_bench();
  void write_into_history();
  void tell_no_sheet();
  [[nodiscard]] std::optional<PrintDocument> sheet() const;
  void chosen();
  void refresh();
  void refresh_choices();
  void refresh_answer();
  [[nodiscard]] QString heading() const;
  [[nodiscard]] QString caution_line(const Note& note) const;
  [[nodiscard]] QString steps_text(const WorkedPlan& worked) const;

  RecordBook& book_;
  RootPlanDesk* desk_;
  RecordListSide* list_ = nullptr;
  QComboBox* trees_ = nullptr;
  QLabel* tree_fault_ = nullptr;
  QTabWidget* tabs_ = nullptr;
  std::vector<RecordForm*> forms_;
  GoneNotice* gone_ = nullptr;
  QComboBox* groups_ = nullptr;
  QComboBox* blocks_ = nullptr;
  QComboBox* pots_ = nullptr;
  QComboBox* present_pots_ = nullptr;
  QComboBox* mixes_ = nullptr;
  QComboBox* styles_ = nullptr;
  QComboBox* bare_root_ = nullptr;
  QComboBox* bare_before_ = nullptr;
  QComboBox* library_ = nullptr;
  QComboBox* stop_direction_ = nullptr;
  QLineEdit* stop_depth_ = nullptr;
  QLabel* stops_ = nullptr;
  QLabel* stop_fault_ = nullptr;
  QLabel* heading_ = nullptr;
  PictureTabs* pictures_ = nullptr;
  RootPlanView* view_ = nullptr;
  RootSectionView* section_ = nullptr;
  QComboBox* plans_ = nullptr;
  QLabel* limits_ = nullptr;
  QLabel* steps_ = nullptr;
  QTableWidget* stop_table_ = nullptr;
  FigurePanel* figures_ = nullptr;
  QPushButton* done_ = nullptr;
  QWidget* answer_ = nullptr;
  UnitSystem units_ = UnitSystem::metric;
};

}  // namespace gritwright::desktop
