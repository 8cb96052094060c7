#include "day_page.hpp"

#include <QComboBox>
#include <QCompleter>
#include <QDate>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollBar>
#include <QShortcut>
#include <QSplitter>
#include <QStyledItemDelegate>
#include <QTabWidget>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <tuple>
#include <utility>
#include <vector>

#include "charts/picture_tab_bar.hpp"
#include "day_typing.hpp"
#include "gritwright/formats/typed_quantity.hpp"
#include "models/bud_words.hpp"
#include "models/day_trees_model.hpp"
#include "text.hpp"
#include "widgets/card_grid.hpp"
#include "widgets/caution_bar.hpp"
#include "widgets/column_fit.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/figure_panel.hpp"
#include "widgets/flow_line.hpp"
#include "widgets/folding_sides.hpp"
#include "widgets/gone_notice.hpp"
#include "widgets/how_button.hpp"
#include "widgets/record_form.hpp"
#include "widgets/record_table.hpp"
#include "widgets/section_view.hpp"

namespace gritwright::desktop {

namespace {

using DayColumn = DayTreesModel::Column;

QPushButton* push_button(QWidget* parent, const char* object_name, const QString& text, const QString& name) {
  auto* button = new QPushButton(text, parent);
  button->setObjectName(QString::fromLatin1(object_name));
  button->setAccessibleName(name);
  button->setMinimumHeight(28);
  return button;
}

QComboBox* choice_box(QWidget* parent, const char* object_name, const QString& name) {
  auto* box = new QComboBox(parent);
  box->setObjectName(QString::fromLatin1(object_name));
  box->setAccessibleName(name);
  box->setMinimumHeight(26);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(14);
  return box;
}

template <class Value>
QString litre_digits(const std::optional<Value>& volume) {
  return volume ? number_text(in_l(*volume), 9) : QString();
}

Result<std::optional<double>> typed_share(const QString& text) {
  if (text.trimmed().isEmpty()) return std::optional<double>();
  const auto share = parse_percent(trimmed_text(text));
  if (!share) return share.problems();
  return std::optional(*share);
}

/// Buds are completed from their first letters. What is being typed into a cell is not written over when the table is shown anew.
class CellDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    QWidget* editor = QStyledItemDelegate::createEditor(parent, option, index);
    auto* field = qobject_cast<QLineEdit*>(editor);
    if (field == nullptr || index.column() != DayColumn::buds) return editor;
    auto* states = new QCompleter(bud_choices(), field);
    states->setCompletionMode(QCompleter::InlineCompletion);
    states->setCaseSensitivity(Qt::CaseInsensitive);
    field->setCompleter(states);
    return editor;
  }
  void setEditorData(QWidget* editor, const QModelIndex& index) const override {
    const auto* field = qobject_cast<QLineEdit*>(editor);
    if (field == nullptr || !field->isModified()) QStyledItemDelegate::setEditorData(editor, index);
  }
};

/// Their names are all in sight in large text too.
class DayTabs : public QTabWidget {
 public:
  explicit DayTabs(QWidget* parent) : QTabWidget(parent), bar_(new PictureTabBar(this)) { setTabBar(bar_); }

  // Every page scrolls: the one that asks for most must not make a small window taller.
  [[nodiscard]] QSize minimumSizeHint() const override {
    const int least_page = 8 * fontMetrics().lineSpacing();
    const QSize all = QTabWidget::minimumSizeHint();
    return {all.width(), std::min(all.height(), bar_->sizeHint().height() + least_page)};
  }

 protected:
  void resizeEvent(QResizeEvent* event) override {
    QTabWidget::resizeEvent(event);
    bar_->fit_into(width(), width());
  }
  void changeEvent(QEvent* event) override {
    QTabWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) bar_->fit_into(width(), width());
  }

 private:
  PictureTabBar* bar_;
};

/// The thirtieth of June ends the season that today belongs to.
std::string end_of_season() {
  const QDate now = QDate::currentDate();
  return QDate(now.month() > 6 ? now.year() + 1 : now.year(), 6, 30).toString(Qt::ISODate).toStdString();
}

}  // namespace

