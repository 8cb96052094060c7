#pragma once
#include "gritwright/report/explanations.hpp"
#include "protocols.hpp"
#include "sheet_reader.hpp"

namespace gritwright::desktop {

/// Reads the fields of a protocol; what is missing or cannot be read is gathered for the answer.
class ProtocolReading {
 public:
  ProtocolReading(const OpenWorkbook& workbook, const ProtocolSheet& sheet);

  [[nodiscard]] std::optional<Mass> mass(const char* key, bool needed = true);
  [[nodiscard]] std::optional<Volume> volume_l(const char* key, bool needed = true);
  [[nodiscard]] std::optional<Volume> volume_ml(const char* key, bool needed = true);
  [[nodiscard]] std::optional<Length> length(const char* key, bool needed = true);
  [[nodiscard]] std::optional<double> share(const char* key, bool needed = true);
  [[nodiscard]] std::optional<double> number(const char* key, bool needed = true);

  /// True where nothing that is needed is missing or faulty.
  [[nodiscard]] bool complete() const { return missing_.isEmpty() && faults_.empty(); }
  void finish(ProtocolAnswer& answer, const Problems& problems, UnitSystem units) const;

 private:
  [[nodiscard]] const QString& text(const char* key, bool needed);

  const ProtocolSheet& sheet_;
  std::map<QString, QString> labels_;
  Faults faults_;
  FieldReader read_;
  QStringList missing_;
};

/// Adds a figure with its explanation; a dash and `reason` where there is no value.
void add_figure(ProtocolAnswer& answer, const char* key, const QString& label, const std::optional<std::string>& value, const QString& reason,
                const std::vector<Explanation>& explanations);
void add_questions(ProtocolAnswer& answer, const Notes& notes, UnitSystem units);

/// The answer of a pot test of a kept mix.
void answer_pot_test(ProtocolAnswer& answer, const OpenWorkbook& workbook, const ProtocolSheet& sheet, ProtocolReading& read, UnitSystem units);

}  // namespace gritwright::desktop
