#include "grain_trace.hpp"

#include <QCoreApplication>
#include <algorithm>
#include <utility>

#include "gritwright/formats/recall_file.hpp"
#include "gritwright/report/text_table.hpp"
#include "material_words.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class TraceText {
  Q_DECLARE_TR_FUNCTIONS(GrainTrace)
};

QString or_dash(const QString& text) { return text.isEmpty() ? QStringLiteral("\u2013") : text; }
QString shown_day(const std::string& iso) { return or_dash(day_text(iso)); }

QString certainty_text(bool certain) { return certain ? TraceText::tr("yes") : TraceText::tr("may"); }

QString standing_text(Standing standing) {
  switch (standing) {
    case Standing::now: return TraceText::tr("stands in it");
    case Standing::may_remain: return TraceText::tr("some may remain");
    case Standing::was: return TraceText::tr("stood in it");
  }
  return {};
}

QString way_text(const RecallRow& row) {
  QStringList ids;
  for (const RecordRef& ref : row.way) ids << to_qt(ref.id);
  return ids.join(QStringLiteral(" \u203a "));
}

QString name_text(const RecallRow& row) {
  QString text = title_words(row.ref.kind, row.name);
  if (!row.species.empty() && row.name.find(row.species) == std::string::npos) {
    const QString species = row.ref.kind == RecordKind::tree ? to_qt(row.species) : material_words(row.species);
    text = text.isEmpty() ? species : comma_list({text, species});
  }
  if (row.deleted) text = TraceText::tr("%1 (removed)").arg(text);
  return or_dash(text);
}

QString role_text(const std::string& role) {
  if (role == "screened") return TraceText::tr("screened");
  if (role == "tipped") return TraceText::tr("tipped in");
  if (role == "mixed") return TraceText::tr("mixed");
  if (role == "potted") return TraceText::tr("potted");
  if (role == "remains") return TraceText::tr("left in the pot");
  if (role == "designed") return TraceText::tr("by design");
  if (role == "reclaimed") return TraceText::tr("taken back");
  return TraceText::tr("used");
}

QString trait_text(TraitSort sort) {
  switch (sort) {
    case TraitSort::lot: return TraceText::tr("lot");
    case TraitSort::mix: return TraceText::tr("mix");
    case TraitSort::depth: return TraceText::tr("depth");
    case TraitSort::day: return TraceText::tr("day of repotting");
    case TraitSort::plan: return TraceText::tr("plan");
    case TraitSort::removed_share: return TraceText::tr("taken off");
  }
  return {};
}

QString count_text(std::size_t count, std::size_t among) {
  return among == 0 ? or_dash({}) : TraceText::tr("%1 of %2").arg(count).arg(among);
}

/// Sick first: what one opens the page for.
int urgency(std::optional<Condition> condition) {
  if (!condition) return 4;
  switch (*condition) {
    case Condition::sick: return 0;
    case Condition::watch: return 1;
    case Condition::dead: return 2;
    case Condition::thriving: return 3;
  }
  return 4;
}

/// The table as text for a page of paper; nothing where it has no rows.
std::string on_paper(const PictureTable& table) {
  if (table.rows.empty()) return {};
  const auto cells = [](const QStringList& texts) {
    std::vector<std::string> line;
    for (const QString& text : texts) line.push_back(text.toStdString());
    return line;
  };
  std::vector<std::vector<std::string>> rows;
  for (const QStringList& row : table.rows) rows.push_back(cells(row));
  return '\n' + text_table(cells(table.heading), rows);
}

/// The entry that the present condition began with.
const ConditionEntry* began(const Tree& tree) {
  const ConditionEntry* first = nullptr;
  for (const ConditionEntry& entry : tree.conditions) {
    if (first == nullptr || entry.condition != first->condition) first = &entry;
  }
  return first;
}

std::optional<RecordRef> record_of_id(const OpenWorkbook& workbook, const std::string& wanted) {
  for (const RecordKind kind : record_kinds) {
    if (kind == RecordKind::log_entry || kind == RecordKind::stock_entry) continue;
    if (const auto found = workbook.find(RecordRef{kind, wanted})) return found->ref;
  }
  return std::nullopt;
}

std::vector<RecordRef> bags_of_lot(const OpenWorkbook& workbook, const QString& mark) {
  std::vector<RecordRef> bags;
  ListFilter filter;
  filter.words = mark.toStdString();
  for (const RecordLine& line : workbook.list(RecordKind::bag, filter)) {
    const auto bag = workbook.find(Id<Bag>{line.ref.id});
    if (bag && to_qt(bag->record.lot).compare(mark, Qt::CaseInsensitive) == 0) bags.push_back(line.ref);
  }
  return bags;
}

}  // namespace

