#pragma once
#include <QStringList>

namespace gritwright::desktop {

/// The files that the program was called with, as by a double click.
struct WantedFiles {
  QString record;  ///< the last record named; empty: the usual one
  QStringList sieve_tests;
};

/// Tells records from sieve tests by their ending. A record named by the option goes before one among `files`.
[[nodiscard]] WantedFiles wanted_files(const QStringList& files, const QString& by_option);

/// The desktop from its arguments; returns the exit status. `--demo` opens the demonstration, `--workbook FILE` another record, files are opened as `wanted_files`
/// says, `--shots DIR` writes pictures of the window in both themes and several sizes and ends.
int run_desktop(int argc, char** argv);

}  // namespace gritwright::desktop
