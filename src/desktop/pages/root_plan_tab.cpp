#include "root_plan_tab.hpp"

#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPageSize>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QSplitter>
#include <QTabWidget>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "charts/picture_tabs.hpp"
#include "charts/root_plan_view.hpp"
#include "charts/root_section_view.hpp"
#include "gritwright/formats/typed_quantity.hpp"
#include "gritwright/models/root_history.hpp"
#include "gritwright/models/root_mix.hpp"
#include "gritwright/report/root_plan_report.hpp"
#include "gritwright/report/root_plan_sheet.hpp"
#include "models/figures.hpp"
#include "models/material_words.hpp"
#include "models/picture_figures.hpp"
#include "models/pot_library.hpp"
#include "print/pdf.hpp"
#include "root_plan_parts.hpp"
#include "settings.hpp"
#include "text.hpp"
#include "trees_tab.hpp"
#include "widgets/caution_bar.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/figure_panel.hpp"
#include "widgets/flow_line.hpp"
#include "widgets/folding_sides.hpp"
#include "widgets/gone_notice.hpp"
#include "widgets/record_form.hpp"
#include "widgets/record_list_side.hpp"

namespace gritwright::desktop {

namespace {

QString plan_length_text(Length length, UnitSystem units) { return to_local(depth_text(Depth(length), units)); }

void tell_fault(QLabel& label, const QString& text) {
  label.setText(text);
  label.setVisible(!text.isEmpty());
}

}  // namespace

RootPlanTab::RootPlanTab(RecordBook& book, const Catalogue& catalogue, QWidget* parent) : QWidget(parent), book_(book), desk_(new RootPlanDesk(book, catalogue, this)) {
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 8, 0, 0);
  auto* sides = new FoldingSides(QStringLiteral("plan_splitter"), this);
  auto* left = new QSplitter(Qt::Vertical, sides);
  left->setObjectName(QStringLiteral("plan_left_splitter"));
  left->setChildrenCollapsible(false);
  left->setHandleWidth(8);
  left->addWidget(list_side());
  auto* forms = new QWidget(left);
  auto* form_layout = new QVBoxLayout(forms);
  form_layout->setContentsMargins(0, 0, 0, 0);
  form_layout->addWidget(form_side(), 1);
  gone_ = new GoneNotice(book_, QStringLiteral("plan"), forms_, {}, forms);
  form_layout->insertWidget(0, gone_);
  left->addWidget(forms);
  left->setSizes({190, 500});
  sides->add(left);
  answer_ = answer_side();
  sides->add(answer_, 1);
  sides->set_sizes({480, 780});
  layout->addWidget(sides);
  connect(list_, &RecordListSide::chosen, this, &RootPlanTab::chosen);
  list_->set_hold([this](const QString& id) { return gone_->hold({RecordKind::root_mass_plan, id.toStdString()}); });
  connect(gone_, &GoneNotice::let_go, list_, &RecordListSide::look_again);
  for (RecordForm* form : forms_) connect(&book_, &RecordBook::undone, form, &RecordForm::forget_typing);
  connect(&book_, &RecordBook::changed, this, &RootPlanTab::refresh);
  connect(desk_, &RootPlanDesk::changed, this, &RootPlanTab::refresh);
  connect(desk_, &RootPlanDesk::answered, this, &RootPlanTab::refresh_answer);
  chosen();
}

