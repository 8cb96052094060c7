#include "message_templates.hpp"

#include <algorithm>

namespace gritwright {

std::optional<std::string_view> message_template(std::string_view code) {
  for (const auto sentences : {input_sentences(), estimate_sentences(), plan_sentences()}) {
    const auto found = std::ranges::find(sentences, code, &MessageTemplate::code);
    if (found != sentences.end()) return found->text;
  }
  return std::nullopt;
}

}  // namespace gritwright
