#pragma once
#include <QStringList>

namespace gritwright::desktop {

/// The files that the program was called with, as by a double click.
struct WantedFiles {
  QString record;  ///< the last record named; empty: the usual one
  QStringList sieve_tests;
};

/// Tells records from sieve tests by their ending.
[[nodiscard]] WantedFiles wanted_files(const QStringList& files);

/// The desktop from its arguments; returns the exit status. `--demo` opens the demonstration, `--workbook FILE` makes another record the usual one, files are opened as `wanted_files`
/// says, `--shots DIR` writes pictures of the window in both themes and several sizes and ends.
int run_desktop(int argc, char** argv);

}  // namespace gritwright::desktop
