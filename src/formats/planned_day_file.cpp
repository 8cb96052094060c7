#include "gritwright/formats/planned_day_file.hpp"

#include <cmath>
#include <cstddef>
#include <utility>

#include "container_members.hpp"
#include "json_document.hpp"
#include "mix_members.hpp"
#include "text_door.hpp"

namespace gritwright {

namespace {

class Reader {
 public:
  Reader(JsonObject& root, const ComponentSources& sources, Problems& problems, Notes& notes)
      : root_(root), sources_(sources), problems_(problems), notes_(notes) {}

  PlannedDay read() {
    if (const auto name = root_.text("name")) day_.name = *name;
    day_.day = root_.text("date");
    read_losses();
    named("mixes", [&](const std::string& name, JsonObject& object) { read_mix(name, object); });
    named("pots", [&](const std::string& name, JsonObject& object) { read_pot(name, object); });
    each("stock", [&](JsonObject& object) { read_supply(object); });
    if (!root_.has("trees")) root_.required_array("trees");
    each("trees", [&](JsonObject& object) { read_tree(object); });
    if (const auto tub = root_.number("tub_l")) day_.tub = loose_l(*tub);
    if (const auto scoop = root_.number("scoop_l")) day_.scoop = loose_l(*scoop);
    read_order();
    each("checklist", [&](JsonObject& object) { read_checklist_line(object); });
    if (const auto revision = whole(root_, "sheet_revision")) day_.sheet_revision = *revision;
    each("filled_before", [&](JsonObject& object) {
      const auto fill = object.required_number("fill_ml"), used = object.required_number("used_l");
      if (fill && used) day_.filled_before.push_back({pot_ml(*fill), mixed_l(*used)});
    });
    each("emptied_before", [&](JsonObject& object) {
      const auto made = object.required_number("made_l"), used = object.required_number("used_l");
      const auto left = object.number("left_l");
      if (made && used) day_.emptied_before.push_back({mixed_l(*made), mixed_l(*used), mixed_l(left.value_or(0))});
    });
    return std::move(day_);
  }

 private:
  template <class Read>
  void each(const char* key, Read read) {
    const auto* items = root_.array(key);
    if (items == nullptr) return;
    for (std::size_t i = 0; i < items->size(); ++i) {
      JsonObject item((*items)[i], below(root_.at(key), std::to_string(i)), problems_);
      read(item);
      item.finish();
    }
  }

  template <class Read>
  void named(const char* key, Read read) {
    const JsonValue* value = root_.take(key);
    if (value == nullptr) return;
    JsonObject all(*value, root_.at(key), problems_);
    for (const auto& [name, content] : value->members) {
      JsonObject object(*all.take(name), all.at(name), problems_);
      read(name, object);
      object.finish();
    }
  }

  static std::optional<int> whole(JsonObject& object, const char* key) {
    const auto number = object.number(key);
    if (!number) return std::nullopt;
    constexpr double beyond_any_count = 1e6;
    if (*number == std::floor(*number) && std::abs(*number) <= beyond_any_count) return static_cast<int>(*number);
    object.report("day.not-whole", object.at(key), {{"value", *number}});
    return std::nullopt;
  }

  static std::optional<Mass> kilograms(JsonObject& object, const char* key) {
    const auto number = object.number(key);
    return number ? std::optional(mass_kg(*number)) : std::nullopt;
  }

  static std::optional<BulkDensity> density(JsonObject& object) {
    const auto number = object.number("bulk_density_g_l");
    return number ? std::optional(bulk_g_l(*number)) : std::nullopt;
  }

  void read_losses() {
    const auto share = [&](const char* key, const char* code) {
      const auto number = root_.number(key);
      if (number && !(*number >= 0 && *number < 1)) root_.report(code, root_.at(key), {{"share", *number}});
      return number;
    };
    settling_ = share("settling", "mix.settling-range");
    spill_ = share("spill", "mix.spill-range");
  }

