#include "wish_table.hpp"

#include <QFontMetrics>
#include <QHeaderView>
#include <QRect>
#include <QStyle>
#include <algorithm>

#include "models/typed_text.hpp"
#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

namespace {

enum WishColumn { wish_name, wish_least, wish_most, wish_must, wish_weight, wish_columns };
constexpr int least_row_height = 26;

QString wish_meaning(WishRow row) {
  switch (row) {
    case WishRow::band: return WishTable::tr("share of the mass inside the wanted grain");
    case WishRow::finer: return WishTable::tr("share of the mass that is dust, finer than the size below");
    case WishRow::air: return WishTable::tr("share of the pot that drains free after a flood");
    case WishRow::water: return WishTable::tr("share of the pot that holds water after draining");
    case WishRow::available: return WishTable::tr("share of the pot whose water plants can take");
    case WishRow::wet_mass: return WishTable::tr("mass of a litre, drained");
    case WishRow::exchange: return WishTable::tr("exchange capacity of a litre");
    case WishRow::price: return WishTable::tr("of a mixed litre, in your own currency");
    case WishRow::limits: return WishTable::tr("percent passing between limits at sizes you give");
    case WishRow::nearest: return WishTable::tr("percent passing to come near to at sizes you give");
  }
  return {};
}

Kind kind_of_wish(WishRow row) { return row == WishRow::wet_mass ? Kind::density : Kind::words; }
bool is_curve(WishRow row) { return row == WishRow::limits || row == WishRow::nearest; }

}  // namespace

void prepare_typed_table(QTableWidget& table, const char* object_name, const QString& is, const QStringList& heading) {
  table.setObjectName(QLatin1String(object_name));
  table.setAccessibleName(is);
  table.setColumnCount(static_cast<int>(heading.size()));
  table.setHorizontalHeaderLabels(heading);
  table.setTabKeyNavigation(false);
  table.setAlternatingRowColors(true);
  table.setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  table.setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::SelectedClicked | QAbstractItemView::EditKeyPressed | QAbstractItemView::AnyKeyPressed);
  table.verticalHeader()->hide();
  table.horizontalHeader()->setHighlightSections(false);
}

QTableWidgetItem* typed_cell(QTableWidget& table, int row, int column) {
  QTableWidgetItem* item = table.item(row, column);
  if (item == nullptr) table.setItem(row, column, item = new QTableWidgetItem);
  return item;
}

void set_typed_cell(QTableWidgetItem& item, const QString& text, const QString& fault, bool editable, bool typed) {
  item.setText(text);
  item.setToolTip(fault);
  item.setData(Qt::AccessibleDescriptionRole, fault);
  item.setFlags(editable ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable : Qt::ItemIsEnabled | Qt::ItemIsSelectable);
  item.setBackground(fault.isEmpty() ? QBrush() : QBrush(current_colours().fault_fill));
  item.setForeground(typed ? QBrush() : QBrush(current_colours().muted));
}

void fit_columns(QTableWidget& table) {
  const int line = std::max(least_row_height, table.fontMetrics().height() + 8);
  table.verticalHeader()->setDefaultSectionSize(line);
  table.resizeColumnsToContents();
  table.horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
  // Room for a number even where nothing is typed yet.
  const int digits = table.fontMetrics().horizontalAdvance(QStringLiteral("000.0")) + 12;
  for (int column = 1; column < table.columnCount(); ++column) table.setColumnWidth(column, std::max(digits, table.columnWidth(column)));
  table.setMinimumWidth(14 * table.fontMetrics().averageCharWidth() + (table.columnCount() - 1) * digits);
}

void fit_rows(QTableWidget& table, int most_rows, int width) {
  const int line = table.verticalHeader()->defaultSectionSize();
  const int margin = table.style()->pixelMetric(QStyle::PM_FocusFrameHMargin, nullptr, &table) + 1;
  const int tick = table.style()->pixelMetric(QStyle::PM_IndicatorWidth, nullptr, &table) + 2 * margin;
  int in_sight = 0;
  for (int row = 0; row < table.rowCount(); ++row) {
    const QTableWidgetItem* const name = table.item(row, 0);
    int needed = line;
    if (name != nullptr) {
      const int room = width - 2 * margin - (name->flags().testFlag(Qt::ItemIsUserCheckable) ? tick : 0);
      needed = std::max(line, table.fontMetrics().boundingRect(QRect(0, 0, room, 10 * line), Qt::TextWordWrap, name->text()).height() + 8);
    }
    table.setRowHeight(row, needed);
    if (row < most_rows) in_sight += needed;
  }
  table.setFixedHeight(std::max(in_sight, line) + table.horizontalHeader()->sizeHint().height() + 2 * table.frameWidth());
}

