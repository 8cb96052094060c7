#pragma once
#include <QWidget>
#include <functional>
#include <utility>

#include "models/record_list_model.hpp"

class QLabel;
class QLineEdit;
class QPushButton;
class QSortFilterProxyModel;
class QTableView;

namespace gritwright::desktop {

class FlowLine;

/// A list of records with a line to find one and buttons above it. One record is on screen while there is any.
class RecordListSide : public QWidget {
  Q_OBJECT
 public:
  struct Names {
    QString prefix;       ///< of object names: "pots"
    QString list;         ///< for screen readers
    QString find_hint;
    QString when_empty;   ///< what to do first
    QString state;        ///< heading of the state column
    QString widest_state; ///< a state that is hardly ever longer
    bool state_is_figure = false;
  };

  RecordListSide(RecordBook& book, RecordKind kind, const Names& names, std::function<QString(const RecordLine&)> state, QWidget* parent = nullptr);

  QPushButton* add_button(const QString& object_name, const QString& text);
  /// Empty if there is none.
  [[nodiscard]] const QString& current() const { return current_; }
  void show_record(const QString& id);
  void find();
  /// Asked when the record on screen is not in the list any more: true keeps it there.
  void set_hold(std::function<bool(const QString& id)> hold) { hold_ = std::move(hold); }
  /// Goes on to a record that is there, unless that is held.
  void look_again() { keep_selection(); }
  [[nodiscard]] QTableView& table() { return *table_; }

 signals:
  /// Another record is on screen, or none.
  void chosen();

 protected:
  void hideEvent(QHideEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  void choose();
  void keep_selection();

  RecordListModel* list_;
  QSortFilterProxyModel* found_;
  QLineEdit* find_;
  FlowLine* tools_;
  QTableView* table_;
  QLabel* empty_;
  QString current_;
  std::function<bool(const QString& id)> hold_;
};

}  // namespace gritwright::desktop
