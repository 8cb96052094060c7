// What goes between the bench and the record: grain laid out, tests, fractions and mixes kept, kept mixes laid out again.
#include "record_pages.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>
#include <string>
#include <utility>

#include "gritwright/formats/record_file.hpp"
#include "gritwright/formats/typed_quantity.hpp"
#include "gritwright/models/repeated_sieving.hpp"
#include "gritwright/models/screening.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "main_window.hpp"
#include "models/find_problem.hpp"
#include "models/parts_finder.hpp"
#include "models/record_surroundings.hpp"
#include "models/screening_view.hpp"
#include "models/sheets_from_records.hpp"
#include "models/tree_groups.hpp"
#include "pages/bags_page.hpp"
#include "pages/mix_page.hpp"
#include "pages/sieving_page.hpp"
#include "text.hpp"
#include "widgets/find_panel.hpp"
#include "widgets/parts_panel.hpp"
#include "widgets/pot_form.hpp"
#include "widgets/screening_panel.hpp"

namespace gritwright::desktop {

namespace {

/// Whatever its day. As written, because a length that went through a file can differ in its last binary digit.
bool is_same_mix(const MixVersion& kept, MixVersion now) {
  now.day = kept.day;
  // A mix that was kept without a band is the same mix in any.
  if (!kept.wanted_band) now.wanted_band.reset();
  return write_record(Record(kept)) == write_record(Record(std::move(now)));
}

constexpr QLatin1String no_parts("0");

/// What tests or the usual figure say of a mix is no word of the grower's: with other grain it must not stay.
void leave_settling_untyped(Bench& bench, const QString& label, const QString& place) {
  const Settling kept = bench.evaluation().settling;
  const QString typed = bench.state().settling;
  const auto type = [&](const QString& text) { bench.edit(label, place, [&text](BenchState& state) { state.settling = text; }); };
  type(QString());
  constexpr double same = 1e-6;
  if (std::abs(bench.evaluation().settling.value() - kept.value()) > same) type(typed);
}

}  // namespace

bool RecordPages::lay_on_bench(const QString& bag, const QString& parts) {
  const auto& components = bench_.state().components;
  const auto open = std::ranges::find(components, bag, &ComponentSheet::bag);
  if (open != components.end()) {
    bench_.set_current_component(static_cast<int>(open - components.begin()));
    return true;
  }
  auto sheet = sheet_of_grain(book_.workbook(), bag);
  if (!sheet) return false;
  const auto current = static_cast<std::size_t>(bench_.current_component());
  const bool untested = evaluate_component(*sheet, bench_.catalogue()).state == SheetState::empty;
  // In a mix its printed size stands in for a test; to be graded it begins with empty pans.
  if (untested && parts != no_parts) sheet = by_printed_size(book_.workbook(), *sheet);
  if (untested && !sheet->sheet.predicted && current < components.size()) sheet->sheet = same_stack(components[current].sheet);
  sheet->parts = parts;
  if (!window_.put_component(*sheet)) return false;
  if (untested && sheet->sheet.predicted) emit bench_.told(prediction_words());
  return true;
}

void RecordPages::grade(const QString& bag) {
  // Looking at a bag adds nothing to the mix on the bench.
  if (!lay_on_bench(bag, no_parts)) return;
  window_.show_sieving();
  window_.sieving_page().show_sheet();
}

void RecordPages::put_in_mix(const QString& bag) {
  if (bag.isEmpty() || !lay_on_bench(bag, QStringLiteral("1"))) return;
  const auto index = static_cast<std::size_t>(bench_.current_component());
  const ComponentSheet& sheet = bench_.state().components[index];
  // It lay there to be graded; now it is wanted.
  if (const QString parts = sheet.parts.trimmed(); parts.isEmpty() || parts == no_parts) {
    bench_.edit(PartsPanel::tr("parts of %1").arg(sheet.name), {}, [&](BenchState& state) { state.components[index].parts = QStringLiteral("1"); });
  }
  window_.show_mixes();
  window_.mix_page().show_parts();
}

void RecordPages::take_pot(const QString& id) {
  const auto pot = book_.workbook().find(Id<RecordedContainer>{id.toStdString()});
  if (pot) window_.put_pot(pot->record.container, tr("pot %1").arg(id));
}

void RecordPages::use_sieve_set(const QString& id) {
  const auto set = book_.workbook().find(Id<SieveSet>{id.toStdString()});
  const auto index = static_cast<std::size_t>(bench_.current_component());
  if (!set || index >= bench_.state().components.size()) return;
  const QString name = bench_.state().components[index].name;
  bench_.edit(tr("sieves of %1").arg(name), {}, [&](BenchState& state) {
    SieveSheet& sheet = state.components[index].sheet;
    drop_prediction(sheet, SieveSheet(sheet));
    // What was weighed stays with its opening; openings the set lacks go if nothing stands on them.
    std::vector<PanText> rows;
    for (const OwnedSieve& sieve : set->record.sieves) rows.push_back({sieve.label.empty() ? number_text(in_mm(sieve.aperture), 6) : to_qt(sieve.label), {}, {}});
    for (const PanText& was : sheet.rows) {
      const auto same = std::ranges::find_if(rows, [&](const PanText& row) { return is_same_opening(row.aperture, was.aperture); });
      if (same != rows.end()) *same = was;
      else if (!was.retained.trimmed().isEmpty()) rows.push_back(was);
    }
    const auto size = [](const PanText& row) {
      const auto aperture = parse_aperture(row.aperture.toStdString());
      return aperture ? in_mm(*aperture) : 0;
    };
    std::ranges::stable_sort(rows, std::greater{}, size);
    sheet.rows = std::move(rows);
    for (ReplicateText& sample : sheet.replicates) sample.retained.clear();
    if (set->record.diameter) sheet.sieve_diameter = number_text(in_mm(*set->record.diameter), 6);
  });
}

QString RecordPages::bag_of_sheet(const ComponentSheet& component) {
  if (!component.bag.isEmpty()) return component.bag;
  if (component.material.isEmpty()) {
    emit bench_.told(tr("Choose the material on the Grain tab first: a bag is of some material."));
    return {};
  }
  Bag fresh;
  fresh.material = component.material.toStdString();
  fresh.lot = component.name.trimmed().toStdString();
  fresh.received = today();
  const QString id = to_qt(book_.workbook().suggest_id(RecordKind::bag, fresh.material));
  const QString added = book_.add(fresh, tr("bag %1").arg(id), id);
  if (!added.isEmpty()) kept_from_bench();
  return added;
}

int RecordPages::save_tests(const QString& bag, const ComponentSheet& component, const ComponentEvaluation& evaluation) {
  std::vector<SieveTest> samples{*evaluation.test};
  for (const ReplicateEvaluation& replicate : evaluation.replicates) {
    if (replicate.state == SheetState::finished && replicate.test) samples.push_back(*replicate.test);
  }
  const RecordRef of = gradable_called(book_.workbook(), bag).value_or(RecordRef{RecordKind::bag, bag.toStdString()});
  auto kept = book_.workbook().sieve_tests_of(of);
  Change change;
  change.label = tr("sieve test of bag %1").arg(bag).toStdString();
  // Where samples were taken off the sheet, what is left of it is a sheet of its own.
  std::set<std::string> on_the_sheet;
  const std::size_t first = kept.empty() ? 0 : first_of_newest_sheet(kept);
  if (samples.size() >= kept.size() - first)
    for (std::size_t i = first; i < kept.size(); ++i) on_the_sheet.insert(kept[i].id.text);
  int replicate = 0;
  for (SieveTest& sample : samples) {
    auto already = std::ranges::find_if(kept, [&](const Stored<RecordedSieveTest>& one) { return same_weighings(one.record.test, sample); });
    const auto corrected = [&](const Stored<RecordedSieveTest>& one) { return on_the_sheet.contains(one.id.text) && is_put_right(one.record.test, sample); };
    if (already == kept.end()) already = std::ranges::find_if(kept, corrected);
    replicate = already != kept.end() ? already->record.replicate : replicate + 1;
    if (already != kept.end()) {
      const Stored<RecordedSieveTest> was = *already;
      kept.erase(already);
      if (same_sieving(was.record.test, sample)) continue;
      RecordedSieveTest now = was.record;
      now.test = std::move(sample);
      now.test.material = was.record.test.material;
      now.test.lot = was.record.test.lot;
      now.test.date = was.record.test.date;
      now.test.bulk_density = was.record.test.bulk_density;
      now.test.particle_density = was.record.test.particle_density;
      change.edits.push_back({ref_to(was.id), was.revision, Record(std::move(now))});
      continue;
    }
    RecordedSieveTest record;
    record.test = std::move(sample);
    record.of = of;
    if (!component.material.isEmpty()) record.test.material = component.material.toStdString();
    if (!record.test.date) record.test.date = today();
    record.replicate = replicate;
    change.edits.push_back({RecordRef{RecordKind::sieve_test, {}}, 0, Record(std::move(record))});
  }
  const int added = static_cast<int>(change.edits.size());
  if (added == 0) return 0;
  change.log = event_about(of, tr("Graded bag %1").arg(bag), today());
  return book_.apply(std::move(change)) ? added : -1;
}

void RecordPages::save_sheet() {
  const auto index = static_cast<std::size_t>(bench_.current_component());
  if (index >= bench_.state().components.size()) return;
  const ComponentSheet component = bench_.state().components[index];
  const ComponentEvaluation& evaluation = bench_.evaluation().components[index];
  if (component.sheet.predicted) return emit bench_.told(prediction_words());
  if (evaluation.state != SheetState::finished || !evaluation.test) {
    emit bench_.told(tr("The sieve test is kept with its bag once the pan is typed and no fault is left; until then it stays on the bench."));
    return;
  }
  const QString bag = bag_of_sheet(component);
  if (bag.isEmpty()) return;
  const int added = save_tests(bag, component, evaluation);
  if (added < 0) return;
  if (added == 0) return emit bench_.told(tr("Bag %1 has this sieve test already.").arg(bag));
  bench_.edit(tr("bag of %1").arg(component.name), {}, [&](BenchState& state) { state.components[index].bag = bag; });
  kept_from_bench();
  emit bench_.told(tr("Kept %n sieve test(s) with bag %1.", nullptr, added).arg(bag));
}

void RecordPages::keep_fractions() {
  // Closed afterwards it would type its figure into the next screening.
  window_.sieving_page().screening().end_typing();
  catch_up();
  const ScreeningView view = screening_view(bench_);
  const auto& bag = bench_.surroundings().bag;
  const auto index = static_cast<std::size_t>(bench_.current_component());
  for (const QString& fault : {view.day_fault, view.far_from_screened}) {
    if (!fault.isEmpty()) return emit bench_.told(fault);
  }
  if (!view.is_measured || !view.screened) return emit bench_.told(tr("Weigh every fraction first, then they can be kept."));
  if (!bag) return emit bench_.told(tr("Keep the sieve test with its bag first: fractions come from a bag."));
  const QString bag_id = bench_.state().components[index].bag;
  const RecordRef from{RecordKind::bag, bag_id.toStdString()};
  Change change;
  change.label = tr("screening of bag %1").arg(bag_id).toStdString();
  const auto booked = [&](const RecordRef& holder, StockReason reason, Mass mass, const RecordRef& other) {
    StockEntry entry;
    entry.holder = holder;
    entry.reason = reason;
    entry.change = mass;
    entry.other = other;
    entry.day = view.day;
    change.edits.push_back({RecordRef{RecordKind::stock_entry, {}}, 0, Record(std::move(entry))});
  };
  if (!book_.workbook().stock_of(from)) {
    // A bag that was never taken in gives nothing away before it is.
    if (auto received = arrival_of(from, *bag, view.day)) change.edits.push_back({RecordRef{RecordKind::stock_entry, {}}, 0, Record(*std::move(received))});
  }
  int number = 1;
  for (Fraction& fraction : fractions_of(view, *bag, bag_id)) {
    RecordRef tub;
    do {
      tub = RecordRef{RecordKind::fraction, QStringLiteral("%1/%2").arg(bag_id).arg(number++).toStdString()};
    } while (book_.workbook().find_even_deleted(tub));
    const Mass mass = *fraction.dry_mass;
    change.edits.push_back({tub, 0, Record(std::move(fraction))});
    booked(tub, StockReason::screened_into, mass, from);
    booked(from, StockReason::screened_out_of, -out_of_bag(mass, view.loss.value_or(Loss{})), tub);
  }
  // What went up as dust is no longer in the bag either.
  if (view.loss && view.loss->value() > 0) booked(from, StockReason::spilt, *view.screened * -view.loss->value(), from);
  change.log = event_about(from, tr("Screened bag %1. %2").arg(bag_id, view.balance), view.day);
  if (!book_.apply(std::move(change))) return;
  bench_.edit(tr("screening kept of %1").arg(bag_id), {}, [&](BenchState& state) { state.components[index].screening = {}; });
  kept_from_bench();
  emit bench_.told(tr("The fractions of bag %1 are in stock.").arg(bag_id));
}

void RecordPages::keep_mix() {
  const BenchEvaluation& evaluation = bench_.evaluation();
  if (!evaluation.mix) return emit bench_.told(tr("There is no mix to keep yet: finish the sieve tests and give them parts."));
  MixVersion version;
  version.mix = *evaluation.mix;
  version.mix.name = bench_.state().mix_name.trimmed().toStdString();
  if (version.mix.name.empty()) {
    window_.show_mixes();
    window_.mix_page().ask_for_name();
    return emit bench_.told(tr("Give the mix a name first."));
  }
  for (const std::size_t i : evaluation.mixed) {
    version.sources.push_back(grain_called(book_.workbook(), bench_.state().components[i].bag));
  }
  version.day = today();
  version.settling_measured = evaluation.settled_by == SettledBy::jug;
  if (evaluation.calibration) version.calibrated_by = evaluation.calibration->calibrated_by;
  if (evaluation.band) version.wanted_band = SizeBand{evaluation.band->from, evaluation.band->to};
  std::string id;
  for (const auto& kept : book_.workbook().all<MixVersion>()) {
    if (kept.record.mix.name != version.mix.name) continue;
    if (is_same_mix(kept.record, version)) return emit bench_.told(tr("This mix is kept already, as %1.").arg(to_qt(kept.id.text)));
    id = book_.workbook().next_version(kept.id).text;
  }
  if (id.empty()) id = book_.workbook().suggest_id(RecordKind::mix);
  const QString shown = to_qt(id);
  const RecordRef ref{RecordKind::mix, id};
  if (book_.add(version, tr("mix %1").arg(shown), shown, event_about(ref, tr("Kept mix %1, %2").arg(shown, to_qt(version.mix.name)), today())).isEmpty()) return;
  kept_from_bench();
  emit bench_.told(tr("Kept as %1.").arg(shown));
}

void RecordPages::keep_recipe(int recipe, bool reserve) {
  const FoundParts* const found = window_.mix_page().finder().found();
  if (found == nullptr || recipe < 0 || recipe >= static_cast<int>(found->listed().size())) return;
  QString name = bench_.state().mix_name.trimmed();
  const auto mixes = book_.workbook().all<MixVersion>();
  // The name of a mix that is open stands for that mix; only one that was typed for this recipe is its own.
  const bool is_taken = std::ranges::any_of(mixes, [&](const auto& kept) { return to_qt(kept.record.mix.name) == name; });
  if (name.isEmpty() || is_taken) name = bench_.state().find.profile;
  if (name.isEmpty()) name = tr("found mix");
  MixVersion version = version_of(*found, static_cast<std::size_t>(recipe), name.toStdString(), today());
  if (reserve) version.reserved = found->setup.need;
  std::string id;
  for (const auto& kept : mixes) {
    if (kept.record.mix.name != version.mix.name) continue;
    if (is_same_mix(kept.record, version)) return emit bench_.told(tr("This mix is kept already, as %1.").arg(to_qt(kept.id.text)));
    id = book_.workbook().next_version(kept.id).text;
  }
  if (id.empty()) id = book_.workbook().suggest_id(RecordKind::mix);
  const QString shown = to_qt(id);
  const LogEntry event = event_about({RecordKind::mix, id}, reserve ? tr("Found mix %1, %2, and reserved its grain").arg(shown, name) : tr("Found mix %1, %2").arg(shown, name), today());
  const auto reserved = version.reserved;
  if (book_.add(std::move(version), tr("mix %1").arg(shown), shown, event).isEmpty()) return;
  QStringList sentences = lay_mix(shown, true);
  kept_from_bench();
  sentences.prepend(reserved ? tr("Kept as %1 and laid on the bench; its grain for %2 is kept from other searches until it is mixed.")
                                  .arg(shown, to_local(volume_text(in_l(*reserved), bench_.units())))
                            : tr("Kept as %1 and laid on the bench.").arg(shown));
  emit bench_.told(sentences.join(u' '));
}

bool RecordPages::has_unkept_test(std::size_t index) const {
  const ComponentSheet& component = bench_.state().components[index];
  const auto weighed = [](const PanText& pan) { return !pan.retained.trimmed().isEmpty(); };
  if (component.sheet.predicted || !(weighed(component.sheet.pan) || std::ranges::any_of(component.sheet.rows, weighed))) return false;
  const ComponentEvaluation& evaluation = bench_.evaluation().components[index];
  std::vector<std::optional<SieveTest>> samples{evaluation.test};
  for (const ReplicateEvaluation& replicate : evaluation.replicates) samples.push_back(replicate.test);
  const auto of = gradable_called(book_.workbook(), component.bag);
  if (!of) return true;
  const auto kept = book_.workbook().sieve_tests_of(*of);
  return !std::ranges::all_of(samples, [&](const std::optional<SieveTest>& sample) {
    return sample && std::ranges::any_of(kept, [&](const Stored<RecordedSieveTest>& one) { return same_sieving(one.record.test, *sample); });
  });
}

bool RecordPages::only_looked_at(std::size_t index) const {
  const ComponentSheet& component = bench_.state().components[index];
  if (component.bag.isEmpty() || component.parts.trimmed() != QStringLiteral("0") || component.screening != ScreeningText{} || has_unkept_test(index)) return false;
  const auto kept = sheet_of_grain(book_.workbook(), component.bag);
  return kept && kept->grain == component.grain;
}

std::optional<std::size_t> RecordPages::on_bench_only(const Component& component) const {
  const BenchState& state = bench_.state();
  for (std::size_t i = 0; i < state.components.size(); ++i) {
    const auto& there = bench_.evaluation().components[i].component;
    if (state.components[i].bag.isEmpty() && there && there->name == component.name && there->sizes == component.sizes && has_unkept_test(i)) return i;
  }
  return std::nullopt;
}

std::optional<SpeciesProfile> RecordPages::profile_called(const QString& name) const {
  for (TreeGroup& group : tree_groups(book_.workbook()))
    if (to_qt(group.profile.name) == name) return std::move(group.profile);
  return std::nullopt;
}

void RecordPages::open_mix(const QString& id) {
  const QStringList sentences = lay_mix(id, false);
  if (!sentences.isEmpty()) emit bench_.told(sentences.join(u' '));
}

QStringList RecordPages::lay_mix(const QString& id, bool has_band) {
  const auto stored = book_.workbook().find(Id<MixVersion>{id.toStdString()});
  if (!stored) return {};
  std::vector<ComponentSheet> sheets;
  std::set<std::size_t> laid;
  QStringList without;
  const auto& components = stored->record.mix.components;
  for (std::size_t i = 0; i < components.size() && sheets.size() < most_components; ++i) {
    const auto source = i < stored->record.sources.size() ? stored->record.sources[i] : std::nullopt;
    auto sheet = source ? sheet_of_grain(book_.workbook(), to_qt(source->id)) : std::nullopt;
    if (const auto own = source ? std::nullopt : on_bench_only(components[i])) {
      sheet = bench_.state().components[*own];
      laid.insert(*own);
    } else if (!sheet || evaluate_component(*sheet, bench_.catalogue()).state == SheetState::empty) {
      // No sieve test stands behind it: the version says how the grain was known when the mix was designed.
      const QString bag = sheet ? sheet->bag : QString();
      sheet = sheet_as_designed(components[i], bench_.catalogue());
      sheet->bag = bag;
      if (evaluate_component(*sheet, bench_.catalogue()).state == SheetState::empty) without << sheet->name;
    }
    sheet->parts = number_text(components[i].parts.value(), 6);
    sheets.push_back(std::move(*sheet));
  }
  // What was typed and is kept nowhere else stays on the bench, outside the mix.
  QStringList left;
  for (std::size_t i = 0; i < bench_.state().components.size(); ++i) {
    if (laid.contains(i) || !has_unkept_test(i)) continue;
    if (sheets.size() == most_components) {
      left << bench_.state().components[i].name;
      continue;
    }
    sheets.push_back(bench_.state().components[i]);
    sheets.back().parts = QStringLiteral("0");
  }
  const QString name = to_qt(stored->record.mix.name);
  const std::optional<SizeBand>& wanted = stored->record.wanted_band;
  const std::optional<SpeciesProfile> group = has_band ? std::nullopt : profile_called(name);
  const QString opened = tr("mix %1 opened").arg(id);
  const QString place = QStringLiteral("open/") + id;
  bench_.edit(opened, place, [&](BenchState& state) {
    state.components = sheets;
    state.mix_name = name;
    const auto percent = [](const auto& share) { return share ? number_text(100 * share->value(), 6) : QString(); };
    state.settling = percent(stored->record.mix.settling);
    state.spill = percent(stored->record.mix.spill);
    if (!has_band) give_band_back(state);
    if (!has_band && wanted) borrow_band(state, *wanted);
    else if (group) borrow_band(state, *group);
  });
  leave_settling_untyped(bench_, opened, place);
  bench_.set_current_component(0);
  window_.mix_page().show_by_hand();
  window_.show_mixes();
  QStringList sentences;
  if (components.size() > most_components) sentences << tr("The bench holds %1 components: the others of mix %2 were left out.").arg(most_components).arg(id);
  if (!without.isEmpty()) sentences << tr("No bag stands behind %1: type its sieve test.").arg(comma_list(without));
  if (!left.isEmpty()) sentences << tr("The sieve test of %1 is not kept and left the bench: undo brings it back.").arg(comma_list(left));
  return sentences;
}

}  // namespace gritwright::desktop
