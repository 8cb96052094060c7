#include <QCoreApplication>

#include "gritwright/models/kept_pot_tests.hpp"
#include "gritwright/report/calibration_report.hpp"
#include "gritwright/report/text_table.hpp"
#include "pot_test_records.hpp"
#include "protocol_reading.hpp"
#include "record_book.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class PotTestText {
  Q_DECLARE_TR_FUNCTIONS(Protocols)
};

std::optional<std::string> pot_share_of(const std::optional<Porosity>& value) { return value ? std::optional(percent_text(value->value())) : std::nullopt; }

/// The test as it is typed; amounts that are missing are told by `read`.
PotTest typed_pot_test(const ProtocolSheet& sheet, ProtocolReading& read) {
  PotTest test;
  test.mix = Id<MixVersion>{sheet.subject->id};
  test.day = today();
  const bool straight = sheet.container.isEmpty();
  if (straight) {
    if (const auto depth = read.length("depth")) test.filled_depth = Depth(*depth);
  } else {
    test.container = Id<RecordedContainer>{sheet.container.toStdString()};
  }
  if (const auto volume = read.volume_ml("volume", straight)) test.volume = PotVolume(*volume);
  if (sheet.protocol == Protocol::pot_by_balance) {
    PotWeighings weighed;
    weighed.tare = read.mass("tare").value_or(Mass{});
    weighed.flooded = read.mass("flooded", false);
    weighed.drained = read.mass("drained");
    weighed.dry = read.mass("dry").value_or(Mass{});
    test.weighed = weighed;
  } else {
    if (const auto poured = read.volume_ml("poured")) test.water_poured = PotVolume(*poured);
    if (const auto caught = read.volume_ml("caught")) test.water_caught = PotVolume(*caught);
  }
  return test;
}

void add_pot_figures(ProtocolAnswer& answer, const TestedMix* tested, const QString& reason, UnitSystem units) {
  const ForetoldTest* const last = tested != nullptr && !tested->tests.empty() ? &tested->tests.back() : nullptr;
  CalibrationReport report;
  if (tested != nullptr) report.calibration = tested->calibration;
  if (last != nullptr) report.tests.push_back({{}, last->reading, last->measured, {}, {}});
  const auto how = explain(report);
  const auto measured = [&](std::optional<Porosity> MeasuredPorosities::*member) { return last != nullptr ? pot_share_of(last->measured.*member) : std::nullopt; };
  const QString not_measured = last != nullptr ? PotTestText::tr("what it needs was not measured") : reason;
  add_figure(answer, "air_filled_porosity", PotTestText::tr("Air that drained in"), measured(&MeasuredPorosities::air_filled_porosity), not_measured, how);
  const bool foretold = last != nullptr && last->predicted;
  add_figure(answer, "predicted_air", PotTestText::tr("Predicted before any test"), foretold ? std::optional(percent_text(last->predicted->air_filled_porosity.value())) : std::nullopt, reason,
             foretold ? std::vector{explain_predicted_air(*last->predicted)} : std::vector<Explanation>{});
  add_figure(answer, "container_capacity", PotTestText::tr("Water that stayed"), measured(&MeasuredPorosities::container_capacity), not_measured, how);
  add_figure(answer, "theta_0", PotTestText::tr("Filled when flooded"), measured(&MeasuredPorosities::theta_0), not_measured, how);
  const auto bulk = last != nullptr ? last->measured.bulk_density : std::nullopt;
  add_figure(answer, "pot_bulk_density", PotTestText::tr("Weight of a litre in the pot, dry"), bulk ? std::optional(density_text(in_g_l(*bulk), units)) : std::nullopt, not_measured, how);
  const bool fitted = tested != nullptr && tested->calibration && tested->calibration->method != CalibrationMethod::none;
  const QString nothing_learnt = last != nullptr ? PotTestText::tr("the water that stayed was not measured") : reason;
  const auto constant = [&](const char* key, const QString& label, double RetentionConstants::*member, bool known) {
    add_figure(answer, key, label, known ? std::optional(figure(tested->calibration->constants.*member, 2)) : std::nullopt, nothing_learnt, how);
  };
  constant("k_cm_mm", PotTestText::tr("Fitted k, cm mm"), &RetentionConstants::k_cm_mm, fitted);
  constant("grain_fill", PotTestText::tr("Fitted grain fill w"), &RetentionConstants::grain_fill, fitted);
  constant("flooded_fill", PotTestText::tr("Fitted flooded fill f"), &RetentionConstants::flooded_fill, tested != nullptr && tested->calibration && tested->calibration->flooded_fill_measured);
}

