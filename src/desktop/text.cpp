#include "text.hpp"

#include <QCoreApplication>

namespace gritwright::desktop {

namespace {

std::string translated(std::string_view text) {
  return QCoreApplication::translate("report", std::string(text).c_str()).toStdString();
}

QString with_capital(QString text) {
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text;
}

}  // namespace

QString sentence_text(const Problem& problem, UnitSystem units) { return with_capital(to_qt(sentence(problem, translated, units))); }

QString sentence_text(const Note& note, UnitSystem units) {
  const QString text = with_capital(to_qt(sentence(note, translated, units)));
  return note.where.empty() ? text : QStringLiteral("%1: %2").arg(to_qt(note.where), text);
}

}  // namespace gritwright::desktop