QWidget* RootPlanTab::list_side() {
  auto* side = new QWidget(this);
  auto* layout = new QVBoxLayout(side);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* line = new FlowLine(side);
  trees_ = plan_choice(side, "plan_tree", tr("Tree to plan for"));
  auto* add = new QPushButton(tr("&Begin a plan"), side);
  add->setObjectName(QStringLiteral("plan_add"));
  add->setAccessibleName(tr("Begin a plan for this tree"));
  add->setMinimumHeight(28);
  connect(add, &QPushButton::clicked, this, &RootPlanTab::add_plan);
  line->add(tr("New plan for &tree"), trees_, 1, QString(18, u'n'));
  line->add({}, add);
  layout->addWidget(line);
  tree_fault_ = plan_fault_label(side, "plan_tree_fault");
  layout->addWidget(tree_fault_);
  const RecordListSide::Names names{QStringLiteral("plans"), tr("Root-mass plans"), tr("plan by number or name"), tr("No plans yet. Choose a tree above and begin one."), tr("for tree"), QStringLiteral("TR-000")};
  list_ = new RecordListSide(book_, RecordKind::root_mass_plan, names, [this](const RecordLine& row) {
    const auto plan = book_.workbook().find(Id<KeptRootMassPlan>{row.ref.id});
    return plan && plan->record.tree ? to_qt(plan->record.tree->text) : QString();
  }, side);
  layout->addWidget(list_, 1);
  return side;
}

void RootPlanTab::save(const QString& what, const std::function<void(RootMassPlan&)>& change) {
  for (const Problem& problem : desk_->save(what, change)) emit book_.told(sentence_text(problem, units_));
  book_.end_typing();
  refresh();
}

QWidget* RootPlanTab::answer_side() {
  auto* splitter = new QSplitter(Qt::Vertical, this);
  splitter->setObjectName(QStringLiteral("plan_answer_splitter"));
  splitter->setChildrenCollapsible(false);
  splitter->setHandleWidth(8);
  auto* top = new QWidget(splitter);
  auto* layout = new QVBoxLayout(top);
  layout->setContentsMargins(0, 0, 0, 0);
  heading_ = new QLabel(top);
  heading_->setObjectName(QStringLiteral("plan_heading"));
  heading_->setProperty("role", "heading");
  heading_->setWordWrap(true);
  layout->addWidget(heading_);
  pictures_ = new PictureTabs(top);
  pictures_->setObjectName(QStringLiteral("plan_pictures"));
  pictures_->setAccessibleName(tr("Pictures of the plan"));
  view_ = new RootPlanView(*desk_, pictures_);
  pictures_->add({tr("From the side and above"), view_, "plan_table", [this] { return view_->table(); }, [this] { return view_->data(); }, [this] { return explain_plan(desk_->outcome()); }});
  section_ = new RootSectionView(*desk_, pictures_);
  pictures_->add({tr("Air and water"), section_, "plan_section_table", [this] { return section_->table(); }, [this] { return section_->data(); }, [this] { return explain_plan_section(desk_->outcome()); }});
  layout->addWidget(pictures_, 1);
  auto* line = new FlowLine(top);
  plans_ = plan_choice(top, "plan_shown", tr("Plan shown"));
  connect(plans_, &QComboBox::activated, this, [this](int index) { desk_->choose(static_cast<std::size_t>(index)); });
  done_ = new QPushButton(tr("Write into histor&y"), top);
  done_->setObjectName(QStringLiteral("plan_done"));
  done_->setAccessibleName(tr("Done: write this plan into the tree's history"));
  done_->setMinimumHeight(28);
  connect(done_, &QPushButton::clicked, this, &RootPlanTab::write_into_history);
  line->add({}, plans_, 1, QString(12, u'n'));
  line->add({}, done_);
  auto* print = new QPushButton(tr("Pri&nt..."), top);
  print->setObjectName(QStringLiteral("plan_print"));
  print->setAccessibleName(tr("Print the root-mass plan"));
  auto* pdf = new QPushButton(tr("P&DF..."), top);
  pdf->setObjectName(QStringLiteral("plan_pdf"));
  pdf->setAccessibleName(tr("Save the root-mass plan as PDF"));
  for (QPushButton* button : {print, pdf}) {
    button->setMinimumHeight(28);
    line->add({}, button);
  }
  connect(print, &QPushButton::clicked, this, &RootPlanTab::print_sheet);
  connect(pdf, &QPushButton::clicked, this, &RootPlanTab::choose_sheet_file);
  layout->addWidget(line);
  splitter->addWidget(top);
  auto* bottom = new QWidget(splitter);
  auto* answers = new QVBoxLayout(bottom);
  answers->setContentsMargins(0, 0, 0, 0);
  auto* caution = new CautionBar(QStringLiteral("roots"), tr("Lifting, blades, moss."),
                                    tr("Two people or a trolley for a heavy pot; cut away from the hand; gloves for sphagnum. General information; safety sheets, local codes and qualified advice prevail."), bottom);
  limits_ = new QLabel(bottom);
  limits_->setObjectName(QStringLiteral("plan_limits"));
  limits_->setWordWrap(true);
  limits_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  limits_->setFocusPolicy(Qt::NoFocus);
  steps_ = new QLabel(bottom);
  steps_->setObjectName(QStringLiteral("plan_steps"));
  steps_->setWordWrap(true);
  steps_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  steps_->setFocusPolicy(Qt::NoFocus);
  figures_ = new FigurePanel(bottom);
  stop_table_ = new QTableWidget(0, 5, bottom);
  stop_table_->setObjectName(QStringLiteral("plan_stop_table"));
  stop_table_->setAccessibleName(tr("If the upper surface stops"));
  stop_table_->setHorizontalHeaderLabels({tr("upper cut stops at"), tr("take below"), tr("trunk base"), tr("untouched"), tr("new mix")});
  stop_table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  stop_table_->setTabKeyNavigation(false);
  stop_table_->verticalHeader()->hide();
  keep_current_in_sight(*stop_table_);
  answers->addWidget(limits_);
  answers->addWidget(caution);
  answers->addWidget(steps_);
  answers->addWidget(figures_);
  answers->addWidget(stop_table_);
  answers->addStretch(1);
  splitter->addWidget(new ColumnScroll(bottom, splitter));
  splitter->setSizes({380, 320});
  return splitter;
}

