#include "gritwright/formats/material_file.hpp"

#include <array>
#include <cstddef>
#include <utility>

#include "json_document.hpp"
#include "text_door.hpp"

namespace gritwright {

namespace {

template <class Value>
struct MaterialWord {
  std::string_view text;
  Value value;
};
// Clang 16 does not find it by itself.
template <class Value>
MaterialWord(const char*, Value) -> MaterialWord<Value>;
constexpr std::array figure_kinds{MaterialWord{"measured", FigureKind::measured}, MaterialWord{"derived", FigureKind::derived},
                                  MaterialWord{"typical", FigureKind::typical}};
constexpr std::array moisture_bases{MaterialWord{"oven-dry", MoistureBasis::oven_dry}, MaterialWord{"air-dry", MoistureBasis::air_dry},
                                    MaterialWord{"as-bagged", MoistureBasis::as_bagged}};

template <class Value, std::size_t count>
std::optional<Value> word(JsonObject& object, const std::string& key, const std::optional<std::string>& text,
                          const std::array<MaterialWord<Value>, count>& words) {
  if (!text) return std::nullopt;
  for (const auto& candidate : words)
    if (candidate.text == *text) return candidate.value;
  object.report("catalogue.unknown-word", object.at(key), {{"key", key}, {"text", *text}});
  return std::nullopt;
}

CatalogueFigure read_figure(const JsonValue& value, const std::string& pointer, std::string_view unit, Problems& problems) {
  JsonObject object(value, pointer, problems);
  CatalogueFigure figure;
  figure.value = object.required_number("value").value_or(0);
  figure.low = object.number("low");
  figure.high = object.number("high");
  if (const auto written = object.required_text("unit"); written && *written != unit)
    object.report("catalogue.wrong-unit", object.at("unit"), {{"unit", *written}, {"expected", std::string(unit)}});
  figure.kind = word(object, "kind", object.required_text("kind"), figure_kinds).value_or(FigureKind::typical);
  figure.source = object.required_text("source").value_or("");
  figure.range_kind = word(object, "range_kind", object.text("range_kind"), figure_kinds);
  figure.range_source = object.text("range_source");
  figure.basis = word(object, "basis", object.text("basis"), moisture_bases);
  figure.remark = object.text("remark");
  object.finish();
  return figure;
}

void read_figures(JsonObject& root, Material& material, Problems& problems) {
  const JsonValue* value = root.take("figures");
  if (value == nullptr) return root.report("key.missing", root.pointer(), {{"key", std::string("figures")}});
  JsonObject object(*value, root.at("figures"), problems);
  const auto read = [&](const char* key, std::string_view unit) -> std::optional<CatalogueFigure> {
    const JsonValue* figure = object.take(key);
    if (figure == nullptr) return std::nullopt;
    return read_figure(*figure, object.at(key), unit, problems);
  };
  if (const auto figure = read("bulk_density_g_l", "g/L"))
    material.bulk_density_g_l = *figure;
  else
    object.report("key.missing", object.pointer(), {{"key", std::string("bulk_density_g_l")}});
  material.particle_density_g_l = read("particle_density_g_l", "g/L");
  material.skeletal_density_g_l = read("skeletal_density_g_l", "g/L");
  material.total_porosity = read("total_porosity", "share");
  material.grain_porosity = read("grain_porosity", "share");
  material.open_share = read("open_share", "share");
  material.water_absorption = read("water_absorption", "kg/kg");
  material.water_held = read("water_held", "kg/kg");
  material.container_capacity = read("container_capacity", "share");
  material.ph = read("ph", "pH");
  material.cec_meq_100g = read("cec_meq_100g", "meq/100 g");
  material.durability_years = read("durability_years", "years");
  material.bag_volume_l = read("bag_volume_l", "L");
  material.bag_mass_kg = read("bag_mass_kg", "kg");
  object.finish();
}

}  // namespace

Result<Material> read_material(std::string_view text, std::string file_name) {
  Problems problems;
  const Result<JsonValue> root = parse_json(text, problems);
  if (!root) return placed_in(root.problems(), file_name);
  Material material;
  JsonObject object(*root, "", problems);
  object.format("gritwright/material/1");
  material.name = object.required_text("name").value_or("");
  material.description = object.text("description").value_or("");
  if (const auto* aliases = object.array("aliases"))
    for (std::size_t i = 0; i < aliases->size(); ++i) {
      if ((*aliases)[i].kind == JsonValue::Kind::text)
        material.aliases.push_back((*aliases)[i].text);
      else
        object.report("value.wrong-kind", below(object.at("aliases"), std::to_string(i)), {{"expected", std::string("text")}});
    }
  read_figures(object, material, problems);
  object.finish();
  append(problems, beyond_told(check(material), problems));
  if (!problems.empty()) return placed_in(std::move(problems), file_name);
  return material;
}

Result<std::vector<Reference>> read_references(std::string_view text, std::string file_name) {
  Problems problems;
  const Result<JsonValue> root = parse_json(text, problems);
  if (!root) return placed_in(root.problems(), file_name);
  std::vector<Reference> references;
  JsonObject object(*root, "", problems);
  object.format("gritwright/references/1");
  if (const auto* items = object.required_array("references"))
    for (std::size_t i = 0; i < items->size(); ++i) {
      JsonObject item((*items)[i], below(object.at("references"), std::to_string(i)), problems);
      references.push_back({item.required_text("key").value_or(""), item.required_text("citation").value_or(""),
                            item.required_text("seen").value_or("")});
      item.finish();
    }
  object.finish();
  if (!problems.empty()) return placed_in(std::move(problems), file_name);
  return references;
}

}  // namespace gritwright
