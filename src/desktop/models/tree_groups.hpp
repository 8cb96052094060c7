#pragma once
// Groups of trees and what a search for parts starts with for each: common practice, and the grower's own word in its place.

#include <QString>
#include <array>
#include <optional>
#include <vector>

#include "find_sheet.hpp"
#include "gritwright/domain/material.hpp"
#include "gritwright/domain/species_profile.hpp"
#include "gritwright/models/sieve_analysis.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright::desktop {

struct TreeGroup {
  SpeciesProfile profile;
  std::optional<Stored<SpeciesProfile>> stored;  ///< absent: as common practice has it
  bool is_common = false;                        ///< common practice has a group of this name
};

/// Common practice's first, each as the record changed it, then the grower's own; those left out among them.
[[nodiscard]] std::vector<TreeGroup> tree_groups(const OpenWorkbook& workbook);

/// The name in the reader's language where it is common practice's; a grower's own stays as it is.
[[nodiscard]] QString group_name(const SpeciesProfile& profile);

/// "common practice", "changed", "own", "left out".
[[nodiscard]] QString group_state(const TreeGroup& group);

/// A profile's wishes as they are typed.
struct GroupSheet {
  std::array<WishText, wish_rows> wishes;
  std::optional<Band> band;
  QString dust_size;
};
[[nodiscard]] GroupSheet sheet_of(const SpeciesProfile& profile);

/// Reads one wish into the profile; both sides empty take it away. What can't be read is told and changes nothing; a problem's
/// pointer is the side's: "/least", "/most" or "/weight".
[[nodiscard]] Problems change_wish(SpeciesProfile& profile, WishRow row, const WishText& typed);

/// The sizes that the wishes on the wanted grain and on dust are about; a wish is made where there is none.
void change_band(SpeciesProfile& profile, std::optional<Aperture> from, std::optional<Aperture> to);
void change_dust_size(SpeciesProfile& profile, Aperture size);

/// "5 akadama : 3 pumice".
[[nodiscard]] QString starting_parts_text(const std::vector<StartingPart>& parts);
/// Materials of `shown` are known by the words they were shown with, those of `catalogue` by their name, an alias or the reader's word for
/// them; other names stay as they are typed.
[[nodiscard]] Result<std::vector<StartingPart>> starting_parts_of(const QString& text, const Catalogue& catalogue, const std::vector<StartingPart>& shown = {});

}  // namespace gritwright::desktop
