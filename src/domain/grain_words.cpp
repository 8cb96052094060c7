#include "gritwright/domain/grain_words.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <string>

namespace gritwright {

namespace {

struct WordOf {
  GrainWord grain;
  std::string_view word;
};

// As `plain_letters` leaves them.
constexpr std::array words_of_grain{
    WordOf{GrainWord::moss, "moss"},          WordOf{GrainWord::moss, "sphagn"},         WordOf{GrainWord::moss, "moos"},
    WordOf{GrainWord::moss, "mousse"},        WordOf{GrainWord::moss, "sphaign"},        WordOf{GrainWord::moss, "musgo"},
    WordOf{GrainWord::moss, "esfagn"},        WordOf{GrainWord::moss, "苔"},             WordOf{GrainWord::moss, "ゴケ"},
    WordOf{GrainWord::moss, "コケ"},          WordOf{GrainWord::moss, "ごけ"},           WordOf{GrainWord::bark, "bark"},
    WordOf{GrainWord::bark, "rinde"},         WordOf{GrainWord::bark, "ecorce"},         WordOf{GrainWord::bark, "corteza"},
    WordOf{GrainWord::bark, "バーク"},        WordOf{GrainWord::bark, "樹皮"},           WordOf{GrainWord::peat, "peat"},
    WordOf{GrainWord::peat, "torf"},          WordOf{GrainWord::peat, "tourbe"},         WordOf{GrainWord::peat, "turba"},
    WordOf{GrainWord::peat, "ピート"},        WordOf{GrainWord::coir, "coir"},           WordOf{GrainWord::coir, "coco"},
    WordOf{GrainWord::coir, "kokos"},         WordOf{GrainWord::coir, "ヤシ"},           WordOf{GrainWord::coir, "ココ"},
    WordOf{GrainWord::compost, "compost"},    WordOf{GrainWord::compost, "kompost"},     WordOf{GrainWord::compost, "terreau"},
    WordOf{GrainWord::compost, "堆肥"},       WordOf{GrainWord::compost, "腐葉土"},      WordOf{GrainWord::soft_clay, "akadama"},
    WordOf{GrainWord::soft_clay, "kanuma"},   WordOf{GrainWord::soft_clay, "赤玉"},      WordOf{GrainWord::soft_clay, "鹿沼"},
    WordOf{GrainWord::vermiculite, "vermicul"}, WordOf{GrainWord::vermiculite, "バーミキュライト"},
    WordOf{GrainWord::perlite, "perlit"},     WordOf{GrainWord::perlite, "パーライト"}};

/// They say that there is none of it.
constexpr std::array<std::string_view, 8> without_peat{"peat-free", "peat free", "peatfree", "torffrei", "ohne torf", "sans tourbe", "sin turba", "ピートフリー"};

/// Small letters without accents, for the accents of Western Europe; every other sign stays as it is.
std::string plain_letters(std::string_view text) {
  constexpr unsigned char first_of_two = 0xC3;  // in UTF-8, of the letters from À to ÿ
  constexpr std::string_view plain = "aaaaaa?ceeeeiiii?nooooo?ouuuuy??";
  std::string letters;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char sign = text[i];
    if (static_cast<unsigned char>(sign) == first_of_two && i + 1 < text.size()) {
      const char letter = plain[static_cast<unsigned char>(text[i + 1]) % plain.size()];
      if (letter != '?') {
        letters += letter;
        ++i;
        continue;
      }
    }
    letters += sign >= 'A' && sign <= 'Z' ? static_cast<char>(sign - 'A' + 'a') : sign;
  }
  return letters;
}

}  // namespace

bool speaks_of(std::string_view name, GrainWord grain) {
  std::string letters = plain_letters(name);
  for (const std::string_view absent : without_peat)
    for (std::size_t at = letters.find(absent); at != std::string::npos; at = letters.find(absent, at)) letters.replace(at, absent.size(), 1, ' ');
  return std::ranges::any_of(words_of_grain, [&](const WordOf& each) { return each.grain == grain && letters.find(each.word) != std::string::npos; });
}

}  // namespace gritwright
