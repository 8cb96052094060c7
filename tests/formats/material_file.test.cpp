#include "gritwright/formats/material_file.hpp"

#include <catch2/catch.hpp>
#include <string>

using namespace gritwright;

namespace {

const std::string json =
    R"({"format":"gritwright/material/1","name":"grit","aliases":["river grit"],"description":"Invented.","figures":{)"
    R"("bulk_density_g_l":{"value":1000,"low":900,"high":1200,"unit":"g/L","basis":"air-dry","kind":"measured","source":"x",)"
    R"("range_kind":"typical","range_source":"memory","remark":"Poured."},)"
    R"("open_share":{"value":0.9,"unit":"share","kind":"derived","source":"computed"}}})";

Problem refusal(const std::string& from, const std::string& to) {
  std::string text = json;
  const auto at = text.find(from);
  REQUIRE(at != std::string::npos);
  const auto result = read_material(text.replace(at, from.size(), to), "grit.json");
  REQUIRE(result.problems().size() == 1);
  CHECK(result.problems().front().where.file == "grit.json");
  return result.problems().front();
}

}  // namespace

TEST_CASE("A reference material is read with value, range, basis, kind and source", "[material_file]") {
  const auto material = read_material(json, "grit.json");
  REQUIRE(material);
  CHECK(material->name == "grit");
  CHECK(material->aliases == std::vector<std::string>{"river grit"});
  CHECK(material->bulk_density_g_l == CatalogueFigure{1000, 900, 1200, FigureKind::measured, "x", FigureKind::typical, "memory",
                                                      MoistureBasis::air_dry, "Poured."});
  CHECK(material->open_share->kind == FigureKind::derived);
  CHECK_FALSE(material->particle_density_g_l);
  const GrainProperties grain = typical_grain(*material);
  CHECK(grain.bulk_density == bulk_g_l(1000));
  CHECK(grain.open_share == OpenShare(0.9));
  CHECK_FALSE(grain.particle_density);
  CHECK(grain.provenance == Provenance::typical);
}

TEST_CASE("A figure that contradicts itself or names no unit, kind or source is refused", "[material_file][refuses]") {
  CHECK(refusal("\"value\":1000", "\"value\":800").code == "catalogue.value-outside-range");
  CHECK(refusal("\"low\":900", "\"low\":1300").code == "catalogue.range-upside-down");
  CHECK(refusal("\"value\":0.9", "\"value\":1.1").code == "catalogue.share-above-one");
  CHECK(refusal("\"value\":0.9", "\"value\":-0.1").code == "catalogue.negative");
  CHECK(refusal("\"source\":\"x\"", "\"source\":\"\"").code == "catalogue.no-source");
  CHECK(refusal("\"unit\":\"g/L\"", "\"unit\":\"kg/L\"").code == "catalogue.wrong-unit");
  CHECK(refusal("\"kind\":\"measured\"", "\"kind\":\"guessed\"").code == "catalogue.unknown-word");
  CHECK(refusal("\"basis\":\"air-dry\"", "\"basis\":\"damp\"").code == "catalogue.unknown-word");
  CHECK(refusal("\"unit\":\"share\",", "").code == "key.missing");
  CHECK(refusal("\"open_share\"", "\"openness\"").code == "key.unknown");
}

TEST_CASE("A material is found by name or alias and its nearest names by spelling", "[material_file]") {
  Material grit, lava, bark;
  grit.name = "granite grit";
  lava.name = "scoria";
  lava.aliases = {"lava"};
  bark.name = "pine bark";
  const Catalogue catalogue({grit, lava, bark});
  CHECK(catalogue.find("Granite-Grit")->name == "granite grit");
  CHECK(catalogue.find("LAVA")->name == "scoria");
  CHECK(catalogue.find("basalt") == nullptr);
  CHECK(catalogue.nearest("bark").front() == "pine bark");
  CHECK(catalogue.nearest("scorai").front() == "scoria");
  CHECK(catalogue.nearest("lavva", 1) == std::vector<std::string>{"scoria"});
}
