#include <sys/stat.h>

#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>

#include "gritwright/formats/named_file.hpp"
#include "support/temporary_folder.hpp"

using namespace gritwright;
namespace fs = std::filesystem;

namespace {

struct Desk : tests::TemporaryFolder {
  Desk() {
    for (const char* folder : {"work/mixes/below", "work/sieve_tests", "work/other", "away"}) fs::create_directories(path() / folder);
    for (const char* file : {"work/mixes/own.csv", "work/mixes/below/deep.csv", "work/sieve_tests/bag.csv", "work/other/file.csv", "away/secret.csv"})
      std::ofstream(path() / file) << "x";
  }
  [[nodiscard]] std::string answer(const std::string& name) const {
    const auto file = file_named_in(path() / "work/mixes/mix.json", name);
    return file ? "" : file.problems().front().code;
  }
};

}  // namespace

TEST_CASE("A file named inside another is looked for in its folder and in sieve_tests beside it", "[named_file]") {
  const Desk desk;
  for (const char* name : {"own.csv", "./own.csv", "below/deep.csv", "below/../own.csv", "../sieve_tests/bag.csv", "not_there.csv", "-"}) {
    INFO(name);
    CHECK(desk.answer(name).empty());
  }
  CHECK(file_named_in("mix.json", "bag.csv").ok());
  CHECK(desk.answer((desk.path() / "work/mixes/own.csv").string()).empty());
}

TEST_CASE("A name that leads out of the folder, by dots, from the root or over a link, is refused", "[named_file][refuses]") {
  const Desk desk;
  fs::create_symlink(desk.path() / "away/secret.csv", desk.path() / "work/mixes/link.csv");
  fs::create_directory_symlink(desk.path() / "away", desk.path() / "work/mixes/folder");
  fs::create_symlink("own.csv", desk.path() / "work/mixes/inner.csv");
  for (const char* name : {"../other/file.csv", "../../away/secret.csv", "/etc/passwd", "link.csv", "folder/secret.csv", "../mixes_too/own.csv", "below/../../other/file.csv", "..",
                           "../sieve_tests/../other/file.csv"}) {
    INFO(name);
    CHECK(desk.answer(name) == "file.outside-folder");
  }
  CHECK(desk.answer("inner.csv").empty());
  CHECK(desk.answer("") == "file.no-name");
}

TEST_CASE("A pipe that never ends is not waited for", "[named_file][refuses]") {
  const Desk desk;
  REQUIRE(::mkfifo((desk.path() / "work/mixes/pipe.csv").c_str(), 0600) == 0);
  CHECK(desk.answer("pipe.csv") == "file.no-access");
}
