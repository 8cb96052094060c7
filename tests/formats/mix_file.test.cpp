#include "gritwright/formats/mix_file.hpp"

#include <catch2/catch.hpp>
#include <string>
#include <vector>

using namespace gritwright;

namespace {

const std::string mix_json =
    R"({"format":"gritwright/mix/1","name":"pines","components":[)"
    R"({"name":"a","parts":2,"bulk_density_g_l":450,"bulk_moisture_percent":5,"particle_density_g_l":900,)"
    R"("skeletal_density_g_l":2350,"open_share":0.9,"water_absorption":0.4,"cec_meq_100g":19,"pan_size_mm":0.3,"top_size_mm":12.5,)"
    R"("grading":[{"aperture_mm":9.5,"passing":95},{"aperture_mm":4,"passing":40},{"aperture_mm":0.5,"passing":2}]},)"
    R"({"name":"b","parts":1,"bulk_density_g_l":750,"class_mm":4}],)"
    R"("water":{"k_cm_mm":12},"settling":0.08})";

Problem mix_refusal(const std::string& text, const ComponentSources& sources = {}) {
  const auto result = read_mix(text, "mix.json", sources);
  REQUIRE(result.problems().size() == 1);
  CHECK(result.problems().front().where.file == "mix.json");
  return result.problems().front();
}

std::string mix_with(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  REQUIRE(at != std::string::npos);
  return text.replace(at, from.size(), to);
}

Catalogue invented_catalogue() {
  Material grit;
  grit.name = "grit";
  grit.aliases = {"river grit"};
  grit.bulk_density_g_l = {1000, 900, 1200, FigureKind::typical, "memory", {}, {}, {}, {}};
  grit.particle_density_g_l = CatalogueFigure{1900, {}, {}, FigureKind::typical, "memory", {}, {}, {}, {}};
  Material lava = grit;
  lava.name = "lava";
  lava.aliases = {};
  return Catalogue({grit, lava});
}

}  // namespace

TEST_CASE("A mix is read with every key of a component", "[mix_file]") {
  const auto file = read_mix(mix_json, "mix.json", {});
  REQUIRE(file);
  CHECK(file->notes.empty());
  const Mix& mix = file->mix;
  CHECK(mix.name == "pines");
  CHECK(mix.water.k_cm_mm == 12);
  CHECK(mix.water.n == RetentionConstants{}.n);
  CHECK(mix.settling == Settling(0.08));
  CHECK_FALSE(mix.spill);
  REQUIRE(mix.components.size() == 2);
  const Component& a = mix.components[0];
  CHECK(a.parts == Parts(2));
  CHECK(a.grain.bulk_density == bulk_g_l(450));
  CHECK(a.grain.bulk_moisture == Moisture(0.05));
  CHECK(a.grain.particle_density == particle_g_l(900));
  CHECK(a.grain.skeletal_density == skeletal_g_l(2350));
  CHECK(a.grain.open_share == OpenShare(0.9));
  CHECK(a.grain.water_absorption == WaterAbsorption(0.4));
  CHECK(a.grain.cation_exchange == CationExchange(19));
  CHECK(a.grain.provenance == Provenance::measured);
  const auto& grading = std::get<Grading>(a.sizes);
  REQUIRE(grading.points.size() == 3);
  CHECK(grading.points[0] == GradingPoint{aperture_mm(0.5), passing_percent(2)});
  CHECK(grading.points[2] == GradingPoint{aperture_mm(9.5), passing_percent(95)});
  CHECK(grading.pan_size == aperture_mm(0.3));
  CHECK(grading.top_size == aperture_mm(12.5));
  CHECK(mix.components[1].sizes == GrainSizes(SingleSize{aperture_mm(4)}));
}

TEST_CASE("A catalogue material fills in what a component does not say", "[mix_file]") {
  const Catalogue catalogue = invented_catalogue();
  const auto file = read_mix(
      R"({"format":"gritwright/mix/1","components":[{"material":"River-Grit","parts":1,"bulk_density_g_l":1100,"class_mm":3}]})",
      "mix.json", {&catalogue, {}});
  REQUIRE(file);
  const Component& component = file->mix.components.front();
  CHECK(component.name == "grit");
  CHECK(component.material == "grit");
  CHECK(component.grain.bulk_density == bulk_g_l(1100));
  CHECK(component.grain.particle_density == particle_g_l(1900));
  CHECK(component.grain.provenance == Provenance::typical);
}

TEST_CASE("An unknown material is refused with the nearest names", "[mix_file][refuses]") {
  const Catalogue catalogue = invented_catalogue();
  const Problem problem = mix_refusal(
      R"({"format":"gritwright/mix/1","components":[{"material":"gritt","parts":1,"class_mm":3}]})", {&catalogue, {}});
  CHECK(problem.code == "component.unknown-material");
  CHECK(problem.where.pointer == "/components/0/material");
  CHECK(std::get<std::string>(problem.facts.at("nearest")) == "grit, lava");
}

