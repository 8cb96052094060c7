#include "record_list_side.hpp"

#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QTableView>
#include <QVBoxLayout>

#include "flow_line.hpp"
#include "list_fit.hpp"
#include "record_table.hpp"
#include "text.hpp"

namespace gritwright::desktop {

RecordListSide::RecordListSide(RecordBook& book, RecordKind kind, const Names& names, std::function<QString(const RecordLine&)> state, QWidget* parent)
    : QWidget(parent),
      list_(new RecordListModel(book, kind, {RecordListModel::Column::id, RecordListModel::Column::title, RecordListModel::Column::state}, this)),
      found_(new QSortFilterProxyModel(this)),
      find_(new QLineEdit(this)),
      tools_(new FlowLine(this)),
      table_(new QTableView(this)),
      empty_(new QLabel(names.when_empty, this)) {
  list_->set_state(names.state, std::move(state), names.state_is_figure);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  find_->setObjectName(names.prefix + QStringLiteral("_find"));
  find_->setPlaceholderText(names.find_hint);
  find_->setAccessibleName(names.find_hint);
  find_->setMinimumHeight(28);
  tools_->add(tr("F&ind"), find_, 1, QStringLiteral("00000000"));
  layout->addWidget(tools_);
  empty_->setWordWrap(true);
  empty_->setProperty("role", "muted");
  layout->addWidget(empty_);
  found_->setSourceModel(list_);
  found_->setFilterCaseSensitivity(Qt::CaseInsensitive);
  found_->setFilterKeyColumn(-1);
  table_->setObjectName(names.prefix + QStringLiteral("_table"));
  table_->setAccessibleName(names.list);
  table_->setModel(found_);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  show_as_record_list(*table_);
  layout->addWidget(table_, 1);
  connect(find_, &QLineEdit::textChanged, found_, &QSortFilterProxyModel::setFilterFixedString);
  connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &RecordListSide::choose);
  // After the list has read the change itself.
  connect(&book, &RecordBook::changed, this, &RecordListSide::keep_selection);
  new ListFit(*table_, {{0, QStringLiteral("WW-000")}, {2, names.widest_state, true}});
  keep_selection();
}

QPushButton* RecordListSide::add_button(const QString& object_name, const QString& text) {
  auto* button = new QPushButton(text, this);
  button->setObjectName(object_name);
  QString name = text;
  button->setAccessibleName(name.remove(u'&'));
  button->setMinimumHeight(28);
  tools_->add({}, button);
  return button;
}

void RecordListSide::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  list_->set_in_sight(true);
  keep_selection();
}

void RecordListSide::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  list_->set_in_sight(false);
}

void RecordListSide::find() {
  find_->setFocus();
  find_->selectAll();
}

void RecordListSide::show_record(const QString& id) {
  if (list_->row_of(id) < 0) return;
  find_->clear();
  table_->setCurrentIndex(found_->mapFromSource(list_->index(list_->row_of(id), 0)));
  choose();
}

void RecordListSide::choose() {
  const QModelIndex index = table_->currentIndex();
  const QString now = index.isValid() ? to_qt(list_->ref_at(found_->mapToSource(index).row()).id) : QString();
  if (now == current_ || now.isEmpty()) return;
  // Typing into a record can make it one that is no longer looked for; it stays on screen until another is chosen here.
  const int row = list_->row_of(current_);
  const bool left_the_list = row >= 0 && !found_->mapFromSource(list_->index(row, 0)).isValid();
  if (left_the_list && !find_->hasFocus() && !table_->hasFocus()) return;
  current_ = now;
  emit chosen();
}

// After the list was read anew the record on screen keeps its row; if it is gone, the first in sight takes its place.
void RecordListSide::keep_selection() {
  empty_->setVisible(list_->rowCount() == 0);
  if (const int row = list_->row_of(current_); row >= 0) {
    const QModelIndex index = found_->mapFromSource(list_->index(row, 0));
    if (index.isValid() && table_->currentIndex().row() != index.row()) table_->setCurrentIndex(index);
    return;
  }
  const bool had_one = !current_.isEmpty();
  if (had_one && hold_ && hold_(current_)) return;
  current_.clear();
  if (found_->rowCount() > 0) {
    table_->setCurrentIndex(found_->index(0, 0));
    choose();
  } else if (had_one) {
    emit chosen();
  }
}

}  // namespace gritwright::desktop
