#include "search_words.hpp"

#include <algorithm>

namespace gritwright {

namespace {

bool is_word_sign(char sign) {
  const auto byte = static_cast<unsigned char>(sign);
  return byte >= 0x80 || (byte >= '0' && byte <= '9') || (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z');
}

/// One term of the full-text search: a phrase, and its last word by its beginning. Quoted, so that nothing typed is an operator.
void add_term(std::string& match, std::string_view term, bool by_beginning) {
  if (std::ranges::none_of(term, is_word_sign)) return;
  if (!match.empty()) match += ' ';
  match += '"';
  for (const char sign : term) match += is_word_sign(sign) ? sign : ' ';
  match += by_beginning ? "\"*" : "\"";
}

}  // namespace

std::string match_of(std::string_view typed) {
  std::string match;
  while (!typed.empty()) {
    if (typed.front() == '"') {
      const auto end = typed.find('"', 1);
      add_term(match, typed.substr(1, end == std::string_view::npos ? end : end - 1), end == std::string_view::npos);
      typed.remove_prefix(end == std::string_view::npos ? typed.size() : end + 1);
      continue;
    }
    const auto end = std::min(typed.find_first_of(" \t\r\n\""), typed.size());
    add_term(match, typed.substr(0, end), true);
    typed.remove_prefix(std::max<std::size_t>(end, 1));
  }
  return match;
}

}  // namespace gritwright
