#pragma once
#include <cstddef>
#include <functional>
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/material.hpp"
#include "gritwright/domain/record_ref.hpp"
#include "gritwright/formats/exchange_file.hpp"
#include "gritwright/result.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright {

/// What taking a record in would do.
enum class Arrival {
  added,
  already_there,     ///< nothing to do: the same record is there, or came in with an earlier import
  comes_back,        ///< the same record was deleted here and returns under its id
  differs            ///< another record has the id; refused unless it shall be replaced. A line of log or ledger is added under another number instead
};

struct ImportLine {
  IdentifiedRecord record;  ///< with the id it would get, where it has none
  std::string title;
  Arrival arrival = Arrival::added;
};

/// What an import would do, before it does it.
struct ImportPreview {
  std::vector<ImportLine> lines;
  Problems problems;  ///< import.id-differs (unless replacing), import.id-twice, and what a record of the kind must fulfil
  /// import.names-unknown: a record names another that is neither here nor in the import. import.renumbered, import.renumbered-more: lines
  /// that come in under another number. import.line-kept, import.line-kept-more: lines that were corrected since the file was written stay.
  /// import.material-unknown: a material that is neither in the catalogue nor in use here.
  Notes notes;
  [[nodiscard]] std::size_t count(Arrival arrival) const;
};

struct ImportOptions {
  /// Records with the same id and other content take the place of those here, as one undoable step; lines of log and ledger never do.
  bool replace = false;
  const Catalogue* catalogue = nullptr;  ///< names that materials are held against; null: none are
};

[[nodiscard]] ImportPreview preview_import(const OpenWorkbook& workbook, std::vector<IdentifiedRecord> records,
                                           const ImportOptions& options = {});

struct Imported {
  ImportPreview preview;  ///< as it was done
  std::optional<std::int64_t> step;
};

/// Takes `records` in, all or nothing, as one step under `label`; importing the same again adds nothing. Errors: those of the preview
/// and of `apply`.
[[nodiscard]] Result<Imported> import_records(OpenWorkbook& workbook, const std::vector<IdentifiedRecord>& records, const std::string& label,
                                              const ImportOptions& options = {});

/// All records as "gritwright/workbook/1", from one moment. Deleted ones stay behind. What can't be read is left out and comes back as
/// problems: export.left-out.
[[nodiscard]] Problems export_workbook(const OpenWorkbook& workbook, std::ostream& out, const std::string& note = {});

struct RecordsToExport {
  std::vector<IdentifiedRecord> records;
  Problems left_out;  ///< export.left-out, of each that can't be read
};

/// The records of a kind, oldest first.
[[nodiscard]] RecordsToExport records_to_export(const OpenWorkbook& workbook, RecordKind kind);

}  // namespace gritwright
