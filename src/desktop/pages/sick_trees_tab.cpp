#include "sick_trees_tab.hpp"

#include <QEvent>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QSplitter>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <chrono>
#include <functional>
#include <utility>

#include "charts/chart_export.hpp"
#include "text.hpp"
#include "theme.hpp"
#include "widgets/column_fit.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/record_table.hpp"
#include "widgets/traced_table.hpp"

namespace gritwright::desktop {

namespace {

constexpr int last_column = 5;
constexpr int note_column = 3;
constexpr int name_column = 4;
constexpr int traits_signs = 46;
constexpr int most_traits_signs = 50;
constexpr int traits_signs_below = 34;
constexpr int trees_signs = 62;
constexpr int around_card = 10;
constexpr int between_sick_sides = 8;

/// Two sides beside each other; where large text leaves no room for that, one below the other. Either way both are in sight.
class TurningSides : public QWidget {
 public:
  TurningSides(const QString& name, std::function<int()> least_width_beside, std::function<void(bool is_below)> turned, QWidget* parent)
      : QWidget(parent), splitter_(new QSplitter(Qt::Horizontal, this)), name_(name), least_width_beside_(std::move(least_width_beside)), turned_(std::move(turned)) {
    splitter_->setObjectName(name_);
    splitter_->setChildrenCollapsible(false);
    splitter_->setHandleWidth(between_sick_sides);
  }

  [[nodiscard]] QSplitter& splitter() { return *splitter_; }

  [[nodiscard]] QSize minimumSizeHint() const override {
    constexpr int least_height = 190;
    int widest = 0;
    for (int at = 0; at < splitter_->count(); ++at) widest = std::max({widest, splitter_->widget(at)->minimumSizeHint().width(), splitter_->widget(at)->minimumWidth()});
    return {widest, least_height};
  }

 protected:
  bool event(QEvent* event) override {
    const bool handled = QWidget::event(event);
    if (event->type() != QEvent::LayoutRequest && event->type() != QEvent::Resize && event->type() != QEvent::Show) return handled;
    turn();
    if (const int width = minimumSizeHint().width(); std::exchange(least_width_, width) != width) updateGeometry();
    return handled;
  }

 private:
  void turn() {
    // Before it is laid out it has some width or other.
    if (!isVisible()) return;
    const bool is_below = width() < least_width_beside_();
    if (is_below != (splitter_->orientation() == Qt::Vertical)) {
      if (is_below) sizes_beside_ = splitter_->saveState();
      // Only the sizes beside each other are worth remembering.
      splitter_->setObjectName(is_below ? QString() : name_);
      splitter_->setOrientation(is_below ? Qt::Vertical : Qt::Horizontal);
      turned_(is_below);
      splitter_->setGeometry(rect());
      if (is_below) splitter_->setSizes({height() * 45 / 100, height() * 55 / 100});
      else splitter_->restoreState(sizes_beside_);
    }
    splitter_->setGeometry(rect());
  }

  QSplitter* splitter_;
  QString name_;
  std::function<int()> least_width_beside_;
  std::function<void(bool)> turned_;
  QByteArray sizes_beside_;
  int least_width_ = 0;
};

QLabel* words_label(QWidget* parent, const char* object_name) {
  auto* label = new QLabel(parent);
  label->setObjectName(QString::fromLatin1(object_name));
  label->setWordWrap(true);
  return label;
}

/// What trees share, asked over a connection of its own: the window's belongs to the window's thread.
Result<SharedTraits> shared_in(const std::string& file, const std::vector<Id<Tree>>& trees) {
  OpeningOptions options;
  options.clock = [] { return std::chrono::system_clock::now(); };
  options.access = Access::read_only;
  options.create = false;
  auto opened = OpenWorkbook::open(file, std::move(options));
  if (!opened) return opened.problems();
  try {
    return shared_traits(*opened, trees);
  } catch (const WorkbookTrouble& trouble) {
    return trouble.problem();
  }
}

}  // namespace

SickTreesTab::SickTreesTab(RecordBook& book, QWidget* parent) : QWidget(parent), book_(book) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 8, 0, 0);
  auto* sides = new TurningSides(QStringLiteral("sick_splitter"), [this] { return least_width_beside(); }, [this](bool is_below) { turn(is_below); }, this);
  sides->splitter().addWidget(trees_side());
  sides->splitter().addWidget(new ColumnScroll(shared_side(), sides));
  sides->splitter().setSizes({740, 520});
  layout->addWidget(sides);
  connect(&book_, &RecordBook::changed, this, &SickTreesTab::refresh);
}

