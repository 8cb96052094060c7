#pragma once

class QApplication;
class QComboBox;
class QString;

namespace gritwright::desktop {

/// From here on a choice that has no room in its box is its tip, the list that a box opens is as wide as the longest choice, as far as the screen is, and
/// a box gets as low again as its text.
void show_whole_choices(QApplication& application);

/// Whether a choice is whole where it is made; `width`: if the box were so wide.
[[nodiscard]] bool has_room_for(const QComboBox& box, const QString& choice);
[[nodiscard]] bool has_room_for(const QComboBox& box, const QString& choice, int width);

}  // namespace gritwright::desktop
