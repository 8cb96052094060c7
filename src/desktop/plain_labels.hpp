#pragma once

class QApplication;

namespace gritwright::desktop {

/// Property of a field whose hint stands below it where it has no room.
inline constexpr char has_its_hint_below[] = "has_its_hint_below";

/// From here on labels and tips show text as it is: a name with a "<" in it is no markup. A label that wants markup says so by its
/// text format.
void show_labels_plainly(QApplication& application);

/// From here on a hint that has no room in its empty field is not shown cut off; the field's tip has it whole.
void show_whole_hints(QApplication& application);

}  // namespace gritwright::desktop
