#include "word_search.hpp"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include <algorithm>
#include <memory>
#include <new>
#include <utility>

#include "inside.hpp"

namespace gritwright {

namespace {

constexpr std::size_t most_kept = 8;               // sets, and answers to what was typed last
constexpr std::size_t most_indexed_apart = 4000;   // records whose words are indexed anew when a set is made

/// The first column of a query, whole numbers, as long as they are wanted. By itself and not through the wrapper, whose care for each cell
/// takes longer than SQLite takes for the row.
class NumberWalk {
 public:
  NumberWalk(const SQLite::Database& database, const std::string& sql, const std::vector<std::string>& texts, const std::vector<std::int64_t>& numbers = {})
      : handle_(database.getHandle()) {
    sqlite3_stmt* prepared = nullptr;
    must(sqlite3_prepare_v2(handle_, sql.c_str(), static_cast<int>(sql.size()), &prepared, nullptr));
    statement_.reset(prepared);
    int index = 0;
    for (const std::string& text : texts) must(sqlite3_bind_text(prepared, ++index, text.data(), static_cast<int>(text.size()), SQLITE_TRANSIENT));
    for (const std::int64_t number : numbers) must(sqlite3_bind_int64(prepared, ++index, number));
  }

  bool step() {
    const int code = sqlite3_step(statement_.get());
    if (code != SQLITE_DONE) must(code == SQLITE_ROW ? SQLITE_OK : code);
    return code == SQLITE_ROW;
  }
  [[nodiscard]] std::int64_t number() const { return sqlite3_column_int64(statement_.get(), 0); }

