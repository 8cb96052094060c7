#include "text.hpp"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QRegularExpression>

namespace gritwright::desktop {

namespace {

QString with_capital(QString text) {
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text;
}

}  // namespace

std::string translated(std::string_view text) { return QCoreApplication::translate("report", std::string(text).c_str()).toStdString(); }

QString to_local(const std::string& text) {
  static const QRegularExpression point(QStringLiteral("(?<=[0-9])[.](?=[0-9])"));
  return to_qt(text).replace(point, QLocale().decimalPoint());
}

QString number_text(double value, int significant_digits) {
  QLocale locale;
  locale.setNumberOptions(QLocale::OmitGroupSeparator);
  return locale.toString(value, 'g', significant_digits);
}

QString day_text(const std::string& iso) {
  const QDate day = QDate::fromString(to_qt(iso), Qt::ISODate);
  return day.isValid() ? QLocale().toString(day, QLocale::ShortFormat) : to_qt(iso);
}

QString sentence_text(const Problem& problem, UnitSystem units) { return with_capital(to_local(sentence(problem, translated, units))); }

QString sentence_text(const Note& note, UnitSystem units) {
  const QString text = with_capital(to_local(sentence(note, translated, units)));
  return note.where.empty() ? text : QStringLiteral("%1: %2").arg(to_qt(translated(note.where)), text);
}

}  // namespace gritwright::desktop
