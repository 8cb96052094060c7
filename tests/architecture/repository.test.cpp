#include <catch2/catch.hpp>
#include <filesystem>
#include <set>
#include <string>

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
