#include "gritwright/domain/species_profile.hpp"

#include <cmath>

#include "record_checks.hpp"

namespace gritwright {

namespace {

// The wanted band should hold most of the mass; the same share makes a bag worth taking (docs/science/grading.md).
constexpr double band_least_percent = 85;
constexpr double dust_most_percent = 5;
// Lower ends of what docs/science/water.md gives for container media.
constexpr double air_least = 0.10;
constexpr double water_least = 0.25;

struct Band {
  double from_mm;
  double to_mm;
  double dust_mm = 1;
};

SpeciesProfile profile(const char* name, std::optional<SpeciesGroup> group, Band band, std::vector<StartingPart> parts, const char* note = "") {
  SpeciesProfile made;
  made.name = name;
  made.group = group;
  made.wishes = {{BandShare{aperture_mm(band.from_mm), aperture_mm(band.to_mm)}, band_least_percent, {}, false, 1},
                 {FinerShare{aperture_mm(band.dust_mm)}, {}, dust_most_percent, false, 1},
                 {FigureInPot{PotFigure::air_filled_porosity, ""}, air_least, {}, false, 1},
                 {FigureInPot{PotFigure::container_capacity, ""}, water_least, {}, false, 1}};
  made.starting_parts = std::move(parts);
  made.note = note;
  return made;
}

std::vector<StartingPart> clay_pumice_scoria(double clay, double pumice, double scoria) {
  std::vector<StartingPart> parts{{"akadama", Parts(clay)}, {"pumice", Parts(pumice)}};
  if (scoria > 0) parts.push_back({"scoria", Parts(scoria)});
  return parts;
}

}  // namespace

const std::vector<SpeciesProfile>& common_profiles() {
  static const std::vector<SpeciesProfile> profiles{
      profile("very small trees", {}, {1, 3, 0.8}, clay_pumice_scoria(5, 3, 2)),
      profile("small trees", {}, {2, 4}, {}),
      profile("conifers", SpeciesGroup::conifer, {3, 6}, clay_pumice_scoria(1, 1, 1)),
      profile("conifers, large or collected", SpeciesGroup::conifer, {4, 8}, clay_pumice_scoria(1, 1, 1), "6 to 12 mm for the largest"),
      profile("deciduous, developing", SpeciesGroup::deciduous_developing, {3, 6}, clay_pumice_scoria(2, 1, 1), "or 2:2:1"),
      profile("deciduous, refined", SpeciesGroup::deciduous_refined, {2, 4}, clay_pumice_scoria(3, 1, 0)),
      profile("deciduous conifers", SpeciesGroup::deciduous_conifer, {3, 6}, clay_pumice_scoria(2, 1, 1)),
      profile("evergreen broadleaf", SpeciesGroup::broadleaf_evergreen, {3, 6}, clay_pumice_scoria(2, 1, 1)),
      profile("acid lovers", SpeciesGroup::acid_lover, {2, 5}, {{"kanuma", Parts(1)}}, "or 7:3 with sphagnum"),
      profile("tropicals", SpeciesGroup::tropical, {3, 6}, {{"akadama", Parts(4)}, {"pumice", Parts(4)}, {"pine bark", Parts(2)}},
              "any clay that keeps its shape")};
  return profiles;
}

std::vector<Wish> starting_wishes(const SpeciesProfile& profile, const std::string& pot) {
  std::vector<Wish> wishes = profile.wishes;
  for (Wish& wish : wishes)
    if (auto* in_pot = std::get_if<FigureInPot>(&wish.figure)) in_pot->pot = pot;
  return wishes;
}

Problems check(const SpeciesProfile& profile) {
  Problems problems;
  check_name(problems, "/name", profile.name);
  // Pots and shares are known only where the profile is used; here every name counts as one.
  DesignProblem stand_in;
  stand_in.wishes = profile.wishes;
  for (const Wish& wish : profile.wishes) {
    if (const auto* in_pot = std::get_if<FigureInPot>(&wish.figure)) stand_in.pots[in_pot->pot];
    if (const auto* share = std::get_if<ShareOf>(&wish.figure)) stand_in.candidates.emplace_back().family = share->name;
  }
  for (Problem& problem : check(stand_in))
    if (problem.where.pointer.starts_with("/wishes")) problems.push_back(std::move(problem));
  for (std::size_t i = 0; i < profile.starting_parts.size(); ++i) {
    check_name(problems, item("/starting_parts", i, "/material"), profile.starting_parts[i].material);
    const double parts = profile.starting_parts[i].parts.value();
    if (!(std::isfinite(parts) && parts > 0)) problems.push_back(problem_at("record.amount-not-positive", item("/starting_parts", i, "/parts")));
  }
  return problems;
}

}  // namespace gritwright
