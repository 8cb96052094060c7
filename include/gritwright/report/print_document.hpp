#pragma once
// What is printed, as plain data: a test reads the data, the desktop lays it out on pages.

#include <string>
#include <variant>
#include <vector>

namespace gritwright {

struct PrintText {
  std::string text;
  bool strong = false;
};

/// Lines with an open box to tick.
struct PrintTicks {
  std::vector<std::string> lines;
};

/// Rows as wide as the heading; columns are flush left unless `numbers` says so.
struct PrintTable {
  std::vector<std::string> heading;
  std::vector<std::vector<std::string>> rows;
  std::vector<bool> numbers;
  int written_by_hand = -1;  ///< column that gets a quarter of the line, less where the words of the others need it
};

/// How a line or an area of a drawing looks; all can be told apart in grey.
enum class Ink { outline, thin, dashed, grey, hatched };

struct DrawnPoint {
  double x_mm = 0;
  double y_mm = 0;  ///< downward
};
/// A line along `points`; closed and filled where the ink is `grey` or `hatched`.
struct DrawnLine {
  std::vector<DrawnPoint> points;
  Ink ink = Ink::outline;
};
struct DrawnText {
  DrawnPoint at;  ///< left end of its base line
  std::string text;
};
/// A picture to scale in lines.
struct PrintDrawing {
  std::string title;
  double width_mm = 0;
  double height_mm = 0;
  std::vector<DrawnLine> lines;
  std::vector<DrawnText> texts;
};

using PrintBlock = std::variant<PrintText, PrintTicks, PrintTable, PrintDrawing>;

/// A section stays on one page where it fits on one.
struct PrintSection {
  std::string title;
  std::vector<PrintBlock> blocks;
  bool new_page = false;  ///< whatever room is left on the page before
};

struct PrintDocument {
  std::string title;
  std::string subtitle;
  std::string foot;  ///< on every page, beside the page number
  std::vector<PrintSection> sections;
};

/// Labels of one size; what does not fit is set smaller, never cut.
struct PrintLabel {
  std::string heading;
  std::vector<std::string> lines;
};
struct LabelSheet {
  std::string foot;
  std::vector<PrintLabel> labels;
};

}  // namespace gritwright
