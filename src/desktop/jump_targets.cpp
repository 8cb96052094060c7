#include "jump_targets.hpp"

#include <QAction>
#include <QCoreApplication>
#include <QMenuBar>
#include <QRegularExpression>
#include <QTableView>
#include <algorithm>
#include <set>
#include <utility>
#include <vector>

#include "day_room.hpp"
#include "gritwright/domain/material.hpp"
#include "gritwright/workbook/search.hpp"
#include "main_window.hpp"
#include "models/grain_trace.hpp"
#include "models/material_words.hpp"
#include "models/record_book.hpp"
#include "pages/bags_page.hpp"
#include "pages/bins_tab.hpp"
#include "pages/day_page.hpp"
#include "pages/log_page.hpp"
#include "pages/pots_tab.hpp"
#include "pages/root_plan_tab.hpp"
#include "pages/sieving_page.hpp"
#include "pages/trees_page.hpp"
#include "pages/trees_tab.hpp"
#include "record_pages.hpp"
#include "text.hpp"
#include "widgets/record_list_side.hpp"

namespace gritwright::desktop {

namespace {

class JumpText {
  Q_DECLARE_TR_FUNCTIONS(JumpTargets)
};

constexpr std::size_t most_targets = 40;  // more is a list to read, not to choose from

/// The list has the keys then: a field of the record before would take what is typed next for its own.
void go_to_line(RecordListSide& list, const QString& id) {
  list.show_record(id);
  list.table().setFocus();
}

void go_to(MainWindow& window, const RecordRef& ref) {
  RecordPages* pages = window.record_pages();
  if (pages == nullptr) return;
  const QString id = to_qt(ref.id);
  if (ref.kind == RecordKind::bag) {
    pages->show_bags();
    pages->bags().show_bag(id);
    pages->bags().table().setFocus();
  } else if (ref.kind == RecordKind::fraction) {
    pages->show_bags();
    pages->bags().show_fraction(id);
  } else if (ref.kind == RecordKind::bin) {
    pages->show_bags();
    pages->bags().show_bins();
    go_to_line(pages->bags().bins().list(), id);
  } else if (ref.kind == RecordKind::tree) {
    pages->show_trees();
    pages->trees().show_trees();
    go_to_line(pages->trees().trees().list(), id);
  } else if (ref.kind == RecordKind::container) {
    pages->show_trees();
    pages->trees().show_pots();
    go_to_line(pages->trees().pots().list(), id);
  } else if (ref.kind == RecordKind::root_mass_plan) {
    pages->show_trees();
    pages->trees().show_plans();
    go_to_line(pages->trees().plans().list(), id);
  } else if (ref.kind == RecordKind::repotting_day && window.day_room() != nullptr) {
    window.day_room()->show();
    window.day_room()->page().show_day(id);
  } else if (ref.kind == RecordKind::mix) {
    pages->open_mix(id);
  } else {
    pages->show_log();
    pages->log().show_about(id);
  }
}

/// What is gone to more often than the rest stands first.
const std::vector<RecordKind> first_kinds{RecordKind::bag, RecordKind::mix, RecordKind::tree, RecordKind::fraction, RecordKind::bin, RecordKind::container, RecordKind::repotting_day};

std::vector<RecordKind> further_kinds() {
  std::vector<RecordKind> kinds;
  for (const RecordKind kind : record_kinds)
    if (std::ranges::find(first_kinds, kind) == first_kinds.end()) kinds.push_back(kind);
  return kinds;
}

/// The catalogue's names of the materials that go by these words in the reader's language: the record keeps the catalogue's.
QStringList materials_called(const Catalogue& catalogue, const QString& words) {
  QStringList names;
  for (const Material& material : catalogue.materials()) {
    const QString own = material_words(material.name);
    if (words.size() > 1 && own != to_qt(material.name) && own.contains(words, Qt::CaseInsensitive)) names << to_qt(material.name);
  }
  return names;
}

void add_records(std::vector<JumpBox::Target>& targets, MainWindow& window, const Catalogue& catalogue, const RecordBook& record, const QString& words) {
  std::vector<JumpBox::Target> others;
  std::set<RecordRef> listed;
  const auto add = [&](const QString& found_by, const std::vector<RecordKind>& kinds) {
    SearchQuery query;
    query.words = found_by.toStdString();
    query.kinds = kinds;
    query.limit = most_targets;
    for (const RecordLine& line : search(record.workbook(), query)) {
      if (!listed.insert(line.ref).second) continue;
      const QString text = comma_list({QStringLiteral("%1 %2").arg(kind_text(line.ref.kind), to_qt(line.ref.id)), title_words(line)});
      const QString id = to_qt(line.ref.id);
      const bool by_number = id.startsWith(words, Qt::CaseInsensitive);
      JumpBox::Target target{text, [&window, ref = line.ref] { go_to(window, ref); }};
      // "A-01" is that bag before it is the fractions A-01/1 and A-01/2 of it.
      if (id.compare(words, Qt::CaseInsensitive) == 0) targets.insert(targets.begin(), std::move(target));
      else (by_number ? targets : others).push_back(std::move(target));
    }
  };
  const auto find = [&](const QString& found_by, const std::vector<RecordKind>& kinds) {
    add(found_by, kinds);
    for (const QString& material : materials_called(catalogue, found_by)) add(material, kinds);
  };
  // "mix pines" is a mix called so, not something with both words in it.
  for (const RecordKind kind : first_kinds) {
    QStringList rest = words.split(u' ', Qt::SkipEmptyParts);
    if (rest.removeIf([&](const QString& word) { return kind_text(kind).contains(word, Qt::CaseInsensitive) && word.size() > 2; }) > 0) find(rest.join(u' '), {kind});
  }
  find(words, first_kinds);
  if (listed.size() < most_targets) find(words, further_kinds());
  targets.insert(targets.end(), others.begin(), others.end());
}

}  // namespace

std::vector<JumpBox::Target> jump_targets(MainWindow& window, Bench& bench, const RecordBook* record, const QString& words) {
  std::vector<JumpBox::Target> targets;
  if (record != nullptr && !words.isEmpty()) {
    try {
      add_records(targets, window, bench.catalogue(), *record, words);
    } catch (const WorkbookTrouble& trouble) {
      emit bench.told(sentence_text(trouble.problem()));
    }
  }
  for (std::size_t i = 0; i < bench.state().components.size(); ++i) {
    const QString text = JumpText::tr("component %1").arg(bench.state().components[i].name);
    if (!fits(text, words)) continue;
    targets.push_back({text, [&window, &bench, i] {
      bench.set_current_component(static_cast<int>(i));
      window.show_sieving();
      window.sieving_page().show_sheet();
    }});
  }
  for (QAction* top : window.menuBar()->actions()) {
    for (QAction* action : top->menu()->actions()) {
      QString text = action->text();
      // Where a letter can't be underlined within the words it stands behind them.
      static const QRegularExpression letter_behind(QStringLiteral("\\(&.\\)"));
      text.remove(letter_behind).remove(u'&');
      if (action->isSeparator() || !action->isEnabled() || !fits(text, words)) continue;
      const QString keys = action->shortcut().toString(QKeySequence::NativeText);
      targets.push_back({keys.isEmpty() ? text : QStringLiteral("%1  (%2)").arg(text, keys), [action] { action->trigger(); }});
    }
  }
  if (targets.size() > most_targets) targets.resize(most_targets);
  return targets;
}

}  // namespace gritwright::desktop
