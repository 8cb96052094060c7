#include "gritwright/formats/record_file.hpp"

#include <catch2/catch.hpp>
#include <fstream>
#include <iterator>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

#include "support/paths.hpp"

using namespace gritwright;

TEST_CASE("A profile with every kind of wish comes back from the record as it was", "[species_profile][roundtrip]") {
  SpeciesProfile every = common_profiles().front();
  every.left_out = true;
  every.name = "terrace trees";
  every.group = SpeciesGroup::acid_lover;
  every.note = "a windy place";
  every.wishes = {{PassingLimits{{{aperture_mm(4.75), passing_percent(90), {}}, {aperture_mm(2.36), passing_percent(34), passing_percent(50)}}}, {}, {}, true, 1},
                  {NearestGrading{{{aperture_mm(2), passing_percent(42)}}}, {}, {}, false, 2.5},
                  {BandShare{aperture_mm(2), aperture_mm(6)}, 70, {}, false, 1},
                  {FinerShare{aperture_mm(1)}, {}, 5, true, 1},
                  {FigureInPot{PotFigure::air_filled_porosity, ""}, 0.15, 0.4, false, 1},
                  {FigureInPot{PotFigure::container_capacity, ""}, 0.3, {}, false, 1},
                  {FigureInPot{PotFigure::available_in_pot, ""}, 0.1, {}, false, 1},
                  {FigureInPot{PotFigure::wet_mass, ""}, {}, 1400, false, 0},
                  {ExchangeCapacity{}, 30, {}, false, 1},
                  {MixPrice{}, {}, 2.4, false, 1},
                  {ShareOf{"pumice"}, 0.2, 0.5, true, 1}};
  std::vector<SpeciesProfile> profiles = common_profiles();
  profiles.push_back(every);
  for (const SpeciesProfile& profile : profiles) {
    INFO(profile.name);
    CHECK(check(profile).empty());
    const auto read = read_record(RecordKind::species_profile, write_record(Record(profile)), "profile.json");
    REQUIRE(read);
    const SpeciesProfile& again = std::get<SpeciesProfile>(read.value());
    CHECK(again.name == profile.name);
    CHECK(again.group == profile.group);
    REQUIRE(again.wishes.size() == profile.wishes.size());
    // Sizes and percents went through their units: the text is what has to be the same.
    CHECK(write_record(read.value()) == write_record(Record(profile)));
    CHECK(again.starting_parts == profile.starting_parts);
    CHECK(again.note == profile.note);
    CHECK(again.left_out == profile.left_out);
  }
}

TEST_CASE("A number of fourteen digits is kept as typed, a longer one rounded once and then left", "[record][roundtrip][regression]") {
  std::ifstream stream(GRITWRIGHT_SOURCE_DIR "/tests/fixtures/spoiled/record/fifteen_digits.json", std::ios::binary);
  REQUIRE(stream.is_open());
  std::string text{std::istreambuf_iterator<char>(stream), {}};
  const std::string typed = "120.999999999999";
  const auto written = [](const std::string& file) {
    const auto record = read_record(file, "typed");
    REQUIRE(record);
    return write_record(*record);
  };
  const std::string once = written(text);
  CHECK(once.find("\"flooded_g\":121") != std::string::npos);
  CHECK(written(once) == once);
  text.replace(text.find(typed), typed.size(), typed.substr(0, typed.size() - 1));
  CHECK(written(text).find("\"flooded_g\":120.99999999999") != std::string::npos);
}

TEST_CASE("A mix keeps the grain that was wanted of it, one of earlier versions opens without, and sizes upside down are refused", "[record][roundtrip][refuses]") {
  const auto mix_with = [](const std::string& band) {
    return read_record("{\"format\":\"gritwright/mix-version/1\",\"mix\":{\"name\":\"pines\",\"components\":[{\"name\":\"a\",\"parts\":1,\"bulk_density_g_l\":600,\"class_mm\":4}]}" + band + "}", "mix.json");
  };
  const auto older = mix_with("");
  REQUIRE(older);
  CHECK_FALSE(std::get<MixVersion>(*older).wanted_band);
  CHECK(write_record(*older).find("wanted_band") == std::string::npos);
  const auto wanted = mix_with(",\"wanted_band\":{\"from_mm\":0,\"to_mm\":6}");
  REQUIRE(wanted);
  CHECK(std::get<MixVersion>(*wanted).wanted_band == SizeBand{aperture_mm(0), aperture_mm(6)});
  CHECK(read_record(write_record(*wanted), "again.json").value() == *wanted);
  const auto upside_down = mix_with(",\"wanted_band\":{\"from_mm\":6,\"to_mm\":2}");
  REQUIRE(upside_down);
  const Problems problems = check(*upside_down);
  REQUIRE(problems.size() == 1);
  CHECK(problems.front().code == "record.sizes-upside-down");
  CHECK(problems.front().where.pointer == "/wanted_band");
}

TEST_CASE("A settling of 0 and a spill of 7 % are what was typed, and none is none", "[record][roundtrip][regression]") {
  const auto again = [](const auto& record, RecordKind kind) {
    const auto read = read_record(kind, write_record(Record(record)), "record.json");
    REQUIRE(read);
    return std::get<std::decay_t<decltype(record)>>(*read);
  };
  for (const std::optional<double>& share : std::vector<std::optional<double>>{std::nullopt, 0.0, 0.07}) {
    RepottingDay day;
    day.day = "2026-03-14";
    MixVersion version;
    version.mix.name = "pines";
    if (share) {
      day.settling = version.mix.settling = Settling(*share);
      day.spill = version.mix.spill = Spill(*share);
    }
    INFO(write_record(Record(day)));
    CHECK(again(day, RecordKind::repotting_day) == day);
    CHECK(again(version, RecordKind::mix) == version);
    CHECK((write_record(Record(day)).find("\"spill\"") != std::string::npos) == share.has_value());
  }
}
