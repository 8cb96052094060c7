#include "protocols.hpp"

#include <QCoreApplication>
#include <algorithm>

#include "gritwright/models/breakdown.hpp"
#include "gritwright/models/measured_properties.hpp"
#include "gritwright/models/sieve_analysis.hpp"
#include "gritwright/report/measurement_report.hpp"
#include "gritwright/report/text_table.hpp"
#include "protocol_reading.hpp"
#include "record_book.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class ProtocolText {
  Q_DECLARE_TR_FUNCTIONS(Protocols)
};

std::optional<SieveTest> latest_test(const OpenWorkbook& workbook, const std::optional<RecordRef>& subject) {
  if (!subject) return std::nullopt;
  const auto tests = workbook.sieve_tests_of(*subject);
  return tests.empty() ? std::nullopt : std::optional(tests.back().record.test);
}

QString sieve_key(std::size_t row) { return QStringLiteral("sieve_%1").arg(row + 1); }

/// The bag that is measured, its material's typical figures, and what its change becomes.
class OfBag {
 public:
  OfBag(ProtocolAnswer& answer, const OpenWorkbook& workbook, const Catalogue& catalogue, const ProtocolSheet& sheet, ProtocolReading& read, UnitSystem units)
      : answer_(answer), workbook_(workbook), sheet_(sheet), read_(read), units_(units) {
    if (!sheet.subject || sheet.subject->kind != RecordKind::bag) return;
    stored_ = workbook.find(Id<Bag>{sheet.subject->id});
    const Material* const material = stored_ ? catalogue.find(stored_->record.material) : nullptr;
    if (material != nullptr) typical_ = typical_grain(*material);
  }

  void jug() {
    const auto empty = read_.mass("jug");
    const auto filled = read_.mass("filled");
    const auto again = read_.mass("again", false);
    const auto volume = read_.volume_l("volume");
    const auto worked_in = read_.volume_l("worked_in", false);
    const auto moisture = read_.share("moisture", false);
    std::optional<MeasuredBulk> measured;
    std::vector<Explanation> how;
    if (read_.complete()) {
      JugReading reading{*empty, *filled, LooseVolume(*volume), Moisture(moisture.value_or(0)), {}};
      if (worked_in) reading.worked_in = LooseVolume(*worked_in);
      problems_ = check(reading);
      if (problems_.empty() && again) {
        JugReading second = reading;
        second.filled = *again;
        problems_ = check(second);
        if (problems_.empty()) {
          // One fill says how loosely it was poured that time; two say it better.
          const RepeatedFigure both = repeated(in_g(*filled - *empty), in_g(*again - *empty));
          add_questions(answer_, both.notes, units_);
          reading.filled = *empty + mass_g(both.mean);
        }
      }
      if (problems_.empty()) {
        measured = measured_bulk(reading, particle_density());
        how = explain(reading, *measured);
        add_questions(answer_, measured->notes, units_);
      }
    }
    const auto density = [&](const std::optional<BulkDensity>& value) { return value ? std::optional(density_text(in_g_l(*value), units_)) : std::nullopt; };
    const QString not_worked = ProtocolText::tr("the litres after working in are not typed");
    add_figure(answer_, "bulk_density", ProtocolText::tr("Litre weight, loose, dry"), density(measured ? std::optional(measured->loose) : std::nullopt), reason(), how);
    add_figure(answer_, "worked_in_density", ProtocolText::tr("Worked in, dry"), density(measured ? measured->worked_in : std::nullopt), measured ? not_worked : reason(), how);
    add_figure(answer_, "settling", ProtocolText::tr("Settling"), measured && measured->settling ? std::optional(percent_text(measured->settling->value())) : std::nullopt,
               measured ? not_worked : reason(), how);
    if (!measured) return;
    const QString loose = local(*density(measured->loose));
    const QString told = measured->worked_in ? ProtocolText::tr("Weighed a jug of bag %1: %2 loose and dry, %3 worked in").arg(id(), loose, local(*density(measured->worked_in)))
                                             : ProtocolText::tr("Weighed a jug of bag %1: %2 loose and dry").arg(id(), loose);
    keep(ProtocolText::tr("litre weight of bag %1"), told, [&](Bag& bag) {
      bag.bulk_density = measured->loose;
      if (measured->worked_in) bag.worked_in_density = measured->worked_in;
    });
  }

