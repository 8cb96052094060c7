#pragma once
// The verb `log` in parts: what was asked, and one function for each action.

#include <istream>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/record_ref.hpp"
#include "gritwright/result.hpp"
#include "gritwright/workbook/open_workbook.hpp"
#include "program.hpp"

namespace gritwright::cli {

std::unique_ptr<Verb> log_verb();

struct LogRequest {
  std::string action;
  std::vector<std::string> operands;
  std::string workbook;  ///< empty: the default one
  bool read_only = false;
  bool csv = false;
  // add
  std::string day;
  std::vector<std::string> about;
  bool observation = false;
  // list
  std::string kind;
  std::string words;
  std::string from_day;
  std::string to_day;
  std::string material;
  std::string tree;
  unsigned limit = 200;
  // trace
  bool back = false;
  bool shared = false;
  // import and export
  bool preview = false;
  bool replace = false;
  std::string output;
  // check
  bool mend = false;
};

/// Everything an action needs. `notes` of opening and closing are told by the verb.
struct LogCall {
  const LogRequest& request;
  const CommonOptions& options;
  Streams streams;
  OpenWorkbook& workbook;
  Notes notes{};
};

/// "bag:K-07", or an id that only one kind has. Errors: workbook.not-there, workbook.id-ambiguous.
[[nodiscard]] Result<RecordRef> ref_asked_for(const OpenWorkbook& workbook, const std::string& text);

Exit log_add(LogCall& call);
Exit log_list(LogCall& call);
Exit log_show(LogCall& call);
Exit log_trace(LogCall& call);
Exit log_export(LogCall& call);
Exit log_import(LogCall& call);
/// Opens the file itself, since a damaged one can't be opened.
Exit log_check(const LogRequest& request, const CommonOptions& options, Streams streams);

/// `read_input` of a file that may have up to `limit_mb`.
[[nodiscard]] Result<std::string> read_long_input(const std::string& path, std::istream& standard_input, std::size_t limit_mb);

/// How every action opens the workbook.
[[nodiscard]] OpeningOptions opening_options(const LogRequest& request, bool create);
[[nodiscard]] std::string workbook_file(const LogRequest& request);
/// Where no file was named, the one that is missing was not begun yet: workbook.none-yet instead of file.missing.
[[nodiscard]] Problems as_not_begun(Problems problems, const LogRequest& request);

}  // namespace gritwright::cli
