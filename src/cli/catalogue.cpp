#include <algorithm>
#include <nlohmann/json.hpp>

#include "gritwright/formats/catalogue_folder.hpp"
#include "gritwright/report/messages.hpp"
#include "gritwright/report/text_table.hpp"
#include "arguments.hpp"
#include "inputs.hpp"
#include "json_out.hpp"
#include "verbs.hpp"

namespace gritwright::cli {

namespace {

std::string kind_text(FigureKind kind) {
  switch (kind) {
    case FigureKind::measured: return "measured";
    case FigureKind::derived: return "derived";
    case FigureKind::typical: return "typical";
  }
  return {};
}

std::string basis_text(MoistureBasis basis) {
  switch (basis) {
    case MoistureBasis::oven_dry: return "oven-dry";
    case MoistureBasis::air_dry: return "air-dry";
    case MoistureBasis::as_bagged: return "as bagged";
  }
  return {};
}

Json text_json(const std::optional<std::string>& text) { return text ? Json(*text) : Json(nullptr); }

Json figure_json(const NamedFigure& named) {
  const CatalogueFigure& figure = *named.figure;
  return {{"key", named.key},
          {"value", figure.value},
          {"low", to_json(figure.low)},
          {"high", to_json(figure.high)},
          {"unit", named.unit},
          {"kind", kind_text(figure.kind)},
          {"source", figure.source},
          {"range_kind", text_json(figure.range_kind ? std::optional(kind_text(*figure.range_kind)) : std::nullopt)},
          {"range_source", text_json(figure.range_source)},
          {"basis", text_json(figure.basis ? std::optional(basis_text(*figure.basis)) : std::nullopt)},
          {"remark", text_json(figure.remark)}};
}

Json material_json(const Material& material) {
  Json list = Json::array();
  for (const NamedFigure& named : figures(material)) list.push_back(figure_json(named));
  return {{"name", material.name}, {"aliases", material.aliases}, {"description", material.description}, {"figures", list}};
}

std::string short_number(std::optional<double> value) {
  if (!value) return figure(value, 0);
  std::string text = figure(value, 3);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.ends_with('.')) text.pop_back();
  return text;
}

/// The sources that `material` names, by key, with their citations.
std::vector<Reference> sources_of(const Material& material, const std::vector<Reference>& references) {
  std::vector<Reference> named;
  for (const Reference& reference : references) {
    const auto names = [&](const NamedFigure& row) { return row.figure->source == reference.key || row.figure->range_source == reference.key; };
    if (std::ranges::any_of(figures(material), names)) named.push_back(reference);
  }
  return named;
}

Json sources_json(const std::vector<Reference>& sources) {
  Json list = Json::array();
  for (const Reference& source : sources) list.push_back({{"key", source.key}, {"citation", source.citation}, {"seen", source.seen}});
  return list;
}

std::string material_text(const Material& material, const std::vector<Reference>& sources) {
  std::string below;
  std::vector<std::vector<std::string>> rows;
  for (const NamedFigure& named : figures(material)) {
    const CatalogueFigure& row = *named.figure;
    const std::string range = row.low && row.high ? short_number(row.low) + " to " + short_number(row.high) : figure({}, 0);
    rows.push_back({std::string(named.key), short_number(row.value), range, std::string(named.unit), kind_text(row.kind),
                    row.basis ? basis_text(*row.basis) : figure({}, 0), row.source});
    if (row.range_kind || row.range_source) {
      below += std::string(named.key) + ": the range is " + (row.range_kind ? kind_text(*row.range_kind) : kind_text(row.kind)) + ", from " +
               row.range_source.value_or(row.source) + '\n';
    }
    if (row.remark) below += std::string(named.key) + ": " + *row.remark + '\n';
  }
  if (!below.empty()) below += '\n';
  for (const Reference& source : sources) below += source.key + ": " + source.citation + '\n';
  return material.name + ": " + material.description + "\n\n" +
         text_table({"figure", "value", "range", "unit", "kind", "basis", "source"}, rows) + '\n' + below +
         "\nTypical figures are defaults from memory; the figures of one material go together as a set.\n";
}

std::string list_text(const Catalogue& catalogue) {
  std::vector<std::vector<std::string>> rows;
  const auto value = [](const std::optional<CatalogueFigure>& figure) {
    return figure ? std::optional(figure->value) : std::nullopt;
  };
  for (const Material& material : catalogue.materials()) {
    rows.push_back({material.name, short_number(material.bulk_density_g_l.value),
                    short_number(value(material.particle_density_g_l)), short_number(value(material.skeletal_density_g_l)),
                    short_number(value(material.cec_meq_100g))});
  }
  return text_table({"material", "litre weight g/L", "grain density g/L", "solid density g/L", "exchange capacity meq/100 g"}, rows);
}

std::vector<Explanation> explanations() {
  return {{"figures", "as the named source has them: measured there, derived from what was measured there, or typical, from memory; a range "
                      "holds what was seen, not an error of the value", {}, "materials/references.json"}};
}

class CatalogueVerb final : public Verb {
 public:
  std::string name() const override { return "catalogue"; }
  std::string summary() const override { return "Reference materials: list, show NAME, check"; }
  void declare(CLI::App& app) override {
    required_choice(app, "ACTION", action_, "list, show or check", {"list", "show", "check"});
    argument(app, "NAME", material_, "The material to show");
  }
  Exit run(const CommonOptions& options, Streams streams) override {
    if (action_ != "show" && !material_.empty()) {
      streams.err << "catalogue " << action_ << " takes no name; only show does\n";
      return Exit::wrong_usage;
    }
    if (action_ == "show" && material_.empty()) {
      streams.err << "catalogue show wants the name of a material\n";
      return Exit::wrong_usage;
    }
    const auto folder = catalogue_folder();
    if (!folder) return refuse(folder.problems(), streams.err);
    if (action_ == "check") return check_folder(*folder, options, streams);
    const auto read = read_catalogue(*folder);
    if (!read) return refuse(read.problems(), streams.err);
    return action_ == "list" ? list(read->catalogue, options, streams) : show(*read, options, streams);
  }

