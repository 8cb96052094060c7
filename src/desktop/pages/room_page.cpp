#include "room_page.hpp"

#include <QFontDatabase>
#include <QLabel>
#include <QVBoxLayout>

namespace gritwright::desktop {

RoomPage::RoomPage(const QString& title, const QString& words, const QStringList& commands, QWidget* parent) : QWidget(parent) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(40, 40, 40, 40);
  layout->setSpacing(12);
  auto* heading = new QLabel(title, this);
  heading->setProperty("role", "heading");
  auto* text = new QLabel(words, this);
  auto* lines = new QLabel(commands.join(u'\n'), this);
  lines->setObjectName(QStringLiteral("commands"));
  lines->setFont(QFontDatabase::systemFont(QFontDatabase::FixedFont));
  lines->setTextInteractionFlags(Qt::TextSelectableByMouse);
  lines->setFocusPolicy(Qt::NoFocus);
  // Commands are typed from left to right in every language.
  lines->setLayoutDirection(Qt::LeftToRight);
  for (QLabel* label : {heading, text, lines}) {
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    layout->addWidget(label);
  }
  layout->addStretch(1);
}

}  // namespace gritwright::desktop
