#pragma once

class QApplication;
class QLineEdit;

namespace gritwright::desktop {

/// Property of a field whose hint stands below it where it has no room.
inline constexpr char has_its_hint_below[] = "has_its_hint_below";

/// Whether the hint of an empty field can be read whole in a field that is so wide.
[[nodiscard]] bool hint_has_room(const QLineEdit& field, int width);

/// Shows no hint in the field, whatever its palette says; or again the usual one.
void hide_hint(QLineEdit& field, bool hidden);

/// From here on a hint that has no room in its empty field is not shown cut off; the field's tip has it whole. Fields with their hint
/// below are left alone.
void show_whole_hints(QApplication& application);

}  // namespace gritwright::desktop
