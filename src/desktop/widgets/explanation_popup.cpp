#include "explanation_popup.hpp"

#include <QGuiApplication>
#include <QLabel>
#include <QScreen>
#include <QVBoxLayout>

namespace gritwright::desktop {

ExplanationPopup::ExplanationPopup(const QString& title, const QString& text, QWidget* parent) : QFrame(parent, Qt::Popup) {
  setAttribute(Qt::WA_DeleteOnClose);
  setObjectName(QStringLiteral("explanation_popup"));
  setFrameShape(StyledPanel);
  setAccessibleName(title);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(12, 10, 12, 10);
  auto* heading = new QLabel(title, this);
  heading->setProperty("role", "heading");
  auto* body = new QLabel(text, this);
  body->setObjectName(QStringLiteral("explanation_text"));
  body->setTextFormat(Qt::PlainText);
  body->setWordWrap(true);
  body->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  body->setAccessibleName(title);
  body->setFocusPolicy(Qt::StrongFocus);
  body->setMinimumWidth(360);
  layout->addWidget(heading);
  layout->addWidget(body);
  setFocusProxy(body);
}

void ExplanationPopup::open_beside(QWidget* widget) {
  adjustSize();
  const QRect screen = widget->screen()->availableGeometry();
  QPoint place = widget->mapToGlobal(QPoint(widget->width() - width(), widget->height()));
  place.setX(std::clamp(place.x(), screen.left(), std::max(screen.left(), screen.right() - width())));
  if (place.y() + height() > screen.bottom()) place.setY(std::max(screen.top(), widget->mapToGlobal(QPoint(0, 0)).y() - height()));
  move(place);
  show();
  setFocus();
}

}  // namespace gritwright::desktop
