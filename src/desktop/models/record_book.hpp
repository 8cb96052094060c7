#pragma once
#include <QObject>
#include <QString>
#include <functional>
#include <memory>
#include <optional>

#include "gritwright/workbook/open_workbook.hpp"
#include "pot_test_records.hpp"

namespace gritwright::desktop {

/// The open workbook as the pages see it: they ask it, change it through here, and hear of every change by whomsoever.
class RecordBook : public QObject {
  Q_OBJECT
 public:
  /// Opens or creates the file; backups go to `backups_folder`, beside it where that is empty.
  [[nodiscard]] static Result<std::unique_ptr<RecordBook>> open(const QString& file, const QString& backups_folder = {}, Access access = Access::write);

  [[nodiscard]] const OpenWorkbook& workbook() const { return workbook_; }
  /// What its pot tests taught about its mixes.
  [[nodiscard]] const std::vector<MixCalibration>& calibrations() const { return calibrations_.of(workbook_); }
  [[nodiscard]] QString file() const;
  /// Names this record among the settings, where what is typed and not yet saved is kept. A moved file keeps its name; a copy beside the
  /// original has one of its own.
  [[nodiscard]] const QString& settings_key() const { return settings_key_; }
  [[nodiscard]] bool is_read_only() const { return workbook_.access() == Access::read_only; }
  /// Looks for changes by others and for what the workbook has to say, as it does by itself twice a second.
  void look_for_changes();

  /// Saves a change; what was refused is told and nothing happens. True if it was saved.
  bool apply(Change change);
  /// Lets `work` change the workbook itself, as the stock's own entries do; its problems where it was refused.
  Problems change(const std::function<Result<Applied>(OpenWorkbook&)>& work);
  /// The id of what was added, empty if it was refused. `log` tells it in the grower's words; without it the label does.
  template <class R>
  QString add(R record, const QString& label, const QString& id = {}, std::optional<LogEntry> log = {}) {
    return added(Edit{RecordRef{kind_of<R>, id.toStdString()}, 0, Record(std::move(record))}, label, std::move(log));
  }
  template <class R>
  bool replace(const Stored<R>& was, R now, const QString& label, const QString& merge_key = {}) {
    if (was.record == now) return true;
    return changed_to(Edit{ref_to(was.id), was.revision, Record(std::move(now))}, label, merge_key);
  }
  template <class R>
  bool remove(const Stored<R>& was, const QString& label) {
    return changed_to(Edit{ref_to(was.id), was.revision, std::nullopt}, label, {});
  }
  /// Does what reads the record; where its file fails that is told. False then.
  template <class Work>
  bool attempt(Work work) {
    try {
      work();
      return true;
    } catch (const WorkbookTrouble& trouble) {
      tell(trouble);
      return false;
    }
  }
  void end_typing() { workbook_.end_merging(); }

  void undo();
  void redo();
  /// Labels of the next steps, empty where there is none.
  [[nodiscard]] QString undo_text() const;
  [[nodiscard]] QString redo_text() const;

 signals:
  void changed();
  /// An undo or redo is wanted: what was typed and waits for the end of typing is a step of its own before it.
  void undo_wanted();
  /// An undo or redo from this window is about to be shown.
  void undone();
  void told(const QString& sentence);

 private:
  explicit RecordBook(OpenWorkbook workbook);
  QString added(Edit edit, const QString& label, std::optional<LogEntry> log);
  bool changed_to(Edit edit, const QString& label, const QString& merge_key);
  bool finish(const Result<Applied>& applied);
  void announce();
  void tell(const WorkbookTrouble& trouble);

  OpenWorkbook workbook_;
  mutable CalibrationKeeper calibrations_;
  QString settings_key_;
  std::int64_t seen_revision_ = 0;
  QString trouble_;  ///< told last, while it lasts
};

/// A record that is looked for is not there, as when it was deleted in another window.
[[nodiscard]] Problem not_there(const RecordRef& ref);

/// Today as ISO 8601.
[[nodiscard]] std::string today();

/// A log line for something that happened to `about`.
[[nodiscard]] LogEntry event_about(const RecordRef& about, const QString& text, const std::string& day);

}  // namespace gritwright::desktop
