#pragma once
#include <string>
#include <vector>

#include "gritwright/domain/record_ref.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// What an entry tells: something that happened to grain or trees, something observed, or a correction of the books.
enum class LogSort { event, observation, bookkeeping };

/// One line of the log.
struct LogEntry {
  std::string day;   ///< when it happened, ISO 8601
  std::string written;  ///< when it was written down, "2026-03-14T09:30:00Z"; set by the workbook
  LogSort sort = LogSort::event;
  std::string text;
  std::vector<RecordRef> about;
  friend bool operator==(const LogEntry&, const LogEntry&) = default;
};

/// No text; a day that is none.
[[nodiscard]] Problems check(const LogEntry& entry);

}  // namespace gritwright
