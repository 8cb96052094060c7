#pragma once
#include <cstddef>

namespace gritwright {

/// No file of a grower comes near this many megabytes; a larger text is refused, and no door need read further.
inline constexpr std::size_t largest_text_mb = 16;

}  // namespace gritwright
