#include "gritwright/report/lot_report.hpp"

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>

#include "gritwright/models/bag_verdict.hpp"
#include "gritwright/models/fraction_packing.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/report/mix_report.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "gritwright/report/text_table.hpp"
#include "message_templates.hpp"

namespace gritwright {

namespace {

void append_of(std::vector<Explanation>& list, std::vector<Explanation> all, std::string_view figure) {
  for (Explanation& one : all)
    if (one.figure == figure) list.push_back(std::move(one));
}

void append_usual(std::vector<Explanation>& list, LotFigure figure, const char* name, std::span<const LotFigures> earlier) {
  std::vector<double> before;
  for (const LotFigures& lot : earlier)
    if (lot.of(figure)) before.push_back(*lot.of(figure));
  const auto usual = usual_range(before);
  if (!usual) return;
  // With a digit more than they are read with: small steps are multiplied.
  const auto text = [figure](double value) { return figure == LotFigure::d50_mm ? gritwright::figure(value, 3) + " mm" : percent_text(value, 2); };
  std::string lots;
  for (const double value : before) lots += (lots.empty() ? "" : "; ") + text(value);
  list.push_back({"usual", GRITWRIGHT_TEXT("usual: mean of the bags before, to either side 2.66 x the mean step from one to the next, not below 0; a jump: a step beyond 3.267 x the mean step"),
                  {{GRITWRIGHT_TEXT("figure"), name},
                   {GRITWRIGHT_TEXT("bags before, oldest first"), lots},
                   {GRITWRIGHT_TEXT("mean"), text(usual->mean)},
                   {GRITWRIGHT_TEXT("mean step"), text(usual->mean_moving_range)},
                   {GRITWRIGHT_TEXT("largest usual step"), text(usual->most_moving_range)},
                   {GRITWRIGHT_TEXT("usual from"), text(std::max(0.0, usual->low))},
                   {GRITWRIGHT_TEXT("usual to"), text(usual->high)}},
                  GRITWRIGHT_TEXT("NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2; docs/science/grading.md")});
}

std::vector<Explanation> explain_air(const Grading& last, const GrainProperties& grain) {
  const Mix alone = lot_alone(last, grain);
  const auto state = mix_state(alone);
  const auto water = state ? mix_in_column(*state, alone.water, lot_depth) : std::nullopt;
  return water ? explain(alone, *state, *water) : std::vector<Explanation>{};
}

}  // namespace

std::vector<Explanation> explain_lot(const Grading& last, const Band& wanted, const std::optional<GrainProperties>& grain, MassShare lost,
                                     std::span<const LotFigures> earlier) {
  std::vector<Explanation> list;
  const auto packing = fraction_packing(last, grain ? std::optional(dry_bulk_density(*grain)) : std::nullopt, grain ? grain->particle_density : std::nullopt);
  const auto judged = judge(last, wanted, {}, {}, packing.of, lost).value;
  if (judged) append_of(list, explain(*judged), "finer");
  append_usual(list, LotFigure::dust, GRITWRIGHT_TEXT("finer than wanted"), earlier);
  list.push_back(explain_size(last, 50));
  append_usual(list, LotFigure::d50_mm, "D50", earlier);
  if (judged) append_of(list, explain(*judged), "usable");
  append_usual(list, LotFigure::usable, GRITWRIGHT_TEXT("usable of a litre"), earlier);
  if (!grain) return list;
  const std::vector<Explanation> air = explain_air(last, *grain);
  if (!air.empty()) {
    list.push_back({"air", GRITWRIGHT_TEXT("air of the material alone, straight walls so deep; earlier bags in the grain of this one, so that only their gradings differ"),
                    {{GRITWRIGHT_TEXT("filled depth"), depth_text(lot_depth, UnitSystem::metric)}}, "docs/science/grading.md"});
    for (const std::string_view figure : {"container_capacity", "air_filled_porosity"}) append_of(list, air, figure);
  }
  append_usual(list, LotFigure::air, GRITWRIGHT_TEXT("air, 6 cm deep"), earlier);
  return list;
}

}  // namespace gritwright
