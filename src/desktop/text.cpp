#include "text.hpp"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QRegularExpression>
#include <algorithm>
#include <array>
#include <cstdlib>
#include <optional>

namespace gritwright::desktop {

std::string translated(std::string_view text) {
  const std::string source(text);
  const std::string said = QCoreApplication::translate("report", source.c_str()).toStdString();
  return said != source ? said : QCoreApplication::translate("materials", source.c_str()).toStdString();
}

QString to_typed(const std::string& text) {
  // A day like 01.03.2026 is no number and stays as it was typed.
  static const QRegularExpression number(QStringLiteral("(?<![0-9.])([0-9]+)[.]([0-9]+)(?![0-9]|[.][0-9])"));
  return to_qt(text).replace(number, QStringLiteral("\\1%1\\2").arg(QLocale().decimalPoint()));
}

namespace {

/// Days as lists show them.
QString with_local_days(QString text) {
  static const QRegularExpression day(QStringLiteral("(?<![0-9-])[0-9]{4}-[0-9]{2}-[0-9]{2}(?![0-9-])"));
  if (text.count(u'-') < 2) return text;
  for (auto found = day.match(text); found.hasMatch(); found = day.match(text, found.capturedStart() + 1)) text.replace(found.capturedStart(), found.capturedLength(), day_text(found.captured().toStdString()));
  return text;
}

}  // namespace

QString to_local(const std::string& text) { return with_units_kept(with_local_days(to_typed(text))); }

QString with_units_kept(QString text) {
  constexpr std::array<QStringView, 16> units{u"mm", u"cm", u"cm2", u"g/L", u"g", u"kg", u"mL", u"L", u"%", u"in", u"in2", u"oz", u"lb", u"lb/ft3", u"qt", u"meq/L"};
  for (qsizetype space = text.indexOf(u' ', 1); space > 0; space = text.indexOf(u' ', space + 1)) {
    const QChar before = text[space - 1];
    if (!before.isDigit() && before != u'}') continue;
    qsizetype end = space + 1;
    while (end < text.size() && (text[end].isLetterOrNumber() || text[end] == u'/' || text[end] == u'%') && text[end].script() <= QChar::Script_Latin) ++end;
    const QStringView unit = QStringView(text).mid(space + 1, end - space - 1);
    if (std::ranges::find(units, unit) != units.end()) text[space] = QChar::Nbsp;
  }
  return text;
}

QString in_two_lines(QString name) {
  qsizetype at = -1;
  for (qsizetype i = 1; i + 1 < name.size(); ++i) {
    const bool can_break = name[i] == u' ' || name[i] == u'-';
    if (can_break && (at < 0 || std::abs(2 * i - name.size()) < std::abs(2 * at - name.size()))) at = i;
  }
  // Japanese has no blanks and breaks anywhere.
  const auto is_of_japanese = [](QChar sign) { return sign.script() == QChar::Script_Han || sign.script() == QChar::Script_Hiragana || sign.script() == QChar::Script_Katakana; };
  if (at < 0 && name.size() > 5 && std::ranges::all_of(name, is_of_japanese)) return name.insert((name.size() + 1) / 2, u'\n');
  if (at < 0) return name;
  return name[at] == u' ' ? name.replace(at, 1, u'\n') : name.insert(at + 1, u'\n');
}

QString with_plain_spaces(QString text) { return text.replace(QChar::Nbsp, u' '); }

QString comma_list(const QStringList& things) { return things.join(QCoreApplication::translate("report", ", ")); }

QString semicolon_list(const QStringList& things) { return things.join(QCoreApplication::translate("report", "; ")); }

QString with_label(const QString& label, const QString& text) { return label + QCoreApplication::translate("report", ": ") + text; }

QString number_text(double value, int significant_digits) {
  QLocale locale;
  // A figure is also typed over and read again: digits and marks that no field reads are written as in English.
  if (locale.zeroDigit() != QStringLiteral("0") || (locale.decimalPoint() != QStringLiteral(".") && locale.decimalPoint() != QStringLiteral(","))) locale = QLocale::c();
  locale.setNumberOptions(QLocale::OmitGroupSeparator);
  return locale.toString(value, 'g', significant_digits);
}

QString day_text(const std::string& iso) {
  const QDate day = QDate::fromString(to_qt(iso), Qt::ISODate);
  // Two digits of a year are read as of this century.
  const bool is_told_by_two_digits = day.year() >= 2000 && day.year() <= 2099;
  return day.isValid() && is_told_by_two_digits ? QLocale().toString(day, QLocale::ShortFormat) : to_qt(iso);
}

QString example_day() { return day_text("2026-03-14"); }

std::string typed_day(const QString& text) {
  static const QRegularExpression iso(QStringLiteral("^([0-9]{4})-([0-9]{1,2})-([0-9]{1,2})$"));
  const QString typed = text.trimmed();
  if (const auto parts = iso.match(typed); parts.hasMatch()) {
    const QDate day(parts.captured(1).toInt(), parts.captured(2).toInt(), parts.captured(3).toInt());
    return day.isValid() ? day.toString(Qt::ISODate).toStdString() : typed.toStdString();
  }
  static const QRegularExpression dotted(QStringLiteral("^([0-9]{1,2})\\. ?([0-9]{1,2})\\. ?([0-9]{4})$"));
  if (const auto parts = dotted.match(typed); parts.hasMatch()) {
    const QDate day(parts.captured(3).toInt(), parts.captured(2).toInt(), parts.captured(1).toInt());
    return day.isValid() ? day.toString(Qt::ISODate).toStdString() : typed.toStdString();
  }
  const QLocale locale;
  const QString shown = locale.dateFormat(QLocale::ShortFormat);
  const bool has_whole_year = shown.contains(QStringLiteral("yyyy"));
  QString with_year = shown;
  if (!has_whole_year) with_year.replace(QStringLiteral("yy"), QStringLiteral("yyyy"));
  constexpr int first_year = 1000;  // fewer digits are no whole year
  if (const QDate day = locale.toDate(typed, with_year); day.isValid() && day.year() >= first_year) return day.toString(Qt::ISODate).toStdString();
  const QDate day = has_whole_year ? QDate() : locale.toDate(typed, shown);
  if (!day.isValid()) return typed.toStdString();
  // Two digits are read as of the last century.
  return (day.year() < 2000 ? day.addYears(100) : day).toString(Qt::ISODate).toStdString();
}

std::string typed_month_day(const QString& text) {
  static const QRegularExpression parts(QStringLiteral("^([0-9]{1,2})-([0-9]{1,2})$"));
  const auto found = parts.match(text.trimmed());
  if (!found.hasMatch()) return text.trimmed().toStdString();
  return QStringLiteral("%1-%2").arg(found.captured(1).toInt(), 2, 10, QLatin1Char('0')).arg(found.captured(2).toInt(), 2, 10, QLatin1Char('0')).toStdString();
}

namespace {

/// What was typed, a name or a number keep their letters where they stand first.
enum class Begins { with_capital, as_written };

template <class Message>
QString message_text(const Message& message, UnitSystem units, Begins begins) {
  // The template is the first that is translated. These facts hold words of ours.
  constexpr std::array words{"{kind}", "{what}", "{face}", "{direction}"};
  std::optional<bool> begins_with_fact;
  const auto looked_at = [&](std::string_view text) {
    std::string reads = translated(text);
    if (!begins_with_fact) begins_with_fact = reads.starts_with('{') && std::ranges::none_of(words, [&](const char* word) { return reads.starts_with(word); });
    return reads;
  };
  QString text = to_local(sentence(message, looked_at, units));
  if (begins == Begins::with_capital && !text.isEmpty() && !begins_with_fact.value_or(false)) text[0] = text[0].toUpper();
  return text;
}

}  // namespace

QString sentence_text(const Problem& problem, UnitSystem units) { return message_text(problem, units, Begins::with_capital); }

QString sentence_text(const Note& note, UnitSystem units) {
  if (note.where.empty()) return message_text(note, units, Begins::with_capital);
  // In German a whole sentence begins with a capital after a colon too.
  const Begins begins = QLocale().language() == QLocale::German ? Begins::with_capital : Begins::as_written;
  return with_label(to_qt(translated(note.where)), message_text(note, units, begins));
}

namespace {

class KindText {
  Q_DECLARE_TR_FUNCTIONS(RecordKind)
};

}  // namespace

QString kind_text(RecordKind kind) {
  switch (kind) {
    case RecordKind::material: return KindText::tr("own material");
    case RecordKind::bag: return KindText::tr("bag");
    case RecordKind::bin: return KindText::tr("bin");
    case RecordKind::fraction: return KindText::tr("fraction");
    case RecordKind::sieve_set: return KindText::tr("sieve set");
    case RecordKind::sieve_test: return KindText::tr("sieve test");
    case RecordKind::mix: return KindText::tr("mix");
    case RecordKind::container: return KindText::tr("pot");
    case RecordKind::tree: return KindText::tr("tree");
    case RecordKind::root_mass_plan: return KindText::tr("root-mass plan");
    case RecordKind::repotting_day: return KindText::tr("repotting day");
    case RecordKind::batch: return KindText::tr("batch");
    case RecordKind::pot_test: return KindText::tr("pot test");
    case RecordKind::stock_entry: return KindText::tr("stock entry");
    case RecordKind::log_entry: return KindText::tr("log entry");
    case RecordKind::species_profile: return KindText::tr("group of trees");
  }
  return {};
}

}  // namespace gritwright::desktop
