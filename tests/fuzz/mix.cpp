#include "gritwright/formats/mix_file.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/mix_state.hpp"
#include "target.hpp"

using namespace gritwright;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto mix = read_mix(fuzz::text_of(data, size), "input", {});
  if (!mix) {
    fuzz::must(!mix.problems().empty());
    return 0;
  }
  const auto state = mix_state(mix->mix);
  if (!state) return 0;
  if (const auto water = mix_in_column(*state, mix->mix.water, depth_cm(6))) {
    const double capacity = water->container_capacity.value(), air = water->air_filled_porosity.value();
    // Air is a difference: in grain so fine that nothing drains it may come out below nothing by its rounding.
    constexpr double rounding = 1e-12;
    fuzz::must(capacity >= 0 && capacity <= 1 && air >= -rounding && air <= 1);
  }
  return 0;
}
