#pragma once
#include <QString>
#include <QWidget>
#include <cstddef>
#include <vector>

class QLabel;
class QVBoxLayout;

namespace gritwright::desktop {

/// Fields with their labels, and buttons, beside each other; where they have no room so, in as many lines as they need.
class FlowLine : public QWidget {
  Q_OBJECT
 public:
  explicit FlowLine(QWidget* parent = nullptr);

  /// `label`: none for a button. `widest`: a text that a field must have room for. Where no piece of a line stretches, room stays free at their right.
  void add(const QString& label, QWidget* field, int stretch = 0, const QString& widest = {});
  /// What comes next begins a line.
  void begin_line() { begins_line_ = true; }
  /// What comes next stands in one line with what comes after it, where a line holds both.
  void keep_together() { stays_with_next_ = true; }

  /// As wide as its widest piece: with less room there are more lines.
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  struct Piece {
    QLabel* label;
    QWidget* field;
    int stretch;
    QString widest;
    bool begins_line;
    bool stays_with_next;
  };

  [[nodiscard]] int width_of(const Piece& piece) const;
  void give_room(const Piece& piece) const;
  void lay_out();

  QVBoxLayout* lines_;
  std::vector<Piece> pieces_;
  std::vector<std::size_t> first_of_line_;
  bool begins_line_ = false;
  bool stays_with_next_ = false;
};

}  // namespace gritwright::desktop
