#pragma once
#include <QWidget>

#include "models/record_book.hpp"
#include "models/record_list_model.hpp"

class QCheckBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QTabWidget;
class QTableView;

namespace gritwright::desktop {

class SickTreesTab;
class TraceTab;

/// Everything that happened, by date, without the small changes of single fields unless they are asked for; narrowed to one bag, mix or tree and what stands in its grain; a line to write down more. Beside
/// it where grain went and how the trees are doing.
class LogPage : public QWidget {
  Q_OBJECT
 public:
  explicit LogPage(RecordBook& book, QWidget* parent = nullptr);

  void find();
  [[nodiscard]] QTableView& table() { return *table_; }
  void write_down();
  /// Narrows the log to one record and shows what it is linked to.
  void show_about(const QString& id);
  void show_happened();
  /// Where the grain of `id` went, or what that tree stands in; empty: asks.
  void show_trace(const QString& id);
  void show_sick_trees();
  /// Saves the list of trees or the comparison, whichever is in front.
  void save_list();
  void set_units(UnitSystem units);
  [[nodiscard]] TraceTab& trace() { return *trace_; }
  [[nodiscard]] SickTreesTab& sick_trees() { return *sick_; }

 protected:
  void hideEvent(QHideEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  /// Where the settings hold what a line is about that was begun and is not written down.
  [[nodiscard]] QString about_kept_under() const;
  QWidget* happened();
  QWidget* tools(QWidget* parent);
  QWidget* writing_line(QWidget* parent);
  QWidget* linked_side();
  void put_today();
  void narrow();
  [[nodiscard]] ListFilter asked_for();
  void tell_left_out();
  void show_left_out(int small);
  void refresh_links();

  RecordBook& book_;
  RecordListModel* list_;
  QTabWidget* tabs_;
  TraceTab* trace_;
  SickTreesTab* sick_;
  QTableView* table_ = nullptr;
  QLineEdit* find_ = nullptr;
  QLineEdit* about_ = nullptr;
  bool about_by_jump_ = false;  ///< About was filled by going to a record, not typed
  QLineEdit* from_ = nullptr;
  QLineEdit* to_ = nullptr;
  QCheckBox* small_ = nullptr;
  QLabel* about_fault_ = nullptr;
  QLineEdit* day_ = nullptr;
  QString day_put_;  ///< what stands in it without having been typed
  QLineEdit* text_ = nullptr;
  QPushButton* keep_ = nullptr;
  QLabel* writing_fault_ = nullptr;
  QLabel* links_title_ = nullptr;
  QListWidget* links_ = nullptr;
};

}  // namespace gritwright::desktop
