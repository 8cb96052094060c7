#include "gritwright/formats/pot_test_file.hpp"
#include "target.hpp"

using namespace gritwright;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto file = read_pot_test(fuzz::text_of(data, size), "input", {});
  fuzz::must(file ? !file->readings.empty() : !file.problems().empty());
  return 0;
}
