#include "json_out.hpp"

#include <nlohmann/json.hpp>

#include "gritwright/report/messages.hpp"

namespace gritwright::cli {

Json to_json(std::optional<double> value) { return value ? Json(*value) : Json(nullptr); }

Json to_json(const Notes& notes) {
  Json list = Json::array();
  for (const Note& note : notes) {
    list.push_back({{"code", note.code},
                    {"level", note.level == Level::warning ? "warning" : "note"},
                    {"where", note.where},
                    {"text", sentence(note)}});
  }
  return list;
}

Json to_json(const std::vector<GradingPoint>& points) {
  Json list = Json::array();
  for (const GradingPoint& point : points) {
    list.push_back({{"aperture_mm", in_mm(point.aperture)}, {"percent", in_percent(point.passing)}});
  }
  return list;
}

Json to_json(const std::vector<Explanation>& explanations) {
  Json list = Json::array();
  for (const Explanation& explanation : explanations) {
    Json inputs = Json::object();
    for (const auto& [name, value] : explanation.inputs) {
      // Two components may have one name.
      std::string key = name;
      for (int again = 2; inputs.contains(key); ++again) key = name + " (" + std::to_string(again) + ")";
      inputs[key] = value;
    }
    list.push_back({{"figure", explanation.figure},
                    {"formula", explanation.formula},
                    {"inputs", inputs},
                    {"source", explanation.source}});
  }
  return list;
}

}  // namespace gritwright::cli
