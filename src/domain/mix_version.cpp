#include "gritwright/domain/mix_version.hpp"

#include "record_checks.hpp"

namespace gritwright {

Problems check(const MixVersion& version) {
  Problems problems = under(check(version.mix), "/mix");
  check_name(problems, "/mix/name", version.mix.name);
  if (!version.sources.empty() && version.sources.size() != version.mix.components.size())
    problems.push_back(problem_at("mix.sources-differ", "/sources",
                                  {{"sources", static_cast<double>(version.sources.size())},
                                   {"components", static_cast<double>(version.mix.components.size())}}));
  for (std::size_t i = 0; i < version.sources.size(); ++i)
    if (version.sources[i]) check_grain(problems, item("/sources", i), *version.sources[i]);
  check_day(problems, "/day", version.day);
  if (version.wanted_band && !(version.wanted_band->from < version.wanted_band->to))
    problems.push_back(problem_at("record.sizes-upside-down", "/wanted_band",
                                  {{"from_mm", in_mm(version.wanted_band->from)}, {"to_mm", in_mm(version.wanted_band->to)}}));
  check_amount(problems, "/reserved_l", version.reserved);
  return problems;
}

}  // namespace gritwright