void RootPlanTab::choose_pot(const QString& id) {
  const auto pot = book_.workbook().find(Id<RecordedContainer>{id.toStdString()});
  if (!pot) return;
  save(tr("pot"), [&](RootMassPlan& plan) {
    plan.pot = pot->record.container;
    plan.pose.right.reset();  // places belong to the pot they were chosen in
    plan.pose.back.reset();
    plan.pose.trunk_base.reset();
  });
}

void RootPlanTab::stop_at_bench() {
  const auto depth = parse_length(stop_depth_->text().trimmed().toStdString(), LengthUnit::centimetre);
  Problems problems = depth.problems();
  const auto direction = static_cast<Direction>(stop_direction_->currentData().toInt());
  if (depth) {
    problems = desk_->save(tr("stopped cut"), [&](RootMassPlan& plan) {
      std::erase_if(plan.stopped, [&](const StoppedCut& cut) { return cut.direction == direction; });
      plan.stopped.push_back({direction, *depth});
    });
    book_.end_typing();
  }
  tell_fault(*stop_fault_, problems.empty() ? QString() : sentence_text(problems.front(), units_));
  if (problems.empty()) stop_depth_->clear();
}

std::optional<PrintDocument> RootPlanTab::sheet() const {
  const RootPlanOutcome* outcome = desk_->outcome();
  if (outcome == nullptr || !outcome->answer || outcome->coarse) return std::nullopt;
  const auto kept = desk_->kept();
  const RootMassPlan plan = kept ? with_numbers(book_.workbook(), *kept, outcome->plan) : outcome->plan;
  // The sheet's pictures are those of plan A, and so is its section.
  if (outcome->section && outcome->worked == 0) return root_plan_sheet(plan, *outcome->answer, units_, *outcome->section, outcome->mix_name, translated);
  return root_plan_sheet(plan, *outcome->answer, units_, translated);
}

bool RootPlanTab::save_sheet(const QString& file) {
  const auto document = sheet();
  if (!document) return false;
  const auto written = write_pdf(*document, file, read_settings().letter_paper ? Paper::letter : Paper::a4);
  emit book_.told(written ? tr("Saved %1").arg(file) : sentence_text(written.problems().front()));
  return written.ok();
}

