#include "screening_panel.hpp"

#include <QAbstractItemDelegate>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QResizeEvent>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "caution_bar.hpp"
#include "field_form.hpp"
#include "how_button.hpp"
#include "live_delegate.hpp"
#include "models/range_keeper.hpp"
#include "record_table.hpp"
#include "sheet_editor.hpp"
#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

namespace {

enum ScreeningColumn { fraction, share, mass, litres, weighed, measured, column_count };

constexpr const char* cell_editor = "screening_cell_editor";
constexpr int alone_role = Qt::UserRole;  ///< of what is predicted: without its ranges
constexpr int around_cell_words = 16;

/// Begins where something can be typed, and Enter goes to the next fraction, as in the stack of sieves.
class FractionTable : public QTableWidget {
 public:
  FractionTable(Bench& bench, QWidget* parent) : QTableWidget(parent), bench_(bench) { setItemDelegate(new LiveDelegate(QString::fromLatin1(cell_editor), this)); }

 protected:
  void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override {
    const bool entered = hint == QAbstractItemDelegate::SubmitModelCache;
    QTableWidget::closeEditor(editor, entered ? QAbstractItemDelegate::NoHint : hint);
    bench_.end_typing();
    if (entered && currentRow() + 1 < rowCount()) setCurrentCell(currentRow() + 1, currentColumn());
  }

  void focusInEvent(QFocusEvent* event) override {
    if (rowCount() > 0 && currentColumn() < weighed) setCurrentCell(std::max(0, currentRow()), weighed);
    QTableWidget::focusInEvent(event);
  }

 private:
  Bench& bench_;
};

}  // namespace

ScreeningPanel::ScreeningPanel(Bench& bench, RangeKeeper& ranges, QWidget* parent)
    : QWidget(parent),
      bench_(bench),
      ranges_(ranges),
      form_(new FieldForm(bench, [] { return static_cast<const Faults*>(nullptr); }, this)),
      fault_(new QLabel(this)),
      reason_(new QLabel(this)),
      table_(new FractionTable(bench, this)),
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
              tr("today; or a day like %1").arg(example_day()), {}, {}, {}});
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
  how_ = new HowButton([this] { return how_so(); }, this);
  auto* foot = new QHBoxLayout;
  foot->addWidget(keep_);
  foot->addStretch(1);
  foot->addWidget(how_);
  layout->addLayout(foot);
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

Figure ScreeningPanel::how_so() const { return {QStringLiteral("screening"), tr("What is predicted"), {}, {}, view_.explanations}; }

void ScreeningPanel::end_typing() {
  if (QWidget* const typed = focusWidget(); typed != nullptr && typed->objectName() == QLatin1String(cell_editor)) table_->setFocus();
}

void ScreeningPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void ScreeningPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit_anew();
}

void ScreeningPanel::take(int row, int column) {
  if (filling_ || (column != weighed && column != measured)) return;
  const bool mass_typed = column == weighed;
  const QString kept = kept_text(table_->item(row, column)->text(), mass_typed ? Kind::mass : Kind::volume, bench_.units());
  const auto at = static_cast<std::size_t>(row);
  bench_.edit(mass_typed ? tr("mass of the fraction %1").arg(table_->item(row, fraction)->text()) : tr("litres of the fraction %1").arg(table_->item(row, fraction)->text()),
              QStringLiteral("screening/%1/%2/%3").arg(bench_.current_component()).arg(row).arg(column), [&](BenchState& state) {
                ComponentSheet* component = current_component(bench_, state);
                if (component == nullptr) return;
                auto& rows = component->screening.measured;
                if (rows.size() <= at) rows.resize(at + 1);
                (mass_typed ? rows[at].retained : rows[at].tare) = kept;
              });
}

void ScreeningPanel::refresh() {
  if (!isVisible()) return;
  view_ = screening_view(bench_);
  QStringList faults;
  for (const QString& fault : {view_.openings_fault, view_.screened_fault, view_.day_fault}) {
    if (!fault.isEmpty()) faults << fault;
  }
  for (const ScreeningRow& row : view_.rows) {
    if (!row.fault.isEmpty()) faults << with_label(row.name, row.fault);
  }
  fault_->setText(semicolon_list(faults));
  fault_->setVisible(!faults.isEmpty());
  reason_->setText(view_.reason);
  reason_->setVisible(!view_.reason.isEmpty() && faults.isEmpty());
  table_->setVisible(!view_.rows.empty());
  balance_->setText(view_.far_from_screened.isEmpty() ? view_.balance : view_.balance + u'\n' + view_.far_from_screened);
  balance_->setVisible(!view_.balance.isEmpty());
  how_->set_figure(how_so());
  keep_->setEnabled(view_.is_measured);
  keep_->setToolTip(view_.is_measured ? QString() : view_.far_from_screened.isEmpty() ? tr("Weigh every fraction first") : view_.far_from_screened);
  fill();
  fit();
}

