#include "gritwright/formats/pot_test_file.hpp"

#include <cstddef>
#include <utility>

#include "container_members.hpp"
#include "json_document.hpp"
#include "mix_members.hpp"
#include "text_door.hpp"

namespace gritwright {

namespace {

class PotTestReader {
 public:
  PotTestReader(JsonObject& root, const ComponentSources& sources, Problems& problems) : root_(root), sources_(sources), problems_(problems) {}

  PotTestFile read() {
    if (const JsonValue* value = root_.take("mix")) {
      JsonObject mix(*value, root_.at("mix"), problems_);
      inner_format(mix, "gritwright/mix/1");
      file_.mix = read_mix_members(mix, sources_, problems_, file_.notes);
      mix.finish();
    }
    if (const auto* tests = root_.array("tests")) {
      for (std::size_t i = 0; i < tests->size(); ++i) {
        JsonObject test((*tests)[i], below(root_.at("tests"), std::to_string(i)), problems_);
        read_reading(test);
        test.finish();
      }
      if (tests->empty()) root_.report("pot-test.none", root_.at("tests"));
    } else if (!root_.has("tests")) {
      read_reading(root_);
    }
    return std::move(file_);
  }

 private:
  /// A mix or container that was pasted in whole brings its format key along.
  static void inner_format(JsonObject& object, const char* name) {
    if (object.has("format")) object.format(name);
  }

  void read_reading(JsonObject& object) {
    const std::size_t problems_before = problems_.size();
    WrittenPotReading reading;
    reading.date = object.text("date");
    if (object.has("container") && object.has("depth_cm")) object.report("pot-test.pot-twice", object.at("depth_cm"));
    if (const JsonValue* value = object.take("container")) {
      JsonObject container(*value, object.at("container"), problems_);
      inner_format(container, "gritwright/container/1");
      reading.pot = read_container_members(container, sources_, problems_, file_.notes);
      container.finish();
    }
    if (const auto depth = object.number("depth_cm")) {
      if (*depth <= 0) object.report("pot-test.depth-not-positive", object.at("depth_cm"), {{"depth_cm", *depth}});
      reading.pot = depth_cm(*depth);
    }
    if (const auto volume = object.number("volume_ml")) reading.volume = pot_ml(*volume);
    reading.pointer = object.pointer();
    reading.water = read_water(object);
    // A container's volume is above 0 where the container is sound; 1 mL stands in for it.
    append(problems_, beyond_told(under(check(PotReading{reading.volume.value_or(pot_ml(1)), reading.water}), object.pointer()), problems_,
                                  problems_before));
    file_.readings.push_back(std::move(reading));
  }

  std::variant<PotWeighings, PouredWater> read_water(JsonObject& object) {
    const bool poured = object.has("poured_ml") || object.has("caught_ml");
    const bool weighed = object.has("dry_g") || object.has("flooded_g") || object.has("drained_g") || object.has("tare_g");
    if (poured && weighed) object.report("pot-test.weighed-and-poured", object.pointer());
    if (poured) {
      PouredWater water;
      if (const auto volume = object.required_number("poured_ml")) water.poured = pot_ml(*volume);
      if (const auto volume = object.number("caught_ml")) water.caught = pot_ml(*volume);
      for (const char* key : {"tare_g", "dry_g", "flooded_g", "drained_g"}) object.take(key);
      return water;
    }
    PotWeighings masses;
    if (const auto mass = object.number("tare_g")) masses.tare = mass_g(*mass);
    if (const auto mass = object.required_number("dry_g")) masses.dry = mass_g(*mass);
    if (const auto mass = object.number("flooded_g")) masses.flooded = mass_g(*mass);
    if (const auto mass = object.number("drained_g")) masses.drained = mass_g(*mass);
    if (!object.has("flooded_g") && !object.has("drained_g")) object.report("pot-test.no-wet-mass", object.pointer());
    return masses;
  }

  JsonObject& root_;
  const ComponentSources& sources_;
  Problems& problems_;
  PotTestFile file_;
};

}  // namespace

Result<PotTestFile> read_pot_test(std::string_view text, std::string file_name, const ComponentSources& sources) {
  Problems problems;
  const Result<JsonValue> root = parse_json(text, problems);
  if (!root) return placed_in(root.problems(), file_name);
  JsonObject object(*root, "", problems);
  object.format("gritwright/pot-test/1");
  PotTestFile file = PotTestReader(object, sources, problems).read();
  object.finish();
  if (!problems.empty()) return placed_in(std::move(problems), file_name);
  return file;
}

}  // namespace gritwright
