#pragma once
#include <QObject>
#include <vector>

class QAction;
class QActionGroup;
class QMainWindow;
class QMenu;
class QStackedWidget;
class QToolBar;
class QWidget;

namespace gritwright::desktop {

/// The rooms of the window in the order of the work: a bar on top, entries of a menu, Ctrl+1 and on.
class Navigation : public QObject {
  Q_OBJECT
 public:
  Navigation(QMainWindow& window, QStackedWidget& pages, QMenu& menu);

  /// Rooms go above this entry of the menu.
  void insert_before(QAction* below) { below_ = below; }
  /// A room; `key` names its action ("bags": "action_page_bags").
  void add_room(const char* key, const QString& title, QWidget* page);
  /// Puts a room made later in the place that was held for it; what stood there is deleted.
  void replace_room(const char* key, QWidget* page);
  void show(QWidget* page);
  [[nodiscard]] QWidget* room(const char* key) const;
  [[nodiscard]] QToolBar* bar() const { return bar_; }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Room {
    const char* key;
    QWidget* page;
    QAction* action;
    QWidget* button;
  };
  void check_current();

  QStackedWidget& pages_;
  QMenu& menu_;
  QAction* below_ = nullptr;
  QToolBar* bar_;
  QActionGroup* group_;
  std::vector<Room> rooms_;
};

}  // namespace gritwright::desktop
