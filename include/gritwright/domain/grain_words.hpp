#pragma once
#include <string_view>

namespace gritwright {

/// Grain that asks for a caution, or that a model was not made for, by the words growers have for it.
enum class GrainWord { moss, bark, peat, coir, compost, soft_clay, vermiculite, perlite };

/// Whether a name speaks of that grain in English, German, French, Spanish or Japanese, whatever its capitals and accents. A part of a
/// word will do ("Kiefernrinde"): a caution too many is better than one too few.
[[nodiscard]] bool speaks_of(std::string_view name, GrainWord grain);

}  // namespace gritwright
