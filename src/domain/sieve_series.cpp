#include "gritwright/domain/sieve_series.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <numbers>
#include <string>

namespace gritwright {

namespace {

// Apertures, designations and tolerances down to 2.80 mm: ASTM E11-01, Table 1. Tolerances of finer sieves: from memory.
constexpr std::array series{
    StandardSieve{125, true, "5 in", 3.70},
    StandardSieve{106, false, "4.24 in", {}},
    StandardSieve{100, false, "4 in", {}},
    StandardSieve{90, true, "3 1/2 in", {}},
    StandardSieve{75, false, "3 in", {}},
    StandardSieve{63, true, "2 1/2 in", 1.90},
    StandardSieve{53, false, "2.12 in", {}},
    StandardSieve{50, false, "2 in", {}},
    StandardSieve{45, true, "1 3/4 in", {}},
    StandardSieve{37.5, false, "1 1/2 in", {}},
    StandardSieve{31.5, true, "1 1/4 in", 1.00},
    StandardSieve{26.5, false, "1.06 in", {}},
    StandardSieve{25, false, "1 in", {}},
    StandardSieve{22.4, true, "7/8 in", {}},
    StandardSieve{19, false, "3/4 in", 0.60},
    StandardSieve{16, true, "5/8 in", 0.50},
    StandardSieve{13.2, false, "0.530 in", {}},
    StandardSieve{12.5, false, "1/2 in", 0.39},
    StandardSieve{11.2, true, "7/16 in", {}},
    StandardSieve{9.5, false, "3/8 in", 0.30},
    StandardSieve{8, true, "5/16 in", 0.25},
    StandardSieve{6.7, false, "0.265 in", {}},
    StandardSieve{6.3, false, "1/4 in", 0.20},
    StandardSieve{5.6, true, "No. 3 1/2", 0.18},
    StandardSieve{4.75, false, "No. 4", 0.15},
    StandardSieve{4, true, "No. 5", 0.13},
    StandardSieve{3.35, false, "No. 6", 0.11},
    StandardSieve{2.8, true, "No. 7", 0.095},
    StandardSieve{2.36, false, "No. 8", 0.080},
    StandardSieve{2, true, "No. 10", 0.070},
    StandardSieve{1.7, false, "No. 12", 0.060},
    StandardSieve{1.4, true, "No. 14", 0.050},
    StandardSieve{1.18, false, "No. 16", 0.045},
    StandardSieve{1, true, "No. 18", 0.040},
    StandardSieve{0.85, false, "No. 20", 0.035},
    StandardSieve{0.71, true, "No. 25", {}},
    StandardSieve{0.6, false, "No. 30", 0.025},
    StandardSieve{0.5, true, "No. 35", 0.020},
    StandardSieve{0.425, false, "No. 40", {}},
    StandardSieve{0.355, true, "No. 45", {}},
    StandardSieve{0.3, false, "No. 50", {}},
    StandardSieve{0.25, true, "No. 60", {}},
    StandardSieve{0.212, false, "No. 70", {}},
    StandardSieve{0.18, true, "No. 80", {}},
    StandardSieve{0.15, false, "No. 100", {}},
    StandardSieve{0.125, true, "No. 120", {}},
    StandardSieve{0.106, false, "No. 140", {}},
    StandardSieve{0.09, true, "No. 170", {}},
    StandardSieve{0.075, false, "No. 200", {}},
    StandardSieve{0.063, true, "No. 230", {}},
    StandardSieve{0.053, false, "No. 270", {}},
    StandardSieve{0.045, true, "No. 325", {}},
    StandardSieve{0.038, false, "No. 400", {}},
};

constexpr double mm_per_inch = 25.4;

/// Lower case without outer blanks; a comma between digits becomes the point, runs of blanks become one.
std::string tidied(std::string_view name) {
  std::string text;
  for (const char sign : name) {
    const bool blank = sign == ' ' || sign == '\t';
    if (blank && (text.empty() || text.back() == ' ')) continue;
    text += blank ? ' ' : sign == ',' ? '.' : (sign >= 'A' && sign <= 'Z') ? static_cast<char>(sign - 'A' + 'a') : sign;
  }
  if (!text.empty() && text.back() == ' ') text.pop_back();
  return text;
}

bool take_suffix(std::string& text, std::string_view suffix) {
  if (!text.ends_with(suffix)) return false;
  text.resize(text.size() - suffix.size());
  if (!text.empty() && text.back() == ' ') text.pop_back();
  return true;
}

/// A positive plain number, nothing else around it.
std::optional<double> plain_number(std::string_view text) {
  if (text.empty() || text.find_first_not_of("0123456789.") != std::string_view::npos) return std::nullopt;
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(value) || value <= 0) return std::nullopt;
  return value;
}

/// "3", "0.5", "3/8", "1 1/2".
std::optional<double> number_or_fraction(std::string_view text) {
  const auto slash = text.find('/');
  if (slash == std::string_view::npos) return plain_number(text);
  const auto blank = text.substr(0, slash).find(' ');
  const auto whole = blank == std::string_view::npos ? std::optional(0.0) : plain_number(text.substr(0, blank));
  const auto upper = plain_number(text.substr(blank == std::string_view::npos ? 0 : blank + 1,
                                              blank == std::string_view::npos ? slash : slash - blank - 1));
  const auto lower = plain_number(text.substr(slash + 1));
  if (!whole || !upper || !lower) return std::nullopt;
  return *whole + *upper / *lower;
}

std::optional<Aperture> numbered(std::string_view number) {
  for (const StandardSieve& sieve : series) {
    if (sieve.designation.starts_with("No. ") && sieve.designation.substr(4) == number) return aperture_mm(sieve.aperture_mm);
  }
  return std::nullopt;
}

/// A standard designation in inches stands for its standard aperture; other inches are converted.
std::optional<Aperture> in_inches(std::string_view text) {
  const auto inches = number_or_fraction(text);
  if (!inches) return std::nullopt;
  for (const StandardSieve& sieve : series) {
    if (!sieve.designation.ends_with(" in")) continue;
    const auto standard = number_or_fraction(sieve.designation.substr(0, sieve.designation.size() - 3));
    if (standard && std::abs(*standard - *inches) < 1e-9) return aperture_mm(sieve.aperture_mm);
  }
  return aperture_mm(*inches * mm_per_inch);
}

}  // namespace

