#pragma once
#include <array>

#include "gritwright/domain/container.hpp"

namespace gritwright {

/// One word of a file for one value of an enumeration.
template <class E>
struct Word {
  E value;
  const char* text;
};

namespace fields {

inline constexpr std::array shape_words{
    Word<Shape>{Shape::rectangular, "rectangular"}, Word<Shape>{Shape::oval, "oval"},
    Word<Shape>{Shape::round, "round"},             Word<Shape>{Shape::hexagonal, "hexagonal"},
    Word<Shape>{Shape::octagonal, "octagonal"},     Word<Shape>{Shape::drum, "drum"},
    Word<Shape>{Shape::superellipse, "superellipse"}, Word<Shape>{Shape::bowl, "bowl"},
    Word<Shape>{Shape::profile, "profile"}};

}  // namespace fields

}  // namespace gritwright
