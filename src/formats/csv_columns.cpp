#include "csv_columns.hpp"

#include <array>

namespace gritwright {

namespace {

using enum CsvColumn::Sort;

constexpr std::array material_columns{CsvColumn{"name", "/name"}, CsvColumn{"resembles", "/resembles"},
                                      CsvColumn{"bulk_density_g_l", "/grain/bulk_density_g_l", number},
                                      CsvColumn{"particle_density_g_l", "/grain/particle_density_g_l", number},
                                      CsvColumn{"note", "/note"}};
constexpr std::array bag_columns{CsvColumn{"material", "/material"},
                                 CsvColumn{"lot", "/lot"},
                                 CsvColumn{"count", "/count", number},
                                 CsvColumn{"from_mm", "/printed_size/from_mm", number},
                                 CsvColumn{"to_mm", "/printed_size/to_mm", number},
                                 CsvColumn{"volume_l", "/volume_l", number},
                                 CsvColumn{"mass_kg", "/mass_kg", number},
                                 CsvColumn{"moisture_basis", "/moisture_basis"},
                                 CsvColumn{"moisture_percent", "/moisture_percent", number},
                                 CsvColumn{"price", "/price/amount", number},
                                 CsvColumn{"currency", "/price/currency"},
                                 CsvColumn{"received", "/received"},
                                 CsvColumn{"bulk_density_g_l", "/bulk_density_g_l", number},
                                 CsvColumn{"particle_density_g_l", "/particle_density_g_l", number},
                                 CsvColumn{"reclaimed_from_tree", "/reclaimed/tree"},
                                 CsvColumn{"reclaimed_mix", "/reclaimed/mix"},
                                 CsvColumn{"reclaimed_day", "/reclaimed/day"},
                                 CsvColumn{"note", "/note"}};
constexpr std::array bin_columns{CsvColumn{"name", "/name"}, CsvColumn{"material", "/material"},
                                 CsvColumn{"bulk_density_g_l", "/bulk_density_g_l", number}, CsvColumn{"note", "/note"}};
constexpr std::array fraction_columns{CsvColumn{"source", "/source"},
                                      CsvColumn{"material", "/material"},
                                      CsvColumn{"from_mm", "/from_mm", number},
                                      CsvColumn{"to_mm", "/to_mm", number},
                                      CsvColumn{"day", "/day"},
                                      CsvColumn{"dry_mass_g", "/dry_mass_g", number},
                                      CsvColumn{"volume_l", "/volume_l", number},
                                      CsvColumn{"bulk_density_g_l", "/grain/bulk_density_g_l", number},
                                      CsvColumn{"bulk_density_ratio", "/bulk_density_ratio", number},
                                      CsvColumn{"note", "/note"}};
constexpr std::array set_columns{CsvColumn{"name", "/name"}, CsvColumn{"diameter_mm", "/diameter_mm", number},
                                 CsvColumn{"note", "/note"}};
constexpr std::array test_columns{CsvColumn{"of", "/of"},
                                  CsvColumn{"replicate", "/replicate", number},
                                  CsvColumn{"sieve_set", "/sieve_set"},
                                  CsvColumn{"material", "/test/material"},
                                  CsvColumn{"lot", "/test/lot"},
                                  CsvColumn{"date", "/test/date"},
                                  CsvColumn{"dry_mass_g", "/test/dry_mass_g", number},
                                  CsvColumn{"washed_dry_mass_g", "/test/washed_dry_mass_g", number},
                                  CsvColumn{"moisture_percent", "/test/moisture_percent", number},
                                  CsvColumn{"sieve_diameter_mm", "/test/sieve_diameter_mm", number},
                                  CsvColumn{"basis", "/test/basis"},
                                  CsvColumn{"resolution_g", "/test/resolution_g", number},
                                  CsvColumn{"particle_density_g_l", "/test/particle_density_g_l", number},
                                  CsvColumn{"bulk_density_g_l", "/test/bulk_density_g_l", number},
                                  CsvColumn{"note", "/note"}};
constexpr std::array mix_columns{CsvColumn{"name", "/mix/name"}, CsvColumn{"group", "/group"}, CsvColumn{"day", "/day"},
                                 CsvColumn{"wanted_from_mm", "/wanted_band/from_mm", number}, CsvColumn{"wanted_to_mm", "/wanted_band/to_mm", number},
                                 CsvColumn{"note", "/note"}};
constexpr std::array container_columns{CsvColumn{"name", "/container/name"},
                                       CsvColumn{"shape", "/container/shape"},
                                       CsvColumn{"length_cm", "/container/rim/length_cm", number},
                                       CsvColumn{"width_cm", "/container/rim/width_cm", number},
                                       CsvColumn{"middle_length_cm", "/container/middle/length_cm", number},
                                       CsvColumn{"middle_width_cm", "/container/middle/width_cm", number},
                                       CsvColumn{"base_length_cm", "/container/base/length_cm", number},
                                       CsvColumn{"base_width_cm", "/container/base/width_cm", number},
                                       CsvColumn{"depth_cm", "/container/depth_cm", number},
                                       CsvColumn{"freeboard_cm", "/container/freeboard_cm", number},
                                       CsvColumn{"water_fill_ml", "/container/water_fill_ml", number},
                                       CsvColumn{"corner_radius_cm", "/container/corner_radius_cm", number},
                                       CsvColumn{"fillet_radius_cm", "/container/fillet_radius_cm", number},
                                       CsvColumn{"exponent", "/container/exponent", number},
                                       CsvColumn{"saucer_cm", "/container/saucer_cm", number},
                                       CsvColumn{"wick_cm", "/container/wick_cm", number},
                                       CsvColumn{"mass_kg", "/container/mass_kg", number},
                                       CsvColumn{"drain_holes", "/drain_holes", number},
                                       CsvColumn{"feet_mm", "/feet_mm", number},
                                       CsvColumn{"given_away", "/given_away", flag},
                                       CsvColumn{"note", "/note"}};
constexpr std::array tree_columns{CsvColumn{"name", "/name"},
                                  CsvColumn{"species", "/species"},
                                  CsvColumn{"group", "/group"},
                                  CsvColumn{"since_year", "/since_year", number},
                                  CsvColumn{"trunk_width_cm", "/trunk_width_cm", number},
                                  CsvColumn{"mass_kg", "/mass_kg", number},
                                  CsvColumn{"condition", "/conditions/0/condition"},
                                  CsvColumn{"condition_day", "/conditions/0/day"},
                                  CsvColumn{"ready_when", "/window/ready_when"},
                                  CsvColumn{"opens", "/window/opens"},
                                  CsvColumn{"closes", "/window/closes"},
                                  CsvColumn{"repotted", "/repottings/0/day"},
                                  CsvColumn{"container", "/repottings/0/container"},
                                  CsvColumn{"mix", "/repottings/0/mix"},
                                  CsvColumn{"due", "/due"},
                                  CsvColumn{"note", "/note"}};
constexpr std::array plan_columns{CsvColumn{"name", "/name"}, CsvColumn{"tree", "/tree"}, CsvColumn{"day", "/day"},
                                  CsvColumn{"mix", "/mix"}, CsvColumn{"note", "/note"}};
constexpr std::array day_columns{CsvColumn{"day", "/day"}, CsvColumn{"name", "/name"}, CsvColumn{"tub_l", "/tub_l", number},
                                 CsvColumn{"settling", "/settling", number}, CsvColumn{"spill", "/spill", number}, CsvColumn{"note", "/note"}};
constexpr std::array batch_columns{CsvColumn{"mix", "/mix"}, CsvColumn{"day", "/day"}, CsvColumn{"repotting_day", "/repotting_day"},
                                   CsvColumn{"made_l", "/made_l", number}, CsvColumn{"left_l", "/left_l", number}, CsvColumn{"note", "/note"}};
constexpr std::array pot_test_columns{CsvColumn{"mix", "/mix"},
                                      CsvColumn{"container", "/container"},
                                      CsvColumn{"day", "/day"},
                                      CsvColumn{"volume_ml", "/volume_ml", number},
                                      CsvColumn{"tare_g", "/weighed/tare_g", number},
                                      CsvColumn{"dry_g", "/weighed/dry_g", number},
                                      CsvColumn{"flooded_g", "/weighed/flooded_g", number},
                                      CsvColumn{"drained_g", "/weighed/drained_g", number},
                                      CsvColumn{"water_poured_ml", "/water_poured_ml", number},
                                      CsvColumn{"water_caught_ml", "/water_caught_ml", number},
                                      CsvColumn{"note", "/note"}};
constexpr std::array profile_columns{CsvColumn{"name", "/name"}, CsvColumn{"group", "/group"}, CsvColumn{"note", "/note"}, CsvColumn{"left_out", "/left_out"}};
constexpr std::array stock_columns{CsvColumn{"day", "/day"},
                                   CsvColumn{"holder", "/holder"},
                                   CsvColumn{"reason", "/reason"},
                                   CsvColumn{"change_g", "/change_g", number},
                                   CsvColumn{"measured_l", "/measured_l", number},
                                   CsvColumn{"density_used_g_l", "/density_used_g_l", number},
                                   CsvColumn{"counted_g", "/counted_g", number},
                                   CsvColumn{"other", "/other"},
                                   CsvColumn{"note", "/note"}};
constexpr std::array log_columns{CsvColumn{"day", "/day"}, CsvColumn{"written", "/written"}, CsvColumn{"sort", "/sort"},
                                 CsvColumn{"text", "/text"}};

}  // namespace

std::span<const CsvColumn> columns_of(RecordKind kind) {
  switch (kind) {
    case RecordKind::material: return material_columns;
    case RecordKind::bag: return bag_columns;
    case RecordKind::bin: return bin_columns;
    case RecordKind::fraction: return fraction_columns;
    case RecordKind::sieve_set: return set_columns;
    case RecordKind::sieve_test: return test_columns;
    case RecordKind::mix: return mix_columns;
    case RecordKind::container: return container_columns;
    case RecordKind::tree: return tree_columns;
    case RecordKind::root_mass_plan: return plan_columns;
    case RecordKind::repotting_day: return day_columns;
    case RecordKind::batch: return batch_columns;
    case RecordKind::pot_test: return pot_test_columns;
    case RecordKind::stock_entry: return stock_columns;
    case RecordKind::log_entry: return log_columns;
    case RecordKind::species_profile: return profile_columns;
  }
  return {};
}

}  // namespace gritwright
