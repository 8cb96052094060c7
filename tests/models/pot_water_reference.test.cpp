// Volume and capacity of every shape against SciPy's quad, on random cases that change from run to run.
#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iomanip>
#include <iostream>
#include <locale>
#include <sstream>

#include "gritwright/models/pot_water.hpp"
#include "support/paths.hpp"
#include "support/random_pots.hpp"

using namespace gritwright;

namespace {

namespace fs = std::filesystem;

const char* name_of(Shape shape) {
  static constexpr const char* names[] = {"rectangular", "oval", "round", "hexagonal", "octagonal", "drum", "superellipse", "bowl", "profile"};
  return names[static_cast<std::size_t>(shape)];
}

void write_section(std::ostream& out, const char* key, const Section& section) {
  out << ",\"" << key << "\":[" << in_cm(section.length) << ',' << in_cm(section.width) << ']';
}

void write_case(std::ostream& out, const Container& pot, const RetentionInput& mix) {
  out << "{\"pot\":{\"shape\":\"" << name_of(pot.shape) << "\",\"depth\":" << in_cm(pot.depth) << ",\"freeboard\":" << in_cm(pot.freeboard)
      << ",\"saucer\":" << in_cm(pot.saucer) << ",\"wick\":" << in_cm(pot.wick);
  write_section(out, "rim", pot.rim);
  if (pot.base) write_section(out, "base", *pot.base);
  if (pot.middle) out << ",\"middle\":" << in_cm(pot.middle->length);
  if (pot.exponent) out << ",\"exponent\":" << *pot.exponent;
  if (pot.corner_radius.value() > 0) out << ",\"corner\":" << in_cm(pot.corner_radius);
  if (pot.fillet_radius.value() > 0) out << ",\"fillet\":" << in_cm(pot.fillet_radius);
  if (pot.water_fill) out << ",\"water_fill\":" << in_ml(*pot.water_fill);
  if (pot.tilt.angle.value() > 0) {
    out << ",\"tilt\":" << pot.tilt.angle.value() << ",\"about_length\":" << (pot.tilt.axis == TiltAxis::length ? "true" : "false");
  }
  if (!pot.areas.empty()) {
    out << ",\"areas\":[";
    for (std::size_t i = 0; i < pot.areas.size(); ++i) {
      out << (i ? ",[" : "[") << in_cm(pot.areas[i].height) << ',' << in_cm2(pot.areas[i].area) << ']';
    }
    out << ']';
  }
  out << "},\"mix\":{\"sizes\":[";
  for (std::size_t i = 0; i < mix.envelope_grading.size(); ++i) out << (i ? "," : "") << in_mm(mix.envelope_grading[i].aperture);
  out << "],\"shares\":[";
  for (std::size_t i = 0; i < mix.envelope_grading.size(); ++i) out << (i ? "," : "") << mix.envelope_grading[i].passing.value();
  out << "],\"k\":" << mix.constants.k_cm_mm << ",\"spread\":" << mix.constants.spread << ",\"n\":" << mix.constants.n
      << ",\"residual\":" << mix.constants.residual << ",\"saturated\":" << mix.constants.flooded_fill * mix.voids_between_grains.value()
      << ",\"grain_water\":" << mix.grain_water.value() << "}}\n";
}

struct Case {
  Container pot;
  RetentionInput mix;
};

struct Figures {
  double volume_ml = 0;
  double capacity = 0;
};

Figures ours(const Case& one) {
  const PotGeometry geometry(one.pot);
  return {in_ml(geometry.volume()), container_capacity(Retention(one.mix).curve(), geometry).value()};
}

std::vector<Figures> scipys(const std::vector<Case>& cases) {
  const fs::path folder = fs::temp_directory_path() / ("gritwright-pots-" + std::to_string(std::random_device{}()));
  fs::create_directories(folder);
  {
    std::ofstream out(folder / "cases");
    out.imbue(std::locale::classic());
    out << std::setprecision(17);
    for (const Case& one : cases) write_case(out, one.pot, one.mix);
  }
  const std::string command = std::string(GRITWRIGHT_PYTHON) + " \"" GRITWRIGHT_SOURCE_DIR "/tests/models/pot_water.reference.py\" \"" +
                              (folder / "cases").string() + "\" \"" + (folder / "answers").string() + "\"";
  REQUIRE(std::system(command.c_str()) == 0);
  std::ifstream answers(folder / "answers");
  answers.imbue(std::locale::classic());
  std::string version;
  std::getline(answers, version);
  std::cout << "pots against " << version << '\n';
  std::vector<Figures> figures(cases.size());
  for (Figures& figure : figures) REQUIRE(answers >> figure.volume_ml >> figure.capacity);
  fs::remove_all(folder);
  return figures;
}

unsigned seed() { return Catch::rngSeed(); }

void compare(const std::vector<Case>& cases, double volume_tolerance, double capacity_tolerance) {
  const std::vector<Figures> theirs = scipys(cases);
  double worst_volume = 0;
  double worst_capacity = 0;
  for (std::size_t i = 0; i < cases.size(); ++i) {
    const Figures mine = ours(cases[i]);
    const double volume_error = std::abs(mine.volume_ml / theirs[i].volume_ml - 1);
    const double capacity_error = std::abs(mine.capacity - theirs[i].capacity);
    if (!(volume_error <= volume_tolerance) || !(capacity_error <= capacity_tolerance)) {
      FAIL_CHECK("seed " << seed() << " case " << i << ' ' << name_of(cases[i].pot.shape) << " volume " << mine.volume_ml << " / "
                         << theirs[i].volume_ml << " capacity " << mine.capacity << " / " << theirs[i].capacity);
    }
    worst_volume = std::max(worst_volume, volume_error);
    worst_capacity = std::max(worst_capacity, capacity_error);
  }
  std::cout << "  " << cases.size() << " cases, largest difference: volume " << worst_volume << " of it, capacity " << worst_capacity << '\n';
}

std::vector<Case> random_cases(int per_shape) {
  test::RandomPots random(seed());
  std::vector<Case> cases;
  for (Shape shape : test::RandomPots::shapes) {
    for (int i = 0; i < per_shape; ++i) {
      Case one{random.container(shape), random.mix()};
      if (random.chance(0.2)) one.pot.saucer = depth_cm(random.between(0, 6));
      if (random.chance(0.2)) one.pot.wick = depth_cm(random.between(0, 10));
      const Problems problems = check(one.pot);
      INFO(name_of(shape) << ' ' << (problems.empty() ? "" : problems.front().code));
      REQUIRE(problems.empty());
      cases.push_back(std::move(one));
    }
  }
  return cases;
}

}  // namespace

TEST_CASE("Volume and capacity of every shape agree with SciPy's quad on two hundred random cases each", "[pot_water][law][peer]") {
  // A fillet's arc is stood for by parabolas of the same moments, 1e-7 of the capacity; else the moment table's error counts.
  compare(random_cases(200), 1e-8, 1e-6);
}

TEST_CASE("Capacity of tilted pots of every shape agrees with a plain sum over the body", "[pot_water][law]") {
  // Either side leaves up to 1e-5 at coarse grain in wide pots; the figures are wanted to 1e-4.
  std::vector<Case> cases = random_cases(4);
  test::RandomPots random(seed() + 1);
  for (Case& one : cases) {
    one.pot.tilt.angle = angle_deg(random.between(1, 45));
    one.pot.tilt.axis = random.chance(0.5) ? TiltAxis::length : TiltAxis::width;
  }
  compare(cases, 1e-8, 2e-5);
}
