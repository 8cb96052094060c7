#include "gritwright/report/messages.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "message_templates.hpp"

namespace gritwright {

namespace {

/// Decimals that what is measured in a unit carries: a ruler reads half a millimetre, a sieve's opening three decimals.
struct DecimalsOfFact {
  std::string_view key_end;
  int decimals;
};
constexpr std::array decimals_of_facts{DecimalsOfFact{"_g_l", 0}, DecimalsOfFact{"_mm", 3},  DecimalsOfFact{"_cm", 2},     DecimalsOfFact{"_kg", 2},
                                       DecimalsOfFact{"_g", 2},   DecimalsOfFact{"_ml", 0},  DecimalsOfFact{"_l", 2},      DecimalsOfFact{"percent", 1},
                                       DecimalsOfFact{"_deg", 1}};

/// What is told of was worked out, or what was typed is said again with all its digits.
enum class Digits { as_worked_out, as_typed };

std::string fact_text(std::string_view key, const Fact& fact, Digits digits) {
  if (const auto* text = std::get_if<std::string>(&fact)) return *text;
  const double number = std::get<double>(fact);
  // Four digits are more than a balance or a ruler carries; thousands keep theirs instead of turning into powers of ten.
  if (std::abs(number) >= 1000) return fmt::format("{:.0f}", number);
  const auto unit = std::ranges::find_if(decimals_of_facts, [&](const DecimalsOfFact& of) { return key.ends_with(of.key_end); });
  if (unit == decimals_of_facts.end()) return fmt::format("{:.4g}", number);
  const double step = std::pow(10, -unit->decimals);
  const double rounded = std::round(number / step) * step;
  // Beside a sheet's own lengths the same one has the same digits.
  if (digits == Digits::as_worked_out && key.ends_with("_cm") && std::abs(number) >= 0.05) {
    const std::string depth = depth_text(depth_cm(number), UnitSystem::metric);
    return depth.substr(0, depth.find(' '));
  }
  // What would round to nothing is small, not absent.
  return rounded == 0 && number != 0 ? fmt::format("{:.2g}", number) : fmt::format("{:.4g}", rounded);
}

/// How a fact whose key ends in a unit is said in US units: the unit as templates write it, and number with unit.
struct UnitOfFact {
  std::string_view key_end;
  std::string_view written;
  std::string (*us_text)(double);
};

constexpr std::array units_of_facts{
    UnitOfFact{"_g_l", " g/L", [](double value) { return density_text(value, UnitSystem::us); }},
    UnitOfFact{"_mm", " mm", [](double value) { return size_text(aperture_mm(value), UnitSystem::us); }},
    UnitOfFact{"_cm", " cm", [](double value) { return depth_text(depth_cm(value), UnitSystem::us); }},
    UnitOfFact{"_kg", " kg", [](double value) { return mass_text(mass_kg(value), UnitSystem::us); }},
    UnitOfFact{"_g", " g", [](double value) { return mass_text(mass_g(value), UnitSystem::us); }},
    UnitOfFact{"_ml", " mL", [](double value) { return volume_text(value / 1000, UnitSystem::us); }},
    UnitOfFact{"_l", " L", [](double value) { return volume_text(value, UnitSystem::us); }},
};

std::string in_us_units(std::string text, const Facts& facts) {
  for (const auto& [key, fact] : facts) {
    const auto* number = std::get_if<double>(&fact);
    const auto unit = std::ranges::find_if(units_of_facts, [&name = key](const UnitOfFact& u) { return name.ends_with(u.key_end); });
    if (number == nullptr || unit == units_of_facts.end()) continue;
    const std::string written = "{" + key + "}" + std::string(unit->written);
    for (std::size_t at = text.find(written); at != std::string::npos; at = text.find(written, at + 1)) {
      text.replace(at, written.size(), unit->us_text(*number));
    }
  }
  return text;
}

// Placeholders are {key}; what the input does not supply stays visible, so that a forgotten fact is noticed.
std::string fill(std::string text, const Facts& facts, Digits digits) {
  for (const auto& [key, fact] : facts) {
    const std::string placeholder = "{" + key + "}";
    const std::string value = fact_text(key, fact, digits);
    for (std::size_t at = text.find(placeholder); at != std::string::npos; at = text.find(placeholder, at + value.size())) {
      text.replace(at, placeholder.size(), value);
    }
  }
  return text;
}

/// A word of ours that stands as a fact, and how it is said.
struct SaidAs {
  std::string_view word;
  std::string_view said;
};

/// Kinds of records, faces and directions of a root mass, a pot as it was weighed.
constexpr std::array words_in_facts{SaidAs{"material", GRITWRIGHT_TEXT("material")},
                                    SaidAs{"bag", GRITWRIGHT_TEXT("bag")},
                                    SaidAs{"bin", GRITWRIGHT_TEXT("bin")},
                                    SaidAs{"fraction", GRITWRIGHT_TEXT("fraction")},
                                    SaidAs{"sieve-set", GRITWRIGHT_TEXT("sieve set")},
                                    SaidAs{"sieve-test", GRITWRIGHT_TEXT("sieve test")},
                                    SaidAs{"mix", GRITWRIGHT_TEXT("mix")},
                                    SaidAs{"container", GRITWRIGHT_TEXT("pot")},
                                    SaidAs{"tree", GRITWRIGHT_TEXT("tree")},
                                    SaidAs{"root-mass-plan", GRITWRIGHT_TEXT("root-mass plan")},
                                    SaidAs{"repotting-day", GRITWRIGHT_TEXT("repotting day")},
                                    SaidAs{"batch", GRITWRIGHT_TEXT("batch")},
                                    SaidAs{"pot-test", GRITWRIGHT_TEXT("pot test")},
                                    SaidAs{"stock-entry", GRITWRIGHT_TEXT("stock entry")},
                                    SaidAs{"log-entry", GRITWRIGHT_TEXT("log entry")},
                                    SaidAs{"species-profile", GRITWRIGHT_TEXT("group of trees")},
                                    SaidAs{"right", GRITWRIGHT_TEXT("right")},
                                    SaidAs{"left", GRITWRIGHT_TEXT("left")},
                                    SaidAs{"back", GRITWRIGHT_TEXT("back")},
                                    SaidAs{"front", GRITWRIGHT_TEXT("front")},
                                    SaidAs{"top", GRITWRIGHT_TEXT("top")},
                                    SaidAs{"bottom", GRITWRIGHT_TEXT("bottom")},
                                    SaidAs{"up", GRITWRIGHT_TEXT("up")},
                                    SaidAs{"down", GRITWRIGHT_TEXT("down")},
                                    SaidAs{"the empty pot", GRITWRIGHT_TEXT("the empty pot")},
                                    SaidAs{"the dry pot", GRITWRIGHT_TEXT("the dry pot")},
                                    SaidAs{"the drained pot", GRITWRIGHT_TEXT("the drained pot")}};

/// A name that is spelt like one of those words stays as it is: only these facts never hold one.
Facts in_readers_words(Facts facts, const Translate& translate) {
  for (const char* key : {"kind", "what", "face", "direction"}) {
    const auto fact = facts.find(key);
    if (fact == facts.end()) continue;
    auto* text = std::get_if<std::string>(&fact->second);
    if (text == nullptr) continue;
    const auto* word = std::ranges::find(words_in_facts, std::string_view(*text), &SaidAs::word);
    if (word != words_in_facts.end()) *text = translate ? translate(word->said) : std::string(word->said);
  }
  return facts;
}

std::string unknown_code(const std::string& code, const Facts& facts) {
  std::string text = code;
  for (const auto& [key, fact] : facts) text += fmt::format(" {}={}", key, fact_text(key, fact, Digits::as_typed));
  return text;
}

std::string sentence_for(const std::string& code, Facts facts, const Translate& translate, UnitSystem units, Digits digits) {
  const auto text = message_template(code);
  if (!text) return unknown_code(code, facts);
  std::string said = translate ? translate(*text) : std::string(*text);
  if (units == UnitSystem::us) said = in_us_units(std::move(said), facts);
  // A fault within is told in its own words, of the same facts.
  if (const auto fault = facts.find("fault"); fault != facts.end()) {
    Facts its = facts;
    its.erase("fault");
    fault->second = sentence_for(std::get<std::string>(fault->second), std::move(its), translate, units, digits);
  }
  return fill(std::move(said), in_readers_words(std::move(facts), translate), digits);
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

std::string place_text(const Problem& problem) {
  const Place& place = problem.where;
  // The empty pointer is the root of a JSON document; only trouble with the file as such has no place in it.
  const auto is_about = [&](const char* what) { return problem.code.starts_with(what); };
  const bool at_root = place.file && !place.line && place.pointer.empty() && !is_about("file.") && !is_about("workbook.") && !is_about("import.");
  return place_text(place) + (at_root ? "#" : "");
}

std::string sentence(const Problem& problem, const Translate& translate, UnitSystem units) {
  return sentence_for(problem.code, problem.facts, translate, units, Digits::as_typed);
}

std::string sentence(const Note& note, const Translate& translate, UnitSystem units) {
  return sentence_for(note.code, note.facts, translate, units, Digits::as_worked_out);
}

bool has_template(std::string_view code) { return message_template(code).has_value(); }

}  // namespace gritwright
