#pragma once
#include <QTableView>

namespace gritwright::desktop {

class Bench;
class SieveTableModel;

/// The stack to type into: a figure starts an editor, Enter goes to the next pan, Tab to the next cell, paste fills the stack,
/// and every sign typed is computed at once.
class SieveTable : public QTableView {
  Q_OBJECT
 public:
  explicit SieveTable(Bench& bench, QWidget* parent = nullptr);

  [[nodiscard]] SieveTableModel& stack() { return *model_; }

 public slots:
  void paste();
  void copy();
  void insert_sieve();
  void remove_sieve();
  void clear_cells();

 signals:
  void current_row_changed(int row);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void changeEvent(QEvent* event) override;
  /// By the keyboard: with all its rows, the caution above can be scrolled to.
  void focusInEvent(QFocusEvent* event) override;
  QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;

 private:
  void go_to_next_pan();
  void fit_columns();
  void fit_rows();

  Bench& bench_;
  SieveTableModel* model_;
};

}  // namespace gritwright::desktop
