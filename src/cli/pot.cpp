#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "gritwright/report/text_table.hpp"
#include "inputs.hpp"
#include "json_out.hpp"
#include "verbs.hpp"

namespace gritwright::cli {

namespace {

constexpr int heights_listed = 11;

Depth listed_height(const PotGeometry& geometry, int index) {
  return geometry.filled_depth() * (static_cast<double>(index) / (heights_listed - 1));
}

Json pot_json(const PotGeometry& geometry) {
  Json areas = Json::array();
  for (int i = 0; i < heights_listed; ++i) {
    const Depth height = listed_height(geometry, i);
    areas.push_back({{"height_cm", in_cm(height)}, {"area", in_cm2(geometry.area_at(height))}});
  }
  return {{"volume_ml", in_ml(geometry.volume())}, {"depth_cm", in_cm(geometry.filled_depth())}, {"area_cm2", areas}};
}

std::string pot_text(const PotGeometry& geometry, UnitSystem units) {
  std::string text = "volume to the fill line " + volume_text(in_ml(geometry.volume()) / 1000, units) + ", filled depth " +
                     depth_text(geometry.filled_depth(), units) + '\n';
  if (geometry.container().water_fill) {
    text += "by its lengths " + volume_text(in_ml(geometry.volume_by_lengths()) / 1000, units) + "; the water fill counts\n";
  }
  std::vector<std::vector<std::string>> rows;
  for (int i = 0; i < heights_listed; ++i) {
    const Depth height = listed_height(geometry, i);
    rows.push_back({depth_text(height, units), figure(in_cm2(geometry.area_at(height)), 0) + " cm2"});
  }
  return text + '\n' + text_table({"height", "area"}, rows);
}

class Pot final : public Verb {
 public:
  std::string name() const override { return "pot"; }
  std::string summary() const override { return "Volume and area of a container, and with a mix the water in it"; }
  void declare(CLI::App& app) override {
    app.add_option("FILE", file_, "A container (.json); - reads standard input")->required();
  }
  Exit run(const CommonOptions& options, Streams streams) override {
    const auto read = container_from(file_, streams.in);
    if (!read) return refuse(read.problems(), streams.err);
    const PotGeometry geometry(read->container);
    if (options.json) {
      Json answer = pot_json(geometry);
      answer["notes"] = to_json(read->notes);
      streams.out << answer.dump(2) << '\n';
    } else {
      streams.out << pot_text(geometry, options.units) << notes_text(read->notes);
    }
    return exit_for(read->notes, options);
  }

 private:
  std::string file_;
};

}  // namespace

std::unique_ptr<Verb> pot_verb() { return std::make_unique<Pot>(); }

}  // namespace gritwright::cli
