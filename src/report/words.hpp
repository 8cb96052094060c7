#pragma once
#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "gritwright/report/messages.hpp"

namespace gritwright {

/// A sheet's sentences in the reader's language and its figures in the reader's units.
struct Words {
  const Translate& translate;
  UnitSystem units;

  /// `text` is a GRITWRIGHT_TEXT; every {name} of `facts` is filled in.
  std::string operator()(std::string_view text, std::initializer_list<std::pair<std::string_view, std::string>> facts = {}) const;
  std::vector<std::string> each(std::initializer_list<std::string_view> texts) const;
  /// "a, b, c" and "a; b" with the marks of the reader's language.
  std::string list(const std::vector<std::string>& things) const;
  std::string long_list(const std::vector<std::string>& things) const;
  /// "label: text"; `text` alone without a label.
  std::string labelled(const std::string& label, const std::string& text) const;
  /// `one` for a single thing, else `many` with {count}.
  std::string counted(std::size_t count, std::string_view one, std::string_view many) const;
};

}  // namespace gritwright
