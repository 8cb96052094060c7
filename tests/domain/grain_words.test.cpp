#include "gritwright/domain/grain_words.hpp"

#include <catch2/catch.hpp>
#include <string>

using namespace gritwright;

TEST_CASE("A grain is known by its name in five languages, whatever its capitals and accents", "[grain_words][law]") {
  for (const char* name : {"pine bark", "Bark, coarse", "Kiefernrinde", "écorce de pin", "Écorce", "ECORCE", "corteza de pino", "松バーク"}) {
    INFO(name);
    CHECK(speaks_of(name, GrainWord::bark));
    CHECK_FALSE(speaks_of(name, GrainWord::moss));
  }
  for (const char* name : {"Sphagnum", "long moss", "Moos", "Sphaigne du Chili", "esfagno", "ミズゴケ", "水苔"}) CHECK(speaks_of(name, GrainWord::moss));
  for (const char* name : {"peat", "Weißtorf", "tourbe blonde", "turba", "ピートモス"}) CHECK(speaks_of(name, GrainWord::peat));
  for (const char* name : {"coir", "Kokosfaser", "fibre de coco", "ヤシ殻繊維"}) CHECK(speaks_of(name, GrainWord::coir));
  for (const char* name : {"Vermiculit", "vermiculita", "バーミキュライト"}) CHECK(speaks_of(name, GrainWord::vermiculite));
  for (const char* name : {"akadama 3-6", "鹿沼土"}) CHECK(speaks_of(name, GrainWord::soft_clay));
}

TEST_CASE("Stone is none of the grains that ask for a caution by name", "[grain_words][law]") {
  for (const char* name : {"pumice", "Bims", "pouzzolane", "grava de río", "硅砂", "", "\xC3", "Ð×÷þ"})
    for (const GrainWord grain : {GrainWord::moss, GrainWord::bark, GrainWord::peat, GrainWord::coir, GrainWord::compost, GrainWord::soft_clay, GrainWord::vermiculite, GrainWord::perlite}) {
      INFO(name);
      CHECK_FALSE(speaks_of(name, grain));
    }
}

TEST_CASE("Vermicompost is compost and no vermiculite, and what is free of peat is no peat", "[grain_words][regression]") {
  for (const char* name : {"vermicompost", "Vermikompost", "Wurmhumus (Vermicompost)"}) {
    INFO(name);
    CHECK(speaks_of(name, GrainWord::compost));
    CHECK_FALSE(speaks_of(name, GrainWord::vermiculite));
  }
  for (const char* name : {"peat-free compost", "Peat Free", "torffreie Erde", "Erde ohne Torf", "terreau sans tourbe", "sustrato sin turba", "ピートフリー培土"}) {
    INFO(name);
    CHECK_FALSE(speaks_of(name, GrainWord::peat));
  }
  CHECK(speaks_of("peat-free compost", GrainWord::compost));
  CHECK(speaks_of("terreau sans tourbe", GrainWord::compost));
  CHECK(speaks_of("torffreie Erde, Weißtorf", GrainWord::peat));
}
