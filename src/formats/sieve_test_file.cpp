#include "gritwright/formats/sieve_test_file.hpp"

#include <utility>

#include "sieve_test_formats.hpp"
#include "text_door.hpp"

namespace gritwright {

Result<SieveTest> read_sieve_test(std::string_view text, std::string file_name) {
  if (Problems problems = check_text(text); !problems.empty()) return in_file(std::move(problems), file_name);
  const std::string_view body = trimmed(without_byte_order_mark(text));
  const bool is_json = body.front() == '{' || body.front() == '[';
  Result<SieveTest> test = is_json ? read_sieve_test_json(text) : read_sieve_test_csv(text);
  if (!test) return in_file(test.problems(), file_name);
  return test;
}

}  // namespace gritwright
