#include <catch2/catch.hpp>
#include <fstream>
#include <iterator>
#include <regex>
#include <set>

#include "run.hpp"
#include "support/paths.hpp"

using namespace gritwright::cli;

TEST_CASE("An unknown verb or option is wrong usage", "[cli][refuses]") {
  CHECK(run({"grind"}).exit == Exit::wrong_usage);
  CHECK(run({"grind"}).err.starts_with("There is no subcommand grind\n"));
  CHECK(run({"grad", "x"}).err.starts_with("There is no subcommand grad; did you mean grade?\n"));
  CHECK(run({"grade", "-", "--no-such-option"}).exit == Exit::wrong_usage);
  CHECK(run({}).exit == Exit::wrong_usage);
  CHECK(run({"grade", "-", "--band", "6-2"}).exit == Exit::wrong_usage);
}

TEST_CASE("A verb's help lists what changes its answer, and every verb takes the common options all the same", "[cli]") {
  CHECK(run({"grade", "--help"}).out.find("--laboratory") != std::string::npos);
  CHECK(run({"mix", "--help"}).out.find("--laboratory") == std::string::npos);
  CHECK(run({"mix", "--help"}).out.find("--explain") != std::string::npos);
  CHECK(run({"log", "--help"}).out.find("--explain") == std::string::npos);
  CHECK(run({"catalogue", "--help"}).out.find("--units") == std::string::npos);
  CHECK(run({"catalogue", "list", "--units", "us", "--laboratory"}).exit == Exit::done);
}

TEST_CASE("A file that is missing, or a folder, is file trouble and says which", "[cli][refuses]") {
  const Answer missing = run({"grade", "no-such-file.csv"});
  CHECK(missing.exit == Exit::file_trouble);
  CHECK(missing.err == "no-such-file.csv: the file is not there; look at its name\n");
  CHECK(run({"grade", GRITWRIGHT_SOURCE_DIR}).exit == Exit::file_trouble);
}

TEST_CASE("Refused input answers nothing on standard output and names every fault with its place", "[cli][refuses]") {
  const Answer answer = run({"grade", "-", "--json"}, "aperture_mm,retained_g\n2,abc\n4,1\npan,-3\n");
  CHECK(answer.exit == Exit::input_refused);
  CHECK(answer.out.empty());
  CHECK(answer.err ==
        "standard input:2:3: abc is not a number; write it in figures\n"
        "standard input:3:1: the opening 4 mm follows 2 mm; write the sieves from coarse to fine\n"
        "standard input:4:5: a mass of -3 g can't be; expected 0 or more\n");
}

TEST_CASE("A fault of a JSON document as a whole names its root, and trouble with the file only the file", "[cli][refuses]") {
  CHECK(run({"mix", "-"}, R"({"format":"gritwright/mix/1"})").err.starts_with("standard input#: "));
  CHECK(run({"mix", "-"}, " ").err.starts_with("standard input: "));
}

TEST_CASE("A JSON text that breaks off or goes wrong says so where it happens", "[cli][refuses]") {
  CHECK(run({"mix", "-"}, R"({"format":"gritwright/mix/1")").err ==
        "standard input:1:29: the file ends before its JSON does; close the last bracket or quote, or save the file again\n");
  CHECK(run({"mix", "-"}, "{\"format\":\"gritwright/mix/1\"\n \"components\":[]}").err.starts_with("standard input:2:"));
  const Answer deep = run({"mix", "-"}, R"({"components":)" + std::string(100, '['));
  CHECK(deep.err.starts_with("standard input#/components/0/0/0"));
}

TEST_CASE("Numbers that no measurement gives are refused before they overflow", "[cli][refuses][regression]") {
  const std::string component = R"({"name":"a","bulk_density_g_l":600,"particle_density_g_l":1000,"class_mm":4,"parts":)";
  const Answer parts = run({"mix", "-"}, R"({"format":"gritwright/mix/1","components":[)" + component + "1e308}," + component + "1e308}]}");
  CHECK(parts.exit == Exit::input_refused);
  CHECK(parts.err.find("#/components/1/parts: ") != std::string::npos);
  CHECK(run({"grade", "-"}, "aperture_mm,retained_g\n4,1e308\n2,1e308\npan,0\n").exit == Exit::input_refused);
  CHECK(run({"mix", "-", "--depth-cm", "1e12"}).exit == Exit::wrong_usage);
}

