#include "trace_tab.hpp"

#include <QEvent>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "charts/chart_export.hpp"
#include "text.hpp"
#include "widgets/flow_line.hpp"
#include "widgets/traced_table.hpp"

namespace gritwright::desktop {

TraceTab::TraceTab(RecordBook& book, QWidget* parent)
    : QWidget(parent), book_(book), of_(new QLineEdit(this)), save_(new QPushButton(tr("Save the list..."), this)), sentence_(new QLabel(this)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 8, 0, 0);
  layout->setSpacing(8);
  auto* line = new FlowLine(this);
  of_->setObjectName(QStringLiteral("trace_of"));
  of_->setPlaceholderText(tr("a bag, fraction, bin, batch or mix, to see which trees stand in it; or a tree, to see what it stands in"));
  of_->setAccessibleName(tr("Trace"));
  of_->setAccessibleDescription(of_->placeholderText());
  of_->setMinimumHeight(28);
  save_->setObjectName(QStringLiteral("trace_save"));
  save_->setAccessibleName(tr("Save the list of trees as text, CSV or JSON"));
  save_->setMinimumHeight(28);
  line->add(tr("&Trace"), of_, 1, QStringLiteral("P-00000"));
  line->add({}, save_);
  layout->addWidget(line);
  sentence_->setObjectName(QStringLiteral("trace_sentence"));
  sentence_->setWordWrap(true);
  layout->addWidget(sentence_);
  trees_ = new TracedTable("trace_trees", tr("Trees, or what a tree stands in"), 1, this);
  layout->addWidget(trees_, 3);
  holders_heading_ = new QLabel(tr("Where the rest of it went or lies"), this);
  holders_heading_->setProperty("role", "heading");
  layout->addWidget(holders_heading_);
  holders_ = new TracedTable("trace_holders", tr("Where the rest of it went or lies"), 1, this);
  constexpr int left_column = 4;
  holders_->set_figures({left_column});
  constexpr int least_height = 90;
  for (TracedTable* table : {trees_, holders_}) table->keep_to_rows(least_height);
  layout->addWidget(holders_, 2);
  layout->addStretch(0);  // takes the room that the tables have no rows for
  connect(of_, &QLineEdit::textChanged, this, &TraceTab::refresh);
  connect(save_, &QPushButton::clicked, this, &TraceTab::choose_file);
  for (TracedTable* table : {trees_, holders_}) connect(table, &TracedTable::record_wanted, this, &TraceTab::trace);
  connect(&book_, &RecordBook::changed, this, &TraceTab::refresh);
}

void TraceTab::trace(const QString& id) { of_->setText(id); }

void TraceTab::take_focus() {
  of_->setFocus();
  of_->selectAll();
}

void TraceTab::set_units(UnitSystem units) {
  units_ = units;
  refresh();
}

void TraceTab::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void TraceTab::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange && holders_ != nullptr) refresh();
}

void TraceTab::refresh() {
  if (!isVisible()) return;
  list_.reset();
  const QString id = of_->text().trimmed();
  if (id.isEmpty()) return show_nothing(tr("Type the number of a bag to see which trees stand in its grain, or of a tree to see what it stands in."));
  try {
    const auto [ref, fault] = called(book_.workbook(), id);
    if (!ref) return show_nothing(fault);
    if (ref->kind == RecordKind::tree) show_ground(*ref);
    else show_recall(*ref);
  } catch (const WorkbookTrouble& trouble) {
    show_nothing(sentence_text(trouble.problem()));
  }
}

void TraceTab::show_nothing(const QString& sentence) {
  sentence_->setText(sentence);
  save_->setEnabled(false);
  for (QWidget* widget : std::initializer_list<QWidget*>{trees_, holders_heading_, holders_}) widget->hide();
}

void TraceTab::show_recall(const RecordRef& of) {
  auto recalled = recall_list(book_.workbook(), of);
  if (!recalled) return show_nothing(sentence_text(recalled.problems().front(), units_));
  list_ = std::move(recalled).value();
  sentence_->setText(recall_sentence(*list_));
  const RecordTable trees = recalled_trees(*list_);
  const RecordTable holders = recalled_holders(*list_, units_);
  trees_->setVisible(!trees.refs.empty());
  trees_->show_rows(trees);
  holders_heading_->setVisible(!holders.refs.empty());
  holders_->setVisible(!holders.refs.empty());
  holders_->show_rows(holders);
  save_->setEnabled(true);
}

void TraceTab::show_ground(const RecordRef& tree) {
  const auto back = gritwright::trace(book_.workbook(), tree, TraceDirection::back);
  if (!back) return show_nothing(sentence_text(back.problems().front(), units_));
  sentence_->setText(ground_sentence(*back));
  const RecordTable ground = ground_of_tree(*back);
  trees_->setVisible(!ground.refs.empty());
  trees_->show_rows(ground);
  holders_heading_->hide();
  holders_->hide();
  save_->setEnabled(false);
}

bool TraceTab::save_list(const QString& path) const { return list_ && write_whole(path, QByteArray::fromStdString(recall_file(*list_, path, units_))); }

void TraceTab::choose_file() {
  if (!list_) {
    emit book_.told(tr("Trace a bag, fraction, bin, batch or mix first: its list of trees can be saved."));
    return;
  }
  const QString name = to_qt(list_->of.id).replace(u'/', u'-');
  const QString path = QFileDialog::getSaveFileName(this, tr("Save the list of trees"), tr("%1 trees").arg(name) + QStringLiteral(".txt"),
                                                    tr("Text to print (*.txt);;For a spreadsheet (*.csv);;For programs (*.json)"));
  if (path.isEmpty()) return;
  emit book_.told(save_list(path) ? tr("Saved as %1.").arg(path) : tr("%1 could not be written: choose a folder you may write to.").arg(path));
}

}  // namespace gritwright::desktop
