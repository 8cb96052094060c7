#pragma once
#include <QFrame>

namespace gritwright::desktop {

/// A caution where work can hurt: short, put away per topic, and back again from the Help menu.
class CautionBar : public QFrame {
  Q_OBJECT
 public:
  /// `topic` is the key it is remembered by.
  CautionBar(QString topic, const QString& title, const QString& text, QWidget* parent = nullptr);

  /// Shows it again if it was put away.
  void restore();

 private:
  QString topic_;
};

}  // namespace gritwright::desktop
