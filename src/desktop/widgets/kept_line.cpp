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

}  // namespace gritwright::desktop
