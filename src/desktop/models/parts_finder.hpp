#pragma once
#include <QObject>
#include <QTimer>
#include <functional>
#include <memory>
#include <stop_token>

#include "find_results.hpp"
#include "workers/background_job.hpp"

namespace gritwright::desktop {

/// Searches recipes while the inputs change. The last answer is kept, and is stale as long as it answers another question.
class PartsFinder : public QObject {
  Q_OBJECT
 public:
  explicit PartsFinder(Bench& bench, QObject* parent = nullptr);
  ~PartsFinder() override;

  /// `read` is called when the shelf is needed; forget_shelf() when the record changed.
  void set_shelf(std::function<Shelf()> read);
  void forget_shelf();
  /// Only a finder in view searches.
  void set_active(bool active);

  [[nodiscard]] const FindSetup& setup() const { return setup_; }
  [[nodiscard]] const Shelf& shelf() const { return shelf_; }
  /// Null before the first answer.
  [[nodiscard]] const FoundParts* found() const { return found_.get(); }
  [[nodiscard]] bool is_stale() const;
  [[nodiscard]] BackgroundJob& job() { return job_; }

  /// Searches now what is asked now.
  void search();
  /// Ends the search that runs; what it has found so far is shown, unproven.
  void cancel();

 signals:
  void setup_changed();
  void found_changed();   ///< or became stale or fresh
  void progressed(int percent, int stage);

 private:
  void refresh();

  Bench& bench_;
  std::function<Shelf()> read_shelf_;
  Shelf shelf_;
  bool shelf_known_ = false;
  bool active_ = false;
  FindSetup setup_;
  std::shared_ptr<const FoundParts> found_;
  std::shared_ptr<const DesignProblem> asked_;  ///< of the search that runs or was stopped
  std::stop_source enough_;
  QTimer wait_;
  BackgroundJob job_;
};

}  // namespace gritwright::desktop