void RootPlanTab::choose_sheet_file() {
  if (!sheet()) return tell_no_sheet();
  const QString file = QFileDialog::getSaveFileName(this, tr("Root-mass plan as PDF"), tr("root-mass plan %1.pdf").arg(desk_->current()), tr("PDF (*.pdf)"));
  if (!file.isEmpty()) save_sheet(file);
}

void RootPlanTab::tell_no_sheet() { emit book_.told(tr("No plan is worked out here yet. Begin one and enter its root mass and pot: then its sheet can go on paper.")); }

void RootPlanTab::print_sheet() {
  const auto document = sheet();
  if (!document) return tell_no_sheet();
  QPrinter printer;
  printer.setPageSize(QPageSize(read_settings().letter_paper ? QPageSize::Letter : QPageSize::A4));
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() == QDialog::Accepted && !paint_pages(*document, printer)) emit book_.told(tr("The printer could not be reached: is it on? The PDF can be printed later."));
}

void RootPlanTab::write_into_history() {
  const WorkedPlan* worked = desk_->worked();
  const auto kept = desk_->kept();
  if (worked == nullptr || !kept || !kept->record.tree || !desk_->outcome() || desk_->outcome()->coarse) return;
  const auto tree = book_.workbook().find(*kept->record.tree);
  if (!tree) return;
  Repotting done = repotting_by(desk_->outcome()->plan, *worked);
  done.day = today();
  done.plan = Id<RootMassPlan>{kept->id.text};
  done.mix = kept->record.mix;
  if (worked->fits) {
    done.container = pot_in_library(book_.workbook(), pot_of(desk_->outcome()->plan, *worked));
  } else if (const Repotting* last = stands_in(tree->record)) {
    done.container = last->container;  // back into the old pot
  }
  Tree now = tree->record;
  now.trunk_base = trunk_base_after(desk_->outcome()->plan, *worked);
  done.due = std::exchange(now.due, std::nullopt);
  now.repottings.push_back(done);
  if (const Problems problems = check(now); !problems.empty()) {
    emit book_.told(sentence_text(problems.front(), units_));
    return;
  }
  const QString id = to_qt(tree->id.text);
  if (book_.replace(*tree, now, tr("repotting of tree %1 by plan %2").arg(id, to_qt(worked->name)))) emit book_.told(done.mix ? tr("Written into the history of tree %1; a repotting day also takes the grain from the stock.").arg(id)
                             : tr("Written into the history of tree %1; the mix is added on the Trees tab.").arg(id));
}

void RootPlanTab::plan_tree(const QString& tree) {
  refresh_choices();
  trees_->setCurrentIndex(std::max(0, trees_->findData(tree)));
  ListFilter of_tree;
  of_tree.about = RecordRef{RecordKind::tree, tree.toStdString()};
  const auto plans = book_.workbook().list(RecordKind::root_mass_plan, of_tree);
  if (plans.empty()) add_plan();
  else list_->show_record(to_qt(plans.front().ref.id));
}

void RootPlanTab::add_plan() {
  const QString tree = trees_->currentData().toString();
  const auto stored = book_.workbook().find(Id<Tree>{tree.toStdString()});
  if (!stored) return tell_fault(*tree_fault_, tr("There is no tree yet: add it on the Trees tab."));
  if (!stored->record.group) return tell_fault(*tree_fault_, tr("Tree %1 has no species group, so what it bears is not known: choose its group on the Trees tab.").arg(tree));
  tell_fault(*tree_fault_, {});
  const QString id = desk_->plan_for(tree);
  if (id.isEmpty()) return tell_fault(*tree_fault_, tr("No pot is free: add the pot it shall go into on the Pots tab."));
  list_->show_record(id);
}

void RootPlanTab::remove_plan() {
  const auto stored = desk_->kept();
  if (!stored) return;
  if (book_.workbook().is_used(ref_to(stored->id))) {
    emit book_.told(tr("Plan %1 stays: a tree's history or a day names it. Begin a new plan instead.").arg(desk_->current()));
    return;
  }
  for (RecordForm* form : forms_) form->drop_typing();
  book_.remove(*stored, tr("root-mass plan %1 removed").arg(desk_->current()));
}

