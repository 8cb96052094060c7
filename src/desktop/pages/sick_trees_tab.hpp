#pragma once
#include <QWidget>
#include <optional>
#include <set>

#include "models/grain_trace.hpp"
#include "models/record_book.hpp"
#include "workers/background_job.hpp"

class QBoxLayout;
class QLabel;
class QPushButton;
class QTableWidget;
class QTableWidgetItem;

namespace gritwright::desktop {

class ColumnFit;
class TracedTable;

/// How the trees are doing, the sick ones first; and what those that are ticked have in common.
class SickTreesTab : public QWidget {
  Q_OBJECT
 public:
  explicit SickTreesTab(RecordBook& book, QWidget* parent = nullptr);

  void take_focus();
  /// Ticks the sick trees again and no other.
  void choose_sick();
  void choose_file();
  /// What the ticked trees share as text, CSV or JSON by the ending. False if there is nothing or it could not be written.
  bool save_shared(const QString& path) const;
  /// The comparison that is under way.
  [[nodiscard]] BackgroundJob& job() { return job_; }

 signals:
  /// A lot or mix that trees share is to be traced.
  void trace_wanted(const QString& id);

 protected:
  void changeEvent(QEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* trees_side();
  QWidget* shared_side();
  void refresh();
  void fill_trees();
  void fit_columns();
  void fit_traits();
  /// Pixels that the sides need beside each other.
  [[nodiscard]] int least_width_beside() const;
  /// With the answer below the trees instead of beside them.
  void turn(bool is_below);
  void ticked(QTableWidgetItem* item);
  void compare();
  void show_shared(const Result<SharedTraits>& shared);

  RecordBook& book_;
  BackgroundJob job_;
  QLabel* summary_ = nullptr;
  QTableWidget* trees_ = nullptr;
  ColumnFit* columns_ = nullptr;
  QLabel* which_ = nullptr;
  QLabel* nothing_ = nullptr;
  QBoxLayout* answer_ = nullptr;
  TracedTable* traits_ = nullptr;
  QPushButton* save_ = nullptr;
  std::vector<TreeState> states_;
  std::optional<std::set<std::string>> chosen_;  ///< absent: the sick ones
  std::optional<SharedTraits> shared_;
  std::int64_t seen_revision_ = -1;
  bool filling_ = false;
  bool is_below_ = false;
};

}  // namespace gritwright::desktop
