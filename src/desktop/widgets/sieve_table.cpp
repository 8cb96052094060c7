#include "sieve_table.hpp"

#include <QClipboard>
#include <QContextMenuEvent>
#include <QFocusEvent>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMenu>
#include <algorithm>

#include "column_scroll.hpp"
#include "live_delegate.hpp"
#include "models/bench.hpp"
#include "models/sieve_table_model.hpp"

namespace gritwright::desktop {

SieveTable::SieveTable(Bench& bench, QWidget* parent) : QTableView(parent), bench_(bench), model_(new SieveTableModel(bench, this)) {
  setModel(model_);
  setItemDelegate(new LiveDelegate(QStringLiteral("sieve_cell_editor"), this));
  setEditTriggers(AnyKeyPressed | DoubleClicked | EditKeyPressed | SelectedClicked);
  setSelectionMode(ContiguousSelection);
  setTabKeyNavigation(false);
  setAlternatingRowColors(true);
  setShowGrid(false);
  setWordWrap(false);
  setCornerButtonEnabled(false);
  verticalHeader()->hide();
  horizontalHeader()->setStretchLastSection(true);
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setSectionsClickable(false);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setAccessibleName(tr("Sieve stack"));
  setAccessibleDescription(tr("One sieve a row, coarse to fine, the pan last. Type what stayed on; Enter goes to the next pan."));
  const auto shown_columns = [this] {
    for (int column = 0; column < SieveTableModel::column_count; ++column) setColumnHidden(column, !model_->is_shown(column));
    fit_columns();
  };
  connect(&bench_, &Bench::changed, this, shown_columns);
  connect(&bench_, &Bench::units_changed, this, shown_columns);
  connect(model_, &QAbstractItemModel::modelReset, this, [this, shown_columns] {
    shown_columns();
    fit_rows();
    setCurrentIndex(model_->index(0, SieveTableModel::retained));
  });
  shown_columns();
  fit_rows();
  setCurrentIndex(model_->index(0, SieveTableModel::retained));
  keep_current_in_sight(*this);
}

void SieveTable::fit_columns() {
  const QFontMetrics metrics(font());
  const int digit = metrics.horizontalAdvance(u'0');
  int columns = 0;
  for (int column = 0; column < SieveTableModel::check; ++column) {
    const QString heading = model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
    // A net mass stands there with its unit: "1234.5 g", "0.864 oz".
    const int digits = column == SieveTableModel::net ? 9 : 7;
    const int width = std::max(metrics.horizontalAdvance(heading) + 2 * digit, digits * digit);
    setColumnWidth(column, width);
    if (!isColumnHidden(column)) columns += width;
  }
  // Room for every column and the beginning of the checks, so that nothing scrolls sideways.
  setMinimumWidth(columns + 10 * digit + 2 * frameWidth());
}

void SieveTable::fit_rows() {
  verticalHeader()->setDefaultSectionSize(std::max(24, QFontMetrics(font()).height() + 8));
  // The whole of a usual stack is in view without a second scroll bar inside the page's own.
  const int rows = std::clamp(model_->rowCount(), 4, 9);
  setMinimumHeight(rows * verticalHeader()->defaultSectionSize() + horizontalHeader()->sizeHint().height() + 2 * frameWidth());
}

void SieveTable::changeEvent(QEvent* event) {
  QTableView::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
    fit_rows();
    fit_columns();
  }
}

void SieveTable::focusInEvent(QFocusEvent* event) {
  QTableView::focusInEvent(event);
  // An editor that closes gives the focus back too: then the row that is typed in must stay where it is.
  if (event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason || event->reason() == Qt::ShortcutFocusReason) scroll_to_whole(*this);
}

