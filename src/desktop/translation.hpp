#pragma once
class QApplication;
class QLocale;

namespace gritwright::desktop {

/// The reader's language, or English with its plurals where there is no catalogue for it. Before any window is made.
void install_translations(QApplication& application, const QLocale& locale);

}  // namespace gritwright::desktop
