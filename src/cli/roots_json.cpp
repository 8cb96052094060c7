#include "roots_json.hpp"

#include <nlohmann/json.hpp>

#include "gritwright/formats/written_angle.hpp"
#include "gritwright/models/root_mix.hpp"

namespace gritwright::cli {

namespace {

const char* rung_name(Rung rung) {
  switch (rung) {
    case Rung::shifted: return "shifted";
    case Rung::turned: return "turned";
    case Rung::cut: return "cut";
    case Rung::corners: return "corners";
    case Rung::tipped_less: return "tipped_less";
    case Rung::sunk: return "sunk";
    case Rung::raised: return "raised";
    case Rung::shoulder: return "shoulder";
    case Rung::other_pot: return "other_pot";
    case Rung::staging: return "staging";
  }
  return "";
}

Json plan_json(const RootMassPlan& plan, const WorkedPlan& worked) {
  Json json;
  json["name"] = worked.name;
  json["fits"] = worked.fits;
  json["pot"] = pot_of(plan, worked).name;
  json["rungs"] = Json::array();
  for (const Rung rung : worked.rungs) json["rungs"].push_back(rung_name(rung));
  json["offset_cm"] = {in_cm(worked.right), in_cm(worked.back)};
  json["turn_deg"] = written_deg(worked.turn);
  json["tip_deg"] = written_deg(worked.tip);
  json["tip_toward_deg"] = written_deg(worked.tip_toward);
  json["cuts"] = Json::array();
  for (const PlannedCut& cut : worked.cuts)
    json["cuts"].push_back({{"face", face_name(cut.face)}, {"direction", direction_name(cut.direction)}, {"cm", in_cm(cut.depth)}});
  json["shaved"] = Json::array();
  for (const ShavedCorners& corners : worked.shaved)
    json["shaved"].push_back({{"face", face_name(corners.face)}, {"direction", direction_name(corners.direction)}, {"share", corners.share}, {"cm", in_cm(corners.depth)}});
  json["combed"] = Json::array();
  for (const CombedFace& combed : worked.combed) json["combed"].push_back({{"face", face_name(combed.face)}, {"cm", in_cm(combed.depth)}});
  json["untouched_share"] = plan.bare_root ? Json(nullptr) : Json(worked.untouched_share);
  json["removed_share"] = worked.removed_share;
  json["left_again_share"] = worked.other_half ? Json(worked.other_half->left_again) : Json(nullptr);
  json["worked_again_share"] = worked.other_half ? Json(worked.other_half->worked_again) : Json(nullptr);
  json["kept_ml"] = in_ml(worked.kept);
  json["trunk_base_cm"] = in_cm(worked.trunk_base);
  json["soil_line_cm"] = in_cm(worked.soil_line);
  json["shoulder_cm"] = in_cm(worked.shoulder);
  json["fill_ml"] = in_ml(worked.fill);
  json["sphagnum_ml"] = in_ml(worked.sphagnum);
  json["new_mix_share"] = worked.fits ? Json(new_mix_share(plan, worked)) : Json(nullptr);
  json["rest_after_years"] = worked.rest_after_years ? Json(*worked.rest_after_years) : Json(nullptr);
  json["cautions"] = to_json(worked.cautions);
  return json;
}

}  // namespace

Json roots_json(const RootMassPlan& plan, const RootPlanAnswer& answer, const std::optional<PotGrowth>& growth) {
  Json json;
  json["name"] = plan.name;
  json["block_ml"] = in_ml(answer.block_volume);
  json["limitations"] = Json::array();
  for (const Limitation& limitation : answer.limitations)
    json["limitations"].push_back({{"direction", direction_name(limitation.direction)}, {"excess_cm", in_cm(limitation.excess)}});
  json["corners_share"] = answer.corners_share;
  json["plans"] = Json::array();
  for (const WorkedPlan& worked : answer.plans) json["plans"].push_back(plan_json(plan, worked));
  json["stop_table"] = Json::array();
  for (const StopRow& row : answer.stop_table)
    json["stop_table"].push_back({{"stops_at_cm", in_cm(row.stops_at)},
                                  {"below_cm", in_cm(row.below)},
                                  {"trunk_base_cm", in_cm(row.trunk_base)},
                                  {"untouched_share", plan.bare_root ? Json(nullptr) : Json(row.untouched_share)},
                                  {"fill_ml", in_ml(row.fill)},
                                  {"fits", row.fits}});
  json["smallest_growth"] = nullptr;
  if (growth)
    json["smallest_growth"] = {{"length_cm", in_cm(growth->length)}, {"width_cm", in_cm(growth->width)}, {"depth_cm", in_cm(growth->depth)}};
  return json;
}

}  // namespace gritwright::cli