  void settling_of_mix() {
    const auto volume = read_.volume_l("volume");
    const auto worked_in = read_.volume_l("worked_in");
    const auto empty = read_.mass("jug");
    const auto filled = read_.mass("filled");
    const auto moisture = read_.share("moisture", false);
    std::optional<MeasuredBulk> measured;
    std::vector<Explanation> how;
    if (read_.complete()) {
      const JugReading reading{*empty, *filled, LooseVolume(*volume), Moisture(moisture.value_or(0)), LooseVolume(*worked_in)};
      problems_ = check(reading);
      if (problems_.empty()) {
        measured = measured_bulk(reading);
        how = explain(reading, *measured);
        add_questions(answer_, measured->notes, units_);
      }
    }
    add_figure(answer_, "bulk_density", ProtocolText::tr("Litre weight, loose, dry"), measured ? std::optional(density_text(in_g_l(measured->loose), units_)) : std::nullopt, reason(), how);
    add_figure(answer_, "worked_in_density", ProtocolText::tr("Worked in, dry"), measured ? std::optional(density_text(in_g_l(*measured->worked_in), units_)) : std::nullopt, reason(), how);
    add_figure(answer_, "settling", ProtocolText::tr("Settling"), measured ? std::optional(percent_text(measured->settling->value())) : std::nullopt, reason(), how);
    const auto version = workbook_.find(Id<MixVersion>{sheet_.subject->id});
    if (!measured || !version) return;
    MixVersion now = version->record;
    now.mix.settling = *measured->settling;
    now.settling_measured = true;
    Change change;
    change.label = ProtocolText::tr("settling of mix %1").arg(id()).toStdString();
    change.edits.push_back({*sheet_.subject, version->revision, Record(std::move(now))});
    change.log = event_about(*sheet_.subject, ProtocolText::tr("Worked in a jug of mix %1: it settles by %2").arg(id(), local(percent_text(measured->settling->value()))), today());
    answer_.change = std::move(change);
  }

  void displacement() {
    const auto soaked = read_.mass("soaked");
    const auto with_water = read_.mass("jug_with_water");
    const auto with_both = read_.mass("jug_with_both");
    const auto dry = read_.mass("dry");
    std::optional<MeasuredGrain> measured;
    std::vector<Explanation> how;
    if (read_.complete()) {
      const DisplacementReading reading{*soaked, *with_water, *with_both, *dry};
      problems_ = check(reading);
      if (problems_.empty()) {
        measured = measured_grain(reading, skeletal_density(), stored_ ? stored_->record.bulk_density : std::nullopt);
        how = explain(reading, *measured);
        add_questions(answer_, measured->notes, units_);
      }
    }
    add_figure(answer_, "particle_density", ProtocolText::tr("Grain density, dry"),
               measured ? std::optional(density_text(in_g_l(*measured->particle_density), units_)) : std::nullopt, reason(), how);
    add_figure(answer_, "soaked_density", ProtocolText::tr("Soaked grain"), measured ? std::optional(density_text(in_g_l(measured->soaked_density), units_)) : std::nullopt, reason(), how);
    add_figure(answer_, "water_absorption", ProtocolText::tr("Water after 24 h, of dry mass"),
               measured ? std::optional(percent_text(measured->water_absorption->value())) : std::nullopt, reason(), how);
    if (!measured) return;
    keep(ProtocolText::tr("grain density of bag %1"),
         ProtocolText::tr("Measured the grain of bag %1 by displacement: %2, water after 24 h %3")
             .arg(id(), local(density_text(in_g_l(*measured->particle_density), units_)), local(percent_text(measured->water_absorption->value()))),
         [&](Bag& bag) {
           bag.particle_density = measured->particle_density;
           bag.water_absorption = measured->water_absorption;
         });
  }

  void absorption() {
    const auto soaked = read_.mass("soaked");
    const auto dry = read_.mass("dry");
    std::optional<MeasuredAbsorption> measured;
    std::vector<Explanation> how;
    if (read_.complete()) {
      if (!(*dry > Mass{})) problems_.push_back(problem_at("displacement.weighs-nothing", "/dry_g"));
      else if (*dry > *soaked) problems_.push_back(problem_at("displacement.dry-above-soaked", "/dry_g"));
      if (problems_.empty()) {
        measured = measured_absorption(*soaked, *dry, particle_density(), skeletal_density());
        how = explain_absorption(*soaked, *dry);
        add_questions(answer_, measured->notes, units_);
      }
    }
    add_figure(answer_, "water_absorption", ProtocolText::tr("Water after 24 h, of dry mass"), measured ? std::optional(percent_text(measured->value.value())) : std::nullopt, reason(), how);
    if (!measured) return;
    keep(ProtocolText::tr("water absorption of bag %1"), ProtocolText::tr("Soaked grain of bag %1 for 24 h: it took up %2 of its dry mass").arg(id(), local(percent_text(measured->value.value()))),
         [&](Bag& bag) { bag.water_absorption = measured->value; });
  }

