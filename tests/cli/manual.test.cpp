// The manual's examples are run: a block that begins with "$ gritwright ..." shows exactly what the program answers.
#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <optional>
#include <sstream>

#include "run.hpp"
#include "support/temporary_folder.hpp"

using namespace gritwright::cli;
namespace fs = std::filesystem;

namespace {

struct Example {
  std::string place;
  std::vector<std::string> arguments;
  std::string shown;
};

std::vector<Example> examples_of(const fs::path& page) {
  std::ifstream stream(page, std::ios::binary);
  std::vector<Example> examples;
  bool inside = false;
  int number = 0;
  for (std::string line; std::getline(stream, line);) {
    ++number;
    if (line.starts_with("```")) {
      inside = line == "```console";
      continue;
    }
    if (!inside) continue;
    if (line.starts_with("$ gritwright ")) {
      std::istringstream words(line.substr(13));
      examples.push_back({page.filename().string() + ':' + std::to_string(number),
                          {std::istream_iterator<std::string>(words), std::istream_iterator<std::string>()}, ""});
    } else if (!examples.empty()) {
      examples.back().shown += line + '\n';
    }
  }
  return examples;
}

}  // namespace

namespace {

/// A data folder of its own, so that examples that name no workbook have an empty one.
class DataFolder {
 public:
  DataFolder() {
    if (const char* was = std::getenv("XDG_DATA_HOME")) before_ = was;
    ::setenv("XDG_DATA_HOME", folder_.path().c_str(), 1);
  }
  ~DataFolder() {
    if (before_)
      ::setenv("XDG_DATA_HOME", before_->c_str(), 1);
    else
      ::unsetenv("XDG_DATA_HOME");
  }
  DataFolder(const DataFolder&) = delete;
  DataFolder& operator=(const DataFolder&) = delete;

 private:
  gritwright::tests::TemporaryFolder folder_;
  std::optional<std::string> before_;
};

}  // namespace

TEST_CASE("Before the first line is written the log says that there is no record yet, and a file that was named is missing", "[cli][log][refuses]") {
  const DataFolder data_folder;
  for (const char* action : {"list", "check"}) {
    const Answer answer = run({"log", action});
    CHECK(answer.exit == Exit::file_trouble);
    CHECK(answer.err.find("there is no record yet; write the first line with gritwright log add") != std::string::npos);
  }
  CHECK(run({"log", "list", "--workbook", "no-such.gritwright"}).err == "no-such.gritwright: the file is not there; look at its name\n");
}

TEST_CASE("Every command of the manual answers what the manual shows", "[cli][manual]") {
  const DataFolder data_folder;
  const fs::path before = fs::current_path();
  fs::current_path(GRITWRIGHT_SOURCE_DIR);
  std::size_t count = 0;
  for (const auto& entry : fs::directory_iterator("docs/manual")) {
    if (entry.path().extension() != ".md") continue;
    for (const Example& example : examples_of(entry.path())) {
      INFO(example.place);
      const Answer answer = run(example.arguments);
      CHECK(answer.out + answer.err == example.shown);
      ++count;
    }
  }
  fs::current_path(before);
  CHECK(count >= 8);
}
