#pragma once
#include <QWidget>
#include <optional>

#include "models/record_book.hpp"
#include "models/record_list_model.hpp"

class QLabel;
class QLineEdit;
class QListWidget;
class QSortFilterProxyModel;
class QTableView;

namespace gritwright::desktop {

/// Everything that happened, by date; narrowed to one bag, mix or tree and what stands in its grain; a line to write down more.
class LogPage : public QWidget {
  Q_OBJECT
 public:
  explicit LogPage(RecordBook& book, QWidget* parent = nullptr);

  void find();
  [[nodiscard]] QTableView& table() { return *table_; }
  void write_down();
  /// Narrows the log to one record and shows what it is linked to.
  void show_about(const QString& id);

 protected:
  void changeEvent(QEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  void fit_columns();
  QLayout* tools();
  QLayout* writing_line();
  QWidget* linked_side();
  void narrow();
  void refresh_links();
  /// The record of that printable id, of whatever kind.
  [[nodiscard]] std::optional<RecordRef> record_called(const QString& id) const;

  RecordBook& book_;
  RecordListModel* list_;
  QSortFilterProxyModel* found_;
  QTableView* table_ = nullptr;
  QLineEdit* find_ = nullptr;
  QLineEdit* about_ = nullptr;
  QLineEdit* from_ = nullptr;
  QLineEdit* to_ = nullptr;
  QLabel* about_fault_ = nullptr;
  QLineEdit* day_ = nullptr;
  QLineEdit* text_ = nullptr;
  QLabel* writing_fault_ = nullptr;
  QLabel* links_title_ = nullptr;
  QListWidget* links_ = nullptr;
};

}  // namespace gritwright::desktop