 private:
  static Exit check_folder(const std::filesystem::path& folder, const CommonOptions& options, Streams streams) {
    if (const Problems problems = check_catalogue(folder); !problems.empty()) return refuse(problems, streams.err);
    streams.out << (options.json ? "{\"problems\": []}\n" : "The catalogue is sound.\n");
    return Exit::done;
  }

  static Exit list(const Catalogue& catalogue, const CommonOptions& options, Streams streams) {
    if (!options.json) {
      streams.out << list_text(catalogue);
      if (options.explain) streams.out << '\n' << explanation_text(explanations());
      return Exit::done;
    }
    Json all = Json::array();
    for (const Material& material : catalogue.materials()) all.push_back(material_json(material));
    Json answer{{"materials", all}};
    if (options.explain) answer["explanations"] = to_json(explanations());
    streams.out << answer.dump(2) << '\n';
    return Exit::done;
  }

  Exit show(const CatalogueFolder& folder, const CommonOptions& options, Streams streams) const {
    const Catalogue& catalogue = folder.catalogue;
    const Material* material = catalogue.find(material_);
    if (material == nullptr) {
      std::string nearest;
      for (const std::string& other : catalogue.nearest(material_)) nearest += (nearest.empty() ? "" : ", ") + other;
      return refuse({Problem{"component.unknown-material", {}, {{"name", material_}, {"nearest", nearest}}}}, streams.err);
    }
    const std::vector<Reference> sources = sources_of(*material, folder.references);
    if (!options.json) {
      streams.out << material_text(*material, sources);
      if (options.explain) streams.out << '\n' << explanation_text(explanations());
      return Exit::done;
    }
    Json answer = material_json(*material);
    answer["sources"] = sources_json(sources);
    if (options.explain) answer["explanations"] = to_json(explanations());
    streams.out << answer.dump(2) << '\n';
    return Exit::done;
  }

  std::string action_;
  std::string material_;
};

}  // namespace

std::unique_ptr<Verb> catalogue_verb() { return std::make_unique<CatalogueVerb>(); }

}  // namespace gritwright::cli
