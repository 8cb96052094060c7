#include "gritwright/formats/record_file.hpp"
#include "target.hpp"

using namespace gritwright;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto record = read_record(fuzz::text_of(data, size), "input");
  if (!record) {
    fuzz::must(!record.problems().empty());
    return 0;
  }
  const auto again = read_record(write_record(*record), "written");
  fuzz::must(again && *again == *record);
  return 0;
}
