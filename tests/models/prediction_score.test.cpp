#include "gritwright/models/prediction_score.hpp"

#include <catch2/catch.hpp>

using namespace gritwright;
using Catch::Matchers::WithinAbs;

TEST_CASE("Predictions are scored by bias and root mean square, coarse and fine apart", "[prediction_score]") {
  const std::vector<PredictedAndMeasured> pairs{{Porosity(0.30), Porosity(0.26), aperture_mm(4)},
                                                {Porosity(0.20), Porosity(0.22), aperture_mm(3)},
                                                {Porosity(0.10), Porosity(0.13), aperture_mm(1)}};
  const PredictionScores scores = score(pairs);
  CHECK(scores.all->count == 3);
  CHECK_THAT(scores.all->bias, WithinAbs(-0.01 / 3, 1e-12));
  CHECK_THAT(scores.all->rmse, WithinAbs(std::sqrt((0.0016 + 0.0004 + 0.0009) / 3), 1e-12));
  CHECK(scores.coarse->count == 2);
  CHECK_THAT(scores.coarse->bias, WithinAbs(0.01, 1e-12));
  CHECK_THAT(scores.fine->rmse, WithinAbs(0.03, 1e-12));
}

TEST_CASE("Without pot tests there is no score", "[prediction_score]") {
  CHECK_FALSE(score({}).all);
  CHECK_FALSE(pooled_constants({}));
}

TEST_CASE("A material's constants pool over its mixes by its share in them", "[prediction_score]") {
  RetentionConstants first, second;
  first.k_cm_mm = 8;
  first.grain_fill = 0.6;
  second.k_cm_mm = 12;
  second.grain_fill = 0.9;
  const std::vector<CalibratedMix> mixes{{first, EnvelopeShare(0.5)}, {second, EnvelopeShare(0.25)}};
  const auto pooled = pooled_constants(mixes);
  REQUIRE(pooled);
  CHECK_THAT(pooled->k_cm_mm, WithinAbs(std::cbrt(8.0 * 8.0 * 12.0), 1e-9));
  CHECK_THAT(pooled->grain_fill, WithinAbs(0.7, 1e-12));
}

TEST_CASE("A mix without a test takes its materials' pooled constants by its shares, and the rest as usual", "[prediction_score][law]") {
  RetentionConstants wide;
  wide.k_cm_mm = 6;
  wide.grain_fill = 0.5;
  const std::vector<TestedShares> tested{{wide, {{"akadama", 0.6}, {"pumice", 0.4}}}, {wide, {{"akadama", 0.6}}}, {{}, {{"scoria", 1}}}};
  const RetentionConstants usual;
  // Both tested mixes together hold more than one whole of it.
  const auto whole = pooled_for({{"akadama", 1}}, tested);
  REQUIRE(whole);
  CHECK_THAT(whole->constants.k_cm_mm, WithinAbs(6, 1e-9));
  CHECK_THAT(whole->known, WithinAbs(1, 1e-12));
  CHECK(whole->mixes == std::vector<std::size_t>{0, 1});
  // A material that was only 0.4 of one tested mix counts for 0.4.
  const auto part = pooled_for({{"pumice", 0.5}, {"perlite", 0.5}}, tested);
  REQUIRE(part);
  CHECK_THAT(part->known, WithinAbs(0.2, 1e-12));
  CHECK_THAT(part->constants.k_cm_mm, WithinAbs(std::exp(0.2 * std::log(6) + 0.8 * std::log(usual.k_cm_mm)), 1e-9));
  CHECK_THAT(part->constants.grain_fill, WithinAbs(0.2 * 0.5 + 0.8 * usual.grain_fill, 1e-12));
  CHECK(part->materials == std::vector<std::string>{"pumice"});
  CHECK(part->constants.n == usual.n);
  CHECK_FALSE(pooled_for({{"perlite", 1}}, tested));
  CHECK_FALSE(pooled_for({{"akadama", 1}}, {}));
}
