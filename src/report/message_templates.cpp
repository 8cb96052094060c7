#include "message_templates.hpp"

#include <algorithm>
#include <array>

// lupdate collects what stands in GRITWRIGHT_TEXT (-tr-function-alias); at run time it is the bare literal.
#define GRITWRIGHT_TEXT(literal) literal

namespace gritwright {

namespace {

struct Template {
  std::string_view code;
  std::string_view text;
};

constexpr std::array templates{
    Template{"file.is-folder", GRITWRIGHT_TEXT("this is a folder; name a file")},
    Template{"file.missing", GRITWRIGHT_TEXT("the file is not there or can't be read")},
    Template{"file.too-large", GRITWRIGHT_TEXT("the file is larger than {limit_mb} MB; a sieve test or a mix is a few kilobytes")},
    Template{"file.unreadable", GRITWRIGHT_TEXT("reading stopped half-way; nothing was done with the file")},
};

}  // namespace

std::optional<std::string_view> message_template(std::string_view code) {
  const auto* found = std::ranges::find(templates, code, &Template::code);
  if (found == templates.end()) return std::nullopt;
  return found->text;
}

}  // namespace gritwright
