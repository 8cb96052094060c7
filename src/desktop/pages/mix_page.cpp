#include "mix_page.hpp"

#include <QDragEnterEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QTabWidget>
#include <QVBoxLayout>

#include "answer_column.hpp"
#include "charts/ageing_view.hpp"
#include "charts/comparison_view.hpp"
#include "charts/grading_chart.hpp"
#include "charts/parts_bar.hpp"
#include "charts/picture_tabs.hpp"
#include "charts/pot_section_view.hpp"
#include "charts/score_view.hpp"
#include "charts/trade_off_view.hpp"
#include "models/parts_finder.hpp"
#include "models/picture_figures.hpp"
#include "models/range_keeper.hpp"
#include "models/record_list_model.hpp"
#include "text.hpp"
#include "widgets/band_row.hpp"
#include "widgets/card_grid.hpp"
#include "widgets/caution_bar.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/field_form.hpp"
#include "widgets/figure_panel.hpp"
#include "widgets/find_panel.hpp"
#include "widgets/flow_line.hpp"
#include "widgets/folding_sides.hpp"
#include "widgets/page_stack.hpp"
#include "widgets/parts_panel.hpp"
#include "widgets/pot_form.hpp"
#include "widgets/recipes_panel.hpp"
#include "widgets/tab_side.hpp"
#include "widgets/wrapped_label.hpp"

namespace gritwright::desktop {

MixPage::MixPage(Bench& bench, RangeKeeper& ranges, QWidget* parent) : QWidget(parent), bench_(bench), ranges_(ranges), finder_(new PartsFinder(bench, this)) {
  setAcceptDrops(true);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 8, 8, 8);
  auto* sides = new FoldingSides(QStringLiteral("mix_splitter"), this);
  sides->add(inputs());
  sides->add(answers(), 1);
  sides->set_sizes({440, 840});
  layout->addWidget(sides);
  connect(&bench_, &Bench::changed, this, &MixPage::refresh);
  connect(&bench_, &Bench::units_changed, this, &MixPage::refresh);
  connect(&ranges_, &RangeKeeper::mix_changed, this, [this] {
    if (!isVisible()) return;
    refresh_figures();
    pictures_->refresh_table();
  });
  connect(comparison_, &ComparisonView::compared, pictures_, &PictureTabs::refresh_table);
  connect(ageing_, &AgeingView::aged, pictures_, &PictureTabs::refresh_table);
  connect(finder_, &PartsFinder::found_changed, pictures_, &PictureTabs::refresh_table);
  connect(sides_, &QTabWidget::currentChanged, this, &MixPage::side_changed);
}

QWidget* MixPage::name_row(QWidget* parent) {
  auto* row = new FlowLine(parent);
  const auto missing = [this] {
    if (!bench_.state().mix_name.trimmed().isEmpty()) name_faults_.clear();
    return static_cast<const Faults*>(&name_faults_);
  };
  name_ = new FieldForm(bench_, missing, row);
  name_->add({QStringLiteral("mix_name"), tr("Mix"), Kind::words, [] { return tr("name of the mix"); }, [](BenchState& state) -> QString* { return &state.mix_name; },
              {"/mix/name"}, tr("what it is for"), {}, {}, {}});
  auto* keep = new QPushButton(tr("&Keep this mix"), row);
  keep->setObjectName(QStringLiteral("keep_mix"));
  keep->setAccessibleName(tr("Keep this mix in the record"));
  keep->setMinimumHeight(28);
  connect(keep, &QPushButton::clicked, this, &MixPage::keep_wanted);
  row->add({}, name_, 1, QString(18, u'n'));
  row->add({}, keep);
  return row;
}

QWidget* MixPage::inputs() {
  auto* column = new QWidget(this);
  auto* layout = new QVBoxLayout(column);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  layout->addWidget(name_row(column));
  sides_ = new QTabWidget(column);
  sides_->setObjectName(QStringLiteral("mix_sides"));
  sides_->setAccessibleName(tr("Ways to a mix"));
  sides_->setDocumentMode(true);
  sides_->addTab(new TabSide(by_hand(), sides_), tr("By hand"));
  find_panel_ = new FindPanel(bench_, *finder_, sides_);
  auto* find = new QWidget(sides_);
  auto* inside = new QVBoxLayout(find);
  inside->setContentsMargins(0, 6, 0, 0);
  inside->addWidget(find_panel_);
  inside->addStretch(1);
  sides_->addTab(new TabSide(find, sides_), tr("Find parts"));
  layout->addWidget(sides_, 1);
  return new ColumnScroll(column, this);
}