TEST_CASE("A sieve test named by a component brings its grading and densities", "[mix_file]") {
  const std::string text = R"({"format":"gritwright/mix/1","components":[{"name":"a","parts":1,"sieve_test":"bag.csv"}]})";
  ComponentSources sources;
  CHECK(mix_refusal(text, sources).code == "component.no-sieve-tests-here");
  sources.grading_of_sieve_test = [](const std::string& name) -> Result<SieveTestGrading> {
    CHECK(name == "bag.csv");
    return SieveTestGrading{Grading{{{aperture_mm(2), passing_percent(0)}, {aperture_mm(4), passing_percent(100)}}, {}, {}},
                            bulk_g_l(500), {}, {{"sieving.loss", Level::warning, "", {}}}};
  };
  const auto file = read_mix(text, "mix.json", sources);
  REQUIRE(file);
  CHECK(file->mix.components[0].grain.bulk_density == bulk_g_l(500));
  CHECK(std::get<Grading>(file->mix.components[0].sizes).points.size() == 2);
  REQUIRE(file->notes.size() == 1);
  CHECK(file->notes[0].where == "a");
  sources.grading_of_sieve_test = [](const std::string&) -> Result<SieveTestGrading> { return Problem{"file.missing", {}, {}}; };
  const Problem problem = mix_refusal(text, sources);
  CHECK(problem.code == "file.missing");
  CHECK(problem.where.pointer == "/components/0/sieve_test");
}

TEST_CASE("Passing up to one point outside 0-100 is rescaled with a note, more is refused", "[mix_file][refuses]") {
  const auto file = read_mix(mix_with(mix_json, "\"passing\":95", "\"passing\":100.5"), "mix.json", {});
  REQUIRE(file);
  REQUIRE(file->notes.size() == 1);
  CHECK(file->notes[0].code == "grading.passing-rescaled");
  CHECK(file->notes[0].where == "a");
  const auto& points = std::get<Grading>(file->mix.components[0].sizes).points;
  CHECK(points.back().passing == Passing(1));
  CHECK_THAT(points[1].passing.value(), Catch::Matchers::WithinAbs(40 / 100.5, 1e-12));
  const Problem above = mix_refusal(mix_with(mix_json, "\"passing\":95", "\"passing\":101.5"));
  CHECK(above.code == "grading.passing-out-of-range");
  CHECK(above.where.pointer == "/components/0/grading/0/passing");
  CHECK(mix_refusal(mix_with(mix_json, "\"passing\":2", "\"passing\":-1.5")).code == "grading.passing-out-of-range");
}

TEST_CASE("A grading may be written fine to coarse but not out of order", "[mix_file][refuses]") {
  const Problem problem = mix_refusal(mix_with(mix_json, "\"aperture_mm\":0.5", "\"aperture_mm\":5"));
  CHECK(problem.code == "grading.aperture-order");
  CHECK(problem.where.pointer == "/components/0/grading/2/aperture_mm");
  CHECK(mix_refusal(mix_with(mix_json, "\"aperture_mm\":4,", "\"aperture_mm\":9.5,")).code == "grading.aperture-order");
}

TEST_CASE("A mix with a fault in its keys is refused by name", "[mix_file][refuses]") {
  CHECK(mix_refusal(mix_with(mix_json, "\"settling\"", "\"setling\"")).where.pointer == "/setling");
  CHECK(mix_refusal(mix_with(mix_json, "\"k_cm_mm\"", "\"k\"")).where.pointer == "/water/k");
  CHECK(mix_refusal(mix_with(mix_json, "\"open_share\"", "\"open\"")).where.pointer == "/components/0/open");
  CHECK(mix_refusal(mix_with(mix_json, "\"parts\":1,", "")).code == "key.missing");
  CHECK(mix_refusal(mix_with(mix_json, "\"bulk_density_g_l\":750,", "")).code == "key.missing");
  CHECK(mix_refusal(mix_with(mix_json, ",\"class_mm\":4", "")).code == "component.no-sizes");
  CHECK(mix_refusal(mix_with(mix_json, "\"class_mm\":4", "\"class_mm\":4,\"grading\":[{\"aperture_mm\":2,\"passing\":0}]")).code ==
        "component.sizes-twice");
  CHECK(mix_refusal(mix_with(mix_json, "\"class_mm\":4", "\"class_mm\":4,\"pan_size_mm\":1")).code == "component.class-has-no-pan");
  CHECK(mix_refusal(mix_with(mix_json, "mix/1", "mix/2")).code == "format.unknown");
  CHECK(mix_refusal(mix_with(mix_json, "\"parts\":1", "\"parts\":\"1\"")).code == "value.wrong-kind");
  CHECK(mix_refusal(R"({"format":"gritwright/mix/1","components":[]})").code == "mix.no-components");
  CHECK(mix_refusal("[1,2]").code == "value.wrong-kind");
}

