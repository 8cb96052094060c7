#pragma once
// How far buds are, in the words of the window: a state is kept as files spell it, so that its meaning outlives a change of language.

#include <QStringList>
#include <string>

namespace gritwright::desktop {

/// The states to choose from, from the least on.
[[nodiscard]] QStringList bud_choices();

/// A state as files spell it, where `typed` is its word in the language of the window or of files; else the text itself.
[[nodiscard]] std::string bud_code(const QString& typed);

/// The other way round.
[[nodiscard]] QString bud_shown(const std::string& kept);

}  // namespace gritwright::desktop
