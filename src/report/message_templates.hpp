#pragma once
#include <optional>
#include <span>
#include <string_view>

// What stands in GRITWRIGHT_TEXT gets into the catalogues (src/desktop/translations/update.cmake); at run time it is the bare literal.
#define GRITWRIGHT_TEXT(literal) literal

namespace gritwright {

struct MessageTemplate {
  std::string_view code;
  std::string_view text;
};

// The sentences, in a file for each of three kinds of code.
[[nodiscard]] std::span<const MessageTemplate> input_sentences();
[[nodiscard]] std::span<const MessageTemplate> estimate_sentences();
[[nodiscard]] std::span<const MessageTemplate> plan_sentences();

/// The English sentence for a code, with {fact} placeholders.
std::optional<std::string_view> message_template(std::string_view code);

}  // namespace gritwright
