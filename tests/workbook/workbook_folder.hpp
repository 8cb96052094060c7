#pragma once
#include <unistd.h>

#include <catch2/catch.hpp>
#include <chrono>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include "gritwright/domain/record.hpp"
#include "gritwright/workbook/open_workbook.hpp"
#include "support/temporary_folder.hpp"

namespace gritwright::tests {

/// A folder for workbooks that goes away with the test.
class Folder : public TemporaryFolder {
 public:
  [[nodiscard]] std::filesystem::path file(const std::string& name = "nursery.gritwright") const { return path() / name; }
};

/// Where this machine stands.
inline std::chrono::system_clock::time_point noon(int day_of_march_2026) {
  std::tm parts{};
  parts.tm_year = 2026 - 1900;
  parts.tm_mon = 2;
  parts.tm_mday = day_of_march_2026;
  parts.tm_hour = 12;
  parts.tm_isdst = -1;
  return std::chrono::system_clock::from_time_t(std::mktime(&parts));
}

/// A clock that stands still until a test moves it.
struct Hand {
  std::chrono::system_clock::time_point now = noon(1);
  Placement placement = Placement::local;
  [[nodiscard]] OpeningOptions options() {
    OpeningOptions options;
    options.clock = [this] { return now; };
    options.placement = placement;
    options.daily_backup = false;
    return options;
  }
};

inline OpenWorkbook opened(const std::filesystem::path& file, OpeningOptions options) {
  Result<OpenWorkbook> workbook = OpenWorkbook::open(file, std::move(options));
  INFO((workbook.ok() ? std::string() : workbook.problems().front().code));
  REQUIRE(workbook.ok());
  return std::move(workbook).value();
}

inline std::string bytes_of(const std::filesystem::path& file) {
  std::ifstream stream(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), {}};
}
inline void write_bytes(const std::filesystem::path& file, const std::string& bytes) {
  std::ofstream(file, std::ios::binary | std::ios::trunc) << bytes;
}

inline Bag akadama_bag(const std::string& lot) {
  Bag bag;
  bag.material = "akadama";
  bag.lot = lot;
  bag.volume = loose_l(14);
  bag.received = "2026-02-01";
  return bag;
}

template <class T>
std::string code_of(const Result<T>& result) {
  return result.ok() ? "" : result.problems().front().code;
}

}  // namespace gritwright::tests
