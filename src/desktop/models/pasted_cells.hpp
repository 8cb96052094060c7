#pragma once
#include <QString>
#include <QStringList>
#include <vector>

namespace gritwright::desktop {

/// What lay on the clipboard, as cells. Headings and empty lines are gone; in a single column an empty line between others is an empty cell.
struct PastedCells {
  std::vector<QStringList> rows;
  int columns = 0;  ///< of the widest row
  QStringList below_pan;  ///< lines that are no part of the stack: its sum, a remark
  /// True if the row's first cell names the pan.
  [[nodiscard]] bool is_pan(std::size_t row) const;
};

/// Splits at tabs, else at semicolons, else at runs of two or more spaces; a comma is a decimal mark unless a comma stands
/// between two cells of every line that also use points.
[[nodiscard]] PastedCells pasted_cells(const QString& text);

}  // namespace gritwright::desktop
