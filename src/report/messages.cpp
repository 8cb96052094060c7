#include "gritwright/report/messages.hpp"

#include <fmt/format.h>

#include <cmath>

#include "message_templates.hpp"

namespace gritwright {

namespace {

std::string fact_text(const Fact& fact) {
  if (const auto* text = std::get_if<std::string>(&fact)) return *text;
  const double number = std::get<double>(fact);
  // Four digits are more than a balance or a ruler carries; thousands keep theirs instead of turning into powers of ten.
  return std::abs(number) >= 1000 ? fmt::format("{:.0f}", number) : fmt::format("{:.4g}", number);
}

// Placeholders are {key}; what the input does not supply stays visible, so that a forgotten fact is noticed.
std::string fill(std::string text, const Facts& facts) {
  for (const auto& [key, fact] : facts) {
    const std::string placeholder = "{" + key + "}";
    const std::string value = fact_text(fact);
    for (std::size_t at = text.find(placeholder); at != std::string::npos; at = text.find(placeholder, at + value.size())) {
      text.replace(at, placeholder.size(), value);
    }
  }
  return text;
}

std::string unknown_code(const std::string& code, const Facts& facts) {
  std::string text = code;
  for (const auto& [key, fact] : facts) text += fmt::format(" {}={}", key, fact_text(fact));
  return text;
}

std::string sentence_for(const std::string& code, const Facts& facts, const Translate& translate) {
  const auto text = message_template(code);
  if (!text) return unknown_code(code, facts);
  return fill(translate ? translate(*text) : std::string(*text), facts);
}

}  // namespace

std::string place_text(const Place& place) {
  std::string text = place.file.value_or("");
  if (place.line) {
    text += fmt::format("{}{}", text.empty() ? "line " : ":", *place.line);
    if (place.column) text += fmt::format(":{}", *place.column);
  } else if (!place.pointer.empty()) {
    text += "#" + place.pointer;
  }
  return text;
}

std::string sentence(const Problem& problem, const Translate& translate) {
  return sentence_for(problem.code, problem.facts, translate);
}

std::string sentence(const Note& note, const Translate& translate) { return sentence_for(note.code, note.facts, translate); }

bool has_template(std::string_view code) { return message_template(code).has_value(); }

}  // namespace gritwright
