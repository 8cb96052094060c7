#pragma once
#include <QMainWindow>

#include "models/bench.hpp"
#include "settings.hpp"

class QActionGroup;
class QStackedWidget;

namespace gritwright::desktop {

class MixPage;
class WelcomePage;

/// The window: pages, menus, settings. The bench must outlive it.
class MainWindow : public QMainWindow {
  Q_OBJECT
 public:
  explicit MainWindow(Bench& bench, QWidget* parent = nullptr);

  void open_demonstration();
  void open_sieve_test_file(const QString& path);
  void open_container_file(const QString& path);
  void show_welcome();
  void show_bench();
  [[nodiscard]] MixPage& mix_page() { return *mix_page_; }

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
  void put_component(const ComponentSheet& component);
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
};

}  // namespace gritwright::desktop
