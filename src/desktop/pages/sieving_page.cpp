#include "sieving_page.hpp"

#include <QComboBox>
#include <QFrame>
#include <QSplitter>
#include <QTabBar>
#include <QTabWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "answer_column.hpp"
#include "charts/grading_chart.hpp"
#include "charts/lot_chart.hpp"
#include "charts/picture_tabs.hpp"
#include "gritwright/formats/typed_quantity.hpp"
#include "models/figures.hpp"
#include "models/picture_figures.hpp"
#include "models/range_keeper.hpp"
#include "widgets/band_row.hpp"
#include "widgets/caution_bar.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/flow_line.hpp"
#include "widgets/folding_sides.hpp"
#include "widgets/grain_form.hpp"
#include "widgets/how_button.hpp"
#include "widgets/screening_panel.hpp"
#include "widgets/sheet_editor.hpp"
#include "widgets/sieve_table.hpp"
#include "widgets/tab_side.hpp"
#include "widgets/verdict_panel.hpp"

namespace gritwright::desktop {

namespace {

/// Of the sheet as typed; those that can't be read are left out.
std::vector<Aperture> openings_of(const SieveSheet& sheet) {
  std::vector<Aperture> openings;
  for (const PanText& row : sheet.rows)
    if (const auto opening = parse_aperture(row.aperture.toStdString())) openings.push_back(*opening);
  return openings;
}

}  // namespace

SievingPage::SievingPage(Bench& bench, RangeKeeper& ranges, QWidget* parent) : QWidget(parent), bench_(bench), ranges_(ranges) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 8, 8, 8);
  auto* sides = new FoldingSides(QStringLiteral("sieving_splitter"), this);
  sides->add(inputs());
  sides->add(answers(), 1);
  sides->set_sizes({500, 780});
  layout->addWidget(sides);
  connect(&bench_, &Bench::changed, this, &SievingPage::refresh);
  connect(&bench_, &Bench::units_changed, this, &SievingPage::refresh);
  connect(&bench_, &Bench::surroundings_changed, this, &SievingPage::refresh);
  connect(&bench_, &Bench::current_component_changed, this, &SievingPage::refresh);
  connect(&ranges_, &RangeKeeper::test_changed, this, &SievingPage::refresh);
  connect(&sheet_->table(), &SieveTable::current_row_changed, this, [this](int row) {
    marked_row_ = row;
    refresh();
  });
  refresh();
}

QWidget* SievingPage::choosers(QWidget* parent) {
  auto* row = new FlowLine(parent);
  const auto chooser = [&](const char* object_name, const QString& label_text, int stretch, int signs) {
    auto* box = new QComboBox(row);
    box->setObjectName(QString::fromLatin1(object_name));
    QString name = label_text;
    box->setAccessibleName(name.remove(u'&'));
    box->setMinimumHeight(26);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    row->add(label_text, box, stretch, QString(signs, u'n'));
    return box;
  };
  sheets_ = chooser("sheet_chooser", tr("Component"), 1, 12);
  row->begin_line();
  bags_ = chooser("bag_chooser", tr("Bag"), 2, 24);
  sets_ = chooser("sieve_set_chooser", tr("Sieves"), 1, 11);
  set_bags({});
  set_sieve_sets({});
  connect(sheets_, &QComboBox::activated, &bench_, &Bench::set_current_component);
  connect(bags_, &QComboBox::activated, this, [this](int index) {
    if (index > 0) emit bag_chosen(bags_->itemData(index).toString());
    refresh_choosers();
  });
  connect(sets_, &QComboBox::activated, this, [this](int index) {
    if (index > 0) emit sieve_set_chosen(sets_->itemData(index).toString());
    refresh_choosers();
  });
  return row;
}

QWidget* SievingPage::inputs() {
  auto* column = new QWidget(this);
  auto* layout = new QVBoxLayout(column);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  layout->addWidget(choosers(column));
  caution_ = new CautionBar(QStringLiteral("sieving_dust"), tr("Dust:"),
                            tr("sieve dry grain outdoors, wind behind you, with a mask (P2 or N95 at least, P3 or P100 for grit and sand); clean with a "
                               "damp cloth, not a broom. General information; safety sheets, local codes and qualified advice prevail."),
                            column);
  layout->addWidget(caution_);
  tabs_ = new QTabWidget(column);
  tabs_->setObjectName(QStringLiteral("input_tabs"));
  tabs_->setAccessibleName(tr("What is typed"));
  tabs_->setDocumentMode(true);
  sheet_ = new SheetEditor(bench_, tabs_);
  tabs_->addTab(new TabSide(sheet_, tabs_), tr("Sieve test"));
  tabs_->addTab(new TabSide(new GrainForm(bench_, tabs_), tabs_), tr("Grain"));
  layout->addWidget(tabs_, 1);
  // Outside of what scrolls: it is looked at after every pan.
  auto* side = new QWidget(this);
  auto* rows = new QVBoxLayout(side);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(4);
  rows->addWidget(new ColumnScroll(column, side), 1);
  sheet_->balance().setContentsMargins(10, 0, 10, 0);
  // The record's own action comes into it: without a record there is nowhere to keep a test.
  auto* keep = new QToolButton(side);
  keep->setObjectName(QStringLiteral("sheet_keep"));
  keep->setMinimumHeight(28);
  keep->hide();
  auto* foot = new FlowLine(side);
  foot->keep_together();
  foot->add({}, &sheet_->balance(), 1, QString(24, u'n'));
  balance_how_ = new HowButton([this] { return balance_figure(bench_); }, side);
  foot->add({}, balance_how_);
  foot->add({}, keep);
  // Where the column above scrolls on, its words must not run into the sum.
  auto* edge = new QFrame(side);
  edge->setFrameShape(QFrame::HLine);
  edge->setFrameShadow(QFrame::Plain);
  edge->setForegroundRole(QPalette::Mid);
  rows->addWidget(edge);
  rows->addWidget(foot);
  return side;
}