DayPage::DayPage(RecordBook& book, const Catalogue& catalogue, QWidget* parent)
    : QWidget(parent), book_(book), catalogue_(catalogue), lines_(new DayTreesModel(this)), until_(end_of_season()) {
  setObjectName(QStringLiteral("day_page"));
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  auto* content = new QWidget(this);
  whole->addWidget(new ColumnScroll(content, this));
  auto* layout = new QVBoxLayout(content);
  layout->setContentsMargins(8, 8, 8, 8);
  layout->setSpacing(8);
  layout->addWidget(new CautionBar(QStringLiteral("repotting_day"), tr("Dust and lifting."),
                                   tr("Screen damp, outdoors, with a mask; from 16 kg lift with two or use a trolley, less at arm's length. General information; safety sheets, local codes "
                                      "and qualified advice prevail."),
                                   this));
  layout->addWidget(tools());
  empty_ = new QLabel(tr("No repotting day yet. Make one, then put trees on it: their litres, what to screen, buy and mix, and what is heavy follow by themselves. The season tells "
                         "which trees are due."),
                      this);
  empty_->setWordWrap(true);
  empty_->setProperty("role", "muted");
  layout->addWidget(empty_);
  auto* splitter = new QSplitter(Qt::Vertical, this);
  splitter->setObjectName(QStringLiteral("day_splitter"));
  splitter->setChildrenCollapsible(false);
  splitter->setHandleWidth(8);
  table_ = new QTableView(splitter);
  table_->setObjectName(QStringLiteral("day_table"));
  table_->setAccessibleName(tr("Trees of the day in working order"));
  table_->setAccessibleDescription(tr("Space ticks a tree off; plan, litres, buds, helper and note are written into the table."));
  table_->setModel(lines_);
  show_as_record_list(*table_);
  keep_current_in_sight(*table_);
  table_->installEventFilter(this);
  connect(table_, &QTableView::doubleClicked, this, [this](const QModelIndex& cell) {
    if (cell.column() != DayColumn::note) go_to_choice(cell);
  });
  auto* cells = new CellDelegate(table_);
  table_->setItemDelegate(cells);
  table_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed | QAbstractItemView::AnyKeyPressed);
  table_->setSelectionBehavior(QAbstractItemView::SelectItems);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->horizontalHeader()->setSectionResizeMode(DayColumn::tree, QHeaderView::Interactive);
  columns_ = new ColumnFit(*table_, {DayColumn::tree, DayColumn::mix, DayColumn::pot, DayColumn::buds, DayColumn::helper, DayColumn::note}, DayColumn::note);
  tabs_ = new DayTabs(splitter);
  tabs_->setObjectName(QStringLiteral("day_tabs"));
  tabs_->setAccessibleName(tr("What the day takes"));
  tabs_->setDocumentMode(true);  // a pane of another colour would show around what lies on it
  tabs_->tabBar()->setObjectName(QStringLiteral("day_tab_bar"));
  litres_ = new SectionView(QStringLiteral("day_litres"), tr("Litres"), tabs_);
  batches_ = new SectionView(QStringLiteral("day_batches"), tr("Batches"), tabs_);
  lifts_ = new SectionView(QStringLiteral("day_lifts"), tr("Lifts"), tabs_);
  tabs_->addTab(new ColumnScroll(day_tab(), tabs_), tr("Day"));
  tabs_->addTab(new ColumnScroll(tree_tab(), tabs_), tr("Tree"));
  tabs_->addTab(litres_, tr("Litres"));
  tabs_->addTab(shelf_tab(), tr("Screen and buy"));
  tabs_->addTab(batches_, tr("Batches"));
  tabs_->addTab(lifts_, tr("Lifts"));
  tabs_->addTab(list_tab(), tr("Lists"));
  tabs_->addTab(new ColumnScroll(left_over_tab(), tabs_), tr("Left over"));
  tabs_->addTab(new ColumnScroll(season_tab(), tabs_), tr("Season"));
  splitter->setSizes({240, 400});
  layout->addWidget(splitter, 1);
  gone_ = new GoneNotice(book_, QStringLiteral("day"), {day_form_, tree_form_}, {}, this);
  layout->insertWidget(layout->indexOf(splitter), gone_);
  connect(gone_, &GoneNotice::let_go, this, &DayPage::refresh);
  for (RecordForm* form : {day_form_, tree_form_}) connect(&book_, &RecordBook::undone, form, &RecordForm::forget_typing);
  for (RecordForm* form : {day_form_, tree_form_}) connect(&book_, &RecordBook::undo_wanted, form, &RecordForm::end_typing);
  connect(&book_, &RecordBook::changed, this, &DayPage::refresh);
  connect(lines_, &DayTreesModel::ticked, this, [this](const QString& tree, bool) {
    bring_to_front(tree);
    tick();
  });
  connect(lines_, &DayTreesModel::written, this, [this](const QString& tree, int column, const QString& text) {
    goes_on_to_ = tree_below(tree);
    if (!write_cell(tree, column, text)) goes_on_to_ = tree;
  });
  // Enter goes down the column, as it does from pan to pan: a list is entered from top to bottom, and buds may put it in another order.
  connect(cells, &CellDelegate::closeEditor, this, [this](QWidget*, QAbstractItemDelegate::EndEditHint hint) {
    const auto next = std::exchange(goes_on_to_, std::nullopt);
    if (hint != QAbstractItemDelegate::SubmitModelCache) return;
    const int line = lines_->line_of(next ? *next : tree_below(tree_in_front_));
    if (line >= 0) table_->setCurrentIndex(lines_->index(line, table_->currentIndex().column()));
  });
  connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& now) {
    if (now.isValid() && !filling_) bring_to_front(lines_->lines()[static_cast<std::size_t>(now.row())].id);
  });
  connect(tabs_, &QTabWidget::currentChanged, this, &DayPage::show_season_answer);
  connect(table_->horizontalHeader(), &QHeaderView::geometriesChanged, this, &DayPage::keep_rows_in_sight);
  connect(table_->verticalHeader(), &QHeaderView::sectionResized, this, &DayPage::keep_rows_in_sight);
  connect(table_->verticalHeader(), &QHeaderView::sectionCountChanged, this, &DayPage::keep_rows_in_sight);
  fit_columns();
}

