#include "protocol_reading.hpp"

#include <QCoreApplication>

#include "text.hpp"

namespace gritwright::desktop {

namespace {

class ProtocolReadingText {
  Q_DECLARE_TR_FUNCTIONS(Protocols)
};

const QString no_protocol_text;

}  // namespace

ProtocolReading::ProtocolReading(const OpenWorkbook& workbook, const ProtocolSheet& sheet) : sheet_(sheet), read_(faults_) {
  for (const ProtocolField& field : fields_of(workbook, sheet)) labels_[field.key] = field.label;
}

const QString& ProtocolReading::text(const char* key, bool needed) {
  const auto found = sheet_.texts.find(QLatin1String(key));
  const QString& typed = found != sheet_.texts.end() ? found->second : no_protocol_text;
  if (needed && typed.trimmed().isEmpty()) missing_ << labels_[QLatin1String(key)];
  return typed;
}

std::optional<Mass> ProtocolReading::mass(const char* key, bool needed) {
  const auto read = read_.mass(text(key, needed), key);
  return read ? std::optional(read->mass) : std::nullopt;
}
std::optional<Volume> ProtocolReading::volume_l(const char* key, bool needed) { return read_.volume_l(text(key, needed), key); }
std::optional<Volume> ProtocolReading::volume_ml(const char* key, bool needed) { return read_.volume_ml(text(key, needed), key); }
std::optional<Length> ProtocolReading::length(const char* key, bool needed) { return read_.length(text(key, needed), key); }
std::optional<double> ProtocolReading::share(const char* key, bool needed) { return read_.share(text(key, needed), key); }
std::optional<double> ProtocolReading::number(const char* key, bool needed) { return read_.number(text(key, needed), key); }

void ProtocolReading::finish(ProtocolAnswer& answer, const Problems& problems, UnitSystem units) const {
  for (const auto& [key, problem] : faults_) {
    const auto label = labels_.find(QString::fromStdString(key));
    const QString sentence = sentence_text(problem, units);
    answer.faults << (label != labels_.end() ? with_label(label->second, sentence) : sentence);
  }
  for (const Problem& problem : problems) answer.faults << sentence_text(problem, units);
  if (!missing_.isEmpty()) answer.waiting = ProtocolReadingText::tr("Still to type: %1").arg(comma_list(missing_));
}

void add_figure(ProtocolAnswer& answer, const char* key, const QString& label, const std::optional<std::string>& value, const QString& reason,
                const std::vector<Explanation>& explanations) {
  Figure figure{QStringLiteral("measured_%1").arg(QLatin1String(key)), label, value ? to_local(*value) : QStringLiteral("\u2013"), value ? QString() : reason, {}};
  for (const Explanation& explanation : explanations) {
    if (value && explanation.figure == key) figure.explanations.push_back(explanation);
  }
  answer.figures.figures.push_back(std::move(figure));
}

void add_questions(ProtocolAnswer& answer, const Notes& notes, UnitSystem units) {
  for (const Note& note : notes) answer.questions << sentence_text(note, units);
}

}  // namespace gritwright::desktop
