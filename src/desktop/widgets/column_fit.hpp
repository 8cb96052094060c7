#pragma once
#include <QObject>
#include <cstddef>
#include <functional>
#include <optional>
#include <utility>
#include <vector>

class QTableView;

namespace gritwright::desktop {

/// Keeps a table from scrolling sideways: where its columns want more room than there is, some give way, the widest first, and a row gets as many lines as its words
/// then need.
class ColumnFit : public QObject {
 public:
  /// `giving`: columns of words, which can be read in several lines. `taking`: the one that takes what room is left, unless the table stretches its last. Lives as
  /// long as the table.
  ColumnFit(QTableView& table, std::vector<int> giving, std::optional<int> taking = {});

  /// Pixels each column wants, by its number; of one that takes the rest, what it should at least have. `least`: what those that do not give can do with, with their
  /// headings in two lines, before anything has to be scrolled to.
  void set_wanted(std::vector<int> widths, std::vector<int> least = {});
  /// The same for a table all of whose columns give, with what they want while their headings are in two lines: that comes before any words are broken.
  void set_wanted_by_headings(std::vector<int> in_one_line, std::vector<int> in_two_lines);
  /// Called when columns and rows have their sizes.
  void when_fitted(std::function<void()> call) { when_fitted_ = std::move(call); }
  /// What all columns need when those that can have given way.
  [[nodiscard]] int least_width() const;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fit();
  [[nodiscard]] int least(std::size_t column, int signs) const;
  [[nodiscard]] std::vector<int> widths_within(int room, int signs) const;
  void spread_rest(std::vector<int>& widths, int rest) const;
  [[nodiscard]] int lines_of(int row) const;
  void set_rows();
  void measure_words();

  QTableView& table_;
  std::vector<int> giving_;
  std::optional<int> taking_;
  std::vector<int> wanted_;
  std::vector<int> whole_headings_;  ///< wanted while there is room for them in one line
  std::vector<int> least_;
  std::function<void()> when_fitted_;
  std::vector<int> longest_words_;
};

}  // namespace gritwright::desktop
