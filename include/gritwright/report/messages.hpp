#pragma once
#include <functional>
#include <string>
#include <string_view>

#include "gritwright/report/quantity_text.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// Turns an English template into the reader's language; the default leaves it as it is. The desktop hands in its own.
using Translate = std::function<std::string(std::string_view)>;

/// "FILE:LINE:COLUMN" or "FILE#/json/pointer", as far as it is known.
[[nodiscard]] std::string place_text(const Place& place);
/// The same, with "FILE#" for a fault of a JSON document's root.
[[nodiscard]] std::string place_text(const Problem& problem);

/// What is wrong and what was expected, in one sentence without the place. Never empty: a code without a template is quoted
/// with its facts (a test keeps that from happening for codes of our own). Facts named by a metric unit ("mass_g") that stand
/// before that unit in the template are given in `units`.
[[nodiscard]] std::string sentence(const Problem& problem, const Translate& translate = {}, UnitSystem units = UnitSystem::metric);
[[nodiscard]] std::string sentence(const Note& note, const Translate& translate = {}, UnitSystem units = UnitSystem::metric);

/// True if there is a template for `code`.
[[nodiscard]] bool has_template(std::string_view code);

}  // namespace gritwright