  void read_mix(const std::string& name, JsonObject& object) {
    if (object.has("format")) object.format("gritwright/mix/1");
    DayMix mix;
    mix.name = name;
    mix.mix = read_mix_members(object, sources_, problems_, notes_);
    if (mix.mix.name.empty()) mix.mix.name = name;
    if (!mix.mix.settling && settling_) mix.mix.settling = Settling(*settling_);
    if (!mix.mix.spill && spill_) mix.mix.spill = Spill(*spill_);
    mix.version = whole(object, "version");
    mix.newest_version = whole(object, "newest_version");
    if (const auto deleted = object.boolean("deleted")) mix.deleted = *deleted;
    for (const Component& component : mix.mix.components)
      if (component.material) remember_bag(*component.material);
    day_.mixes.push_back(std::move(mix));
  }

  void read_pot(const std::string& name, JsonObject& object) {
    if (object.has("format")) object.format("gritwright/container/1");
    Container pot = read_container_members(object, sources_, problems_, notes_);
    if (pot.name.empty()) pot.name = name;
    day_.pots.emplace(name, std::move(pot));
  }

  void read_supply(JsonObject& object) {
    GrainSupply supply;
    if (const auto bag = object.required_text("bag")) supply.bag = *bag;
    if (const auto material = object.text("material")) supply.material = known_name(*material);
    if (const auto component = object.text("component")) supply.component = *component;
    if (const auto stock = object.number("stock_l")) supply.stock = loose_l(*stock);
    if (const auto reserved = object.number("reserved_l")) supply.reserved = loose_l(*reserved);
    if (const auto screened = object.boolean("screened")) supply.screened = *screened;
    const auto from = object.number("from_mm"), to = object.number("to_mm");
    if (from && to)
      supply.keeps = SizeBand{aperture_mm(*from), aperture_mm(*to)};
    else if (from || to)
      object.report("key.missing", object.pointer(), {{"key", std::string(from ? "to_mm" : "from_mm")}});
    if (const auto yield = object.number("yield")) supply.yield = ScreenYield(*yield);
    supply.bulk_density = density(object);
    if (const auto particle = object.number("particle_density_g_l")) supply.particle_density = particle_g_l(*particle);
    read_sieve_test(object, supply);
    if (const auto bag = object.number("bag_l")) supply.bag_volume = loose_l(*bag);
    if (const auto price = object.number("price")) supply.price = Price{*price, ""};
    if (const auto currency = object.text("currency")) {
      if (supply.price)
        supply.price->currency = *currency;
      else if (!object.has("price"))
        object.report("key.missing", object.pointer(), {{"key", std::string("price")}});
    }
    if (!supply.material.empty()) remember_bag(supply.material);
    day_.shelf.push_back(std::move(supply));
  }

  void read_sieve_test(JsonObject& object, GrainSupply& supply) {
    const auto file = object.text("sieve_test");
    if (!file) return;
    if (!sources_.grading_of_sieve_test) return object.report("component.no-sieve-tests-here", object.at("sieve_test"), {{"file", *file}});
    const auto test = sources_.grading_of_sieve_test(*file);
    if (!test) return append(problems_, test.problems());
    supply.grading = test->grading;
    if (!supply.bulk_density) supply.bulk_density = test->bulk_density;
    if (!supply.particle_density) supply.particle_density = test->particle_density;
  }

  std::string known_name(const std::string& name) const {
    const Material* material = sources_.catalogue == nullptr ? nullptr : sources_.catalogue->find(name);
    return material == nullptr ? name : material->name;
  }

  void remember_bag(const std::string& name) {
    const Material* material = sources_.catalogue == nullptr ? nullptr : sources_.catalogue->find(name);
    if (material != nullptr && material->bag_volume_l) day_.typical_bags.emplace(name, loose_l(material->bag_volume_l->value));
  }