  void crumble() {
    const auto before = latest_test(workbook_, sheet_.subject);
    if (!before) {
      answer_.faults << ProtocolText::tr("Sieve this bag first: a crumble test compares with its sieve test.");
      return;
    }
    SieveTest after;
    after.resolution = mass_g(0.1);
    for (std::size_t i = 0; i < before->rows.size(); ++i) {
      const auto retained = read_.mass(sieve_key(i).toUtf8().constData());
      after.rows.push_back({before->rows[i].aperture, retained.value_or(Mass{}), {}});
    }
    after.pan = read_.mass("pan").value_or(Mass{});
    const auto rounds = read_.number("rounds");
    const double in_season = read_.number("rounds_in_season", false).value_or(rounds_per_season);
    std::optional<CrumbleResult> result;
    std::vector<Explanation> how;
    if (read_.complete()) {
      const auto old_grain = analyse(*before);
      const auto new_grain = analyse(after);
      append(problems_, old_grain.problems());
      append(problems_, new_grain.problems());
      if (!(in_season > 0)) problems_.push_back(problem_at("crumble.no-rounds", "/rounds_in_season"));
      if (problems_.empty()) {
        const CrumbleTest test{old_grain->grading, new_grain->grading, *rounds};
        problems_ = check(test);
        if (problems_.empty()) {
          result = crumble_result(test);
          how = explain(test, *result, in_season);
          add_questions(answer_, result->notes, units_);
        }
      }
    }
    const auto plain = [](const std::optional<double>& value, int decimals) { return value ? std::optional(figure(value, decimals)) : std::nullopt; };
    const auto of = [&](double CrumbleResult::*member) { return result ? std::optional((*result).*member) : std::nullopt; };
    const auto season = result ? std::optional(measured_breakdown(*result, in_season).per_season) : std::nullopt;
    add_figure(answer_, "broken", ProtocolText::tr("Broken, of the mass"), result ? std::optional(percent_text(result->broken)) : std::nullopt, reason(), how);
    add_figure(answer_, "breakages_per_round", ProtocolText::tr("Breakages of a grain in a round"), plain(of(&CrumbleResult::breakages_per_round), 4), reason(), how);
    add_figure(answer_, "breakages_per_season", ProtocolText::tr("In a season"), plain(season, 3), reason(), how);
    add_figure(answer_, "modulus", ProtocolText::tr("Modulus of the fragments"), plain(of(&CrumbleResult::modulus), 2), reason(), how);
    if (!result) return;
    keep(ProtocolText::tr("crumble test of bag %1"),
         ProtocolText::tr("Crumble test of bag %1: %2 of the mass broke in %3 rounds").arg(id(), local(percent_text(result->broken)), number_text(*rounds, 4)),
         [&](Bag& bag) { bag.crumbling = Crumbling{result->breakages_per_round, result->modulus, in_season}; });
  }

  void thoroughness() {
    const auto specimen = read_.mass("specimen");
    const auto fallen = read_.mass("fallen");
    std::optional<SieveThoroughness> measured;
    std::vector<Explanation> how;
    if (read_.complete()) {
      if (!(*specimen > Mass{}) || *fallen < Mass{}) problems_.push_back(problem_at("displacement.weighs-nothing", "/specimen_g"));
      else if (*fallen > *specimen) answer_.faults << ProtocolText::tr("More fell through than was weighed: weigh both again.");
      if (problems_.empty() && answer_.faults.isEmpty()) {
        measured = sieve_thoroughness(*specimen, *fallen);
        how = explain_thoroughness(*specimen, *fallen);
        add_questions(answer_, measured->notes, units_);
      }
    }
    const auto share = measured ? std::optional(percent_text(measured->still_passing.value(), 2)) : std::nullopt;
    add_figure(answer_, "still_passing", ProtocolText::tr("Fell through in one more minute"), share, reason(), how);
    if (!measured) return;
    const QString told = measured->thorough ? ProtocolText::tr("The sieving of bag %1 was thorough: %2 fell through in one more minute").arg(id(), local(*share))
                                            : ProtocolText::tr("The sieving of bag %1 was not thorough: %2 fell through in one more minute").arg(id(), local(*share));
    keep_with_test(told);
  }

  void finish() const { read_.finish(answer_, problems_, units_); }

 private:
  [[nodiscard]] QString id() const { return sheet_.subject ? to_qt(sheet_.subject->id) : QString(); }
  [[nodiscard]] static QString local(const std::string& text) { return to_local(text); }
  [[nodiscard]] QString reason() const { return problems_.empty() ? ProtocolText::tr("not measured yet") : sentence_text(problems_.front(), units_); }

