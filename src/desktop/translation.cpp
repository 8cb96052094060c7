#include "translation.hpp"

#include <QApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>
#include <algorithm>

namespace gritwright::desktop {

namespace {

// By these names a later language finds the former one's.
const char* const own_name = "texts_of_the_window";
const char* const qt_name = "texts_of_qt";

void replace_translator(QApplication& application, const char* name, const QLocale& locale, const QString& file, const QString& folder, const QString& otherwise) {
  delete application.findChild<QTranslator*>(QLatin1String(name), Qt::FindDirectChildrenOnly);
  auto* translator = new QTranslator(&application);
  translator->setObjectName(QLatin1String(name));
  if (translator->load(locale, file, QStringLiteral("_"), folder) || (!otherwise.isEmpty() && translator->load(otherwise, folder))) QApplication::installTranslator(translator);
}

}  // namespace

void install_translations(QApplication& application, const QLocale& locale) {
  replace_translator(application, own_name, locale, QStringLiteral("gritwright"), QStringLiteral(":/i18n"), QStringLiteral("gritwright_en"));
  replace_translator(application, qt_name, locale, QStringLiteral("qtbase"), QLibraryInfo::path(QLibraryInfo::TranslationsPath), {});
}

void use_language(QApplication& application, const QString& code) {
  const bool known = std::ranges::any_of(languages, [&](const Language& language) { return code == QLatin1String(language.code); });
  const QLocale system = QLocale::system();
  const QLocale locale = known ? QLocale(QLocale(code).language(), system.territory()) : system;
  QLocale::setDefault(locale);
  install_translations(application, locale);
}

}  // namespace gritwright::desktop