  void read_tree(JsonObject& object) {
    PlannedTree tree;
    if (const auto name = object.required_text("name")) tree.name = *name;
    if (const auto species = object.text("species")) tree.species = *species;
    if (const auto group = object.text("group")) {
      tree.group = species_group_named(*group);
      if (!tree.group) object.report("day.unknown-group", object.at("group"), {{"text", *group}});
    }
    if (const auto mix = object.required_text("mix")) tree.mix = *mix;
    if (const auto pot = object.text("pot")) tree.pot = *pot;
    if (const auto plan = object.text("plan")) tree.plan = *plan;
    if (const auto fill = object.number("fill_ml")) tree.fill = pot_ml(*fill);
    read_worse_fills(object, tree);
    read_layers(object, tree);
    if (const auto grain = object.text("top_dressing")) tree.top_dressing = *grain;
    tree.kept_root_mass = kilograms(object, "kept_root_mass_kg");
    tree.mass = kilograms(object, "mass_kg");
    if (const auto bud = object.text("bud")) tree.bud = *bud;
    if (const auto helper = object.text("helper")) tree.helper = *helper;
    if (const auto note = object.text("note")) tree.note = *note;
    tree.day = object.text("day");
    tree.last_repotted = object.text("last_repotted");
    tree.due = object.text("due");
    tree.interval_years = whole(object, "interval_years");
    tree.window_opens = object.text("window_opens");
    tree.window_closes = object.text("window_closes");
    day_.trees.push_back(std::move(tree));
  }

  void read_worse_fills(JsonObject& object, PlannedTree& tree) {
    const auto* fills = object.array("worse_fill_ml");
    if (fills == nullptr) return;
    for (std::size_t i = 0; i < fills->size(); ++i) {
      const JsonValue& fill = (*fills)[i];
      if (fill.kind == JsonValue::Kind::number)
        tree.worse_fills.push_back(pot_ml(fill.number));
      else
        object.report("value.wrong-kind", below(object.at("worse_fill_ml"), std::to_string(i)), {{"expected", std::string("number")}});
    }
  }

  void read_layers(JsonObject& object, PlannedTree& tree) {
    const auto* layers = object.array("layers");
    if (layers == nullptr) return;
    for (std::size_t i = 0; i < layers->size(); ++i) {
      JsonObject item((*layers)[i], below(object.at("layers"), std::to_string(i)), problems_);
      GrainLayer layer;
      if (const auto grain = item.required_text("grain")) layer.grain = *grain;
      if (const auto volume = item.required_number("volume_ml")) layer.volume = pot_ml(*volume);
      layer.bulk_density = density(item);
      item.finish();
      tree.layers.push_back(std::move(layer));
    }
  }

  void read_order() {
    const auto* keys = root_.array("order");
    if (keys == nullptr) return;
    day_.order.clear();
    for (std::size_t i = 0; i < keys->size(); ++i) {
      const auto key = work_key_named((*keys)[i].text);
      if (key)
        day_.order.push_back(*key);
      else
        root_.report("day.unknown-order", below(root_.at("order"), std::to_string(i)), {{"text", (*keys)[i].text}});
    }
  }

  void read_checklist_line(JsonObject& object) {
    ChecklistLine line;
    if (const auto text = object.required_text("text")) line.text = *text;
    const auto when = object.text("when");
    line.evening_before = when == "evening";
    if (when && *when != "evening" && *when != "morning") object.report("day.unknown-time", object.at("when"), {{"text", *when}});
    if (const auto done = object.boolean("done")) line.done = *done;
    day_.checklist.push_back(std::move(line));
  }

  JsonObject& root_;
  const ComponentSources& sources_;
  Problems& problems_;
  Notes& notes_;
  std::optional<double> settling_;
  std::optional<double> spill_;
  PlannedDay day_;
};

bool is_season(const JsonValue& root) {
  const auto format = root.members.find("format");
  return format != root.members.end() && format->second.text == "gritwright/season/1";
}

}  // namespace

Result<PlannedDayFile> read_planned_day(std::string_view text, std::string file_name, const ComponentSources& sources) {
  const Result<JsonValue> root = parse_json(text);
  if (!root) return placed_in(root.problems(), file_name);
  Problems problems;
  PlannedDayFile file;
  JsonObject object(*root, "", problems);
  const bool season = is_season(*root);
  object.format(season ? "gritwright/season/1" : "gritwright/day/1");
  PlannedDay day = Reader(object, sources, problems, file.notes).read();
  const std::string until = season ? object.required_text("until").value_or("") : "";
  object.finish();
  if (season)
    file.plan = PlannedSeason{std::move(day), until};
  else
    file.plan = std::move(day);
  // A number that could not be read would look like a fault of its own.
  if (problems.empty()) append(problems, std::visit([](const auto& plan) { return check(plan); }, file.plan));
  if (!problems.empty()) return placed_in(std::move(problems), file_name);
  return file;
}

}  // namespace gritwright
