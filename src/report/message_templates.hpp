#pragma once
#include <optional>
#include <string_view>

namespace gritwright {

/// The English sentence for a code, with {fact} placeholders.
std::optional<std::string_view> message_template(std::string_view code);

}  // namespace gritwright
