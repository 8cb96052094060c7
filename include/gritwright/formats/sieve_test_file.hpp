#pragma once
#include <string>
#include <string_view>

#include "gritwright/domain/sieve_test.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// Reads a sieve test from CSV or JSON ("gritwright/sieve-test/1"), told apart by the first sign ("{" or "[": JSON).
/// `file_name` goes into the place of every problem. A byte order mark, CRLF, ";" or tab as separator, and decimal commas with
/// those two separators are taken. All faults of the text come back in one go, each with line and column or JSON pointer.
[[nodiscard]] Result<SieveTest> read_sieve_test(std::string_view text, std::string file_name);

}  // namespace gritwright