QWidget* DayPage::tools() {
  auto* tools = new FlowLine(this);
  days_ = choice_box(this, "day_choice", tr("Repotting day"));
  tools->add(tr("&Day"), days_, 2, QString(35, u'n'));  // as many signs as a day with a name of two words
  auto* fresh = push_button(this, "day_new", tr("New day"), tr("Make a new repotting day"));
  tools->add({}, fresh);
  tree_choice_ = choice_box(this, "day_tree_choice", tr("Tree to put on the day"));
  tools->add(tr("&Tree"), tree_choice_, 2);
  auto* add = push_button(this, "day_add_tree", tr("Put on the day"), tr("Put this tree on the day"));
  tools->add({}, add);
  order_ = choice_box(this, "day_order", tr("Order of work"));
  order_->setMinimumContentsLength(8);
  for (const auto& [text, key] : {std::pair{tr("buds"), WorkKey::bud}, {tr("mix"), WorkKey::mix}, {tr("helper"), WorkKey::helper}, {tr("name"), WorkKey::name}})
    order_->addItem(text, static_cast<int>(key));
  tools->add(tr("&Work by"), order_);
  connect(days_, &QComboBox::activated, this, [this] { show_day(days_->currentData().toString()); });
  connect(fresh, &QPushButton::clicked, this, &DayPage::new_day);
  connect(add, &QPushButton::clicked, this, &DayPage::add_tree);
  connect(order_, &QComboBox::activated, this, [this](int index) {
    save(tr("order of work"), [&](RepottingDay& d) { d.work_by = static_cast<WorkKey>(order_->itemData(index).toInt()); });
    book_.end_typing();
  });
  return tools;
}

