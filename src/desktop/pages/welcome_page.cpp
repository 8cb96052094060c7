#include "welcome_page.hpp"

#include <QCommandLinkButton>
#include <QFrame>
#include <QLabel>
#include <QVBoxLayout>

namespace gritwright::desktop {

WelcomePage::WelcomePage(QWidget* parent) : QWidget(parent) {
  auto* layout = new QVBoxLayout(this);
  layout->addStretch(1);
  auto* column = new QVBoxLayout;
  column->setSpacing(10);
  auto* heading = new QLabel(tr("From a weighed sieve sample to a mix in a pot"), this);
  heading->setProperty("role", "heading");
  heading->setWordWrap(true);
  QFont large = heading->font();
  large.setPointSizeF(large.pointSizeF() * 1.5);
  heading->setFont(large);
  column->addWidget(heading);
  auto* words = new QLabel(tr("Type what stayed on each sieve, blend the bags, set the pot: read how much air and water the mix holds in it, "
                              "and how many litres of each to measure out."),
                           this);
  words->setWordWrap(true);
  column->addWidget(words);
  column->addSpacing(8);
  const auto door = [&](const char* object_name, const QString& title, const QString& text, void (WelcomePage::*wanted)()) {
    auto* card = new QFrame(this);
    card->setObjectName(QStringLiteral("card"));
    auto* inside = new QVBoxLayout(card);
    inside->setContentsMargins(4, 4, 4, 4);
    auto* button = new QCommandLinkButton(title, text, card);
    button->setIcon(QIcon());
    button->setIconSize(QSize(1, 1));
    button->setObjectName(QString::fromLatin1(object_name));
    button->setAccessibleName(title);
    button->setAccessibleDescription(text);
    button->setMinimumHeight(64);
    connect(button, &QCommandLinkButton::clicked, this, wanted);
    inside->addWidget(button);
    column->addWidget(card);
  };
  door("door_demonstration", tr("Look at the demonstration"), tr("An invented nursery in a window of its own: bags, sieve tests, a mix for pines. Closing it throws it away."),
       &WelcomePage::demonstration_wanted);
  door("door_sieving", tr("Record a sieving"), tr("An empty stack of sieves, ready to type into."), &WelcomePage::sieving_wanted);
  door("door_container", tr("Describe a pot"), tr("Shape and inside lengths: its volume at once, air and water when there is a mix."),
       &WelcomePage::container_wanted);
  auto* middle = new QHBoxLayout;
  middle->addStretch(1);
  middle->addLayout(column, 4);
  middle->addStretch(1);
  layout->addLayout(middle);
  layout->addStretch(2);
}

void WelcomePage::take_focus() { findChild<QWidget*>(QStringLiteral("door_demonstration"))->setFocus(Qt::OtherFocusReason); }

}  // namespace gritwright::desktop
