#pragma once
#include <string>

#include "gritwright/domain/recall_list.hpp"
#include "gritwright/domain/shared_traits.hpp"

namespace gritwright {

/// "now", "may-remain" or "was".
[[nodiscard]] std::string standing_name(Standing standing);
/// "lot", "mix", "depth", "day", "plan" or "removed-share".
[[nodiscard]] std::string trait_name(TraitSort sort);

/// One row a tree or holder, with a heading; cells that a spreadsheet would run are made harmless.
[[nodiscard]] std::string write_recall_csv(const RecallList& list);
/// `{"format":"gritwright/recall-list/1",...}`; null where something is not known.
[[nodiscard]] std::string write_recall_json(const RecallList& list);

[[nodiscard]] std::string write_shared_csv(const SharedTraits& shared);
/// `{"format":"gritwright/shared-traits/1",...}`
[[nodiscard]] std::string write_shared_json(const SharedTraits& shared);

}  // namespace gritwright