TEST_CASE("What a component or mix may not be is refused with its place", "[mix_file][refuses]") {
  const auto place = [](const std::string& from, const std::string& to) {
    const Problem problem = mix_refusal(mix_with(mix_json, from, to));
    return problem.code + problem.where.pointer;
  };
  CHECK(place("\"bulk_density_g_l\":450", "\"bulk_density_g_l\":950") == "component.bulk-above-particle/components/0/bulk_density_g_l");
  CHECK(place("\"skeletal_density_g_l\":2350", "\"skeletal_density_g_l\":850") ==
        "component.particle-above-skeletal/components/0/particle_density_g_l");
  CHECK(place("\"water_absorption\":0.4", "\"water_absorption\":0.7") == "component.absorption-above-pores/components/0/water_absorption");
  CHECK(place("\"passing\":40", "\"passing\":96") == "grading.passing-falls/components/0/grading");
  CHECK(place("\"aperture_mm\":0.5", "\"aperture_mm\":0") == "grading.aperture-not-positive/components/0/grading");
  CHECK(place("\"class_mm\":4", "\"class_mm\":0") == "component.size-not-positive/components/1/class_mm");
  CHECK(place("\"parts\":1", "\"parts\":-1") == "component.parts-negative/components/1/parts");
  CHECK(place("\"settling\":0.08", "\"settling\":1") == "mix.settling-range/settling");
  CHECK(place("\"k_cm_mm\":12", "\"k_cm_mm\":1") == "water.out-of-range/water/k_cm_mm");
  const auto idle = read_mix(mix_with(mix_with(mix_json, "\"parts\":2", "\"parts\":0"), "\"parts\":1", "\"parts\":0"), "mix.json", {});
  REQUIRE(idle.problems().size() == 1);
  CHECK(idle.problems().front().code == "mix.no-parts");
}

TEST_CASE("Equal passing on two sieves is allowed", "[mix_file]") {
  CHECK(read_mix(mix_with(mix_json, "\"passing\":40", "\"passing\":95"), "mix.json", {}).ok());
}

TEST_CASE("A fault in one component does not hide those of the others", "[mix_file][refuses]") {
  const auto result = read_mix(mix_with(mix_with(mix_json, "\"parts\":2", "\"parts\":\"2\""), "\"class_mm\":4", "\"class_mm\":-4"), "mix.json", {});
  REQUIRE(result.problems().size() == 2);
  CHECK(result.problems()[0].where.pointer == "/components/0/parts");
  CHECK(result.problems()[1].where.pointer == "/components/1/class_mm");
}

TEST_CASE("A key that can't be read hides no other fault of its component or of the mix", "[mix_file][refuses][regression]") {
  const auto told = [](const std::string& component, const std::string& rest = "") {
    std::vector<std::string> list;
    const auto mix = read_mix(R"({"format":"gritwright/mix/1","components":[)" + component + "]" + rest + "}", "mix.json", {});
    for (const Problem& problem : mix.problems()) list.push_back(problem.code + " " + problem.where.pointer);
    return list;
  };
  CHECK(told(R"({"name":"a","parts":-1,"bulk_density_g_l":2900,"particle_density_g_l":2800,"skeletal_density_g_l":2700,)"
             R"("water_absorption":-3,"open_share":"x","class_mm":-4})") ==
        std::vector<std::string>{"value.wrong-kind /components/0/open_share", "component.parts-negative /components/0/parts",
                                 "component.absorption-negative /components/0/water_absorption",
                                 "component.bulk-above-particle /components/0/bulk_density_g_l",
                                 "component.particle-above-skeletal /components/0/particle_density_g_l",
                                 "component.size-not-positive /components/0/class_mm"});
  CHECK(told(R"({"name":7,"parts":1,"bulk_density_g_l":"x","particle_density_g_l":-900,"grading":[{"aperture_mm":9,"passing":"x"},)"
             R"({"aperture_mm":4,"passing":40},{"aperture_mm":2,"passing":60}],"pan_size_mm":9})") ==
        std::vector<std::string>{"value.wrong-kind /components/0/name", "value.wrong-kind /components/0/grading/0/passing",
                                 "value.wrong-kind /components/0/bulk_density_g_l",
                                 "component.density-not-positive /components/0/particle_density_g_l",
                                 "grading.passing-falls /components/0/grading", "grading.pan-size-range /components/0/pan_size_mm"});
  CHECK(told(R"({"name":"a","parts":0,"bulk_density_g_l":450})", R"(,"settling":1.5,"water":{"k_cm_mm":"x","n":0.5})") ==
        std::vector<std::string>{"component.no-sizes /components/0", "mix.no-parts /components", "value.wrong-kind /water/k_cm_mm",
                                 "water.out-of-range /water/n", "mix.settling-range /settling"});
  // What is no component at all is one fault, not three.
  CHECK(told("7") == std::vector<std::string>{"value.wrong-kind /components/0"});
}

TEST_CASE("A key written twice hides no other fault", "[mix_file][refuses][regression]") {
  const auto mix = read_mix(mix_with(mix_with(mix_json, "\"settling\"", "\"spill\":2,\"settling\""), "\"parts\":2", "\"parts\":2,\"parts\":-2"), "m", {});
  REQUIRE(mix.problems().size() == 3);
  CHECK(mix.problems()[0].code == "key.duplicate");
  CHECK(mix.problems()[1].code == "component.parts-negative");
  CHECK(mix.problems()[2].code == "mix.spill-range");
}
