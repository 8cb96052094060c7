#include "picture_tabs.hpp"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QMetaObject>
#include <QStackedWidget>
#include <QTableWidget>
#include <QToolButton>
#include <algorithm>

#include "picture_tab_bar.hpp"
#include "widgets/how_button.hpp"

namespace gritwright::desktop {

namespace {

constexpr int between_buttons = 2;

void fill(QTableWidget* table, const PictureTable& from) {
  table->setColumnCount(static_cast<int>(from.heading.size()));
  table->setRowCount(static_cast<int>(from.rows.size()));
  table->setHorizontalHeaderLabels(from.heading);
  for (int row = 0; row < table->rowCount(); ++row) {
    const QStringList& cells = from.rows[static_cast<std::size_t>(row)];
    for (int column = 0; column < cells.size(); ++column) {
      auto* item = new QTableWidgetItem(cells[column]);
      item->setTextAlignment((column == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
      table->setItem(row, column, item);
    }
  }
  table->verticalHeader()->setDefaultSectionSize(std::max(26, table->fontMetrics().height() + 8));
  table->resizeColumnsToContents();
}

/// Out of sight it asks for no height: the highest of all pictures would take the room below from each.
class PictureStack : public QStackedWidget {
 public:
  using QStackedWidget::QStackedWidget;

  [[nodiscard]] QSize minimumSizeHint() const override {
    const QSize hint = QStackedWidget::minimumSizeHint();
    return isHidden() ? QSize(hint.width(), 0) : hint;
  }
};

/// As wide as its widest name, and asks for nothing: if the tabs asked for less than it does, the page would change between the two and never come to rest.
class PictureChooser : public QComboBox {
 public:
  explicit PictureChooser(QWidget* parent) : QComboBox(parent) { setSizeAdjustPolicy(AdjustToContents); }

  [[nodiscard]] QSize minimumSizeHint() const override {
    return {0, QComboBox::minimumSizeHint().height()};
  }
};

}  // namespace

PictureTabs::PictureTabs(QWidget* parent) : QTabWidget(parent), bar_(new PictureTabBar(this, true)), twin_(new QToolButton(this)), how_(new HowButton([this] { return figure(); }, this)), chooser_(new PictureChooser(this)) {
  setTabBar(bar_);
  setDocumentMode(true);
  twin_->setObjectName(QStringLiteral("picture_twin"));
  twin_->setAccessibleName(tr("Pictures as tables"));
  twin_->setCheckable(true);
  twin_->setMinimumSize(28, 26);
  how_->setObjectName(QStringLiteral("how_picture"));
  auto* corner = new QWidget(this);
  auto* buttons = new QHBoxLayout(corner);
  buttons->setContentsMargins(0, 0, 0, 0);
  buttons->setSpacing(between_buttons);
  buttons->addWidget(how_);
  buttons->addWidget(twin_);
  setCornerWidget(corner);
  bar_->installEventFilter(this);
  twin_->installEventFilter(this);
  chooser_->setObjectName(QStringLiteral("picture_chooser"));
  chooser_->setMinimumHeight(28);
  chooser_->hide();
  connect(chooser_, &QComboBox::activated, this, &QTabWidget::setCurrentIndex);
  connect(this, &QTabWidget::currentChanged, chooser_, &QComboBox::setCurrentIndex);
  connect(twin_, &QToolButton::toggled, this, &PictureTabs::set_as_table);
  connect(this, &QTabWidget::currentChanged, this, &PictureTabs::refresh_table);
  connect(this, &QTabWidget::currentChanged, this, &PictureTabs::name_how);
}

void PictureTabs::add(Picture picture) {
  auto* stack = new PictureStack(this);
  auto* table = new QTableWidget(stack);
  table->setObjectName(QString::fromLatin1(picture.table_name));
  table->setAccessibleName(tr("%1, as a table").arg(picture.title));
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table->setAlternatingRowColors(true);
  table->setTabKeyNavigation(false);
  table->verticalHeader()->hide();
  stack->addWidget(picture.view);
  stack->addWidget(table);
  // Before the tab, which may come to the front at once and ask for its table.
  shown_.push_back({picture, stack, table});
  chooser_->addItem(picture.title);
  addTab(stack, picture.title);
  fit_tabs();
}

void PictureTabs::resizeEvent(QResizeEvent* event) {
  QTabWidget::resizeEvent(event);
  fit_tabs();
}

void PictureTabs::changeEvent(QEvent* event) {
  QTabWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit_tabs();
}

// The bar and the button get another font after this does.
bool PictureTabs::eventFilter(QObject* watched, QEvent* event) {
  const bool handled = QTabWidget::eventFilter(watched, event);
  if (event->type() == QEvent::FontChange && (watched == bar_ || watched == twin_)) QMetaObject::invokeMethod(this, &PictureTabs::fit_tabs, Qt::QueuedConnection);
  return handled;
}

void PictureTabs::fit_tabs() {
  const auto beside = [this](const QString& words) {
    twin_->setText(words);
    return width() - how_->sizeHint().expandedTo(how_->minimumSize()).width() - between_buttons - twin_->sizeHint().width();
  };
  const QString words = as_table_ ? tr("As a picture") : tr("As a table");
  const int beside_two_lines = beside(in_two_lines(words));
  bar_->fit_into(beside(words), beside_two_lines);
  if (bar_->has_two_lines()) twin_->setText(in_two_lines(words));
  if (bar_->gives_way() == (cornerWidget(Qt::TopLeftCorner) == chooser_)) return;
  const bool had_focus = bar_->hasFocus() || chooser_->hasFocus();
  chooser_->setAccessibleName(accessibleName());
  setCornerWidget(bar_->gives_way() ? chooser_ : nullptr, Qt::TopLeftCorner);
  chooser_->setVisible(bar_->gives_way());
  bar_->setFocusPolicy(bar_->gives_way() ? Qt::NoFocus : Qt::TabFocus);
  if (had_focus) (bar_->gives_way() ? static_cast<QWidget*>(chooser_) : bar_)->setFocus();
}

void PictureTabs::show_picture(const QWidget* view) {
  const auto found = std::ranges::find(shown_, view, [](const Shown& shown) { return static_cast<const QWidget*>(shown.picture.view); });
  if (found == shown_.end()) return;
  setCurrentWidget(found->stack);
  found->stack->currentWidget()->setFocus();
}

void PictureTabs::set_as_table(bool table) {
  if (table == as_table_) return;
  as_table_ = table;
  twin_->setChecked(table);
  fit_tabs();
  for (const Shown& shown : shown_) shown.stack->setCurrentIndex(table ? 1 : 0);
  refresh_table();
  emit as_table_changed(table);
}

void PictureTabs::name_how() {
  if (!shown_.empty()) how_->setAccessibleName(tr("How so: %1").arg(picture().title));
}

QString PictureTabs::sentence() const {
  const QWidget* const drawn = picture().view->focusProxy() != nullptr ? picture().view->focusProxy() : picture().view;
  return drawn->accessibleDescription();
}

Figure PictureTabs::figure() const {
  Figure figure{QStringLiteral("picture"), picture().title, {}, {}, picture().how()};
  if (!figure.explanations.empty()) return figure;
  figure.reason = sentence();
  if (figure.reason.endsWith(u'.')) figure.reason.chop(1);
  return figure;
}

const PictureTabs::Picture& PictureTabs::picture() const { return shown_[static_cast<std::size_t>(std::max(0, currentIndex()))].picture; }

void PictureTabs::refresh_table() {
  // Filled only while in view: a slider that is dragged repaints the page sixty times a second.
  if (!as_table_ || shown_.empty() || currentIndex() < 0) return;
  const Shown& shown = shown_[static_cast<std::size_t>(currentIndex())];
  const PictureTable from = shown.picture.table();
  shown.table->clearSpans();
  fill(shown.table, from);
  shown.table->horizontalHeader()->setStretchLastSection(from.rows.empty());
  if (!from.rows.empty() || shown.table->columnCount() == 0) return;
  // Nothing but headings would not say why.
  shown.table->setRowCount(1);
  shown.table->setItem(0, 0, new QTableWidgetItem(sentence()));
  if (shown.table->columnCount() > 1) shown.table->setSpan(0, 0, 1, shown.table->columnCount());
  shown.table->resizeRowsToContents();
}

}  // namespace gritwright::desktop
