#include "gritwright/models/packing.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>
#include <utility>
#include <vector>

using namespace gritwright;
using Catch::Matchers::WithinAbs;

namespace {

struct Grain {
  double size_mm;
  double share;
  double beta;
};

double packing(const std::vector<Grain>& grains) {
  std::vector<PackingClass> classes;
  for (const Grain& grain : grains)
    classes.push_back({aperture_mm(grain.size_mm), EnvelopeShare(grain.share), PackingDensity(grain.beta)});
  return packing_density(classes).value();
}

double kernel_packing(const std::vector<Grain>& coarse_to_fine) {
  std::vector<Aperture> sizes;
  std::vector<double> shares, volumes;
  for (const Grain& grain : coarse_to_fine) {
    sizes.push_back(aperture_mm(grain.size_mm));
    shares.push_back(grain.share);
    volumes.push_back(grain.share / grain.beta);
  }
  return 1 / PackingKernel(sizes).specific_volume(shares, volumes);
}

Grading packed_grading(std::vector<std::pair<double, double>> aperture_and_percent) {
  Grading made;
  for (const auto& [mm, percent] : aperture_and_percent) made.points.push_back({aperture_mm(mm), passing_percent(percent)});
  return made;
}

}  // namespace

TEST_CASE("Grains of equal size keep the space they need apart", "[packing][law]") {
  // Any packing model: specific volumes add up by share, 1/(.3/.5 + .7/.6).
  CHECK_THAT(packing({{5, 0.3, 0.5}, {5, 0.7, 0.6}}), WithinAbs(0.566037736, 1e-9));
  CHECK_THAT(packing({{5, 1, 0.57}}), WithinAbs(0.57, 1e-15));
}

TEST_CASE("Two and three sizes far apart reach the limit of complete filling", "[packing][law]") {
  // Limit of unmixed sizes, geometry alone: 1 - (1 - b1)(1 - b2) = .7984, for three of .625: 1 - .375^3.
  const double share = 0.52 / 0.7984;
  const auto at_ratio = [&](double ratio) { return packing({{10, share, 0.52}, {10 * ratio, 1 - share, 0.58}}); };
  CHECK_THAT(at_ratio(1e-6), WithinAbs(0.798398, 1e-6));
  CHECK_THAT(at_ratio(1e-3), WithinAbs(0.796525, 1e-6));
  CHECK_THAT(at_ratio(0.01), WithinAbs(0.780258, 1e-6));
  CHECK_THAT(at_ratio(0.1), WithinAbs(0.681831, 1e-6));

  const double most = 0.947265625;
  CHECK_THAT(packing({{1e12, 0.625 / most, 0.625}, {1, 0.375 * 0.625 / most, 0.625}, {1e-12, 0.375 * 0.375 * 0.625 / most, 0.625}}),
             WithinAbs(most, 1e-9));
}

TEST_CASE("Cutting a class into parts of one size changes nothing", "[packing][law]") {
  const double whole = packing({{8, 0.6, 0.5}, {2, 0.4, 0.5}});
  CHECK_THAT(whole, WithinAbs(0.577834785, 1e-9));
  const std::vector<Grain> parts{{8, 0.1, 0.5}, {8, 0.3, 0.5}, {8, 0.2, 0.5}, {2, 0.15, 0.5}, {2, 0.25, 0.5}};
  CHECK_THAT(packing(parts), WithinAbs(whole, 1e-12));
  // Also where the sizes have not been merged beforehand.
  CHECK_THAT(kernel_packing(parts), WithinAbs(whole, 1e-12));

  std::vector<Grain> spread;
  for (const Grain& grain : {Grain{8, 0.6, 0.5}, Grain{2, 0.4, 0.5}})
    for (const double factor : {0.99, 0.9967, 1.0033, 1.01}) spread.push_back({grain.size_mm * factor, grain.share / 4, 0.5});
  CHECK_THAT(packing(spread), WithinAbs(0.576918, 1e-6));
}

