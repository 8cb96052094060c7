#pragma once
#include <QStringList>
#include <QWidget>
#include <functional>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "gritwright/models/day_ranges.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "models/day_ground.hpp"
#include "models/day_ticking.hpp"
#include "models/figures.hpp"
#include "models/record_book.hpp"
#include "workers/background_job.hpp"

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QTableView;
class QTabWidget;

namespace gritwright::desktop {

class ColumnFit;
struct DayLine;
class DayTreesModel;
class FigurePanel;
class GoneNotice;
class HowButton;
class RecordForm;
class SectionView;

/// What of a day can be printed.
enum class DaySheet { day, cards, labels, root_plans, season };

/// A repotting day: its trees in working order, the litres they take, what to screen, buy, mix and lift, and the evening's table.
class DayPage : public QWidget {
  Q_OBJECT
 public:
  DayPage(RecordBook& book, const Catalogue& catalogue, QWidget* parent = nullptr);

  void new_day();
  void remove_day();
  void add_tree();
  void remove_tree();
  /// Ticks the tree in front off, or takes its tick back.
  void tick();
  /// Ticks off every tree whose litres were written, as one step.
  void enter_evening();
  void take_plan_again();
  void show_season();
  void choose_file(DaySheet sheet);
  /// Writes the sheet as a PDF. False if there is nothing to print or it could not be written.
  bool write_sheet(DaySheet sheet, const QString& path);
  void set_units(UnitSystem units);
  void show_day(const QString& id);
  /// Empty if there is none.
  [[nodiscard]] const QString& current_day() const { return current_; }
  [[nodiscard]] QTableView& table() { return *table_; }
  [[nodiscard]] const std::optional<Result<DayAnswer>>& answer() const { return answer_; }
  /// Waits for how sure the litres are; for tests and for pictures of the window.
  void finish_ranges();

