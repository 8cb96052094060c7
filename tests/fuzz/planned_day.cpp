#include "gritwright/formats/planned_day_file.hpp"
#include "target.hpp"

using namespace gritwright;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto file = read_planned_day(fuzz::text_of(data, size), "input", {});
  fuzz::must(file || !file.problems().empty());
  return 0;
}
