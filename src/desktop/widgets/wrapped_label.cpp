#include "wrapped_label.hpp"

namespace gritwright::desktop {

WrappedLabel::WrappedLabel(QWidget* parent) : QLabel(parent) { setWordWrap(true); }

int WrappedLabel::heightForWidth(int width) const {
  if (text_ != text() || font_ != font()) {
    text_ = text();
    font_ = font();
    heights_.clear();
  }
  const auto known = heights_.find(width);
  if (known != heights_.end()) return known->second;
  constexpr std::size_t most_widths = 64;  // a window dragged wider goes through many
  if (heights_.size() >= most_widths) heights_.clear();
  return heights_[width] = QLabel::heightForWidth(width);
}

}  // namespace gritwright::desktop
