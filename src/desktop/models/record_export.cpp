#include "record_export.hpp"

#include <QSaveFile>
#include <sstream>
#include <string>
#include <utility>

#include "gritwright/formats/record_csv.hpp"
#include "gritwright/workbook/exchange.hpp"

namespace gritwright::desktop {

namespace {

std::string exported_text(const OpenWorkbook& workbook, std::optional<RecordKind> kind, Problems& left_out) {
  if (!kind) {
    std::ostringstream text;
    left_out = export_workbook(workbook, text);
    return std::move(text).str();
  }
  RecordsToExport all = records_to_export(workbook, *kind);
  left_out = std::move(all.left_out);
  return write_records_csv(*kind, all.records);
}

}  // namespace

Result<WrittenRecords> write_records(const OpenWorkbook& workbook, const QString& path, std::optional<RecordKind> kind) {
  WrittenRecords records;
  const std::string text = exported_text(workbook, kind, records.left_out);
  QSaveFile file(path);
  const bool written = file.open(QIODevice::WriteOnly) && file.write(text.data(), static_cast<qint64>(text.size())) == static_cast<qint64>(text.size()) && file.commit();
  if (!written) return Problem{"file.write-failed", Place{path.toStdString(), {}, {}, {}}, {}};
  return records;
}

}  // namespace gritwright::desktop