std::span<const StandardSieve> standard_sieves() { return series; }

std::optional<Aperture> aperture_named(std::string_view name) {
  std::string text = tidied(name);
  for (const std::string_view prefix : {"no. ", "no.", "no ", "# ", "#"}) {
    if (text.starts_with(prefix)) return numbered(std::string_view(text).substr(prefix.size()));
  }
  for (const std::string_view suffix : {"inches", "inch", "in.", "in", "\"", "\u2033"}) {
    if (take_suffix(text, suffix)) return in_inches(text);
  }
  double mm_per_unit = 1;
  if (!take_suffix(text, "mm")) {
    for (const std::string_view suffix : {"um", "\u00b5m", "\u03bcm"}) {
      if (take_suffix(text, suffix)) mm_per_unit = 0.001;
    }
  }
  const auto number = plain_number(text);
  if (!number) return std::nullopt;
  return aperture_mm(*number * mm_per_unit);
}

std::optional<Aperture> mesh_opening(Length pitch, Length wire) {
  if (!(wire.value() > 0 && wire < pitch)) return std::nullopt;
  return Aperture(pitch - wire);
}

Aperture next_coarser_principal(Aperture aperture) {
  // An aperture typed as 2.0 must not count as finer than the sieve of 2.0 by the last bit.
  constexpr double same = 1 + 1e-9;
  for (auto sieve = series.rbegin(); sieve != series.rend(); ++sieve) {
    if (sieve->principal && sieve->aperture_mm > in_mm(aperture) * same) return aperture_mm(sieve->aperture_mm);
  }
  return aperture * std::numbers::sqrt2;
}

}  // namespace gritwright