void SieveTable::keyPressEvent(QKeyEvent* event) {
  if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && state() != EditingState) {
    go_to_next_pan();
    event->accept();
    return;
  }
  const QString typed = event->text();
  const bool is_sign = !typed.isEmpty() && typed.front().isPrint() && !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
  const bool is_reckoned = currentIndex().column() >= SieveTableModel::passing || currentIndex().column() == SieveTableModel::net;
  if (is_sign && currentIndex().isValid() && is_reckoned) {
    emit bench_.told(tr("This is worked out: type what stayed on the sieve."));
    return event->accept();
  }
  QTableView::keyPressEvent(event);
}

// Up and down stay in their column; left and right skip what can't be typed into only at the end of the row.
QModelIndex SieveTable::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
  if (action != MoveNext && action != MovePrevious) return QTableView::moveCursor(action, modifiers);
  const int step = action == MoveNext ? 1 : -1;
  int row = currentIndex().row();
  int column = currentIndex().column();
  for (int tries = 0; tries < model_->rowCount() * model_->columnCount(); ++tries) {
    column += step;
    if (column < 0 || column >= model_->columnCount()) {
      row += step;
      column = step > 0 ? 0 : model_->columnCount() - 1;
    }
    if (row < 0 || row >= model_->rowCount()) return currentIndex();
    const QModelIndex next = model_->index(row, column);
    if (!isColumnHidden(column) && (next.flags() & Qt::ItemIsEditable)) return next;
  }
  return currentIndex();
}

void SieveTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
  const bool entered = hint == QAbstractItemDelegate::SubmitModelCache;
  QTableView::closeEditor(editor, entered ? QAbstractItemDelegate::NoHint : hint);
  bench_.end_typing();
  if (entered) go_to_next_pan();
}

// Below the pan it goes on at the top of what is weighed next, the empty sieves or a further sample, as long as nothing stands there.
void SieveTable::go_to_next_pan() {
  const int row = currentIndex().row() + 1;
  int column = currentIndex().column();
  if (row < model_->rowCount()) return setCurrentIndex(model_->index(row, column));
  for (++column; column < SieveTableModel::passing; ++column) {
    const QModelIndex top = model_->index(0, column);
    if (isColumnHidden(column) || !(top.flags() & Qt::ItemIsEditable)) continue;
    if (top.data(Qt::EditRole).toString().isEmpty()) return setCurrentIndex(top);
  }
}

void SieveTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QTableView::currentChanged(current, previous);
  emit current_row_changed(current.row());
}

void SieveTable::paste() {
  const QString said = model_->paste(QGuiApplication::clipboard()->text(), currentIndex());
  if (!said.isEmpty()) emit bench_.told(said);
}

void SieveTable::copy() {
  QStringList lines;
  int row = -1;
  QModelIndexList selected = selectionModel()->selectedIndexes();
  std::sort(selected.begin(), selected.end());
  for (const QModelIndex& index : selected) {
    const QString text = index.data(Qt::DisplayRole).toString();
    if (index.row() == row) lines.back() += u'\t' + text;
    else lines << text;
    row = index.row();
  }
  QGuiApplication::clipboard()->setText(lines.join(u'\n'));
}

void SieveTable::insert_sieve() {
  const int row = std::max(0, currentIndex().row());
  model_->insert_sieve(row);
  setCurrentIndex(model_->index(row, SieveTableModel::sieve));
  setFocus();
}

void SieveTable::remove_sieve() {
  const int row = currentIndex().row();
  model_->remove_sieve(row);
  setCurrentIndex(model_->index(std::min(row, model_->rowCount() - 1), SieveTableModel::retained));
}

void SieveTable::clear_cells() {
  const QModelIndexList selected = selectionModel()->selectedIndexes();
  for (const QModelIndex& index : selected) model_->setData(index, QString(), Qt::EditRole);
}

void SieveTable::contextMenuEvent(QContextMenuEvent* event) {
  QMenu menu(this);
  menu.addActions(actions());
  menu.exec(event->globalPos());
}

}  // namespace gritwright::desktop
