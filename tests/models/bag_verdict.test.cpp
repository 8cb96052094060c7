#include "gritwright/models/bag_verdict.hpp"

#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <utility>
#include <vector>

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

Grading graded(const std::vector<std::pair<double, double>>& points) {
  Grading grading;
  for (const auto& [mm, percent] : points) grading.points.push_back({aperture_mm(mm), passing_percent(percent)});
  return grading;
}

const Band two_to_six{aperture_mm(2), aperture_mm(6)};

bool noted(const Notes& notes, const std::string& code) { return std::ranges::find(notes, code, &Note::code) != notes.end(); }

}  // namespace

TEST_CASE("A bag inside its band is taken as it is", "[bag_verdict][law]") {
  const auto verdict = judge(graded({{1, 0}, {2, 3}, {6, 88}, {8, 100}}), two_to_six);
  REQUIRE(verdict.value);
  CHECK(verdict.value->verdict == Verdict::take);
  CHECK(verdict.value->openings.empty());
  CHECK(verdict.value->usable == LooseShare(1));
  CHECK_THAT(verdict.value->in_band.value(), WithinAbs(0.85, 1e-12));
}

TEST_CASE("A dusty bag is taken after screening at the lower end", "[bag_verdict][law]") {
  const auto verdict = judge(graded({{0.5, 8}, {1, 10}, {2, 12}, {6, 96}, {8, 100}}), two_to_six);
  REQUIRE(verdict.value);
  CHECK(verdict.value->verdict == Verdict::take_after_screening);
  CHECK(verdict.value->openings == std::vector{aperture_mm(2)});
  CHECK(verdict.value->kept->value() > 0.80);
  CHECK(noted(verdict.notes, "verdict.litres-by-mass"));
}

TEST_CASE("A bag wide on both sides is screened at both ends", "[bag_verdict][law]") {
  const auto verdict = judge(graded({{0.5, 4}, {1, 6}, {2, 10}, {6, 78}, {9.5, 100}}), two_to_six);
  REQUIRE(verdict.value);
  CHECK(verdict.value->verdict == Verdict::take_after_screening);
  CHECK(verdict.value->openings == std::vector{aperture_mm(6), aperture_mm(2)});
}

TEST_CASE("A bag with too little in the band is for another use", "[bag_verdict][law]") {
  const auto verdict = judge(graded({{0.5, 20}, {1, 40}, {2, 70}, {6, 95}, {8, 100}}), two_to_six);
  REQUIRE(verdict.value);
  CHECK(verdict.value->verdict == Verdict::other_use_or_complain);
  CHECK(noted(verdict.notes, "verdict.small-pots"));
}

TEST_CASE("Loose litres decide where packing is known", "[bag_verdict][law]") {
  const Grading bag = graded({{0.5, 20}, {1, 30}, {2, 40}, {6, 98}, {8, 100}});
  const PackingDensityOf packing = [&](const Grading& g) { return std::optional(PackingDensity(g == bag ? 0.60 : 0.50)); };
  const auto by_mass = judge(bag, two_to_six);
  const auto by_litres = judge(bag, two_to_six, {}, {}, packing);
  REQUIRE(by_mass.value);
  REQUIRE(by_litres.value);
  CHECK_THAT(by_litres.value->usable.value(), WithinAbs(by_mass.value->usable.value() * 1.2, 1e-12));
  CHECK_FALSE(noted(by_litres.notes, "verdict.litres-by-mass"));
}

TEST_CASE("No verdict is guessed where the sieves don't reach the band", "[bag_verdict][law]") {
  const auto verdict = judge(graded({{3, 10}, {8, 100}}), two_to_six);
  CHECK_FALSE(verdict.value);
  CHECK(noted(verdict.notes, "verdict.band-outside-sieves"));
}

TEST_CASE("A band from zero asks for nothing finer and is screened at its upper end", "[bag_verdict][law]") {
  const auto verdict = judge(graded({{1, 20}, {2, 40}, {6, 75}, {9.5, 100}}), {aperture_mm(0), aperture_mm(6)});
  REQUIRE(verdict.value);
  CHECK(verdict.value->finer == MassShare(0));
  CHECK(verdict.value->verdict == Verdict::take_after_screening);
  CHECK(verdict.value->openings == std::vector{aperture_mm(6)});
}

TEST_CASE("What was lost while sieving is no dust that spoils a bag", "[bag_verdict][regression]") {
  // 96 % in the band, .5 % in the pan, 3.5 % lost.
  const Grading bag = graded({{2, 4}, {6, 100}});
  CHECK(judge(bag, two_to_six).value->verdict != Verdict::take);
  const auto verdict = judge(bag, two_to_six, {}, {}, {}, MassShare(0.035));
  CHECK(verdict.value->verdict == Verdict::take);
  CHECK_THAT(verdict.value->in_band.value(), WithinAbs(0.96, 1e-12));
  CHECK_THAT(verdict.value->finer.value(), WithinAbs(0.005, 1e-12));
  const auto from_zero = judge(bag, {aperture_mm(0), aperture_mm(6)}, {}, {}, {}, MassShare(0.035));
  CHECK_THAT(from_zero.value->in_band.value(), WithinAbs(0.965, 1e-12));
  CHECK(from_zero.value->finer == MassShare(0));
}

