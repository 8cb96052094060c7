#include "welcome_page.hpp"

#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "widgets/column_scroll.hpp"

namespace gritwright::desktop {

namespace {

/// A button with a name and a sentence below it, both in the size of the page's text.
class DoorButton : public QPushButton {
 public:
  DoorButton(const QString& title, const QString& text, QWidget* parent) : QPushButton(parent) {
    auto* inside = new QVBoxLayout(this);
    inside->setContentsMargins(12, 10, 12, 10);
    inside->setSpacing(4);
    const auto words = [&](const QString& said) {
      auto* label = new QLabel(said, this);
      label->setWordWrap(true);
      label->setAttribute(Qt::WA_TransparentForMouseEvents);
      inside->addWidget(label);
      return label;
    };
    words(title)->setProperty("role", "heading");
    words(text);
    setAccessibleName(title);
    setAccessibleDescription(text);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
  }

  [[nodiscard]] QSize sizeHint() const override { return layout()->sizeHint(); }
  [[nodiscard]] QSize minimumSizeHint() const override { return layout()->minimumSize(); }
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override { return layout()->heightForWidth(width); }
};

}  // namespace

WelcomePage::WelcomePage(QWidget* parent) : QWidget(parent) {
  auto* around = new QVBoxLayout(this);
  around->setContentsMargins(0, 0, 0, 0);
  auto* content = new QWidget;
  around->addWidget(new ColumnScroll(content, this));
  auto* layout = new QVBoxLayout(content);
  layout->addStretch(1);
  auto* column = new QVBoxLayout;
  column->setSpacing(10);
  heading_ = new QLabel(tr("From a weighed sieve sample to a mix in a pot"), this);
  heading_->setWordWrap(true);
  fit_heading();
  column->addWidget(heading_);
  auto* words = new QLabel(tr("Type what stayed on each sieve, blend the bags, set the pot: read how much air and water the mix holds in it, "
                              "and how many litres of each to measure out."),
                           this);
  words->setWordWrap(true);
  column->addWidget(words);
  column->addSpacing(8);
  const auto door = [&](const char* object_name, const QString& title, const QString& text, void (WelcomePage::*wanted)()) {
    auto* button = new DoorButton(title, text, this);
    button->setObjectName(QString::fromLatin1(object_name));
    connect(button, &QPushButton::clicked, this, wanted);
    column->addWidget(button);
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

void WelcomePage::fit_heading() {
  QFont large = font();
  large.setPointSizeF(large.pointSizeF() * 1.5);
  large.setBold(true);
  heading_->setFont(large);
}

void WelcomePage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange && heading_ != nullptr) fit_heading();
}

void WelcomePage::take_focus() { findChild<QWidget*>(QStringLiteral("door_demonstration"))->setFocus(Qt::OtherFocusReason); }

}  // namespace gritwright::desktop
