// Files that were damaged at random are read or refused; what is read keeps the rules of its record.
#include <sys/mman.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iterator>
#include <random>
#include <string>
#include <string_view>
#include <vector>

#include "gritwright/formats/container_file.hpp"
#include "gritwright/formats/design_problem_file.hpp"
#include "gritwright/formats/exchange_file.hpp"
#include "gritwright/formats/incoming_records.hpp"
#include "gritwright/formats/material_file.hpp"
#include "gritwright/formats/mix_file.hpp"
#include "gritwright/formats/planned_day_file.hpp"
#include "gritwright/formats/pot_test_file.hpp"
#include "gritwright/formats/record_csv.hpp"
#include "gritwright/formats/record_file.hpp"
#include "gritwright/formats/root_mass_plan_file.hpp"
#include "gritwright/formats/sieve_test_file.hpp"
#include "gritwright/formats/text_size.hpp"
#include "support/paths.hpp"

using namespace gritwright;

namespace {

std::string example(const char* name) {
  std::ifstream stream(std::filesystem::path(GRITWRIGHT_SOURCE_DIR) / "docs" / "file-format" / "examples" / name, std::ios::binary);
  REQUIRE(stream.is_open());
  return {std::istreambuf_iterator<char>(stream), {}};
}

class Damage {
 public:
  explicit Damage(unsigned seed) : random_(seed) {}

  std::string done_to(std::string text) {
    for (std::size_t blows = 1 + below(3); blows > 0; --blows) {
      const std::size_t at = below(text.size());
      switch (below(4)) {
        case 0: text[at] = static_cast<char>(below(256)); break;
        case 1: text.erase(at, 1 + below(8)); break;
        case 2: text = text.substr(0, at) + token() + text.substr(at); break;
        default: text = text.substr(0, at) + text.substr(below(text.size())); break;
      }
      if (text.empty()) return text;
    }
    return text;
  }

 private:
  std::size_t below(std::size_t end) { return std::uniform_int_distribution<std::size_t>(0, end - 1)(random_); }
  std::string token() {
    static const char* const tokens[] = {"-", "1e308", "1e999", ",", ";", "\"", "{", "[", "]", "}", "\n", "\r", "\t", "nan", "\\u0000", "\xFF", "0", "#", ":", "pan", "null"};
    return tokens[below(std::size(tokens))];
  }
  std::mt19937 random_;
};

struct AnyReader {
  const char* name;
  std::function<Problems(std::string_view)> problems;
  bool json = true;
  std::size_t largest_mb = largest_text_mb;
};

std::vector<AnyReader> all_readers() {
  return {{"container", [](std::string_view text) { return read_container(text, "f", {}).problems(); }},
          {"mix", [](std::string_view text) { return read_mix(text, "f", {}).problems(); }},
          {"design", [](std::string_view text) { return read_design_problem(text, "f", {}).problems(); }},
          {"day", [](std::string_view text) { return read_planned_day(text, "f", {}).problems(); }},
          {"pot test", [](std::string_view text) { return read_pot_test(text, "f", {}).problems(); }},
          {"root-mass plan", [](std::string_view text) { return read_root_mass_plan(text, "f", {}).problems(); }},
          {"begun root-mass plan", [](std::string_view text) { return read_begun_root_mass_plan(text, "f", {}).problems(); }},
          {"material", [](std::string_view text) { return read_material(text, "f").problems(); }},
          {"references", [](std::string_view text) { return read_references(text, "f").problems(); }},
          {"sieve test", [](std::string_view text) { return read_sieve_test(text, "f").problems(); }},
          {"record", [](std::string_view text) { return read_record(text, "f").problems(); }},
          {"record of a kind", [](std::string_view text) { return read_record(RecordKind::bag, text, "f").problems(); }},
          {"list", [](std::string_view text) { return read_records_csv(RecordKind::bag, text, "f").problems(); }, false},
          {"workbook", [](std::string_view text) { return read_exchange(text, "f").problems(); }, true, largest_exchange_mb},
          {"what comes in", [](std::string_view text) { return read_incoming(text, "f", RecordKind::bag).problems(); }, true, largest_exchange_mb}};
}

bool says(const Problems& problems, const char* code) {
  return std::ranges::any_of(problems, [&](const Problem& problem) { return problem.code == code; });
}

}  // namespace

TEST_CASE("No reader takes a text beyond its size, or brackets ten thousand deep", "[spoiled_files][security][refuses]") {
  constexpr std::size_t longest = largest_exchange_mb * 1024 * 1024 + 1;
  // Pages nobody looks into take no memory.
  void* pages = ::mmap(nullptr, longest, PROT_READ, MAP_PRIVATE | MAP_ANONYMOUS | MAP_NORESERVE, -1, 0);
  REQUIRE(pages != MAP_FAILED);
  const std::string_view huge(static_cast<const char*>(pages), longest);
  std::string objects;
  for (int i = 0; i < 10'000; ++i) objects += "{\"a\":";
  for (const AnyReader& reader : all_readers()) {
    INFO(reader.name);
    CHECK(says(reader.problems(huge.substr(0, reader.largest_mb * 1024 * 1024 + 1)), "file.too-large"));
    if (!reader.json) continue;
    CHECK(says(reader.problems(std::string(10'000, '[')), "json.too-deep"));
    CHECK(says(reader.problems(objects), "json.too-deep"));
  }
  ::munmap(pages, longest);
}

TEST_CASE("A damaged file is refused, or what is read of it keeps the record's rules", "[spoiled_files][law]") {
  const unsigned seed = static_cast<unsigned>(Catch::rngSeed());
  INFO("seed " << seed);
  Damage damage(seed);
  std::size_t refused = 0, taken = 0;
  const auto judge = [&](bool read, bool keeps_rules, const Problems& problems) {
    if (read) {
      ++taken;
      if (!keeps_rules) FAIL_CHECK("a record that breaks its rules was read");
    } else {
      ++refused;
      if (problems.empty()) FAIL_CHECK("refused without a problem");
    }
  };
  const std::string csv = example("sieve_test.csv"), json = example("sieve_test.json"), pot_text = example("container_drum.json");
  const std::string mix_text =
      R"({"format":"gritwright/mix/1","components":[{"name":"a","parts":2,"bulk_density_g_l":450,"particle_density_g_l":900,)"
      R"("skeletal_density_g_l":2350,"water_absorption":0.4,"grading":[{"aperture_mm":9.5,"passing":95},{"aperture_mm":4,"passing":40}]},)"
      R"({"name":"b","parts":1,"bulk_density_g_l":750,"class_mm":4}],"water":{"k_cm_mm":12,"n":6},"settling":0.08})";
  for (int round = 0; round < 2'500; ++round) {
    for (const std::string& whole : {csv, json}) {
      const auto test = read_sieve_test(damage.done_to(whole), "f");
      judge(test.ok(), !test.ok() || check(*test).empty(), test.problems());
    }
    const auto mix = read_mix(damage.done_to(mix_text), "f", {});
    judge(mix.ok(), !mix.ok() || check(mix->mix).empty(), mix.problems());
    const auto pot = read_container(damage.done_to(pot_text), "f", {});
    judge(pot.ok(), !pot.ok() || check(pot->container).empty(), pot.problems());
  }
  CHECK(refused > 1'000);
  CHECK(taken > 100);
}
