#pragma once

class QApplication;

namespace gritwright::desktop {

/// From here on labels and tips show text as it is: a name with a "<" in it is no markup. A label that wants markup says so by its
/// text format.
void show_labels_plainly(QApplication& application);

}  // namespace gritwright::desktop
