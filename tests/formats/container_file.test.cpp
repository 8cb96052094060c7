#include "gritwright/formats/container_file.hpp"

#include <catch2/catch.hpp>
#include <string>
#include <vector>

using namespace gritwright;

namespace {

std::string container(const std::string& keys) { return R"({"format":"gritwright/container/1",)" + keys + "}"; }

Container read(const std::string& keys) {
  const auto file = read_container(container(keys), "pot.json", {});
  REQUIRE(file);
  return file->container;
}

Problem refusal(const std::string& keys) {
  const auto result = read_container(container(keys), "pot.json", {});
  REQUIRE(result.problems().size() == 1);
  return result.problems().front();
}

}  // namespace

TEST_CASE("A container is read with every key", "[container_file]") {
  const Container pot = read(
      R"("name":"tray 3","shape":"rectangular","rim":{"length_cm":40,"width_cm":30},"base":{"length_cm":38,"width_cm":28},)"
      R"("depth_cm":6,"freeboard_cm":0.5,"water_fill_ml":6000,"corner_radius_cm":1,"fillet_radius_cm":0.5,"saucer_cm":0.4,)"
      R"("wick_cm":2,"tilt_deg":5,"tilt_axis":"width","mass_kg":2.5,"mound":{"rise_cm":1,"form":"cone"},)"
      R"("bottom_layer":{"thickness_cm":1,"component":{"name":"grit","bulk_density_g_l":1400,"class_mm":8}},)"
      R"("top_dressing":{"thickness_cm":0.3})");
  CHECK(pot.name == "tray 3");
  CHECK(pot.shape == Shape::rectangular);
  CHECK(pot.rim == Section{length_cm(40), length_cm(30)});
  CHECK(pot.base == Section{length_cm(38), length_cm(28)});
  CHECK(pot.depth == depth_cm(6));
  CHECK(pot.freeboard == depth_cm(0.5));
  CHECK(pot.water_fill == pot_ml(6000));
  CHECK(pot.corner_radius == length_cm(1));
  CHECK(pot.fillet_radius == length_cm(0.5));
  CHECK(pot.saucer == depth_cm(0.4));
  CHECK(pot.wick == depth_cm(2));
  CHECK(pot.tilt == Tilt{angle_deg(5), TiltAxis::width});
  CHECK(pot.mass == mass_kg(2.5));
  CHECK(pot.mound == Mound{depth_cm(1), MoundForm::cone});
  REQUIRE(pot.bottom_layer);
  CHECK(pot.bottom_layer->component->sizes == GrainSizes(SingleSize{aperture_mm(8)}));
  CHECK(pot.top_dressing == depth_cm(0.3));
}

TEST_CASE("Each shape has its own lengths", "[container_file]") {
  CHECK(read(R"("shape":"oval","rim":{"length_cm":40,"width_cm":30},"depth_cm":6)").base == std::nullopt);
  CHECK(read(R"("shape":"round","rim":{"diameter_cm":26},"depth_cm":6)").rim == Section{length_cm(26), length_cm(26)});
  CHECK(read(R"("shape":"hexagonal","rim":{"across_flats_cm":20},"depth_cm":6)").shape == Shape::hexagonal);
  CHECK(read(R"("shape":"octagonal","rim":{"across_flats_cm":20},"depth_cm":6)").shape == Shape::octagonal);
  const Container drum = read(R"("shape":"drum","rim":{"diameter_cm":26},"middle":{"diameter_cm":30},"base":{"diameter_cm":26},"depth_cm":8)");
  CHECK(drum.middle == Section{length_cm(30), length_cm(30)});
  CHECK(read(R"("shape":"bowl","rim":{"length_cm":40,"width_cm":30},"depth_cm":6)").shape == Shape::bowl);
  CHECK(read(R"("shape":"superellipse","exponent":4,"rim":{"length_cm":40,"width_cm":30},"depth_cm":6)").exponent == 4);
  CHECK(read(R"("shape":"superellipse","rim":{"length_cm":40,"width_cm":30,"exponent":4},"depth_cm":6)").exponent == 4);
  const Container profile = read(R"("shape":"profile","areas":[{"height_cm":0,"area_cm2":500},{"height_cm":6,"area_cm2":700}])");
  CHECK(profile.depth == depth_cm(6));
  CHECK(profile.areas[1] == AreaAtHeight{depth_cm(6), area_cm2(700)});
}

