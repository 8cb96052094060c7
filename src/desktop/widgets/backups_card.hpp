#pragma once
#include <QFrame>
#include <filesystem>
#include <optional>
#include <vector>

#include "gritwright/workbook/backups.hpp"
#include "workers/background_job.hpp"

class QLabel;
class QPushButton;
class QTableWidget;

namespace gritwright::desktop {

/// The backups of a record, newest first, each looked through in a worker, and the way back to one of them.
class BackupsCard : public QFrame {
  Q_OBJECT
 public:
  BackupsCard(std::filesystem::path record, std::filesystem::path folder, QWidget* parent = nullptr);

  /// Reads the folder and looks through what it holds anew.
  void refresh();
  [[nodiscard]] BackgroundJob& job() { return job_; }
  /// The newest that was found whole so far.
  [[nodiscard]] std::optional<BackupFile> newest_whole() const;

 signals:
  void restore_wanted(const QString& backup);
  void look_wanted(const QString& backup);
  /// One more backup was looked through.
  void looked_through();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  enum class State { waiting, whole, damaged };
  struct Row {
    BackupFile backup;
    State state = State::waiting;
    QString trouble;
  };
  void look_through_next();
  void show_rows();
  void show_buttons();
  void fit();
  [[nodiscard]] const Row* chosen() const;

  std::filesystem::path record_;
  std::filesystem::path folder_;
  BackgroundJob job_;
  std::vector<Row> rows_;
  QTableWidget* table_;
  QLabel* words_;
  QPushButton* restore_;
  QPushButton* look_;
};

/// "14 March 2026, 2.1 MB", in the reader's locale.
[[nodiscard]] QString backup_text(const BackupFile& backup);

}  // namespace gritwright::desktop
