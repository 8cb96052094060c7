// Every file of the demonstration is read, and its sieve tests can be graded.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "gritwright/formats/catalogue_folder.hpp"
#include "gritwright/formats/container_file.hpp"
#include "gritwright/formats/mix_file.hpp"
#include "gritwright/formats/sieve_test_file.hpp"
#include "gritwright/models/sieve_analysis.hpp"
#include "support/paths.hpp"

using namespace gritwright;

namespace {

namespace fs = std::filesystem;

const fs::path demo = fs::path(GRITWRIGHT_SOURCE_DIR) / "demo-data";

std::string text_of(const fs::path& path) {
  std::ifstream stream(path, std::ios::binary);
  REQUIRE(stream.is_open());
  return {std::istreambuf_iterator<char>(stream), {}};
}

std::vector<fs::path> files_in(const char* folder) {
  std::vector<fs::path> files;
  for (const auto& entry : fs::directory_iterator(demo / folder)) files.push_back(entry.path());
  std::ranges::sort(files);
  return files;
}

ComponentSources sources(const fs::path& base, const Catalogue& catalogue) {
  return {&catalogue, [base](const std::string& file) -> Result<SieveTestGrading> {
            const auto test = read_sieve_test(text_of(base / file), file);
            if (!test) return test.problems();
            const auto analysis = analyse(*test);
            if (!analysis) return analysis.problems();
            return SieveTestGrading{analysis->grading, test->bulk_density, test->particle_density, {}};
          }};
}

}  // namespace

TEST_CASE("Every sieve test of the demonstration can be graded", "[demo_data]") {
  const auto files = files_in("sieve_tests");
  CHECK(files.size() == 20);
  for (const fs::path& file : files) {
    INFO(file.string());
    const auto test = read_sieve_test(text_of(file), file.string());
    REQUIRE(test);
    CHECK(test->material);
    CHECK(test->lot);
    const auto analysis = analyse(*test);
    REQUIRE(analysis);
    CHECK(check(analysis->grading).empty());
  }
}

TEST_CASE("Every mix and container of the demonstration is read", "[demo_data]") {
  const auto folder = read_catalogue(fs::path(GRITWRIGHT_SOURCE_DIR) / "materials");
  REQUIRE(folder);
  for (const fs::path& file : files_in("mixes")) {
    INFO(file.string());
    CHECK(read_mix(text_of(file), file.string(), sources(file.parent_path(), folder->catalogue)).ok());
  }
  for (const fs::path& file : files_in("containers")) {
    INFO(file.string());
    CHECK(read_container(text_of(file), file.string(), sources(file.parent_path(), folder->catalogue)).ok());
  }
}

TEST_CASE("The demonstration says of every file that it is invented", "[demo_data]") {
  const std::string readme = text_of(demo / "README.md");
  CHECK(readme.find("Every number here is invented") != std::string::npos);
  for (const char* folder : {"sieve_tests", "mixes", "containers"})
    for (const fs::path& file : files_in(folder)) {
      INFO(file.string());
      CHECK(readme.find(file.filename().string()) != std::string::npos);
    }
}
