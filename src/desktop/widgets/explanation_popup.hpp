#pragma once
#include <QFrame>

class QLabel;

namespace gritwright::desktop {

/// "How so?": a small window beside what was asked, closed by Escape or a click elsewhere. Its text can be read out and copied, and the
/// science pages that it names ("docs/science/water.md") open in the manual.
class ExplanationPopup : public QFrame {
  Q_OBJECT
 public:
  ExplanationPopup(const QString& title, const QString& text, QWidget* parent);

  /// A text longer than the screen scrolls.
  void open_beside(QWidget* widget);

 private:
  void read_on(const QString& page);

  QLabel* body_;
};

}  // namespace gritwright::desktop
