// Every file of the demonstration is read, and its sieve tests can be graded.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "gritwright/formats/catalogue_folder.hpp"
#include "gritwright/formats/container_file.hpp"
#include "gritwright/formats/exchange_file.hpp"
#include "gritwright/formats/json_schema.hpp"
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

namespace {

SchemaTexts schemas_of_files() {
  SchemaTexts schemas;
  for (const auto& entry : fs::directory_iterator(fs::path(GRITWRIGHT_SOURCE_DIR) / "docs" / "file-format"))
    if (entry.path().extension() == ".json") schemas[entry.path().filename().string()] = text_of(entry.path());
  return schemas;
}

std::vector<IdentifiedRecord> nursery() {
  const auto read = read_exchange(text_of(demo / "nursery.json"), "nursery.json");
  INFO((read ? "" : read.problems().front().code + " " + read.problems().front().where.pointer));
  REQUIRE(read);
  return *read;
}

template <class R>
std::vector<R> all_of(const std::vector<IdentifiedRecord>& records) {
  std::vector<R> found;
  for (const IdentifiedRecord& record : records)
    if (const auto* held = std::get_if<R>(&record.record)) found.push_back(*held);
  return found;
}

}  // namespace

TEST_CASE("A record of every kind keeps to its schema as it is written, and comes back the same", "[demo_data][roundtrip]") {
  const SchemaTexts schemas = schemas_of_files();
  const auto records = nursery();
  std::ostringstream all;
  ExchangeWriter writer(all);
  for (const IdentifiedRecord& record : records) {
    INFO(ref_text(record.ref));
    writer.add(record.ref, record.record);
    const std::string text = write_identified_record(record.ref, record.record);
    CHECK(check_against_schema(text, "record.schema.json", schemas).empty());
    const auto back = read_exchange(text, "record.json");
    REQUIRE(back);
    CHECK(*back == std::vector{record});
  }
  writer.finish();
  CHECK(check_against_schema(all.str(), "workbook.schema.json", schemas).empty());
  const auto back = read_exchange(all.str(), "workbook.json");
  REQUIRE(back);
  CHECK(*back == records);
}

TEST_CASE("The nursery keeps to its schema, every record of it is sound, and every kind is there", "[demo_data]") {
  const SchemaTexts schemas = schemas_of_files();
  const std::string text = text_of(demo / "nursery.json");
  for (const Problem& problem : check_against_schema(text, "workbook.schema.json", schemas)) {
    INFO(problem.code << " " << problem.where.pointer);
    CHECK(problem.code.empty());
  }
  CHECK(text.find("invented") < 200);
  std::set<RecordKind> kinds;
  for (const IdentifiedRecord& record : nursery()) {
    kinds.insert(record.ref.kind);
    for (const Problem& problem : check(record.record)) {
      INFO(ref_text(record.ref) << " " << problem.code << " " << problem.where.pointer);
      CHECK(problem.code.empty());
    }
  }
  CHECK(kinds.size() == record_kinds.size());
}

TEST_CASE("The nursery holds the sieve tests, mixes and containers that stand as files of their own", "[demo_data]") {
  const auto records = nursery();
  const auto tests = all_of<RecordedSieveTest>(records);
  for (const fs::path& file : files_in("sieve_tests")) {
    INFO(file.string());
    const auto test = read_sieve_test(text_of(file), file.string());
    REQUIRE(test);
    CHECK(std::ranges::count(tests, *test, &RecordedSieveTest::test) == 1);
  }
  const auto folder = read_catalogue(fs::path(GRITWRIGHT_SOURCE_DIR) / "materials");
  REQUIRE(folder);
  const auto mixes = all_of<MixVersion>(records);
  for (const fs::path& file : files_in("mixes")) {
    INFO(file.string());
    const auto mix = read_mix(text_of(file), file.string(), sources(file.parent_path(), folder->catalogue));
    REQUIRE(mix);
    const auto kept = std::ranges::find(mixes, mix->mix.name, [](const MixVersion& version) { return version.mix.name; });
    REQUIRE(kept != mixes.end());
    REQUIRE(kept->mix.components.size() == mix->mix.components.size());
    for (std::size_t i = 0; i < mix->mix.components.size(); ++i) {
      CHECK(kept->mix.components[i].parts == mix->mix.components[i].parts);
      CHECK(kept->mix.components[i].grain == mix->mix.components[i].grain);
    }
  }
  const auto pots = all_of<RecordedContainer>(records);
  for (const fs::path& file : files_in("containers")) {
    INFO(file.string());
    const auto container = read_container(text_of(file), file.string(), sources(file.parent_path(), folder->catalogue));
    REQUIRE(container);
    const auto kept = std::ranges::find(pots, container->container.name, [](const RecordedContainer& pot) { return pot.container.name; });
    REQUIRE(kept != pots.end());
    CHECK(kept->container.rim == container->container.rim);
    CHECK(kept->container.depth == container->container.depth);
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
