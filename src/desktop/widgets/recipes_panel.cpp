#include "recipes_panel.hpp"

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPalette>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollBar>
#include <QStyle>
#include <QTableWidget>
#include <QTextLayout>
#include <QTextOption>
#include <QVBoxLayout>
#include <QtMath>
#include <algorithm>
#include <initializer_list>

#include "column_scroll.hpp"
#include "figure_panel.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

namespace {

enum RecipeColumn { rank, parts, misses, air, water, price, score };

QLabel* words(const char* name, QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setObjectName(QLatin1String(name));
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  label->setFocusPolicy(Qt::NoFocus);
  return label;
}

QPushButton* button(const QString& text, const char* name, QWidget* parent) {
  auto* made = new QPushButton(text, parent);
  made->setObjectName(QLatin1String(name));
  made->setMinimumHeight(28);
  return made;
}

QString listed(const QStringList& sentences) { return sentences.isEmpty() ? QString() : QStringLiteral("\u2022 ") + sentences.join(QStringLiteral("\n\u2022 ")); }

}  // namespace

RecipesPanel::RecipesPanel(Bench& bench, PartsFinder& finder, QWidget* parent) : QWidget(parent), bench_(bench), finder_(finder) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(6);
  state_ = words("find_state", this);
  layout->addWidget(state_);
  working_ = working_row();
  layout->addWidget(working_);
  table_ = new QTableWidget(this);
  table_->setObjectName(QStringLiteral("recipes_table"));
  table_->setAccessibleName(tr("Recipes, best first"));
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setTabKeyNavigation(false);
  table_->setAlternatingRowColors(true);
  table_->setWordWrap(true);
  table_->verticalHeader()->hide();
  table_->horizontalHeader()->setHighlightSections(false);
  layout->addWidget(table_);
  layout->addWidget(keep_row());
  sentences_ = words("recipe_sentences", this);
  layout->addWidget(sentences_);
  // Before the figures, whose buttons the keyboard stops at: what stands after the last of them is hardly come to.
  answer_ = words("answer_sentences", this);
  layout->addWidget(answer_);
  figures_ = new FigurePanel(this);
  layout->addWidget(figures_);
  layout->addStretch(1);
  connect(table_, &QTableWidget::itemSelectionChanged, this, &RecipesPanel::refresh_chosen);
  keep_current_in_sight(*table_);
  connect(&finder_, &PartsFinder::found_changed, this, &RecipesPanel::refresh);
  connect(&finder_.job(), &BackgroundJob::running_changed, this, &RecipesPanel::refresh);
  connect(&bench_, &Bench::units_changed, this, [this] {
    shown_ = nullptr;
    refresh();
  });
}

QWidget* RecipesPanel::working_row() {
  auto* row = new QWidget(this);
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  progress_ = new QProgressBar(row);
  progress_->setObjectName(QStringLiteral("find_progress"));
  progress_->setAccessibleName(tr("How far the search has come"));
  progress_->setRange(0, 100);
  auto* cancel = button(tr("Enough"), "find_cancel", row);
  cancel->setAccessibleName(tr("Stop searching and show what was found so far"));
  layout->addWidget(progress_, 1);
  layout->addWidget(cancel);
  row->hide();
  connect(cancel, &QPushButton::clicked, &finder_, &PartsFinder::cancel);
  connect(&finder_, &PartsFinder::progressed, this, [this](int percent, int stage) {
    progress_->setFormat(stage == 1 ? tr("recipes %p %") : stage == 2 ? tr("the nearest recipe %p %") : tr("contradictions %p %"));
    progress_->setValue(percent);
  });
  return row;
}

QWidget* RecipesPanel::keep_row() {
  auto* row = new QWidget(this);
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  keep_ = button(tr("Keep as a mix"), "keep_recipe", row);
  keep_->setAccessibleName(tr("Keep the chosen recipe as a mix, and lay it on the bench"));
  reserve_ = button(tr("Keep and reserve"), "reserve_recipe", row);
  reserve_->setAccessibleName(tr("Keep the chosen recipe as a mix, and reserve its grain"));
  again_ = button(tr("Search on"), "find_again", row);
  again_->setAccessibleName(tr("Search again to the end"));
  layout->addWidget(keep_);
  layout->addWidget(reserve_);
  layout->addWidget(again_);
  layout->addStretch(1);
  // The buttons wait while the shelf is searched anew; the keys must not be sent on to whatever comes next.
  const auto keep = [this](bool reserved) {
    const int recipe = chosen();
    table_->setFocus();
    emit keep_wanted(recipe, reserved);
  };
  connect(keep_, &QPushButton::clicked, this, [keep] { keep(false); });
  connect(reserve_, &QPushButton::clicked, this, [keep] { keep(true); });
  connect(again_, &QPushButton::clicked, &finder_, &PartsFinder::search);
  return row;
}

