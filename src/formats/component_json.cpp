#include "component_json.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace gritwright {

namespace {

/// A percentage may lie this far outside 0-100 and is rescaled: published tables are rounded.
constexpr double slack_percent = 1;

std::string joined(const std::vector<std::string>& names) {
  std::string text;
  for (const std::string& name : names) text += (text.empty() ? "" : ", ") + name;
  return text;
}

struct WrittenPoint {
  double aperture_mm;
  double passing_percent;
  std::size_t row;
};

/// The points that could be read.
std::vector<WrittenPoint> written_points(JsonObject& component, Problems& problems) {
  const auto* items = component.array("grading");
  if (items == nullptr) return {};
  const std::string pointer = component.at("grading");
  if (items->empty()) component.report("grading.empty", pointer);
  std::vector<WrittenPoint> points;
  for (std::size_t i = 0; i < items->size(); ++i) {
    JsonObject point((*items)[i], below(pointer, std::to_string(i)), problems);
    const auto aperture = point.required_number("aperture_mm");
    const auto passing = point.required_number("passing");
    point.finish();
    if (!aperture || !passing) continue;
    if (*passing < -slack_percent || *passing > 100 + slack_percent)
      component.report("grading.passing-out-of-range", point.at("passing"), {{"percent", *passing}});
    else
      points.push_back({*aperture, *passing, i});
  }
  return points;
}

/// Points in rising aperture. Written coarse to fine or fine to coarse; anything between is a slip of the pen.
bool put_in_order(std::vector<WrittenPoint>& points, JsonObject& component) {
  const bool falling = points.size() < 2 || points[1].aperture_mm < points[0].aperture_mm;
  for (std::size_t i = 1; i < points.size(); ++i) {
    const double before = points[i - 1].aperture_mm, here = points[i].aperture_mm;
    if (falling ? here < before : here > before) continue;
    component.report("grading.aperture-order", below(below(component.at("grading"), std::to_string(points[i].row)), "aperture_mm"),
                     {{"aperture_mm", here}, {"before_mm", before}});
    return false;
  }
  if (falling) std::ranges::reverse(points);
  return true;
}

std::optional<Grading> read_grading(JsonObject& component, const std::string& name, Problems& problems, Notes& notes) {
  auto points = written_points(component, problems);
  if (points.empty() || !put_in_order(points, component)) return std::nullopt;
  double low = 0, high = 100;
  for (const WrittenPoint& point : points) {
    low = std::min(low, point.passing_percent);
    high = std::max(high, point.passing_percent);
  }
  if (low < 0 || high > 100)
    notes.push_back({"grading.passing-rescaled", Level::note, name, {{"low_percent", low}, {"high_percent", high}}});
  Grading grading;
  for (const WrittenPoint& point : points)
    grading.points.push_back({aperture_mm(point.aperture_mm), passing_percent((point.passing_percent - low) / (high - low) * 100)});
  return grading;
}

const Material* find_material(JsonObject& object, const ComponentSources& sources) {
  const auto name = object.text("material");
  if (!name) return nullptr;
  const Material* found = sources.catalogue == nullptr ? nullptr : sources.catalogue->find(*name);
  if (found == nullptr) {
    const std::string nearest = sources.catalogue == nullptr ? "" : joined(sources.catalogue->nearest(*name));
    object.report("component.unknown-material", object.at("material"), {{"name", *name}, {"nearest", nearest}});
  }
  return found;
}

std::optional<SieveTestGrading> grade_sieve_test(JsonObject& object, const std::string& name, const ComponentSources& sources,
                                                 Problems& problems, Notes& notes) {
  const auto file = object.text("sieve_test");
  if (!file) return std::nullopt;
  if (!sources.grading_of_sieve_test) {
    object.report("component.no-sieve-tests-here", object.at("sieve_test"), {{"file", *file}});
    return std::nullopt;
  }
  Result<SieveTestGrading> graded = sources.grading_of_sieve_test(*file);
  if (!graded) {
    // A problem inside the named file keeps its own place there; one about the file itself stands at the key that names it.
    for (Problem problem : graded.problems()) {
      if (!problem.where.file) problem.where.pointer = object.at("sieve_test");
      problems.push_back(std::move(problem));
    }
    return std::nullopt;
  }
  for (Note note : graded->notes) {
    note.where = note.where.empty() ? name : name + ", " + note.where;
    notes.push_back(std::move(note));
  }
  return std::move(graded).value();
}

void read_grain(JsonObject& object, GrainProperties& grain) {
  if (const auto density = object.number("bulk_density_g_l")) grain.bulk_density = bulk_g_l(*density);
  if (const auto percent = object.number("bulk_moisture_percent")) grain.bulk_moisture = Moisture(*percent / 100);
  if (const auto density = object.number("particle_density_g_l")) grain.particle_density = particle_g_l(*density);
  if (const auto density = object.number("skeletal_density_g_l")) grain.skeletal_density = skeletal_g_l(*density);
  if (const auto share = object.number("open_share")) grain.open_share = OpenShare(*share);
  if (const auto ratio = object.number("water_absorption")) grain.water_absorption = WaterAbsorption(*ratio);
  if (const auto exchange = object.number("cec_meq_100g")) grain.cation_exchange = CationExchange(*exchange);
}

}  // namespace

