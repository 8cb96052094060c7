#pragma once
#include <stdlib.h>

#include <catch2/catch.hpp>
#include <filesystem>
#include <string>

namespace gritwright::tests {

/// A folder that goes away with the test.
class TemporaryFolder {
 public:
  TemporaryFolder() {
    // mkdtemp() fills in the last six letters.
    std::string name = (std::filesystem::temp_directory_path() / "gritwright-").string();
    name.append(6, 'X');
    REQUIRE(::mkdtemp(name.data()) != nullptr);
    path_ = name;
  }
  ~TemporaryFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;
  [[nodiscard]] const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

}  // namespace gritwright::tests
