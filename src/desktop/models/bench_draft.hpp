#pragma once
#include <QString>
#include <optional>

#include "bench_state.hpp"

namespace gritwright::desktop {

// What lies on the bench, half-typed figures and faults included, from one run to the next. It is no record: only the desktop
// reads it, and a draft of another version is set aside, never written over.

/// Writes the draft whole or not at all. False if the file could not be written.
[[nodiscard]] bool write_draft(const QString& file, const BenchState& state);

/// Empty if there is none, or none that this version reads.
[[nodiscard]] std::optional<BenchState> read_draft(const QString& file);

/// Moves a draft that can't be read out of the way of the next one, to FILE.unread-1 and on. True if nothing is in the way any
/// more, so that writing loses nothing.
[[nodiscard]] bool set_aside_unreadable_draft(const QString& file);

/// Where the draft of this user lies.
[[nodiscard]] QString draft_file();

}  // namespace gritwright::desktop
