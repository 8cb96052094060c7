#pragma once
#include <QWidget>
#include <vector>

#include "models/pot_test_records.hpp"
#include "picture_table.hpp"

namespace gritwright::desktop {

/// "12 pot tests: predicted air lies 1.3 points above the measured on average, 2.4 points root mean square", fine and coarse apart.
[[nodiscard]] QString score_sentence(const std::vector<ComparedTest>& tests);
[[nodiscard]] PictureTable score_table(const std::vector<ComparedTest>& tests);
[[nodiscard]] PictureTable score_data(const std::vector<ComparedTest>& tests);

/// Predicted against measured air of every pot test in the record; on the line the prediction was right.
class ScoreView : public QWidget {
  Q_OBJECT
 public:
  explicit ScoreView(QWidget* parent = nullptr);

  void set_tests(std::vector<ComparedTest> tests);
  [[nodiscard]] const std::vector<ComparedTest>& tests() const { return tests_; }
  [[nodiscard]] QSize minimumSizeHint() const override;

  [[nodiscard]] int heightForWidth(int width) const override;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  /// Of the plot in a view so wide: with its axes it is in sight at once, words may have to be scrolled to.
  [[nodiscard]] double side_of_plot(int width) const;

  std::vector<ComparedTest> tests_;
};

}  // namespace gritwright::desktop
