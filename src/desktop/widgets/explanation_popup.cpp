#include "explanation_popup.hpp"

#include <QFile>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>

namespace gritwright::desktop {

namespace {

/// Pages of the manual that `text` names, each once, in its order.
QStringList science_pages(const QString& text) {
  static const QRegularExpression named(QStringLiteral("docs/(science/[a-z-]+)\\.md"));
  QStringList pages;
  for (auto found = named.globalMatch(text); found.hasNext();) {
    const QString page = found.next().captured(1);
    if (!pages.contains(page) && QFile::exists(QStringLiteral(":/docs/%1.md").arg(page))) pages << page;
  }
  return pages;
}

QString heading_of(const QString& page) {
  QFile file(QStringLiteral(":/docs/%1.md").arg(page));
  return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readLine()).remove(u'#').trimmed() : page;
}

}  // namespace

ExplanationPopup::ExplanationPopup(const QString& title, const QString& text, QWidget* parent) : QFrame(parent, Qt::Popup) {
  setAttribute(Qt::WA_DeleteOnClose);
  setObjectName(QStringLiteral("explanation_popup"));
  setFrameShape(StyledPanel);
  setAccessibleName(title);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(12, 10, 12, 10);
  auto* heading = new QLabel(title, this);
  heading->setProperty("role", "heading");
  heading->setTextInteractionFlags(Qt::TextSelectableByMouse);
  heading->setFocusPolicy(Qt::NoFocus);
  body_ = new QLabel(text, this);
  body_->setObjectName(QStringLiteral("explanation_text"));
  body_->setTextFormat(Qt::PlainText);
  body_->setWordWrap(true);
  body_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  body_->setAccessibleName(title);
  body_->setFocusPolicy(Qt::StrongFocus);
  body_->setMinimumWidth(360);
  layout->addWidget(heading);
  layout->addWidget(body_);
  for (const QString& page : science_pages(text)) {
    auto* more = new QPushButton(tr("Read on: %1").arg(heading_of(page).replace(u'&', QStringLiteral("&&"))), this);
    more->setObjectName(QStringLiteral("read_on_") + page.section(u'/', -1));
    more->setMinimumHeight(28);
    connect(more, &QPushButton::clicked, this, [this, page] { read_on(page); });
    layout->addWidget(more);
  }
  setFocusProxy(body_);
}

void ExplanationPopup::read_on(const QString& page) {
  // By name, since the pages below don't know the window.
  QWidget* window = parentWidget()->window();
  close();
  QMetaObject::invokeMethod(window, "show_manual_page", Q_ARG(QString, page));
}

void ExplanationPopup::open_beside(QWidget* widget) {
  adjustSize();
  const QRect screen = widget->screen()->availableGeometry();
  // By itself a window takes two thirds of the screen at most.
  const int needed = layout()->totalHeightForWidth(width());
  if (needed <= screen.height()) {
    resize(width(), std::max(height(), needed));
  } else {
    auto* scroll = new QScrollArea(this);
    scroll->setFrameShape(NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setAccessibleName(accessibleName());
    delete layout()->replaceWidget(body_, scroll);
    scroll->setWidget(body_);
    setFocusProxy(scroll);
    layout()->activate();
    resize(width() + scroll->verticalScrollBar()->sizeHint().width(), screen.height());
  }
  QPoint place = widget->mapToGlobal(QPoint(widget->width() - width(), widget->height()));
  place.setX(std::clamp(place.x(), screen.left(), std::max(screen.left(), screen.right() - width())));
  if (place.y() + height() > screen.bottom()) place.setY(std::max(screen.top(), widget->mapToGlobal(QPoint(0, 0)).y() - height()));
  move(place);
  show();
  setFocus();
}

}  // namespace gritwright::desktop