TEST_CASE("A band snaps to the nearest owned sieves", "[bag_verdict][law]") {
  const std::array owned{aperture_mm(2.36), aperture_mm(6.3), aperture_mm(9.5)};
  CHECK(snapped(two_to_six, owned) == Band{aperture_mm(2.36), aperture_mm(6.3)});
  CHECK(snapped(two_to_six, {}) == two_to_six);
  CHECK(snapped({aperture_mm(2.2), aperture_mm(2.5)}, owned) == Band{aperture_mm(2.2), aperture_mm(2.5)});
  // 3 mm is more than half a step of the series from any sieve here: 2.36 mm is not what was meant.
  CHECK(snapped({aperture_mm(2), aperture_mm(3)}, owned) == Band{aperture_mm(2.36), aperture_mm(3)});
  CHECK(snapped({aperture_mm(6), aperture_mm(30)}, owned) == Band{aperture_mm(6.3), aperture_mm(30)});
  CHECK(snapped({aperture_mm(0), aperture_mm(2)}, owned) == Band{aperture_mm(0), aperture_mm(2.36)});
}

TEST_CASE("The best openings keep most of the band and meet the limits", "[bag_verdict][law]") {
  const Grading bag = graded({{0.5, 5}, {1, 12}, {2, 25}, {6, 70}, {9.5, 95}, {12.5, 100}});
  const std::array owned{aperture_mm(1), aperture_mm(2), aperture_mm(3.35), aperture_mm(6.3), aperture_mm(9.5)};
  const auto choices = opening_choices(bag, two_to_six, owned);
  REQUIRE_FALSE(choices.empty());
  CHECK(choices.front().coarse == aperture_mm(6.3));
  CHECK(choices.front().fine == aperture_mm(2));
  bool orderly = true;
  for (std::size_t i = 1; i < choices.size(); ++i) {
    orderly = orderly && (choices[i - 1].takes > choices[i].takes ||
                          (choices[i - 1].takes == choices[i].takes && choices[i - 1].usable >= choices[i].usable));
  }
  CHECK(orderly);
  for (const OpeningChoice& choice : choices) CHECK(choice.usable <= choice.kept);
  CHECK(choices.size() == 5 + 5 + 10);
}

// docs/science/grading.md: what was lost counts neither as pan nor as finer than the band.
TEST_CASE("What was lost is no dust in what a screening keeps, whatever the openings", "[bag_verdict][regression]") {
  // 4 of the 5 % under 2 mm were found nowhere.
  const Grading bag = graded({{0.5, 4}, {1, 4}, {2, 5}, {6, 90}, {9.5, 100}});
  const MassShare lost(0.04);
  const auto choice_at = [&](MassShare unfound) {
    const auto choices = opening_choices(bag, two_to_six, std::array{aperture_mm(2), aperture_mm(6.3)}, {}, {}, unfound);
    return *std::ranges::find_if(choices, [](const OpeningChoice& choice) { return choice.coarse == aperture_mm(6.3) && !choice.fine; });
  };
  const OpeningChoice known = choice_at(lost), unknown = choice_at(MassShare(0));
  CHECK_THAT(unknown.dust.value() * unknown.kept.value(), WithinAbs(0.05, 1e-6));
  CHECK_THAT(known.dust.value() * known.kept.value(), WithinAbs(0.01, 1e-6));
  CHECK(known.kept == unknown.kept);
  CHECK(known.usable == unknown.usable);
  CHECK_FALSE(unknown.takes);
  CHECK(known.takes);
  CHECK(opening_choice(bag, two_to_six, aperture_mm(6.3), {}, {}, {}, lost)->dust == known.dust);
}

TEST_CASE("What can't be used makes the rest dearer", "[bag_verdict][law]") {
  CHECK_THAT(*price_per_usable_l(1.20, LooseShare(0.6)), WithinAbs(2.0, 1e-12));
  CHECK_FALSE(price_per_usable_l(1.20, LooseShare(0)));
}

TEST_CASE("A bag's price and litres give the price of a usable litre", "[bag_verdict]") {
  Bag bag;
  CHECK_FALSE(price_per_usable_l(bag, LooseShare(0.5)));
  bag.price = Price{14, "EUR"};
  CHECK_FALSE(price_per_usable_l(bag, LooseShare(0.5)));
  bag.volume = loose_l(14);
  // 14 for 14 litres of which half can be used: 2 a litre.
  const auto price = price_per_usable_l(bag, LooseShare(0.5));
  REQUIRE(price.has_value());
  CHECK_THAT(price->amount, WithinAbs(2.0, 1e-12));
  CHECK(price->currency == "EUR");
  CHECK_FALSE(price_per_usable_l(bag, LooseShare(0)));
}
