#pragma once
#include <QByteArray>
#include <QScrollArea>
#include <QSize>
#include <cstddef>
#include <vector>

class QSplitter;
class QVBoxLayout;

namespace gritwright::desktop {

/// The sides of a page beside each other. What large text leaves no room for comes below, and the page scrolls up and down: sideways it never does.
class FoldingSides : public QScrollArea {
  Q_OBJECT
 public:
  /// `row_name`: of the splitter whose sizes are remembered.
  FoldingSides(const QString& row_name, QWidget* parent);

  void add(QWidget* side, int stretch = 0);
  /// In pixels, while all are beside each other.
  void set_sizes(const QList<int>& sizes);

  /// As wide as the widest side.
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] bool is_folded() const { return lines_.size() > 1; }

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fold();
  void set_heights();
  void arrange(const std::vector<std::size_t>& first_of_line);
  void show_focused(const QWidget* focused);
  [[nodiscard]] QSplitter* new_line(const QString& name);
  [[nodiscard]] QSplitter& row() const { return *lines_.front(); }

  QWidget* content_;
  QVBoxLayout* below_each_other_;
  std::vector<QWidget*> sides_;
  std::vector<QSplitter*> lines_;
  std::vector<std::size_t> first_of_line_{0};
  QByteArray sizes_beside_;  ///< of the row, while it is folded
  bool is_folding_ = false;
  QSize least_;  ///< as the window was last told
};

/// A splitter that holds only some of the sides has sizes that are not worth remembering.
[[nodiscard]] bool is_part_of_folded(const QSplitter& splitter);

}  // namespace gritwright::desktop
