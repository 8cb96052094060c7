// A user must never see a bare code: every code the sources can raise has a sentence.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <sstream>
#include <string>

#include "gritwright/report/messages.hpp"
#include "support/paths.hpp"

namespace {

namespace fs = std::filesystem;

std::set<std::string> codes_in(const fs::path& folder) {
  // Codes look like "subject.what-is-wrong"; a file's name in quotes does not count.
  static const std::regex literal(R"re("([a-z]+(?:-[a-z]+)*\.[a-z]+(?:-[a-z0-9]+)*)")re");
  static const std::regex file_name(R"re(.*\.(hpp|cpp|json|csv|md|pdf|png|svg|txt|gritwright))re");
  std::set<std::string> codes;
  for (const auto& entry : fs::recursive_directory_iterator(folder)) {
    if (entry.path().extension() != ".cpp" && entry.path().extension() != ".hpp") continue;
    std::ifstream stream(entry.path());
    std::ostringstream text;
    text << stream.rdbuf();
    const std::string source = text.str();
    for (std::sregex_iterator match(source.begin(), source.end(), literal), end; match != end; ++match) {
      if (!std::regex_match((*match)[1].str(), file_name)) codes.insert((*match)[1]);
    }
  }
  return codes;
}

/// By code, as they stand in the sources.
std::map<std::string, std::string> sentences_in(const fs::path& folder) {
  static const std::regex sentence(R"re(MessageTemplate\{"([^"]+)", GRITWRIGHT_TEXT\("((?:[^"\\]|\\.)*)"\))re");
  std::map<std::string, std::string> sentences;
  for (const auto& entry : fs::directory_iterator(folder)) {
    if (!entry.path().filename().string().ends_with("_sentences.cpp")) continue;
    std::ifstream stream(entry.path());
    for (std::string line; std::getline(stream, line);) {
      std::smatch found;
      if (std::regex_search(line, found, sentence)) sentences[found[1]] = found[2];
    }
  }
  return sentences;
}

/// Told for what they are: nothing is wrong, or what to do stands in the sentence told beside it.
const std::set<std::string> asking_for_nothing{"ageing.plain-pot", "day.settling-learnt", "day.spill-learnt", "mix.calibrated", "mix.calibrated-by-tests",
                                               "mix.calibrated-on", "mix.settling-by-jug", "narrow.otherwise", "repotting-day.left-out",
                                               "root-plan.bare-root-when-growing", "sieve-tests.weighted-equally", "verdict.screening-leaves-misplaced",
                                               "water.one-grain-perched", "workbook.nothing-to-redo", "workbook.nothing-to-undo"};

}  // namespace

TEST_CASE("Every code that the sources can raise has a sentence", "[messages][law]") {
  std::size_t seen = 0;
  for (const char* room : {"domain", "models", "formats", "workbook", "cli"}) {
    const fs::path folder = fs::path(GRITWRIGHT_SOURCE_DIR) / "src" / room;
    if (!fs::exists(folder)) continue;
    for (const std::string& code : codes_in(folder)) {
      ++seen;
      INFO(code << " (add it to one of src/report/*_sentences.cpp)");
      CHECK(gritwright::has_template(code));
    }
  }
  CHECK(seen > 20);
}

TEST_CASE("A sentence goes on after the fault, to what is expected or to do", "[messages][law]") {
  static const std::regex goes_on(R"re([;:?]|expected|needs|must|has to|needed|name at least|give |\. [A-Z])re");
  const auto sentences = sentences_in(fs::path(GRITWRIGHT_SOURCE_DIR) / "src" / "report");
  CHECK(sentences.size() > 300);
  for (const auto& [code, text] : sentences) {
    INFO(code << ": " << text << " (say what to do about it)");
    CHECK((std::regex_search(text, goes_on) || asking_for_nothing.contains(code)));
  }
}
