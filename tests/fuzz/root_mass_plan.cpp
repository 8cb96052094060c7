#include "gritwright/formats/root_mass_plan_file.hpp"
#include "target.hpp"

using namespace gritwright;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto file = read_root_mass_plan(fuzz::text_of(data, size), "input", {});
  fuzz::must(file || !file.problems().empty());
  return 0;
}