QWidget* DayPage::day_tab() {
  auto* tab = new QWidget(tabs_);
  auto* layout = new QVBoxLayout(tab);
  auto* cards = new CardGrid(tab);
  auto* form = new QWidget(cards);
  auto* rows = new QVBoxLayout(form);
  rows->setContentsMargins(0, 0, 0, 0);
  day_form_ = new RecordForm(form);
  add_day_rows();
  connect(day_form_, &RecordForm::typing_ended, this, [this] { book_.end_typing(); });
  rows->addWidget(day_form_);
  rows->addStretch(1);
  auto* answer = new QWidget(cards);
  auto* side = new QVBoxLayout(answer);
  side->setContentsMargins(0, 0, 0, 0);
  side->setSpacing(8);
  // What is amiss or heavy is read before what only goes its way.
  for (const auto& [label, name] : {std::pair{&first_, "day_first"}, {&summary_, "day_summary"}}) {
    *label = new QLabel(answer);
    (*label)->setObjectName(QLatin1String(name));
    (*label)->setWordWrap(true);
    (*label)->setTextFormat(Qt::PlainText);
  }
  first_->setProperty("role", "figure");
  to_mix_ = new FigurePanel(answer);
  side->addWidget(first_);
  side->addWidget(to_mix_);
  side->addWidget(summary_);
  auto* buttons = new FlowLine(tab);
  auto* how = push_button(tab, "day_how", tr("How so?"), tr("How the figures of the day come about"));
  auto* evening = push_button(tab, "day_evening", tr("Tick off what has litres"), tr("Tick off every tree whose litres were written"));
  buttons->add({}, how);
  buttons->add({}, evening);
  side->addWidget(buttons);
  auto* prints = new FlowLine(tab);
  for (const auto& [name, text, sheet] : {std::tuple{"day_print", tr("Day sheet..."), DaySheet::day}, {"day_print_cards", tr("Batch cards..."), DaySheet::cards},
                                          {"day_print_labels", tr("Pot labels..."), DaySheet::labels}, {"day_print_roots", tr("Root-mass plans..."), DaySheet::root_plans}}) {
    auto* button = push_button(tab, name, text, tr("Write as PDF: %1").arg(text));
    prints->add({}, button);
    connect(button, &QPushButton::clicked, this, [this, sheet = sheet] { choose_file(sheet); });
  }
  side->addWidget(prints);
  side->addStretch(1);
  cards->add_card(form);
  cards->add_card(answer);
  layout->addWidget(cards);
  connect(how, &QPushButton::clicked, this, &DayPage::show_how);
  connect(evening, &QPushButton::clicked, this, &DayPage::enter_evening);
  return tab;
}

void DayPage::add_day_rows() {
  day_form_->add({QStringLiteral("day_date"), tr("On"), Kind::words, tr("a day like %1").arg(example_day()), shown([](const RepottingDay& d) { return day_text(d.day); }),
                  [this](const QString& text) { return save(tr("day"), [&](RepottingDay& d) { d.day = typed_day(text); }); }, {}, {}, [this] {
                    // All that was done on it moves along.
                    const auto stored = day();
                    return stored && std::ranges::any_of(stored->record.trees, &DayTree::done);
                  }, {}, [this] { return QStringLiteral("typed/%1/%2/day_date").arg(book_.settings_key(), current_); }});
  day_form_->add({QStringLiteral("day_name"), tr("Name"), Kind::words, tr("stands on the sheets"), shown([](const RepottingDay& d) { return to_qt(d.name); }),
                  [this](const QString& text) { return save(tr("name"), [&](RepottingDay& d) { d.name = trimmed_text(text); }); }});
  day_form_->add({QStringLiteral("day_tub"), tr("Tub"), Kind::volume, tr("no batch is larger"), shown([](const RepottingDay& d) { return litre_digits(d.tub); }), [this](const QString& text) {
                    const auto litres = typed_litres(text);
                    if (!litres) return litres.problems();
                    return save(tr("tub"), [&](RepottingDay& d) { d.tub = *litres ? std::optional(mixed_l(**litres)) : std::nullopt; });
                  }});
  day_form_->add({QStringLiteral("day_scoop"), tr("Scoop"), Kind::volume, tr("struck off level"), shown([](const RepottingDay& d) { return litre_digits(d.scoop); }),
                  [this](const QString& text) {
                    const auto litres = typed_litres(text);
                    if (!litres) return litres.problems();
                    return save(tr("scoop"), [&](RepottingDay& d) { d.scoop = *litres ? std::optional(loose_l(**litres)) : std::nullopt; });
                  }});
  day_form_->add({QStringLiteral("day_settling"), tr("Settling"), Kind::percent, tr("empty: of the mix, else as learnt, else 0 %"),
                  shown([](const RepottingDay& d) { return d.settling ? number_text(d.settling->value() * 100, 6) : QString(); }), [this](const QString& text) {
                    const auto share = typed_share(text);
                    if (!share) return share.problems();
                    return save(tr("settling"), [&](RepottingDay& d) { d.settling = *share ? std::optional(Settling(**share)) : std::nullopt; });
                  }});
  day_form_->add({QStringLiteral("day_spill"), tr("Spill"), Kind::percent, tr("empty: of the mix, else as learnt, else 7 %"),
                  shown([](const RepottingDay& d) { return d.spill ? number_text(d.spill->value() * 100, 6) : QString(); }), [this](const QString& text) {
                    const auto share = typed_share(text);
                    if (!share) return share.problems();
                    return save(tr("spill"), [&](RepottingDay& d) { d.spill = *share ? std::optional(Spill(**share)) : std::nullopt; });
                  }});
  day_form_->add({QStringLiteral("day_note"), tr("Note"), Kind::words, tr("weather, helpers, what to do better"), shown([](const RepottingDay& d) { return to_qt(d.note); }),
                  [this](const QString& text) { return save(tr("note"), [&](RepottingDay& d) { d.note = trimmed_text(text); }); }});
}