  [[nodiscard]] std::optional<ParticleDensity> particle_density() const {
    if (stored_ && stored_->record.particle_density) return stored_->record.particle_density;
    return typical_ ? typical_->particle_density : std::nullopt;
  }
  [[nodiscard]] std::optional<SkeletalDensity> skeletal_density() const { return typical_ ? typical_->skeletal_density : std::nullopt; }

  template <class Set>
  void keep(const QString& label, const QString& told, Set set) {
    if (!stored_) return;
    Bag now = stored_->record;
    set(now);
    problems_ = check(now);
    if (!problems_.empty()) return;
    Change change;
    change.label = label.arg(id()).toStdString();
    change.edits.push_back({*sheet_.subject, stored_->revision, Record(std::move(now))});
    change.log = event_about(*sheet_.subject, told, today());
    answer_.change = std::move(change);
  }

  // The finding belongs to the sieve test it was made on.
  void keep_with_test(const QString& told) {
    if (!stored_) return;
    const auto tests = workbook_.sieve_tests_of(*sheet_.subject);
    if (tests.empty()) {
      answer_.faults << ProtocolText::tr("Keep the sieve test with its bag first: this belongs to a sieve test.");
      return;
    }
    RecordedSieveTest now = tests.back().record;
    if (!now.note.empty()) now.note += "; ";
    now.note += with_plain_spaces(told).toStdString();
    Change change;
    change.label = ProtocolText::tr("thoroughness of sieving bag %1").arg(id()).toStdString();
    change.edits.push_back({ref_to(tests.back().id), tests.back().revision, Record(std::move(now))});
    change.log = event_about(*sheet_.subject, told, today());
    answer_.change = std::move(change);
  }

  ProtocolAnswer& answer_;
  const OpenWorkbook& workbook_;
  const ProtocolSheet& sheet_;
  ProtocolReading& read_;
  UnitSystem units_;
  std::optional<Stored<Bag>> stored_;
  std::optional<GrainProperties> typical_;
  Problems problems_;
};

}  // namespace

std::vector<RecordLine> subjects_of(const OpenWorkbook& workbook, Protocol protocol) {
  constexpr std::size_t most = 200;  // further ones are found by Ctrl+K
  ListFilter newest;
  newest.limit = most;
  if (takes_pot(protocol)) return workbook.list(RecordKind::mix, newest);
  auto lines = workbook.list(RecordKind::bag, newest);
  if (protocol == Protocol::jug) {
    for (RecordLine& mix : workbook.list(RecordKind::mix, newest)) lines.push_back(std::move(mix));
  }
  return lines;
}

