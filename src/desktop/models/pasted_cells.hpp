#pragma once
#include <QString>
#include <QStringList>
#include <vector>

namespace gritwright::desktop {

/// What lay on the clipboard, as cells. Heading lines without a number and empty lines are gone.
struct PastedCells {
  std::vector<QStringList> rows;
  int columns = 0;  ///< of the widest row
  /// True if the row's first cell names the pan.
  [[nodiscard]] bool is_pan(std::size_t row) const;
};

/// Splits at tabs, else at semicolons, else at runs of two or more spaces; a comma is a decimal mark unless a comma stands
/// between two cells of every line that also use points.
[[nodiscard]] PastedCells pasted_cells(const QString& text);

}  // namespace gritwright::desktop
