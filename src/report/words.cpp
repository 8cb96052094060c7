#include "words.hpp"

#include <fmt/format.h>

#include "message_templates.hpp"

namespace gritwright {

std::string Words::operator()(std::string_view text, std::initializer_list<std::pair<std::string_view, std::string>> facts) const {
  std::string said = translate ? translate(text) : std::string(text);
  for (const auto& [name, value] : facts) {
    std::string placeholder{"{"};
    placeholder.append(name).append("}");
    for (std::size_t at = said.find(placeholder); at != std::string::npos; at = said.find(placeholder, at + value.size())) said.replace(at, placeholder.size(), value);
  }
  return said;
}

std::vector<std::string> Words::each(std::initializer_list<std::string_view> texts) const {
  std::vector<std::string> said;
  for (const std::string_view text : texts) said.push_back(text.empty() ? std::string() : (*this)(text));
  return said;
}

std::string Words::list(const std::vector<std::string>& things) const { return fmt::format("{}", fmt::join(things, (*this)(GRITWRIGHT_TEXT(", ")))); }

std::string Words::long_list(const std::vector<std::string>& things) const { return fmt::format("{}", fmt::join(things, (*this)(GRITWRIGHT_TEXT("; ")))); }

std::string Words::labelled(const std::string& label, const std::string& text) const {
  return label.empty() ? text : fmt::format("{}{}{}", label, (*this)(GRITWRIGHT_TEXT(": ")), text);
}

std::string Words::counted(std::size_t count, std::string_view one, std::string_view many) const {
  return count == 1 ? (*this)(one) : (*this)(many, {{"count", std::to_string(count)}});
}

}  // namespace gritwright