void RootPlanTab::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  chosen();
}

void RootPlanTab::set_units(UnitSystem units) {
  units_ = units;
  for (RecordForm* form : forms_) form->set_units(units);
  view_->set_units(units);
  section_->set_units(units);
  refresh();
}

void RootPlanTab::chosen() {
  // Worked out when it is looked at, not because the list was read.
  if (!isVisible()) return;
  if (list_->current() != desk_->current()) gone_->leave();
  book_.end_typing();
  desk_->open(list_->current());
  for (RecordForm* form : forms_) form->refresh(true);
  refresh();
}

void RootPlanTab::refresh_choices() {
  const auto fill = [this](QComboBox& box, RecordKind kind, const QString& nothing = {}) {
    const QVariant was = box.currentData();
    // A plan whose pot is not in the library has none of its pots chosen, and that stays so.
    const bool none = box.count() > 0 && box.currentIndex() < 0;
    box.clear();
    if (!nothing.isEmpty()) box.addItem(nothing, QString());
    for (const RecordLine& line : book_.workbook().list(kind)) box.addItem(choice_words(line), to_qt(line.ref.id));
    box.setCurrentIndex(none ? -1 : std::max(0, box.findData(was)));
  };
  fill(*trees_, RecordKind::tree);
  fill(*pots_, RecordKind::container);
  fill(*present_pots_, RecordKind::container);
  fill(*mixes_, RecordKind::mix, tr("none yet"));
}

void RootPlanTab::refresh() {
  if (!isVisible()) return;
  refresh_choices();
  const auto& plan = desk_->plan();
  tabs_->setEnabled(plan || gone_->is_holding());
  answer_->setEnabled(plan.has_value());
  if (plan) {
    gone_->is_back();
    for (RecordForm* form : forms_) form->refresh(false);
    groups_->setCurrentIndex(groups_->findData(static_cast<int>(plan->group)));
    const auto* box = std::get_if<BlockBox>(&plan->block);
    blocks_->setCurrentIndex(blocks_->findData(box == nullptr ? as_present_pot : static_cast<int>(box->form)));
    const auto kept = desk_->kept();
    mixes_->setCurrentIndex(std::max(0, mixes_->findData(kept && kept->record.mix ? to_qt(kept->record.mix->text) : QString())));
    bare_root_->setCurrentIndex(plan->bare_root ? 1 : 0);
    bare_before_->setCurrentIndex(plan->bare_rooted_last_time ? 1 : 0);
    styles_->setCurrentIndex(styles_->findData(static_cast<int>(plan->cut_style)));
    library_->setCurrentIndex(plan->free_pots.empty() ? 0 : 1);
    // Plans hold their pots by value: the library's entry is the one that equals it.
    const auto select = [this](QComboBox& choices, const Container& pot) {
      const auto id = pot_in_library(book_.workbook(), pot);
      choices.setPlaceholderText(tr("%1, as it was").arg(to_qt(pot.name)));
      choices.setCurrentIndex(id ? choices.findData(to_qt(id->text)) : -1);
    };
    select(*pots_, plan->pot);
    present_pots_->setEnabled(box == nullptr);
    if (box == nullptr) {
      select(*present_pots_, std::get<AsPresentPot>(plan->block).pot);
    } else {
      present_pots_->setPlaceholderText(QStringLiteral("\u2013"));
      present_pots_->setCurrentIndex(-1);
    }
    QStringList stops;
    for (const StoppedCut& cut : plan->stopped) stops << tr("%1: stopped at %2").arg(direction_text(cut.direction), plan_length_text(cut.depth, units_));
    stops_->setText(semicolon_list(stops));
  }
  refresh_answer();
}

