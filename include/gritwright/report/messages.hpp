#pragma once
#include <functional>
#include <string>
#include <string_view>

#include "gritwright/result.hpp"

namespace gritwright {

/// Turns an English template into the reader's language; the default leaves it as it is. The desktop hands in its own.
using Translate = std::function<std::string(std::string_view)>;

/// "FILE:LINE:COLUMN" or "FILE#/json/pointer", as far as it is known.
[[nodiscard]] std::string place_text(const Place& place);

/// What is wrong and what was expected, in one sentence without the place. Never empty: a code without a template is quoted
/// with its facts (a test keeps that from happening for codes of our own).
[[nodiscard]] std::string sentence(const Problem& problem, const Translate& translate = {});
[[nodiscard]] std::string sentence(const Note& note, const Translate& translate = {});

/// True if there is a template for `code`.
[[nodiscard]] bool has_template(std::string_view code);

}  // namespace gritwright
