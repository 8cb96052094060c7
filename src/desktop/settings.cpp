#include "settings.hpp"

#include <QLocale>
#include <QSettings>
#include <algorithm>

namespace gritwright::desktop {

namespace {

constexpr int least_text_percent = 100;
constexpr int most_text_percent = 200;

QString name_of(std::optional<Theme> theme) {
  if (!theme) return QStringLiteral("system");
  switch (*theme) {
    case Theme::light: return QStringLiteral("light");
    case Theme::dark: return QStringLiteral("dark");
    case Theme::high_contrast: return QStringLiteral("high_contrast");
  }
  return QStringLiteral("system");
}

}  // namespace

Settings read_settings() {
  const QSettings stored;
  Settings settings;
  // Units and paper go with the country, whatever language is chosen.
  const bool us = QLocale::system().measurementSystem() == QLocale::ImperialUSSystem;
  settings.language = stored.value(QStringLiteral("language")).toString();
  settings.units = stored.value(QStringLiteral("units"), us ? QStringLiteral("us") : QStringLiteral("metric")).toString() == QStringLiteral("us")
                       ? UnitSystem::us
                       : UnitSystem::metric;
  const QString theme = stored.value(QStringLiteral("theme")).toString();
  for (const Theme one : {Theme::light, Theme::dark, Theme::high_contrast}) {
    if (theme == name_of(one)) settings.theme = one;
  }
  settings.text_percent = std::clamp(stored.value(QStringLiteral("text_percent"), least_text_percent).toInt(), least_text_percent, most_text_percent);
  settings.first_start = stored.value(QStringLiteral("first_start"), true).toBool();
  settings.letter_paper = stored.value(QStringLiteral("letter_paper"), us).toBool();
  settings.laboratory_figures = stored.value(QStringLiteral("laboratory_figures"), false).toBool();
  settings.backups_folder = stored.value(QStringLiteral("backups_folder")).toString();
  return settings;
}

void write_settings(const Settings& settings) {
  QSettings stored;
  stored.setValue(QStringLiteral("language"), settings.language);
  stored.setValue(QStringLiteral("units"), settings.units == UnitSystem::us ? QStringLiteral("us") : QStringLiteral("metric"));
  stored.setValue(QStringLiteral("theme"), name_of(settings.theme));
  stored.setValue(QStringLiteral("text_percent"), settings.text_percent);
  stored.setValue(QStringLiteral("first_start"), settings.first_start);
  stored.setValue(QStringLiteral("letter_paper"), settings.letter_paper);
  stored.setValue(QStringLiteral("laboratory_figures"), settings.laboratory_figures);
  stored.setValue(QStringLiteral("backups_folder"), settings.backups_folder);
}

}  // namespace gritwright::desktop