QWidget* SievingPage::answers() {
  const auto add_pictures = [this](PictureTabs& pictures) {
    chart_ = new GradingChart(&pictures);
    chart_->setObjectName(QStringLiteral("sieving_chart"));
    lots_ = new LotChart(bench_, &pictures);
    pictures.add({tr("Curve"), chart_, "sieving_table", [this] { return grading_table(bench_, Curves::on_screen); },
                  [this] { return grading_data(bench_, Curves::on_screen); }, [this] { return explain_sieving_curve(bench_); }});
    pictures.add({tr("Lot to lot"), lots_, "lot_table", [this] { return lot_table(bench_); }, [this] { return lot_data(bench_); }, [this] { return explain_lots(bench_); }});
  };
  const AnswerColumn answer = answer_column(bench_, this, {QStringLiteral("sieving_answer_splitter"), QStringLiteral("sieving_pictures"), tr("Pictures of the sieve test"), QString()}, add_pictures);
  QSplitter* const column = answer.column;
  pictures_ = answer.pictures;
  band_ = answer.band;
  follows_ = new QTabWidget(column);
  follows_->setObjectName(QStringLiteral("follow_tabs"));
  follows_->setAccessibleName(tr("What follows for the bag"));
  follows_->setDocumentMode(true);
  verdict_ = new VerdictPanel(bench_, ranges_, follows_);
  screening_ = new ScreeningPanel(bench_, ranges_, follows_);
  follows_->addTab(new ColumnScroll(verdict_, follows_), tr("Verdict"));
  follows_->addTab(new ColumnScroll(screening_, follows_), tr("Screen this bag"));
  column->addWidget(follows_);
  column->setSizes({430, 330});
  return column;
}

void SievingPage::set_bags(const std::vector<Choice>& bags) {
  bags_->clear();
  bags_->addItem(tr("none, or choose one to grade"), QString());
  for (const Choice& bag : bags) bags_->addItem(bag.text, bag.id);
  bags_->setEnabled(!bags.empty());
  // The list was read anew, not what lies on the bench: the bag of the sheet stays chosen.
  refresh_choosers();
}

void SievingPage::set_sieve_sets(const std::vector<Choice>& sets) {
  sets_->clear();
  sets_->addItem(tr("as typed"), QString());
  sieve_sets_.clear();
  for (const Choice& set : sets) {
    sets_->addItem(set.text, set.id);
    sieve_sets_.push_back(set.openings);
  }
  sets_->setEnabled(!sets.empty());
  refresh_choosers();
}

void SievingPage::show_sheet() {
  tabs_->setCurrentIndex(0);
  sheet_->table().setFocus();
  scroll_to_whole(sheet_->table());  // also where the keys were in it already
}

void SievingPage::show_grain() {
  tabs_->setCurrentIndex(1);
  tabs_->currentWidget()->findChild<QWidget*>(QStringLiteral("material"))->setFocus();
}

void SievingPage::show_verdict() {
  follows_->setCurrentIndex(0);
  follows_->tabBar()->setFocus();
}

void SievingPage::show_screening() {
  follows_->setCurrentIndex(1);
  screening_->take_focus();
}

void SievingPage::show_band() { band_->take_focus(); }
void SievingPage::show_curve() { pictures_->show_picture(chart_); }
void SievingPage::show_lots() { pictures_->show_picture(lots_); }

void SievingPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void SievingPage::refresh_choosers() {
  const auto& components = bench_.state().components;
  bool same = sheets_->count() == static_cast<int>(components.size());
  for (int i = 0; same && i < sheets_->count(); ++i) same = sheets_->itemText(i) == components[static_cast<std::size_t>(i)].name;
  if (!same) {
    sheets_->clear();
    for (const ComponentSheet& component : components) sheets_->addItem(component.name);
  }
  const auto current = static_cast<std::size_t>(bench_.current_component());
  sheets_->setCurrentIndex(static_cast<int>(current));
  const QString bag = current < components.size() ? components[current].bag : QString();
  bags_->setCurrentIndex(std::max(0, bag.isEmpty() ? 0 : bags_->findData(bag)));
  const auto set = current < components.size() ? std::ranges::find(sieve_sets_, openings_of(components[current].sheet)) : sieve_sets_.end();
  sets_->setCurrentIndex(set == sieve_sets_.end() ? 0 : 1 + static_cast<int>(set - sieve_sets_.begin()));
}

void SievingPage::refresh() {
  if (!isVisible()) return;
  refresh_choosers();
  GradingPicture picture = grading_picture(bench_, marked_row_, Curves::on_screen);
  add_ribbon(picture, ranges_.test());
  chart_->show_picture(picture, grading_sentence(bench_, Curves::on_screen));
  pictures_->refresh_table();
  balance_how_->set_figure(balance_figure(bench_));
}

}  // namespace gritwright::desktop
