// A user must never see a bare code: every code the sources can raise has a sentence.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>

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
