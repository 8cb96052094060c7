#pragma once
// The strict door for JSON: duplicate keys, numbers beyond double, deep nesting and bad text are refused with their place; a
// reader takes the keys it knows from a JsonObject and the rest is refused by name.

#include <cstddef>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "gritwright/result.hpp"

namespace gritwright {

/// One JSON value as written.
struct JsonValue {
  enum class Kind { null, boolean, number, text, array, object };
  Kind kind = Kind::null;
  bool boolean = false;
  double number = 0;
  int decimals = 0;  ///< as written_decimals counts them
  std::string text;
  std::vector<JsonValue> items;
  std::map<std::string, JsonValue> members;
};

/// The document, and in `beside` the faults that leave it readable: key.duplicate (the last one counts), text.nul. Errors: those of
/// check_text, json.syntax, json.ends-early, json.too-deep, json.too-many-values, number.too-large, number.too-small.
[[nodiscard]] Result<JsonValue> parse_json(std::string_view text, Problems& beside);

/// The same where every fault refuses the document.
[[nodiscard]] Result<JsonValue> parse_json(std::string_view text);

/// Those of `found`, by the domain's checks of a record just read, that the faults told from `told[from]` on don't explain: what could
/// not be read left a gap in the record. A gap is the place of a fault, a missing key, all below a value of the wrong kind, and all
/// at or below `unread`.
[[nodiscard]] Problems beyond_told(Problems found, const Problems& told, std::size_t from = 0, const std::vector<std::string>& unread = {});

/// `pointer` with `key` below it, escaped as RFC 6901 asks.
[[nodiscard]] std::string below(const std::string& pointer, const std::string& key);

/// Reads one object: takes what is asked for, collects every problem, and `finish()` refuses the keys nobody asked for.
class JsonObject {
 public:
  /// Reports value.wrong-kind if `value` is no object, and from then on nothing: all else would follow from it. Both references must
  /// outlive this.
  JsonObject(const JsonValue& value, std::string pointer, Problems& problems);

  [[nodiscard]] bool is_object() const { return value_.kind == JsonValue::Kind::object; }
  [[nodiscard]] bool has(const std::string& key) const;
  /// The value of `key`, marked as known; null if it is not there.
  const JsonValue* take(const std::string& key);

  std::optional<double> number(const std::string& key);
  std::optional<std::string> text(const std::string& key);
  std::optional<bool> boolean(const std::string& key);
  /// The items of an array; empty if the key is not there.
  const std::vector<JsonValue>* array(const std::string& key);

  /// As above; reports key.missing where the key is not there.
  std::optional<double> required_number(const std::string& key);
  std::optional<std::string> required_text(const std::string& key);
  const std::vector<JsonValue>* required_array(const std::string& key);

  /// The mandatory first key of every file; reports format.unknown unless it is `name`.
  void format(const std::string& name);

  /// Reports key.unknown for every key that was not asked for.
  void finish();

  [[nodiscard]] std::string at(const std::string& key) const { return below(pointer_, key); }
  [[nodiscard]] const std::string& pointer() const { return pointer_; }
  void report(const std::string& code, const std::string& pointer, Facts facts = {});

 private:
  const JsonValue* take_kind(const std::string& key, JsonValue::Kind kind, const char* expected);
  bool required(const std::string& key);

  const JsonValue& value_;
  std::string pointer_;
  Problems& problems_;
  std::set<std::string> known_;
};

}  // namespace gritwright
