#pragma once
#include <optional>
#include <string_view>

// lupdate collects what stands in GRITWRIGHT_TEXT (-tr-function-alias); at run time it is the bare literal.
#define GRITWRIGHT_TEXT(literal) literal

namespace gritwright {

/// The English sentence for a code, with {fact} placeholders.
std::optional<std::string_view> message_template(std::string_view code);

}  // namespace gritwright
