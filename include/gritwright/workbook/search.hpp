#pragma once
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/record_ref.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright {

/// What is looked for; what is absent or empty does not narrow.
struct SearchQuery {
  /// Words or ids, each found by its beginning, capitals and accents regardless; "in quotes" as a phrase. Signs that are no letters or
  /// digits only part words.
  std::string words{};
  std::optional<std::string> from_day{};
  std::optional<std::string> to_day{};
  std::optional<std::string> material{};  ///< of the record, or of one that it is linked to
  std::optional<Id<Tree>> tree{};         ///< the tree and all that is linked to it
  std::vector<RecordKind> kinds{};        ///< empty: all
  std::size_t limit = 200;
  std::size_t offset = 0;
};

/// Newest first, records of all kinds. Cheap enough for every keystroke.
[[nodiscard]] std::vector<RecordLine> search(const OpenWorkbook& workbook, const SearchQuery& query);

}  // namespace gritwright
