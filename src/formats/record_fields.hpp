#pragma once
// The fields of every record of a workbook, in the order they are written.

#include "grain_fields.hpp"
#include "gritwright/domain/record.hpp"
#include "profile_fields.hpp"

namespace gritwright::fields {

inline constexpr Door<RemovedShare> removed{[](double value) { return RemovedShare(value); },
                                            [](RemovedShare value) { return value.value(); }};

struct OwnMaterialFields {
  template <class Io, class T>
  void operator()(Io& io, T& material) const {
    io.required_text("name", material.name);
    io.text("resembles", material.resembles);
    io.object("grain", material.grain, GrainFields{});
    io.text("note", material.note);
  }
};

struct SizeBandFields {
  template <class Io, class T>
  void operator()(Io& io, T& band) const {
    io.required_number("from_mm", band.from, mm);
    io.required_number("to_mm", band.to, mm);
  }
};
struct PriceFields {
  template <class Io, class T>
  void operator()(Io& io, T& price) const {
    io.required_number("amount", price.amount, plain);
    io.text("currency", price.currency);
  }
};
struct ReclaimedFields {
  template <class Io, class T>
  void operator()(Io& io, T& reclaimed) const {
    io.id("tree", reclaimed.tree);
    io.id("mix", reclaimed.mix);
    io.day("day", reclaimed.day);
  }
};

inline constexpr std::array moisture_words{Word<MoistureBasis>{MoistureBasis::oven_dry, "oven-dry"},
                                           Word<MoistureBasis>{MoistureBasis::air_dry, "air-dry"},
                                           Word<MoistureBasis>{MoistureBasis::as_bagged, "as-bagged"}};

struct CrumblingFields {
  template <class Io, class T>
  void operator()(Io& io, T& crumbling) const {
    io.required_number("breakages_per_round", crumbling.breakages_per_round, plain);
    io.required_number("modulus", crumbling.modulus, plain);
    io.number("rounds_per_season", crumbling.rounds_per_season, plain);
  }
};
struct BagFields {
  template <class Io, class T>
  void operator()(Io& io, T& bag) const {
    io.required_text("material", bag.material);
    io.text("lot", bag.lot);
    io.whole("count", bag.count, 1);
    io.object("printed_size", bag.printed_size, SizeBandFields{});
    io.number("volume_l", bag.volume, loose);
    io.number("mass_kg", bag.mass_as_bagged, kg);
    io.word("moisture_basis", bag.moisture_basis, moisture_words);
    io.number("moisture_percent", bag.moisture, percent<Moisture>);
    io.object("price", bag.price, PriceFields{});
    io.day("received", bag.received);
    io.number("bulk_density_g_l", bag.bulk_density, bulk);
    io.number("worked_in_density_g_l", bag.worked_in_density, bulk);
    io.number("particle_density_g_l", bag.particle_density, particle);
    io.number("water_absorption", bag.water_absorption, ratio<WaterAbsorption>);
    io.object("crumbling", bag.crumbling, CrumblingFields{});
    io.object("reclaimed", bag.reclaimed, ReclaimedFields{});
    io.text("note", bag.note);
  }
};

struct BinContentFields {
  template <class Io, class T>
  void operator()(Io& io, T& content) const {
    io.ref("source", content.source);
    io.day("day", content.day);
    io.day("emptied", content.emptied);
    io.number("dry_mass_g", content.dry_mass, g);
  }
};
struct BinFields {
  template <class Io, class T>
  void operator()(Io& io, T& bin) const {
    io.required_text("name", bin.name);
    io.text("material", bin.material);
    io.list("contents", bin.contents, BinContentFields{});
    io.number("bulk_density_g_l", bin.bulk_density, bulk);
    io.text("note", bin.note);
  }
};

struct FractionFields {
  template <class Io, class T>
  void operator()(Io& io, T& fraction) const {
    io.ref("source", fraction.source);
    io.text("material", fraction.material);
    io.number("from_mm", fraction.from, mm);
    io.number("to_mm", fraction.to, mm);
    io.day("day", fraction.day);
    io.number("dry_mass_g", fraction.dry_mass, g);
    io.number("volume_l", fraction.volume, loose);
    io.object("grain", fraction.grain, GrainFields{});
    io.number("bulk_density_ratio", fraction.bulk_density_ratio, ratio<BulkDensityRatio>);
    io.object("sizes", fraction.sizes, SizesFields{});
    io.flag("predicted", fraction.predicted);
    io.text("note", fraction.note);
  }
};

struct OwnedSieveFields {
  template <class Io, class T>
  void operator()(Io& io, T& sieve) const {
    io.required_number("aperture_mm", sieve.aperture, mm);
    io.text("label", sieve.label);
  }
};
struct SieveSetFields {
  template <class Io, class T>
  void operator()(Io& io, T& set) const {
    io.required_text("name", set.name);
    io.list("sieves", set.sieves, OwnedSieveFields{});
    io.number("diameter_mm", set.diameter, mm_long);
    io.text("note", set.note);
  }
};

struct RecordedSieveTestFields {
  template <class Io, class T>
  void operator()(Io& io, T& test) const {
    io.ref("of", test.of);
    io.whole("replicate", test.replicate, 1);
    io.id("sieve_set", test.sieve_set);
    io.object("test", test.test, SieveTestFields{});
    io.text("draft", test.draft);
    io.text("note", test.note);
  }
};

inline constexpr std::array group_words{Word<SpeciesGroup>{SpeciesGroup::conifer, "conifer"},
                                        Word<SpeciesGroup>{SpeciesGroup::deciduous_conifer, "deciduous-conifer"},
                                        Word<SpeciesGroup>{SpeciesGroup::deciduous_developing, "deciduous-developing"},
                                        Word<SpeciesGroup>{SpeciesGroup::deciduous_refined, "deciduous-refined"},
                                        Word<SpeciesGroup>{SpeciesGroup::broadleaf_evergreen, "broadleaf-evergreen"},
                                        Word<SpeciesGroup>{SpeciesGroup::acid_lover, "acid-lover"},
                                        Word<SpeciesGroup>{SpeciesGroup::tropical, "tropical"},
                                        Word<SpeciesGroup>{SpeciesGroup::sick, "sick"},
                                        Word<SpeciesGroup>{SpeciesGroup::collected, "collected"},
                                        Word<SpeciesGroup>{SpeciesGroup::imported, "imported"}};

struct MixVersionFields {
  template <class Io, class T>
  void operator()(Io& io, T& version) const {
    io.object("mix", version.mix, MixFields{});
    io.refs("sources", version.sources);
    io.word("group", version.group, group_words);
    io.day("day", version.day);
    io.ref("calibrated_by", version.calibrated_by);
    io.flag("settling_measured", version.settling_measured);
    io.object("wanted_band", version.wanted_band, SizeBandFields{});
    io.number("reserved_l", version.reserved, mixed);
    io.text("note", version.note);
  }
};

struct RecordedContainerFields {
  template <class Io, class T>
  void operator()(Io& io, T& container) const {
    io.object("container", container.container, ContainerFields{});
    io.whole("drain_holes", container.drain_holes);
    io.number("feet_mm", container.feet, mm_long);
    io.flag("given_away", container.given_away);
    io.text("note", container.note);
  }
};

struct ConditionFields {
  template <class Io, class T>
  void operator()(Io& io, T& entry) const {
    static constexpr std::array names{Word<Condition>{Condition::thriving, "thriving"},
                                      Word<Condition>{Condition::watch, "watch"}, Word<Condition>{Condition::sick, "sick"},
                                      Word<Condition>{Condition::dead, "dead"}};
    io.required_day("day", entry.day);
    io.word("condition", entry.condition, names);
    io.text("note", entry.note);
  }
};
struct InspectionFields {
  template <class Io, class T>
  void operator()(Io& io, T& inspection) const {
    io.required_day("day", inspection.day);
    io.text("note", inspection.note);
  }
};
struct WindowFields {
  template <class Io, class T>
  void operator()(Io& io, T& window) const {
    io.text("ready_when", window.ready_when);
    io.text("opens", window.opens);
    io.text("closes", window.closes);
  }
};
struct FaceWorkFields {
  template <class Io, class T>
  void operator()(Io& io, T& work) const {
    io.required_text("face", work.face);
    io.required_number("depth_cm", work.depth, cm_long);
  }
};
struct PartBaseFields {
  template <class Io, class T>
  void operator()(Io& io, T& part) const {
    io.required_number("right_cm", part.base_right, cm_long);
    io.required_number("back_cm", part.base_back, cm_long);
    io.required_number("up_cm", part.base_up, cm_long);
  }
};
struct UntouchedPartFields {
  template <class Io, class T>
  void operator()(Io& io, T& part) const {
    if constexpr (Io::reading)
      if (!io.json().has("trunk_base")) io.json().report("key.missing", io.json().pointer(), {{"key", std::string("trunk_base")}});
    io.object("trunk_base", part, PartBaseFields{});
    io.number("turn_deg", part.turn, deg);
    io.number("tip_deg", part.tip, deg);
    io.number("tip_toward_deg", part.tip_toward, deg);
    // Six numbers a box: a part of hundreds of boxes stays short.
    constexpr std::size_t numbers_of_box = 6;
    std::vector<Length> flat;
    if constexpr (Io::reading) {
      io.numbers("boxes_cm", flat, cm_long);
      if (flat.size() % numbers_of_box != 0) io.json().report("untouched-part.six-numbers", io.json().at("boxes_cm"), {{"count", static_cast<double>(flat.size())}});
      for (std::size_t i = 0; i + numbers_of_box <= flat.size(); i += numbers_of_box) part.boxes.push_back({flat[i], flat[i + 1], flat[i + 2], flat[i + 3], flat[i + 4], flat[i + 5]});
    } else {
      for (const TreeBox& box : part.boxes) flat.insert(flat.end(), {box.right_from, box.right_to, box.back_from, box.back_to, box.up_from, box.up_to});
      io.numbers("boxes_cm", flat, cm_long);
    }
  }
};
struct RepottingFields {
  template <class Io, class T>
  void operator()(Io& io, T& repotting) const {
    io.required_day("day", repotting.day);
    io.id("container", repotting.container);
    io.id("mix", repotting.mix);
    io.refs("grain", repotting.grain);
    io.number("filled_depth_cm", repotting.filled_depth, cm);
    io.number("filled_l", repotting.filled, mixed);
    io.id("plan", repotting.plan);
    io.text("plan_name", repotting.plan_name);
    io.number("removed_share", repotting.removed_share, removed);
    io.number("untouched_share", repotting.untouched_share, ratio<UntouchedShare>);
    io.object("untouched", repotting.untouched, UntouchedPartFields{});
    io.list("cut", repotting.cut, FaceWorkFields{});
    io.list("combed", repotting.combed, FaceWorkFields{});
    io.flag("bare_rooted", repotting.bare_rooted);
    io.day("due", repotting.due);
    io.text("note", repotting.note);
  }
};
struct TrunkBaseFields {
  template <class Io, class T>
  void operator()(Io& io, T& point) const {
    io.required_number("right_cm", point.right, cm_long);
    io.required_number("back_cm", point.back, cm_long);
    io.required_number("up_cm", point.up, cm_long);
  }
};
struct TreeFields {
  template <class Io, class T>
  void operator()(Io& io, T& tree) const {
    io.text("name", tree.name);
    io.text("species", tree.species);
    io.word("group", tree.group, group_words);
    io.whole("since_year", tree.since_year);
    io.number("trunk_width_cm", tree.trunk_width, cm_long);
    io.object("trunk_base", tree.trunk_base, TrunkBaseFields{});
    io.number("mass_kg", tree.mass, kg);
    io.list("conditions", tree.conditions, ConditionFields{});
    io.object("window", tree.window, WindowFields{});
    io.list("repottings", tree.repottings, RepottingFields{});
    io.list("inspections", tree.inspections, InspectionFields{});
    io.day("due", tree.due);
    io.texts("photos", tree.photos);
    io.text("note", tree.note);
  }
};

struct KeptRootMassPlanFields {
  template <class Io, class T>
  void operator()(Io& io, T& plan) const {
    io.text("name", plan.name);
    io.id("tree", plan.tree);
    io.day("day", plan.day);
    io.id("mix", plan.mix);
    io.required_text("plan", plan.plan);
    io.text("note", plan.note);
  }
};

struct DayTreeFields {
  template <class Io, class T>
  void operator()(Io& io, T& tree) const {
    io.id("tree", tree.tree);
    io.id("plan", tree.plan);
    io.text("plan_name", tree.plan_name);
    io.id("mix", tree.mix);
    io.id("container", tree.container);
    io.number("planned_l", tree.planned, mixed);
    io.numbers("worse_plans_l", tree.worse_plans, mixed);
    io.number("sphagnum_ml", tree.sphagnum, ml);
    io.text("top_dressing", tree.top_dressing);
    io.number("kept_root_mass_kg", tree.kept_root_mass, kg);
    io.flag("done", tree.done);
    io.text("done_plan", tree.done_plan);
    io.number("used_l", tree.used, mixed);
    io.text("helper", tree.helper);
    io.text("bud", tree.bud);
    io.text("note", tree.note);
  }
};
struct ChecklistFields {
  template <class Io, class T>
  void operator()(Io& io, T& line) const {
    io.required_text("text", line.text);
    io.flag("evening_before", line.evening_before);
    io.flag("done", line.done);
  }
};
inline constexpr std::array work_words{Word<WorkKey>{WorkKey::bud, "bud"}, Word<WorkKey>{WorkKey::mix, "mix"}, Word<WorkKey>{WorkKey::helper, "helper"},
                                       Word<WorkKey>{WorkKey::name, "name"}};
struct RepottingDayFields {
  template <class Io, class T>
  void operator()(Io& io, T& day) const {
    io.required_day("day", day.day);
    io.text("name", day.name);
    io.list("trees", day.trees, DayTreeFields{});
    io.number("tub_l", day.tub, mixed);
    io.number("scoop_l", day.scoop, loose);
    io.number("settling", day.settling, ratio<Settling>);
    io.number("spill", day.spill, ratio<Spill>);
    io.list("checklist", day.checklist, ChecklistFields{});
    io.word("work_by", day.work_by, work_words);
    io.whole("sheet_revision", day.sheet_revision, 1);
    io.whole("printed_revision", day.printed_revision);
    io.text("note", day.note);
  }
};

struct BatchPartFields {
  template <class Io, class T>
  void operator()(Io& io, T& part) const {
    io.ref("source", part.source);
    io.number("volume_l", part.volume, loose);
    io.number("dry_mass_g", part.dry_mass, g);
  }
};
struct BatchFields {
  template <class Io, class T>
  void operator()(Io& io, T& batch) const {
    io.id("mix", batch.mix);
    io.day("day", batch.day);
    io.id("repotting_day", batch.repotting_day);
    io.list("parts", batch.parts, BatchPartFields{});
    io.number("made_l", batch.made, mixed);
    io.number("left_l", batch.left, mixed);
    io.text("note", batch.note);
  }
};

struct PotWeighingsFields {
  template <class Io, class T>
  void operator()(Io& io, T& weighed) const {
    io.number("tare_g", weighed.tare, g);
    io.required_number("dry_g", weighed.dry, g);
    io.number("flooded_g", weighed.flooded, g);
    io.number("drained_g", weighed.drained, g);
  }
};
struct PotTestFields {
  template <class Io, class T>
  void operator()(Io& io, T& test) const {
    io.id("mix", test.mix);
    io.id("container", test.container);
    io.day("day", test.day);
    io.number("volume_ml", test.volume, ml);
    io.number("filled_depth_cm", test.filled_depth, cm);
    io.object("weighed", test.weighed, PotWeighingsFields{});
    io.number("water_poured_ml", test.water_poured, ml);
    io.number("water_caught_ml", test.water_caught, ml);
    io.number("water_absorption", test.water_absorption, ratio<WaterAbsorption>);
    io.object("fitted", test.fitted, WaterFields{});
    io.text("note", test.note);
  }
};

struct StockEntryFields {
  template <class Io, class T>
  void operator()(Io& io, T& entry) const {
    static constexpr std::array names{
        Word<StockReason>{StockReason::received, "received"},   Word<StockReason>{StockReason::screened_into, "screened-into"},
        Word<StockReason>{StockReason::screened_out_of, "screened-out-of"}, Word<StockReason>{StockReason::used, "used"},
        Word<StockReason>{StockReason::returned, "returned"},   Word<StockReason>{StockReason::spilt, "spilt"},
        Word<StockReason>{StockReason::thrown_out, "thrown-out"}, Word<StockReason>{StockReason::counted, "counted"}};
    io.ref("holder", entry.holder);
    io.word("reason", entry.reason, names);
    io.required_number("change_g", entry.change, g);
    io.number("measured_l", entry.measured, loose);
    io.number("density_used_g_l", entry.density_used, bulk);
    io.number("counted_g", entry.counted, g);
    io.ref("other", entry.other);
    io.required_day("day", entry.day);
    io.text("note", entry.note);
  }
};

struct LogEntryFields {
  template <class Io, class T>
  void operator()(Io& io, T& entry) const {
    static constexpr std::array names{Word<LogSort>{LogSort::event, "event"},
                                      Word<LogSort>{LogSort::observation, "observation"},
                                      Word<LogSort>{LogSort::bookkeeping, "bookkeeping"}};
    io.required_day("day", entry.day);
    io.text("written", entry.written);
    io.word("sort", entry.sort, names);
    io.required_text("text", entry.text);
    io.refs("about", entry.about);
  }
};

struct SpeciesProfileFields {
  template <class Io, class T>
  void operator()(Io& io, T& profile) const {
    io.required_text("name", profile.name);
    io.word("group", profile.group, group_words);
    io.list("wishes", profile.wishes, WishFields{});
    io.list("starting_parts", profile.starting_parts, StartingPartFields{});
    io.text("note", profile.note);
    io.flag("left_out", profile.left_out);
  }
};

}  // namespace gritwright::fields
