// What the page of the repotting day shows, and the sheets it writes.
#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <algorithm>
#include <set>
#include <utility>
#include <vector>

#include "day_page.hpp"
#include "gritwright/formats/root_mass_plan_file.hpp"
#include "gritwright/models/root_plan.hpp"
#include "gritwright/report/day_report.hpp"
#include "gritwright/report/day_sheet.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "gritwright/report/root_plan_sheet.hpp"
#include "models/bench_ranges.hpp"
#include "models/bud_words.hpp"
#include "models/day_certainty.hpp"
#include "models/day_trees_model.hpp"
#include "models/figures.hpp"
#include "models/material_words.hpp"
#include "models/root_plan_desk.hpp"
#include "print/pdf.hpp"
#include "settings.hpp"
#include "text.hpp"
#include "widgets/explanation_popup.hpp"
#include "widgets/figure_panel.hpp"
#include "widgets/gone_notice.hpp"
#include "widgets/how_button.hpp"
#include "widgets/record_form.hpp"
#include "widgets/section_view.hpp"
#include "workers/stopped_work.hpp"

namespace gritwright::desktop {

namespace {

std::vector<WorkKey> keys_from(WorkKey first) {
  std::vector<WorkKey> keys{first};
  for (const WorkKey key : {WorkKey::bud, WorkKey::mix, WorkKey::helper, WorkKey::name}) {
    if (key != first) keys.push_back(key);
  }
  return keys;
}

}  // namespace

void DayPage::show_day(const QString& id) {
  if (id == current_) return;
  leave_tree();
  gone_->leave();
  // What stands in an open cell is still the former day's.
  table_->setCurrentIndex({});
  leave_lines();
  current_ = id;
  book_.end_typing();
  day_form_->refresh(true);
  tree_form_->refresh(true);
  refresh();
}

void DayPage::refresh() {
  if (!isVisible()) return;
  refresh_choices();
  const bool any = day().has_value();
  empty_->setVisible(!any);
  compute();
  show_lines();
  show_answer();
  show_tree();
  show_checklists();
  show_season_answer();
  const auto shown = day();
  order_->setEnabled(any);
  if (shown) order_->setCurrentIndex(order_->findData(static_cast<int>(shown->record.work_by)));
  day_form_->setEnabled(any || gone_->is_holding());
  if (any) gone_->is_back();
  day_form_->refresh(false);
}

void DayPage::refresh_choices() {
  const OpenWorkbook& workbook = book_.workbook();
  std::vector<Stored<RepottingDay>> days = workbook.all<RepottingDay>();
  std::ranges::stable_sort(days, std::greater{}, [](const Stored<RepottingDay>& one) { return one.record.day; });
  days_->clear();
  for (const auto& one : days) {
    const auto done = std::ranges::count_if(one.record.trees, &DayTree::done);
    days_->addItem(tr("%1 %2, %3 of %4 done", "a day, its name, trees done, all its trees").arg(day_text(one.record.day), to_qt(one.record.name)).arg(done).arg(one.record.trees.size()), to_qt(one.id.text));
  }
  int at = days_->findData(current_);
  if (at < 0 && !gone_->hold({RecordKind::repotting_day, current_.toStdString()})) {
    // The day that comes next, else the newest.
    for (int i = 0; i < days_->count(); ++i) {
      if (i == 0 || days[static_cast<std::size_t>(i)].record.day >= today()) at = i;
    }
    leave_lines();
    current_ = at < 0 ? QString() : days_->itemData(at).toString();
    day_form_->refresh(true);
  }
  days_->setCurrentIndex(at);

  std::set<std::string> on_day;
  if (const auto stored = day()) {
    for (const DayTree& tree : stored->record.trees) on_day.insert(tree.tree.text);
  }
  const QString chosen = tree_choice_->currentData().toString();
  tree_choice_->clear();
  for (const auto& tree : workbook.all<Tree>()) {
    if (!on_day.contains(tree.id.text)) tree_choice_->addItem(to_qt(tree_title(tree.id, tree.record)), to_qt(tree.id.text));
  }
  tree_choice_->setCurrentIndex(std::max(0, tree_choice_->findData(chosen)));
  if (tree_choice_->count() == 0) tree_choice_->addItem(workbook.count(RecordKind::tree) == 0 ? tr("no trees yet") : tr("all are on it"));
}

void DayPage::compute() {
  answer_.reset();
  ground_ = {};
  const auto stored = day();
  if (!stored) return;
  try {
    ground_ = ground_of(book_.workbook(), catalogue_, stored->id, book_.calibrations());
  } catch (const WorkbookTrouble& trouble) {
    emit book_.told(sentence_text(trouble.problem()));
    return;
  }
  ground_.plan.order = keys_from(stored->record.work_by);
  if (!ground_.plan.trees.empty()) answer_.emplace(work_out(ground_.plan));
  if (answer_ && answer_->ok()) append((*answer_)->notes, ground_.pot_tests);
  ask_ranges();
}

void DayPage::ask_ranges() {
  if (!answer_ || !answer_->ok()) {
    ranges_job_.cancel();
    ranges_asked_.reset();
    ranges_.reset();
    return;
  }
  if (ranges_asked_ == ground_.plan) return;
  auto spreads = spreads_or_told(ground_.plan, ground_.mixes);
  if (!spreads) return;
  ranges_asked_ = ground_.plan;
  ranges_.reset();
  ranges_job_.start_when_still([this, day = ground_.plan, spreads = std::move(*spreads)](const std::stop_token& stop, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
    stand_behind_the_typing();
    return [this, ranges = day_ranges(day, spreads, {512, 1}, on_all_cores_until(stop))]() mutable {
      ranges_ = std::move(ranges);
      if (isVisible()) show_answer();
    };
  });
}

std::optional<std::vector<MixSpread>> DayPage::spreads_or_told(const PlannedDay& day, const std::vector<DayMixSources>& mixes) {
  try {
    return spreads_of(day, mixes, book_.workbook(), catalogue_, book_.calibrations());
  } catch (const WorkbookTrouble& trouble) {
    emit book_.told(sentence_text(trouble.problem()));
    return std::nullopt;
  }
}

void DayPage::ask_season_ranges(const SeasonGround& season) {
  if (season_ranges_asked_ == season.season) return;
  auto spreads = spreads_or_told(season.season.ground, season.mixes);
  if (!spreads) return;
  season_ranges_asked_ = season.season;
  season_ranges_.reset();
  season_ranges_job_.start_when_still([this, season = season.season, spreads = std::move(*spreads)](const std::stop_token& stop, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
    stand_behind_the_typing();
    return [this, ranges = season_ranges(season, spreads, {256, 1}, on_all_cores_until(stop))]() mutable {
      season_ranges_ = std::move(ranges);
      show_season_answer();
    };
  });
}

void DayPage::finish_ranges() {
  ranges_job_.wait();
  season_ranges_job_.wait();
}

void DayPage::show_lines() {
  std::vector<DayLine> lines;
  const auto stored = day();
  const auto line_of = [&](std::size_t row) {
    const DayTree& tree = stored->record.trees[row];
    DayLine line;
    line.id = to_qt(tree.tree.text);
    line.done = tree.done;
    line.tree = line.id;
    line.plan = to_qt(tree.done ? tree.done_plan : tree.plan_name);
    line.used = tree.used ? to_local(volume_text(in_l(*tree.used), units_)) : QString();
    line.buds = bud_shown(tree.bud);
    line.helper = to_qt(tree.helper);
    line.note = to_qt(tree.note);
    return line;
  };
  std::set<std::size_t> seen;
  if (answer_ && answer_->ok()) {
    const DayAnswer& answer = answer_->value();
    for (const std::size_t place : answer.order) {
      const TreeOfDay& of_day = answer.trees[place];
      const PlannedTree& planned = ground_.plan.trees[of_day.tree];
      const std::size_t row = ground_.rows[of_day.tree];
      DayLine line = line_of(row);
      seen.insert(row);
      line.tree = to_qt(planned.name);
      line.mix = to_qt(planned.mix);
      line.pot = to_qt(planned.pot);
      if (of_day.whole_pot) line.plan = QStringLiteral("\u2013");
      line.in_pot = to_local(volume_text(in_ml(of_day.fill) / 1000, units_));
      line.pour = to_local(volume_text(in_l(of_day.poured), units_));
      line.scoops = to_local(scoops_text(of_day.scoops));
      lines.push_back(std::move(line));
    }
  }
  for (std::size_t row = 0; stored && row < stored->record.trees.size(); ++row) {
    if (seen.contains(row)) continue;
    DayLine line = line_of(row);
    if (const auto left = std::ranges::find(ground_.left_out, stored->record.trees[row].tree, &LeftOutTree::id); left != ground_.left_out.end()) {
      line.tree = to_qt(left->tree);
      line.fault = left->reason;
    }
    lines.push_back(std::move(line));
  }
  const int former = lines_->line_of(tree_in_front_);
  fill_table(std::move(lines));
  if (stored && lines_->line_of(tree_in_front_) < 0) {
    const RecordRef tree{RecordKind::tree, tree_in_front_.toStdString()};
    const bool is_kept = !tree_in_front_.isEmpty() && tree_gone_->hold_part(tree, name_on_day(tree_in_front_), [this] { put_back(); });
    if (is_kept) return table_->setCurrentIndex({});
    tree_in_front_ = lines_->lines().empty() ? QString() : lines_->lines()[static_cast<std::size_t>(std::clamp(former, 0, lines_->rowCount() - 1))].id;
  }
  const int now = lines_->line_of(tree_in_front_);
  if (now >= 0 && table_->currentIndex().row() != now) table_->setCurrentIndex(lines_->index(now, std::max(static_cast<int>(DayTreesModel::Column::tree), table_->currentIndex().column())));
}

void DayPage::fill_table(std::vector<DayLine> lines) {
  // A line that goes hands the table's cursor on, which chooses no other tree.
  filling_ = true;
  lines_->set_lines(std::move(lines));
  filling_ = false;
  fit_columns();
}

void DayPage::leave_lines() {
  fill_table({});
  tree_in_front_.clear();
}

QStringList DayPage::what_is_amiss() const {
  QStringList lines;
  for (const LeftOutTree& left : ground_.left_out) lines << tr("%1 %2").arg(to_qt(left.tree), left.reason);
  for (const RecordRef& ref : ground_.below_zero) lines << tr("By the record %1 is below nothing: count it").arg(to_qt(ref.id));
  return lines;
}

QStringList DayPage::first_words(const DayAnswer& answer) const {
  QStringList lines;
  QStringList short_of;
  for (const GrainToBuy& grain : answer.buy)
    short_of << QStringLiteral("%1 %2").arg(material_words(grain.material), to_local(volume_text(in_l(grain.short_of), units_)));
  if (!short_of.isEmpty()) lines << tr("Short of grain, see \u201cScreen and buy\u201d: %1").arg(comma_list(short_of));
  const auto heaviest = std::ranges::max_element(answer.lifts, {}, &Lift::mass);
  if (heaviest != answer.lifts.end()) lines << tr("Heaviest: %1, %2").arg(to_local(lift_name(*heaviest, translated)), to_local(lift_mass_text(*heaviest, units_, translated)));
  return lines;
}

FigureGroup DayPage::to_mix_figures(const DayAnswer& answer) const {
  FigureGroup group{QStringLiteral("to_mix"), tr("To mix"), {}, true};
  std::vector<Explanation> why;
  for (Explanation& one : explain(ground_.plan, answer)) {
    if (one.figure == "needed_l") why.push_back(std::move(one));
  }
  const auto litres = [this](double value) { return volume_text(value, units_); };
  for (std::size_t i = 0; i < answer.mixes.size(); ++i) {
    const MixOfDay& mix = answer.mixes[i];
    Figure figure{QStringLiteral("to_mix_%1").arg(i), to_qt(mix.name), to_local(litres(in_l(mix.needed))), {}, {why[i]}};
    put_range(figure, ranges_ && i < ranges_->mixes.size() ? std::optional(ranges_->mixes[i].needed_l) : std::nullopt, litres);
    group.figures.push_back(std::move(figure));
  }
  return group;
}

void DayPage::show_answer() {
  DaySections sections;
  QStringList first = what_is_amiss();
  QStringList summary;
  FigureGroup to_mix;
  QString instead = tr("Put trees on the day first.");
  const auto stored = day();
  find_parts_->setEnabled(false);
  computed_list_->show_sections({}, instead);
  if (answer_ && !answer_->ok()) {
    QStringList lines;
    for (const Problem& problem : answer_->problems()) lines << sentence_text(problem, units_);
    instead = lines.join(u'\n');
    first << instead;
  }
  if (answer_ && answer_->ok()) {
    const DayAnswer& answer = answer_->value();
    sections = day_sections(ground_.plan, answer, units_, translated);
    if (ranges_) {
      for (PrintSection& more : litres_certainty(*ranges_, answer.mixes, answer.components, units_)) sections.litres.push_back(std::move(more));
      for (PrintSection& more : bags_certainty(*ranges_, units_)) sections.shelf.push_back(std::move(more));
    }
    find_parts_->setEnabled(!answer.buy.empty());
    const DayChecklist list = day_checklist(ground_.plan, answer, units_, translated);
    std::vector<PrintSection> computed;
    for (const auto& [title, lines] : {std::pair{tr("To buy"), list.buy}, {tr("The evening before"), list.evening}, {tr("In the morning"), list.morning}, {tr("For each tree"), list.each_tree}}) {
      if (!lines.empty()) computed.push_back({title.toStdString(), {PrintTicks{lines}}});
    }
    computed_list_->show_sections(computed);
    const auto learnt = [&](const QString& what, std::size_t count, double share) { summary << tr("%1 by what was used: %2, the median of the last %3").arg(what, to_local(percent_text(share))).arg(count); };
    if (ground_.learnt.settling) learnt(tr("Settling"), ground_.learnt.settlings.size(), ground_.learnt.settling->value());
    if (ground_.learnt.spill) learnt(tr("Spill"), ground_.learnt.spills.size(), ground_.learnt.spill->value());
    first += first_words(answer);
    for (const Note& note : answer.notes) {
      if (note.level == Level::warning || note.code == "day.outside-window") summary << sentence_text(note, units_);
    }
    to_mix = to_mix_figures(answer);
  }
  if (stored) summary.prepend(tr("%1 of %2 trees done, sheet revision %3").arg(std::ranges::count_if(stored->record.trees, &DayTree::done)).arg(stored->record.trees.size()).arg(stored->record.sheet_revision));
  first_->setText(first.join(u'\n'));
  first_->setVisible(!first.isEmpty());
  to_mix_->show_group(to_mix);
  to_mix_->setVisible(!to_mix.figures.empty());
  summary_->setText(summary.join(u'\n'));
  std::vector<PrintSection> litres = sections.litres;
  litres.insert(litres.end(), sections.notes.begin(), sections.notes.end());
  litres_->show_sections(litres, instead);
  shelf_->show_sections(sections.shelf, instead);
  batches_->show_sections(sections.batches, instead);
  lifts_->show_sections(sections.lifts, instead);

  const int chosen = left_mix_->currentIndex();
  left_mix_->clear();
  for (const DayMix& mix : ground_.plan.mixes) left_mix_->addItem(to_qt(mix.name));
  left_mix_->setCurrentIndex(left_mix_->count() == 0 ? -1 : std::clamp(chosen, 0, left_mix_->count() - 1));
  QString made;
  QString left;
  planned_made_.reset();
  likely_left_.reset();
  show_returned();
  if (answer_ && answer_->ok() && left_mix_->currentIndex() >= 0) {
    const auto at = static_cast<std::size_t>(left_mix_->currentIndex());
    const MixOfDay& mix = answer_->value().mixes[at];
    // What was poured in, or is in a tub already, makes the plan's figures wrong: then they are measured.
    const Id<MixVersion>& version = ground_.mixes[at].id;
    const bool poured = std::ranges::any_of(stored->record.trees, [&](const DayTree& tree) { return tree.mix == version && tree.used; });
    if (!returned_mixes_.contains(version.text)) {
      if (mix.batches) planned_made_ = mix.batches->made;
      if (!poured) likely_left_ = mix.left_over;
    }
    if (planned_made_) made = tr("planned: %1, Enter takes it").arg(to_local(volume_text(in_l(*planned_made_), units_)));
    if (likely_left_) left = tr("likely: %1, Enter takes it").arg(to_local(volume_text(in_l(*likely_left_), units_)));
  }
  findChild<QLineEdit*>(QStringLiteral("day_made"))->setPlaceholderText(made);
  findChild<QLineEdit*>(QStringLiteral("day_left"))->setPlaceholderText(left);
}

/// What of the day's mixes became a tub already.
void DayPage::show_returned() {
  QStringList tubs;
  returned_mixes_.clear();
  for (const auto& batch : current_.isEmpty() ? std::vector<Stored<Batch>>() : book_.workbook().all<Batch>()) {
    const Batch& tub = batch.record;
    if (!tub.repotting_day || tub.repotting_day->text != current_.toStdString() || !tub.mix || !tub.made || !tub.left) continue;
    returned_mixes_.insert(tub.mix->text);
    const auto mix = book_.workbook().find(*tub.mix);
    tubs << left_over_words(to_qt(mix ? mix->record.mix.name : tub.mix->text), *tub.made, *tub.left, ref_to(batch.id));
  }
  returned_->setText(tubs.join(u'\n'));
  returned_->setVisible(!tubs.isEmpty());
}

void DayPage::show_tree() {
  if (front_row(day())) tree_gone_->is_back();
  const auto stored = day();
  const auto row = front_row(stored);
  tree_form_->setEnabled(row || tree_gone_->is_holding());
  for (const char* name : {"day_tree_plan_again", "day_tree_remove", "day_tree_mix", "day_tree_pot"}) findChild<QWidget*>(QLatin1String(name))->setEnabled(row.has_value());
  if (!row) {
    if (!tree_gone_->is_holding()) tree_title_->setText(tr("No tree chosen"));
    return;
  }
  const DayTree tree = stored->record.trees[*row];
  last_seen_ = tree;
  day_last_seen_ = to_qt(stored->record.day);
  const int line = lines_->line_of(tree_in_front_);
  tree_title_->setText(line >= 0 ? lines_->lines()[static_cast<std::size_t>(line)].tree : to_qt(tree.tree.text));
  mix_->clear();
  mix_->addItem(tr("none yet"), QString());
  for (const auto& version : book_.workbook().all<MixVersion>()) mix_->addItem(QStringLiteral("%1 %2").arg(to_qt(version.id.text), to_qt(version.record.mix.name)), to_qt(version.id.text));
  const QString mix = tree.mix ? to_qt(tree.mix->text) : QString();
  // The version it was planned with stays to be chosen when it is gone from the record.
  if (mix_->findData(mix) < 0) mix_->addItem(tr("%1, removed").arg(mix), mix);
  mix_->setCurrentIndex(mix_->findData(mix));
  pot_->clear();
  pot_->addItem(tr("none yet"), QString());
  for (const auto& pot : book_.workbook().all<RecordedContainer>()) {
    if (!pot.record.given_away) pot_->addItem(QStringLiteral("%1 %2").arg(to_qt(pot.id.text), to_qt(pot.record.container.name)), to_qt(pot.id.text));
  }
  pot_->setCurrentIndex(std::max(0, pot_->findData(tree.container ? to_qt(tree.container->text) : QString())));
  tree_form_->refresh(false);
}

void DayPage::show_checklists() {
  filling_ = true;
  const auto stored = day();
  for (QListWidget* list : {evening_, morning_}) {
    const int current = list->currentRow();
    list->clear();
    for (std::size_t i = 0; stored && i < stored->record.checklist.size(); ++i) {
      const ChecklistLine& line = stored->record.checklist[i];
      if (line.evening_before != (list == evening_)) continue;
      auto* item = new QListWidgetItem(to_qt(line.text), list);
      item->setFlags(item->flags() | Qt::ItemIsUserCheckable | Qt::ItemIsEditable);
      item->setCheckState(line.done ? Qt::Checked : Qt::Unchecked);
      item->setData(Qt::UserRole, static_cast<qulonglong>(i));
      item->setSizeHint(QSize(0, std::max(26, list->fontMetrics().height() + 8)));
    }
    list->setCurrentRow(std::min(current, list->count() - 1));
  }
  filling_ = false;
}

void DayPage::show_season_answer() {
  if (season_ == nullptr || !season_->isVisible()) return;
  SeasonGround ground;
  try {
    ground = season_of(book_.workbook(), catalogue_, until_, book_.calibrations());
  } catch (const WorkbookTrouble& trouble) {
    emit book_.told(sentence_text(trouble.problem()));
    return;
  }
  std::vector<PrintSection> sections;
  season_figure_ = {QStringLiteral("season"), tr("Season"), {}, {}, {}};
  QString instead = tr("No tree is due by then, as far as the record knows.");
  if (!ground.season.ground.trees.empty()) {
    const auto answer = work_out(ground.season);
    if (answer) {
      sections = season_sheet(ground.season, *answer, units_, translated).sections;
      season_figure_.explanations = explain(ground.season, *answer);
      ask_season_ranges(ground);
      if (season_ranges_) {
        for (PrintSection& more : litres_certainty(*season_ranges_, answer->mixes, answer->components, units_)) sections.push_back(std::move(more));
        for (PrintSection& more : bags_certainty(*season_ranges_, units_)) sections.push_back(std::move(more));
      }
    } else instead = sentence_text(answer.problems().front(), units_);
  }
  if (!ground.left_out.empty()) {
    PrintSection left{tr("Trees that are due and can't be added up yet").toStdString(), {}};
    for (const LeftOutTree& tree : ground.left_out) left.blocks.emplace_back(PrintText{tree.tree + " " + tree.reason.toStdString()});
    sections.push_back(std::move(left));
  }
  season_how_->set_figure(season_figure_);
  season_how_->setVisible(!season_figure_.explanations.empty());
  season_->show_sections(sections, instead);
}

void DayPage::show_season() {
  tabs_->setCurrentIndex(tabs_->count() - 1);
  season_form_->findChild<QWidget*>(QStringLiteral("season_until"))->setFocus();
  show_season_answer();
}

void DayPage::show_how() {
  if (!answer_ || !answer_->ok()) return;
  Figure figure;
  figure.explanations = explain(ground_.plan, answer_->value());
  auto* button = findChild<QPushButton*>(QStringLiteral("day_how"));
  auto* popup = new ExplanationPopup(tr("How the day adds up"), explanation_text(figure), this);
  popup->open_beside(button);
}

// ---- printing ------------------------------------------------------------------------------------------------------------

void DayPage::choose_file(DaySheet sheet) {
  const QString names[] = {tr("day sheet"), tr("batch cards"), tr("pot labels"), tr("root-mass plans"), tr("season")};
  const QString name = names[static_cast<std::size_t>(sheet)];
  const QString path = QFileDialog::getSaveFileName(this, tr("Write as PDF: %1").arg(name), name + QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
  if (path.isEmpty()) return;
  if (write_sheet(sheet, path)) emit book_.told(tr("Saved as %1.").arg(path));
}

bool DayPage::write_sheet(DaySheet sheet, const QString& path) {
  finish_typing();
  bool written = false;
  return book_.attempt([&] { written = write_pdf_of(sheet, path); }) && written;
}

bool DayPage::write_pdf_of(DaySheet sheet, const QString& path) {
  const Paper paper = read_settings().letter_paper ? Paper::letter : Paper::a4;
  const auto written = [&](const auto& document) {
    const auto result = write_pdf(document, path, paper);
    if (!result) emit book_.told(sentence_text(result.problems().front()));
    return result.ok();
  };
  const auto nothing = [this](const QString& why) {
    emit book_.told(why);
    return false;
  };
  if (sheet == DaySheet::season) {
    const SeasonGround ground = season_of(book_.workbook(), catalogue_, until_, book_.calibrations());
    const auto answer = work_out(ground.season);
    return answer ? written(season_sheet(ground.season, *answer, units_, translated)) : nothing(sentence_text(answer.problems().front(), units_));
  }
  compute();
  if (!answer_ || !answer_->ok()) return nothing(tr("There is nothing to print yet: put trees with mix and pot on the day."));
  const DayAnswer& answer = answer_->value();
  if (sheet == DaySheet::cards) return written(batch_cards(ground_.plan, answer, units_, translated));
  if (sheet == DaySheet::labels) return written(pot_labels(ground_.plan, answer, translated));
  if (sheet == DaySheet::day) {
    if (!written(day_sheet(ground_.plan, answer, units_, translated))) return false;
    const auto printed = day();
    if (!printed) return true;
    RepottingDay now = printed->record;
    now.printed_revision = ground_.plan.sheet_revision;
    if (!(now == printed->record)) book_.replace(*printed, now, tr("sheet of repotting day %1 printed").arg(to_qt(now.day)));
    return true;
  }
  PrintDocument all;
  const auto of_day = day();
  for (const DayTree& tree : of_day ? of_day->record.trees : std::vector<DayTree>()) {
    const auto kept = tree.plan ? book_.workbook().find(Id<KeptRootMassPlan>{tree.plan->text}) : std::nullopt;
    if (!kept) continue;
    const auto file = read_root_mass_plan(kept->record.plan, tree.plan->text, {&catalogue_, {}});
    const auto worked = file ? std::optional(work_out(file->plan)) : std::nullopt;
    if (!worked || !*worked) continue;
    PrintDocument one = root_plan_sheet(with_numbers(book_.workbook(), *kept, file->plan), **worked, units_, translated);
    if (all.title.empty()) {
      all.title = tr("Root-mass plans").toStdString();
      all.foot = comma_list({to_qt(all.title), to_qt(of_day->record.day)}).toStdString();
    }
    // One is laid with each tree.
    if (!one.sections.empty()) one.sections.front().new_page = true;
    for (PrintSection& section : one.sections) {
      section.title = with_label(to_qt(one.title), to_qt(section.title)).toStdString();
      all.sections.push_back(std::move(section));
    }
  }
  if (all.sections.empty()) return nothing(tr("No tree of the day has a root-mass plan in the record: plan its root mass first."));
  return written(all);
}

}  // namespace gritwright::desktop