 signals:
  /// Grain is short: recipes from what is on the shelf are wanted.
  void find_parts_wanted();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void changeEvent(QEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  bool write_pdf_of(DaySheet sheet, const QString& path);
  QWidget* tools();
  QWidget* day_tab();
  QWidget* tree_tab();
  QWidget* shelf_tab();
  QWidget* list_tab();
  QWidget* left_over_tab();
  QWidget* season_tab();
  void add_day_rows();
  void add_tree_rows();
  QListWidget* checklist(QWidget* parent, const char* object_name, const QString& title, bool evening);
  void fit_columns();
  void keep_rows_in_sight();

  void refresh();
  void refresh_choices();
  void compute();
  /// Mix and pot of a line are chosen on the tree's own tab.
  bool go_to_choice(const QModelIndex& cell);
  void show_returned();
  void take_planned(QString& typed, const std::optional<MixedVolume>& figure);
  void show_lines();
  void fill_table(std::vector<DayLine> lines);
  /// For another day, where the same tree can stand: no cell stays open.
  void leave_lines();
  void show_answer();
  void show_tree();
  void show_checklists();
  void show_season_answer();
  /// Trees that are left out, and grain that the record says is below nothing.
  [[nodiscard]] QStringList what_is_amiss() const;
  /// What is short, and what is heaviest.
  [[nodiscard]] QStringList first_words(const DayAnswer& answer) const;
  [[nodiscard]] FigureGroup to_mix_figures(const DayAnswer& answer) const;
  void show_how();
  /// Starts what is behind the tables of how sure the litres are, unless it is known or under way.
  void ask_ranges();
  void ask_season_ranges(const SeasonGround& season);
  /// What is uncertain about the mixes; empty where the record can't be read, which is told.
  [[nodiscard]] std::optional<std::vector<MixSpread>> spreads_or_told(const PlannedDay& day, const std::vector<DayMixSources>& mixes);
  void return_left();

  [[nodiscard]] std::optional<Stored<RepottingDay>> day() const;
  /// Where the tree in front stands on the day as it was read.
  [[nodiscard]] std::optional<std::size_t> front_row(const std::optional<Stored<RepottingDay>>& stored) const;
  [[nodiscard]] Problem changed_elsewhere() const;
  /// "tree T-002 of repotting day 2027-03-14"
  [[nodiscard]] QString name_on_day(const QString& tree) const;
  /// Saves what waits for the end of typing.
  void finish_typing();
  /// Before another tree comes to the front: tells what could not be saved.
  void leave_tree();
  void bring_to_front(const QString& tree);
  /// The tree below one in working order; empty under the last.
  [[nodiscard]] QString tree_below(const QString& tree) const;
  /// The tree in front as it was last seen, on the day again.
  void put_back();
  Problems apply(Change change);
  /// In the status bar, for what is written beside a form.
  void tell(const Problems& problems) const;
  Problems save(const QString& what, const std::function<void(RepottingDay&)>& change);
  Problems save_tree(const QString& what, const std::function<void(DayTree&)>& change);
  /// A tree that is done: its history, the stock and the log change with its row.
  Problems correct_done(const Stored<RepottingDay>& stored, std::size_t row, const DayTree& now);
  /// `row` was done on `day_done`; `ground` and `answer` are of the day as it should have become.
  [[nodiscard]] Problem why_not_corrected(const DayGround& ground, const Result<DayAnswer>& answer, const std::string& day_done, const DayTree& row) const;
  /// The plan that a row shall follow, or followed where it is done.
  Problems write_plan(const DayTree& was, const QString& text);
  /// False where it can't be, which is told.
  bool write_cell(const QString& tree, int column, const QString& text);
  void tick_rows(const Stored<RepottingDay>& stored, const std::vector<std::size_t>& rows);
  [[nodiscard]] std::function<QString()> shown(std::function<QString(const RepottingDay&)> text) const;
  [[nodiscard]] std::function<QString()> shown_of_tree(std::function<QString(const DayTree&)> text) const;

  RecordBook& book_;
  const Catalogue& catalogue_;
  DayTreesModel* lines_;
  QComboBox* days_ = nullptr;
  QComboBox* tree_choice_ = nullptr;
  QComboBox* order_ = nullptr;
  QTableView* table_ = nullptr;
  ColumnFit* columns_ = nullptr;
  QTabWidget* tabs_ = nullptr;
  QLabel* empty_ = nullptr;
  QLabel* first_ = nullptr;
  FigurePanel* to_mix_ = nullptr;
  QLabel* summary_ = nullptr;
  QLabel* tree_title_ = nullptr;
  RecordForm* day_form_ = nullptr;
  RecordForm* tree_form_ = nullptr;
  GoneNotice* gone_ = nullptr;
  GoneNotice* tree_gone_ = nullptr;
  QComboBox* mix_ = nullptr;
  QComboBox* pot_ = nullptr;
  SectionView* litres_ = nullptr;
  SectionView* shelf_ = nullptr;
  SectionView* batches_ = nullptr;
  SectionView* lifts_ = nullptr;
  SectionView* computed_list_ = nullptr;
  SectionView* season_ = nullptr;
  HowButton* season_how_ = nullptr;
  Figure season_figure_;  ///< where the season's figures come from
  QPushButton* find_parts_ = nullptr;
  QListWidget* evening_ = nullptr;
  QListWidget* morning_ = nullptr;
  QComboBox* left_mix_ = nullptr;
  RecordForm* left_form_ = nullptr;
  QLabel* returned_ = nullptr;
  RecordForm* season_form_ = nullptr;
  QString made_text_;
  QString left_text_;
  std::optional<MixedVolume> planned_made_;
  std::optional<MixedVolume> likely_left_;
  std::set<std::string> returned_mixes_;  ///< whose leftover is in stock already
  std::string until_;

  QString current_;
  QString tree_in_front_;  ///< its id, for another window can change the rows of the day; empty if there is none
  DayTree last_seen_;      ///< the tree in front
  QString day_last_seen_;
  DayGround ground_;
  std::optional<Result<DayAnswer>> answer_;
  std::optional<PlannedDay> ranges_asked_;
  std::optional<DayRanges> ranges_;  ///< of `ranges_asked_`
  std::optional<PlannedSeason> season_ranges_asked_;
  std::optional<DayRanges> season_ranges_;
  BackgroundJob ranges_job_;
  BackgroundJob season_ranges_job_;
  UnitSystem units_ = UnitSystem::metric;
  bool filling_ = false;
  std::optional<QString> goes_on_to_;  ///< the tree under the cell that is written, by the order before
};

}  // namespace gritwright::desktop
