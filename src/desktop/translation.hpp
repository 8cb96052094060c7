#pragma once
#include <QString>
#include <array>

class QApplication;
class QLocale;

namespace gritwright::desktop {

struct Language {
  const char* code;
  const char* name;  ///< in the language itself, UTF-8
};
/// Those there is a catalogue for, in the order they are offered.
inline constexpr std::array languages{Language{"en", "English"}, Language{"de", "Deutsch"}, Language{"fr", "Français"}, Language{"es", "Español"}, Language{"ja", "日本語"}};

/// The texts of a locale in place of any former ones: our own, or English with its plurals where there is no catalogue for it, and Qt's for its
/// buttons. Before any window is made.
void install_translations(QApplication& application, const QLocale& locale);

/// Texts, numbers and dates in a language, by its code, as the system's country writes them; as the system where `code` is none of `languages`.
void use_language(QApplication& application, const QString& code);

}  // namespace gritwright::desktop
