#include "tree_ageing.hpp"

#include <QCoreApplication>

#include "gritwright/models/mix_state.hpp"
#include "known_mix.hpp"
#include "record_surroundings.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class TreeAgeingText {
  Q_DECLARE_TR_FUNCTIONS(TreeAgeing)
};

}  // namespace

std::optional<AgeingQuestion> ageing_question(const OpenWorkbook& workbook, const Catalogue& catalogue, const Repotting& repotting,
                                              std::span<const MixCalibration> calibrations) {
  const auto version = repotting.mix ? workbook.find(*repotting.mix) : std::nullopt;
  const auto pot = repotting.container ? workbook.find(*repotting.container) : std::nullopt;
  if (!version || !pot) return std::nullopt;
  const auto state = mix_state(version->record.mix);
  if (!state || !state->settled) return std::nullopt;
  AgeingQuestion question;
  question.mix = known_mix(workbook, catalogue, version->record, calibrations);
  question.mix.container = pot->record.container;
  const auto& components = version->record.mix.components;
  for (std::size_t k = 0; k < components.size(); ++k) {
    const auto source = k < version->record.sources.size() ? version->record.sources[k] : std::nullopt;
    const auto grain = source ? grain_of_record(workbook, to_qt(source->id)) : std::nullopt;
    question.breakdowns.push_back(breakdown_of(components[k], grain ? grain->crumbling : std::nullopt, catalogue));
  }
  return question;
}

QString tree_air_sentence(const Repotting& repotting, const BenchAgeing& ageing) {
  return TreeAgeingText::tr("As the grain breaks down, in seasons since the repotting of %1%2: %3").arg(day_text(repotting.day), by_pot_tests(ageing.of.mix), repotting_hint(ageing.years));
}

}  // namespace gritwright::desktop
