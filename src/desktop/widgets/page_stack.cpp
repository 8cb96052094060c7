#include "page_stack.hpp"

namespace gritwright::desktop {

PageStack::PageStack(QWidget* parent) : QStackedWidget(parent) {
  // The page that comes may need more room than the one that goes.
  connect(this, &QStackedWidget::currentChanged, this, [this] { updateGeometry(); });
}

QSize PageStack::sizeHint() const { return currentWidget() != nullptr ? currentWidget()->sizeHint() : QStackedWidget::sizeHint(); }

QSize PageStack::minimumSizeHint() const { return currentWidget() != nullptr ? currentWidget()->minimumSizeHint() : QStackedWidget::minimumSizeHint(); }

}  // namespace gritwright::desktop
