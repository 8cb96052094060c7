#include "gritwright/report/ageing_report.hpp"

#include <fmt/format.h>

#include <cstddef>
#include <string>
#include <utility>

#include "gritwright/report/quantity_text.hpp"
#include "gritwright/report/text_table.hpp"
#include "message_templates.hpp"

namespace gritwright {

std::vector<Explanation> explain_years(const Mix& mix, std::span<const std::optional<Breakdown>> breakdowns, int seasons, Porosity limit) {
  std::vector<std::pair<std::string, std::string>> inputs;
  for (std::size_t k = 0; k < mix.components.size(); ++k) {
    if (!breakdowns[k]) {
      inputs.emplace_back(mix.components[k].name, GRITWRIGHT_TEXT("taken not to break"));
      continue;
    }
    inputs.emplace_back(mix.components[k].name, fmt::format("lambda {:.3g}, m {:.3g}", breakdowns[k]->per_season, breakdowns[k]->modulus));
    inputs.emplace_back(GRITWRIGHT_TEXT("5 and 95 % of its lambda, as factors"),
                        fmt::format("{:.3g}; {:.3g}", breakdowns[k]->spread.at(-1.645), breakdowns[k]->spread.at(1.645)));
  }
  inputs.emplace_back(GRITWRIGHT_TEXT("seasons"), std::to_string(seasons));
  inputs.emplace_back(GRITWRIGHT_TEXT("limit of the hint"), percent_text(limit.value()));
  const std::string source = GRITWRIGHT_TEXT("docs/science/ageing.md; an estimate");
  return {{"crumbs_staying",
           GRITWRIGHT_TEXT("a grain breaks lambda times a season by Poisson's law; what breaks off grain that stayed on L is finer than x with the share (x/L)^m; each season the mix is "
                           "graded, packed and dosed anew, and its air is theta(0) - water held: the middle, 5 and 95 % of the cases drawn"),
           inputs, source},
          {"crumbs_washed_down",
           GRITWRIGHT_TEXT("the same, with what crumbled off finer than 1 mm at the floor: packed with .55 it clogs the share c of the mix, which then drains nothing; air is (1 - c) x the air "
                           "of what stands above, as on a wick"),
           {}, source}};
}

}  // namespace gritwright
