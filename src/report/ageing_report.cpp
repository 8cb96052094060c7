#include "gritwright/report/ageing_report.hpp"

#include <fmt/format.h>

#include <cstddef>

#include "gritwright/report/quantity_text.hpp"
#include "message_templates.hpp"

namespace gritwright {

Explanation explain_years(const Mix& mix, std::span<const std::optional<Breakdown>> breakdowns, Porosity limit) {
  Explanation explanation{"air_over_years",
                          GRITWRIGHT_TEXT("a grain breaks lambda times a season by Poisson's law; what breaks off grain that stayed on L is finer than x with the share (x/L)^m; each season the mix is "
                                          "graded, packed and dosed anew, and its air is theta(0) - water held: the middle, 5 and 95 % of the cases drawn"),
                          {}, GRITWRIGHT_TEXT("docs/science/ageing.md; an estimate")};
  for (std::size_t k = 0; k < mix.components.size(); ++k) {
    if (breakdowns[k]) explanation.inputs.emplace_back(mix.components[k].name, fmt::format("lambda {:.3g}, m {:.3g}", breakdowns[k]->per_season, breakdowns[k]->modulus));
    else explanation.inputs.emplace_back(mix.components[k].name, GRITWRIGHT_TEXT("taken not to break"));
  }
  explanation.inputs.emplace_back(GRITWRIGHT_TEXT("limit of the hint"), percent_text(limit.value()));
  return explanation;
}

}  // namespace gritwright