QWidget* DayPage::tree_tab() {
  auto* tab = new QWidget(tabs_);
  auto* layout = new QVBoxLayout(tab);
  tree_title_ = new QLabel(tab);
  tree_title_->setObjectName(QStringLiteral("day_tree_title"));
  tree_title_->setProperty("role", "heading");
  tree_title_->setWordWrap(true);
  layout->addWidget(tree_title_);
  tree_form_ = new RecordForm(tab);
  add_tree_rows();
  connect(tree_form_, &RecordForm::typing_ended, this, [this] { book_.end_typing(); });
  tree_gone_ = new GoneNotice(book_, QStringLiteral("day_tree"), {tree_form_}, {}, tab);
  connect(tree_gone_, &GoneNotice::let_go, this, &DayPage::refresh);
  layout->addWidget(tree_gone_);
  layout->addWidget(tree_form_);
  auto* buttons = new FlowLine(tab);
  auto* again = push_button(tab, "day_tree_plan_again", tr("Take the plan from the record"), tr("Take pot litres from the tree's newest root-mass plan"));
  auto* off = push_button(tab, "day_tree_remove", tr("Take off the day"), tr("Take this tree off the day"));
  buttons->add({}, again);
  buttons->add({}, off);
  layout->addWidget(buttons);
  layout->addStretch(1);
  connect(again, &QPushButton::clicked, this, &DayPage::take_plan_again);
  connect(off, &QPushButton::clicked, this, &DayPage::remove_tree);
  return tab;
}

void DayPage::add_tree_rows() {
  const auto is_done = [this] {
    const auto stored = day();
    const auto row = front_row(stored);
    return row && stored->record.trees[*row].done;
  };
  mix_ = choice_box(tree_form_, "day_tree_mix", tr("Mix of this tree"));
  pot_ = choice_box(tree_form_, "day_tree_pot", tr("Pot of this tree"));
  connect(mix_, &QComboBox::activated, this, [this] {
    const std::string id = mix_->currentData().toString().toStdString();
    tell(save_tree(tr("mix"), [&](DayTree& tree) { tree.mix = id.empty() ? std::nullopt : std::optional(Id<MixVersion>{id}); }));
    show_tree();
  });
  connect(pot_, &QComboBox::activated, this, [this] {
    const std::string id = pot_->currentData().toString().toStdString();
    tell(save_tree(tr("pot"), [&](DayTree& tree) { tree.container = id.empty() ? std::nullopt : std::optional(Id<RecordedContainer>{id}); }));
    show_tree();
  });
  tree_form_->add(tr("Mix"), mix_);
  tree_form_->add(tr("Pot"), pot_);
  tree_form_->add({QStringLiteral("day_tree_fill"), tr("New mix in the pot"), Kind::volume, tr("as it lies; empty: all the pot holds"),
                   shown_of_tree([](const DayTree& t) { return litre_digits(t.planned); }), [this](const QString& text) {
                     const auto litres = typed_litres(text);
                     if (!litres) return litres.problems();
                     return save_tree(tr("fill"), [&](DayTree& t) { t.planned = *litres ? std::optional(mixed_l(**litres)) : std::nullopt; });
                   }});
  tree_form_->add({QStringLiteral("day_tree_worse"), tr("If it goes worse"), Kind::volume, tr("new mix of the worst fall-back"),
                   shown_of_tree([](const DayTree& t) {
                     const auto worst = std::ranges::max_element(t.worse_plans);
                     return worst == t.worse_plans.end() ? QString() : number_text(in_l(*worst), 9);
                   }),
                   [this](const QString& text) {
                     const auto litres = typed_litres(text);
                     if (!litres) return litres.problems();
                     return save_tree(tr("fall-back"), [&](DayTree& t) {
                       t.worse_plans.clear();
                       if (*litres) t.worse_plans.push_back(mixed_l(**litres));
                     });
                   }});
  tree_form_->add({QStringLiteral("day_tree_sphagnum"), tr("Sphagnum of the shoulder"), Kind::volume, tr("as it lies; from the plan, where there is a shoulder"),
                   shown_of_tree([](const DayTree& t) { return t.sphagnum ? number_text(in_ml(*t.sphagnum) / 1000, 9) : QString(); }), [this](const QString& text) {
                     const auto litres = typed_litres(text);
                     if (!litres) return litres.problems();
                     return save_tree(tr("sphagnum"), [&](DayTree& t) { t.sphagnum = *litres ? std::optional(pot_ml(**litres * 1000)) : std::nullopt; });
                   },
                   {}, {}, is_done});
  tree_form_->add({QStringLiteral("day_tree_top_dressing"), tr("Top dressing of"), Kind::words, tr("a bag like K-07, a fraction or a material; its thickness stands at the pot"),
                   shown_of_tree([](const DayTree& t) { return to_qt(t.top_dressing); }),
                   [this](const QString& text) { return save_tree(tr("top dressing"), [&](DayTree& t) { t.top_dressing = trimmed_text(text); }); }, {}, {}, is_done});
  tree_form_->add({QStringLiteral("day_tree_kept"), tr("Kept root mass"), Kind::mass, tr("weighed with what clings to it; kg can be typed"),
                   shown_of_tree([](const DayTree& t) { return t.kept_root_mass ? number_text(in_g(*t.kept_root_mass), 9) : QString(); }), [this](const QString& text) -> Problems {
                     if (text.trimmed().isEmpty()) return save_tree(tr("kept root mass"), [](DayTree& t) { t.kept_root_mass.reset(); });
                     const auto mass = parse_mass(trimmed_text(text), MassUnit::gram);
                     if (!mass) return mass.problems();
                     return save_tree(tr("kept root mass"), [&](DayTree& t) { t.kept_root_mass = mass->mass; });
                   }});
}

