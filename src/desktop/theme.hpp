#pragma once
#include <QColor>
#include <QPalette>
#include <array>

class QApplication;

namespace gritwright::desktop {

enum class Theme { light, dark, high_contrast };

/// How one curve looks: never told by colour alone.
struct CurveLook {
  QColor colour;
  Qt::PenStyle line;
  enum class Marker { circle, square, triangle, diamond, cross, pentagon } marker;
};

struct ThemeColours {
  QPalette palette;
  QColor muted;       ///< secondary text, still 4.5:1
  QColor fault;       ///< text of faults
  QColor fault_fill;  ///< behind a faulty cell
  QColor caution_fill;
  QColor card;        ///< behind groups of fields
  QColor card_edge;
  QColor field_edge;  ///< around what can be typed into or moved, 3:1 against the window
  QColor grid;        ///< lines of a chart
  QColor band;        ///< the wanted band
  QColor blend;       ///< the mix's own curve
  std::array<CurveLook, 6> curves;  ///< by component; told apart by the colour-blind by lightness, line and marker
};

[[nodiscard]] const ThemeColours& colours(Theme theme);
/// The theme that apply_theme set last.
[[nodiscard]] const ThemeColours& current_colours();

/// While it lives, pictures are drawn in the light theme: ink is for what is drawn, not for the ground.
class OnPaper {
 public:
  OnPaper();
  ~OnPaper();
  OnPaper(const OnPaper&) = delete;
  OnPaper& operator=(const OnPaper&) = delete;

 private:
  Theme before_;
};

/// Style, palette and text size (percent of the system's) of the whole program.
void apply_theme(QApplication& application, Theme theme, int text_percent);

/// What the desktop asks for by its palette: high contrast where text stands out from the window as black from white, which no ordinary
/// palette does; else dark if its window is darker than its text.
[[nodiscard]] Theme system_theme(const QPalette& palette);

/// Contrast of two colours, 1..21. Source: WCAG 2.1, relative luminance.
[[nodiscard]] double contrast(const QColor& a, const QColor& b);

}  // namespace gritwright::desktop
