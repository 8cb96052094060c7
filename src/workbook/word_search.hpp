#pragma once
#include <SQLiteCpp/Database.h>

#include <cstdint>
#include <deque>
#include <functional>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "gritwright/workbook/open_workbook.hpp"

namespace gritwright {

/// A query for the numbers of records, with what is bound to ?1, ?2 and on.
struct NumberQuery {
  std::string sql;
  std::vector<std::string> values;
};

/// Records by words among those that some queries leave. What the queries gave is kept as long as nothing changes: while words are typed
/// letter by letter the narrowing stays the same.
class WordSearch {
 public:
  explicit WordSearch(OpenWorkbook::Inside& inside) : inside_(&inside) {}

  /// Hands over the numbers of the records that are in all of `narrowings` and have the words of `match` (empty: any), newest first,
  /// until `take` returns false.
  void each(const std::vector<NumberQuery>& narrowings, const std::string& match, const std::function<bool(std::int64_t)>& take);
  /// All of them. Good until the next call.
  [[nodiscard]] const std::vector<std::int64_t>& all(const std::vector<NumberQuery>& narrowings, const std::string& match);
  /// The same among the records of one kind, the newest day first and of one day what was written last. Good until the next call.
  [[nodiscard]] const std::vector<std::int64_t>& all_by_day(RecordKind kind, NumberQuery narrowing, const std::string& match);

 private:
  struct Narrowed {
    std::vector<bool> has;  ///< by number
    std::int64_t oldest = 0;
    std::int64_t newest = 0;
    std::size_t count = 0;
    [[nodiscard]] std::vector<std::int64_t> newest_first() const;
    /// Few records have an index of their words for themselves, in memory: their words are a small part of everybody's.
    std::unique_ptr<SQLite::Database> words;
  };

  void forget_what_changed();
  template <class Take>
  void walk(const std::vector<NumberQuery>& narrowings, const std::string& match, const char* order, const Take& take);
  [[nodiscard]] const Narrowed& narrowed_to(const std::vector<NumberQuery>& narrowings);
  /// All that `sql` gives, in its order. Good until the next call.
  [[nodiscard]] const std::vector<std::int64_t>& gather(const std::string& sql, const std::vector<std::string>& texts, const std::vector<std::int64_t>& numbers = {});
  void index_words(Narrowed& narrowed) const;

  OpenWorkbook::Inside* inside_;
  std::vector<std::int64_t> gathered_;  ///< where SQLite puts what is being gathered
  bool can_gather_ = false;
  std::int64_t revision_ = -1;
  template <class Kept>
  using NewestLast = std::deque<std::pair<std::string, Kept>>;
  NewestLast<Narrowed> narrowed_;
  NewestLast<std::vector<std::int64_t>> found_;
  NewestLast<std::vector<std::int64_t>> found_by_day_;
  NewestLast<std::vector<std::int64_t>> days_;  ///< all of a kind in the order of their days
};

}  // namespace gritwright
