#pragma once
#include <QString>
#include <vector>

#include "gritwright/domain/container.hpp"
#include "gritwright/result.hpp"

namespace gritwright::desktop {

/// Heights and areas from the floor up: "0 450; 4 520" as typed in a line (cm and cm2), or two columns pasted from a table, whose heading
/// lines don't count. Fails with the first number that can't be read.
[[nodiscard]] Result<std::vector<AreaAtHeight>> parse_areas(const QString& text);

/// The same as a line to type in.
[[nodiscard]] QString areas_text(const std::vector<AreaAtHeight>& areas);

}  // namespace gritwright::desktop
