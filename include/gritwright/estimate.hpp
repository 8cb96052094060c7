#pragma once
#include <optional>

#include "gritwright/result.hpp"

namespace gritwright {

/// A computed figure: the value (absent where it is not defined; a note says why), a 5-95 % range where one was computed.
template <class T>
struct Estimate {
  std::optional<T> value;
  std::optional<T> low;
  std::optional<T> high;
  Notes notes;
};

}  // namespace gritwright
