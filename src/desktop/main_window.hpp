#pragma once
#include <QMainWindow>
#include <initializer_list>

#include "models/bench.hpp"
#include "settings.hpp"

class QActionGroup;
class QStackedWidget;

namespace gritwright::desktop {

class JumpBox;
class ImportPage;
class ManualPage;
class MixPage;
class Navigation;
class PictureTabs;
class RecordBook;
class RangeKeeper;
class DayRoom;
class RecordPages;
class RootPlanTab;
class SettingsPage;
class SievingPage;
class StatusLine;
class TroublePage;
class WelcomePage;
struct RecordTrouble;

/// The window: rooms in the order of the work, menus, settings.
class MainWindow : public QMainWindow {
  Q_OBJECT
 public:
  /// Without a record the window has the bench alone. Both must outlive it.
  explicit MainWindow(Bench& bench, RecordBook* record = nullptr, QWidget* parent = nullptr);

  /// Lays the demonstration's mix on this window's bench.
  void open_demonstration();
  /// Says in the title and below that what is here is invented and goes with the window.
  void mark_as_demonstration();
  /// Says in the title and below which record this is, where it is not the usual one or can't be written to.
  void mark_record(const QString& name, bool read_only);
  /// Why the record could not be opened and what can be done, in sight and behind the rooms that stay closed.
  void show_trouble(const RecordTrouble& trouble);
  void open_sieve_test_file(const QString& path);
  void open_container_file(const QString& path);
  void show_welcome();
  void show_sieving();
  void show_mixes();
  void show_settings();
  /// The settings with the backups in view.
  void show_backups();
  /// Shows what would be taken out of `path`; a file is asked for where none is named. Needs a record.
  void import_file(const QString& path = {});
  /// The chapter for what is on screen; from the manual back to where it was opened.
  void show_manual();
  Q_INVOKABLE void show_manual_page(const QString& page);
  /// Opens the box that finds any bag, mix, tree or action.
  void jump();

  [[nodiscard]] SievingPage& sieving_page() { return *sieving_page_; }
  [[nodiscard]] MixPage& mix_page() { return *mix_page_; }
  [[nodiscard]] ManualPage& manual_page() { return *manual_page_; }
  [[nodiscard]] RangeKeeper& ranges() { return *ranges_; }
  [[nodiscard]] QStackedWidget& pages() { return *pages_; }
  [[nodiscard]] Navigation& navigation() { return *navigation_; }
  /// Null without a record.
  [[nodiscard]] RecordPages* record_pages() { return record_pages_; }
  /// Null where the record could not be opened.
  [[nodiscard]] DayRoom* day_room() const { return day_room_; }

  /// On the bench in an untouched component's place, else as a new one; told and false if there is no room.
  bool put_component(const ComponentSheet& component);

  /// Of the record's file; told where it is this window's.
  void tell_trouble(const Problem& problem);

  /// The pot in the mix's place for one; told where the form has no room for its layers.
  void put_pot(const Container& container, const QString& what);

  /// Writes the picture in front to `path`, by its ending png, svg or pdf; its data where it is csv. False where there is none.
  bool save_picture(const QString& path);

 signals:
  /// A demonstration is wanted in a window of its own.
  void demonstration_wanted();
  /// Another record is to take this window's place; an empty name stands for the usual one.
  void record_wanted(const QString& file, bool read_only);
  /// A backup is to take the place of the record that is open here or could not be opened.
  void restore_wanted(const QString& backup);

 protected:
  void closeEvent(QCloseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  /// Rows come and go, so the order is made when it is asked for.
  bool focusNextPrevChild(bool next) override;
  void showEvent(QShowEvent* event) override;

 private:
  QAction* action(QMenu* menu, const char* object_name, const QString& text, const QKeySequence& shortcut);
  void make_file_menu();
  void make_edit_menu();
  void make_component_menu();
  void make_go_menu();
  void make_view_menu();
  void make_help_menu();
  void make_rooms();
  void choose_record();
  void ask_to_restore(const QString& backup);
  void make_context_menus();
  /// What a right click on `widget`, or on what lies in it without a menu of its own, offers: actions of the menu bar.
  void offer(QWidget& widget, std::initializer_list<const char*> names);
  [[nodiscard]] QString chapter_on_screen() const;
  void leave_manual();
  /// A new pot of the record, the cursor in its first length; the bench's own pot without a record.
  void describe_pot();
  void choose_sieve_tests();
  void choose_container();
  void choose_picture_file();
  [[nodiscard]] bool is_bench_in_sight() const;
  /// Says what to do where no sieve test is on screen to put on paper, or one that is only a prediction. True then.
  bool refuse_sheet();
  [[nodiscard]] RootPlanTab* plan_in_sight();
  void print_sheet();
  void choose_sheet_file();
  /// Null where the page on screen has none.
  [[nodiscard]] PictureTabs* pictures_in_front();
  void set_text_percent(int percent);
  void set_settings(const Settings& settings);
  void apply_settings();
  void say(const QString& sentence);
  void leave_menu_bar();
  void show_problems(const QString& title, const Problems& problems);

  Bench& bench_;
  RecordBook* record_;
  Settings settings_;
  QStackedWidget* pages_;
  RangeKeeper* ranges_;
  WelcomePage* welcome_page_;
  SievingPage* sieving_page_;
  MixPage* mix_page_;
  SettingsPage* settings_page_;
  ManualPage* manual_page_;
  StatusLine* status_line_;
  ImportPage* import_page_ = nullptr;
  TroublePage* trouble_page_ = nullptr;
  QWidget* before_manual_ = nullptr;
  Navigation* navigation_ = nullptr;
  QMenu* go_menu_ = nullptr;
  RecordPages* record_pages_ = nullptr;
  DayRoom* day_room_ = nullptr;
  JumpBox* jump_box_ = nullptr;
  bool laid_out_ = false;
};

}  // namespace gritwright::desktop
