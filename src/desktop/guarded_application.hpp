#pragma once
#include <QApplication>

namespace gritwright::desktop {

/// Where a record's file fails under the hand, what was begun is broken off and told, and the window goes on: what lies on the bench is
/// there all the same. Pages catch it where they can do better than that. The wheel scrolls the page and never changes a choice that it
/// happens to pass.
class GuardedApplication : public QApplication {
 public:
  using QApplication::QApplication;
  bool notify(QObject* receiver, QEvent* event) override;
};

}  // namespace gritwright::desktop
