#pragma once
#include <QAbstractTableModel>

#include "bench.hpp"
#include "typed_text.hpp"

namespace gritwright::desktop {

/// The current component's stack as a table: one sieve a row, the pan last. Texts as typed, passing as computed, checks in words.
class SieveTableModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { sieve, retained, tare, net, second, third, passing, check, column_count };

  explicit SieveTableModel(Bench& bench, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;

  [[nodiscard]] int pan_row() const;
  [[nodiscard]] bool is_shown(int column) const;

  /// Puts what was copied from a spreadsheet into the stack from `at` on: one column fills that column down to the pan, two
  /// columns replace openings and amounts, three openings, gross and tare. Extra rows are added. One undo step. Says in words
  /// what it did; nothing is changed if there is nothing to take.
  QString paste(const QString& text, const QModelIndex& at);

  /// The sieve as it was typed, its number where it was not, or the pan.
  [[nodiscard]] QString row_name(int row) const;

  /// Adds a column for a further sample of the same bag, at most two; takes the last one away.
  void add_replicate();
  void remove_replicate();

  /// Inserts an empty sieve above `row`, removes the sieve `row`; the pan stays.
  void insert_sieve(int row);
  void remove_sieve(int row);

 private:
  void refresh();
  [[nodiscard]] const ComponentSheet* component() const;
  [[nodiscard]] const ComponentEvaluation* evaluation() const;
  [[nodiscard]] const PanText& pan_text(int row) const;
  [[nodiscard]] QString fault_text(int row, int column) const;
  [[nodiscard]] QString row_checks(int row) const;
  [[nodiscard]] QString replicate_text(int row, std::size_t replicate) const;
  [[nodiscard]] std::optional<double> passing_share(int row) const;
  [[nodiscard]] Kind kind_of(int column) const;

  Bench& bench_;
  int shown_rows_ = 0;
};

}  // namespace gritwright::desktop
