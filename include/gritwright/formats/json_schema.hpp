#pragma once
#include <map>
#include <string>
#include <string_view>

#include "gritwright/result.hpp"

namespace gritwright {

/// Schema texts by the name that "$ref" uses ("component.schema.json").
using SchemaTexts = std::map<std::string, std::string>;

/// Problems of `document` against the JSON Schema (2020-12) called `schema`, with pointers into the document. Known keywords:
/// type, enum, const, properties, required, additionalProperties (false or a schema), items, minItems, minimum, maximum, exclusiveMinimum,
/// anyOf, oneOf, $defs, $ref ("#/$defs/x", "file" or "file#/$defs/x"). Any other is refused (schema.unknown-keyword), lest a
/// schema promise what is not checked. Codes schema.*, and those of reading JSON.
[[nodiscard]] Problems check_against_schema(std::string_view document, const std::string& schema, const SchemaTexts& texts);

}  // namespace gritwright
