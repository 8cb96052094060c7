#include <catch2/catch.hpp>
#include <sstream>
#include <string>

#include "gritwright/formats/exchange_file.hpp"
#include "gritwright/formats/record_file.hpp"

using namespace gritwright;

namespace {

std::string faults_of(const Result<std::vector<IdentifiedRecord>>& result) {
  std::string text;
  for (const Problem& problem : result.problems()) text += problem.where.pointer + " " + problem.code + "\n";
  return text;
}

IdentifiedRecord bag(const std::string& id, const std::string& lot) {
  Bag record;
  record.material = "kanuma";
  record.lot = lot;
  return {{RecordKind::bag, id}, record, {}};
}

}  // namespace

TEST_CASE("Records with ids go to an exchange file and come back the same", "[exchange][roundtrip]") {
  std::ostringstream out;
  ExchangeWriter writer(out, "an \"invented\" note");
  std::vector<IdentifiedRecord> records;
  for (int i = 0; i < 300; ++i) records.push_back(bag("K-" + std::to_string(i), "\xF0\x9F\x8C\xB2 \\ \" \n \xD7\xA9" + std::to_string(i)));
  for (const IdentifiedRecord& record : records) writer.add(record.ref, record.record);
  writer.finish();
  const auto read = read_exchange(out.str(), "file.json");
  REQUIRE(read);
  CHECK(*read == records);
  CHECK(read->at(7).from.pointer == "/records/7");
  const auto single = read_exchange(write_identified_record(records[3].ref, records[3].record), "file.json");
  REQUIRE(single);
  CHECK(*single == std::vector{records[3]});
}

TEST_CASE("A bare record, a sieve test and a container are taken in without an id", "[exchange]") {
  const auto bare = read_exchange(R"({"format":"gritwright/bag/1","material":"kanuma"})", "x");
  REQUIRE(bare);
  CHECK(bare->front().ref == RecordRef{RecordKind::bag, ""});
  const auto test = read_exchange(
      R"({"format":"gritwright/sieve-test/1","dry_mass_g":100,"retained":[{"aperture_mm":2,"mass_g":98}],"pan_g":2})", "x");
  REQUIRE(test);
  CHECK(test->front().ref.kind == RecordKind::sieve_test);
  const auto container = read_exchange(
      R"({"format":"gritwright/container/1","shape":"round","rim":{"diameter_cm":20},"base":{"diameter_cm":18},"depth_cm":7})", "x");
  REQUIRE(container);
  CHECK(container->front().ref.kind == RecordKind::container);
}

TEST_CASE("All faults of an exchange file are faults_of in one go with their places", "[exchange][refuses]") {
  const auto faulty = read_exchange(R"({"format":"gritwright/workbook/1","records":[
    {"kind":"bag","id":"K-01","record":{"format":"gritwright/bag/1","material":7}},
    {"kind":"sack","id":"K-02","record":{}},
    {"kind":"bag","id":"","record":{"format":"gritwright/bag/1","material":"a"},"more":1},
    {"kind":"bag","id":"K-04"},
    {"kind":"bag","id":"K-05","record":{"format":"gritwright/bag/1","material":"a","received":"2026-13-01"}},
    5],"other":1})",
                                    "x");
  CHECK(faults_of(faulty) ==
        "/records/0/record/material value.wrong-kind\n"
        "/records/1/kind record.unknown-kind\n"
        "/records/2/more key.unknown\n/records/2/id record.no-name\n"
        "/records/3 key.missing\n"
        "/records/4/record/received date.not-a-day\n"
        "/records/5 value.wrong-kind\n"
        "/other key.unknown\n");
  CHECK(faults_of(read_exchange("[1]", "x")) == "/format format.unknown\n");
  CHECK(faults_of(read_exchange("{\"format\":\"gritwright/workbook/1\"}", "x")) == " key.missing\n");
  CHECK(faults_of(read_exchange("{\"records\":[", "x")).find("json.ends-early") != std::string::npos);
  CHECK(faults_of(read_exchange(R"({"format":"gritwright/workbook/1","records":[],"records":[]})", "x")).find("key.duplicate") != std::string::npos);
}
