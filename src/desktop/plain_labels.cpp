#include "plain_labels.hpp"

#include <QApplication>
#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPalette>

namespace gritwright::desktop {

namespace {

class PlainLabels : public QObject {
 public:
  using QObject::QObject;

 protected:
  // Tips are labels too, made by Qt; every widget is polished before it is first shown.
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() != QEvent::Polish) return false;
    if (auto* label = qobject_cast<QLabel*>(watched); label != nullptr && label->textFormat() == Qt::AutoText) label->setTextFormat(Qt::PlainText);
    return false;
  }
};

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
    constexpr int around = 8;
    seen_ = field_.placeholderText();
    const bool is_cut = field_.text().isEmpty() && field_.fontMetrics().horizontalAdvance(seen_) + around > field_.width();
    if (is_cut && field_.toolTip().isEmpty()) field_.setToolTip(seen_);
    if (is_cut == is_hiding_) return;
    is_hiding_ = is_cut;
    QPalette palette;
    if (is_hiding_) palette.setColor(QPalette::PlaceholderText, Qt::transparent);
    field_.setPalette(palette);
  }

  QLineEdit& field_;
  QString seen_;
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

void show_whole_hints(QApplication& application) { application.installEventFilter(new WholeHints(&application)); }

void show_labels_plainly(QApplication& application) { application.installEventFilter(new PlainLabels(&application)); }

}  // namespace gritwright::desktop
