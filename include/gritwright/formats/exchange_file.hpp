#pragma once
// What workbooks give to each other and to other programs: a whole record, or any part of it.

#include <cstddef>
#include <iosfwd>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gritwright/domain/record.hpp"
#include "gritwright/formats/component_sources.hpp"
#include "gritwright/result.hpp"

namespace gritwright {

/// A record with its printable id; an empty id stands for one that has none yet.
struct IdentifiedRecord {
  RecordRef ref;
  Record record;
  Place from{};  ///< where it stood in the file it was read from
  /// Of a row of a list: the places in the record that the list has columns for. Empty: the record is whole.
  std::vector<std::string_view> listed{};
  /// Of a row of a list: what is missing in it where no record is here that has it.
  Problems unless_here{};
  friend bool operator==(const IdentifiedRecord& a, const IdentifiedRecord& b) { return a.ref == b.ref && a.record == b.record; }
};

/// No workbook's JSON comes near this.
inline constexpr std::size_t largest_exchange_mb = 512;

/// Writes "gritwright/workbook/1", one record a line, without holding more than one.
class ExchangeWriter {
 public:
  explicit ExchangeWriter(std::ostream& out, const std::string& note = {});
  void add(const RecordRef& ref, const Record& record);
  /// Must be called last.
  void finish();

 private:
  std::ostream& out_;
  bool first_ = true;
};

/// One record with its id ("gritwright/record/1"), laid out for reading.
[[nodiscard]] std::string write_identified_record(const RecordRef& ref, const Record& record);

/// Reads a whole workbook ("gritwright/workbook/1"), one record with its id ("gritwright/record/1"), a bare record
/// ("gritwright/bag/1" and so on), or a sieve test, a mix or a container as other commands read them. Only the form is judged; what
/// records say is judged where they are taken in. All faults come back in one go with file and JSON pointer.
[[nodiscard]] Result<std::vector<IdentifiedRecord>> read_exchange(std::string_view text, const std::string& file_name,
                                                                  const ComponentSources& sources = {});

}  // namespace gritwright
