#pragma once
#include <QObject>
#include <QTimer>
#include <memory>

#include "bench_ranges.hpp"
#include "workers/background_job.hpp"

namespace gritwright::desktop {

/// Keeps the ranges of what lies on the bench. While something moves they come from a small sample at once, and from the whole one
/// as soon as it stands still. What is kept always belongs to what is asked.
class RangeKeeper : public QObject {
  Q_OBJECT
 public:
  explicit RangeKeeper(Bench& bench, QObject* parent = nullptr);

  /// The mix as it is now; null without a mix.
  const BenchRanges* mix();
  /// The finished test on screen; null until it stood still and was worked out, and without one.
  const TestRanges* test();
  [[nodiscard]] BackgroundJob& mix_job() { return mix_job_; }
  [[nodiscard]] BackgroundJob& test_job() { return test_job_; }
  /// Starts the whole sample now; for tests and for pictures of the window.
  void finish();

 signals:
  void mix_changed();
  void test_changed();

 private:
  void work_out_mix();
  void work_out_test();

  Bench& bench_;
  std::shared_ptr<const BenchRanges> mix_;
  std::shared_ptr<const UncertainMix> drawn_;  ///< what `mix_` was drawn from
  std::shared_ptr<const TestRanges> test_;
  std::optional<TestQuestion> asked_of_test_;
  QTimer stands_still_;
  QTimer test_stands_still_;
  BackgroundJob mix_job_;
  BackgroundJob test_job_;
};

}  // namespace gritwright::desktop
