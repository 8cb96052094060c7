#pragma once
#include <QWidget>
#include <optional>

#include "models/grain_trace.hpp"
#include "models/record_book.hpp"

class QLabel;
class QLineEdit;
class QPushButton;

namespace gritwright::desktop {

class TracedTable;

/// Where the grain of a bag, fraction, bin, batch or mix went, down to the trees; and what a tree stands in, back to its bags.
class TraceTab : public QWidget {
  Q_OBJECT
 public:
  explicit TraceTab(RecordBook& book, QWidget* parent = nullptr);

  void trace(const QString& id);
  void take_focus();
  void set_units(UnitSystem units);
  /// Asks where to, and writes the recall list.
  void choose_file();
  /// The recall list as text, CSV or JSON by the ending. False if there is none or it could not be written.
  bool save_list(const QString& path) const;

 protected:
  void changeEvent(QEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  void refresh();
  void show_recall(const RecordRef& of);
  void show_ground(const RecordRef& tree);
  void show_nothing(const QString& sentence);

  RecordBook& book_;
  QLineEdit* of_;
  QPushButton* save_;
  QLabel* sentence_;
  TracedTable* trees_;
  QLabel* holders_heading_;
  TracedTable* holders_;
  std::optional<RecallList> list_;
  UnitSystem units_ = UnitSystem::metric;
};

}  // namespace gritwright::desktop
