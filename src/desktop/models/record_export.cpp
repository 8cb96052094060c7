#include "record_export.hpp"

#include <QSaveFile>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "gritwright/formats/record_csv.hpp"
#include "gritwright/workbook/exchange.hpp"

namespace gritwright::desktop {

namespace {

std::string exported_text(const OpenWorkbook& workbook, std::optional<RecordKind> kind) {
  if (!kind) {
    std::ostringstream text;
    export_workbook(workbook, text);
    return std::move(text).str();
  }
  std::vector<IdentifiedRecord> records;
  for (StoredRecord& stored : workbook.all_of(*kind)) records.push_back({stored.ref, std::move(stored.record), {}});
  return write_records_csv(*kind, records);
}

}  // namespace

Result<Done> write_records(const OpenWorkbook& workbook, const QString& path, std::optional<RecordKind> kind) {
  const std::string text = exported_text(workbook, kind);
  QSaveFile file(path);
  const bool written = file.open(QIODevice::WriteOnly) && file.write(text.data(), static_cast<qint64>(text.size())) == static_cast<qint64>(text.size()) && file.commit();
  if (!written) return Problem{"file.write-failed", Place{path.toStdString(), {}, {}, {}}, {}};
  return Done{};
}

}  // namespace gritwright::desktop
