#pragma once
#include <cstddef>
#include <map>
#include <string>

#include "gritwright/domain/record.hpp"
#include "gritwright/domain/record_ref.hpp"

namespace gritwright {

/// Records as they were read from their stored text, kept while the text stays the same: pages ask for the same ones at every change.
class RecordsRead {
 public:
  /// The record of `body`. Throws WorkbookTrouble with workbook.record-unreadable where the text is none.
  [[nodiscard]] Record of(const RecordRef& ref, const std::string& body);

 private:
  struct Kept {
    std::string body;
    Record record;
  };
  std::map<RecordRef, Kept> kept_;
};

}  // namespace gritwright