QWidget* MixPage::by_hand() {
  auto* column = new QWidget(this);
  auto* layout = new QVBoxLayout(column);
  layout->setContentsMargins(0, 6, 0, 0);
  layout->setSpacing(8);
  parts_ = new PartsPanel(bench_, column);
  layout->addWidget(parts_);
  caution_ = new CautionBar(QStringLiteral("mixing_dust"), tr("Dust and moss:"),
                            tr("wet the grain before mixing it, and keep long-fibred moss off your skin and out of your lungs. General information; safety sheets, "
                               "local codes and qualified advice prevail."),
                            column);
  layout->addWidget(caution_);
  auto* card = new QFrame(column);
  card->setObjectName(QStringLiteral("card"));
  auto* inside = new QVBoxLayout(card);
  inside->setContentsMargins(0, 8, 0, 0);
  auto* heading = new QLabel(tr("Pot"), card);
  heading->setProperty("role", "heading");
  auto* test = new QPushButton(tr("Pot test..."), card);
  test->setObjectName(QStringLiteral("mix_pot_test"));
  test->setAccessibleName(tr("Pot test: measure air and water of a kept mix"));
  test->setMinimumHeight(28);
  connect(test, &QPushButton::clicked, this, &MixPage::pot_test_wanted);
  auto* above = new QHBoxLayout;
  above->setContentsMargins(10, 0, 10, 0);
  above->addWidget(heading, 1);
  above->addWidget(test);
  inside->addLayout(above);
  pot_ = new PotForm(bench_, card);
  inside->addWidget(pot_);
  layout->addWidget(card);
  layout->addStretch(1);
  return column;
}

QWidget* MixPage::answers() {
  const auto add_pictures = [this](PictureTabs& pictures) {
    chart_ = new GradingChart(&pictures);
    chart_->setObjectName(QStringLiteral("grading_chart"));
    section_ = new PotSectionView(bench_, &pictures);
    litres_ = new PartsBar(bench_, ranges_, &pictures);
    comparison_ = new ComparisonView(bench_, &pictures);
    pictures.add({tr("Curves"), chart_, "grading_table", [this] { return grading_table(bench_); }, [this] { return grading_data(bench_); }, [this] { return explain_mix_curve(bench_); }});
    pictures.add({tr("Pot in section"), section_, "pot_section_table", [this] { return pot_section_table(bench_, ranges_.mix()); }, [this] { return pot_section_data(bench_, ranges_.mix()); },
                  [this] { return explain_pot_section(bench_); }});
    pictures.add({tr("Litres"), litres_, "parts_table", [this] { return parts_table(bench_, ranges_.mix()); }, [this] { return parts_data(bench_, ranges_.mix()); }, [this] { return explain_litres(bench_); }});
    pictures.add({tr("Compare"), comparison_, "comparison_table", [this] { return comparison_table(comparison_->comparison(), bench_.units()); },
                  [this] { return comparison_data(comparison_->comparison()); }, [this] { return explain_comparison(comparison_->comparison()); }});
    ageing_ = new AgeingView(bench_, &pictures);
    years_ = new ColumnScroll(ageing_, &pictures);
    years_->setFocusProxy(ageing_);
    pictures.add({tr("Years"), years_, "ageing_table",
                  [this] {
                    ageing_->ask();
                    return ageing_table(ageing_->ageing(), bench_.units());
                  },
                  [this] { return ageing_data(ageing_->ageing()); }, [this] { return explain_ageing(ageing_->ageing()); }});
    trade_off_ = new TradeOffView(*finder_, &pictures);
    pictures.add({tr("Trade-offs"), trade_off_, "trade_off_table", [this] { return trade_off_table(finder_->found()); }, [this] { return trade_off_data(finder_->found()); },
                  [this] { return explain_trade_offs(finder_->found(), bench_.units()); }});
    scores_ = new ScoreView(&pictures);
    scores_page_ = new ColumnScroll(scores_, &pictures);
    scores_page_->setFocusProxy(scores_);
    pictures.add({tr("Pot tests"), scores_page_, "score_table", [this] { return score_table(scores_->tests()); }, [this] { return score_data(scores_->tests()); },
                  [this] { return explain_scores(scores_->tests()); }});
  };
  const AnswerColumn answer = answer_column(bench_, this, {QStringLiteral("answer_splitter"), QStringLiteral("chart_views"), tr("Pictures of the mix"), QStringLiteral("mix_")}, add_pictures);
  QSplitter* const column = answer.column;
  pictures_ = answer.pictures;
  band_ = answer.band;

  below_ = new PageStack(column);  // the recipes need more width than the figures
  below_->addWidget(figures());
  recipes_ = new RecipesPanel(bench_, *finder_, below_);
  below_->addWidget(new ColumnScroll(recipes_, below_));
  column->addWidget(below_);
  column->setSizes({400, 400});
  return column;
}

