#pragma once
#include <QAbstractTableModel>
#include <QString>
#include <optional>

#include "gritwright/domain/material.hpp"
#include "gritwright/workbook/exchange.hpp"
#include "models/record_book.hpp"
#include "workers/background_job.hpp"

namespace gritwright::desktop {

/// What of a file would become records: read and looked at in a worker, through a connection of its own.
class RecordImport : public QObject {
  Q_OBJECT
 public:
  struct Request {
    QString file;
    std::optional<RecordKind> kind;  ///< of a list; absent: as its columns say
    bool replace = false;            ///< records that differ take the place of those here
  };

  RecordImport(RecordBook& book, const Catalogue& catalogue, QObject* parent = nullptr);

  /// False, and nothing is looked at, while records are being taken in: their answer would be dropped.
  bool look(const Request& request);
  /// Takes in what was last looked at, as one step; only where nothing stands against it.
  void take_in();

  [[nodiscard]] const Request& request() const { return request_; }
  [[nodiscard]] const ImportPreview& preview() const { return preview_; }
  /// Of the file and of its rows, in the order of the file.
  [[nodiscard]] const Problems& problems() const { return problems_; }
  [[nodiscard]] std::size_t coming() const;
  [[nodiscard]] bool can_take_in() const { return !job_.is_running() && problems_.empty() && coming() > 0; }
  /// Records are being taken in.
  [[nodiscard]] bool is_taking_in() const { return job_.is_running() && taking_in_; }
  [[nodiscard]] BackgroundJob& job() { return job_; }

 signals:
  void looked();
  void taken_in(int records);

 private:
  RecordBook& book_;
  const Catalogue& catalogue_;
  Request request_;
  std::vector<IdentifiedRecord> records_;
  ImportPreview preview_;
  Problems problems_;
  bool taking_in_ = false;  ///< what runs or ran last is no look
  BackgroundJob job_;
};

/// The records of a preview: number, what they are, and what becomes of them.
class ImportTableModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  using QAbstractTableModel::QAbstractTableModel;
  void show(const ImportPreview& preview, bool replaces);

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  std::vector<ImportLine> lines_;
  bool replaces_ = false;
};

}  // namespace gritwright::desktop