QString RootPlanTab::heading() const {
  const auto kept = desk_->kept();
  if (!kept) return {};
  const auto tree = kept->record.tree ? book_.workbook().find(*kept->record.tree) : std::nullopt;
  return tree ? tr("%1: %2 (%3)").arg(to_qt(kept->id.text), to_qt(tree->record.name), to_qt(tree->id.text)) : with_label(to_qt(kept->id.text), to_qt(kept->record.name));
}

QString RootPlanTab::caution_line(const Note& note) const {
  return QStringLiteral("\n%1 %2").arg(note.level == Level::warning ? tr("Caution:") : tr("Note:"), sentence_text(note, units_));
}

QString RootPlanTab::steps_text(const WorkedPlan& worked) const {
  QStringList rungs;
  for (const Rung rung : worked.rungs) rungs << rung_words(rung);
  QString text = tr("Plan %1: %2.").arg(to_qt(worked.name), rungs.isEmpty() ? tr("fits as it is") : comma_list(rungs));
  int number = 0;
  for (const std::string& step : root_plan_steps(worked, units_, translated)) text += QStringLiteral("\n%1. %2").arg(++number).arg(to_local(step));
  const auto is_too_large = [](const Note& note) { return note.code == "root-plan.still-too-large"; };
  if (std::ranges::count_if(worked.cautions, is_too_large) < 2) {
    for (const Note& note : worked.cautions) text += caution_line(note);
    return text;
  }
  // What is the same on every side is said once, where the first of them stands.
  QStringList sides;
  for (const Note& note : worked.cautions)
    if (is_too_large(note)) sides << QStringLiteral("%1 %2").arg(direction_text(*direction_named(note.where)), plan_length_text(length_cm(std::get<double>(note.facts.at("excess_cm"))), units_));
  bool said = false;
  for (const Note& note : worked.cautions) {
    if (!is_too_large(note)) text += caution_line(note);
    else if (!std::exchange(said, true)) text += u'\n' + tr("Caution: after everything that may be done the root mass still sticks out, %1; take a larger pot").arg(comma_list(sides));
  }
  return text;
}