QWidget* MixPage::figures() {
  auto* grid = new CardGrid(this);
  for (std::size_t i = 0; i < bench_figures(bench_).size(); ++i) {
    cards_.push_back(new FigurePanel(grid));
    grid->add_card(cards_.back());
  }
  auto* below = new QWidget(grid);
  auto* layout = new QVBoxLayout(below);
  layout->setContentsMargins(0, 0, 0, 0);
  narrowing_heading_ = new QLabel(tr("What would narrow it most?"), below);
  narrowing_heading_->setProperty("role", "heading");
  narrowing_heading_->setWordWrap(true);
  layout->addWidget(narrowing_heading_);
  const auto words = [&](const char* name) {
    auto* label = new WrappedLabel(below);
    label->setObjectName(QLatin1String(name));
    label->setTextFormat(Qt::PlainText);
    layout->addWidget(label);
    return label;
  };
  narrowing_ = words("narrowing");
  notes_ = words("notes");
  grid->set_below(below);
  return new ColumnScroll(grid, this);
}

void MixPage::side_changed() {
  const bool finding = sides_->currentIndex() == 1;
  below_->setCurrentIndex(finding ? 1 : 0);
  finder_->set_active(finding && isVisible());
}

void MixPage::show_find() {
  sides_->setCurrentIndex(1);
  find_panel_->take_focus();
}

void MixPage::show_recipes() {
  sides_->setCurrentIndex(1);
  recipes_->take_focus();
}

void MixPage::show_ageing() { pictures_->show_picture(years_); }
void MixPage::show_scores() { pictures_->show_picture(scores_page_); }
void MixPage::show_trade_off() { pictures_->show_picture(trade_off_); }

void MixPage::show_by_hand() { sides_->setCurrentIndex(0); }

void MixPage::show_parts() {
  sides_->setCurrentIndex(0);
  parts_->take_focus();
}

void MixPage::ask_for_name() {
  name_faults_ = {{"/mix/name", Problem{"record.no-name", {}, {}}}};
  name_->refresh();
  auto* const name = name_->findChild<QLineEdit*>(QStringLiteral("mix_name"));
  name->setFocus();
  scroll_to(*name, name->rect());
}

void MixPage::show_pot() {
  sides_->setCurrentIndex(0);
  pot_->findChild<QWidget*>(QStringLiteral("pot_shape"))->setFocus();
}
void MixPage::show_band() { band_->take_focus(); }
void MixPage::show_section() { pictures_->show_picture(section_); }
void MixPage::show_curves() { pictures_->show_picture(chart_); }
void MixPage::show_litres() { pictures_->show_picture(litres_); }
void MixPage::show_comparison() { pictures_->show_picture(comparison_); }

void MixPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  side_changed();
  refresh();
}

void MixPage::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  finder_->set_active(false);
}

void MixPage::dragEnterEvent(QDragEnterEvent* event) {
  if (event->mimeData()->hasFormat(QLatin1String(RecordListModel::bag_format))) event->acceptProposedAction();
}

void MixPage::dropEvent(QDropEvent* event) {
  const QString bag = QString::fromUtf8(event->mimeData()->data(QLatin1String(RecordListModel::bag_format)));
  if (bag.isEmpty()) return;
  event->acceptProposedAction();
  emit bag_dropped(bag);
}

void MixPage::refresh() {
  if (!isVisible()) return;
  pictures_->refresh_table();
  refresh_figures();
  refresh_notes();
}

void MixPage::refresh_figures() {
  const BenchRanges* const ranges = ranges_.mix();
  GradingPicture picture = grading_picture(bench_, -1);
  add_ribbon(picture, ranges);
  chart_->show_picture(picture, grading_sentence(bench_));
  std::vector<FigureGroup> groups = bench_figures(bench_);
  add_ranges(groups, bench_, ranges);
  for (std::size_t i = 0; i < cards_.size(); ++i) cards_[i]->show_group(groups[i]);
  const QStringList narrowing = narrowing_sentences(ranges);
  narrowing_->setText(narrowing.isEmpty() ? tr("Worked out as soon as the mix stands still.") : QStringLiteral("\u2022 ") + narrowing.join(QStringLiteral("\n\u2022 ")));
  narrowing_heading_->setVisible(ranges != nullptr);
  narrowing_->setVisible(ranges != nullptr);
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
