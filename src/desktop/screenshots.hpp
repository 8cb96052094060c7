#pragma once
#include <QString>

class QApplication;

namespace gritwright::desktop {

class Bench;

/// Pictures of every page with the demonstration, in light and dark, at several window and text sizes. Returns the exit status.
int write_screenshots(QApplication& application, Bench& bench, const QString& folder);

}  // namespace gritwright::desktop
