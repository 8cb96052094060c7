#pragma once
#include <QString>

#include "bench_state.hpp"
#include "gritwright/domain/container.hpp"
#include "gritwright/domain/material.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/domain/sieve_test.hpp"
#include "gritwright/result.hpp"

namespace gritwright::desktop {

/// A whole text file. Codes file.missing, file.no-access, file.is-folder, file.too-large, file.unreadable.
[[nodiscard]] Result<std::string> read_text_file(const QString& path, qint64 limit_mb = 64);

[[nodiscard]] Result<SieveTest> open_sieve_test(const QString& path);
[[nodiscard]] Result<Mix> open_mix(const QString& path, const Catalogue& catalogue);
[[nodiscard]] Result<Container> open_container(const QString& path, const Catalogue& catalogue);

/// The catalogue and the demonstration that belong to this program.
[[nodiscard]] Result<Catalogue> shipped_catalogue();
[[nodiscard]] Result<BenchState> demonstration(const Catalogue& catalogue);

}  // namespace gritwright::desktop
