#pragma once
// Between the engine's UTF-8 and Qt's text, and the engine's sentences in the reader's language.

#include <QString>
#include <string>
#include <string_view>

#include "gritwright/domain/record_ref.hpp"
#include "gritwright/report/messages.hpp"

namespace gritwright::desktop {

[[nodiscard]] inline QString to_qt(const std::string& text) { return QString::fromStdString(text); }

/// Text inside a menu's own, where an & would otherwise underline the next sign.
[[nodiscard]] inline QString menu_text(QString text) { return text.replace(QStringLiteral("&"), QStringLiteral("&&")); }

/// A figure of report/ with the decimal mark of the reader's locale.
[[nodiscard]] QString to_local(const std::string& text);

/// A number in the reader's locale, without marks between thousands: a comma there would read as a decimal one.
[[nodiscard]] QString number_text(double value, int significant_digits);

/// A GRITWRIGHT_TEXT of report/ or the name of a material in the reader's language; any other text as it is.
[[nodiscard]] std::string translated(std::string_view text);

/// A day of ISO 8601 as the reader's locale writes it; what is none comes back as it is.
[[nodiscard]] QString day_text(const std::string& iso);

/// Sentences of report/, translated, their figures in the reader's locale.
[[nodiscard]] QString sentence_text(const Problem& problem, UnitSystem units = UnitSystem::metric);
[[nodiscard]] QString sentence_text(const Note& note, UnitSystem units = UnitSystem::metric);

/// A kind of record in the reader's language: "sieve test".
[[nodiscard]] QString kind_text(RecordKind kind);

}  // namespace gritwright::desktop