void ScreeningPanel::fill() {
  // An open cell keeps what is typed; with its row gone it can't hand that to another component.
  const auto& components = bench_.state().components;
  const auto index = static_cast<std::size_t>(bench_.current_component());
  const std::pair shown(index, index < components.size() ? components[index].bag : QString());
  filling_ = true;
  if (shown != filled_for_) table_->setRowCount(0);
  filled_for_ = shown;
  const UnitSystem units = bench_.units();
  const auto heading = [this](const QString& words) { return room_ == Room::ample ? words : in_two_lines(words); };
  table_->setHorizontalHeaderLabels({tr("fraction"), tr("share"), tr("predicted"), tr("litres"), heading(tr("weighed, %1").arg(unit_of(Kind::mass, units))),
                                     heading(tr("measured, %1").arg(unit_of(Kind::volume, units)))});
  table_->setRowCount(static_cast<int>(view_.rows.size()));
  for (const int column : {share, litres}) table_->setColumnHidden(column, room_ != Room::ample);
  const TestRanges* const ranges = ranges_.test();
  for (int line = 0; line < table_->rowCount(); ++line) {
    const auto at = static_cast<std::size_t>(line);
    const ScreeningRow& row = view_.rows[at];
    const auto& typed = components[index].screening.measured;
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
    const QString between = room_ == Room::ample ? QStringLiteral("\n") : QStringLiteral("  ");
    const QString of_share = to_local(percent_text(row.predicted.share.value()));
    const QString of_mass = to_local(mass_text(row.amount.dry_mass, units));
    const QString of_litres = to_local(volume_text(litres_predicted, units));
    const QStringList with_ranges{of_share + between + range.share, of_mass + between + range.mass, of_litres + between + range.litres};
    cell(share, with_ranges[0], false);
    cell(mass, room_ == Room::ample ? with_ranges[1] : (room_ == Room::little ? with_ranges : QStringList{of_share, of_mass, of_litres}).join(u'\n'), false);
    table_->item(line, mass)->setData(alone_role, QStringList{of_share, of_mass, of_litres}.join(u'\n'));
    table_->item(line, mass)->setToolTip(room_ == Room::least ? with_ranges.join(u'\n') : QString());
    cell(litres, with_ranges[2], false);
    cell(weighed, shown_text(own.retained, Kind::mass, units), true);
    cell(measured, shown_text(own.tare, Kind::volume, units), true);
  }
  filling_ = false;
}

// A fraction's name can be broken at its blanks; those between a figure and its unit don't break.
int ScreeningPanel::name_width() const {
  int width = table_->horizontalHeader()->fontMetrics().horizontalAdvance(table_->horizontalHeaderItem(fraction)->text());
  for (const ScreeningRow& row : view_.rows)
    for (const QString& word : row.name.split(u' ')) width = std::max(width, table_->fontMetrics().horizontalAdvance(word));
  return width + around_cell_words;
}

// The same whatever it is laid out for now: else it would ask for less room where it has much, and the page would never come to rest.
int ScreeningPanel::least_width() const {
  const QFontMetrics metrics = table_->fontMetrics();
  int width = name_width() + 2 * table_->frameWidth();
  for (const int column : {int(mass), int(weighed), int(measured)}) {
    int widest = 0;
    for (const QString& line : in_two_lines(table_->horizontalHeaderItem(column)->text().replace(u'\n', u' ')).split(u'\n'))
      widest = std::max(widest, table_->horizontalHeader()->fontMetrics().horizontalAdvance(line));
    for (int row = 0; row < table_->rowCount(); ++row) {
      const QString text = column == mass ? table_->item(row, mass)->data(alone_role).toString() : table_->item(row, column)->text();
      for (const QString& line : text.split(u'\n')) widest = std::max(widest, metrics.horizontalAdvance(line));
    }
    width += widest + around_cell_words;
  }
  return width;
}

int ScreeningPanel::table_width() const {
  QHeaderView& header = *table_->horizontalHeader();
  header.setSectionResizeMode(fraction, QHeaderView::Fixed);
  table_->resizeColumnsToContents();
  const int name = room_ == Room::ample ? header.sectionSize(fraction) : name_width();
  return header.length() - header.sectionSize(fraction) + name + 2 * table_->frameWidth();
}

void ScreeningPanel::fit() {
  const QMargins around = layout()->contentsMargins();
  const int width_there = width() - around.left() - around.right();
  while (table_width() > width_there && room_ != Room::least) {
    room_ = room_ == Room::ample ? Room::little : Room::least;
    fill();
  }
  table_->setMinimumWidth(table_->rowCount() == 0 ? 0 : least_width());
  QHeaderView& header = *table_->horizontalHeader();
  give_air_beside_first(*table_, width_there - table_width());
  header.setSectionResizeMode(fraction, QHeaderView::Stretch);
  const int lines = room_ == Room::ample ? 2 : 3;  // a figure and its range below it, or all three
  const int line = std::max(24, lines * table_->fontMetrics().lineSpacing() + 8);
  table_->verticalHeader()->setDefaultSectionSize(line);
  table_->setFixedHeight(table_->rowCount() * line + header.sizeHint().height() + 2 * table_->frameWidth());
}

void ScreeningPanel::fit_anew() {
  if (!isVisible()) return;
  room_ = Room::ample;
  fill();
  fit();
}

void ScreeningPanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) fit_anew();
}

}  // namespace gritwright::desktop