void RecipesPanel::take_focus() {
  if (!table_->isVisible()) return;
  table_->setFocus();
  bring_current_into_sight(*table_);
}

int RecipesPanel::chosen() const { return table_->rowCount() > 0 ? std::max(0, table_->currentRow()) : -1; }

void RecipesPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void RecipesPanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (table_->rowCount() > 0) fit();
}

void RecipesPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::FontChange && event->type() != QEvent::PaletteChange) return;
  shown_ = nullptr;
  refresh();
}

void RecipesPanel::refresh() {
  if (!isVisible()) return;
  const FoundParts* const found = finder_.found();
  const bool running = finder_.job().is_running();
  const bool stale = finder_.is_stale();
  working_->setVisible(running);
  if (!running) progress_->setValue(0);
  if (!finder_.setup().waiting.isEmpty()) state_->setText(tr("Still wanted: %1.").arg(finder_.setup().waiting));
  else if (!finder_.setup().faults.empty()) state_->setText(tr("A marked field on the left has to be put right first."));
  else if (stale) state_->setText(tr("The inputs changed: what is shown in grey answers the question before."));
  else if (found == nullptr) state_->setText(tr("Searching the shelf."));
  else if (found->answer.recipes.empty()) state_->setText(tr("No recipe holds every wish that must hold; the nearest is shown."));
  else state_->setText((far_off_sentences(*found, bench_.units()) << tr("%n recipe(s), best first.", nullptr, static_cast<int>(found->answer.recipes.size()))).join(u' '));
  refresh_table(stale);
  const bool some = found != nullptr && !found->listed().empty();
  for (QWidget* widget : std::initializer_list<QWidget*>{table_, keep_, reserve_, sentences_, figures_}) widget->setVisible(some);
  again_->setVisible(found != nullptr && found->answer.stopped && !stale && !running);
  answer_->setVisible(found != nullptr);
  // Where nothing fits, why it doesn't comes first.
  QWidget* const next = found != nullptr && found->answer.recipes.empty() ? static_cast<QWidget*>(table_) : figures_;
  auto* column = qobject_cast<QVBoxLayout*>(layout());
  if (column->indexOf(answer_) + 1 != column->indexOf(next)) {
    column->removeWidget(answer_);
    column->insertWidget(column->indexOf(next), answer_);
  }
  keep_->setEnabled(some && !stale);
  reserve_->setEnabled(some && !stale && found->setup.need.has_value());
  reserve_->setToolTip(some && found->setup.need ? tr("its grain is kept for this mix in later searches") : tr("type the litres needed first"));
  refresh_chosen();
}

