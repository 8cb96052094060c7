#pragma once
// One target a file. Under the preset `fuzz` libFuzzer drives it; everywhere else replay.cpp does, with the seeds and with seeds
// it spoils, so that the targets are compiled and run by the ordinary suite too.

#include <cstddef>
#include <cstdint>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace gritwright::fuzz {

inline std::string_view text_of(const std::uint8_t* data, std::size_t size) {
  return {reinterpret_cast<const char*>(data), size};
}

/// What must hold whatever the input; ends the process where it does not, which is how a fuzzer hears of it.
inline void must(bool holds) {
  if (!holds) __builtin_trap();
}

}  // namespace gritwright::fuzz
