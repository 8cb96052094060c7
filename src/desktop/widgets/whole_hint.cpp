#include "whole_hint.hpp"

#include <QApplication>
#include <QEvent>
#include <QLineEdit>
#include <QPalette>
#include <QString>

namespace gritwright::desktop {

namespace {

constexpr char looks_after_its_hint[] = "looks_after_its_hint";

class WholeHint : public QObject {
 public:
  explicit WholeHint(QLineEdit& field) : QObject(&field), field_(field) {
    field.installEventFilter(this);
    connect(&field, &QLineEdit::textChanged, this, &WholeHint::look);
  }

 protected:
  // Of a new hint nothing is sent but that the field is painted.
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::Resize || event->type() == QEvent::FontChange || (event->type() == QEvent::Paint && field_.placeholderText() != seen_)) look();
    return false;
  }

 private:
  void look() {
    seen_ = field_.placeholderText();
    const bool is_cut = field_.text().isEmpty() && !hint_has_room(field_, field_.width());
    // A tip of another's stays.
    if (field_.toolTip() == tip_) field_.setToolTip(tip_ = is_cut ? seen_ : QString());
    if (is_cut == is_hiding_) return;
    is_hiding_ = is_cut;
    hide_hint(field_, is_cut);
  }

  QLineEdit& field_;
  QString seen_;
  QString tip_;
  bool is_hiding_ = false;
};

class WholeHints : public QObject {
 public:
  using QObject::QObject;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() != QEvent::Polish) return false;
    auto* const field = qobject_cast<QLineEdit*>(watched);
    if (field == nullptr || field->property(has_its_hint_below).toBool() || field->property(looks_after_its_hint).toBool()) return false;
    field->setProperty(looks_after_its_hint, true);
    new WholeHint(*field);
    return false;
  }
};

}  // namespace

bool hint_has_room(const QLineEdit& field, int width) {
  constexpr int around = 8;
  const int button = field.isClearButtonEnabled() ? field.height() : 0;
  return field.fontMetrics().horizontalAdvance(field.placeholderText()) + around + button <= width;
}

void hide_hint(QLineEdit& field, bool hidden) {
  QPalette palette;
  if (hidden) palette.setColor(QPalette::PlaceholderText, Qt::transparent);
  field.setPalette(palette);
}

void show_whole_hints(QApplication& application) { application.installEventFilter(new WholeHints(&application)); }

}  // namespace gritwright::desktop
