#pragma once
#include <QWidget>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "models/mix_comparison.hpp"
#include "workers/background_job.hpp"

class QProgressBar;
class QPushButton;
class QScrollArea;

namespace gritwright::desktop {

class ComparisonPicture;

/// Mixes side by side in the pot of the bench: a small curve and a bar of air, water and grain for each. Worked out beside the window.
class ComparisonView : public QWidget {
  Q_OBJECT
 public:
  explicit ComparisonView(Bench& bench, QWidget* parent = nullptr);

  /// Where the mixes of the record come from: they are read when the comparison is looked at. The one on the bench stands first by itself.
  void set_kept(std::function<std::vector<KeptMix>()> read);
  /// They changed.
  void forget_kept();
  [[nodiscard]] const Comparison& comparison() const { return comparison_; }
  [[nodiscard]] BackgroundJob& job() { return *job_; }
  /// The picture alone, without progress bar and button.
  [[nodiscard]] QWidget& picture();

 signals:
  void compared();

 protected:
  void showEvent(QShowEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void start();

  Bench& bench_;
  std::function<std::vector<KeptMix>()> read_kept_;
  std::optional<std::vector<KeptMix>> kept_;
  Comparison comparison_;
  ComparisonPicture* picture_;
  QWidget* working_;
  QProgressBar* progress_;
  BackgroundJob* job_;
};

}  // namespace gritwright::desktop
