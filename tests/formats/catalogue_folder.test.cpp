#include "gritwright/formats/catalogue_folder.hpp"
#include "support/paths.hpp"

#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <string>

using namespace gritwright;

namespace {

namespace fs = std::filesystem;

const fs::path shipped = fs::path(GRITWRIGHT_SOURCE_DIR) / "materials";

const Material& material(const Catalogue& catalogue, const std::string& name) {
  const Material* found = catalogue.find(name);
  REQUIRE(found != nullptr);
  return *found;
}

/// A copy of the shipped catalogue that one test may spoil.
class SpoiledCopy {
 public:
  SpoiledCopy() : folder_(fs::temp_directory_path() / ("gritwright_catalogue_" + std::to_string(reinterpret_cast<std::uintptr_t>(this)))) {
    fs::remove_all(folder_);
    fs::copy(shipped, folder_);
  }
  ~SpoiledCopy() { fs::remove_all(folder_); }
  SpoiledCopy(const SpoiledCopy&) = delete;
  SpoiledCopy& operator=(const SpoiledCopy&) = delete;
  [[nodiscard]] const fs::path& folder() const { return folder_; }

  void replace(const std::string& file, const std::string& from, const std::string& to) const {
    std::ifstream in(folder_ / file, std::ios::binary);
    std::string text{std::istreambuf_iterator<char>(in), {}};
    const auto at = text.find(from);
    REQUIRE(at != std::string::npos);
    std::ofstream(folder_ / file, std::ios::binary) << text.replace(at, from.size(), to);
  }

 private:
  fs::path folder_;
};

bool has_code(const Problems& problems, const std::string& code) {
  return std::any_of(problems.begin(), problems.end(), [&](const Problem& problem) { return problem.code == code; });
}

}  // namespace

TEST_CASE("The shipped catalogue has its 21 materials and no fault", "[catalogue]") {
  for (const Problem& problem : check_catalogue(shipped)) FAIL_CHECK(problem.code << " " << problem.where.file.value_or("") << problem.where.pointer);
  const auto read = read_catalogue(shipped);
  REQUIRE(read);
  CHECK(read->catalogue.materials().size() == 21);
}

TEST_CASE("Catalogue figures read from publications stand as published", "[catalogue][published]") {
  const auto read = read_catalogue(shipped);
  REQUIRE(read);
  const Catalogue& catalogue = read->catalogue;
  // Luque-Escalona 1982, Acta Horticulturae 126:51-56: scoria.
  CHECK(material(catalogue, "scoria").bulk_density_g_l.value == 840);
  CHECK(material(catalogue, "scoria").skeletal_density_g_l->value == 2930);
  CHECK(material(catalogue, "scoria").total_porosity->value == 0.713);
  CHECK(material(catalogue, "scoria").cec_meq_100g->value == 5);
  // Boyer et al. 2012, International Journal of Agronomy 978528, Table 1: pine bark and peat.
  CHECK(material(catalogue, "pine bark").bulk_density_g_l.value == 180);
  CHECK(material(catalogue, "pine bark").total_porosity->value == 0.79);
  CHECK(material(catalogue, "peat").bulk_density_g_l.value == 110);
  CHECK(material(catalogue, "peat").container_capacity->value == 0.87);
  // Fonteno 1990, HortScience 25:1093: quartz.
  CHECK(material(catalogue, "quartz sand").skeletal_density_g_l->value == 2650);
  // Values quoted from Bunt 1988.
  CHECK(material(catalogue, "perlite").cec_meq_100g->value == 1.5);
  CHECK(material(catalogue, "vermiculite").cec_meq_100g->value == 150);
  // Liu, Amemiya & Yabashi: akadama.
  CHECK(material(catalogue, "akadama").total_porosity->value == 0.823);
}

TEST_CASE("Exchange capacity per litre follows from mass and bulk density", "[catalogue][law]") {
  const auto read = read_catalogue(shipped);
  REQUIRE(read);
  const auto per_litre = [&](const char* name) {
    const Material& found = material(read->catalogue, name);
    return found.cec_meq_100g->value * found.bulk_density_g_l.value / 100;
  };
  CHECK_THAT(per_litre("scoria"), Catch::Matchers::WithinAbs(42, 0.5));
  CHECK_THAT(per_litre("akadama"), Catch::Matchers::WithinAbs(91, 0.5));
  CHECK_THAT(per_litre("peat"), Catch::Matchers::WithinAbs(121, 0.5));
}

TEST_CASE("Each material's figures hang together as a set", "[catalogue][law]") {
  const auto read = read_catalogue(shipped);
  REQUIRE(read);
  for (const Material& one : read->catalogue.materials()) {
    INFO(one.name);
    const double bulk = one.bulk_density_g_l.value;
    REQUIRE(one.skeletal_density_g_l);
    const double skeletal = one.skeletal_density_g_l->value;
    // Figures are rounded to a hundredth; what is derived must follow from the densities that are shown.
    if (one.total_porosity && one.total_porosity->kind == FigureKind::derived)
      CHECK_THAT(one.total_porosity->value, Catch::Matchers::WithinAbs(1 - bulk / skeletal, 0.006));
    if (!one.particle_density_g_l) {
      CHECK_FALSE(one.grain_porosity);
      continue;
    }
    const double particle = one.particle_density_g_l->value;
    CHECK(bulk < particle);
    CHECK(particle <= skeletal);
    CHECK_THAT(one.grain_porosity->value, Catch::Matchers::WithinAbs(1 - particle / skeletal, 0.006));
    REQUIRE(one.open_share);
    if (one.water_absorption) CHECK(one.water_absorption->value * particle / 1000 <= 1 - particle / skeletal);
  }
}

TEST_CASE("A spoiled catalogue is found out", "[catalogue][refuses]") {
  const SpoiledCopy copy;
  CHECK(check_catalogue(copy.folder()).empty());
  SECTION("a source that is not listed") {
    copy.replace("references.json", "\"memory\"", "\"recollection\"");
    const Problems problems = check_catalogue(copy.folder());
    CHECK(has_code(problems, "catalogue.unknown-source"));
    CHECK(has_code(problems, "catalogue.unused-source"));
  }
  SECTION("a name used twice") {
    copy.replace("scoria.json", "\"lava\"", "\"pumice\"");
    CHECK(has_code(check_catalogue(copy.folder()), "catalogue.name-twice"));
  }
  SECTION("a breach of the schema") {
    copy.replace("peat.json", "\"basis\": \"oven-dry\", ", "");
    CHECK(has_code(check_catalogue(copy.folder()), "key.missing"));
    CHECK(read_catalogue(copy.folder()).ok());
  }
  SECTION("an unreadable figure") {
    copy.replace("peat.json", "\"value\": 110", "\"value\": \"110\"");
    CHECK_FALSE(read_catalogue(copy.folder()).ok());
  }
  SECTION("no references") {
    fs::remove(copy.folder() / "references.json");
    CHECK(read_catalogue(copy.folder()).problems().front().code == "file.missing");
    CHECK(has_code(check_catalogue(copy.folder()), "file.missing"));
  }
}

TEST_CASE("A folder without materials is no catalogue", "[catalogue][refuses]") {
  CHECK(read_catalogue(shipped / "nowhere").problems().front().code == "file.missing");
}
