#include "plain_labels.hpp"

#include <QApplication>
#include <QEvent>
#include <QLabel>

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

}  // namespace

void show_labels_plainly(QApplication& application) { application.installEventFilter(new PlainLabels(&application)); }

}  // namespace gritwright::desktop
