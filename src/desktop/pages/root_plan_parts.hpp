#pragma once
// What the root-plan tab and its forms share.

#include <QString>

class QComboBox;
class QLabel;
class QWidget;

namespace gritwright::desktop {

/// Beside the forms of a block in its choice.
inline constexpr int as_present_pot = -1;

[[nodiscard]] QComboBox* plan_choice(QWidget* parent, const char* object_name, const QString& name);
/// Hidden until there is a fault.
[[nodiscard]] QLabel* plan_fault_label(QWidget* parent, const char* object_name);

}  // namespace gritwright::desktop
