#include "mix_page.hpp"

#include <QHeaderView>
#include <QLabel>
#include <QSplitter>
#include <QTabBar>
#include <QTabWidget>
#include <QTableWidget>
#include <QVBoxLayout>

#include "charts/grading_chart.hpp"
#include "charts/pot_section_view.hpp"
#include "text.hpp"
#include "widgets/card_grid.hpp"
#include "widgets/caution_bar.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/field_form.hpp"
#include "widgets/figure_panel.hpp"
#include "widgets/grain_form.hpp"
#include "widgets/parts_panel.hpp"
#include "widgets/pot_form.hpp"
#include "widgets/sheet_editor.hpp"
#include "widgets/sieve_table.hpp"
#include "widgets/verdict_panel.hpp"

namespace gritwright::desktop {

namespace {

QTableWidget* read_only_table(const char* object_name, const QString& name, QWidget* parent) {
  auto* table = new QTableWidget(parent);
  table->setObjectName(QString::fromLatin1(object_name));
  table->setAccessibleName(name);
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table->setAlternatingRowColors(true);
  table->setTabKeyNavigation(false);
  table->verticalHeader()->hide();
  return table;
}

void fill(QTableWidget* table, const QStringList& heading, const std::vector<QStringList>& rows) {
  table->setColumnCount(static_cast<int>(heading.size()));
  table->setRowCount(static_cast<int>(rows.size()));
  table->setHorizontalHeaderLabels(heading);
  for (int row = 0; row < table->rowCount(); ++row) {
    const QStringList& cells = rows[static_cast<std::size_t>(row)];
    for (int column = 0; column < cells.size(); ++column) {
      auto* item = new QTableWidgetItem(cells[column]);
      item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
      table->setItem(row, column, item);
    }
  }
  table->resizeColumnsToContents();
}

}  // namespace

MixPage::MixPage(Bench& bench, QWidget* parent) : QWidget(parent), bench_(bench) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 8, 8, 8);
  auto* splitter = new QSplitter(Qt::Horizontal, this);
  splitter->setObjectName(QStringLiteral("mix_splitter"));
  splitter->setChildrenCollapsible(false);
  splitter->setHandleWidth(8);
  splitter->addWidget(inputs());
  splitter->addWidget(answers());
  splitter->setSizes({460, 820});
  splitter->setStretchFactor(0, 0);
  splitter->setStretchFactor(1, 1);
  layout->addWidget(splitter);
  connect(&bench_, &Bench::changed, this, &MixPage::refresh);
  connect(&bench_, &Bench::units_changed, this, &MixPage::refresh);
  connect(&bench_, &Bench::current_component_changed, this, &MixPage::refresh);
  connect(&sheet_->table(), &SieveTable::current_row_changed, this, [this](int row) {
    marked_row_ = row;
    refresh();
  });
  refresh();
}

QWidget* MixPage::inputs() {
  auto* column = new QWidget(this);
  auto* layout = new QVBoxLayout(column);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  parts_ = new PartsPanel(bench_, column);
  layout->addWidget(parts_);
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
  tabs_->addTab(sheet_, tr("Sieve test"));
  verdict_ = new VerdictPanel(bench_, tabs_);
  tabs_->addTab(verdict_, tr("Verdict"));
  tabs_->addTab(new GrainForm(bench_, tabs_), tr("Grain"));
  tabs_->addTab(new PotForm(bench_, tabs_), tr("Pot"));
  layout->addWidget(tabs_, 1);
  return new ColumnScroll(column, this);
}

QWidget* MixPage::band_row(QWidget* parent) {
  auto* row = new QWidget(parent);
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* from = new FieldForm(bench_, [this] { return &bench_.evaluation().faults; }, row);
  auto* to = new FieldForm(bench_, [this] { return &bench_.evaluation().faults; }, row);
  const auto what = [] { return tr("wanted band"); };
  from->add({QStringLiteral("band_from"), tr("Wanted grain, from"), Kind::aperture, what, [](BenchState& state) -> QString* { return &state.band_from; },
             {"/band/from"}, tr("finest size wanted"), {}, {}, {}});
  to->add({QStringLiteral("band_to"), tr("to"), Kind::aperture, what, [](BenchState& state) -> QString* { return &state.band_to; },
           {"/band/to"}, tr("coarsest size wanted"), {}, {}, {}});
  layout->addWidget(from);
  layout->addWidget(to);
  layout->addStretch(1);
  return row;
}