std::optional<Component> read_component(JsonObject& object, PartsKey parts, const ComponentSources& sources, Problems& problems,
                                        Notes& notes, std::optional<SieveTest>* test) {
  const std::size_t problems_before = problems.size();
  Component component;
  component.parts = Parts(1);
  if (const auto given = parts == PartsKey::required ? object.required_number("parts") : object.number("parts"))
    component.parts = Parts(*given);

  const Material* material = find_material(object, sources);
  if (material != nullptr) {
    component.material = material->name;
    component.name = material->name;
    component.grain = typical_grain(*material);
  }
  if (const auto name = object.text("name"))
    component.name = *name;
  else if (!object.has("material") && !object.has("name"))
    object.report("key.missing", object.pointer(), {{"key", std::string("name")}});

  const int ways = int{object.has("grading")} + int{object.has("class_mm")} + int{object.has("sieve_test")};
  if (ways == 0) object.report("component.no-sizes", object.pointer());
  if (ways > 1) object.report("component.sizes-twice", object.pointer());
  auto grading = read_grading(object, component.name, problems, notes);
  const auto pan_size = object.number("pan_size_mm");
  const auto top_size = object.number("top_size_mm");
  const auto size = object.number("class_mm");
  const auto graded = grade_sieve_test(object, component.name, sources, problems, notes);
  if (size && (pan_size || top_size))
    object.report("component.class-has-no-pan", object.at(pan_size ? "pan_size_mm" : "top_size_mm"));
  if (graded) {
    grading = graded->grading;
    if (test != nullptr) *test = graded->test;
    if (graded->bulk_density) component.grain.bulk_density = *graded->bulk_density;
    if (graded->particle_density) component.grain.particle_density = *graded->particle_density;
  }
  read_grain(object, component.grain);
  if (material != nullptr) component.grain.provenance = provenance_of(component.grain, *material);
  const bool has_bulk_density = object.has("bulk_density_g_l") || material != nullptr || (graded && graded->bulk_density);
  if (!has_bulk_density && !object.has("material") && !(object.has("sieve_test") && !graded))
    object.report("key.missing", object.pointer(), {{"key", std::string("bulk_density_g_l")}});

  if (grading) {
    if (pan_size) grading->pan_size = aperture_mm(*pan_size);
    if (top_size) grading->top_size = aperture_mm(*top_size);
    component.sizes = *grading;
  } else if (size) {
    component.sizes = SingleSize{aperture_mm(*size)};
  }
  std::vector<std::string> unread;
  if (!grading && !size)
    for (const char* key : {"grading", "class_mm", "pan_size_mm", "top_size_mm"}) unread.push_back(object.at(key));
  if (!has_bulk_density) unread.push_back(object.at("bulk_density_g_l"));
  append(problems, beyond_told(under(check(component), object.pointer()), problems, problems_before, unread));
  if (problems.size() != problems_before) return std::nullopt;
  return component;
}

}  // namespace gritwright
