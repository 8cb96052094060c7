#pragma once
#include <QWidget>
#include <vector>

class QGridLayout;

namespace gritwright::desktop {

/// Cards in as many columns as their width allows, and something across below them.
class CardGrid : public QWidget {
  Q_OBJECT
 public:
  explicit CardGrid(QWidget* parent = nullptr);

  void add_card(QWidget* card);
  void set_below(QWidget* widget);

  /// As wide as one card needs it: with less room there are fewer columns.
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  [[nodiscard]] int widest_card() const;
  void lay_out(bool anew);

  QGridLayout* grid_;
  std::vector<QWidget*> cards_;
  QWidget* below_ = nullptr;
  int columns_ = 0;
};

}  // namespace gritwright::desktop
