#include "jump_targets.hpp"

#include <QAction>
#include <QCoreApplication>
#include <QMenuBar>
#include <algorithm>

#include "main_window.hpp"
#include "models/grain_trace.hpp"
#include "models/record_book.hpp"
#include "pages/bags_page.hpp"
#include "pages/bins_tab.hpp"
#include "pages/log_page.hpp"
#include "pages/pots_tab.hpp"
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

void go_to(MainWindow& window, const RecordRef& ref) {
  RecordPages* pages = window.record_pages();
  if (pages == nullptr) return;
  const QString id = to_qt(ref.id);
  if (ref.kind == RecordKind::bag) {
    pages->show_bags();
    pages->bags().show_bag(id);
  } else if (ref.kind == RecordKind::bin) {
    pages->show_bags();
    pages->bags().show_bins();
    pages->bags().bins().list().show_record(id);
  } else if (ref.kind == RecordKind::tree) {
    pages->show_trees();
    pages->trees().show_trees();
    pages->trees().trees().list().show_record(id);
  } else if (ref.kind == RecordKind::container) {
    pages->show_trees();
    pages->trees().show_pots();
    pages->trees().pots().list().show_record(id);
  } else if (ref.kind == RecordKind::mix) {
    pages->open_mix(id);
  } else {
    pages->show_log();
    pages->log().show_about(id);
  }
}

void add_records(std::vector<JumpBox::Target>& targets, MainWindow& window, const RecordBook& record, const QString& words) {
  std::vector<JumpBox::Target> others;
  for (const RecordKind kind : {RecordKind::bag, RecordKind::mix, RecordKind::tree, RecordKind::fraction, RecordKind::bin, RecordKind::container, RecordKind::repotting_day}) {
    const QString name = kind_text(kind);
    // "bag K-0" means the bags that begin so: the kind is no word of the record itself.
    const QString first = words.section(u' ', 0, 0, QString::SectionSkipEmpty);
    const bool names_kind = name.startsWith(first, Qt::CaseInsensitive);
    ListFilter found;
    found.words = (names_kind ? words.section(u' ', 1, -1, QString::SectionSkipEmpty) : words).toStdString();
    found.limit = most_targets;
    std::vector<RecordLine> lines = record.workbook().list(kind, found);
    if (names_kind && lines.size() < most_targets) {
      found.words = words.toStdString();
      for (RecordLine& line : record.workbook().list(kind, found)) {
        if (std::ranges::find(lines, line.ref, &RecordLine::ref) == lines.end()) lines.push_back(std::move(line));
      }
    }
    for (const RecordLine& line : lines) {
      const bool by_number = to_qt(line.ref.id).startsWith(words, Qt::CaseInsensitive);
      (by_number ? targets : others).push_back({QStringLiteral("%1 %2, %3").arg(name, to_qt(line.ref.id), to_qt(line.title)), [&window, ref = line.ref] { go_to(window, ref); }});
    }
  }
  targets.insert(targets.end(), others.begin(), others.end());
}

}  // namespace

std::vector<JumpBox::Target> jump_targets(MainWindow& window, Bench& bench, const RecordBook* record, const QString& words) {
  std::vector<JumpBox::Target> targets;
  if (record != nullptr && !words.isEmpty()) {
    try {
      add_records(targets, window, *record, words);
    } catch (const WorkbookTrouble& trouble) {
      emit bench.told(sentence_text(trouble.problem()));
    }
  }
  for (std::size_t i = 0; i < bench.state().components.size(); ++i) {
    const QString text = JumpText::tr("sheet %1").arg(bench.state().components[i].name);
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
      text.remove(u'&');
      if (action->isSeparator() || !action->isEnabled() || !fits(text, words)) continue;
      const QString keys = action->shortcut().toString(QKeySequence::NativeText);
      targets.push_back({keys.isEmpty() ? text : QStringLiteral("%1  (%2)").arg(text, keys), [action] { action->trigger(); }});
    }
  }
  if (targets.size() > most_targets) targets.resize(most_targets);
  return targets;
}

}  // namespace gritwright::desktop