QString wish_label(WishRow row, const std::optional<Band>& band, UnitSystem units) {
  const auto size = [&](Aperture aperture) { return to_local(size_text(aperture, units)); };
  switch (row) {
    case WishRow::band: return band ? WishTable::tr("%1 to %2, %").arg(size(band->from), size(band->to)) : WishTable::tr("wanted grain, %");
    case WishRow::finer: return WishTable::tr("dust, %");
    case WishRow::air: return WishTable::tr("air in pot, %");
    case WishRow::water: return WishTable::tr("water in pot, %");
    case WishRow::available: return WishTable::tr("plants can take, %");
    case WishRow::wet_mass: return WishTable::tr("wet litre, %1").arg(unit_of(Kind::density, units));
    case WishRow::exchange: return WishTable::tr("exchange, meq/L");
    case WishRow::price: return WishTable::tr("price of a litre");
    case WishRow::limits: return WishTable::tr("curve within");
    case WishRow::nearest: return WishTable::tr("curve near");
  }
  return {};
}

WishTable::WishTable(const char* object_name, const QString& is, QWidget* parent) : QTableWidget(parent) {
  prepare_typed_table(*this, object_name, is, {tr("wish"), tr("least"), tr("most"), tr("must"), tr("weight")});
  setRowCount(static_cast<int>(wish_rows));
  connect(this, &QTableWidget::itemChanged, this, &WishTable::typed);
}

void WishTable::fit() {
  fit_columns(*this);
  int names = 0;
  for (int row = 0; row < rowCount(); ++row) {
    if (const QTableWidgetItem* name = item(row, wish_name)) names = std::max(names, fontMetrics().horizontalAdvance(name->text()) + 12);
  }
  int beside = 2 * frameWidth();
  for (int column = wish_least; column < wish_columns; ++column) beside += columnWidth(column);
  const int for_names = std::min(names, 22 * fontMetrics().averageCharWidth());
  setMinimumWidth(std::max(minimumWidth(), for_names + beside));
  fit_rows(*this, rowCount(), std::max(for_names, columnWidth(wish_name)));
}

void WishTable::show_wishes(const std::array<WishText, wish_rows>& wishes, const std::optional<Band>& band, UnitSystem units,
                            const std::function<QString(WishRow, const char*)>& fault) {
  filling_ = true;
  shown_ = wishes;
  units_ = units;
  for (int line = 0; line < rowCount(); ++line) {
    const auto row = static_cast<WishRow>(line);
    const WishText& wish = wishes[static_cast<std::size_t>(line)];
    const QString label = wish_label(row, band, units);
    const auto put = [&](int column, const QString& text, const QString& wrong, bool editable, bool is_typed) {
      set_typed_cell(*typed_cell(*this, line, column), text, wrong, editable, is_typed);
    };
    put(wish_name, label, {}, false, true);
    item(line, wish_name)->setToolTip(wish_meaning(row));
    put(wish_least, shown_text(wish.least, kind_of_wish(row), units), fault(row, "/least"), true, true);
    put(wish_most, shown_text(wish.most, kind_of_wish(row), units), fault(row, "/most"), !is_curve(row), true);
    put(wish_weight, wish.weight.isEmpty() && !wish.hard ? QStringLiteral("1") : wish.weight, fault(row, "/weight"), !wish.hard, !wish.weight.isEmpty());
    QTableWidgetItem* must = typed_cell(*this, line, wish_must);
    must->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    must->setCheckState(wish.hard ? Qt::Checked : Qt::Unchecked);
    must->setData(Qt::AccessibleTextRole, tr("%1 must hold").arg(label));
    for (int column = wish_least; column < wish_columns; ++column) item(line, column)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    if (!is_curve(row)) continue;
    if (columnSpan(line, wish_least) == 1) setSpan(line, wish_least, 1, 2);
    QTableWidgetItem* points = item(line, wish_least);
    points->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    if (points->toolTip().isEmpty()) points->setToolTip(row == WishRow::limits ? tr("sizes in mm with percent passing: 4.75 90-100; 2.36 34-50") : tr("sizes in mm with percent passing: 4.75 95; 2.36 42"));
  }
  filling_ = false;
}

void WishTable::typed(const QTableWidgetItem* item) {
  if (filling_) return;
  const int column = item->column();
  const auto row = static_cast<WishRow>(item->row());
  WishText wish = shown_[static_cast<std::size_t>(item->row())];
  const QString text = item->text().trimmed();
  if (column == wish_least) wish.least = kept_text(text, kind_of_wish(row), units_);
  else if (column == wish_most) wish.most = kept_text(text, kind_of_wish(row), units_);
  else if (column == wish_must) wish.hard = item->checkState() == Qt::Checked;
  else if (column == wish_weight) wish.weight = text;
  emit wish_typed(row, wish);
}

}  // namespace gritwright::desktop