QWidget* DayPage::shelf_tab() {
  auto* tab = new QWidget(tabs_);
  auto* layout = new QVBoxLayout(tab);
  layout->setContentsMargins(0, 0, 6, 6);
  shelf_ = new SectionView(QStringLiteral("day_shelf"), tr("Screen and buy"), tab);
  layout->addWidget(shelf_, 1);
  find_parts_ = push_button(tab, "day_find_parts", tr("Find parts from the shelf"), tr("Find a recipe from what is on the shelf"));
  layout->addWidget(find_parts_, 0, Qt::AlignLeft);
  connect(find_parts_, &QPushButton::clicked, this, &DayPage::find_parts_wanted);
  return tab;
}

QWidget* DayPage::list_tab() {
  auto* tab = new QWidget(tabs_);
  auto* layout = new QVBoxLayout(tab);
  layout->setContentsMargins(4, 4, 4, 4);
  auto* sides = new FoldingSides(QStringLiteral("day_lists_splitter"), tab);
  layout->addWidget(sides);
  const auto column = [&](const char* object_name, const QString& title, bool evening) {
    auto* side = new QWidget(sides);
    QListWidget* const list = checklist(side, object_name, title, evening);
    sides->add(side, 1);
    return list;
  };
  evening_ = column("day_list_evening", tr("The evening before"), true);
  morning_ = column("day_list_morning", tr("In the morning"), false);
  computed_list_ = new SectionView(QStringLiteral("day_list_computed"), tr("What follows from the figures"), sides);
  sides->add(computed_list_, 2);
  return tab;
}

