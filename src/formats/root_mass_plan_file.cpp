#include "gritwright/formats/root_mass_plan_file.hpp"

#include <algorithm>
#include <utility>

#include "container_json.hpp"
#include "container_members.hpp"
#include "record_fields.hpp"

namespace gritwright {

namespace {

using fields::cm;
using fields::cm_long;
using fields::deg;
using fields::plain;

constexpr const char* format_name = "gritwright/root-mass-plan/1";

constexpr std::array form_words{Word<BlockForm>{BlockForm::box, "box"}, Word<BlockForm>{BlockForm::elliptic, "elliptic"},
                                Word<BlockForm>{BlockForm::rounded, "rounded"}};
constexpr const char* present_pot = "present-pot";
constexpr std::array style_words{Word<CutStyle>{CutStyle::wall, "wall"}, Word<CutStyle>{CutStyle::straight, "straight"}};
constexpr std::array direction_words{Word<Direction>{Direction::right, "right"}, Word<Direction>{Direction::left, "left"},
                                     Word<Direction>{Direction::back, "back"},   Word<Direction>{Direction::front, "front"},
                                     Word<Direction>{Direction::up, "up"},       Word<Direction>{Direction::down, "down"}};
constexpr std::array face_words{Word<Face>{Face::right, "right"}, Word<Face>{Face::left, "left"}, Word<Face>{Face::back, "back"},
                                Word<Face>{Face::front, "front"}, Word<Face>{Face::top, "top"},   Word<Face>{Face::bottom, "bottom"}};

/// What reading a container inside the plan needs.
struct ContainerDoor {
  const ComponentSources& sources;
  Problems& problems;
  Notes& notes;

  [[nodiscard]] Container read(const JsonValue& value, std::string pointer) const {
    JsonObject object(value, std::move(pointer), problems);
    if (object.has("format")) object.format("gritwright/container/1");
    Container container = read_container_members(object, sources, problems, notes);
    object.finish();
    return container;
  }
};

struct TreePointFields {
  template <class Io, class T>
  void operator()(Io& io, T& point) const {
    io.number("right_cm", point.right, cm_long);
    io.number("back_cm", point.back, cm_long);
    io.required_number("up_cm", point.up, cm_long);
  }
};

struct PoseFields {
  template <class Io, class T>
  void operator()(Io& io, T& pose) const {
    io.number("turn_deg", pose.turn, deg);
    io.number("tip_deg", pose.tip, deg);
    io.number("tip_toward_deg", pose.tip_toward, deg);
    io.number("right_cm", pose.right, cm_long);
    io.number("back_cm", pose.back, cm_long);
    io.number("trunk_base_cm", pose.trunk_base, cm);
  }
};

struct ClearanceFields {
  template <class Io, class T>
  void operator()(Io& io, T& plan) const {
    io.number("side_cm", plan.side_clearance, cm_long);
    io.number("below_cm", plan.below_clearance, cm_long);
  }
};

struct PermissionFields {
  template <class Io, class T>
  void operator()(Io& io, T& permission) const {
    for (const Face face : faces)
      io.number((face_name(face) + "_cm").c_str(), permission[static_cast<std::size_t>(face)], cm_long);
  }
};

struct CombedFields {
  template <class Io, class T>
  void operator()(Io& io, T& combed) const {
    named(io, "face", combed.face, face_words);
    io.required_number("depth_cm", combed.depth, cm_long);
  }
  template <class Io, class E, std::size_t n>
  static void named(Io& io, const char* key, E& value, const std::array<Word<std::remove_const_t<E>>, n>& words) {
    if constexpr (Io::reading)
      if (!io.json().has(key)) io.json().report("key.missing", io.json().pointer(), {{"key", std::string(key)}});
    io.word(key, value, words);
  }
};

struct StoppedFields {
  template <class Io, class T>
  void operator()(Io& io, T& stopped) const {
    CombedFields::named(io, "direction", stopped.direction, direction_words);
    io.required_number("depth_cm", stopped.depth, cm_long);
  }
};

struct LimitFields {
  template <class Io, class T>
  void operator()(Io& io, T& plan) const {
    io.number("untouched_least", plan.untouched_least, plain);
    io.number("removed_most", plan.removed_most, plain);
  }
};

struct BoxFields {
  template <class Io, class T>
  void operator()(Io& io, T& box) const {
    io.word("form", box.form, form_words);
    io.required_number("length_cm", box.length, cm_long);
    io.required_number("width_cm", box.width, cm_long);
    io.required_number("height_cm", box.height, cm_long);
    io.number("exponent", box.exponent, plain);
  }
};

/// All but block and containers, which reading and writing meet by different doors.
struct PlanFields {
  template <class Io, class T>
  void operator()(Io& io, T& plan) const {
    io.object("trunk_base", plan.trunk_base, TreePointFields{});
    io.object("pose", plan.pose, PoseFields{});
    io.number("turn_most_deg", plan.turn_most, deg);
    io.number("tip_least_deg", plan.tip_least, deg);
    io.number("trunk_height_least_cm", plan.trunk_height_least, cm);
    io.object("clearance", plan, ClearanceFields{});
    io.object("permission", plan.permission, PermissionFields{});
    order(io, plan.cut_order);
    io.word("cut_style", plan.cut_style, style_words);
    io.list("combed", plan.combed, CombedFields{});
    io.list("stopped", plan.stopped, StoppedFields{});
    io.number("working_depth_cm", plan.working_depth, cm_long);
    io.number("displaced_ml", plan.displaced, fields::ml);
    io.object("limits", plan, LimitFields{});
    io.whole("interval_years", plan.interval_years);
    io.flag("bare_root", plan.bare_root);
    io.flag("bare_rooted_last_time", plan.bare_rooted_last_time);
    io.object("untouched_last_time", plan.untouched_last_time, fields::UntouchedPartFields{});
  }

