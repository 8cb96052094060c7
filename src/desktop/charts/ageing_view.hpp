#pragma once
#include <QTimer>
#include <QWidget>
#include <memory>

#include "models/bench_ageing.hpp"
#include "workers/background_job.hpp"

namespace gritwright::desktop {

/// The years to come: air of the mix on the bench in its pot by season with its range, for both fates of the crumbs, and its grading in
/// each. Worked out beside the window while it is looked at: while something moves from a small sample, which follows as fast as it can, and
/// from the whole one as soon as it stands still.
class AgeingView : public QWidget {
  Q_OBJECT
 public:
  explicit AgeingView(Bench& bench, QWidget* parent = nullptr);

  /// What is shown, while something moves maybe of a moment ago; null until it is worked out, and where nothing can be foretold.
  [[nodiscard]] const BenchAgeing* ageing() const { return ageing_.get(); }
  [[nodiscard]] BackgroundJob& job() { return job_; }
  [[nodiscard]] BackgroundJob& moving_job() { return moving_job_; }
  /// Begins to work it out while it or its table is in front, unless it is known or under way.
  void ask();
  /// Works it out now, for tests and for pictures of the window.
  void finish();
  [[nodiscard]] QSize minimumSizeHint() const override;
  /// Plots, which with their axes are in sight at once where that is possible, and every line of their words.
  [[nodiscard]] int heightForWidth(int width) const override;

 signals:
  void aged();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  void work_out();
  void tell();
  void follow();
  void show_ageing(std::shared_ptr<const BenchAgeing> ageing);
  [[nodiscard]] QString sentence() const;
  /// All that stands below the plots.
  [[nodiscard]] QString words() const;

  Bench& bench_;
  std::shared_ptr<const BenchAgeing> ageing_;
  std::optional<AgeingQuestion> asked_;
  bool answered_ = false;  ///< by the whole sample; also where nothing can be foretold
  QTimer stands_still_;
  BackgroundJob job_;
  BackgroundJob moving_job_;
};

}  // namespace gritwright::desktop
