#pragma once
#include <QObject>
#include <functional>

#include "models/bench.hpp"
#include "models/record_book.hpp"

class QAction;
class QMenu;

namespace gritwright::desktop {

class DayPage;
class MainWindow;

/// The room of the repotting day and its entries in the menu of the record.
class DayRoom : public QObject {
  Q_OBJECT
 public:
  DayRoom(Bench& bench, RecordBook& book, MainWindow& window, QMenu& menu);

  [[nodiscard]] DayPage& page() { return *page_; }
  void show();

 private:
  void page_changed();
  void action(QMenu& menu, const char* object_name, const QString& text, const QString& shortcut, std::function<void()> act);

  RecordBook& book_;
  MainWindow& window_;
  DayPage* page_;
};

}  // namespace gritwright::desktop
