#pragma once
#include <span>
#include <string_view>

#include "gritwright/domain/record_ref.hpp"

namespace gritwright {

/// A column of a list and where its cell stands in the record's JSON. "0" in a path is the last item of a history when a list is
/// written, and the only one when it is read.
struct CsvColumn {
  enum class Sort { text, number, flag };
  std::string_view name;
  std::string_view pointer;
  Sort sort = Sort::text;
};

/// All columns of `kind` but the id. Sieve tests have those of the whole test here; the sieves have rows of their own.
[[nodiscard]] std::span<const CsvColumn> columns_of(RecordKind kind);

}  // namespace gritwright
