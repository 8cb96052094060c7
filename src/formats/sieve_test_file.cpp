#include "gritwright/formats/sieve_test_file.hpp"

#include <algorithm>
#include <string_view>
#include <utility>

#include "json_document.hpp"
#include "sieve_test_formats.hpp"
#include "text_door.hpp"

namespace gritwright {

Problems check_what_was_read(const SieveTest& test, const Problems& told) {
  const auto tells_of = [&](std::string_view place) {
    return std::ranges::any_of(told, [&](const Problem& fault) { return fault.code != "key.unknown" && fault.where.pointer.starts_with(place); });
  };
  const bool no_pan = std::ranges::any_of(told, [](const Problem& fault) { return fault.code == "sieve-test.no-pan"; });
  // A fraction that could not be read leaves no sum to judge, and sums are judged by the resolution.
  const bool no_sum = no_pan || tells_of("/retained") || tells_of("/pan") || tells_of("/resolution_g");
  const bool no_sample = tells_of("/dry_mass_g");
  Problems found = check(test);
  std::erase_if(found, [&](const Problem& problem) {
    return (no_sum && problem.where.pointer == "/retained") || (no_sample && problem.code == "sieve-test.washed-without-dry");
  });
  return beyond_told(std::move(found), told);
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