QWidget* SickTreesTab::trees_side() {
  auto* side = new QWidget(this);
  auto* layout = new QVBoxLayout(side);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  summary_ = words_label(side, "sick_summary");
  layout->addWidget(summary_);
  trees_ = new QTableWidget(side);
  trees_->setObjectName(QStringLiteral("sick_trees"));
  trees_->setAccessibleName(tr("Trees, the sick ones first; Space ticks those to compare"));
  trees_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  trees_->setSelectionBehavior(QAbstractItemView::SelectRows);
  trees_->setTabKeyNavigation(false);
  trees_->setAlternatingRowColors(true);
  trees_->setShowGrid(false);
  trees_->verticalHeader()->hide();
  trees_->horizontalHeader()->setHighlightSections(false);
  trees_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  trees_->setColumnCount(last_column + 1);
  trees_->setHorizontalHeaderLabels({tr("tree"), tr("condition"), tr("since"), tr("note"), tr("name"), tr("potted")});
  trees_->horizontalHeader()->setStretchLastSection(true);
  columns_ = new ColumnFit(*trees_, {note_column, name_column, last_column});
  layout->addWidget(trees_, 1);
  auto* again = new QPushButton(tr("Tick the sick ones"), side);
  again->setObjectName(QStringLiteral("sick_again"));
  again->setAccessibleName(tr("Tick the sick trees again and no other"));
  again->setMinimumHeight(28);
  layout->addWidget(again, 0, Qt::AlignLeft);
  connect(again, &QPushButton::clicked, this, &SickTreesTab::choose_sick);
  connect(trees_, &QTableWidget::itemChanged, this, &SickTreesTab::ticked);
  return side;
}

QWidget* SickTreesTab::shared_side() {
  auto* side = new QFrame(this);
  side->setObjectName(QStringLiteral("card"));
  auto* layout = new QVBoxLayout(side);
  layout->setContentsMargins(around_card, 8, around_card, 8);
  layout->setSpacing(8);
  auto* heading = new QLabel(tr("What do these trees share?"), side);
  heading->setProperty("role", "heading");
  layout->addWidget(heading);
  which_ = words_label(side, "sick_which");
  layout->addWidget(which_);
  // First what can be looked at today, then what the record says.
  auto* looks = words_label(side, "sick_first_looks");
  looks->setText(tr("Look first at") + QStringLiteral("\n\u2022 ") + first_looks().join(QStringLiteral("\n\u2022 ")));
  looks->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  answer_ = new QBoxLayout(QBoxLayout::TopToBottom);
  answer_->addWidget(looks);
  auto* shared = new QVBoxLayout;
  nothing_ = words_label(side, "sick_nothing");
  shared->addWidget(nothing_);
  traits_ = new TracedTable("sick_traits", tr("What these trees share, beside all others"), 1, side);
  constexpr int least_height = 150;
  traits_->keep_to_rows(least_height);
  shared->addWidget(traits_, 1);
  shared->addStretch(0);  // takes the room that the table has no rows for
  answer_->addLayout(shared, 1);
  layout->addLayout(answer_, 1);
  auto* caution = words_label(side, "sick_caution");
  caution->setText(shared_caution());
  layout->addWidget(caution);
  save_ = new QPushButton(tr("Save the comparison..."), side);
  save_->setObjectName(QStringLiteral("sick_save"));
  save_->setAccessibleName(tr("Save what these trees share as text, CSV or JSON"));
  save_->setMinimumHeight(28);
  layout->addWidget(save_, 0, Qt::AlignLeft);
  connect(save_, &QPushButton::clicked, this, &SickTreesTab::choose_file);
  connect(traits_, &TracedTable::record_wanted, this, &SickTreesTab::trace_wanted);
  return side;
}

