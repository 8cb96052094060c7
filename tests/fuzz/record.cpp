#include <string>

#include "gritwright/formats/record_file.hpp"
#include "target.hpp"

using namespace gritwright;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto record = read_record(fuzz::text_of(data, size), "input");
  if (!record) {
    fuzz::must(!record.problems().empty());
    return 0;
  }
  // A typed fifteenth digit may be rounded on the way; what was written once stays so.
  const std::string written = write_record(*record);
  const auto again = read_record(written, "written");
  fuzz::must(again && write_record(*again) == written);
  return 0;
}
