#include "gritwright/formats/material_file.hpp"
#include "target.hpp"

using namespace gritwright;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto text = fuzz::text_of(data, size);
  const auto material = read_material(text, "input");
  fuzz::must(material || !material.problems().empty());
  const auto references = read_references(text, "input");
  fuzz::must(references || !references.problems().empty());
  return 0;
}