void SickTreesTab::take_focus() {
  trees_->setFocus();
  if (trees_->currentRow() < 0 && trees_->rowCount() > 0) trees_->setCurrentCell(0, 0);
}

void SickTreesTab::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void SickTreesTab::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if ((event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) && save_ != nullptr) {
    seen_revision_ = -1;
    refresh();
  }
}

void SickTreesTab::refresh() {
  if (!isVisible()) return;
  try {
    const std::int64_t revision = book_.workbook().revision();
    if (revision == seen_revision_) return;
    states_ = tree_states(book_.workbook());
    seen_revision_ = revision;
  } catch (const WorkbookTrouble& trouble) {
    emit book_.told(sentence_text(trouble.problem()));
    return;
  }
  fill_trees();
  compare();
}

void SickTreesTab::fill_trees() {
  filling_ = true;
  int sick = 0;
  trees_->setRowCount(static_cast<int>(states_.size()));
  for (int row = 0; row < trees_->rowCount(); ++row) {
    const TreeState& state = states_[static_cast<std::size_t>(row)];
    const bool is_sick = state.condition == Condition::sick;
    sick += is_sick ? 1 : 0;
    const QString condition = state.condition ? condition_word(*state.condition) : QStringLiteral("\u2013");
    const QString cells[] = {to_qt(state.id.text), condition, state.since, state.note, state.name, state.potted};
    for (int column = 0; column <= last_column; ++column) {
      auto* cell = new QTableWidgetItem(cells[column]);
      cell->setToolTip(cells[column]);
      // The word says it; weight and colour only help the eye.
      if (is_sick && column <= 1) {
        QFont font = cell->font();
        font.setBold(true);
        cell->setFont(font);
        cell->setForeground(current_colours().fault);
      }
      if (column == 0) {
        const bool on = chosen_ ? chosen_->contains(state.id.text) : is_sick;
        cell->setFlags(cell->flags() | Qt::ItemIsUserCheckable);
        cell->setCheckState(on ? Qt::Checked : Qt::Unchecked);
        cell->setData(Qt::AccessibleTextRole, tr("compare %1, %2").arg(cells[0], condition));
      }
      trees_->setItem(row, column, cell);
    }
  }
  fit_columns();
  summary_->setText(states_.empty() ? tr("No trees yet. What is written down about them on Pots and trees stands here, the sick ones first.")
                                    : tr("%1; tick those to compare with all others.").arg(sick == 0 ? tr("No tree is sick") : tr("%n tree(s) sick", nullptr, sick)));
  filling_ = false;
}

int SickTreesTab::least_width_beside() const {
  const int traits = most_traits_signs * traits_->fontMetrics().averageCharWidth();
  return trees_->minimumWidth() + between_sick_sides + traits + 2 * around_card + 2 * trees_->frameWidth() + trees_->verticalScrollBar()->sizeHint().width();
}

