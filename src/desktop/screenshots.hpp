#pragma once
#include <QString>

class QApplication;

namespace gritwright::desktop {

class Bench;

/// Pictures of every page with the demonstration, in light and dark; with `every_look` also in high contrast, other window and text
/// sizes. Returns the exit status.
int write_screenshots(QApplication& application, Bench& bench, const QString& folder, bool every_look);

}  // namespace gritwright::desktop
