#pragma once
#include <compare>
#include <string>

namespace gritwright {

/// The printable name of a record ("K-07"), unique among records of one kind and never used again after deletion.
template <class Record>
struct Id {
  std::string text;
  friend auto operator<=>(const Id&, const Id&) = default;
};

}  // namespace gritwright
