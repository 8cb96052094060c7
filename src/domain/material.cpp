#include "gritwright/domain/material.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

namespace gritwright {

namespace {

std::string folded(std::string_view name) {
  std::string result(name);
  for (char& sign : result) {
    if (sign >= 'A' && sign <= 'Z') sign = static_cast<char>(sign - 'A' + 'a');
    if (sign == '-' || sign == '_') sign = ' ';
  }
  return result;
}

/// Least number of inserted, removed or changed signs that turns `a` into `b`.
std::size_t edit_distance(const std::string& a, const std::string& b) {
  std::vector<std::size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t diagonal = std::exchange(row[0], i);
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t changed = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
      diagonal = std::exchange(row[j], std::min({row[j] + 1, row[j - 1] + 1, changed}));
    }
  }
  return row.back();
}

/// A part of a name typed for the whole ("bark") is nearer than any misspelling.
std::size_t distance(const std::string& typed, const std::string& name) {
  if (typed.size() >= 3 && name.find(typed) != std::string::npos) return 0;
  return edit_distance(typed, name);
}

std::size_t distance(const std::string& typed, const Material& material) {
  std::size_t least = distance(typed, folded(material.name));
  for (const std::string& alias : material.aliases) least = std::min(least, distance(typed, folded(alias)));
  return least;
}

bool is_share(std::string_view unit) { return unit == "share"; }

}  // namespace

std::vector<NamedFigure> figures(const Material& material) {
  std::vector<NamedFigure> rows{{"bulk_density_g_l", "g/L", &material.bulk_density_g_l}};
  const auto add = [&](std::string_view key, std::string_view unit, const std::optional<CatalogueFigure>& figure) {
    if (figure) rows.push_back({key, unit, &*figure});
  };
  add("particle_density_g_l", "g/L", material.particle_density_g_l);
  add("skeletal_density_g_l", "g/L", material.skeletal_density_g_l);
  add("total_porosity", "share", material.total_porosity);
  add("grain_porosity", "share", material.grain_porosity);
  add("open_share", "share", material.open_share);
  add("water_absorption", "kg/kg", material.water_absorption);
  add("water_held", "kg/kg", material.water_held);
  add("container_capacity", "share", material.container_capacity);
  add("ph", "pH", material.ph);
  add("cec_meq_100g", "meq/100 g", material.cec_meq_100g);
  add("durability_years", "years", material.durability_years);
  add("bag_volume_l", "L", material.bag_volume_l);
  add("bag_mass_kg", "kg", material.bag_mass_kg);
  return rows;
}

GrainProperties typical_grain(const Material& material) {
  GrainProperties grain;
  grain.provenance = Provenance::typical;
  grain.bulk_density = bulk_g_l(material.bulk_density_g_l.value);
  if (material.particle_density_g_l) grain.particle_density = particle_g_l(material.particle_density_g_l->value);
  if (material.skeletal_density_g_l) grain.skeletal_density = skeletal_g_l(material.skeletal_density_g_l->value);
  if (material.open_share) grain.open_share = OpenShare(material.open_share->value);
  if (material.water_absorption) grain.water_absorption = WaterAbsorption(material.water_absorption->value);
  if (material.cec_meq_100g) grain.cation_exchange = CationExchange(material.cec_meq_100g->value);
  return grain;
}

bool is_typical(const std::optional<CatalogueFigure>& figure, double value) {
  return figure && std::abs(figure->value - value) <= 1e-9 * std::abs(value);
}

Provenance provenance_of(const GrainProperties& grain, const Material& material) {
  const auto same = [](const std::optional<CatalogueFigure>& figure, const std::optional<double>& value) { return value && is_typical(figure, *value); };
  const auto number = [](const auto& value, auto convert) { return value ? std::optional<double>(convert(*value)) : std::nullopt; };
  const bool typical = is_typical(material.bulk_density_g_l, in_g_l(grain.bulk_density)) ||
                       same(material.particle_density_g_l, number(grain.particle_density, [](ParticleDensity d) { return in_g_l(d); })) ||
                       same(material.skeletal_density_g_l, number(grain.skeletal_density, [](SkeletalDensity d) { return in_g_l(d); })) ||
                       is_typical(material.open_share, grain.open_share.value()) ||
                       same(material.water_absorption, number(grain.water_absorption, [](WaterAbsorption a) { return a.value(); })) ||
                       same(material.cec_meq_100g, number(grain.cation_exchange, [](CationExchange c) { return c.value(); }));
  return typical ? Provenance::typical : Provenance::measured;
}

Problems check(const Material& material) {
  Problems problems;
  const auto report = [&](const char* code, const std::string& pointer, Facts facts = {}) {
    Place place;
    place.pointer = pointer;
    problems.push_back({code, std::move(place), std::move(facts)});
  };
  if (material.name.empty()) report("catalogue.no-name", "/name");
  for (const auto& [key, unit, figure] : figures(material)) {
    const std::string pointer = "/figures/" + std::string(key);
    const double low = figure->low.value_or(figure->value);
    const double high = figure->high.value_or(figure->value);
    if (low > high) report("catalogue.range-upside-down", pointer, {{"low", low}, {"high", high}});
    else if (figure->value < low || figure->value > high)
      report("catalogue.value-outside-range", pointer, {{"value", figure->value}, {"low", low}, {"high", high}});
    if (low < 0) report("catalogue.negative", pointer, {{"low", low}});
    if (is_share(unit) && high > 1) report("catalogue.share-above-one", pointer, {{"high", high}});
    if (figure->source.empty()) report("catalogue.no-source", pointer);
  }
  return problems;
}

Catalogue::Catalogue(std::vector<Material> materials) : materials_(std::move(materials)) {}

const Material* Catalogue::find(std::string_view name) const {
  const std::string wanted = folded(name);
  const auto called_so = [&](const std::string& candidate) { return folded(candidate) == wanted; };
  const auto found = std::ranges::find_if(materials_, [&](const Material& material) {
    return called_so(material.name) || std::ranges::any_of(material.aliases, called_so);
  });
  return found == materials_.end() ? nullptr : &*found;
}

std::vector<std::string> Catalogue::nearest(std::string_view name, std::size_t count) const {
  const std::string typed = folded(name);
  std::vector<std::pair<std::size_t, std::string>> ranked;
  for (const Material& material : materials_) ranked.emplace_back(distance(typed, material), material.name);
  std::ranges::sort(ranked);
  std::vector<std::string> names;
  for (const auto& [steps, candidate] : ranked)
    if (names.size() < count) names.push_back(candidate);
  return names;
}

}  // namespace gritwright