Called called(const OpenWorkbook& workbook, const QString& id_or_lot) {
  const QString typed = id_or_lot.trimmed();
  if (typed.isEmpty()) return {};
  if (auto record = record_of_id(workbook, typed.toStdString())) return {std::move(record), {}};
  const std::vector<RecordRef> bags = bags_of_lot(workbook, typed);
  if (bags.empty()) return {{}, TraceText::tr("There is nothing called %1: look at its number.").arg(typed)};
  if (bags.size() == 1) return {bags.front(), {}};
  QStringList numbers;
  for (const RecordRef& bag : bags) numbers << to_qt(bag.id);
  return {{}, TraceText::tr("Several bags are of lot %1: type the number of one of %2.").arg(typed, comma_list(numbers))};
}

QString condition_word(Condition condition) {
  switch (condition) {
    case Condition::thriving: return TraceText::tr("thriving");
    case Condition::watch: return TraceText::tr("watch");
    case Condition::sick: return TraceText::tr("sick");
    case Condition::dead: return TraceText::tr("dead");
  }
  return {};
}

RecordTable recalled_trees(const RecallList& list) {
  RecordTable made;
  made.table.heading = {TraceText::tr("tree"), TraceText::tr("name"), TraceText::tr("how"), TraceText::tr("condition"), TraceText::tr("potted"),
                        TraceText::tr("until"), TraceText::tr("pot"), TraceText::tr("mix"), TraceText::tr("contains it"), TraceText::tr("way")};
  for (const Standing standing : {Standing::now, Standing::may_remain, Standing::was}) {
    for (const RecallRow& row : list.trees) {
      if (row.standing != standing) continue;
      made.table.rows.push_back({to_qt(row.ref.id), name_text(row), standing_text(row.standing), row.condition ? condition_word(*row.condition) : or_dash({}), shown_day(row.day),
                                 shown_day(row.until), or_dash(to_qt(row.container)), or_dash(to_qt(row.mix)), certainty_text(row.certain), way_text(row)});
      made.refs.push_back(row.ref);
    }
  }
  return made;
}

RecordTable recalled_holders(const RecallList& list, UnitSystem units) {
  RecordTable made;
  made.table.heading = {TraceText::tr("no."), TraceText::tr("what"), TraceText::tr("since"), TraceText::tr("until"), TraceText::tr("left, dry"), TraceText::tr("contains it"), TraceText::tr("way")};
  for (const RecallRow& row : list.holders) {
    if (row.ref == list.of && !row.stock) continue;
    made.table.rows.push_back({to_qt(row.ref.id), QStringLiteral("%1 %2").arg(kind_text(row.ref.kind), name_text(row)), shown_day(row.day), shown_day(row.until),
                               to_local(mass_text(row.stock, units)), certainty_text(row.certain), way_text(row)});
    made.refs.push_back(row.ref);
  }
  return made;
}

QString recall_sentence(const RecallList& list) {
  const auto standing = [&](Standing wanted) { return static_cast<int>(std::ranges::count(list.trees, wanted, &RecallRow::standing)); };
  const QString of = QStringLiteral("%1 %2").arg(to_qt(list.of.id), title_words(list.of.kind, list.title)).trimmed();
  if (list.trees.empty()) return TraceText::tr("%1: no tree stands in it, as far as it was written down.").arg(of);
  QStringList parts{TraceText::tr("%n tree(s) stand in it", nullptr, standing(Standing::now))};
  if (const int may = standing(Standing::may_remain); may > 0) parts << TraceText::tr("in %n repotted since some may remain", nullptr, may);
  if (const int was = standing(Standing::was); was > 0) parts << TraceText::tr("%n stood in it once", nullptr, was);
  return TraceText::tr("%1: %2.").arg(of, semicolon_list(parts));
}

RecordTable ground_of_tree(const Trace& back) {
  RecordTable made;
  made.table.heading = {TraceText::tr("what"), TraceText::tr("title"), TraceText::tr("by"), TraceText::tr("day"), TraceText::tr("until"), TraceText::tr("contains it")};
  std::vector<int> depth(back.steps.size());
  std::vector<std::vector<std::size_t>> below(back.steps.size());
  for (std::size_t i = 1; i < back.steps.size(); ++i) {
    depth[i] = depth[*back.steps[i].from] + 1;
    below[*back.steps[i].from].push_back(i);
  }
  std::vector<std::size_t> open{0};
  while (!open.empty()) {
    const std::size_t index = open.back();
    open.pop_back();
    open.insert(open.end(), below[index].rbegin(), below[index].rend());
    if (index == 0) continue;
    const TraceStep& step = back.steps[index];
    const QString words = title_words(step.ref.kind, step.title);
    const QString title = step.deleted ? TraceText::tr("%1 (removed)").arg(words) : words;
    made.table.rows.push_back({QString(QStringLiteral("\u2003")).repeated(depth[index] - 1) + QStringLiteral("%1 %2").arg(kind_text(step.ref.kind), to_qt(step.ref.id)), or_dash(title),
                               role_text(step.role), shown_day(step.day), shown_day(step.until), certainty_text(step.certain)});
    made.refs.push_back(step.ref);
  }
  return made;
}

