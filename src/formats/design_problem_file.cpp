#include "gritwright/formats/design_problem_file.hpp"

#include <array>
#include <cmath>
#include <cstddef>
#include <utility>

#include "component_json.hpp"
#include "container_members.hpp"
#include "json_document.hpp"
#include "text_door.hpp"

namespace gritwright {

namespace {

struct PotFigureKey {
  const char* key;
  PotFigure figure;
};
constexpr std::array pot_figure_keys{PotFigureKey{"air_filled_porosity", PotFigure::air_filled_porosity},
                                     PotFigureKey{"container_capacity", PotFigure::container_capacity},
                                     PotFigureKey{"available_in_pot", PotFigure::available_in_pot},
                                     PotFigureKey{"wet_mass_g_l", PotFigure::wet_mass}};

class DesignReader {
 public:
  DesignReader(const ComponentSources& sources, Problems& problems, Notes& notes)
      : sources_(sources), problems_(problems), notes_(notes) {}

  DesignProblem read(JsonObject& object) {
    object.text("name");
    read_candidates(object);
    read_pots(object);
    if (const auto need = object.number("need_l")) problem_.need = mixed_l(*need);
    read_form(object);
    if (const auto* wishes = object.required_array("wishes"))
      for (std::size_t i = 0; i < wishes->size(); ++i) read_wish((*wishes)[i], below(object.at("wishes"), std::to_string(i)));
    return std::move(problem_);
  }

 private:
  void read_candidates(JsonObject& object) {
    const auto* items = object.required_array("candidates");
    if (items == nullptr) return;
    for (std::size_t i = 0; i < items->size(); ++i) {
      JsonObject item((*items)[i], below(object.at("candidates"), std::to_string(i)), problems_);
      Candidate candidate;
      auto component = read_component(item, PartsKey::optional, sources_, problems_, notes_);
      if (const auto stock = item.number("stock_l")) candidate.stock = loose_l(*stock);
      if (const auto price = item.number("price_per_l")) candidate.price = PricePerLitre(*price);
      candidate.family = item.text("family");
      item.finish();
      // A component that could not be read keeps its place, so that later pointers count as the file does.
      if (component) candidate.component = *std::move(component);
      problem_.candidates.push_back(std::move(candidate));
    }
  }

  void read_pots(JsonObject& object) {
    const JsonValue* value = object.take("pots");
    if (value == nullptr) return;
    JsonObject pots(*value, object.at("pots"), problems_);
    for (const auto& [name, content] : value->members) {
      JsonObject pot(*pots.take(name), pots.at(name), problems_);
      if (pot.has("format")) pot.format("gritwright/container/1");
      Container container = read_container_members(pot, sources_, problems_, notes_);
      pot.finish();
      if (container.name.empty()) container.name = name;
      problem_.pots.emplace(name, std::move(container));
    }
  }

  void read_form(JsonObject& object) {
    const JsonValue* value = object.take("parts");
    if (value == nullptr) return;
    JsonObject form(*value, object.at("parts"), problems_);
    if (const auto whole = form.boolean("whole")) problem_.form.whole = *whole;
    read_count(form, "total", problem_.form.total);
    read_count(form, "components", problem_.form.components);
    form.finish();
  }

  void read_count(JsonObject& form, const char* key, int& into) {
    const auto number = form.number(key);
    if (!number) return;
    constexpr double beyond_any_count = 1e6;
    if (*number != std::floor(*number) || std::abs(*number) > beyond_any_count)
      form.report("design.not-whole", form.at(key), {{"value", *number}});
    else
      into = static_cast<int>(*number);
  }

