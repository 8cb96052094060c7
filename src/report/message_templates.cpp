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
    Template{"csv.duplicate-column", GRITWRIGHT_TEXT("the column {column} stands twice in the header")},
    Template{"csv.missing-column", GRITWRIGHT_TEXT("the header has no column {column}; expected aperture_mm with retained_g, with gross_g and tare_g, or with retained_l")},
    Template{"csv.no-header", GRITWRIGHT_TEXT("there is no header line; expected aperture_mm,retained_g")},
    Template{"csv.row-after-pan", GRITWRIGHT_TEXT("a row follows the pan (line {pan_line}); the pan is the last row")},
    Template{"csv.too-many-cells", GRITWRIGHT_TEXT("{found} cells stand here; the header has {expected} columns")},
    Template{"csv.unknown-column", GRITWRIGHT_TEXT("there is no column called {column}")},
    Template{"date.not-a-day", GRITWRIGHT_TEXT("{text} is not a day; expected a date like 2026-03-14")},
    Template{"file.empty", GRITWRIGHT_TEXT("the file is empty; expected a sieve test, a mix or a container")},
    Template{"file.is-folder", GRITWRIGHT_TEXT("this is a folder; name a file")},
    Template{"file.missing", GRITWRIGHT_TEXT("the file is not there or can't be read")},
    Template{"file.too-large", GRITWRIGHT_TEXT("the file is larger than {limit_mb} MB; a sieve test or a mix is a few kilobytes")},
    Template{"file.unreadable", GRITWRIGHT_TEXT("reading stopped half-way; nothing was done with the file")},
    Template{"format.unknown", GRITWRIGHT_TEXT("the format is {found}; expected {expected}")},
    Template{"json.syntax", GRITWRIGHT_TEXT("this is not JSON from here on: {text}")},
    Template{"json.too-deep", GRITWRIGHT_TEXT("brackets are nested deeper than {limit} levels")},
    Template{"key.duplicate", GRITWRIGHT_TEXT("the key {key} stands twice; give it once")},
    Template{"key.missing", GRITWRIGHT_TEXT("the key {key} is missing")},
    Template{"key.unknown", GRITWRIGHT_TEXT("there is no key called {key}")},
    Template{"number.decimal-comma", GRITWRIGHT_TEXT("{text} has a decimal comma; write a point, or separate the columns by ; or tab")},
    Template{"number.missing", GRITWRIGHT_TEXT("a number is missing here")},
    Template{"number.not-a-number", GRITWRIGHT_TEXT("{text} is not a number")},
    Template{"number.too-large", GRITWRIGHT_TEXT("{text} is too large to be a measured value")},
    Template{"sieve-test.measured-twice", GRITWRIGHT_TEXT("the same fraction is given in more than one way; give its mass, its gross and tare, or its litres")},
    Template{"sieve-test.no-pan", GRITWRIGHT_TEXT("the pan is missing; the last row holds what fell through the finest sieve, 0 if nothing did")},
    Template{"sieve-test.unknown-basis", GRITWRIGHT_TEXT("{text} is no basis; expected original or recovered")},
    Template{"text.not-utf8", GRITWRIGHT_TEXT("this byte is not UTF-8; save the file as UTF-8")},
    Template{"text.nul", GRITWRIGHT_TEXT("there is a NUL byte here; this is not a text file")},
    Template{"value.wrong-kind", GRITWRIGHT_TEXT("expected {expected} here")},
};

}  // namespace

std::optional<std::string_view> message_template(std::string_view code) {
  const auto* found = std::ranges::find(templates, code, &Template::code);
  if (found == templates.end()) return std::nullopt;
  return found->text;
}

}  // namespace gritwright