TEST_CASE("Help and version answer on standard output", "[cli]") {
  CHECK(run({"--help"}).exit == Exit::done);
  const std::string version = run({"--version"}).out;
  CHECK(version.starts_with("gritwright "));
  CHECK(version.find("SQLite 3.") != std::string::npos);
}

namespace {

std::string text_of(const std::string& path) {
  std::ifstream stream(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), {}};
}

// Every match of `pattern`'s first group in `text`.
std::set<std::string> found(const std::string& text, const std::regex& pattern) {
  std::set<std::string> words;
  for (std::sregex_iterator match(text.begin(), text.end(), pattern), end; match != end; ++match) words.insert((*match)[1]);
  return words;
}

}  // namespace

TEST_CASE("The manual page names every verb and option that the help names", "[cli]") {
  std::string page = text_of(GRITWRIGHT_SOURCE_DIR "/src/cli/linux/gritwright.1.in");
  std::erase(page, '\\');
  const std::string help = run({"--help"}).out;
  const auto verbs = found(help.substr(help.find("Subcommands:")), std::regex("\n  ([a-z]+) "));
  REQUIRE(verbs.size() >= 7);
  for (const std::string& verb : verbs) {
    INFO(verb);
    CHECK(page.find(".BI " + verb + " ") != std::string::npos);
    for (const std::string& option : found(run({verb, "--help"}).out, std::regex("(--[a-z-]+)"))) {
      INFO(option);
      CHECK(page.find(option) != std::string::npos);
    }
  }
}

namespace {

/// Keys of an answer that no explanation names. Names, ends of ranges and texts explain themselves.
std::set<std::string> unexplained(const Answer& answer) {
  const auto json = answer.json();
  std::set<std::string> explained{"notes", "explanations", "name", "pot"};
  for (const auto& explanation : json["explanations"]) explained.insert(explanation["figure"].get<std::string>());
  std::set<std::string> keys;
  const auto take = [&](const auto& object) {
    for (const auto& [key, value] : object.items())
      if (!value.is_null() && !explained.contains(key)) keys.insert(key);
  };
  take(json);
  for (const char* inner : {"pot", "laboratory"})
    if (json.contains(inner)) take(json[inner]);
  keys.erase("laboratory");
  return keys;
}

}  // namespace

TEST_CASE("--explain has a formula for every figure of an answer", "[cli][law]") {
  const std::string demo = GRITWRIGHT_SOURCE_DIR "/demo-data/";
  const std::set<std::string> none;
  CHECK(unexplained(run({"grade", fixture("published/boyer_2012_pine_bark.csv"), "--json", "--explain", "--laboratory", "--band", "1-6"})) == none);
  CHECK(unexplained(run({"mix", demo + "mixes/pines.json", "--pot", demo + "containers/tray_01.json", "--json", "--explain"})) == none);
  CHECK(unexplained(run({"pot", demo + "containers/tray_01.json", "--mix", demo + "mixes/pines.json", "--json", "--explain"})) == none);
  const auto screened = run({"screen", fixture("published/boyer_2012_pine_bark.csv"), "--at", "2", "--json", "--explain"}).json();
  std::set<std::string> explained{"from_mm", "to_mm"};
  for (const auto& explanation : screened["explanations"]) explained.insert(explanation["figure"].get<std::string>());
  for (const auto& [key, value] : screened["fractions"][0].items()) CHECK(explained.contains(key));
  for (const std::vector<std::string>& action : {std::vector<std::string>{"list"}, {"show", "zeolite"}}) {
    std::vector<std::string> words{"catalogue", "--json", "--explain"};
    words.insert(words.begin() + 1, action.begin(), action.end());
    CHECK_FALSE(run(words).json()["explanations"].empty());
  }
}

TEST_CASE("An option that names a file is not taken without a name", "[cli][refuses]") {
  const std::string demo = GRITWRIGHT_SOURCE_DIR "/demo-data/";
  CHECK(run({"mix", demo + "mixes/pines.json", "--pot", ""}).exit == Exit::wrong_usage);
  CHECK(run({"pot", demo + "containers/tray_01.json", "--mix", ""}).exit == Exit::wrong_usage);
  const Answer nameless = run({"grade", ""});
  CHECK(nameless.exit == Exit::file_trouble);
  CHECK(nameless.err == "the name of the file is empty; give one\n");
  const Answer dash = run({"mix", "-"}, R"({"format":"gritwright/mix/1","components":[{"name":"a","parts":1,"sieve_test":"-"}]})");
  CHECK(dash.exit == Exit::file_trouble);
  CHECK(dash.err.find("standard input#/components/0/sieve_test") == std::string::npos);
}
