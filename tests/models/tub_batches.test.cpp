#include "gritwright/models/tub_batches.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <numeric>
#include <random>

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

BatchTask task(std::vector<double> litres, std::vector<double> parts, std::optional<double> tub_l, std::optional<double> scoop_l) {
  BatchTask made;
  for (const double litre : litres) made.loose.push_back(loose_l(litre));
  made.parts = std::move(parts);
  if (tub_l) made.tub = loose_l(*tub_l);
  if (scoop_l) made.scoop = loose_l(*scoop_l);
  return made;
}

std::vector<std::vector<int>> scoops(const TubBatches& batches) {
  std::vector<std::vector<int>> all;
  for (const TubBatch& batch : batches.batches) all.push_back(batch.scoops);
  return all;
}

using Scoops = std::vector<std::vector<int>>;

}  // namespace

TEST_CASE("Batches keep the recipe in whole rounds of its parts", "[tub_batches]") {
  // 9.3, 4.65 and 4.65 L in scoops of half a litre: ten rounds of 2 + 1 + 1, by hand; a tub of 8 L takes four rounds.
  const TubBatches batches = tub_batches(task({9.3, 4.65, 4.65}, {4, 2, 2}, 8, 0.5));
  CHECK(batches.recipe_kept);
  CHECK(scoops(batches) == Scoops{{8, 4, 4}, {6, 3, 3}, {6, 3, 3}});
  CHECK(batches.off_recipe < 1e-12);
  CHECK_THAT(in_l(batches.made), WithinAbs(20, 1e-12));
}

TEST_CASE("Where whole rounds would mix far too much, the least number of scoops is taken", "[tub_batches]") {
  const TubBatches batches = tub_batches(task({3.9, 2.9}, {4, 3}, 10, 1.0));
  CHECK(scoops(batches) == Scoops{{4, 3}});
  // A round of 11 + 7 scoops for 2.0 L of each part's need.
  const TubBatches least = tub_batches(task({2.2, 1.4}, {11, 7}, 30, 1.0));
  CHECK_FALSE(least.recipe_kept);
  CHECK(scoops(least) == Scoops{{3, 2}});
  CHECK(least.off_recipe > 0);
}

// docs/science/repotting-day.md: rounds as long as they take no more than a scoop of each component beyond the least.
TEST_CASE("Whole rounds take at most one scoop more of each component, not of them all together", "[tub_batches][regression]") {
  // .52 L in 3 : 1 : 2 by scoops of half a litre: a scoop of each is enough; a round would be 3 L.
  const TubBatches little = tub_batches(task({0.26, 0.52 / 6, 0.52 / 3}, {3, 1, 2}, 20, 0.5));
  CHECK_FALSE(little.recipe_kept);
  CHECK(scoops(little) == Scoops{{1, 1, 1}});
  CHECK_THAT(in_l(little.made), WithinAbs(1.5, 1e-12));
  // 2.6, .8 and 1.7 L: the least is 6, 2 and 4 scoops, two rounds.
  CHECK(tub_batches(task({2.6, 0.8, 1.7}, {3, 1, 2}, 20, 0.5)).recipe_kept);
}

TEST_CASE("A tub that holds fewer scoops than there are components is filled as often as it takes", "[tub_batches][regression]") {
  // Five components by scoops of 2 L in a tub of 8 L: 2 + 3 + 2 + 2 + 4 scoops, four to a tub.
  const TubBatches batches = tub_batches(task({3.1, 5.2, 2.2, 3.4, 7.8}, {1.55, 2.6, 1.1, 1.7, 3.9}, 8, 2.0));
  CHECK(batches.batches.size() == 4);
  std::vector<int> all(5, 0);
  for (const std::vector<int>& batch : scoops(batches)) {
    CHECK(std::accumulate(batch.begin(), batch.end(), 0) <= 4);
    for (std::size_t k = 0; k < all.size(); ++k) all[k] += batch[k];
  }
  CHECK(all == std::vector<int>{2, 3, 2, 2, 4});
}

TEST_CASE("In the least scoops no tub is overfull, none is fuller by two than another, and no grain is missing", "[tub_batches][law]") {
  std::mt19937 random(7);
  std::uniform_int_distribution<int> components(1, 7);
  std::uniform_real_distribution<double> litres(0.05, 12);
  std::uniform_int_distribution<int> tub_scoops(1, 20);
  for (int i = 0; i < 400; ++i) {
    std::vector<double> wanted;
    for (int k = components(random); k > 0; --k) wanted.push_back(litres(random));
    const int fit = tub_scoops(random);
    const TubBatches batches = tub_batches(task(wanted, wanted, 0.4 * fit, 0.4));
    CAPTURE(i, fit);
    if (batches.recipe_kept) continue;
    int fullest = 0;
    int emptiest = fit;
    std::vector<int> all(wanted.size(), 0);
    for (const std::vector<int>& batch : scoops(batches)) {
      const int here = std::accumulate(batch.begin(), batch.end(), 0);
      fullest = std::max(fullest, here);
      emptiest = std::min(emptiest, here);
      for (std::size_t k = 0; k < all.size(); ++k) all[k] += batch[k];
    }
    CHECK(fullest <= fit);
    CHECK(fullest - emptiest <= 1);
    for (std::size_t k = 0; k < all.size(); ++k) CHECK(all[k] == static_cast<int>(std::ceil(wanted[k] / 0.4)));
  }
}

TEST_CASE("A multiple of the scoop is not rounded up by an error of the last digit", "[tub_batches][regression]") {
  const double third = 1.0 / 3;
  CHECK(scoops(tub_batches(task({9 * third, 3.0000000000000004}, {1, 1}, {}, third))) == Scoops{{9, 9}});
  CHECK_THAT(rounded_up(0.1 + 0.2, 0.1), WithinAbs(0.3, 1e-12));
  CHECK_THAT(rounded_up(0.31, 0.1), WithinAbs(0.4, 1e-12));
  CHECK(rounded_up(0, 0.25) == 0);
}

TEST_CASE("Without a scoop litres stay as computed, in equal batches that fit the tub", "[tub_batches]") {
  const TubBatches batches = tub_batches(task({12, 9}, {4, 3}, 10, {}));
  REQUIRE(batches.batches.size() == 3);
  CHECK_THAT(in_l(batches.batches[1].loose[0]), WithinAbs(4, 1e-12));
  CHECK(batches.batches[1].scoops.empty());
  CHECK(tub_batches(task({12, 9}, {4, 3}, {}, {})).batches.size() == 1);
}

TEST_CASE("A mix that swells must fit the tub when it is mixed", "[tub_batches]") {
  BatchTask swelling = task({5, 5}, {1, 1}, 10, {});
  CHECK(tub_batches(swelling).batches.size() == 1);
  swelling.shrinkage = Shrinkage(-0.05);
  CHECK(tub_batches(swelling).batches.size() == 2);
}
