#pragma once
#include <QString>
#include <optional>

#include "gritwright/report/quantity_text.hpp"

namespace gritwright::desktop {

/// A sum or difference of what a balance showed: from 100 g to 10 kg to a tenth of a gram, "109.5 g", so that it can be added up and a loss
/// of 0.3 % is seen in it; else as any mass. In the numbers of the locale.
[[nodiscard]] QString weighed_text(std::optional<Mass> mass, UnitSystem units);

}  // namespace gritwright::desktop