QListWidget* DayPage::checklist(QWidget* parent, const char* object_name, const QString& title, bool evening) {
  auto* layout = new QVBoxLayout(parent);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* heading = new QLabel(title, parent);
  heading->setProperty("role", "heading");
  auto* list = new QListWidget(parent);
  list->setObjectName(QString::fromLatin1(object_name));
  list->setAccessibleName(title);
  list->setAccessibleDescription(tr("Space ticks, F2 changes a line, Delete takes it away."));
  heading->setBuddy(list);
  auto* fresh = new QLineEdit(parent);
  fresh->setObjectName(QString::fromLatin1(object_name) + QStringLiteral("_new"));
  fresh->setPlaceholderText(tr("one more line, then Enter"));
  fresh->setAccessibleName(tr("One more line: %1").arg(title));
  fresh->setMinimumHeight(26);
  auto* label = new QLabel(tr("Add"), parent);
  label->setBuddy(fresh);
  auto* line = new QHBoxLayout;
  line->addWidget(label);
  line->addWidget(fresh, 1);
  layout->addWidget(heading);
  layout->addWidget(list);
  layout->addLayout(line);
  connect(fresh, &QLineEdit::returnPressed, this, [this, fresh, evening] {
    const std::string text = trimmed_text(fresh->text());
    if (text.empty()) return;
    if (save(tr("list"), [&](RepottingDay& d) { d.checklist.push_back({text, evening, false}); }).empty()) fresh->clear();
  });
  connect(list, &QListWidget::itemChanged, this, [this](QListWidgetItem* item) {
    if (filling_) return;
    const auto at = item->data(Qt::UserRole).toULongLong();
    save(tr("list"), [&](RepottingDay& d) {
      if (at >= d.checklist.size()) return;
      d.checklist[at].done = item->checkState() == Qt::Checked;
      if (!item->text().trimmed().isEmpty()) d.checklist[at].text = trimmed_text(item->text());
    });
  });
  auto* remove = new QShortcut(QKeySequence(Qt::Key_Delete), list, nullptr, nullptr, Qt::WidgetShortcut);
  connect(remove, &QShortcut::activated, this, [this, list] {
    const QListWidgetItem* item = list->currentItem();
    if (item == nullptr) return;
    const auto at = item->data(Qt::UserRole).toULongLong();
    save(tr("list"), [&](RepottingDay& d) {
      if (at < d.checklist.size()) d.checklist.erase(d.checklist.begin() + static_cast<std::ptrdiff_t>(at));
    });
  });
  return list;
}

QWidget* DayPage::left_over_tab() {
  auto* tab = new QWidget(tabs_);
  auto* layout = new QVBoxLayout(tab);
  auto* words = new QLabel(tr("What was made and what is left of a mix: the leftover becomes a tub in stock, and what was spilt teaches the next day."), tab);
  words->setWordWrap(true);
  words->setProperty("role", "muted");
  layout->addWidget(words);
  left_form_ = new RecordForm(tab);
  left_mix_ = choice_box(left_form_, "day_left_mix", tr("Mix that is left over"));
  left_form_->add(tr("Mix"), left_mix_);
  const auto keep = [](QString& place) {
    return [&place](const QString& text) -> Problems {
      place = text;
      return typed_litres(text).problems();
    };
  };
  auto* made = left_form_->add({QStringLiteral("day_made"), tr("Made in all"), Kind::volume, {}, [this] { return made_text_; }, keep(made_text_)});
  auto* left = left_form_->add({QStringLiteral("day_left"), tr("Left over"), Kind::volume, {}, [this] { return left_text_; }, keep(left_text_)});
  // Enter in an empty line takes the figure that stands there grey.
  connect(made, &QLineEdit::returnPressed, this, [this] { take_planned(made_text_, planned_made_); });
  connect(left, &QLineEdit::returnPressed, this, [this] { take_planned(left_text_, likely_left_); });
  layout->addWidget(left_form_);
  auto* button = push_button(tab, "day_return", tr("Return to stock"), tr("Return the leftover to stock"));
  layout->addWidget(button, 0, Qt::AlignLeft);
  returned_ = new QLabel(tab);
  returned_->setObjectName(QStringLiteral("day_returned"));
  returned_->setWordWrap(true);
  returned_->setTextFormat(Qt::PlainText);
  layout->addWidget(returned_);
  layout->addStretch(1);
  connect(button, &QPushButton::clicked, this, &DayPage::return_left);
  connect(left_mix_, &QComboBox::activated, this, &DayPage::show_answer);
  return tab;
}

QWidget* DayPage::season_tab() {
  auto* tab = new QWidget(tabs_);
  auto* layout = new QVBoxLayout(tab);
  layout->setContentsMargins(6, 4, 6, 6);
  season_form_ = new RecordForm(tab);
  season_form_->add({QStringLiteral("season_until"), tr("Trees due by"), Kind::words, tr("a day like %1").arg(example_day()), [this] { return day_text(until_); }, [this](const QString& text) -> Problems {
                       PlannedSeason season;
                       season.until = typed_day(text);
                       for (const Problem& problem : check(season)) {
                         if (problem.where.pointer == "/until") return {problem};
                       }
                       until_ = season.until;
                       show_season_answer();
                       return {};
                     }});
  season_form_->refresh(true);
  layout->addWidget(season_form_);
  season_ = new SectionView(QStringLiteral("season_view"), tr("Season"), tab);
  layout->addWidget(season_, 1);
  auto* print = push_button(tab, "season_print", tr("Season sheet..."), tr("Write the season as PDF"));
  season_how_ = new HowButton([this] { return season_figure_; }, tab);
  auto* line = new QHBoxLayout;
  line->addWidget(print);
  line->addWidget(season_how_);
  line->addStretch(1);
  layout->addLayout(line);
  connect(print, &QPushButton::clicked, this, [this] { choose_file(DaySheet::season); });
  return tab;
}

