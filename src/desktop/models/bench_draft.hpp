#pragma once
#include <QElapsedTimer>
#include <QLockFile>
#include <QObject>
#include <QString>
#include <QTimer>
#include <memory>
#include <optional>

#include "bench.hpp"

namespace gritwright::desktop {

// What lies on the bench, half-typed figures and faults included, from one run to the next. It is no record: only the desktop
// reads it, and a draft of another version is set aside, never written over.

/// Writes the draft whole or not at all. False if the file could not be written.
[[nodiscard]] bool write_draft(const QString& file, const BenchState& state);

/// Empty if there is none, or none that this version reads.
[[nodiscard]] std::optional<BenchState> read_draft(const QString& file);

/// Moves a draft that can't be read out of the way of the next one, to FILE.unread-1 and on. True if nothing is in the way any
/// more, so that writing loses nothing.
[[nodiscard]] bool set_aside_unreadable_draft(const QString& file);

/// Keeps what lies on the bench in a folder from one run to the next: for each record by itself, since numbers of bags and pots mean
/// something in one record only, and for each of several windows at once by itself, so that the last one closed takes nothing from the others.
class BenchKeeper : public QObject {
 public:
  /// The usual place of this user's drafts.
  [[nodiscard]] static QString usual_folder();

  explicit BenchKeeper(Bench& bench, QString folder = usual_folder());
  ~BenchKeeper() override;

  /// From here on the bench is that of a record file. What was left on it is laid out again; where nothing was, what lies there stays.
  void turn_to(const QString& record);
  /// Writes now; tells on the bench where it can't.
  void save();

 private:
  Bench& bench_;
  QString folder_;
  QString record_;
  QString file_;
  std::unique_ptr<QLockFile> lock_;
  bool may_write_ = false;
  QTimer saving_;
  QElapsedTimer unsaved_since_;
};

}  // namespace gritwright::desktop
