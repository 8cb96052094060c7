#include "gritwright/domain/recorded_sieve_test.hpp"

#include "record_checks.hpp"

namespace gritwright {

Problems check(const RecordedSieveTest& test) {
  Problems problems;
  const bool sievable = !test.of || holds_grain(*test.of) || test.of->kind == RecordKind::mix || test.of->kind == RecordKind::tree;
  if (!sievable) problems.push_back(problem_at("record.not-grain", "/of", {{"text", ref_text(*test.of)}}));
  if (test.replicate < 1)
    problems.push_back(problem_at("sieve-test.replicate-below-one", "/replicate", {{"count", static_cast<double>(test.replicate)}}));
  if (test.draft.empty()) append(problems, under(check(test.test), "/test"));
  return problems;
}

}  // namespace gritwright
