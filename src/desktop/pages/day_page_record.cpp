// What the page of the repotting day writes into the record.
#include <QComboBox>
#include <QLineEdit>
#include <QTabWidget>
#include <algorithm>
#include <tuple>
#include <utility>

#include "day_page.hpp"
#include "day_typing.hpp"
#include "models/bud_words.hpp"
#include "models/day_trees_model.hpp"
#include "text.hpp"
#include "widgets/gone_notice.hpp"
#include "widgets/record_form.hpp"

namespace gritwright::desktop {

namespace {

std::optional<std::size_t> row_of_tree(const RepottingDay& day, const QString& tree) {
  const auto found = std::ranges::find(day.trees, tree.toStdString(), [](const DayTree& one) { return one.tree.text; });
  return found == day.trees.end() ? std::nullopt : std::optional(static_cast<std::size_t>(found - day.trees.begin()));
}

/// Plans are named A, B, C, from the best on.
std::string plan_at(std::size_t at) { return std::string(1, static_cast<char>('A' + at)); }
/// Empty where no plan is named so.
std::optional<std::size_t> place_of_plan(const TreePlan& plan, const std::string& name) {
  for (std::size_t at = 0; at < plan.fills.size(); ++at) {
    if (plan_at(at) == name) return at;
  }
  return std::nullopt;
}

/// A single letter means the plan of that name, however it was typed.
std::string plan_name_typed(const QString& text) {
  const QString name = text.trimmed();
  return trimmed_text(name.size() == 1 ? name.toUpper() : name);
}

}  // namespace

std::optional<Stored<RepottingDay>> DayPage::day() const {
  if (current_.isEmpty()) return std::nullopt;
  try {
    return book_.workbook().find(Id<RepottingDay>{current_.toStdString()});
  } catch (const WorkbookTrouble& trouble) {
    emit book_.told(sentence_text(trouble.problem()));
    return std::nullopt;
  }
}

std::optional<std::size_t> DayPage::front_row(const std::optional<Stored<RepottingDay>>& stored) const {
  return stored ? row_of_tree(stored->record, tree_in_front_) : std::nullopt;
}

Problem DayPage::changed_elsewhere() const {
  return {"workbook.stale-change", {}, {{"kind", std::string(kind_name(RecordKind::repotting_day))}, {"id", current_.toStdString()}}};
}

QString DayPage::name_on_day(const QString& tree) const { return tr("%1 of repotting day %2").arg(tr("tree %1").arg(tree), day_last_seen_); }

void DayPage::finish_typing() {
  for (RecordForm* form : {day_form_, tree_form_}) form->end_typing();
  book_.end_typing();
}

void DayPage::leave_tree() {
  finish_typing();
  if (!tree_gone_->is_holding() && tree_form_->has_typing()) emit book_.told(GoneNotice::not_saved_words(name_on_day(tree_in_front_), semicolon_list(tree_form_->typed_texts())));
  tree_gone_->leave();
}

void DayPage::bring_to_front(const QString& tree) {
  if (tree == tree_in_front_) return;
  leave_tree();
  tree_in_front_ = tree;
  tree_form_->refresh(true);
  show_tree();
}

void DayPage::put_back() {
  DayTree back = last_seen_;
  // Its tick went with it: nothing of it stands in the history.
  back.done = false;
  back.done_plan.clear();
  const Problems problems = save(tr("tree %1").arg(tree_in_front_), [&](RepottingDay& d) { d.trees.push_back(back); });
  if (!problems.empty()) emit book_.told(sentence_text(problems.front(), units_));
  book_.end_typing();
}

std::function<QString()> DayPage::shown(std::function<QString(const RepottingDay&)> text) const {
  return [this, text = std::move(text)]() -> QString {
    const auto stored = day();
    return stored ? text(stored->record) : QString();
  };
}

std::function<QString()> DayPage::shown_of_tree(std::function<QString(const DayTree&)> text) const {
  return [this, text = std::move(text)]() -> QString {
    const auto stored = day();
    const auto row = front_row(stored);
    return row ? text(stored->record.trees[*row]) : QString();
  };
}

Problems DayPage::apply(Change change) {
  return book_.change([&](OpenWorkbook& workbook) { return workbook.apply(std::move(change)); });
}

void DayPage::tell(const Problems& problems) const {
  if (!problems.empty()) emit book_.told(sentence_text(problems.front(), units_));
}

Problems DayPage::save(const QString& what, const std::function<void(RepottingDay&)>& change) {
  const auto was = day();
  if (!was) return current_.isEmpty() ? Problems{} : Problems{not_there({RecordKind::repotting_day, current_.toStdString()})};
  RepottingDay now = was->record;
  change(now);
  if (Problems problems = check(now); !problems.empty()) return problems;
  if (now == was->record) return {};
  // A sheet that was printed is out of date from here on: the next one bears the next number.
  if (was->record.printed_revision == now.sheet_revision) ++now.sheet_revision;
  if (now.day != was->record.day) {
    if (auto moved = move_done_day(book_.workbook(), *was, now, today())) {
      return apply(std::move(*moved));
    }
  }
  book_.replace(*was, now, tr("%1 of repotting day %2").arg(what, to_qt(was->record.day)), QStringLiteral("day/%1/%2").arg(current_, what));
  return {};
}

Problems DayPage::save_tree(const QString& what, const std::function<void(DayTree&)>& change) {
  const auto stored = day();
  const auto row = front_row(stored);
  if (!row) return tree_in_front_.isEmpty() ? Problems{} : Problems{changed_elsewhere()};
  const DayTree& was = stored->record.trees[*row];
  DayTree now = was;
  change(now);
  const auto history = [](const DayTree& tree) { return std::tie(tree.done_plan, tree.plan, tree.container, tree.used, tree.sphagnum, tree.top_dressing, tree.note); };
  if (was.done && now.mix != was.mix) {
    emit book_.told(tr("Tree %1 is done; take its tick back first.").arg(to_qt(was.tree.text)));
    show_tree();
    return {};
  }
  if (was.done && history(now) != history(was)) return correct_done(*stored, *row, now);
  return save(tr("%1 of tree %2").arg(what, to_qt(was.tree.text)), [&](RepottingDay& d) {
    if (const auto at = row_of_tree(d, tree_in_front_)) d.trees[*at] = now;
  });
}

Problems DayPage::correct_done(const Stored<RepottingDay>& stored, std::size_t row, const DayTree& now) {
  Stored<RepottingDay> corrected = stored;
  corrected.record.trees[row] = now;
  if (Problems problems = check(corrected.record); !problems.empty()) return problems;
  compute();
  TickCorrection correction{row, now, {}};
  if (answer_ && answer_->ok()) correction.layers_before = layers_of(ground_, **answer_, row);
  const DayGround ground = ground_of(book_.workbook(), catalogue_, corrected, book_.calibrations());
  const auto answer = work_out(ground.plan);
  auto change = answer ? correct_tick(book_.workbook(), catalogue_, ground, *answer, stored, correction, today()) : std::nullopt;
  if (!change) return {why_not_corrected(ground, answer, stored.record.day, now)};
  Problems problems = apply(std::move(*change));
  if (problems.empty()) emit book_.told(tr("Corrected: tree %1, with its history and the stock. Undo gives all back.").arg(to_qt(now.tree.text)));
  return problems;
}

Problem DayPage::why_not_corrected(const DayGround& ground, const Result<DayAnswer>& answer, const std::string& day_done, const DayTree& row) const {
  const auto left_out = std::ranges::find(ground.left_out, row.tree, &LeftOutTree::id);
  if (left_out != ground.left_out.end()) return {"repotting-day.left-out", {}, {{"tree", left_out->tree}, {"reason", left_out->reason.toStdString()}}};
  if (!answer) return answer.problems().front();
  const auto stored = book_.workbook().find(row.tree);
  const bool in_history = stored && std::ranges::any_of(stored->record.repottings, [&](const Repotting& one) { return one.day == day_done && one.mix == row.mix; });
  return {in_history ? "repotting-day.no-root-plan" : "repotting-day.not-in-history", {}, {{"tree", row.tree.text}}};
}

Problems DayPage::write_plan(const DayTree& was, const QString& text) {
  std::string name = plan_name_typed(text);
  auto followed = was.plan ? tree_plan(book_.workbook(), catalogue_, *was.plan) : std::nullopt;
  if (!followed && !was.done) followed = plan_of_tree(book_.workbook(), catalogue_, was.tree);
  const bool has_plan = followed && !followed->fills.empty();
  if (!has_plan || (!was.plan && !place_of_plan(*followed, name))) {
    return save_tree(tr("plan"), [&](DayTree& t) { (t.done ? t.done_plan : t.plan_name) = name; });
  }
  // Without a name it is the one that was planned: the best, or once the tree is done the one that stood in its row.
  if (name.empty()) name = was.done && !was.plan_name.empty() ? was.plan_name : plan_at(0);
  const auto at = place_of_plan(*followed, name);
  if (!at) {
    QStringList plans;
    for (std::size_t next = 0; next < followed->fills.size(); ++next) plans << to_qt(plan_at(next));
    return {Problem{"repotting-day.no-such-plan", {}, {{"tree", was.tree.text}, {"text", name}, {"plans", comma_list(plans).toStdString()}}}};
  }
  // Named once more it stays as it stands, with what the grower changed in its row.
  if (was.plan == followed->id && name == (was.done ? was.done_plan : was.plan_name)) return {};
  return save_tree(tr("plan"), [&](DayTree& t) {
    if (!t.done) return follow_plan(t, *followed, *at);
    t.done_plan = name;
    if (followed->pots[*at]) t.container = followed->pots[*at];
    t.sphagnum = sphagnum_of(*followed, *at);
  });
}

QString DayPage::tree_below(const QString& tree) const {
  const int line = lines_->line_of(tree);
  return line >= 0 && line + 1 < lines_->rowCount() ? lines_->lines()[static_cast<std::size_t>(line) + 1].id : QString();
}

bool DayPage::write_cell(const QString& tree, int column, const QString& text) {
  const auto stored = day();
  const auto row = stored ? row_of_tree(stored->record, tree) : std::nullopt;
  if (!row) {
    emit book_.told(semicolon_list({sentence_text(changed_elsewhere(), units_), GoneNotice::not_saved_words(name_on_day(tree), text)}));
    return false;
  }
  bring_to_front(tree);
  const DayTree& was = stored->record.trees[*row];
  const auto is_written = [this](const Problems& problems) {
    tell(problems);
    book_.end_typing();
    return problems.empty();
  };
  book_.end_typing();
  switch (column) {
    case DayTreesModel::plan: return is_written(write_plan(was, text));
    case DayTreesModel::used: {
      const auto litres = typed_litres(kept_text(text, Kind::volume, units_));
      if (!litres) return is_written(litres.problems());
      return is_written(save_tree(tr("litres"), [&](DayTree& t) { t.used = *litres ? std::optional(mixed_l(**litres)) : std::nullopt; }));
    }
    case DayTreesModel::buds: return is_written(save_tree(tr("buds"), [&](DayTree& t) { t.bud = bud_code(text); }));
    case DayTreesModel::helper: return is_written(save_tree(tr("helper"), [&](DayTree& t) { t.helper = trimmed_text(text); }));
    case DayTreesModel::note: return is_written(save_tree(tr("note"), [&](DayTree& t) { t.note = trimmed_text(text); }));
    default: return false;
  }
}

void DayPage::new_day() {
  RepottingDay fresh;
  fresh.day = today();
  fresh.name = tr("repotting day").toStdString();
  fresh.tub = mixed_l(25);
  fresh.scoop = loose_l(0.5);
  fresh.checklist = {{tr("Label the old pots").toStdString(), false, false}};
  const QString id = book_.add(fresh, tr("repotting day %1").arg(to_qt(fresh.day)));
  if (id.isEmpty()) return;
  show_day(id);
  tabs_->setCurrentIndex(0);
  if (auto* date = findChild<QLineEdit*>(QStringLiteral("day_date"))) {
    date->setFocus();
    date->selectAll();
  }
}

void DayPage::remove_day() {
  const auto stored = day();
  if (!stored) return;
  if (std::ranges::any_of(stored->record.trees, &DayTree::done)) return emit book_.told(tr("This day stays: trees were ticked off on it. Take their ticks back first."));
  for (RecordForm* form : {day_form_, tree_form_}) form->drop_typing();
  book_.remove(*stored, tr("repotting day %1 removed").arg(to_qt(stored->record.day)));
}

void DayPage::add_tree() {
  const QString id = tree_choice_->currentData().toString();
  if (id.isEmpty()) return emit book_.told(tr("There is no further tree to put on the day: add one on the Trees tab first."));
  if (!day()) new_day();
  const auto tree = book_.workbook().find(Id<Tree>{id.toStdString()});
  const auto stored = day();
  if (!tree || !stored) return;
  DayTree row = day_tree_of(book_.workbook(), catalogue_, *tree);
  bring_to_front(id);
  book_.end_typing();
  save(tr("tree %1").arg(id), [&](RepottingDay& d) { d.trees.push_back(std::move(row)); });
  book_.end_typing();
}

void DayPage::remove_tree() {
  const auto stored = day();
  const auto row = front_row(stored);
  if (!row) return;
  const DayTree& tree = stored->record.trees[*row];
  if (tree.done) return emit book_.told(tr("Tree %1 is done; take its tick back first.").arg(to_qt(tree.tree.text)));
  tree_form_->drop_typing();
  save(tr("tree %1 taken off").arg(to_qt(tree.tree.text)), [&](RepottingDay& d) { std::erase_if(d.trees, [&](const DayTree& one) { return one.tree == tree.tree; }); });
  book_.end_typing();
}

void DayPage::take_plan_again() {
  finish_typing();
  const auto stored = day();
  const auto row = front_row(stored);
  if (!row) return;
  const DayTree& tree = stored->record.trees[*row];
  const auto planned = plan_of_tree(book_.workbook(), catalogue_, tree.tree);
  if (!planned || planned->fills.empty()) return tell({Problem{"repotting-day.no-root-plan", {}, {{"tree", tree.tree.text}}}});
  tell(save_tree(tr("plan"), [&](DayTree& t) {
    if (planned->mix) t.mix = planned->mix;
    follow_plan(t, *planned, 0);
  }));
  book_.end_typing();
  tree_form_->refresh(true);
}

void DayPage::tick() {
  finish_typing();
  const auto stored = day();
  const auto row = front_row(stored);
  if (!row) {
    if (!tree_in_front_.isEmpty()) emit book_.told(sentence_text(changed_elsewhere(), units_));
    return;
  }
  if (!stored->record.trees[*row].done) return tick_rows(*stored, {*row});
  if (auto back = take_tick_back(book_.workbook(), catalogue_, *stored, *row, today())) {
    const QString label = to_qt(back->label);
    if (book_.apply(std::move(*back))) emit book_.told(tr("Done: %1. Undo ticks it off again.").arg(label));
  }
}

void DayPage::enter_evening() {
  finish_typing();
  const auto stored = day();
  if (!stored) return;
  std::vector<std::size_t> rows;
  for (std::size_t row = 0; row < stored->record.trees.size(); ++row) {
    if (!stored->record.trees[row].done && stored->record.trees[row].used) rows.push_back(row);
  }
  if (rows.empty()) return emit book_.told(tr("No open tree has its litres yet: write them under \u201cpoured in\u201d first."));
  tick_rows(*stored, rows);
}

void DayPage::tick_rows(const Stored<RepottingDay>& stored, const std::vector<std::size_t>& rows) {
  compute();
  for (const std::size_t row : rows) {
    const auto added = std::ranges::find(ground_.rows, row);
    if (added == ground_.rows.end()) emit book_.told(tr("Tree %1 can't be ticked off yet: see its note.").arg(to_qt(stored.record.trees[row].tree.text)));
  }
  if (!answer_ || !answer_->ok()) return;
  auto ticked = tick_off(book_.workbook(), catalogue_, ground_, answer_->value(), stored, rows, today());
  if (!ticked) return;
  const QString label = to_qt(ticked->change.label);
  if (!book_.apply(std::move(ticked->change))) return;
  QStringList told{tr("Done: %1. Undo gives all back.").arg(label)};
  if (!ground_.below_zero.empty()) told = {tr("Done: %1. By the record %2 is below nothing: count it.").arg(label, to_qt(ground_.below_zero.front().id))};
  if (stored.record.day > today()) told << tr("By its date the day is still to come: correct the date if the work is done.");
  for (const std::string& tree : ticked->without_cuts) told << tr("The history of tree %1 has no cuts, as its root-mass plan can't be worked out: mend the plan, then tick the tree again.").arg(to_qt(tree));
  emit book_.told(told.join(u' '));
}

void DayPage::return_left() {
  const auto stored = day();
  const int at = left_mix_->currentIndex();
  if (!stored || at < 0 || !answer_ || !answer_->ok()) return;
  const auto made = typed_litres(made_text_);
  const auto left = typed_litres(left_text_);
  if (!made || !*made || !left || !*left) return emit book_.told(tr("Write what was made and what is left first."));
  if (**left > **made) return emit book_.told(tr("More can't be left over than was made: correct one of them."));
  auto change = return_left_over(book_.workbook(), ground_, answer_->value(), *stored, {static_cast<std::size_t>(at), mixed_l(**made), mixed_l(**left)}, today());
  if (!change) return;
  const QString label = to_qt(change->label);
  if (!book_.apply(std::move(*change))) return;
  made_text_.clear();
  left_text_.clear();
  left_form_->refresh(true);
  emit book_.told(tr("In stock: %1.").arg(label));
}

}  // namespace gritwright::desktop
