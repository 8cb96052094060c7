#pragma once
// What a user can get wrong travels as a value: a Result holds either the answer or every problem found, each with a stable
// code and the place in the input. Prose is made from the codes in report/.

#include <map>
#include <optional>
#include <stdexcept>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace gritwright {

/// Where in the input: a file's line and column (1-based), or a JSON pointer below the document's root.
struct Place {
  std::optional<std::string> file;
  std::optional<int> line;
  std::optional<int> column;
  std::string pointer;  ///< JSON pointer like "/components/0/parts"; empty for the root or for text files
  friend bool operator==(const Place&, const Place&) = default;
};

/// A value quoted in a message: a number in the unit named by its key (like "mass_g"), or text as the user wrote it.
using Fact = std::variant<double, std::string>;
using Facts = std::map<std::string, Fact>;

/// Something wrong with the input. `code` is stable ("sieve-test.no-pan"); report/ holds the sentence for it.
struct Problem {
  std::string code;
  Place where;
  Facts facts;
  friend bool operator==(const Problem&, const Problem&) = default;
};
using Problems = std::vector<Problem>;

/// A problem with the field at a JSON pointer of the input.
[[nodiscard]] inline Problem problem_at(std::string code, std::string pointer, Facts facts = {}) {
  Place where;
  where.pointer = std::move(pointer);
  return {std::move(code), std::move(where), std::move(facts)};
}

enum class Level { note, warning };

/// Something the reader of a figure should know. Same shape as a problem, but the figure stands.
struct Note {
  std::string code;
  Level level = Level::note;
  std::string where;  ///< the row, component or figure it concerns, as the user named it; may be empty
  Facts facts;
  friend bool operator==(const Note&, const Note&) = default;
};
using Notes = std::vector<Note>;

/// Either a value or at least one problem.
template <class T>
class [[nodiscard]] Result {
 public:
  Result(T value) : content_(std::move(value)) {}  // NOLINT(google-explicit-constructor): returning a value is success
  Result(Problem problem) : content_(Problems{std::move(problem)}) {}  // NOLINT(google-explicit-constructor)
  Result(Problems problems) : content_(std::move(problems)) {          // NOLINT(google-explicit-constructor)
    if (std::get<Problems>(content_).empty()) throw std::logic_error("a failed Result needs a problem");
  }

  [[nodiscard]] bool ok() const { return std::holds_alternative<T>(content_); }
  explicit operator bool() const { return ok(); }

  /// Precondition: ok(). Throws std::logic_error otherwise.
  [[nodiscard]] const T& value() const& { return checked(); }
  [[nodiscard]] T&& value() && {
    checked();
    return std::get<T>(std::move(content_));
  }
  const T& operator*() const& { return checked(); }
  const T* operator->() const { return &checked(); }
  T* operator->() {
    checked();
    return &std::get<T>(content_);
  }

  /// Empty when ok().
  [[nodiscard]] const Problems& problems() const {
    static const Problems none;
    return ok() ? none : std::get<Problems>(content_);
  }

 private:
  const T& checked() const {
    if (!ok()) throw std::logic_error("value asked of a failed Result: " + std::get<Problems>(content_).front().code);
    return std::get<T>(content_);
  }
  std::variant<T, Problems> content_;
};

/// Success without a value.
struct Done {
  friend bool operator==(const Done&, const Done&) = default;
};

/// Moves the problems of a nested input under `prefix` ("/components/0") so that the place stays right.
inline Problems under(Problems problems, const std::string& prefix) {
  for (Problem& problem : problems) problem.where.pointer = prefix + problem.where.pointer;
  return problems;
}

/// Appends `more` to `all`.
inline void append(Problems& all, Problems more) {
  for (Problem& problem : more) all.push_back(std::move(problem));
}
inline void append(Notes& all, Notes more) {
  for (Note& note : more) all.push_back(std::move(note));
}

}  // namespace gritwright
