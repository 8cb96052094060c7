#include "screening_panel.hpp"

#include <QAbstractItemDelegate>
#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "caution_bar.hpp"
#include "field_form.hpp"
#include "models/range_keeper.hpp"
#include "models/screening_view.hpp"
#include "sheet_editor.hpp"
#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

namespace {

enum ScreeningColumn { fraction, share, mass, litres, weighed, measured, column_count };

/// Begins where something can be typed, and Enter goes to the next fraction, as in the stack of sieves.
class FractionTable : public QTableWidget {
 public:
  using QTableWidget::QTableWidget;

 protected:
  void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override {
    const bool entered = hint == QAbstractItemDelegate::SubmitModelCache;
    QTableWidget::closeEditor(editor, entered ? QAbstractItemDelegate::NoHint : hint);
    if (entered && currentRow() + 1 < rowCount()) setCurrentCell(currentRow() + 1, currentColumn());
  }

  void focusInEvent(QFocusEvent* event) override {
    if (rowCount() > 0 && currentColumn() < weighed) setCurrentCell(std::max(0, currentRow()), weighed);
    QTableWidget::focusInEvent(event);
  }
};

}  // namespace

ScreeningPanel::ScreeningPanel(Bench& bench, RangeKeeper& ranges, QWidget* parent)
    : QWidget(parent),
      bench_(bench),
      ranges_(ranges),
      form_(new FieldForm(bench, [] { return static_cast<const Faults*>(nullptr); }, this)),
      fault_(new QLabel(this)),
      reason_(new QLabel(this)),
      table_(new FractionTable(this)),
      balance_(new QLabel(this)),
      keep_(new QPushButton(tr("&Keep these fractions"), this)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 8, 10, 8);
  layout->setSpacing(6);
  const auto text = [this](QString ScreeningText::*member) {
    return [this, member](BenchState& state) -> QString* {
      ComponentSheet* component = current_component(bench_, state);
      return component != nullptr ? &(component->screening.*member) : nullptr;
    };
  };
  form_->add({QStringLiteral("screen_at"), tr("Screen at, mm"), Kind::words, [] { return tr("openings to screen at"); }, text(&ScreeningText::openings), {},
              tr("as the verdict says; or type 6.3 2"), {}, {}, {}});
  form_->add({QStringLiteral("screened_mass"), tr("Dry grain screened"), Kind::mass, [] { return tr("grain screened"); }, text(&ScreeningText::screened), {},
              tr("all that is left of the bag; kg can be typed"), {}, {}, {}});
  form_->add({QStringLiteral("screened_on"), tr("Screened on"), Kind::words, [] { return tr("day of the screening"); }, text(&ScreeningText::day), {},
              tr("today; or a day like 2026-03-14"), {}, {}, {}});
  layout->addWidget(form_);
  fault_->setProperty("role", "fault");
  reason_->setProperty("role", "muted");
  balance_->setProperty("role", "figure");
  for (QLabel* label : {fault_, reason_, balance_}) label->setWordWrap(true);
  layout->addWidget(fault_);
  layout->addWidget(reason_);
  table_->setObjectName(QStringLiteral("screening_table"));
  table_->setAccessibleName(tr("Fractions, predicted and measured"));
  table_->setAccessibleDescription(tr("Type what each fraction weighed, and its litres, into the last two columns."));
  table_->setColumnCount(column_count);
  table_->setTabKeyNavigation(false);
  table_->setAlternatingRowColors(true);
  table_->setShowGrid(false);
  table_->verticalHeader()->hide();
  table_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  table_->horizontalHeader()->setHighlightSections(false);
  connect(table_, &QTableWidget::cellChanged, this, &ScreeningPanel::take);
  layout->addWidget(table_);
  balance_->setObjectName(QStringLiteral("screening_balance"));
  layout->addWidget(balance_);
  keep_->setObjectName(QStringLiteral("keep_fractions"));
  keep_->setAccessibleName(tr("Keep these fractions"));
  keep_->setMinimumHeight(28);
  connect(keep_, &QPushButton::clicked, this, &ScreeningPanel::keep_wanted);
  layout->addWidget(keep_, 0, Qt::AlignLeft);
  layout->addWidget(new CautionBar(QStringLiteral("lifting"), tr("Lifting:"),
                                   tr("a full bag is heavy; lift from the knees, or screen it in two halves. General information; qualified advice prevails."), this));
  layout->addStretch(1);
  connect(&bench_, &Bench::changed, this, &ScreeningPanel::refresh);
  connect(&bench_, &Bench::units_changed, this, &ScreeningPanel::refresh);
  connect(&ranges_, &RangeKeeper::test_changed, this, &ScreeningPanel::refresh);
  connect(&bench_, &Bench::surroundings_changed, this, &ScreeningPanel::refresh);
  connect(&bench_, &Bench::current_component_changed, this, &ScreeningPanel::refresh);
}

