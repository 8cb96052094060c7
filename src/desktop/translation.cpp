#include "translation.hpp"

#include <QApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>
#include <algorithm>
#include <string_view>
#include <utility>

#include "text.hpp"

namespace gritwright::desktop {

namespace {

// By these names a later language finds the former one's.
const char* const own_name = "texts_of_the_window";
const char* const qt_name = "texts_of_qt";

/// Keeps units with their numbers. Texts of report/ are left alone: their units are still to be found, and `to_local` keeps them.
class OwnTranslator : public QTranslator {
 public:
  using QTranslator::QTranslator;

  QString translate(const char* context, const char* source, const char* disambiguation, int count) const override {
    QString said = QTranslator::translate(context, source, disambiguation, count);
    if (std::string_view(context) == "report" || std::string_view(context) == "materials") return said;
    if (!said.isNull()) return with_units_kept(std::move(said));
    const QString plain = QString::fromUtf8(source);
    QString kept = with_units_kept(plain);
    return kept == plain ? QString() : kept;  // said by nobody here, so that another may
  }
};

template <class Translator>
void replace_translator(QApplication& application, const char* name, const QLocale& locale, const QString& file, const QString& folder, const QString& otherwise) {
  delete application.findChild<QTranslator*>(QLatin1String(name), Qt::FindDirectChildrenOnly);
  auto* translator = new Translator(&application);
  translator->setObjectName(QLatin1String(name));
  if (translator->load(locale, file, QStringLiteral("_"), folder) || (!otherwise.isEmpty() && translator->load(otherwise, folder))) QApplication::installTranslator(translator);
}

}  // namespace

void install_translations(QApplication& application, const QLocale& locale) {
  replace_translator<OwnTranslator>(application, own_name, locale, QStringLiteral("gritwright"), QStringLiteral(":/i18n"), QStringLiteral("gritwright_en"));
  replace_translator<QTranslator>(application, qt_name, locale, QStringLiteral("qtbase"), QLibraryInfo::path(QLibraryInfo::TranslationsPath), {});
}

void use_language(QApplication& application, const QString& code) {
  const bool known = std::ranges::any_of(languages, [&](const Language& language) { return code == QLatin1String(language.code); });
  const QLocale system = QLocale::system();
  const QLocale locale = known ? QLocale(QLocale(code).language(), system.territory()) : system;
  QLocale::setDefault(locale);
  install_translations(application, locale);
}

}  // namespace gritwright::desktop