TEST_CASE("A litre and a litre make less than two, the less the further the sizes part", "[packing][approved]") {
  // Figures of an independent calculation with the model's published constants, rounded to 3 decimals.
  const std::vector<std::pair<double, double>> litres{{1.2, 1.988}, {1.5, 1.952}, {2, 1.893}, {3, 1.810}, {4, 1.760},
                                                      {6, 1.705}, {10, 1.650}, {20, 1.589}, {1000, 1.502}};
  for (const auto& [ratio, expected] : litres) {
    INFO("size ratio " << ratio);
    CHECK_THAT(1 / packing({{ratio, 0.5, 0.5}, {1, 0.5, 0.5}}), WithinAbs(expected, 5.1e-4));
  }
}

TEST_CASE("Graded components get the class beta that returns their own packing, and blend with it", "[packing][approved]") {
  // Invented inputs; figures of an independent calculation, rounded to 6 and 5 decimals.
  const std::vector<double> sizes{9.5, 6.7, 4.0, 2.4, 1.4, 0.7};
  const std::vector<std::vector<double>> shares{{.25, .45, .25, .05, 0, 0}, {0, .10, .40, .35, .10, .05}, {0, 0, 0, .1, .5, .4}};
  const std::vector<double> own{0.48, 0.52, 0.58};
  const std::vector<double> expected_beta{0.444218, 0.469410, 0.542722};
  std::vector<double> beta;
  for (std::size_t k = 0; k < 3; ++k) {
    std::vector<SizeClass> classes;
    for (std::size_t i = 0; i < sizes.size(); ++i)
      if (shares[k][i] > 0) classes.push_back({aperture_mm(sizes[i]), EnvelopeShare(shares[k][i])});
    beta.push_back(class_beta(classes, PackingDensity(own[k])).value());
    CHECK_THAT(beta.back(), WithinAbs(expected_beta[k], 6e-7));
  }
  struct Blend {
    std::vector<double> loose;
    double phi;
    double volume_over_loose;
  };
  for (const Blend& blend : {Blend{{1, 1, 0}, 0.518012, 0.96523}, Blend{{1, 1, 1}, 0.585405, 0.89966},
                             Blend{{4, 2, 1}, 0.549330, 0.92060}, Blend{{1, 0, 1}, 0.604490, 0.87677}}) {
    std::vector<Grain> grains;
    double envelope = 0, loose = 0;
    for (std::size_t k = 0; k < 3; ++k) {
      envelope += blend.loose[k] * own[k];
      loose += blend.loose[k];
      for (std::size_t i = 0; i < sizes.size(); ++i)
        grains.push_back({sizes[i], blend.loose[k] * own[k] * shares[k][i], beta[k]});
    }
    const double phi = packing(grains);
    CHECK_THAT(phi, WithinAbs(blend.phi, 6e-7));
    CHECK_THAT(envelope / phi / loose, WithinAbs(blend.volume_over_loose, 6e-6));
  }
}

TEST_CASE("The class beta in closed form is the one a bisection finds", "[packing][law]") {
  std::mt19937_64 random(20);
  std::uniform_real_distribution<double> unit(0, 1);
  for (int round = 0; round < 200; ++round) {
    std::vector<SizeClass> classes;
    double size_mm = 16, sum = 0;
    const int count = 1 + static_cast<int>(unit(random) * 9);
    std::vector<double> weight;
    for (int i = 0; i < count; ++i) sum += weight.emplace_back(0.01 + unit(random));
    for (const double each : weight) {
      classes.push_back({aperture_mm(size_mm), EnvelopeShare(each / sum)});
      size_mm *= 0.4 + 0.5 * unit(random);
    }
    const double own = 0.3 + 0.4 * unit(random);
    const auto packed_with = [&](double beta) {
      std::vector<PackingClass> all;
      for (const SizeClass& each : classes) all.push_back({each.size, each.share, PackingDensity(beta)});
      return packing_density(all).value();
    };
    double low = 0.01, high = 1;
    for (int step = 0; step < 80; ++step) {
      const double half = (low + high) / 2;
      (packed_with(half) < own ? low : high) = half;
    }
    const double closed = class_beta(classes, PackingDensity(own)).value();
    CHECK_THAT(closed, WithinAbs(low, 1e-13));
    CHECK_THAT(packed_with(closed), WithinAbs(own, 1e-13));
  }
}

