#include "navigation.hpp"

#include <QAction>
#include <QActionGroup>
#include <QDragEnterEvent>
#include <QMainWindow>
#include <QMenu>
#include <QMimeData>
#include <QStackedWidget>
#include <QToolBar>
#include <algorithm>
#include <string_view>
#include <utility>

#include "models/record_list_model.hpp"

namespace gritwright::desktop {

namespace {

void to_first_field(QWidget& page) {
  for (QWidget* next = page.nextInFocusChain(); next != &page; next = next->nextInFocusChain()) {
    if (!page.isAncestorOf(next) || !next->isVisible() || !next->isEnabled() || !(next->focusPolicy() & Qt::TabFocus)) continue;
    return next->setFocus(Qt::ShortcutFocusReason);
  }
}

}  // namespace

Navigation::Navigation(QMainWindow& window, QStackedWidget& pages, QMenu& menu)
    : QObject(&window), pages_(pages), menu_(menu), bar_(new QToolBar(tr("Pages"), &window)), group_(new QActionGroup(this)) {
  bar_->setObjectName(QStringLiteral("page_bar"));
  bar_->setMovable(false);
  bar_->setToolButtonStyle(Qt::ToolButtonTextOnly);
  // Its context menu could hide the only way on by mouse.
  bar_->toggleViewAction()->setVisible(false);
  bar_->setContextMenuPolicy(Qt::PreventContextMenu);
  window.addToolBar(Qt::TopToolBarArea, bar_);
  connect(&pages_, &QStackedWidget::currentChanged, this, &Navigation::check_current);
}

void Navigation::add_room(const char* key, const QString& title, QWidget* page) {
  pages_.addWidget(page);
  auto* action = new QAction(title, this);
  menu_.insertAction(below_, action);
  action->setObjectName(QStringLiteral("action_page_") + QLatin1String(key));
  action->setShortcut(QKeySequence(QStringLiteral("Ctrl+%1").arg(rooms_.size() + 1)));
  action->setCheckable(true);
  group_->addAction(action);
  bar_->addAction(action);
  QWidget* button = bar_->widgetForAction(action);
  button->setObjectName(action->objectName() + QStringLiteral("_button"));
  button->setAccessibleName(title);
  button->setMinimumHeight(30);
  button->setFocusPolicy(Qt::StrongFocus);
  button->setAcceptDrops(true);
  button->installEventFilter(this);
  const auto at = rooms_.size();
  connect(action, &QAction::triggered, this, [this, at] {
    QWidget* const wanted = rooms_[at].page;
    if (pages_.currentWidget() == wanted) return to_first_field(*wanted);
    pages_.setCurrentWidget(wanted);
  });
  rooms_.push_back({key, page, action, button});
}

void Navigation::replace_room(const char* key, QWidget* page) {
  const auto room = std::ranges::find(rooms_, std::string_view(key), [](const Room& one) { return std::string_view(one.key); });
  if (room == rooms_.end()) return;
  const bool current = pages_.currentWidget() == room->page;
  pages_.addWidget(page);
  QWidget* before = std::exchange(room->page, page);
  if (current) pages_.setCurrentWidget(page);
  pages_.removeWidget(before);
  before->deleteLater();
}

void Navigation::show(QWidget* page) { pages_.setCurrentWidget(page); }

QWidget* Navigation::room(const char* key) const {
  const auto room = std::ranges::find(rooms_, std::string_view(key), [](const Room& one) { return std::string_view(one.key); });
  return room == rooms_.end() ? nullptr : room->page;
}

// A bag that is held over a room's button opens that room, so that it can be dropped there.
bool Navigation::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::DragEnter) return QObject::eventFilter(watched, event);
  const auto room = std::ranges::find(rooms_, watched, [](const Room& one) { return static_cast<QObject*>(one.button); });
  auto* drag = static_cast<QDragEnterEvent*>(event);
  if (room == rooms_.end() || !drag->mimeData()->hasFormat(QLatin1String(RecordListModel::bag_format))) return false;
  show(room->page);
  drag->accept();
  return true;
}

void Navigation::check_current() {
  for (const Room& room : rooms_) room.action->setChecked(room.page == pages_.currentWidget());
}

}  // namespace gritwright::desktop
