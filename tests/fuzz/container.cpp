#include "gritwright/formats/container_file.hpp"
#include "gritwright/models/pot_geometry.hpp"
#include "target.hpp"

using namespace gritwright;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto file = read_container(fuzz::text_of(data, size), "input", {});
  if (!file) {
    fuzz::must(!file.problems().empty());
    return 0;
  }
  const PotGeometry pot(file->container);
  fuzz::must(in_ml(pot.volume()) > 0);
  fuzz::must(in_ml(pot.volume_below(pot.filled_depth())) > 0);
  return 0;
}
