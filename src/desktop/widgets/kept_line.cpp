#include "kept_line.hpp"

#include <QSettings>

namespace gritwright::desktop {

KeptLine::KeptLine(QLineEdit& line) : QObject(&line), line_(line) {
  connect(&line, &QLineEdit::textChanged, this, [this](const QString& text) {
    if (key_.isEmpty()) return;
    QSettings settings;
    if (text.trimmed().isEmpty()) settings.remove(key_);
    else settings.setValue(key_, text);
  });
}

void KeptLine::hold_under(const QString& key) {
  key_.clear();
  line_.setText(key.isEmpty() ? QString() : QSettings().value(key).toString());
  key_ = key;
}

KeptChoice::KeptChoice(QComboBox& box) : QObject(&box), box_(box) {
  connect(&box, &QComboBox::activated, this, [this] {
    if (!key_.isEmpty()) QSettings().setValue(key_, box_.currentData());
  });
}

void KeptChoice::hold_under(const QString& key) {
  key_ = key;
  const QString held = key.isEmpty() ? QString() : QSettings().value(key).toString();
  // Settings give back texts; and a list that is read when it is looked at may not have the entry yet.
  int at = 0;
  for (int i = 0; i < box_.count(); ++i)
    if (box_.itemData(i).toString() == held) at = i;
  if (!held.isEmpty() && box_.itemData(at).toString() != held) {
    at = box_.count();
    box_.addItem(held, held);
  }
  box_.setCurrentIndex(at);
}

void KeptChoice::forget() {
  if (!key_.isEmpty()) QSettings().remove(key_);
}

}  // namespace gritwright::desktop
