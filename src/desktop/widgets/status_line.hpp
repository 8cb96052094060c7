#pragma once
#include <QStatusBar>

class QLabel;

namespace gritwright::desktop {

/// The line at the foot of the window. A sentence or standing words without room in one line stand in several; one that is
/// longer than a few lines ends in dots and is read whole in its tip.
class StatusLine : public QStatusBar {
  Q_OBJECT
 public:
  explicit StatusLine(QWidget* parent = nullptr);

  /// Words that stay; where a sentence needs their room, they give way as long as it is said.
  void keep_words(const QString& words, const char* object_name);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  [[nodiscard]] int width_for_words() const;
  [[nodiscard]] QRect sentence_room() const;
  void give_room();

  QLabel* words_ = nullptr;
};

}  // namespace gritwright::desktop
