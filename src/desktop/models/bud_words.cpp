#include "bud_words.hpp"

#include "gritwright/report/day_report.hpp"
#include "text.hpp"

namespace gritwright::desktop {

QStringList bud_choices() {
  QStringList choices;
  for (const std::string_view state : bud_states()) choices << to_qt(translated(state));
  return choices;
}

std::string bud_code(const QString& typed) {
  const QString text = typed.trimmed();
  for (const std::string_view state : bud_states()) {
    std::string code(state);
    if (text.compare(to_qt(code), Qt::CaseInsensitive) == 0 || text.compare(to_qt(translated(state)), Qt::CaseInsensitive) == 0) return code;
  }
  return text.toStdString();
}

QString bud_shown(const std::string& kept) { return to_qt(bud_text(bud_code(to_qt(kept)), translated)); }

}  // namespace gritwright::desktop
