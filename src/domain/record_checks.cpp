#include "record_checks.hpp"

#include <array>

namespace gritwright {

bool is_calendar_day(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  const auto digits = [&](std::size_t from, std::size_t count) {
    int value = 0;
    for (const char sign : text.substr(from, count)) {
      if (sign < '0' || sign > '9') return -1;
      value = value * 10 + (sign - '0');
    }
    return value;
  };
  const int year = digits(0, 4), month = digits(5, 2), day = digits(8, 2);
  if (year < 0 || month < 1 || month > 12 || day < 1) return false;
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  constexpr std::array lengths{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return day <= lengths[static_cast<std::size_t>(month) - 1] + (month == 2 && leap ? 1 : 0);
}

}  // namespace gritwright
