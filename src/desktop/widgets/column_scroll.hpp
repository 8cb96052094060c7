#pragma once
#include <QScrollArea>
#include <optional>

class QAbstractItemView;

namespace gritwright::desktop {

/// A column that scrolls up and down only: it is never narrower than what stands in it, so that large text is not cut at the side.
class ColumnScroll : public QScrollArea {
  Q_OBJECT
 public:
  explicit ColumnScroll(QWidget* content, QWidget* parent = nullptr);

  [[nodiscard]] QSize minimumSizeHint() const override;
  /// That all of it would be in sight with, at its width now.
  [[nodiscard]] int whole_height() const;

 signals:
  void whole_height_changed();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void tell_whole_height();

  int told_height_ = 0;
  bool is_resizing_ = false;
  std::optional<int> least_width_;  ///< as the page was last told
};

/// Scrolls the column that holds `widget`, and the page that holds the column, to a part of it. Only the Tab key does that by itself, a shortcut or an arrow doesn't.
void scroll_to(const QWidget& widget, const QRect& part);

/// The same to the whole of it, or to its top where there is no room for all.
void scroll_to_whole(const QWidget& widget);

/// For a table that is as high as its rows, so that the column scrolls in its stead: brings the cell the keys are at into sight.
void bring_current_into_sight(const QAbstractItemView& table);
/// The same whenever the keys come to another cell. Its model must be set.
void keep_current_in_sight(QAbstractItemView& table);

/// Lays out at once what changed in a part, and all around it. Columns within columns would else follow one after the other, each in a round of the event loop, and
/// what was opened would be painted over what stood there.
void lay_out_now(QWidget& part);

}  // namespace gritwright::desktop
