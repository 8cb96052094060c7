#include "gritwright/formats/sieve_test_file.hpp"

#include <utility>

#include "sieve_test_formats.hpp"
#include "text_door.hpp"

namespace gritwright {

Problems check_what_was_read(const SieveTest& test, const std::vector<std::size_t>& rows, bool whole) {
  constexpr std::string_view row_prefix = "/retained/";
  Problems kept;
  for (Problem& problem : check(test)) {
    std::string& pointer = problem.where.pointer;
    const bool in_row = pointer.starts_with(row_prefix);
    if (!whole && !in_row && !pointer.starts_with("/pan")) continue;
    if (in_row) {
      const auto end = pointer.find('/', row_prefix.size());
      const std::size_t index = std::stoul(pointer.substr(row_prefix.size(), end - row_prefix.size()));
      pointer = std::string(row_prefix) + std::to_string(rows.at(index)) + pointer.substr(std::min(end, pointer.size()));
    }
    kept.push_back(std::move(problem));
  }
  return kept;
}

Result<SieveTest> read_sieve_test(std::string_view text, std::string file_name) {
  if (Problems problems = check_text(text); !problems.empty()) return placed_in(std::move(problems), file_name);
  const std::string_view body = trimmed(without_byte_order_mark(text));
  const bool is_json = body.front() == '{' || body.front() == '[';
  Result<SieveTest> test = is_json ? read_sieve_test_json(text) : read_sieve_test_csv(text);
  if (!test) return placed_in(test.problems(), file_name);
  return test;
}

}  // namespace gritwright