  void read_wish(const JsonValue& value, const std::string& pointer) {
    JsonObject object(value, pointer, problems_);
    const std::size_t problems_before = problems_.size();
    Wish wish;
    if (const auto hard = object.boolean("hard")) wish.hard = *hard;
    if (const auto weight = object.number("weight")) wish.weight = *weight;
    const int kinds = read_figure(object, wish);
    if (kinds == 0 && problems_.size() == problems_before) object.report("design.no-figure", pointer);
    if (kinds > 1) object.report("design.figures-twice", pointer);
    if (!std::holds_alternative<PassingLimits>(wish.figure) && !std::holds_alternative<NearestGrading>(wish.figure)) {
      wish.least = object.number("least");
      wish.most = object.number("most");
    }
    object.finish();
    problem_.wishes.push_back(std::move(wish));
  }

  /// How many figures the wish names; one is right.
  int read_figure(JsonObject& object, Wish& wish) {
    int kinds = 0;
    const auto found = [&](auto figure) {
      ++kinds;
      wish.figure = std::move(figure);
    };
    if (const auto* items = object.array("limits")) found(read_limits(*items, object.at("limits")));
    if (const auto* items = object.array("nearest")) found(read_nearest(*items, object.at("nearest")));
    if (object.has("band")) found(read_band(object));
    if (const auto size = object.number("finer_than_mm")) found(FinerShare{aperture_mm(*size)});
    for (const PotFigureKey& each : pot_figure_keys)
      if (const auto pot = object.text(each.key)) found(FigureInPot{each.figure, *pot});
    if (object.has("cec_meq_l")) {
      affirmed(object, "cec_meq_l");
      found(ExchangeCapacity{});
    }
    if (object.has("price_per_l")) {
      affirmed(object, "price_per_l");
      found(MixPrice{});
    }
    if (const auto name = object.text("share")) found(ShareOf{*name});
    return kinds;
  }

  void affirmed(JsonObject& object, const char* key) {
    const auto value = object.boolean(key);
    if (value && !*value) object.report("design.not-affirmed", object.at(key), {{"key", std::string(key)}});
  }

  PassingLimits read_limits(const std::vector<JsonValue>& items, const std::string& pointer) {
    PassingLimits band;
    for (std::size_t i = 0; i < items.size(); ++i) {
      JsonObject item(items[i], below(pointer, std::to_string(i)), problems_);
      PassingLimit limit;
      if (const auto aperture = item.required_number("aperture_mm")) limit.aperture = aperture_mm(*aperture);
      if (const auto low = item.number("low")) limit.low = passing_percent(*low);
      if (const auto high = item.number("high")) limit.high = passing_percent(*high);
      item.finish();
      band.limits.push_back(limit);
    }
    return band;
  }

  NearestGrading read_nearest(const std::vector<JsonValue>& items, const std::string& pointer) {
    NearestGrading grading;
    for (std::size_t i = 0; i < items.size(); ++i) {
      JsonObject item(items[i], below(pointer, std::to_string(i)), problems_);
      const auto aperture = item.required_number("aperture_mm");
      const auto passing = item.required_number("passing");
      item.finish();
      if (aperture && passing) grading.points.push_back({aperture_mm(*aperture), passing_percent(*passing)});
    }
    return grading;
  }

  BandShare read_band(JsonObject& object) {
    JsonObject band(*object.take("band"), object.at("band"), problems_);
    const auto from = band.required_number("from_mm");
    const auto to = band.required_number("to_mm");
    band.finish();
    return {aperture_mm(from.value_or(0)), aperture_mm(to.value_or(0))};
  }

  const ComponentSources& sources_;
  Problems& problems_;
  Notes& notes_;
  DesignProblem problem_;
};

}  // namespace

Result<DesignProblemFile> read_design_problem(std::string_view text, std::string file_name, const ComponentSources& sources) {
  const Result<JsonValue> root = parse_json(text);
  if (!root) return placed_in(root.problems(), file_name);
  Problems problems;
  DesignProblemFile file;
  JsonObject object(*root, "", problems);
  object.format("gritwright/design/1");
  file.problem = DesignReader(sources, problems, file.notes).read(object);
  object.finish();
  // A number that could not be read would look like a fault of its own.
  if (problems.empty()) append(problems, check(file.problem));
  if (!problems.empty()) return placed_in(std::move(problems), file_name);
  return file;
}

}  // namespace gritwright