QWidget* MixPage::answers() {
  auto* column = new QSplitter(Qt::Vertical, this);
  column->setObjectName(QStringLiteral("answer_splitter"));
  column->setChildrenCollapsible(false);
  column->setHandleWidth(8);
  auto* picture = new QWidget(column);
  auto* layout = new QVBoxLayout(picture);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  views_ = new QTabWidget(picture);
  views_->setObjectName(QStringLiteral("chart_views"));
  views_->setAccessibleName(tr("Pictures and their tables"));
  views_->setDocumentMode(true);
  chart_ = new GradingChart(views_);
  chart_->setObjectName(QStringLiteral("grading_chart"));
  table_ = read_only_table("grading_table", tr("Grading as a table, percent passing by sieve"), views_);
  section_ = new PotSectionView(bench_, views_);
  section_table_ = read_only_table("pot_section_table", tr("Pot in section as a table, shares by height"), views_);
  views_->addTab(chart_, tr("Curves"));
  views_->addTab(table_, tr("As a table"));
  views_->addTab(section_, tr("Pot in section"));
  views_->addTab(section_table_, tr("Its table"));
  connect(views_, &QTabWidget::currentChanged, this, &MixPage::refresh_table);
  layout->addWidget(views_, 1);
  layout->addWidget(band_row(picture));
  column->addWidget(picture);

  auto* grid = new CardGrid(column);
  for (std::size_t i = 0; i < bench_figures(bench_).size(); ++i) {
    cards_.push_back(new FigurePanel(grid));
    grid->add_card(cards_.back());
  }
  notes_ = new QLabel(grid);
  notes_->setObjectName(QStringLiteral("notes"));
  notes_->setWordWrap(true);
  notes_->setTextFormat(Qt::PlainText);
  notes_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  notes_->setFocusPolicy(Qt::NoFocus);
  grid->set_below(notes_);
  column->addWidget(new ColumnScroll(grid, column));
  column->setSizes({400, 400});
  return column;
}

void MixPage::show_sheet() {
  tabs_->setCurrentIndex(0);
  sheet_->table().setFocus();
}

void MixPage::show_verdict() {
  tabs_->setCurrentWidget(verdict_);
  tabs_->tabBar()->setFocus();
}

void MixPage::show_grain() {
  tabs_->setCurrentIndex(2);
  tabs_->currentWidget()->findChild<QWidget*>(QStringLiteral("material"))->setFocus();
}

void MixPage::show_pot() {
  tabs_->setCurrentIndex(3);
  tabs_->currentWidget()->findChild<QWidget*>(QStringLiteral("pot_shape"))->setFocus();
}

void MixPage::show_band() { findChild<QWidget*>(QStringLiteral("band_from"))->setFocus(); }

void MixPage::show_as_table(bool table) {
  const bool of_pot = views_->currentIndex() >= 2;
  views_->setCurrentIndex((of_pot ? 2 : 0) + (table ? 1 : 0));
}

void MixPage::show_section() {
  views_->setCurrentWidget(section_);
  section_->setFocus();
}

void MixPage::show_curves() {
  views_->setCurrentWidget(chart_);
  chart_->setFocus();
}

void MixPage::refresh() {
  chart_->show_picture(grading_picture(bench_, marked_row_), grading_sentence(bench_));
  refresh_table();
  const std::vector<FigureGroup> groups = bench_figures(bench_);
  for (std::size_t i = 0; i < cards_.size(); ++i) cards_[i]->show_group(groups[i]);
  refresh_notes();
}

void MixPage::refresh_table() {
  // Filled only while in view: a slider that is dragged repaints the page sixty times a second.
  if (views_->currentWidget() == table_) {
    const GradingTable table = grading_table(bench_);
    fill(table_, table.heading, table.rows);
  } else if (views_->currentWidget() == section_table_) {
    const PotSectionTable table = pot_section_table(bench_);
    fill(section_table_, table.heading, table.rows);
  }
}

void MixPage::refresh_notes() {
  QStringList sentences;
  for (const Note& note : bench_.evaluation().notes) {
    sentences << (note.level == Level::warning ? tr("Mind: %1").arg(sentence_text(note, bench_.units())) : sentence_text(note, bench_.units()));
  }
  sentences.removeDuplicates();
  notes_->setText(sentences.isEmpty() ? QString() : QStringLiteral("\u2022 ") + sentences.join(QStringLiteral("\n\u2022 ")));
  notes_->setVisible(!sentences.isEmpty());
}

}  // namespace gritwright::desktop