std::vector<ProtocolField> fields_of(const OpenWorkbook& workbook, const ProtocolSheet& sheet) {
  const auto field = [](const char* key, const QString& label, Kind kind, const QString& hint) { return ProtocolField{QLatin1String(key), label, kind, hint}; };
  const bool of_mix = sheet.subject && sheet.subject->kind == RecordKind::mix;
  std::vector<ProtocolField> fields;
  switch (sheet.protocol) {
    case Protocol::jug:
      fields = {field("jug", ProtocolText::tr("Empty jug"), Kind::mass, ProtocolText::tr("weighed dry")), field("filled", ProtocolText::tr("Jug with grain"), Kind::mass, ProtocolText::tr("poured loosely, struck off level"))};
      if (!of_mix) fields.push_back(field("again", ProtocolText::tr("Filled once more"), Kind::mass, ProtocolText::tr("emptied and poured again; may stay empty")));
      fields.push_back(field("volume", ProtocolText::tr("The jug holds"), Kind::volume, ProtocolText::tr("by weighing it full of water")));
      fields.push_back(field("worked_in", ProtocolText::tr("Worked in, it fills"), Kind::volume, of_mix ? ProtocolText::tr("read at the mark") : ProtocolText::tr("read at the mark; may stay empty")));
      fields.push_back(field("moisture", ProtocolText::tr("Moisture of the grain"), Kind::percent, ProtocolText::tr("of the dry mass; empty: dry")));
      break;
    case Protocol::displacement:
      fields = {field("soaked", ProtocolText::tr("Soaked, dabbed dry"), Kind::mass, ProtocolText::tr("after 24 h under water")),
                field("jug_with_water", ProtocolText::tr("Jug with water"), Kind::mass, ProtocolText::tr("filled to the mark, no grain")),
                field("jug_with_both", ProtocolText::tr("Jug, water and grain"), Kind::mass, ProtocolText::tr("to the same mark")), field("dry", ProtocolText::tr("Dried grain"), Kind::mass, ProtocolText::tr("the same grain"))};
      break;
    case Protocol::absorption:
      fields = {field("soaked", ProtocolText::tr("Soaked, dabbed dry"), Kind::mass, ProtocolText::tr("after 24 h under water")), field("dry", ProtocolText::tr("Dried grain"), Kind::mass, ProtocolText::tr("the same grain"))};
      break;
    case Protocol::crumble: {
      fields = {field("rounds", ProtocolText::tr("Rounds"), Kind::number, ProtocolText::tr("of shaking, or of freezing and thawing")),
                field("rounds_in_season", ProtocolText::tr("Rounds that make a season"), Kind::number, ProtocolText::tr("empty: %1").arg(number_text(rounds_per_season, 3)))};
      const auto before = latest_test(workbook, sheet.subject);
      if (!before) break;
      for (std::size_t i = 0; i < before->rows.size(); ++i) {
        fields.push_back({sieve_key(i), ProtocolText::tr("On %1").arg(to_local(size_text(before->rows[i].aperture, UnitSystem::metric))), Kind::mass, ProtocolText::tr("sieved again")});
      }
      fields.push_back(field("pan", ProtocolText::tr("In the pan"), Kind::mass, ProtocolText::tr("sieved again")));
      break;
    }
    case Protocol::thoroughness:
      fields = {field("specimen", ProtocolText::tr("Whole sample"), Kind::mass, ProtocolText::tr("what went onto the stack")), field("fallen", ProtocolText::tr("Fell through"), Kind::mass, ProtocolText::tr("all sieves together, in one more minute"))};
      break;
    case Protocol::pot_by_balance:
    case Protocol::pot_by_volumes:
      if (sheet.container.isEmpty()) fields.push_back(field("depth", ProtocolText::tr("Filled depth"), Kind::length, ProtocolText::tr("of the mix, straight walls")));
      fields.push_back(field("volume", ProtocolText::tr("Volume of mix in it"), Kind::pot_volume, sheet.container.isEmpty() ? ProtocolText::tr("by a water fill") : ProtocolText::tr("empty: to the pot's fill line")));
      if (sheet.protocol == Protocol::pot_by_balance) {
        fields.push_back(field("tare", ProtocolText::tr("Empty pot"), Kind::mass, ProtocolText::tr("with mesh and wire")));
        fields.push_back(field("flooded", ProtocolText::tr("Flooded, sealed"), Kind::mass, ProtocolText::tr("slowly from below; may stay empty")));
        fields.push_back(field("drained", ProtocolText::tr("Drained"), Kind::mass, ProtocolText::tr("half an hour, level")));
        fields.push_back(field("dry", ProtocolText::tr("Dry, with the pot"), Kind::mass, ProtocolText::tr("the same mix")));
      } else {
        fields.push_back(field("poured", ProtocolText::tr("Water poured in"), Kind::pot_volume, ProtocolText::tr("until a shiny film stands")));
        fields.push_back(field("caught", ProtocolText::tr("Water caught"), Kind::pot_volume, ProtocolText::tr("half an hour later")));
      }
      break;
  }
  return fields;
}

ProtocolAnswer answer_of(const OpenWorkbook& workbook, const Catalogue& catalogue, const ProtocolSheet& sheet, UnitSystem units) {
  ProtocolAnswer answer;
  answer.figures.key = QStringLiteral("measured");
  answer.figures.title = ProtocolText::tr("Measured");
  if (!sheet.subject) {
    answer.waiting = takes_pot(sheet.protocol) ? ProtocolText::tr("Keep a mix first: a pot test is a test of a mix.") : ProtocolText::tr("Receive a bag first: what is measured is kept with its bag.");
    return answer;
  }
  ProtocolReading read(workbook, sheet);
  if (takes_pot(sheet.protocol)) {
    answer_pot_test(answer, workbook, sheet, read, units);
    return answer;
  }
  OfBag bag(answer, workbook, catalogue, sheet, read, units);
  switch (sheet.protocol) {
    case Protocol::jug:
      if (sheet.subject->kind == RecordKind::mix) bag.settling_of_mix();
      else bag.jug();
      break;
    case Protocol::displacement: bag.displacement(); break;
    case Protocol::absorption: bag.absorption(); break;
    case Protocol::crumble: bag.crumble(); break;
    case Protocol::thoroughness: bag.thoroughness(); break;
    case Protocol::pot_by_balance:
    case Protocol::pot_by_volumes: break;
  }
  bag.finish();
  return answer;
}

}  // namespace gritwright::desktop
