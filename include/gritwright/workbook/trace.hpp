#pragma once
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "gritwright/domain/recall_list.hpp"
#include "gritwright/domain/record_ref.hpp"
#include "gritwright/domain/shared_traits.hpp"
#include "gritwright/domain/tree.hpp"
#include "gritwright/result.hpp"
#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright {

enum class TraceDirection {
  forward,  ///< where grain went
  back      ///< where grain came from
};

/// One record on the way of grain. The first step is the record asked about.
struct TraceStep {
  RecordRef ref;
  std::string title;
  std::string subject;
  std::string role;                 ///< "screened", "tipped", "mixed", "potted", "remains", "designed", "reclaimed", "used"
  std::optional<std::size_t> from;  ///< the step it was reached from
  std::string day;                  ///< of this passage; may be empty
  std::string until;                ///< when the grain was out again; may be empty
  bool certain = true;              ///< no "may contain" on the way here
  bool deleted = false;
};

struct Trace {
  TraceDirection direction = TraceDirection::forward;
  std::vector<TraceStep> steps;  ///< each after the one it was reached from; a record once, by its surest and earliest way
};

/// Follows grain through screenings, bins, batches, leftovers, trees and reclaimed grain, in the order of the days as far as they are
/// known: what was tipped into a bin after a batch was taken out of it is not in the batch. An unknown day rules nothing out.
/// Error: workbook.not-there.
[[nodiscard]] Result<Trace> trace(const OpenWorkbook& workbook, const RecordRef& start, TraceDirection direction);

/// The trees a lot, fraction, bin, mix version or batch went to and where the rest lies. Error: workbook.not-there.
[[nodiscard]] Result<RecallList> recall_list(const OpenWorkbook& workbook, const RecordRef& start);

/// What `trees` have in common by their last repotting, and how common it is among all others; absent: the sick ones. Errors:
/// workbook.not-there, trace.no-sick-tree.
[[nodiscard]] Result<SharedTraits> shared_traits(const OpenWorkbook& workbook, std::optional<std::vector<Id<Tree>>> trees = {});

}  // namespace gritwright
