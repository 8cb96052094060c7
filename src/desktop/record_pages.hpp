#pragma once
#include <QObject>

#include "models/bench.hpp"
#include "models/record_book.hpp"

class QAction;
class QActionGroup;
class QMenu;
class QToolBar;

namespace gritwright::desktop {

class BagsPage;
class LogPage;
class MainWindow;

/// The pages over the workbook, the way to them, and the actions between them and the bench.
class RecordPages : public QObject {
  Q_OBJECT
 public:
  /// Adds its pages, its menu before `before` and its page bar to the window.
  RecordPages(Bench& bench, RecordBook& book, MainWindow& window, QMenu& before);

  void show_bags();
  void show_bench();
  void show_log();

  /// Puts the bag's latest sieve test, or an empty stack with its material and densities, on the bench.
  void grade(const QString& bag);
  /// Keeps the finished sheet on screen with its bag; a sheet without a bag makes one of its material.
  void save_sheet();
  void save_copy();

  [[nodiscard]] BagsPage& bags() { return *bags_; }
  [[nodiscard]] LogPage& log() { return *log_; }

 private:
  QAction* action(const char* object_name, const QString& text, const QString& shortcut, std::function<void()> act);
  void make_menu(QMenu& before);
  void page_changed();
  void refresh_undo();
  void find();
  /// The bag of the component on screen; a new one is added for a sheet without. Empty if it could not be.
  QString bag_of_sheet(const ComponentSheet& component);

  Bench& bench_;
  RecordBook& book_;
  MainWindow& window_;
  BagsPage* bags_;
  LogPage* log_;
  QMenu* menu_;
  QToolBar* bar_;
  QActionGroup* pages_;
  QAction* undo_ = nullptr;
  QAction* redo_ = nullptr;
};

}  // namespace gritwright::desktop
