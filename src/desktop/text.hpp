#pragma once
// Between the engine's UTF-8 and Qt's text, and the engine's sentences in the reader's language.

#include <QString>
#include <QStringList>
#include <string>
#include <string_view>

#include "gritwright/domain/record_ref.hpp"
#include "gritwright/report/messages.hpp"

namespace gritwright::desktop {

[[nodiscard]] inline QString to_qt(const std::string& text) { return QString::fromStdString(text); }

/// Text inside a menu's own, where an & would otherwise underline the next sign.
[[nodiscard]] inline QString menu_text(QString text) { return text.replace(QStringLiteral("&"), QStringLiteral("&&")); }

/// A figure of report/ with the decimal mark of the reader's locale, for a field where it is typed on.
[[nodiscard]] QString to_typed(const std::string& text);

/// The same to be read: its numbers keep their units on one line.
[[nodiscard]] QString to_local(const std::string& text);

/// A no-break space between a number, or a place for one ("%1", "{mass_g}"), and its unit.
[[nodiscard]] QString with_units_kept(QString text);

/// A name in two lines, broken at the space or hyphen nearest to its middle.
[[nodiscard]] QString in_two_lines(QString name);

/// Plain spaces, for what is written into the record: it is found by what is typed.
[[nodiscard]] QString with_plain_spaces(QString text);

/// Things in a row, with the marks of the reader's language: "a, b, c", and "a; b" for whole sentences or what has commas in it.
[[nodiscard]] QString comma_list(const QStringList& things);
[[nodiscard]] QString semicolon_list(const QStringList& things);

/// "label: text" as the reader's language has it.
[[nodiscard]] QString with_label(const QString& label, const QString& text);

/// A number in the reader's locale, without marks between thousands: a comma there would read as a decimal one.
[[nodiscard]] QString number_text(double value, int significant_digits);

/// A GRITWRIGHT_TEXT of report/ or the name of a material in the reader's language; any other text as it is.
[[nodiscard]] std::string translated(std::string_view text);

/// A day of ISO 8601 as the reader's locale writes it; what is none comes back as it is.
[[nodiscard]] QString day_text(const std::string& iso);
/// How a day may be typed, as a hint.
[[nodiscard]] QString example_day();
/// A typed day as ISO 8601: from 2026-3-1, or as day_text shows it, also with all digits of the year; what is no day comes back as it was typed.
[[nodiscard]] std::string typed_day(const QString& text);
/// A typed month and day as 03-14, from 3-14 too; what is none comes back as it was typed.
[[nodiscard]] std::string typed_month_day(const QString& text);

/// Sentences of report/, translated, their figures in the reader's locale.
[[nodiscard]] QString sentence_text(const Problem& problem, UnitSystem units = UnitSystem::metric);
[[nodiscard]] QString sentence_text(const Note& note, UnitSystem units = UnitSystem::metric);

/// A kind of record in the reader's language: "sieve test".
[[nodiscard]] QString kind_text(RecordKind kind);

}  // namespace gritwright::desktop