void RootPlanTab::refresh_answer() {
  const RootPlanOutcome* outcome = desk_->outcome();
  const WorkedPlan* worked = desk_->worked();
  pictures_->refresh_table();
  const bool there = worked != nullptr;
  for (QWidget* widget : std::initializer_list<QWidget*>{steps_, figures_, plans_}) widget->setVisible(there);
  heading_->setText(heading());
  const auto kept = desk_->kept();
  done_->setEnabled(there && kept && kept->record.tree);
  if (!there) {
    QStringList sentences;
    if (outcome != nullptr) {
      for (const Problem& problem : outcome->problems) sentences << sentence_text(problem, units_);
    }
    if (desk_->lacks_lengths()) sentences << desk_->wanted_first();
    limits_->setText(sentences.join(QStringLiteral("\n")));
    stop_table_->hide();
    return;
  }
  const RootPlanAnswer& answer = *outcome->answer;
  if (!outcome->coarse) {
    plans_->clear();
    for (const WorkedPlan& one : answer.plans) plans_->addItem(one.fits ? tr("plan %1").arg(to_qt(one.name)) : tr("plan %1, in stages").arg(to_qt(one.name)));
    plans_->setCurrentIndex(static_cast<int>(outcome->worked));
  }
  QStringList limits;
  for (const Limitation& limit : answer.limitations) limits << QStringLiteral("%1 %2").arg(direction_text(limit.direction), plan_length_text(limit.excess, units_));
  if (answer.corners_share > least_told_share) limits << tr("corners %1 of the root mass").arg(to_local(percent_text(answer.corners_share)));
  QString text = limits.isEmpty() ? tr("Nothing limits the fit.") : tr("What limits the fit: %1.").arg(comma_list(limits));
  if (outcome->growth) {
    QStringList growth;
    if (in_cm(outcome->growth->length) > 0) growth << tr("%1 longer").arg(to_local(growth_length_text(outcome->growth->length, units_)));
    if (in_cm(outcome->growth->width) > 0) growth << tr("%1 wider").arg(to_local(growth_length_text(outcome->growth->width, units_)));
    if (in_cm(outcome->growth->depth) > 0) growth << tr("%1 deeper").arg(to_local(growth_length_text(outcome->growth->depth, units_)));
    text += QStringLiteral(" ") + tr("Smallest change of the pot that would fit: %1.").arg(comma_list(growth));
  }
  for (const Note& note : answer.notes) text += QStringLiteral("\n") + sentence_text(note, units_);
  limits_->setText(text);
  steps_->setText(steps_text(*worked));
  const auto why = explain(outcome->plan, answer, outcome->worked);
  const auto explained = [&](const char* key) {
    std::vector<Explanation> found;
    for (const Explanation& one : why) {
      if (one.figure == key) found.push_back(one);
    }
    return found;
  };
  FigureGroup group{QStringLiteral("plan"), tr("Plan %1 in figures").arg(to_qt(worked->name)), {}};
  const auto share = [](double value) { return to_local(percent_text(value)); };
  group.figures.push_back({QStringLiteral("plan_removed"), tr("taken off"), share(worked->removed_share), {}, explained("removed")});
  group.figures.push_back({QStringLiteral("plan_untouched"), tr("stays untouched"), share(worked->untouched_share), {}, explained("untouched")});
  if (worked->other_half) {
    group.figures.push_back({QStringLiteral("plan_left_again"), tr("untouched last time and again"), share(worked->other_half->left_again), {}, {}});
    group.figures.push_back({QStringLiteral("plan_worked_again"), tr("worked last time and again"), share(worked->other_half->worked_again), {}, {}});
  }
  group.figures.push_back({QStringLiteral("plan_fill"), tr("new mix, as it lies"), to_local(volume_text(in_ml(worked->fill) / 1000, units_)), {}, explained("fill")});
  if (worked->fits) {
    group.figures.push_back({QStringLiteral("plan_soil_line"), tr("soil line over the floor"), to_local(depth_text(worked->soil_line, units_)), {}, explained("soil_line")});
    group.figures.push_back({QStringLiteral("plan_new_mix"), tr("new mix, of the pot"), share(new_mix_share(outcome->plan, *worked)), {}, explained("fill")});
    group.figures.push_back({QStringLiteral("plan_shoulder"), tr("shoulder over the soil"), to_local(depth_text(worked->shoulder, units_)), {}, explained("shoulder")});
    if (in_ml(worked->sphagnum) > 0)
      group.figures.push_back({QStringLiteral("plan_sphagnum"), tr("sphagnum of the shoulder, about"), to_local(volume_text(in_ml(worked->sphagnum) / 1000, units_)), {}, explained("shoulder")});
  }
  // Nothing says how well a root mass was measured.
  group.has_ranges = true;
  for (Figure& figure : group.figures) figure.range = QStringLiteral("\u2013");
  figures_->show_group(group);
  if (outcome->coarse) return;
  const auto stops = told_stops(answer);
  stop_table_->setVisible(!stops.empty());
  stop_table_->setRowCount(static_cast<int>(stops.size()));
  const int line = std::max(26, fontMetrics().height() + 8);
  stop_table_->verticalHeader()->setDefaultSectionSize(line);
  for (int row = 0; row < stop_table_->rowCount(); ++row) {
    const StopRow& stop = stops[static_cast<std::size_t>(row)];
    const QString at = plan_length_text(stop.stops_at, units_);
    const QStringList cells{stop.far_enough ? tr("%1 or more").arg(at) : at, stop.fits ? plan_length_text(stop.below, units_) : tr("not in one go"), to_local(depth_text(stop.trunk_base, units_)),
                            share(stop.untouched_share), to_local(volume_text(in_ml(stop.fill) / 1000, units_))};
    for (int column = 0; column < cells.size(); ++column) stop_table_->setItem(row, column, new QTableWidgetItem(cells[column]));
  }
  stop_table_->resizeColumnsToContents();
  stop_table_->setFixedHeight((stop_table_->rowCount() + 1) * line + 8);
}

}  // namespace gritwright::desktop
