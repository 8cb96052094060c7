#include "verdict_panel.hpp"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QResizeEvent>
#include <QScrollBar>
#include <QStyle>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "column_scroll.hpp"
#include "figure_panel.hpp"
#include "gritwright/report/explanations.hpp"
#include "how_button.hpp"
#include "models/range_keeper.hpp"
#include "models/verdict_figures.hpp"
#include "record_table.hpp"

namespace gritwright::desktop {

namespace {

constexpr int signs_wide = 36;

/// Puts the texts into cells that are there already; false where the table has another shape or a text needs more room.
bool put_into_cells(const QTableWidget& table, const QStringList& columns, const std::vector<QStringList>& rows) {
  if (table.columnCount() != columns.size() || table.rowCount() != static_cast<int>(rows.size())) return false;
  for (int column = 0; column < table.columnCount(); ++column) {
    if (table.horizontalHeaderItem(column)->text() != columns[column]) return false;
  }
  const QFontMetrics metrics = table.fontMetrics();
  const int around = 2 * (table.style()->pixelMetric(QStyle::PM_FocusFrameHMargin, nullptr, &table) + 1);
  bool fits = true;
  for (int row = 0; row < table.rowCount(); ++row) {
    const QStringList& cells = rows[static_cast<std::size_t>(row)];
    for (int column = 0; column < cells.size(); ++column) {
      QTableWidgetItem* const item = table.item(row, column);
      if (item->text() == cells[column]) continue;
      item->setText(cells[column]);
      fits = fits && metrics.horizontalAdvance(cells[column]) + around <= table.columnWidth(column);
    }
  }
  return fits;
}

void fill_table(QTableWidget* table, const QStringList& columns, const std::vector<QStringList>& rows, bool anew) {
  if (!anew && put_into_cells(*table, columns, rows)) return;
  table->setColumnCount(static_cast<int>(columns.size()));
  table->setRowCount(static_cast<int>(rows.size()));
  table->setHorizontalHeaderLabels(columns);
  for (int row = 0; row < table->rowCount(); ++row) {
    const QStringList& cells = rows[static_cast<std::size_t>(row)];
    for (int column = 0; column < cells.size(); ++column) {
      auto* item = new QTableWidgetItem(cells[column]);
      item->setTextAlignment((column == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
      table->setItem(row, column, item);
    }
  }
  // Every column as wide as its text, the rest to the first; measured again only where a text grows. Large text would make the table wider
  // than half a small screen: then it scrolls sideways instead.
  table->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  table->resizeColumnsToContents();
  int width = 2 * table->frameWidth();
  for (int column = 0; column < table->columnCount(); ++column) width += table->columnWidth(column);
  const bool fits = width <= table->parentWidget()->width() - 20;
  if (table->columnCount() > 0 && fits) {
    give_air_beside_first(*table, table->parentWidget()->width() - 20 - width);
    table->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
  }
  table->setMinimumWidth(std::min(width, signs_wide * table->fontMetrics().averageCharWidth()));
  const int bar = fits ? 0 : table->horizontalScrollBar()->sizeHint().height();
  const auto has_two_lines = [](const QStringList& cells) { return std::ranges::any_of(cells, [](const QString& cell) { return cell.contains(u'\n'); }); };
  const int lines = std::ranges::any_of(rows, has_two_lines) ? 2 : 1;
  const int line = std::max(24, lines * table->fontMetrics().lineSpacing() + 8);
  table->verticalHeader()->setDefaultSectionSize(line);
  table->setFixedHeight(table->rowCount() * line + table->horizontalHeader()->sizeHint().height() + bar + 2 * table->frameWidth());
}

}  // namespace

VerdictPanel::VerdictPanel(Bench& bench, RangeKeeper& ranges, QWidget* parent) : QWidget(parent), bench_(bench), ranges_(ranges), sentence_(new QLabel(this)), figures_(new FigurePanel(this)), laboratory_(new FigurePanel(this)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 8, 10, 8);
  layout->setSpacing(6);
  sentence_->setObjectName(QStringLiteral("verdict_sentence"));
  sentence_->setProperty("role", "heading");
  sentence_->setWordWrap(true);
  layout->addWidget(sentence_);
  certainty_ = new QLabel(this);
  certainty_->setObjectName(QStringLiteral("verdict_certainty"));
  certainty_->setProperty("role", "muted");
  certainty_->setWordWrap(true);
  layout->addWidget(certainty_);
  // Right below the verdict: an unusual bag is to be seen when it is graded, not when somebody scrolls.
  lots_ = new QLabel(this);
  lots_->setObjectName(QStringLiteral("verdict_lots"));
  lots_->setProperty("role", "fault");
  lots_->setWordWrap(true);
  lots_->setTextFormat(Qt::PlainText);
  layout->addWidget(lots_);
  layout->addWidget(figures_);
  make(fractions_, "verdict_fractions", tr("What screening there gives"));
  make(openings_, "verdict_openings", tr("Which openings? From the sieves of this test"));
  layout->addWidget(laboratory_);
  notes_ = new QLabel(this);
  notes_->setObjectName(QStringLiteral("verdict_notes"));
  notes_->setWordWrap(true);
  notes_->setTextFormat(Qt::PlainText);
  layout->addWidget(notes_);
  layout->addStretch(1);
  connect(&bench_, &Bench::changed, this, &VerdictPanel::refresh);
  connect(&ranges_, &RangeKeeper::test_changed, this, &VerdictPanel::refresh);
  connect(&bench_, &Bench::units_changed, this, &VerdictPanel::refresh);
  connect(&bench_, &Bench::surroundings_changed, this, &VerdictPanel::refresh);
  connect(&bench_, &Bench::current_component_changed, this, &VerdictPanel::refresh);
}

void VerdictPanel::make(ToldTable& told, const char* object_name, const QString& title) {
  told.heading = new QLabel(title, this);
  told.heading->setProperty("role", "heading");
  told.heading->setWordWrap(true);
  told.how = new HowButton([&told] { return told.figure; }, this);
  told.figure.key = QString::fromLatin1(object_name);
  auto* made = new QTableWidget(this);
  told.table = made;
  made->setObjectName(QString::fromLatin1(object_name));
  made->setAccessibleName(title);
  made->setEditTriggers(QAbstractItemView::NoEditTriggers);
  made->setAlternatingRowColors(true);
  made->setShowGrid(false);
  made->setTabKeyNavigation(false);
  made->verticalHeader()->hide();
  made->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  made->horizontalHeader()->setHighlightSections(false);
  keep_current_in_sight(*made);
  auto* line = new QHBoxLayout;
  line->addWidget(told.heading, 1);
  line->addWidget(told.how);
  auto* column = static_cast<QVBoxLayout*>(layout());
  column->addLayout(line);
  column->addWidget(made);
}

void VerdictPanel::fill(ToldTable& told, const QStringList& columns, const std::vector<QStringList>& rows, std::vector<Explanation> explanations) {
  for (QWidget* part : {static_cast<QWidget*>(told.heading), static_cast<QWidget*>(told.how), static_cast<QWidget*>(told.table)}) part->setVisible(!rows.empty());
  told.figure.label = told.heading->text();
  told.figure.explanations = std::move(explanations);
  told.how->set_figure(told.figure);
  fill_table(told.table, columns, rows, fit_anew_);
}

void VerdictPanel::refresh() {
  // Judging tries many openings; nobody waits for it while another tab is in front.
  if (!isVisible()) return;
  VerdictView view = verdict_view(bench_);
  const TestRanges* const ranges = ranges_.test();
  add_ranges(view, bench_, ranges);
  // The first sample may still be judged where a further one has a fault.
  const bool is_judged = !view.opening_heading.isEmpty();
  const QString certainty = is_judged ? verdict_certainty(ranges) : QString();
  // Its line is kept free while it is worked out: what lies below would jump at every sign.
  certainty_->setText(certainty.isEmpty() ? QStringLiteral("\u00a0") : certainty);
  certainty_->setVisible(!view.fractions.empty() || !certainty.isEmpty());
  lots_->setText(view.lots.join(u'\n'));
  lots_->setVisible(!view.lots.isEmpty());
  sentence_->setText(view.sentence);
  figures_->show_group(view.figures);
  laboratory_->setVisible(!view.laboratory.figures.empty());
  add_laboratory_ranges(view.laboratory, ranges);
  if (!view.laboratory.figures.empty()) laboratory_->show_group(view.laboratory);
  fill(fractions_, view.fraction_heading, view.fractions, view.fractions_how);
  openings_.heading->setText(view.openings_are_owned ? tr("Which openings? From the sieves you own") : tr("Which openings? From the sieves of this test"));
  fill(openings_, view.opening_heading, view.openings, {explain_openings()});
  fit_anew_ = false;
  notes_->setText(view.notes.isEmpty() ? QString() : QStringLiteral("\u2022 ") + view.notes.join(QStringLiteral("\n\u2022 ")));
  notes_->setVisible(!view.notes.isEmpty());
}

void VerdictPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void VerdictPanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (event->size().width() == event->oldSize().width()) return;
  fit_anew_ = true;
  refresh();
}

void VerdictPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::FontChange) return;
  fit_anew_ = true;
  refresh();
}

}  // namespace gritwright::desktop
