#include "gritwright/domain/bin.hpp"

#include "record_checks.hpp"

namespace gritwright {

Problems check(const Bin& bin) {
  Problems problems;
  check_name(problems, "/name", bin.name);
  for (std::size_t i = 0; i < bin.contents.size(); ++i) {
    const BinContent& content = bin.contents[i];
    check_grain(problems, item("/contents", i, "/source"), content.source);
    check_day(problems, item("/contents", i, "/day"), content.day);
    check_day(problems, item("/contents", i, "/emptied"), content.emptied);
    check_amount(problems, item("/contents", i, "/dry_mass_g"), content.dry_mass);
  }
  check_amount(problems, "/bulk_density_g_l", bin.bulk_density);
  return problems;
}

}  // namespace gritwright
