#include "gritwright/domain/log_entry.hpp"

#include "record_checks.hpp"

namespace gritwright {

Problems check(const LogEntry& entry) {
  Problems problems;
  check_day(problems, "/day", entry.day);
  if (entry.text.find_first_not_of(" \t\r\n") == std::string::npos) problems.push_back(problem_at("log.no-text", "/text"));
  return problems;
}

}  // namespace gritwright