void DayPage::fit_columns() {
  const QFontMetrics metrics(font());
  constexpr int around_words = 24;
  constexpr int close_around_words = 16;
  std::vector<int> wanted;
  std::vector<int> least;
  for (const char* widest : {"", "T-000 an old black pine", "small pots and more", "C-00 shallow oval", "", "000.00 L", "000.00 L", "00.00", "000.00 L", "", "second helper", ""}) {
    const auto column = static_cast<int>(wanted.size());
    const QString heading = table_->model()->headerData(column, Qt::Horizontal).toString();
    int words = std::max(metrics.horizontalAdvance(QString::fromLatin1(widest)), metrics.horizontalAdvance(heading));
    int broken = metrics.horizontalAdvance(QString::fromLatin1(widest));
    for (const QString& line : in_two_lines(heading).split(u'\n')) broken = std::max(broken, metrics.horizontalAdvance(line));
    least.push_back(broken + close_around_words);
    if (column == DayColumn::buds)
      for (const QString& state : bud_choices()) words = std::max(words, metrics.horizontalAdvance(state));
    if (column == DayColumn::tree || column == DayColumn::note)
      for (int row = 0; row < lines_->rowCount(); ++row) words = std::max(words, metrics.horizontalAdvance(lines_->index(row, column).data().toString()));
    wanted.push_back(words + around_words);
  }
  columns_->set_wanted(std::move(wanted), std::move(least));
}

// In large text the page scrolls, rather than that the list of the day has room for half a tree.
void DayPage::keep_rows_in_sight() {
  constexpr int rows_in_sight = 3;
  const QHeaderView& rows = *table_->verticalHeader();
  const QHeaderView& headings = *table_->horizontalHeader();
  int height = std::max(headings.sizeHint().height(), headings.minimumHeight()) + table_->horizontalScrollBar()->sizeHint().height() + 2 * table_->frameWidth();
  for (int row = 0; row < std::min(rows_in_sight, rows.count()); ++row) height += rows.sectionSize(row);
  if (table_->minimumHeight() != height) table_->setMinimumHeight(height);
}

void DayPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange && table_ != nullptr) fit_columns();
}

bool DayPage::eventFilter(QObject* watched, QEvent* event) {
  if (watched == table_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool opens = key == Qt::Key_F2 || key == Qt::Key_Return || key == Qt::Key_Enter;
    if (opens && go_to_choice(table_->currentIndex())) return true;
  }
  return QWidget::eventFilter(watched, event);
}

bool DayPage::go_to_choice(const QModelIndex& cell) {
  if (!cell.isValid()) return false;
  const DayLine& line = lines_->lines()[static_cast<std::size_t>(cell.row())];
  const bool is_of_choice = cell.column() == DayColumn::mix || cell.column() == DayColumn::pot || (cell.column() == DayColumn::note && !line.fault.isEmpty());
  const auto stored = day();
  bring_to_front(line.id);
  const auto row = front_row(stored);
  if (!is_of_choice || !row) return false;
  const bool to_mix = cell.column() == DayColumn::mix || (cell.column() == DayColumn::note && !stored->record.trees[*row].mix);
  tabs_->setCurrentIndex(1);
  (to_mix ? mix_ : pot_)->setFocus(Qt::ShortcutFocusReason);
  return true;
}

void DayPage::take_planned(QString& typed, const std::optional<MixedVolume>& figure) {
  if (!typed.trimmed().isEmpty() || !figure) return;
  typed = number_text(std::round(in_l(*figure) * 100) / 100, 9);
  left_form_->refresh(true);
}

void DayPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void DayPage::set_units(UnitSystem units) {
  units_ = units;
  day_form_->set_units(units);
  tree_form_->set_units(units);
  left_form_->set_units(units);
  refresh();
}

}  // namespace gritwright::desktop