void ScreeningPanel::take_focus() { form_->findChild<QWidget*>(QStringLiteral("screen_at"))->setFocus(); }

void ScreeningPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void ScreeningPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange && table_ != nullptr) fit();
}

void ScreeningPanel::take(int row, int column) {
  if (filling_ || (column != weighed && column != measured)) return;
  const bool mass_typed = column == weighed;
  const QString kept = kept_text(table_->item(row, column)->text(), mass_typed ? Kind::mass : Kind::volume, bench_.units());
  const auto at = static_cast<std::size_t>(row);
  bench_.edit(mass_typed ? tr("mass of the fraction %1").arg(table_->item(row, fraction)->text()) : tr("litres of the fraction %1").arg(table_->item(row, fraction)->text()), {},
              [&](BenchState& state) {
                ComponentSheet* component = current_component(bench_, state);
                if (component == nullptr) return;
                auto& rows = component->screening.measured;
                if (rows.size() <= at) rows.resize(at + 1);
                (mass_typed ? rows[at].retained : rows[at].tare) = kept;
              });
}

void ScreeningPanel::refresh() {
  if (!isVisible()) return;
  const ScreeningView view = screening_view(bench_);
  const UnitSystem units = bench_.units();
  QStringList faults;
  for (const QString& fault : {view.openings_fault, view.screened_fault, view.day_fault}) {
    if (!fault.isEmpty()) faults << fault;
  }
  for (const ScreeningRow& row : view.rows) {
    if (!row.fault.isEmpty()) faults << with_label(row.name, row.fault);
  }
  fault_->setText(semicolon_list(faults));
  fault_->setVisible(!faults.isEmpty());
  reason_->setText(view.reason);
  reason_->setVisible(!view.reason.isEmpty() && faults.isEmpty());
  filling_ = true;
  table_->setVisible(!view.rows.empty());
  table_->setHorizontalHeaderLabels({tr("fraction"), tr("share"), tr("predicted"), tr("litres"), tr("weighed, %1").arg(unit_of(Kind::mass, units)),
                                     tr("measured, %1").arg(unit_of(Kind::volume, units))});
  table_->setRowCount(static_cast<int>(view.rows.size()));
  const auto index = static_cast<std::size_t>(bench_.current_component());
  const TestRanges* const ranges = ranges_.test();
  for (int line = 0; line < table_->rowCount(); ++line) {
    const auto at = static_cast<std::size_t>(line);
    const ScreeningRow& row = view.rows[at];
    const auto& typed = bench_.state().components[index].screening.measured;
    const PanText none;
    const PanText& own = at < typed.size() ? typed[at] : none;
    const auto cell = [&](int column, const QString& text, bool editable) {
      QTableWidgetItem* item = table_->item(line, column);
      if (item == nullptr) table_->setItem(line, column, item = new QTableWidgetItem);
      item->setText(text);
      item->setTextAlignment((column == fraction ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
      item->setFlags(editable ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable : Qt::ItemIsEnabled | Qt::ItemIsSelectable);
      item->setBackground(editable && !row.fault.isEmpty() ? QBrush(current_colours().fault_fill) : QBrush());
    };
    const auto litres_predicted = row.amount.volume ? std::optional<double>(in_l(*row.amount.volume)) : std::nullopt;
    cell(fraction, row.name, false);
    const FractionRangeTexts range = fraction_range_texts(row, ranges != nullptr && at < ranges->screening.size() ? &ranges->screening[at] : nullptr, units);
    const auto above = [](const std::string& predicted, const QString& below) { return QStringLiteral("%1\n%2").arg(to_local(predicted), below); };
    cell(share, above(percent_text(row.predicted.share.value()), range.share), false);
    cell(mass, above(mass_text(row.amount.dry_mass, units), range.mass), false);
    cell(litres, above(volume_text(litres_predicted, units), range.litres), false);
    cell(weighed, shown_text(own.retained, Kind::mass, units), true);
    cell(measured, shown_text(own.tare, Kind::volume, units), true);
  }
  filling_ = false;
  balance_->setText(view.balance);
  balance_->setVisible(!view.balance.isEmpty());
  keep_->setEnabled(view.is_measured);
  keep_->setToolTip(view.is_measured ? QString() : tr("Weigh every fraction first"));
  fit();
}

void ScreeningPanel::fit() {
  const int line = std::max(24, 2 * table_->fontMetrics().lineSpacing() + 8);  // a figure and its range below it
  table_->verticalHeader()->setDefaultSectionSize(line);
  table_->resizeColumnsToContents();
  table_->horizontalHeader()->setSectionResizeMode(fraction, QHeaderView::Stretch);
  table_->setFixedHeight(table_->rowCount() * line + table_->horizontalHeader()->sizeHint().height() + 2 * table_->frameWidth());
}

}  // namespace gritwright::desktop