void SickTreesTab::turn(bool is_below) {
  is_below_ = is_below;
  answer_->setDirection(is_below ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
  answer_->setStretch(0, is_below ? 1 : 0);
  fit_traits();
}

void SickTreesTab::fit_traits() {
  const int sign = traits_->fontMetrics().averageCharWidth();
  traits_->setMinimumWidth(is_below_ ? traits_signs_below * sign : std::clamp(traits_->least_width(), traits_signs * sign, most_traits_signs * sign));
}

void SickTreesTab::fit_columns() {
  fit_traits();
  // Measured unwrapped; the last column would be as wide as what is left.
  trees_->setWordWrap(false);
  const QAbstractItemView& view = *trees_;
  const int beside = room_beside_words(trees_->fontMetrics()) - beside_words_of_cells;
  std::vector<int> wanted;
  for (int column = 0; column <= last_column; ++column) wanted.push_back(std::max(view.sizeHintForColumn(column) + beside, trees_->horizontalHeader()->sectionSizeHint(column)));
  trees_->setWordWrap(true);
  columns_->set_wanted(std::move(wanted));
  // So wide that the page rather puts its sides below each other than has a table that scrolls sideways.
  trees_->setMinimumWidth(std::min(columns_->least_width() + trees_->verticalScrollBar()->sizeHint().width() + 2 * trees_->frameWidth(), trees_signs * trees_->fontMetrics().averageCharWidth()));
  const int two_lines = 2 * trees_->fontMetrics().lineSpacing() + 8;
  trees_->setMinimumHeight(trees_->horizontalHeader()->sizeHint().height() + 2 * two_lines + 2 * trees_->frameWidth());
}

void SickTreesTab::choose_sick() {
  chosen_.reset();
  fill_trees();
  compare();
}

void SickTreesTab::ticked(QTableWidgetItem* item) {
  if (filling_ || item->column() != 0) return;
  chosen_.emplace();
  for (int row = 0; row < trees_->rowCount(); ++row) {
    if (trees_->item(row, 0)->checkState() == Qt::Checked) chosen_->insert(states_[static_cast<std::size_t>(row)].id.text);
  }
  compare();
}

void SickTreesTab::compare() {
  std::vector<Id<Tree>> trees;
  QStringList names;
  for (const TreeState& state : states_) {
    if (chosen_ ? !chosen_->contains(state.id.text) : state.condition != Condition::sick) continue;
    trees.push_back(state.id);
    names << to_qt(state.id.text);
  }
  which_->setText(names.isEmpty() ? tr("No tree is ticked.") : tr("Compared: %1").arg(comma_list(names)));
  shared_.reset();
  save_->setEnabled(false);
  if (trees.empty()) {
    job_.cancel();
    traits_->hide();
    nothing_->setText(tr("Tick one tree to see what is known of its soil, or several to see what they share."));
    nothing_->show();
    return;
  }
  job_.start([this, file = book_.workbook().file().string(), trees](const std::stop_token&, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
    return [this, shared = shared_in(file, trees)] { show_shared(shared); };
  });
}

void SickTreesTab::show_shared(const Result<SharedTraits>& shared) {
  if (!shared) {
    nothing_->setText(sentence_text(shared.problems().front()));
    nothing_->show();
    traits_->hide();
    return;
  }
  shared_ = *shared;
  const RecordTable rows = shared_table(*shared_);
  nothing_->setText(tr("They share nothing that was written down."));
  nothing_->setVisible(rows.refs.empty());
  traits_->setVisible(!rows.refs.empty());
  traits_->show_rows(rows);
  fit_traits();
  save_->setEnabled(true);
}

bool SickTreesTab::save_shared(const QString& path) const { return shared_ && write_whole(path, QByteArray::fromStdString(shared_file(*shared_, path))); }

void SickTreesTab::choose_file() {
  if (!shared_) {
    emit book_.told(tr("Tick the trees to compare first."));
    return;
  }
  const QString path = QFileDialog::getSaveFileName(this, tr("Save what these trees share"), tr("shared by the trees") + QStringLiteral(".txt"),
                                                    tr("Text to print (*.txt);;For a spreadsheet (*.csv);;For programs (*.json)"));
  if (path.isEmpty()) return;
  emit book_.told(save_shared(path) ? tr("Saved as %1.").arg(path) : tr("%1 could not be written: choose a folder you may write to.").arg(path));
}

}  // namespace gritwright::desktop
