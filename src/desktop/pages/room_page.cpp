#include "room_page.hpp"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace gritwright::desktop {

RoomPage::RoomPage(const QString& title, const QString& words, const QString& button_text, QWidget* parent) : QWidget(parent) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(40, 40, 40, 40);
  layout->setSpacing(12);
  auto* heading = new QLabel(title, this);
  heading->setProperty("role", "heading");
  auto* text = new QLabel(words, this);
  for (QLabel* label : {heading, text}) {
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    layout->addWidget(label);
  }
  auto* button = new QPushButton(button_text, this);
  button->setAccessibleName(button_text);
  button->setMinimumHeight(28);
  connect(button, &QPushButton::clicked, this, &RoomPage::help_wanted);
  layout->addWidget(button, 0, Qt::AlignLeft);
  layout->addStretch(1);
}

}  // namespace gritwright::desktop
