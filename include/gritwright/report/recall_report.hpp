#pragma once
#include <string>

#include "gritwright/domain/recall_list.hpp"
#include "gritwright/domain/shared_traits.hpp"
#include "gritwright/report/quantity_text.hpp"

namespace gritwright {

/// The list to walk the benches with: trees that stand in it, trees where some may remain, trees that stood in it, and where the rest
/// of the grain lies.
[[nodiscard]] std::string recall_text(const RecallList& list, UnitSystem units);

/// "2 of 9" of the trees beside the same of all others, with the caution that few trees prove nothing and what to look at first.
[[nodiscard]] std::string shared_text(const SharedTraits& shared);

}  // namespace gritwright
