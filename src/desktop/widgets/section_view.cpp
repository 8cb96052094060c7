#include "section_view.hpp"

#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QScrollBar>
#include <QStandardItemModel>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "column_scroll.hpp"
#include "record_table.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

/// Everything a section says, to see whether anything changed.
QString words_of(const PrintBlock& block) {
  QString words;
  if (const auto* text = std::get_if<PrintText>(&block)) words = to_qt(text->text);
  if (const auto* ticks = std::get_if<PrintTicks>(&block)) {
    for (const std::string& line : ticks->lines) words += to_qt(line) + u'\n';
  }
  if (const auto* table = std::get_if<PrintTable>(&block)) {
    for (const std::string& cell : table->heading) words += to_qt(cell) + u'\t';
    for (const auto& row : table->rows) {
      for (const std::string& cell : row) words += to_qt(cell) + u'\t';
      words += u'\n';
    }
  }
  return words;
}

/// Words of one column keep clear of the next.
class RoomyCells : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    return QStyledItemDelegate::sizeHint(option, index) + QSize(2 * option.fontMetrics.averageCharWidth(), 0);
  }
};

QLabel* line_of(const QString& text, const char* role, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setWordWrap(true);
  if (role != nullptr) label->setProperty("role", role);
  return label;
}

}  // namespace

SectionView::SectionView(const QString& object_name, const QString& title, QWidget* parent) : QScrollArea(parent), title_(title), content_(new QWidget(this)), layout_(new QVBoxLayout(content_)) {
  setObjectName(object_name);
  setAccessibleName(title);
  setFocusPolicy(Qt::NoFocus);
  setFrameShape(QFrame::NoFrame);
  setWidgetResizable(true);
  layout_->setContentsMargins(4, 6, 10, 6);
  layout_->setSpacing(6);
  setWidget(content_);
}

void SectionView::show_sections(const std::vector<PrintSection>& sections, const QString& instead) {
  QString words = instead;
  for (const PrintSection& section : sections) {
    words += to_qt(section.title) + u'\n';
    for (const PrintBlock& block : section.blocks) words += words_of(block) + u'\n';
  }
  // A table that says the same keeps its cursor.
  if (words == shown_ && layout_->count() > 0) return;
  shown_ = words;
  sections_ = sections;
  instead_ = instead;
  rebuild();
}

void SectionView::changeEvent(QEvent* event) {
  QScrollArea::changeEvent(event);
  // Not at once: Qt is telling every widget there is, and these would be gone.
  if (event->type() == QEvent::FontChange && !shown_.isEmpty()) QTimer::singleShot(0, this, &SectionView::rebuild);
}

QSize SectionView::minimumSizeHint() const {
  QSize size = QScrollArea::minimumSizeHint();
  size.setWidth(std::max(size.width(), content_->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width()));
  return size;
}

void SectionView::rebuild() {
  while (QLayoutItem* item = layout_->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  tables_ = 0;
  if (sections_.empty() && !instead_.isEmpty()) layout_->addWidget(line_of(instead_, "muted", content_));
  for (const PrintSection& section : sections_) {
    const QString title = to_local(section.title);
    layout_->addWidget(line_of(title, "heading", content_));
    for (const PrintBlock& block : section.blocks) {
      if (const auto* text = std::get_if<PrintText>(&block)) layout_->addWidget(line_of(to_local(text->text), text->strong ? nullptr : "muted", content_));
      if (const auto* ticks = std::get_if<PrintTicks>(&block)) {
        for (const std::string& line : ticks->lines) layout_->addWidget(line_of(QStringLiteral("\u2022 ") + to_local(line), nullptr, content_));
      }
      if (const auto* table = std::get_if<PrintTable>(&block)) add_table(title, *table);
    }
  }
  layout_->addStretch(1);
  updateGeometry();
}

void SectionView::add_table(const QString& title, const PrintTable& source) {
  auto* table = new QTableView(content_);
  table->setObjectName(QStringLiteral("%1_table_%2").arg(objectName()).arg(tables_++));
  table->setAccessibleName(tr("%1: %2").arg(title_, title));
  const auto columns = static_cast<int>(source.heading.size());
  auto* model = new QStandardItemModel(static_cast<int>(source.rows.size()), columns, table);
  for (int column = 0; column < columns; ++column) {
    const auto at = static_cast<std::size_t>(column);
    const QString heading = to_local(source.heading[at]);
    const bool number = at < source.numbers.size() && source.numbers[at];
    const Qt::Alignment align = (number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter;
    model->setHorizontalHeaderItem(column, new QStandardItem(heading));
    model->horizontalHeaderItem(column)->setTextAlignment(align);
    for (std::size_t row = 0; row < source.rows.size(); ++row) {
      const QString text = to_local(source.rows[row][at]);
      auto* item = new QStandardItem(text);
      item->setTextAlignment(align);
      item->setData(tr("%1, %2: %3").arg(to_local(source.rows[row].front()), heading, text), Qt::AccessibleTextRole);
      item->setToolTip(text);
      model->setItem(static_cast<int>(row), column, item);
    }
  }
  table->setModel(model);
  keep_current_in_sight(*table);
  show_as_record_list(*table);
  table->setItemDelegate(new RoomyCells(table));
  table->setFont(font());
  const QFontMetrics metrics(font());
  const int line = std::max(26, metrics.height() + 8);
  table->verticalHeader()->setMinimumSectionSize(line);
  table->verticalHeader()->setDefaultSectionSize(line);
  table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  // A number stays beside the others; words may have the rest of the line.
  table->horizontalHeader()->setStretchLastSection(source.numbers.empty() || !source.numbers.back());
  table->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  const int height = line * static_cast<int>(source.rows.size()) + table->horizontalHeader()->sizeHint().height() + 4;
  table->setFixedHeight(height);
  // A bar below it must not cover the last row.
  connect(table->horizontalScrollBar(), &QScrollBar::rangeChanged, table, [table, height](int, int most) { table->setFixedHeight(height + (most > 0 ? table->horizontalScrollBar()->sizeHint().height() : 0)); });
  layout_->addWidget(table);
}

}  // namespace gritwright::desktop
