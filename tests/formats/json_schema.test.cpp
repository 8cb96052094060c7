#include "gritwright/formats/json_schema.hpp"

#include <catch2/catch.hpp>
#include <string>
#include <vector>

using namespace gritwright;

namespace {

const SchemaTexts texts{
    {"pot", R"({"type":"object","required":["depth"],"additionalProperties":false,"properties":{)"
            R"("depth":{"type":"number","exclusiveMinimum":0,"maximum":50},"layers":{"type":"array","minItems":1,"items":{"$ref":"grain"}},)"
            R"("stock":{"type":"object","additionalProperties":{"$ref":"#/$defs/share"}},"shape":{"enum":["round","oval"]},"either":{"oneOf":[{"type":"integer"},{"const":"x"}]},"share":{"$ref":"#/$defs/share"}},)"
            R"("$defs":{"share":{"type":["number","null"],"minimum":0}}})"},
    {"grain", R"({"type":"string"})"},
    {"odd", R"({"format":"date"})"}};

std::vector<std::string> codes(const std::string& document, const std::string& schema = "pot") {
  std::vector<std::string> result;
  for (const Problem& problem : check_against_schema(document, schema, texts)) result.push_back(problem.code + problem.where.pointer);
  return result;
}

using Codes = std::vector<std::string>;

}  // namespace

TEST_CASE("A document that keeps to its schema has no problems", "[json_schema]") {
  CHECK(codes(R"({"depth":6,"layers":["grit"],"shape":"oval","either":3,"share":null})").empty());
  CHECK(codes(R"({"depth":6,"either":"x","share":0.2})").empty());
}

TEST_CASE("Members of any name are held against the schema given for them", "[json_schema][refuses]") {
  CHECK(codes(R"({"depth":6,"stock":{"grit":0.5,"bark":null}})").empty());
  CHECK(codes(R"({"depth":6,"stock":{"grit":0.5,"bark":-1}})") == Codes{"schema.out-of-range/stock/bark"});
}

TEST_CASE("Each breach of a schema is told with its place", "[json_schema][refuses]") {
  CHECK(codes("[]") == Codes{"schema.wrong-type"});
  CHECK(codes("{}") == Codes{"key.missing"});
  CHECK(codes(R"({"depth":6,"lid":1})") == Codes{"key.unknown/lid"});
  CHECK(codes(R"({"depth":0})") == Codes{"schema.out-of-range/depth"});
  CHECK(codes(R"({"depth":51})") == Codes{"schema.out-of-range/depth"});
  CHECK(codes(R"({"depth":6,"layers":[]})") == Codes{"schema.too-few/layers"});
  CHECK(codes(R"({"depth":6,"layers":["a",1]})") == Codes{"schema.wrong-type/layers/1"});
  CHECK(codes(R"({"depth":6,"shape":"heart"})") == Codes{"schema.not-allowed/shape"});
  CHECK(codes(R"({"depth":6,"either":1.5})") == Codes{"schema.no-alternative/either", "schema.wrong-type/either"});
  CHECK(codes(R"({"depth":6,"share":-1})") == Codes{"schema.out-of-range/share"});
}

TEST_CASE("A schema that asks for what is not checked is refused", "[json_schema][refuses]") {
  CHECK(codes("1", "odd") == Codes{"schema.unknown-keyword"});
  CHECK(codes("1", "none") == Codes{"schema.missing-schema"});
}
