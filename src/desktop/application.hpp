#pragma once

namespace gritwright::desktop {

/// The desktop from its arguments; returns the exit status. `--demo` opens the demonstration, `--workbook FILE` another record, files are opened as sieve tests,
/// `--shots DIR` writes pictures of the window in both themes and several sizes and ends.
int run_desktop(int argc, char** argv);

}  // namespace gritwright::desktop
