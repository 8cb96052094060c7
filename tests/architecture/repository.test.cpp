#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <set>
#include <string>

#include "support/paths.hpp"

TEST_CASE("The top level holds only what belongs there", "[architecture]") {
  static const std::set<std::string> expected{"CMakeLists.txt", "CMakePresets.json", "DEVELOPERS.md", "LICENSE",
                                              "README.md",      "demo-data",         "docs",          "include",
                                              "materials",      "src",               "start",         "tests",
                                              "build"};
  for (const auto& entry : std::filesystem::directory_iterator(GRITWRIGHT_SOURCE_DIR)) {
    const std::string name = entry.path().filename().string();
    if (name.starts_with(".") || name == "compile_commands.json") continue;
    INFO(name);
    CHECK(expected.contains(name));
  }
}

TEST_CASE("The newest section of the changelog is the version that is built", "[architecture]") {
  const auto first_match = [](const char* file, const std::regex& pattern) {
    std::ifstream stream(std::filesystem::path(GRITWRIGHT_SOURCE_DIR) / file);
    const std::string text{std::istreambuf_iterator<char>(stream), {}};
    std::smatch match;
    REQUIRE(std::regex_search(text, match, pattern));
    return match[1].str();
  };
  CHECK(first_match("docs/changelog.md", std::regex("\n## ([0-9.]+) \\([0-9-]+\\)")) ==
        first_match("CMakeLists.txt", std::regex("project\\(Gritwright VERSION ([0-9.]+)")));
}
