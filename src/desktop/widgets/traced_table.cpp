#include "traced_table.hpp"

#include <QEvent>
#include <QHeaderView>
#include <QPainter>
#include <QScrollBar>
#include <QStyle>
#include <QStyledItemDelegate>
#include <algorithm>
#include <utility>
#include <vector>

#include "column_fit.hpp"
#include "record_table.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

/// Figures end at the right of their column, where words of the next would touch them.
class FigureCells : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    QStyleOptionViewItem whole = option;
    initStyleOption(&whole, index);
    whole.text.clear();
    whole.widget->style()->drawControl(QStyle::CE_ItemViewItem, &whole, painter, whole.widget);
    QStyleOptionViewItem words = option;
    words.rect = QStyle::visualRect(option.direction, option.rect, option.rect.adjusted(0, 0, -room_at_right(option), 0));
    words.state &= ~QStyle::State_HasFocus;
    QStyledItemDelegate::paint(painter, words, index);
  }
  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    return QStyledItemDelegate::sizeHint(option, index) + QSize(room_at_right(option), 0);
  }

 private:
  [[nodiscard]] static int room_at_right(const QStyleOptionViewItem& option) { return room_beside_words(option.fontMetrics) - beside_words_of_cells; }
};

}  // namespace

TracedTable::TracedTable(const char* object_name, const QString& name, int stretched, QWidget* parent)
    : QTableWidget(parent), stretched_(stretched), columns_(new ColumnFit(*this, {}, stretched)) {
  setObjectName(QString::fromLatin1(object_name));
  setAccessibleName(name);
  setAccessibleDescription(tr("Enter goes on to the record of the row."));
  setEditTriggers(NoEditTriggers);
  setSelectionBehavior(SelectRows);
  setSelectionMode(SingleSelection);
  setTabKeyNavigation(false);
  setAlternatingRowColors(true);
  setShowGrid(false);
  setMinimumHeight(90);
  verticalHeader()->hide();
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  connect(this, &QTableWidget::activated, this, [this](const QModelIndex& index) {
    const auto row = static_cast<std::size_t>(index.row());
    if (row < refs_.size() && !refs_[row].id.empty()) emit record_wanted(to_qt(refs_[row].id));
  });
}

void TracedTable::set_figures(std::vector<int> columns) {
  figures_ = std::move(columns);
  for (const int column : figures_) setItemDelegateForColumn(column, new FigureCells(this));
}

void TracedTable::keep_to_rows(int least) {
  columns_->when_fitted([this, least] { fit_height(least); });
}

void TracedTable::fit_height(int least) {
  const int headings = std::max(horizontalHeader()->sizeHint().height(), horizontalHeader()->minimumHeight());
  const int rows = rowCount() == 0 ? verticalHeader()->defaultSectionSize() : verticalHeader()->length();
  const int bar = horizontalHeader()->length() > viewport()->width() ? horizontalScrollBar()->sizeHint().height() : 0;
  const int needed = headings + rows + bar + 2 * frameWidth();
  setMinimumHeight(std::min(least, needed));
  setMaximumHeight(needed);
}

int TracedTable::least_width() const { return columns_->least_width() + verticalScrollBar()->sizeHint().width() + 2 * frameWidth(); }

bool TracedTable::says_something(int column) const {
  if (column == 0 || column == stretched_) return true;
  for (int row = 0; row < rowCount(); ++row) {
    const QTableWidgetItem* const cell = item(row, column);
    if (const QString text = cell != nullptr ? cell->text() : QString(); !text.isEmpty() && text != QStringLiteral("\u2013")) return true;
  }
  return rowCount() == 0;
}

void TracedTable::show_rows(const RecordTable& rows) {
  refs_ = rows.refs;
  setColumnCount(static_cast<int>(rows.table.heading.size()));
  setRowCount(static_cast<int>(rows.table.rows.size()));
  setHorizontalHeaderLabels(rows.table.heading);
  for (const int column : figures_) horizontalHeaderItem(column)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
  for (int row = 0; row < rowCount(); ++row) {
    const QStringList& cells = rows.table.rows[static_cast<std::size_t>(row)];
    for (int column = 0; column < cells.size(); ++column) {
      auto* cell = new QTableWidgetItem(cells[column]);
      cell->setToolTip(cells[column]);
      cell->setData(Qt::AccessibleTextRole, with_label(rows.table.heading[column], cells[column]));
      if (std::ranges::find(figures_, column) != figures_.end()) cell->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
      setItem(row, column, cell);
    }
  }
  fit_columns();
}

void TracedTable::changeEvent(QEvent* event) {
  QTableWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit_columns();
}

void TracedTable::fit_columns() {
  if (columnCount() == 0) return;
  // Measured unwrapped.
  setWordWrap(false);
  const int beside = room_beside_words(fontMetrics());
  std::vector<int> in_one_line;
  std::vector<int> in_two_lines;
  for (int column = 0; column < columnCount(); ++column) {
    const bool is_shown = says_something(column);
    setColumnHidden(column, !is_shown);
    const int cells = sizeHintForColumn(column) - beside_words_of_cells;
    const int heading = horizontalHeader()->fontMetrics().horizontalAdvance(horizontalHeaderItem(column)->text());
    in_one_line.push_back(is_shown ? std::max(cells, heading) + beside : 0);
    in_two_lines.push_back(is_shown ? std::max(cells, width_of_heading(*this, column)) + beside : 0);
  }
  setWordWrap(true);
  columns_->set_wanted_by_headings(std::move(in_one_line), std::move(in_two_lines));
}

}  // namespace gritwright::desktop
