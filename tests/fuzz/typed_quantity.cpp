#include "gritwright/formats/typed_quantity.hpp"
#include "target.hpp"

using namespace gritwright;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto text = fuzz::text_of(data, size);
  const auto length = parse_length(text, LengthUnit::centimetre);
  fuzz::must(length || !length.problems().empty());
  const auto mass = parse_mass(text, MassUnit::gram);
  fuzz::must(mass || !mass.problems().empty());
  const auto volume = parse_volume(text, VolumeUnit::litre);
  fuzz::must(volume || !volume.problems().empty());
  const auto aperture = parse_aperture(text);
  fuzz::must(aperture || !aperture.problems().empty());
  const auto percent = parse_percent(text);
  fuzz::must(percent || !percent.problems().empty());
  return 0;
}
