#include "gritwright/formats/mix_file.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>

#include "component_json.hpp"
#include "json_document.hpp"
#include "mix_members.hpp"
#include "text_door.hpp"

namespace gritwright {

namespace {

void read_water(JsonObject& mix, RetentionConstants& constants, Problems& problems) {
  const JsonValue* value = mix.take("water");
  if (value == nullptr) return;
  JsonObject water(*value, mix.at("water"), problems);
  const auto read = [&](const char* key, double& into) {
    if (const auto number = water.number(key)) into = *number;
  };
  read("k_cm_mm", constants.k_cm_mm);
  read("spread", constants.spread);
  read("n", constants.n);
  read("residual", constants.residual);
  read("flooded_fill", constants.flooded_fill);
  read("grain_fill", constants.grain_fill);
  water.finish();
}

/// What the domain finds beyond the components, which were checked one by one as they were read; where one of those is missing, what
/// concerns all of them was told as well.
Problems check_beyond_components(const Mix& mix, bool whole) {
  Problems found = check(mix);
  std::erase_if(found, [&](const Problem& problem) {
    const std::string& pointer = problem.where.pointer;
    return pointer.starts_with("/components/") || (pointer == "/components" && !whole);
  });
  return found;
}

bool all_parts_are_zero(const std::vector<JsonValue>& components) {
  return std::ranges::all_of(components, [](const JsonValue& component) {
    const auto parts = component.members.find("parts");
    return parts != component.members.end() && parts->second.kind == JsonValue::Kind::number && parts->second.number == 0;
  });
}

}  // namespace

Mix read_mix_members(JsonObject& object, const ComponentSources& sources, Problems& problems, Notes& notes,
                     std::vector<std::optional<SieveTest>>* sieve_tests) {
  const std::size_t problems_before = problems.size();
  Mix mix;
  bool whole = false;
  if (const auto name = object.text("name")) mix.name = *name;
  if (const auto* components = object.required_array("components")) {
    for (std::size_t i = 0; i < components->size(); ++i) {
      JsonObject item((*components)[i], below(object.at("components"), std::to_string(i)), problems);
      std::optional<SieveTest> test;
      if (auto component = read_component(item, PartsKey::required, sources, problems, notes, &test))
        mix.components.push_back(*std::move(component));
      if (sieve_tests != nullptr) sieve_tests->push_back(std::move(test));
      item.finish();
    }
    whole = mix.components.size() == components->size();
    if (!whole && all_parts_are_zero(*components)) object.report("mix.no-parts", object.at("components"));
  }
  read_water(object, mix.water, problems);
  if (const auto settling = object.number("settling")) mix.settling = Settling(*settling);
  if (const auto spill = object.number("spill")) mix.spill = Spill(*spill);
  append(problems, beyond_told(under(check_beyond_components(mix, whole), object.pointer()), problems, problems_before));
  return mix;
}

Result<MixFile> read_mix(std::string_view text, std::string file_name, const ComponentSources& sources) {
  Problems problems;
  const Result<JsonValue> root = parse_json(text, problems);
  if (!root) return placed_in(root.problems(), file_name);
  MixFile file;
  JsonObject object(*root, "", problems);
  object.format("gritwright/mix/1");
  file.mix = read_mix_members(object, sources, problems, file.notes, &file.sieve_tests);
  object.finish();
  if (!problems.empty()) return placed_in(std::move(problems), file_name);
  return file;
}

}  // namespace gritwright
