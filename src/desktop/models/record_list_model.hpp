#pragma once
#include <QAbstractTableModel>
#include <functional>
#include <list>
#include <optional>
#include <vector>

#include "gritwright/report/quantity_text.hpp"
#include "record_book.hpp"

namespace gritwright::desktop {

/// Records of one kind as a list, newest first; bags with their tests and stock. Only the rows that are looked at are read, so that a
/// record of many years opens as quickly as a new one.
class RecordListModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum class Column { id, title, day, tests, stock, state };

  /// What a dragged bag or fraction is handed over as: its id in UTF-8.
  static constexpr const char* bag_format = "application/x-gritwright-bag";

  RecordListModel(RecordBook& book, RecordKind kind, std::vector<Column> columns, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  Qt::ItemFlags flags(const QModelIndex& index) const override;
  QStringList mimeTypes() const override;
  QMimeData* mimeData(const QModelIndexList& indexes) const override;

  [[nodiscard]] RecordRef ref_at(int row) const;
  /// -1 if it is not in the list.
  [[nodiscard]] int row_of(const QString& id) const;

  /// A list that is out of sight is read again only when it comes back.
  void set_in_sight(bool in_sight);
  void set_units(UnitSystem units);
  void set_filter(ListFilter filter);
  /// Narrows the list to what has these words, found by their beginnings.
  void set_words(const QString& words);
  /// What Column::state says of a record.
  void set_state(QString heading, std::function<QString(const RecordLine&)> text, bool is_figure = false);

 private:
  /// Rows that follow each other, as they were read.
  struct Page {
    int number = 0;
    std::vector<RecordLine> lines;
    std::vector<QString> stocks{};  ///< as shown, of each line; null where it was not looked at yet
  };

  /// Of a line that `line_at` gave last.
  [[nodiscard]] QString stock_shown(const RecordLine& line) const;
  [[nodiscard]] QString state_shown(const RecordLine& line) const;
  void record_changed();
  void read_changes();
  /// Reads what is in sight again; `changed` is all that changed since the last reading, where that is known.
  void read(const std::optional<std::vector<RecordRef>>& changed = {});
  /// Whether the litres in the list are others where these records are.
  [[nodiscard]] bool hang_on(const std::vector<RecordRef>& changed) const;
  [[nodiscard]] bool keeps_count(const std::vector<RecordRef>& changed) const;
  /// Has painted anew what differs from `before`, its rows being the same records.
  void tell_changed_rows(const std::list<Page>& before);
  [[nodiscard]] Page read_page(int number) const;
  /// Carries over what was worked out of lines that stayed the same.
  static void keep_stocks(const Page& before, Page& now);
  /// Null if it can't be read.
  [[nodiscard]] const RecordLine* line_at(int row) const;

  RecordBook& book_;
  RecordKind kind_;
  std::vector<Column> columns_;
  int row_count_ = 0;
  std::int64_t seen_revision_ = 0;
  mutable std::list<Page> pages_;  ///< those looked at last, newest first
  ListFilter filter_;
  QString state_heading_;
  std::function<QString(const RecordLine&)> state_;
  bool state_is_figure_ = false;
  bool in_sight_ = true;
  bool stale_ = false;
  UnitSystem units_ = UnitSystem::metric;
};

}  // namespace gritwright::desktop
