#include "gritwright/formats/container_file.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>

#include "component_json.hpp"
#include "container_members.hpp"
#include "container_words.hpp"
#include "json_document.hpp"
#include "text_door.hpp"

namespace gritwright {

namespace {

/// Reads the sections and lengths of one container object.
class ContainerReader {
 public:
  ContainerReader(JsonObject& object, const ComponentSources& sources, Problems& problems, Notes& notes)
      : object_(object), sources_(sources), problems_(problems), notes_(notes) {}

  Container read() {
    if (const auto name = object_.text("name")) container_.name = *name;
    if (!read_shape())
      leave_sections_unread();
    else if (container_.shape == Shape::profile)
      read_profile();
    else
      read_sections();
    read_lengths();
    read_tilt();
    read_mound();
    read_bottom_layer();
    read_top_dressing();
    return std::move(container_);
  }

  /// Places whose gap the faults told so far don't show.
  [[nodiscard]] const std::vector<std::string>& unread() const { return unread_; }
  /// Whether every row of a profile could be read.
  [[nodiscard]] bool table_whole() const { return table_whole_; }

 private:
  bool read_shape() {
    const auto text = object_.required_text("shape");
    if (!text) return false;
    const auto* found = std::ranges::find(fields::shape_words, *text, &Word<Shape>::text);
    if (found == fields::shape_words.end())
      object_.report("container.unknown-shape", object_.at("shape"), {{"shape", *text}});
    else
      container_.shape = found->value;
    return found != fields::shape_words.end();
  }

  /// Which keys a section has hangs on the shape; without it nothing there can be called wrong.
  void leave_sections_unread() {
    for (const char* key : {"rim", "middle", "base", "areas", "exponent"}) {
      object_.take(key);
      unread_.push_back(object_.at(key));
    }
    for (const char* key : {"corner_radius_cm", "fillet_radius_cm"}) unread_.push_back(object_.at(key));
    if (const auto depth = object_.number("depth_cm"))
      container_.depth = depth_cm(*depth);
    else
      unread_.push_back(object_.at("depth_cm"));
  }

  std::optional<Section> read_section(const char* key, bool required) {
    const JsonValue* value = object_.take(key);
    if (value == nullptr) {
      if (required) object_.report("key.missing", object_.pointer(), {{"key", std::string(key)}});
      return std::nullopt;
    }
    JsonObject section(*value, object_.at(key), problems_);
    std::optional<double> length, width;
    switch (container_.shape) {
      case Shape::round:
      case Shape::drum:
        length = width = section.required_number("diameter_cm");
        break;
      case Shape::hexagonal:
      case Shape::octagonal:
        length = width = section.required_number("across_flats_cm");
        break;
      case Shape::rectangular:
      case Shape::oval:
      case Shape::superellipse:
      case Shape::bowl:
      case Shape::profile:
        length = section.required_number("length_cm");
        width = section.required_number("width_cm");
        break;
    }
    if (container_.shape == Shape::superellipse) take_exponent(section);
    section.finish();
    // An unread length stays 0: the checks then ask nothing of the section but that length.
    return Section{length_cm(length.value_or(0)), length_cm(width.value_or(0))};
  }

  /// The exponent may stand beside the shape or in a section; all that are written must agree, for there is one.
  void take_exponent(JsonObject& object) {
    if (object.has("exponent")) unread_.push_back(object_.at("exponent"));
    const auto exponent = object.number("exponent");
    if (!exponent) return;
    unread_.pop_back();
    if (container_.exponent && *container_.exponent != *exponent)
      object.report("container.exponents-differ", object.at("exponent"),
                    {{"exponent", *exponent}, {"other", *container_.exponent}});
    container_.exponent = exponent;
  }

  void read_sections() {
    if (container_.shape == Shape::superellipse) take_exponent(object_);
    if (const auto rim = read_section("rim", true)) container_.rim = *rim;
    if (container_.shape != Shape::bowl) container_.base = read_section("base", false);
    if (container_.shape == Shape::drum) container_.middle = read_section("middle", true);
    if (container_.shape == Shape::superellipse && !container_.exponent && unread_.empty())
      object_.report("key.missing", object_.pointer(), {{"key", std::string("exponent")}});
    if (const auto depth = object_.required_number("depth_cm")) container_.depth = depth_cm(*depth);
  }