TEST_CASE("A container with a fault in its keys is refused by name", "[container_file][refuses]") {
  CHECK(refusal(R"("shape":"round","rim":{"diameter_cm":26},"depth":6,"depth_cm":6)").code == "key.unknown");
  CHECK(refusal(R"("shape":"round","depth_cm":6)").code == "key.missing");
  CHECK(refusal(R"("shape":"round","rim":{"diameter_cm":26})").code == "key.missing");
  CHECK(refusal(R"("shape":"drum","rim":{"diameter_cm":26},"depth_cm":6)").code == "key.missing");
  CHECK(refusal(R"("shape":"superellipse","rim":{"length_cm":4,"width_cm":3},"depth_cm":6)").code == "key.missing");
  CHECK(refusal(R"("shape":"superellipse","exponent":3,"rim":{"length_cm":4,"width_cm":3,"exponent":4},"depth_cm":6)").code ==
        "container.exponents-differ");
  CHECK(refusal(R"("shape":"round","rim":{"diameter_cm":26},"middle":{"diameter_cm":26},"depth_cm":6)").where.pointer == "/middle");
  CHECK(refusal(R"("shape":"heart","rim":{"length_cm":4,"width_cm":3},"depth_cm":6)").code == "container.unknown-shape");
  CHECK(refusal(R"("shape":"round","rim":{"diameter_cm":26},"depth_cm":6,"tilt_axis":"up")").code == "container.unknown-tilt-axis");
  CHECK(refusal(R"("shape":"round","rim":{"diameter_cm":26},"depth_cm":6,"mound":{"rise_cm":1,"form":"heap"})").code ==
        "container.unknown-mound-form");
  CHECK(refusal(R"("shape":"profile","areas":[])").code == "container.no-areas");
  CHECK(refusal(R"("shape":"round","rim":{"diameter_cm":"26"},"depth_cm":6)").where.pointer == "/rim/diameter_cm");
}

TEST_CASE("A pot that holds nothing is refused with its place", "[container_file][refuses]") {
  const auto place = [](const std::string& keys) {
    const Problem problem = refusal(keys);
    return problem.code + problem.where.pointer;
  };
  CHECK(place(R"("shape":"round","rim":{"diameter_cm":26},"depth_cm":0)") == "container.length-not-positive/depth_cm");
  CHECK(place(R"("shape":"round","rim":{"diameter_cm":26},"depth_cm":6,"freeboard_cm":7)") ==
        "container.fill-line-below-floor/freeboard_cm");
  CHECK(place(R"("shape":"round","rim":{"diameter_cm":26},"base":{"diameter_cm":-4},"depth_cm":6)") ==
        "container.length-not-positive/base/diameter_cm");
  CHECK(place(R"("shape":"drum","rim":{"diameter_cm":10},"middle":{"diameter_cm":4},"base":{"diameter_cm":30},"depth_cm":8)") ==
        "container.walls-close/middle/diameter_cm");
  CHECK(place(R"("shape":"rectangular","rim":{"length_cm":30,"width_cm":20},"depth_cm":6,)"
              R"("bottom_layer":{"thickness_cm":1,"component":{"name":"grit","bulk_density_g_l":1400,"class_mm":0}})") ==
        "component.size-not-positive/bottom_layer/component/class_mm");
}

TEST_CASE("A key that can't be read hides no other fault of the container", "[container_file][refuses][regression]") {
  const auto told = [](const std::string& members) {
    std::vector<std::string> list;
    const auto container = read_container(R"({"format":"gritwright/container/1",)" + members + "}", "pot.json", {});
    for (const Problem& problem : container.problems()) list.push_back(problem.code + " " + problem.where.pointer);
    return list;
  };
  CHECK(told(R"("shape":"rectangular","rim":{"length_cm":0,"width_cm":-2},"depth_cm":0,"tilt_deg":99,"saucer_cm":-1,)"
             R"("bottom_layer":{"thickness_cm":1,"component":{"name":"a"}})") ==
        std::vector<std::string>{"component.no-sizes /bottom_layer/component", "key.missing /bottom_layer/component",
                                 "container.length-not-positive /depth_cm", "container.length-not-positive /rim/length_cm",
                                 "container.length-not-positive /rim/width_cm", "container.length-negative /saucer_cm",
                                 "container.tilt-out-of-range /tilt_deg"});
  // What follows from the gap is not told: no flat pot, no wall that closes, no fillet that is too large.
  CHECK(told(R"("shape":"drum","rim":null,"middle":{"diameter_cm":"x"},"depth_cm":"x","fillet_radius_cm":1,"freeboard_cm":2)") ==
        std::vector<std::string>{"value.wrong-kind /rim", "value.wrong-kind /middle/diameter_cm", "value.wrong-kind /depth_cm"});
  CHECK(told(R"("shape":"superellipse","rim":{"length_cm":20,"width_cm":20,"exponent":"x"},"depth_cm":6)") ==
        std::vector<std::string>{"value.wrong-kind /rim/exponent"});
  CHECK(told(R"("shape":"profile","areas":[{"height_cm":0,"area_cm2":100},{"height_cm":"x","area_cm2":-100},{"height_cm":5,"area_cm2":90},)"
             R"({"height_cm":4,"area_cm2":"x"}])") ==
        std::vector<std::string>{"value.wrong-kind /areas/1/height_cm", "value.wrong-kind /areas/3/area_cm2",
                                 "container.area-not-positive /areas/1/area_cm2", "container.profile-not-rising /areas/3/height_cm"});
  CHECK(told(R"("shape":"ruond","rim":{"diameter_cm":20},"depth_cm":-6,"saucer_cm":-1)") ==
        std::vector<std::string>{"container.unknown-shape /shape", "container.length-not-positive /depth_cm",
                                 "container.length-negative /saucer_cm"});
}