TEST_CASE("The model meets Feret's measured voids of mixed pebbles", "[packing][published]") {
  // Feret, in Gillette & Hill, Concrete Construction: Methods and Cost (1908), ch. II, Table V: pebbles of rings 2.4-1.6,
  // 1.6-.8 and .8-.4 in, mixed by loose volume. 2 points: two shovelled measures of one pebble differ by about one.
  const std::vector<double> size_in{std::sqrt(2.4 * 1.6), std::sqrt(1.6 * 0.8), std::sqrt(0.8 * 0.4)};
  const std::vector<double> own{1 - 0.400, 1 - 0.388, 1 - 0.417};
  struct Row {
    std::vector<double> loose;
    double measured_percent;
    double model_percent;
  };
  const std::vector<Row> rows{{{1, 1, 0}, 35.8, 37.48}, {{1, 0, 1}, 35.6, 35.27}, {{0, 1, 1}, 37.9, 37.68},
                              {{1, 1, 1}, 35.5, 35.28}, {{4, 1, 1}, 34.5, 34.50}, {{1, 4, 1}, 36.6, 35.57},
                              {{1, 1, 4}, 38.1, 38.05}, {{8, 0, 2}, 34.1, 33.09}};
  double error = 0, additive_error = 0;
  for (const Row& row : rows) {
    std::vector<Grain> grains;
    double envelope = 0, loose = 0;
    for (std::size_t k = 0; k < 3; ++k) {
      grains.push_back({size_in[k], row.loose[k] * own[k], own[k]});
      envelope += row.loose[k] * own[k];
      loose += row.loose[k];
    }
    const double voids_percent = 100 * (1 - packing(grains));
    INFO("parts " << row.loose[0] << ":" << row.loose[1] << ":" << row.loose[2]);
    CHECK_THAT(voids_percent, WithinAbs(row.measured_percent, 2));
    CHECK_THAT(voids_percent, WithinAbs(row.model_percent, 0.006));
    error += std::abs(voids_percent - row.measured_percent) / static_cast<double>(rows.size());
    additive_error += std::abs(100 * (1 - envelope / loose) - row.measured_percent) / static_cast<double>(rows.size());
  }
  CHECK(error <= 0.8);
  // What the model is worth: volumes that merely add up miss by more than four points.
  CHECK_THAT(additive_error, WithinAbs(4.2, 0.1));
}

TEST_CASE("Classes lie half-way between a component's own sieves, with a rule for both ends", "[packing][law]") {
  const std::vector<SizeClass> classes = size_classes(packed_grading({{1, 5}, {4, 80}, {8, 80}, {16, 90}}));
  REQUIRE(classes.size() == 4);
  CHECK_THAT(in_mm(classes[0].size), WithinAbs(std::sqrt(16 * 22.4), 1e-12));
  CHECK_THAT(classes[0].share.value(), WithinAbs(0.10, 1e-15));
  CHECK_THAT(in_mm(classes[1].size), WithinAbs(std::sqrt(8.0 * 16), 1e-12));
  CHECK_THAT(in_mm(classes[2].size), WithinAbs(2, 1e-12));
  CHECK_THAT(classes[2].share.value(), WithinAbs(0.75, 1e-15));
  CHECK_THAT(in_mm(classes[3].size), WithinAbs(0.5, 1e-12));

  Grading with_ends = packed_grading({{1, 5}, {4, 80}});
  with_ends.pan_size = aperture_mm(0.3);
  with_ends.top_size = aperture_mm(9);
  const std::vector<SizeClass> ends = size_classes(with_ends);
  REQUIRE(ends.size() == 3);
  CHECK_THAT(in_mm(ends.front().size), WithinAbs(6, 1e-12));
  CHECK_THAT(in_mm(ends.back().size), WithinAbs(0.3, 1e-12));

  const std::vector<SizeClass> single = size_classes(SingleSize{aperture_mm(4)});
  REQUIRE(single.size() == 1);
  CHECK(single.front() == SizeClass{aperture_mm(4), EnvelopeShare(1)});
}

TEST_CASE("A packing kernel refuses sizes that rise", "[packing][refuses]") {
  const std::vector<Aperture> rising{aperture_mm(1), aperture_mm(2)};
  CHECK_THROWS_AS(PackingKernel(rising), std::logic_error);
}
