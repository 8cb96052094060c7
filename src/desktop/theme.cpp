#include "theme.hpp"

#include <QApplication>
#include <QFont>
#include <cmath>

#include "theme_style.hpp"

namespace gritwright::desktop {

namespace {

using Marker = CurveLook::Marker;

struct Basics {
  const char* window;
  const char* base;
  const char* alternate;
  const char* text;
  const char* muted;
  const char* accent;
  const char* on_accent;
  const char* button;
  const char* edge;
};

QColor between(const QColor& ground, const QColor& ink) {
  constexpr double share = 0.3;
  const auto mixed = [](int from, int to) { return static_cast<int>(from + share * (to - from)); };
  return {mixed(ground.red(), ink.red()), mixed(ground.green(), ink.green()), mixed(ground.blue(), ink.blue())};
}

QPalette palette_of(const Basics& basics) {
  QPalette palette;
  const QColor text(basics.text);
  const QColor muted(basics.muted);
  palette.setColor(QPalette::Window, QColor(basics.window));
  palette.setColor(QPalette::WindowText, text);
  palette.setColor(QPalette::Base, QColor(basics.base));
  palette.setColor(QPalette::AlternateBase, QColor(basics.alternate));
  palette.setColor(QPalette::Text, text);
  palette.setColor(QPalette::PlaceholderText, muted);
  palette.setColor(QPalette::Button, QColor(basics.button));
  palette.setColor(QPalette::ButtonText, text);
  palette.setColor(QPalette::BrightText, text);
  palette.setColor(QPalette::Highlight, QColor(basics.accent));
  palette.setColor(QPalette::HighlightedText, QColor(basics.on_accent));
  palette.setColor(QPalette::Link, QColor(basics.accent));
  palette.setColor(QPalette::LinkVisited, QColor(basics.accent));
  palette.setColor(QPalette::ToolTipBase, QColor(basics.base));
  palette.setColor(QPalette::ToolTipText, text);
  palette.setColor(QPalette::Mid, QColor(basics.edge));
  palette.setColor(QPalette::Midlight, QColor(basics.edge));
  palette.setColor(QPalette::Light, QColor(basics.base));
  palette.setColor(QPalette::Dark, QColor(basics.edge));
  palette.setColor(QPalette::Shadow, QColor(basics.edge));
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::HighlightedText}) {
    palette.setColor(QPalette::Disabled, role, muted);
  }
  palette.setColor(QPalette::Disabled, QPalette::Highlight, QColor(basics.edge));
  // What is chosen where the keys are not stands back.
  palette.setColor(QPalette::Inactive, QPalette::Highlight, between(QColor(basics.base), QColor(basics.accent)));
  palette.setColor(QPalette::Inactive, QPalette::HighlightedText, text);
  return palette;
}

const ThemeColours& light_colours() {
  static const ThemeColours colours{
      palette_of({"#f5f4ef", "#fffefb", "#f1efe8", "#20241f", "#555c52", "#1d6350", "#ffffff", "#eae8df", "#c3c2b6"}),
      "#555c52", "#a1221b", "#fbe4df", "#f7edcf", "#fbfaf6", "#dcdacf", "#87867a", "#e3e1d8", "#d9e8df", "#20241f",
      {CurveLook{"#1b5c9e", Qt::SolidLine, Marker::circle}, CurveLook{"#b3470c", Qt::DashLine, Marker::square},
       CurveLook{"#00756a", Qt::DotLine, Marker::triangle}, CurveLook{"#86368c", Qt::DashDotLine, Marker::diamond},
       CurveLook{"#735a00", Qt::DashDotDotLine, Marker::cross}, CurveLook{"#a02355", Qt::CustomDashLine, Marker::pentagon}}};
  return colours;
}

const ThemeColours& dark_colours() {
  static const ThemeColours colours{
      palette_of({"#1d211f", "#161918", "#20251f", "#e9ece8", "#aab4ac", "#63c3a2", "#10201a", "#2a302d", "#454d48"}),
      "#aab4ac", "#ffa294", "#47241f", "#3d371f", "#222725", "#39413c", "#6f7b74", "#333a36", "#24392f", "#f2f4f1",
      {CurveLook{"#79b2f2", Qt::SolidLine, Marker::circle}, CurveLook{"#f0a068", Qt::DashLine, Marker::square},
       CurveLook{"#54cbb6", Qt::DotLine, Marker::triangle}, CurveLook{"#d89ae0", Qt::DashDotLine, Marker::diamond},
       CurveLook{"#d8bd48", Qt::DashDotDotLine, Marker::cross}, CurveLook{"#f48fb1", Qt::CustomDashLine, Marker::pentagon}}};
  return colours;
}

const ThemeColours& high_contrast_colours() {
  static const ThemeColours colours{
      // Hints and what can't be pressed are grey here too, or they would pass for what was typed and what can.
      palette_of({"#000000", "#000000", "#1f1f1f", "#ffffff", "#b3b3b3", "#ffe14d", "#000000", "#000000", "#ffffff"}),
      "#ffffff", "#ffb3a8", "#3a0000", "#2a2600", "#000000", "#ffffff", "#ffffff", "#5a5a5a", "#1f3d2f", "#ffffff",
      {CurveLook{"#8cc2ff", Qt::SolidLine, Marker::circle}, CurveLook{"#ffb37a", Qt::DashLine, Marker::square},
       CurveLook{"#6fe3cf", Qt::DotLine, Marker::triangle}, CurveLook{"#eab6f0", Qt::DashDotLine, Marker::diamond},
       CurveLook{"#ffe14d", Qt::DashDotDotLine, Marker::cross}, CurveLook{"#ff9ec4", Qt::CustomDashLine, Marker::pentagon}}};
  return colours;
}

Theme& theme_in_use() {
  static Theme theme = Theme::light;
  return theme;
}

double linear(double channel) { return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4); }

double luminance(const QColor& colour) {
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

}  // namespace

const ThemeColours& colours(Theme theme) {
  switch (theme) {
    case Theme::light: return light_colours();
    case Theme::dark: return dark_colours();
    case Theme::high_contrast: return high_contrast_colours();
  }
  return light_colours();
}

const ThemeColours& current_colours() { return colours(theme_in_use()); }

OnPaper::OnPaper() : before_(theme_in_use()) { theme_in_use() = Theme::light; }
OnPaper::~OnPaper() { theme_in_use() = before_; }

void apply_theme(QApplication& application, Theme theme, int text_percent) {
  static const double system_size = application.font().pointSizeF();
  theme_in_use() = theme;
  application.setStyle(new ThemeStyle);
  const ThemeColours& chosen = colours(theme);
  application.setPalette(chosen.palette);
  QFont font = application.font();
  font.setPointSizeF(system_size * text_percent / 100);
  application.setFont(font);
}

Theme system_theme(const QPalette& palette) {
  constexpr double as_black_from_white = 20.5;
  if (contrast(palette.color(QPalette::Window), palette.color(QPalette::WindowText)) >= as_black_from_white) return Theme::high_contrast;
  return luminance(palette.color(QPalette::Window)) < luminance(palette.color(QPalette::WindowText)) ? Theme::dark : Theme::light;
}

double contrast(const QColor& a, const QColor& b) {
  const double first = luminance(a) + 0.05;
  const double second = luminance(b) + 0.05;
  return first > second ? first / second : second / first;
}

}  // namespace gritwright::desktop