void RecipesPanel::refresh_table(bool stale) {
  const FoundParts* const found = finder_.found();
  if (found == nullptr) return;
  if (found != shown_) {
    // A recipe that is found again stays the chosen one.
    const QString chosen_parts = chosen() >= 0 && table_->item(chosen(), parts) != nullptr ? table_->item(chosen(), parts)->text() : QString();
    shown_ = found;
    const PictureTable rows = recipes_table(*found, bench_.units());
    const QSignalBlocker quiet(table_);
    table_->setColumnCount(static_cast<int>(rows.heading.size()));
    table_->setHorizontalHeaderLabels(rows.heading);
    table_->setRowCount(static_cast<int>(rows.rows.size()));
    for (int row = 0; row < table_->rowCount(); ++row) {
      const QStringList& cells = rows.rows[static_cast<std::size_t>(row)];
      for (int column = 0; column < cells.size(); ++column) {
        auto* item = new QTableWidgetItem(cells[column]);
        item->setTextAlignment((column == parts || column == misses ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
        item->setToolTip(cells[column]);
        table_->setItem(row, column, item);
      }
    }
    int again = 0;
    for (int row = 0; row < table_->rowCount(); ++row)
      if (table_->item(row, parts)->text() == chosen_parts) again = row;
    if (table_->rowCount() > 0) table_->selectRow(again);
  }
  const QBrush ink = stale ? QBrush(current_colours().muted) : QBrush();
  const QSignalBlocker quiet(table_);
  for (int row = 0; row < table_->rowCount(); ++row)
    for (int column = 0; column < table_->columnCount(); ++column) table_->item(row, column)->setForeground(ink);
  table_->setAccessibleDescription(state_->text());
  fit();
}

void RecipesPanel::refresh_chosen() {
  const FoundParts* const found = finder_.found();
  if (found == nullptr || chosen() < 0) {
    answer_->setText(found != nullptr ? listed(answer_sentences(*found, bench_.units())) : QString());
    return;
  }
  const auto index = static_cast<std::size_t>(chosen());
  sentences_->setText(listed(recipe_sentences(*found, index, bench_.units())));
  figures_->show_group(recipe_figures(*found, index, bench_.units()));
  answer_->setText(listed(answer_sentences(*found, bench_.units())));
  QPalette palette;
  if (finder_.is_stale()) palette.setColor(QPalette::WindowText, current_colours().muted);
  for (QWidget* widget : std::initializer_list<QWidget*>{sentences_, figures_, answer_}) widget->setPalette(palette);
}

namespace {

/// All lines as high as the highest, and the grid's.
int height_of_words(const QTableWidget& table, int row, int column) {
  QTextOption wrapped;
  wrapped.setWrapMode(QTextOption::WordWrap);
  QTextLayout layout(table.item(row, column)->text(), table.font());
  layout.setTextOption(wrapped);
  layout.beginLayout();
  qreal highest = 0;
  int lines = 0;
  const int margins = 2 * (table.style()->pixelMetric(QStyle::PM_FocusFrameHMargin, nullptr, &table) + 1) + 1;
  for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
    line.setLineWidth(table.columnWidth(column) - margins);
    highest = std::max(highest, line.height());
    ++lines;
  }
  layout.endLayout();
  return qCeil(lines * highest) + 1;
}

}  // namespace

void RecipesPanel::fit() {
  table_->verticalHeader()->setMinimumSectionSize(26);
  QHeaderView* header = table_->horizontalHeader();
  table_->setColumnHidden(score, false);
  for (const int column : {int(rank), int(air), int(water), int(price), int(score)}) header->setSectionResizeMode(column, QHeaderView::ResizeToContents);
  int taken = 0;
  for (const int column : {int(rank), int(air), int(water), int(price)}) taken += table_->columnWidth(column);
  // The rank tells the order, and the figures below the score.
  constexpr int signs_of_parts = 16;
  const int with_score = taken + table_->columnWidth(score);
  const bool scores_fit = table_->viewport()->width() - with_score >= signs_of_parts * fontMetrics().averageCharWidth();
  if (scores_fit) taken = with_score;
  table_->setColumnHidden(score, !scores_fit);
  const int least = 12 * fontMetrics().averageCharWidth();
  const int room = table_->viewport()->width() - taken;
  // Sides that leave it less room come below each other.
  const int least_alone = 10 * fontMetrics().averageCharWidth();
  table_->setMinimumWidth(with_score + least_alone + 2 * table_->frameWidth());
  // In large text recipes are in sight at once rather than all their columns: the sentences below tell alone what the chosen one misses.
  table_->setColumnHidden(misses, room < 2 * least);
  const bool fits = room >= least_alone;
  for (const int column : {int(parts), int(misses)}) {
    header->setSectionResizeMode(column, fits ? QHeaderView::Stretch : QHeaderView::Interactive);
    if (!fits) table_->setColumnWidth(column, least);
  }
  table_->resizeRowsToContents();
  // Where signs of another font make one line higher than the next, the table measures too little and ends the words with dots.
  for (int row = 0; row < table_->rowCount(); ++row)
    for (const int column : {int(parts), int(misses)})
      if (!table_->isColumnHidden(column)) table_->setRowHeight(row, std::max(table_->rowHeight(row), height_of_words(*table_, row, column)));
  int height = header->sizeHint().height() + 2 * table_->frameWidth() + (fits ? 0 : table_->horizontalScrollBar()->sizeHint().height());
  for (int row = 0; row < table_->rowCount(); ++row) height += table_->rowHeight(row);
  table_->setFixedHeight(height);
}

}  // namespace gritwright::desktop