  void read_profile() {
    if (const auto* items = object_.required_array("areas")) {
      for (std::size_t i = 0; i < items->size(); ++i) {
        JsonObject item((*items)[i], below(object_.at("areas"), std::to_string(i)), problems_);
        const auto height = item.required_number("height_cm");
        const auto area = item.required_number("area_cm2");
        item.finish();
        if (!height || !area) table_whole_ = false;
        container_.areas.push_back({depth_cm(height.value_or(0)), area_cm2(area.value_or(0))});
      }
      if (items->empty()) object_.report("container.no-areas", object_.at("areas"));
    }
    if (!container_.areas.empty()) container_.depth = container_.areas.back().height;
    const auto depth = object_.number("depth_cm");
    if (depth) container_.depth = depth_cm(*depth);
    // The depth and all that is held against it hang on the highest row.
    if (!depth && (!table_whole_ || container_.areas.empty()))
      for (const char* key : {"depth_cm", "freeboard_cm", "bottom_layer", "top_dressing"}) unread_.push_back(object_.at(key));
  }

  void read_lengths() {
    if (const auto length = object_.number("freeboard_cm")) container_.freeboard = depth_cm(*length);
    if (const auto volume = object_.number("water_fill_ml")) container_.water_fill = pot_ml(*volume);
    if (const auto length = object_.number("corner_radius_cm")) container_.corner_radius = length_cm(*length);
    if (const auto length = object_.number("fillet_radius_cm")) container_.fillet_radius = length_cm(*length);
    if (const auto length = object_.number("saucer_cm")) container_.saucer = depth_cm(*length);
    if (const auto length = object_.number("wick_cm")) container_.wick = depth_cm(*length);
    if (const auto mass = object_.number("mass_kg")) container_.mass = mass_kg(*mass);
  }

  void read_tilt() {
    if (const auto angle = object_.number("tilt_deg")) container_.tilt.angle = angle_deg(*angle);
    const auto axis = object_.text("tilt_axis");
    if (!axis) return;
    if (*axis == "width")
      container_.tilt.axis = TiltAxis::width;
    else if (*axis != "length")
      object_.report("container.unknown-tilt-axis", object_.at("tilt_axis"), {{"axis", *axis}});
  }

  void read_mound() {
    const JsonValue* value = object_.take("mound");
    if (value == nullptr) return;
    JsonObject object(*value, object_.at("mound"), problems_);
    Mound mound;
    if (const auto rise = object.required_number("rise_cm")) mound.rise = depth_cm(*rise);
    if (const auto form = object.text("form")) {
      if (*form == "cone")
        mound.form = MoundForm::cone;
      else if (*form == "ellipsoid")
        mound.form = MoundForm::ellipsoid;
      else if (*form != "paraboloid")
        object.report("container.unknown-mound-form", object.at("form"), {{"form", *form}});
    }
    object.finish();
    container_.mound = mound;
  }

  void read_bottom_layer() {
    const JsonValue* value = object_.take("bottom_layer");
    if (value == nullptr) return;
    JsonObject object(*value, object_.at("bottom_layer"), problems_);
    BottomLayer layer;
    if (const auto thickness = object.required_number("thickness_cm")) layer.thickness = depth_cm(*thickness);
    if (const JsonValue* grain = object.take("component")) {
      JsonObject component(*grain, object.at("component"), problems_);
      layer.component = read_component(component, PartsKey::optional, sources_, problems_, notes_);
      component.finish();
    }
    object.finish();
    container_.bottom_layer = std::move(layer);
  }

  void read_top_dressing() {
    const JsonValue* value = object_.take("top_dressing");
    if (value == nullptr) return;
    JsonObject object(*value, object_.at("top_dressing"), problems_);
    if (const auto thickness = object.required_number("thickness_cm")) container_.top_dressing = depth_cm(*thickness);
    object.finish();
  }

  JsonObject& object_;
  const ComponentSources& sources_;
  Problems& problems_;
  Notes& notes_;
  Container container_;
  std::vector<std::string> unread_;
  bool table_whole_ = true;
};

}  // namespace

Container read_container_members(JsonObject& object, const ComponentSources& sources, Problems& problems, Notes& notes) {
  const std::size_t problems_before = problems.size();
  ContainerReader reader(object, sources, problems, notes);
  Container container = reader.read();
  Problems found = check(container);
  if (!reader.table_whole()) std::erase_if(found, [](const Problem& problem) { return problem.code == "container.profile-below-rim"; });
  append(problems, beyond_told(under(std::move(found), object.pointer()), problems, problems_before, reader.unread()));
  return container;
}

Result<ContainerFile> read_container(std::string_view text, std::string file_name, const ComponentSources& sources) {
  Problems problems;
  const Result<JsonValue> root = parse_json(text, problems);
  if (!root) return placed_in(root.problems(), file_name);
  ContainerFile file;
  JsonObject object(*root, "", problems);
  object.format("gritwright/container/1");
  file.container = read_container_members(object, sources, problems, file.notes);
  object.finish();
  if (!problems.empty()) return placed_in(std::move(problems), file_name);
  return file;
}

}  // namespace gritwright
