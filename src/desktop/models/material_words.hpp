#pragma once
#include <QString>
#include <string>

#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright::desktop {

/// A name or a description of the catalogue of materials as the reader says it; the grower's own words stay as they are.
[[nodiscard]] QString material_words(const std::string& text);

/// The title of a record; that of a bag, a fraction or a sieve test begins with its material.
[[nodiscard]] QString title_words(RecordKind kind, const std::string& title);
[[nodiscard]] QString title_words(const RecordLine& line);
/// Number and title as short as they tell it from the others: a lot that is marked with its number says it once, a tree with a name goes without its species.
[[nodiscard]] QString choice_words(const RecordLine& line);

}  // namespace gritwright::desktop
