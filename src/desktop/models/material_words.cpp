#include "material_words.hpp"

#include <QCoreApplication>

#include "text.hpp"

namespace gritwright::desktop {

QString material_words(const std::string& text) { return QCoreApplication::translate("materials", to_qt(text).replace(u'_', u' ').toUtf8().constData()); }

QString title_words(RecordKind kind, const std::string& title) {
  if (kind != RecordKind::bag && kind != RecordKind::fraction && kind != RecordKind::sieve_test) return to_qt(title);
  // What follows the material of a fraction are its sizes; a bag's may be of the grower's own words.
  const auto sized = [kind](const std::string& text) { return kind == RecordKind::fraction ? to_local(text) : to_qt(text); };
  // "calcined clay 2-4 mm": the longest beginning that is a material.
  for (std::size_t end = title.size(); end != std::string::npos && end > 0; end = title.rfind(' ', end - 1)) {
    const std::string material = title.substr(0, end);
    if (const QString words = material_words(material); words != to_qt(material)) return words + sized(title.substr(end));
  }
  return sized(title);
}

QString title_words(const RecordLine& line) { return title_words(line.ref.kind, line.title); }

QString choice_words(const RecordLine& line) {
  const QString id = to_qt(line.ref.id);
  QString title = title_words(line);
  const QString told_anyhow = u' ' + (line.ref.kind == RecordKind::tree ? to_qt(line.subject) : id);
  if (told_anyhow.size() > 1 && title.endsWith(told_anyhow)) title.chop(told_anyhow.size());
  return title.isEmpty() || title == id ? id : id + u' ' + title;
}

}  // namespace gritwright::desktop
