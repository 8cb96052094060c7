#include "gritwright/report/messages.hpp"
#include "gritwright/report/quantity_text.hpp"

#include <catch2/catch.hpp>
#include <string>
#include <string_view>

using namespace gritwright;

TEST_CASE("A grain that some batch does without is named", "[messages]") {
  CHECK(sentence(Note{"day.batch-lacks-grain", Level::warning, "m", {{"grain", std::string("charcoal")}, {"without", 2.0}, {"batches", 5.0}}}) ==
        "in whole scoops, batches without charcoal: 2 of 5; mix them with the others before use, or take a smaller scoop or a larger tub");
}

TEST_CASE("A place in a text file is file, line and column", "[messages]") {
  CHECK(place_text(Place{"bag.csv", 3, 7, ""}) == "bag.csv:3:7");
  CHECK(place_text(Place{"bag.csv", 3, {}, ""}) == "bag.csv:3");
}

TEST_CASE("A place in a JSON file is file and pointer", "[messages]") {
  CHECK(place_text(Place{"mix.json", {}, {}, "/components/0/parts"}) == "mix.json#/components/0/parts");
}

TEST_CASE("A message quotes numbers with a point under every locale", "[messages]") {
  const Problem problem{"file.too-large", {}, {{"limit_mb", 1.5}}};
  CHECK(sentence(problem) == "the file is larger than 1.5 MB, where a sieve test or a mix is a few kilobytes; look whether it is the one you meant");
}

TEST_CASE("A fact has no more digits than what is measured in its unit carries", "[messages]") {
  const auto said = [](double cm) { return sentence(Note{"root-plan.shoulder", Level::note, "", {{"rise_cm", cm}}}); };
  CHECK(said(0.57812).find("0.6 cm") != std::string::npos);
  CHECK(said(2).find(" 2.0 cm") != std::string::npos);
  // Small is not nothing.
  CHECK(said(0.0031).find("0.0031 cm") != std::string::npos);
  CHECK(sentence(Problem{"root-plan.volume-negative", {}, {{"volume_ml", -1234.56}}}).find("-1235 mL") != std::string::npos);
  CHECK(sentence(Problem{"root-plan.volume-negative", {}, {{"volume_ml", -12.56}}}).find("-13 mL") != std::string::npos);
}

TEST_CASE("A length that was worked out has the digits a sheet gives it, and one that was typed its own", "[messages][law]") {
  for (const double cm : {0.05, 0.45, 1.65, 2.0, 12.34, -3.25}) {
    INFO(cm);
    const std::string note = sentence(Note{"root-plan.shoulder", Level::note, "", {{"rise_cm", cm}}});
    CHECK(note.find(" " + depth_text(depth_cm(cm), UnitSystem::metric)) != std::string::npos);
  }
  CHECK(sentence(Problem{"root-plan.length-negative", {}, {{"length_cm", -1.65}}}).find("-1.65 cm") != std::string::npos);
}

TEST_CASE("A message can give its masses and sizes in US units", "[messages]") {
  const Note note{"sieve-test.overload", Level::warning, "4", {{"aperture_mm", 4.75}, {"mass_g", 453.5924}, {"limit_g", 28.34952}}};
  const std::string text = sentence(note, {}, UnitSystem::us);
  CHECK(text.find("16.0 oz") != std::string::npos);
  CHECK(text.find("No. 4") != std::string::npos);
  CHECK(text.find("453") == std::string::npos);
}

TEST_CASE("A code without a template is still told with its facts", "[messages]") {
  CHECK(sentence(Problem{"no-such.code", {}, {{"mass_g", 2.0}}}) == "no-such.code mass_g=2");
}

TEST_CASE("A message can be translated before its facts are filled in", "[messages]") {
  const Problem problem{"file.too-large", {}, {{"limit_mb", 64.0}}};
  CHECK(sentence(problem, [](std::string_view) { return std::string("mehr als {limit_mb} MB"); }) == "mehr als 64 MB");
}

TEST_CASE("A kind of record is named in words, not by its key in files", "[messages]") {
  const auto said = [](const char* kind, const Translate& translate = {}) { return sentence(Problem{"workbook.not-there", {}, {{"kind", std::string(kind)}, {"id", std::string("X-1")}}}, translate); };
  CHECK(said("root-mass-plan") == "there is no root-mass plan X-1; look at its number");
  CHECK(said("container") == "there is no pot X-1; look at its number");
  CHECK(said("bag", [](std::string_view text) { return text == "bag" ? std::string("Sack") : std::string(text); }) == "there is no Sack X-1; look at its number");
}

TEST_CASE("What would be refused today is told in the words of the refusal", "[messages]") {
  const gritwright::Note note{"workbook.record-at-odds", gritwright::Level::warning, "bag:P-03/count", {{"fault", "bag.count-below-one"}, {"count", -1.0}}};
  CHECK(gritwright::sentence(note) == "would be refused today: -1 bags can't be; expected 1 or more");
}