 private:
  template <class Io, class T>
  static void order(Io& io, T& directions_in_order) {
    if constexpr (Io::reading) {
      std::vector<std::string> names;
      io.texts("cut_order", names);
      for (std::size_t i = 0; i < names.size(); ++i) {
        if (const auto direction = direction_named(names[i]))
          directions_in_order.push_back(*direction);
        else
          io.json().report("record.unknown-word", below(io.json().at("cut_order"), std::to_string(i)),
                           {{"text", names[i]}, {"expected", std::string("right, left, back, front, up, down")}});
      }
    } else {
      std::vector<std::string> names;
      for (const Direction direction : directions_in_order) names.push_back(direction_name(direction));
      io.texts("cut_order", names);
    }
  }
};

bool form_known(const std::string& name) {
  return std::ranges::any_of(form_words, [&](const Word<BlockForm>& word) { return name == word.text; });
}

RootBlock read_block(const JsonValue& value, const std::string& pointer, const ContainerDoor& door) {
  JsonObject object(value, pointer, door.problems);
  const auto form = value.members.find("form");
  // A root mass that stands in a pot on file has that pot's inside.
  const bool as_pot = form == value.members.end() ? value.members.contains("pot") : form->second.text == present_pot;
  if (as_pot) {
    object.text("form");
    AsPresentPot present;
    if (const JsonValue* pot = object.take("pot"))
      present.pot = door.read(*pot, object.at("pot"));
    else
      object.report("key.missing", pointer, {{"key", std::string("pot")}});
    object.finish();
    return present;
  }
  RecordReader reader(object, door.problems);
  BlockBox box;
  if (form != value.members.end() && form->second.kind == JsonValue::Kind::text && !form_known(form->second.text)) {
    object.report("record.unknown-word", object.at("form"),
                  {{"text", form->second.text}, {"expected", std::string("present-pot, box, elliptic, rounded")}});
    return box;
  }
  BoxFields{}(reader, box);
  object.finish();
  return box;
}

void read_group(JsonObject& object, RootMassPlan& plan) {
  const auto name = object.required_text("group");
  if (!name) return;
  if (const auto group = species_group_named(*name)) {
    plan.group = *group;
    return;
  }
  std::string known;
  for (const SpeciesGroup group : species_groups)
    known += (known.empty() ? "" : ", ") + std::string(group_defaults(group).name);
  object.report("root-plan.unknown-group", object.at("group"), {{"group", *name}, {"expected", known}});
}

RootMassPlan read_members(JsonObject& object, const ContainerDoor& door) {
  RootMassPlan plan;
  RecordReader reader(object, door.problems);
  reader.text("name", plan.name);
  read_group(object, plan);
  const auto required = [&](const char* key) {
    const JsonValue* value = object.take(key);
    if (value == nullptr) object.report("key.missing", object.pointer(), {{"key", std::string(key)}});
    return value;
  };
  if (const JsonValue* block = required("block")) plan.block = read_block(*block, object.at("block"), door);
  if (const JsonValue* pot = required("pot")) plan.pot = door.read(*pot, object.at("pot"));
  if (const auto* pots = object.array("free_pots"))
    for (std::size_t i = 0; i < pots->size(); ++i)
      plan.free_pots.push_back(door.read((*pots)[i], below(object.at("free_pots"), std::to_string(i))));
  PlanFields{}(reader, plan);
  return plan;
}

Result<RootMassPlanFile> read_plan(std::string_view text, const std::string& file_name, const ComponentSources& sources, bool begun) {
  const Result<JsonValue> root = parse_json(text);
  if (!root) return placed_in(root.problems(), file_name);
  Problems problems;
  RootMassPlanFile file;
  JsonObject object(*root, "", problems);
  object.format(format_name);
  file.plan = read_members(object, {sources, problems, file.notes});
  object.finish();
  // A number that could not be read would look like a fault of its own.
  if (problems.empty() && !(begun && lacks_lengths_alone(file.plan))) append(problems, check(file.plan));
  if (!problems.empty()) return placed_in(std::move(problems), file_name);
  return file;
}

}  // namespace

Result<RootMassPlanFile> read_root_mass_plan(std::string_view text, std::string file_name, const ComponentSources& sources) {
  return read_plan(text, file_name, sources, false);
}

Result<RootMassPlanFile> read_begun_root_mass_plan(std::string_view text, std::string file_name, const ComponentSources& sources) {
  return read_plan(text, file_name, sources, true);
}

std::string write_root_mass_plan(const RootMassPlan& plan) {
  RecordWriter writer;
  auto& json = writer.json();
  json["format"] = format_name;
  writer.text("name", plan.name);
  json["group"] = group_defaults(plan.group).name;
  if (const auto* present = std::get_if<AsPresentPot>(&plan.block))
    json["block"] = {{"form", present_pot}, {"pot", container_json(present->pot)}};
  else
    writer.object("block", std::get<BlockBox>(plan.block), BoxFields{});
  json["pot"] = container_json(plan.pot);
  for (const Container& pot : plan.free_pots) json["free_pots"].push_back(container_json(pot));
  PlanFields{}(writer, plan);
  return json.dump(2, ' ', false, nlohmann::detail::error_handler_t::replace) + '\n';
}

}  // namespace gritwright
