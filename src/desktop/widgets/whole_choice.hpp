#pragma once

class QApplication;

namespace gritwright::desktop {

/// From here on a choice that has no room in its box is its tip, and the list that a box opens is as wide as the longest choice, as far as the screen is.
void show_whole_choices(QApplication& application);

}  // namespace gritwright::desktop
