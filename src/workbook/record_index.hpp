#pragma once
#include <string>
#include <vector>

#include "gritwright/domain/record.hpp"

namespace gritwright {

/// A thread from one record to another, as a record tells it.
struct Link {
  std::string role;
  RecordRef from;
  RecordRef to;
  std::string day;    ///< from when; may be empty
  std::string until;  ///< to when; may be empty
  bool certain = true;
};

/// A condition for the roles that grain flows along; the others only name each other. "remains" is grain that a later repotting may have
/// left in the pot. The plus keeps the roles out of the look-up: one seek to a record's few links is quicker than one for each role, and
/// plain comparisons than a list that SQLite builds anew each time. What tells about a record ("about") is most of its links and stands first in
/// their order, so the look-up begins behind it.
inline constexpr const char* is_flow =
    "role > 'about' AND (+role = 'screened' OR +role = 'tipped' OR +role = 'mixed' OR +role = 'potted' OR +role = 'remains' OR +role = 'designed'"
    " OR +role = 'reclaimed' OR +role = 'used')";

/// What lists, search and tracing need of a record without reading all of it.
struct IndexEntry {
  std::string title;
  std::string subject;
  std::string day;
  std::string words;  ///< everything that search shall find
  std::vector<Link> links;
};

[[nodiscard]] IndexEntry index_of(const RecordRef& ref, const Record& record);

}  // namespace gritwright