QString ground_sentence(const Trace& back) {
  const TraceStep& tree = back.steps.front();
  const QString of = QStringLiteral("%1 %2").arg(to_qt(tree.ref.id), to_qt(tree.title)).trimmed();
  const auto bags = static_cast<int>(std::ranges::count(back.steps, RecordKind::bag, [](const TraceStep& step) { return step.ref.kind; }));
  if (bags == 0) return TraceText::tr("%1: no bag is known to be in its soil.").arg(of);
  return TraceText::tr("%1: the grain of %n bag(s) is or may be in its soil.", nullptr, bags).arg(of);
}

std::vector<TreeState> tree_states(const OpenWorkbook& workbook) {
  std::vector<std::pair<std::string, TreeState>> dated;
  for (const auto& stored : workbook.all<Tree>()) {
    const Tree& tree = stored.record;
    TreeState state;
    state.id = stored.id;
    state.name = tree.name.empty() || tree.species.empty() ? to_qt(tree.name + tree.species) : comma_list({to_qt(tree.name), to_qt(tree.species)});
    state.condition = condition_now(tree);
    std::string since;
    if (const ConditionEntry* first = began(tree)) {
      since = first->day;
      state.since = day_text(first->day);
      state.note = to_qt(tree.conditions.back().note);
    }
    if (const Repotting* last = stands_in(tree)) {
      state.potted = last->mix ? TraceText::tr("%1 in %2").arg(day_text(last->day), to_qt(last->mix->text)) : day_text(last->day);
    }
    dated.emplace_back(std::move(since), std::move(state));
  }
  std::ranges::stable_sort(dated, [](const auto& a, const auto& b) {
    const int urgent_a = urgency(a.second.condition);
    const int urgent_b = urgency(b.second.condition);
    return urgent_a != urgent_b ? urgent_a < urgent_b : a.first > b.first;
  });
  std::vector<TreeState> states;
  states.reserve(dated.size());
  for (auto& [day, state] : dated) states.push_back(std::move(state));
  return states;
}

RecordTable shared_table(const SharedTraits& shared) {
  RecordTable made;
  made.table.heading = {TraceText::tr("shared"), TraceText::tr("which"), TraceText::tr("these trees"), TraceText::tr("all others")};
  for (const SharedTrait& trait : shared.traits) {
    if (shared.trees.size() > 1 && trait.count < 2) continue;
    const QString value = trait.sort == TraitSort::day ? day_text(trait.value) : to_local(trait.value);
    QString count = count_text(trait.count, trait.among);
    if (trait.uncertain > 0) count = TraceText::tr("%1, %2 of them may").arg(count).arg(trait.uncertain);
    const QString title = trait.ref ? title_words(trait.ref->kind, trait.title) : to_qt(trait.title);
    made.table.rows.push_back({trait_text(trait.sort), title.isEmpty() ? value : QStringLiteral("%1 %2").arg(value, title), count, count_text(trait.others, trait.others_among)});
    made.refs.push_back(trait.ref.value_or(RecordRef{}));
  }
  return made;
}

QString shared_caution() { return TraceText::tr("Few trees prove nothing: what they share may be chance."); }

QStringList first_looks() {
  return {TraceText::tr("the drain hole: is it open?"), TraceText::tr("the trunk: is it buried, or stands it too deep?"), TraceText::tr("the tie: is it loose, does the tree rock?"),
          TraceText::tr("the smell of the root mass: is it sour?"), TraceText::tr("the watering: who, how often, and did it run through?")};
}

std::string recall_file(const RecallList& list, const QString& path, UnitSystem units) {
  if (path.endsWith(QStringLiteral(".json"), Qt::CaseInsensitive)) return write_recall_json(list);
  if (path.endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive)) return write_recall_csv(list);
  return recall_sentence(list).toStdString() + '\n' + on_paper(recalled_trees(list).table) + on_paper(recalled_holders(list, units).table);
}

std::string shared_file(const SharedTraits& shared, const QString& path) {
  if (path.endsWith(QStringLiteral(".json"), Qt::CaseInsensitive)) return write_shared_json(shared);
  if (path.endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive)) return write_shared_csv(shared);
  QStringList trees;
  for (const RecordRef& tree : shared.trees) trees << to_qt(tree.id);
  return comma_list(trees).toStdString() + '\n' + on_paper(shared_table(shared).table) + '\n' + shared_caution().toStdString() + '\n' +
         first_looks().join(u'\n').toStdString() + '\n';
}

}  // namespace gritwright::desktop
