// System-wide headers make a missing link line no guard, so the rooms' rules are read off the includes themselves.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "support/paths.hpp"

namespace {

namespace fs = std::filesystem;

struct Room {
  std::set<std::string> rooms;      ///< other rooms whose headers it may include
  std::set<std::string> libraries;  ///< foreign libraries allowed in headers and sources
  std::set<std::string> in_sources; ///< foreign libraries allowed inside the room only, never in its public headers
};

const std::map<std::string, Room>& rules() {
  static const std::map<std::string, Room> all{
      {"domain", {{}, {"boost/units"}, {}}},
      {"models", {{"domain"}, {"boost/units", "boost/math"}, {"nlopt", "glpk", "boost/random"}}},
      {"formats", {{"domain"}, {}, {"nlohmann"}}},
      {"workbook", {{"domain", "formats"}, {"SQLiteCpp"}, {"sqlite3"}}},
      {"report", {{"domain", "models"}, {"fmt"}, {}}},
      {"cli", {{"domain", "models", "formats", "workbook", "report"}, {"fmt", "CLI", "nlohmann"}, {}}},
      {"desktop", {{"domain", "models", "formats", "workbook", "report"}, {"Qt"}, {"fmt"}}}};
  return all;
}

std::string library_of(const std::string& header) {
  static const std::vector<std::pair<std::regex, std::string>> known{
      {std::regex("^boost/units.*"), "boost/units"}, {std::regex("^boost/math.*"), "boost/math"},
      {std::regex("^boost/random.*"), "boost/random"},
      {std::regex("^boost/.*"), "boost"},            {std::regex("^nlohmann/.*"), "nlohmann"},
      {std::regex("^fmt/.*"), "fmt"},                {std::regex("^CLI/.*"), "CLI"},
      {std::regex("^SQLiteCpp/.*"), "SQLiteCpp"},    {std::regex("^sqlite3.*"), "sqlite3"},
      {std::regex("^nlopt.*"), "nlopt"},             {std::regex("^glpk.*"), "glpk"},
      {std::regex("^Q[A-Za-z].*"), "Qt"}};
  for (const auto& [pattern, name] : known) {
    if (std::regex_match(header, pattern)) return name;
  }
  return {};
}

std::string text_of(const fs::path& file) {
  std::ifstream stream(file);
  std::ostringstream text;
  text << stream.rdbuf();
  return text.str();
}

std::vector<std::string> includes_of(const std::string& text) {
  static const std::regex line(R"((?:^|\n)[ \t]*#[ \t]*include[ \t]*[<"]([^>"]+)[>"])");
  std::vector<std::string> found;
  for (std::sregex_iterator match(text.begin(), text.end(), line), end; match != end; ++match) found.push_back((*match)[1]);
  return found;
}

std::vector<std::string> breaches_in(const std::string& room, const std::string& file, const std::string& text) {
  static const std::set<std::string> common{"units.hpp", "result.hpp", "estimate.hpp", "id.hpp"};
  static const std::set<std::string> outside_the_domain{"chrono", "ctime", "fstream", "iostream", "locale", "filesystem"};
  const Room& rule = rules().at(room);
  const bool is_source = file.starts_with("src/");
  std::vector<std::string> breaches;
  const auto breach = [&](const std::string& header) { breaches.push_back(file + " includes " + header); };
  for (const std::string& header : includes_of(text)) {
    if (header.starts_with("gritwright/")) {
      const std::string rest = header.substr(std::string("gritwright/").size());
      if (common.contains(rest)) continue;
      const std::string other = rest.substr(0, rest.find('/'));
      if (other != room && !rule.rooms.contains(other)) breach(header);
    } else if (const std::string library = library_of(header); !library.empty()) {
      if (!rule.libraries.contains(library) && !(is_source && rule.in_sources.contains(library))) breach(header);
    } else if ((room == "domain" || room == "models") && outside_the_domain.contains(header)) {
      breach(header);
    }
  }
  return breaches;
}

}  // namespace

TEST_CASE("No room includes what it may not know", "[architecture]") {
  const fs::path root(GRITWRIGHT_SOURCE_DIR);
  std::size_t read = 0;
  for (const auto& [room, rule] : rules()) {
    for (const fs::path& folder : {root / "src" / room, root / "include/gritwright" / room}) {
      if (!fs::exists(folder)) continue;
      for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        const std::string file = fs::relative(entry.path(), root).string();
        if (!file.ends_with(".cpp") && !file.ends_with(".hpp")) continue;
        ++read;
        for (const std::string& breach : breaches_in(room, file, text_of(entry.path()))) FAIL_CHECK(breach);
      }
    }
  }
  CHECK(read >= 9);
}

TEST_CASE("The include test sees a breach of every sort", "[architecture]") {
  CHECK(breaches_in("domain", "include/gritwright/domain/a.hpp", "#include <nlohmann/json.hpp>\n").size() == 1);
  CHECK(breaches_in("domain", "src/domain/a.cpp", "#include \"gritwright/models/packing.hpp\"\n").size() == 1);
  CHECK(breaches_in("models", "include/gritwright/models/a.hpp", "#pragma once\n  #include <nlopt.hpp>\n").size() == 1);
  CHECK(breaches_in("models", "src/models/a.cpp", "#include <nlopt.hpp>\n").empty());
  CHECK(breaches_in("report", "src/report/a.cpp", "#include <QString>\n").size() == 1);
  CHECK(breaches_in("models", "src/models/a.cpp", "#include <fstream>\n").size() == 1);
}

TEST_CASE("Every public header is in its room's header set, so that the development build compiles it alone", "[architecture]") {
  const fs::path root(GRITWRIGHT_SOURCE_DIR);
  const fs::path headers = root / "include/gritwright";
  std::string lists;
  for (const auto& [room, rule] : rules()) lists += text_of(root / "src" / room / "CMakeLists.txt");
  std::set<std::string> listed;
  std::istringstream words(lists);
  for (std::string word; words >> word;) listed.insert(word.substr(0, word.find(')')));
  std::size_t read = 0;
  for (const auto& entry : fs::recursive_directory_iterator(headers)) {
    if (entry.path().extension() != ".hpp") continue;
    ++read;
    INFO(entry.path().string());
    CHECK(listed.contains(fs::relative(entry.path(), headers).string()));
  }
  CHECK(read > 100);
}
