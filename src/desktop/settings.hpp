#pragma once
#include <QString>
#include <optional>

#include "gritwright/report/quantity_text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

/// What the user prefers, kept between runs. No theme: follow the system.
struct Settings {
  QString language;  ///< a code of `languages`; empty: the system's
  UnitSystem units = UnitSystem::metric;
  std::optional<Theme> theme;
  int text_percent = 100;  ///< 100..200 of the system's size
  bool first_start = true;
  bool letter_paper = false;         ///< else A4
  bool laboratory_figures = false;   ///< those a soils laboratory reports
  QString backups_folder;            ///< empty: beside the record
};

[[nodiscard]] Settings read_settings();
void write_settings(const Settings& settings);

}  // namespace gritwright::desktop
