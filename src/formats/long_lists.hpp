#pragma once
// Doors for files that may be far longer than the others: a whole record.

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>

#include "gritwright/result.hpp"
#include "json_document.hpp"

namespace gritwright {

/// What `check_text` asks of a text that may have up to `limit_mb`.
[[nodiscard]] Problems check_long_text(std::string_view text, std::size_t limit_mb);

/// `parse_json` for a long list: each item of the array `key` of the root is handed to `take` and forgotten, so that the list may be
/// as long as it likes; the root comes back with an empty array there. Every fault refuses the document.
[[nodiscard]] Result<JsonValue> parse_json_list(std::string_view text, const std::string& key, std::size_t limit_mb,
                                                const std::function<void(std::size_t index, const JsonValue& item)>& take);

}  // namespace gritwright