void keep_pot_test(ProtocolAnswer& answer, const OpenWorkbook& workbook, const Stored<MixVersion>& version, PotTest test, const TestedMix& tested) {
  const std::string id = workbook.suggest_id(RecordKind::pot_test);
  const bool learnt = tested.calibration && tested.calibration->belief;
  if (learnt) test.fitted = tested.calibration->constants;
  const QString mix = to_qt(version.id.text);
  Change change;
  change.label = PotTestText::tr("pot test %1 of mix %2").arg(to_qt(id), mix).toStdString();
  change.edits.push_back({RecordRef{RecordKind::pot_test, id}, 0, Record(std::move(test))});
  if (learnt) {
    MixVersion now = version.record;
    now.mix.water = tested.calibration->constants;
    now.calibrated_by = RecordRef{RecordKind::pot_test, id};
    change.edits.push_back({ref_to(version.id), version.revision, Record(std::move(now))});
  }
  const ForetoldTest& last = tested.tests.back();
  QString told = PotTestText::tr("Pot test %1 of mix %2").arg(to_qt(id), mix);
  if (last.measured.air_filled_porosity && last.predicted)
    told += PotTestText::tr(": air %1 measured, %2 predicted")
                .arg(to_local(percent_text(last.measured.air_filled_porosity->value())), to_local(percent_text(last.predicted->air_filled_porosity.value())));
  LogEntry entry = event_about(ref_to(version.id), told, today());
  entry.about.push_back({RecordKind::pot_test, id});
  change.log = std::move(entry);
  answer.change = std::move(change);
}

}  // namespace

void answer_pot_test(ProtocolAnswer& answer, const OpenWorkbook& workbook, const ProtocolSheet& sheet, ProtocolReading& read, UnitSystem units) {
  const auto version = workbook.find(Id<MixVersion>{sheet.subject->id});
  if (!version) return;
  const PotTest test = typed_pot_test(sheet, read);
  Problems problems;
  std::optional<TestedMix> tested;
  if (read.complete()) {
    problems = check(test);
    std::optional<KeptPotTest> readable;
    if (problems.empty()) readable = kept_pot_test(test, container_of(workbook, test));
    if (readable) {
      std::vector<KeptPotTest> all = kept_pot_tests(workbook, *version);
      all.push_back(*readable);
      tested = tested_mix(version->record.mix, all);
      if (!tested) answer.faults << PotTestText::tr("A component of the mix has no grain density: measure it first, then the test can be compared.");
    } else if (problems.empty()) {
      answer.faults << PotTestText::tr("These figures make no pot test: look at the volume and the order of the masses.");
    }
  }
  if (tested) {
    add_questions(answer, tested->tests.back().measured.notes, units);
    if (tested->calibration) add_questions(answer, tested->calibration->notes, units);
  }
  const QString reason = problems.empty() ? PotTestText::tr("not measured yet") : sentence_text(problems.front(), units);
  add_pot_figures(answer, tested ? &*tested : nullptr, reason, units);
  if (tested) keep_pot_test(answer, workbook, *version, test, *tested);
  read.finish(answer, problems, units);
}

}  // namespace gritwright::desktop
