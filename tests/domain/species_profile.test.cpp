#include "gritwright/domain/species_profile.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

using namespace gritwright;

namespace {

const SpeciesProfile& named(const std::string& name) {
  const auto& all = common_profiles();
  const auto found = std::find_if(all.begin(), all.end(), [&](const SpeciesProfile& each) { return each.name == name; });
  REQUIRE(found != all.end());
  return *found;
}

}  // namespace

TEST_CASE("Profiles that a workbook starts with have nothing to complain about", "[species_profile][law]") {
  std::set<std::string> names;
  for (const SpeciesProfile& profile : common_profiles()) {
    INFO(profile.name);
    CHECK(check(profile).empty());
    CHECK(names.insert(profile.name).second);
  }
}

TEST_CASE("Profiles ask for the bands and starting parts of the trade", "[species_profile]") {
  // Common practice, no source: docs/science/recipe-search.md.
  const auto band = [](const char* name) {
    const auto& share = std::get<BandShare>(named(name).wishes.front().figure);
    return std::pair(in_mm(share.from), in_mm(share.to));
  };
  const auto same = [&](const char* name, double from, double to) {
    CHECK_THAT(band(name).first, Catch::Matchers::WithinRel(from, 1e-12));
    CHECK_THAT(band(name).second, Catch::Matchers::WithinRel(to, 1e-12));
  };
  same("very small trees", 1, 3);
  same("small trees", 2, 4);
  same("conifers", 3, 6);
  same("deciduous, refined", 2, 4);
  same("acid lovers", 2, 5);
  CHECK(named("conifers").starting_parts == std::vector<StartingPart>{{"akadama", Parts(1)}, {"pumice", Parts(1)}, {"scoria", Parts(1)}});
  CHECK(named("very small trees").starting_parts == std::vector<StartingPart>{{"akadama", Parts(5)}, {"pumice", Parts(3)}, {"scoria", Parts(2)}});
}

TEST_CASE("Starting wishes ask their pot figures of the pot that was chosen", "[species_profile]") {
  const auto wishes = starting_wishes(named("conifers"), "tray");
  int in_pot = 0;
  for (const Wish& wish : wishes) {
    CHECK_FALSE(wish.hard);
    const auto* figure = std::get_if<FigureInPot>(&wish.figure);
    if (figure == nullptr) continue;
    ++in_pot;
    CHECK(figure->pot == "tray");
  }
  CHECK(in_pot == 2);
}

TEST_CASE("A profile refuses no name, limits upside down and parts of nothing", "[species_profile][refuses]") {
  SpeciesProfile profile = named("conifers");
  profile.name = " ";
  profile.wishes[0].most = 10;
  profile.wishes.push_back({ShareOf{"clay"}, 0.3, {}, false, 1});
  profile.starting_parts.push_back({"", Parts(0)});
  std::vector<std::string> found;
  for (const Problem& problem : check(profile)) found.push_back(problem.code + " " + problem.where.pointer);
  CHECK(found == std::vector<std::string>{"record.no-name /name", "design.limits-upside-down /wishes/0/most", "record.no-name /starting_parts/3/material",
                                          "record.amount-not-positive /starting_parts/3/parts"});
}
