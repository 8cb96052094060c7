#include "gritwright/formats/design_problem_file.hpp"
#include "target.hpp"

using namespace gritwright;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto file = read_design_problem(fuzz::text_of(data, size), "input", {});
  fuzz::must(file || !file.problems().empty());
  return 0;
}
