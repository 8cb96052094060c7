#pragma once
#include <QTabWidget>
#include <functional>
#include <vector>

#include "models/figures.hpp"
#include "picture_table.hpp"

class QComboBox;
class QStackedWidget;
class QTableWidget;
class QToolButton;

namespace gritwright::desktop {

class HowButton;
class PictureTabBar;

/// Pictures behind tabs. Each has a twin, the same as a table, and one switch turns all of them to their tables.
class PictureTabs : public QTabWidget {
  Q_OBJECT
 public:
  struct Picture {
    QString title;
    QWidget* view;                        ///< with accessible name and description
    const char* table_name;               ///< object name of the table
    std::function<PictureTable()> table;  ///< as it is read
    std::function<PictureTable()> data;   ///< metric, with a point: for a CSV file
    std::function<std::vector<Explanation>()> how;  ///< where it comes from; empty while nothing is shown
  };

  explicit PictureTabs(QWidget* parent = nullptr);

  void add(Picture picture);
  void show_picture(const QWidget* view);
  void set_as_table(bool table);
  [[nodiscard]] bool is_as_table() const { return as_table_; }
  /// The picture in front, or the one whose table is in front.
  [[nodiscard]] const Picture& picture() const;
  /// Fills the table in front; nothing while pictures are shown.
  void refresh_table();

 signals:
  void as_table_changed(bool table);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fit_tabs();
  void name_how();
  /// What the picture in front shows, or why it shows nothing.
  [[nodiscard]] QString sentence() const;
  [[nodiscard]] Figure figure() const;

  struct Shown {
    Picture picture;
    QStackedWidget* stack;
    QTableWidget* table;
  };

  bool as_table_ = false;
  PictureTabBar* bar_;
  QToolButton* twin_;
  HowButton* how_;
  QComboBox* chooser_;  ///< in place of the bar's names, where they have no room
  std::vector<Shown> shown_;
};

}  // namespace gritwright::desktop
