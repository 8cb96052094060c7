#pragma once
#include <QObject>
#include <memory>

#include "main_window.hpp"
#include "models/record_book.hpp"

namespace gritwright::desktop {

/// A window on a record, made anew when another file, or a backup in the file's place, is to be opened: nothing of the old file may be
/// held then.
class RecordSession : public QObject {
  Q_OBJECT
 public:
  /// `usual` is the record that is gone back to. The bench must outlive the session.
  RecordSession(Bench& bench, QString usual, QString backups_folder, QObject* parent = nullptr);
  ~RecordSession() override;

  void open(const QString& file, Access access = Access::write);
  /// Puts a backup in the place of the record that is open, or that could not be opened; what was there is kept beside it.
  void restore(const QString& backup);

  [[nodiscard]] MainWindow& window() { return *window_; }
  /// Null where the file could not be opened.
  [[nodiscard]] RecordBook* record() { return record_.get(); }
  [[nodiscard]] QString file() const { return file_; }
  [[nodiscard]] QString usual_file() const { return usual_; }

 signals:
  /// A window was made that is not yet shown.
  void window_made(MainWindow* window);

 private:
  void make_window(const Problems& problems);
  void close();
  /// What lies on the bench stays; the numbers that tie it to the record that was open would mean other bags and pots in the next.
  void forget_numbers();

  Bench& bench_;
  QString usual_;
  QString backups_folder_;
  QString file_;
  std::unique_ptr<RecordBook> record_;
  std::unique_ptr<MainWindow> window_;
};

}  // namespace gritwright::desktop
