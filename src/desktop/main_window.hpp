#pragma once
#include <QMainWindow>

#include "models/bench.hpp"
#include "settings.hpp"

class QActionGroup;
class QStackedWidget;

namespace gritwright::desktop {

class MixPage;
class RecordBook;
class RecordPages;
class WelcomePage;

/// The window: pages, menus, settings.
class MainWindow : public QMainWindow {
  Q_OBJECT
 public:
  /// Without a record the window has the bench alone. Both must outlive it.
  explicit MainWindow(Bench& bench, RecordBook* record = nullptr, QWidget* parent = nullptr);

  void open_demonstration();
  void open_sieve_test_file(const QString& path);
  void open_container_file(const QString& path);
  void show_welcome();
  void show_bench();
  [[nodiscard]] MixPage& mix_page() { return *mix_page_; }
  [[nodiscard]] QStackedWidget& pages() { return *pages_; }
  /// Null without a record.
  [[nodiscard]] RecordPages* record_pages() { return record_pages_; }

  /// On the bench in an untouched component's place, else as a new one; told if there is no room.
  void put_component(const ComponentSheet& component);

 protected:
  void closeEvent(QCloseEvent* event) override;

 private:
  QAction* action(QMenu* menu, const char* object_name, const QString& text, const QKeySequence& shortcut);
  void make_file_menu();
  void make_edit_menu();
  void make_component_menu();
  void make_view_menu();
  void make_help_menu();
  void choose_sieve_tests();
  void choose_container();
  void set_text_percent(int percent);
  void set_theme(std::optional<Theme> theme);
  void apply_settings();
  void say(const QString& sentence);
  void show_problems(const QString& title, const Problems& problems);

  Bench& bench_;
  Settings settings_;
  QStackedWidget* pages_;
  WelcomePage* welcome_page_;
  MixPage* mix_page_;
  QMenu* view_menu_ = nullptr;
  RecordPages* record_pages_ = nullptr;
};

}  // namespace gritwright::desktop
