#pragma once
#include <QObject>
#include <optional>
#include <vector>

class QTableView;

namespace gritwright::desktop {

/// Keeps a table from scrolling sideways: where its columns want more room than there is, some give way, and the rows get a second line for their words.
class ColumnFit : public QObject {
 public:
  /// `giving`: columns of words, which can be read in two lines. `taking`: the one that takes what room is left, unless the table stretches its last. Lives as
  /// long as the table.
  ColumnFit(QTableView& table, std::vector<int> giving, std::optional<int> taking = {});

  /// Pixels each column wants, by its number; of one that takes the rest, what it should at least have.
  void set_wanted(std::vector<int> widths);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fit();

  QTableView& table_;
  std::vector<int> giving_;
  std::optional<int> taking_;
  std::vector<int> wanted_;
};

}  // namespace gritwright::desktop
