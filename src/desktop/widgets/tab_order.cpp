#include "tab_order.hpp"

#include <QAbstractItemView>
#include <QGridLayout>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QTabBar>
#include <QTabWidget>
#include <algorithm>
#include <utility>
#include <vector>

namespace gritwright::desktop {

namespace {

class ReadingOrder {
 public:
  void read(QWidget* widget) {
    if (widget == nullptr) return;
    // One that hands the focus on stays right before what gets it: anywhere else it would be a stop that leads back.
    for (QWidget* one : {widget, widget->focusProxy()}) {
      if (one != nullptr && (one->focusPolicy() & Qt::TabFocus) != 0) add(one);
    }
    if (auto* tabs = qobject_cast<QTabWidget*>(widget)) {
      read(tabs->cornerWidget(Qt::TopLeftCorner));
      add(tabs->tabBar());
      read(tabs->cornerWidget());
      for (int i = 0; i < tabs->count(); ++i) read(tabs->widget(i));
    } else if (auto* splitter = qobject_cast<QSplitter*>(widget)) {
      for (int i = 0; i < splitter->count(); ++i) read(splitter->widget(i));
    } else if (auto* stack = qobject_cast<QStackedWidget*>(widget)) {
      for (int i = 0; i < stack->count(); ++i) read(stack->widget(i));
    } else if (auto* scroll = qobject_cast<QScrollArea*>(widget)) {
      read(scroll->widget());
    } else if (widget->layout() != nullptr) {
      read(widget->layout());
    }
  }

  [[nodiscard]] const std::vector<QWidget*>& widgets() const { return widgets_; }

 private:
  void add(QWidget* widget) {
    if (std::ranges::find(widgets_, widget) == widgets_.end()) widgets_.push_back(widget);
  }

  void read(QLayout* layout) {
    std::vector<std::pair<std::pair<int, int>, QLayoutItem*>> items;
    const auto* const grid = qobject_cast<QGridLayout*>(layout);
    for (int i = 0; i < layout->count(); ++i) {
      std::pair<int, int> place{0, i};
      int rows = 0, columns = 0;
      if (grid != nullptr) grid->getItemPosition(i, &place.first, &place.second, &rows, &columns);
      items.emplace_back(place, layout->itemAt(i));
    }
    std::ranges::stable_sort(items, {}, &std::pair<std::pair<int, int>, QLayoutItem*>::first);
    for (const auto& [place, item] : items) {
      if (item->layout() != nullptr) read(item->layout());
      else read(item->widget());
    }
  }

  std::vector<QWidget*> widgets_;
};

}  // namespace

void tab_in_reading_order(std::initializer_list<QWidget*> parts) {
  ReadingOrder order;
  for (QWidget* part : parts) order.read(part);
  const std::vector<QWidget*>& widgets = order.widgets();
  for (std::size_t i = 1; i < widgets.size(); ++i) QWidget::setTabOrder(widgets[i - 1], widgets[i]);
}

}  // namespace gritwright::desktop
