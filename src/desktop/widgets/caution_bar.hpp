#pragma once
#include <QFrame>

class QGridLayout;
class QLabel;
class QToolButton;

namespace gritwright::desktop {

/// A caution where work can hurt: short, put away per topic, and back again from the Help menu. Where it would take many lines its first sentence
/// stands there, and the general advice behind it comes when asked for.
class CautionBar : public QFrame {
  Q_OBJECT
 public:
  /// `topic` is the key it is remembered by. `text`: its own sentence first.
  CautionBar(QString topic, const QString& title, const QString& text, QWidget* parent = nullptr);

  /// Shows it again if it was put away.
  void restore();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  enum class Room { ample, little, unfolded };

  [[nodiscard]] QString first_sentence() const;
  /// In so much width.
  [[nodiscard]] bool is_better_folded(int width) const;
  void fit();
  void arrange(Room room);

  QString topic_;
  QString title_;
  QString text_;
  QGridLayout* grid_;
  QLabel* words_;
  QToolButton* more_;
  QToolButton* put_away_;
  Room room_ = Room::ample;
};

}  // namespace gritwright::desktop
