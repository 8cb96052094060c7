#include "translation.hpp"

#include <QApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

namespace gritwright::desktop {

void install_translations(QApplication& application, const QLocale& locale) {
  const QString folder = QStringLiteral(":/i18n");
  auto* own = new QTranslator(&application);
  if (own->load(locale, QStringLiteral("gritwright"), QStringLiteral("_"), folder) || own->load(QStringLiteral("gritwright_en"), folder)) {
    QApplication::installTranslator(own);
  }
  auto* of_qt = new QTranslator(&application);
  if (of_qt->load(locale, QStringLiteral("qtbase"), QStringLiteral("_"), QLibraryInfo::path(QLibraryInfo::TranslationsPath))) QApplication::installTranslator(of_qt);
}

}  // namespace gritwright::desktop
