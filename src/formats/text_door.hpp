#pragma once
#include <cstddef>
#include <string>
#include <string_view>

#include "gritwright/formats/text_size.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// What every text must be before it is read: not empty, not huge, UTF-8 without NUL. Errors: file.empty, file.too-large,
/// text.nul, text.not-utf8 (with line and column).
[[nodiscard]] Problems check_text(std::string_view text);

/// `text` without the byte order mark that spreadsheets put in front.
[[nodiscard]] std::string_view without_byte_order_mark(std::string_view text);

/// `text` without blanks at both ends.
[[nodiscard]] std::string_view trimmed(std::string_view text);

/// `text` with ASCII capitals as small letters, whatever the locale.
[[nodiscard]] std::string in_small_letters(std::string_view text);

/// Line and column (1-based, in bytes) of the byte at `offset`.
[[nodiscard]] Place place_at(std::string_view text, std::size_t offset);

/// Puts `file` into the place of each problem that names no file of its own, and leaves out what was told of a value after
/// number.too-large or number.too-small.
[[nodiscard]] Problems placed_in(Problems problems, const std::string& file);

/// True for a day like "2026-03-14".
[[nodiscard]] bool is_iso_day(std::string_view text);

}  // namespace gritwright
