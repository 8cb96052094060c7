#pragma once
#include <QFont>
#include <QLabel>
#include <map>

namespace gritwright::desktop {

/// A label that wraps its words and remembers how high it is at which width: a figure that changes beside it has the whole page laid out
/// anew, and shaping text that stayed the same was most of that.
class WrappedLabel : public QLabel {
  Q_OBJECT
 public:
  explicit WrappedLabel(QWidget* parent = nullptr);

  [[nodiscard]] int heightForWidth(int width) const override;

 private:
  mutable QString text_;
  mutable QFont font_;
  mutable std::map<int, int> heights_;  ///< of that text in that font, by width
};

}  // namespace gritwright::desktop