 private:
  struct Finalize {
    void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
  };
  void must(int code) const {
    if (code != SQLITE_OK) throw SQLite::Exception(handle_, code);
  }
  sqlite3* handle_;
  std::unique_ptr<sqlite3_stmt, Finalize> statement_;
};

extern "C" {
/// A step of the SQL function that puts a number by; the function's own data is the vector.
static void put_by(sqlite3_context* context, int, sqlite3_value** values) {
  try {
    static_cast<std::vector<std::int64_t>*>(sqlite3_user_data(context))->push_back(sqlite3_value_int64(values[0]));
  } catch (const std::bad_alloc&) {
    sqlite3_result_error_nomem(context);
  }
}
static void all_put_by(sqlite3_context*) {}
}

constexpr const char* found_among = "SELECT rowid AS number FROM search WHERE search MATCH ?1 AND rowid BETWEEN ?2 AND ?3";

std::string key_of(const std::vector<NumberQuery>& narrowings) {
  std::string key;
  for (const NumberQuery& narrowing : narrowings) {
    key.append(narrowing.sql);
    for (const std::string& value : narrowing.values) key.append(1, '\0').append(value);
    key.append(1, '\1');
  }
  return key;
}

template <class Kept>
const Kept* kept_under(const std::string& key, const std::deque<std::pair<std::string, Kept>>& newest_last) {
  const auto at = std::ranges::find(newest_last, key, &std::pair<std::string, Kept>::first);
  return at == newest_last.end() ? nullptr : &at->second;
}
template <class Kept>
const Kept& keep(std::string key, Kept kept, std::deque<std::pair<std::string, Kept>>& newest_last) {
  if (newest_last.size() == most_kept) newest_last.pop_front();
  return newest_last.emplace_back(std::move(key), std::move(kept)).second;
}

}  // namespace

void WordSearch::forget_what_changed() {
  const std::int64_t revision = inside_->changes();
  if (revision == revision_) return;
  revision_ = revision;
  narrowed_.clear();
  found_.clear();
  found_by_day_.clear();
  days_.clear();
}

std::vector<std::int64_t> WordSearch::Narrowed::newest_first() const {
  std::vector<std::int64_t> numbers;
  numbers.reserve(count);
  for (std::size_t number = has.size(); number-- > 0;)
    if (has[number]) numbers.push_back(static_cast<std::int64_t>(number));
  return numbers;
}

const WordSearch::Narrowed& WordSearch::narrowed_to(const std::vector<NumberQuery>& narrowings) {
  std::string key = key_of(narrowings);
  if (const Narrowed* known = kept_under(key, narrowed_)) return *known;
  Narrowed narrowed;
  for (std::size_t i = 0; i < narrowings.size(); ++i) {
    std::vector<bool> has;
    narrowed.count = 0;
    for (const std::int64_t number : gather(narrowings[i].sql, narrowings[i].values)) {
      const auto at = static_cast<std::size_t>(number);
      if (i > 0 && (at >= narrowed.has.size() || !narrowed.has[at])) continue;
      if (at >= has.size()) has.resize(std::max(at + 1, 2 * has.size()));
      if (has[at]) continue;
      has[at] = true;
      narrowed.oldest = narrowed.count == 0 ? number : std::min(narrowed.oldest, number);
      narrowed.newest = narrowed.count == 0 ? number : std::max(narrowed.newest, number);
      ++narrowed.count;
    }
    narrowed.has = std::move(has);
  }
  if (narrowed.count <= most_indexed_apart) index_words(narrowed);
  return keep(std::move(key), std::move(narrowed), narrowed_);
}

void WordSearch::index_words(Narrowed& narrowed) const {
  narrowed.words = std::make_unique<SQLite::Database>(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE | SQLite::OPEN_NOMUTEX);
  // Made by the workbook's own statement, so that both take words apart alike.
  narrowed.words->exec(inside_->database->execAndGet("SELECT sql FROM sqlite_master WHERE name = 'search'").getString());
  narrowed.words->exec("BEGIN");
  SQLite::Statement insert(*narrowed.words, "INSERT INTO search(rowid, words) VALUES (?1, ?2)");
  SQLite::Statement words(*inside_->database, "SELECT words FROM search WHERE rowid = ?1");
  // Oldest first: each smaller number would begin a new part of the index.
  const std::vector<std::int64_t> numbers = narrowed.newest_first();
  for (auto number = numbers.rbegin(); number != numbers.rend(); ++number) {
    words.bind(1, *number);
    if (words.executeStep()) {
      insert.bind(1, *number);
      insert.bind(2, words.getColumn(0).getString());
      insert.exec();
      insert.reset();
    }
    words.reset();
  }
  narrowed.words->exec("COMMIT");
}

const std::vector<std::int64_t>& WordSearch::gather(const std::string& sql, const std::vector<std::string>& texts, const std::vector<std::int64_t>& numbers) {
  if (!can_gather_) {
    inside_->database->createFunction("put_by", 1, false, &gathered_, nullptr, &put_by, &all_put_by);
    can_gather_ = true;
  }
  gathered_.clear();
  // Within SQLite: stepping out of it for each of a hundred thousand rows takes thrice the time.
  NumberWalk walk(*inside_->database, std::string("SELECT put_by(found.number) FROM (").append(sql).append(") AS found"), texts, numbers);
  walk.step();
  return gathered_;
}

template <class Take>
void WordSearch::walk(const std::vector<NumberQuery>& narrowings, const std::string& match, const char* order, const Take& take) {
  if (narrowings.empty()) {
    NumberWalk found(*inside_->database,
                     (match.empty() ? std::string("SELECT number FROM record WHERE body IS NOT NULL") : std::string("SELECT rowid FROM search WHERE search MATCH ?1")) + order,
                     match.empty() ? std::vector<std::string>() : std::vector{match});
    while (found.step() && take(found.number())) {
    }
    return;
  }
  const Narrowed& narrowed = narrowed_to(narrowings);
  if (match.empty()) {
    for (const std::int64_t number : narrowed.newest_first())
      if (!take(number)) return;
    return;
  }
  if (narrowed.count == 0) return;
  if (narrowed.words != nullptr) {
    NumberWalk found(*narrowed.words, std::string("SELECT rowid FROM search WHERE search MATCH ?1") + order, {match});
    while (found.step() && take(found.number())) {
    }
    return;
  }
  NumberWalk found(*inside_->database, std::string(found_among) + order, {match},
                   {narrowed.oldest, narrowed.newest});
  while (found.step()) {
    const std::int64_t number = found.number();
    if (narrowed.has[static_cast<std::size_t>(number)] && !take(number)) return;
  }
}

void WordSearch::each(const std::vector<NumberQuery>& narrowings, const std::string& match, const std::function<bool(std::int64_t)>& take) {
  forget_what_changed();
  // The order of the search index is the order of the record numbers, so that the newest come without sorting.
  walk(narrowings, match, " ORDER BY rowid DESC", take);
}

const std::vector<std::int64_t>& WordSearch::all(const std::vector<NumberQuery>& narrowings, const std::string& match) {
  forget_what_changed();
  std::string key = key_of(narrowings).append(match);
  if (const auto* known = kept_under(key, found_)) return *known;
  std::vector<std::int64_t> numbers;
  const Narrowed* narrowed = narrowings.empty() ? nullptr : &narrowed_to(narrowings);
  // The index is read forward in half the time that it takes backward.
  if (narrowed == nullptr || match.empty() || narrowed->count == 0 || narrowed->words != nullptr) {
    walk(narrowings, match, "", [&numbers](std::int64_t number) {
      numbers.push_back(number);
      return true;
    });
  } else {
    for (const std::int64_t number : gather(found_among, {match}, {narrowed->oldest, narrowed->newest}))
      if (narrowed->has[static_cast<std::size_t>(number)]) numbers.push_back(number);
  }
  if (!numbers.empty() && numbers.front() < numbers.back()) std::ranges::reverse(numbers);
  return keep(std::move(key), std::move(numbers), found_);
}

const std::vector<std::int64_t>& WordSearch::all_by_day(RecordKind kind, NumberQuery narrowing, const std::string& match) {
  std::string key = key_of({narrowing}).append(match);
  const std::vector<std::int64_t>& found = all({std::move(narrowing)}, match);  // forgets what changed
  if (const auto* known = kept_under(key, found_by_day_)) return *known;
  // The days are read once for all that is typed: sorting what each letter finds takes longer.
  std::string name(kind_name(kind));
  const auto* days = kept_under(name, days_);
  if (days == nullptr) {
    std::vector<std::int64_t> numbers = gather("SELECT number FROM record WHERE kind = ?1 AND body IS NOT NULL ORDER BY day DESC, number DESC", {name});
    days = &keep(std::move(name), std::move(numbers), days_);
  }
  std::vector<bool> is_found(found.empty() ? 0 : static_cast<std::size_t>(found.front()) + 1);
  for (const std::int64_t number : found) is_found[static_cast<std::size_t>(number)] = true;
  std::vector<std::int64_t> numbers;
  numbers.reserve(found.size());
  for (const std::int64_t number : *days)
    if (const auto at = static_cast<std::size_t>(number); at < is_found.size() && is_found[at]) numbers.push_back(number);
  return keep(std::move(key), std::move(numbers), found_by_day_);
}

}  // namespace gritwright
