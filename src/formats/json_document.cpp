#include "json_document.hpp"

#include <algorithm>
#include <cstddef>
#include <nlohmann/json.hpp>
#include <string>
#include <utility>

#include "gritwright/formats/number.hpp"
#include "long_lists.hpp"
#include "text_door.hpp"

namespace gritwright {

namespace {

using Json = nlohmann::json;

constexpr std::size_t deepest_nesting = 64;
/// A file of zeros and commas would swell to many times its size.
constexpr std::size_t most_values = 200'000;

/// True for a number that is written as other than zero.
bool has_digit_beyond_zero(std::string_view token) {
  return token.substr(0, token.find_first_of("eE")).find_first_of("123456789") != std::string_view::npos;
}

/// Builds our tree from the parser's events, because the parser's own tree forgets duplicate keys and written decimals.
class Builder : public nlohmann::json_sax<Json> {
 public:
  explicit Builder(std::string_view text) : text_(text) {}

  /// Told before the parser stopped; those that did not stop it leave a usable tree.
  Problems problems;

  JsonValue root;

  /// Items of the root's array `key` go to `take` instead of into the tree.
  void hand_out(std::string key, std::function<void(std::size_t, const JsonValue&)> take) {
    list_key_ = std::move(key);
    take_ = std::move(take);
  }

  bool null() override { return add({}); }
  bool boolean(bool value) override {
    JsonValue item;
    item.kind = JsonValue::Kind::boolean;
    item.boolean = value;
    return add(std::move(item));
  }
  bool number_integer(number_integer_t value) override { return measured(static_cast<double>(value), std::to_string(value)); }
  bool number_unsigned(number_unsigned_t value) override { return measured(static_cast<double>(value), std::to_string(value)); }
  bool number_float(number_float_t value, const string_t& token) override { return measured(value, token); }
  bool string(string_t& value) override {
    JsonValue item;
    item.kind = JsonValue::Kind::text;
    item.text = std::move(value);
    if (item.text.find('\0') != std::string::npos) problems.push_back({"text.nul", in_document(), {}});
    return add(std::move(item));
  }
  bool binary(binary_t&) override { return false; }
  bool start_object(std::size_t) override { return open(JsonValue::Kind::object); }
  bool start_array(std::size_t) override { return open(JsonValue::Kind::array); }
  bool end_object() override { return close(); }
  bool end_array() override { return close(); }

  bool key(string_t& name) override {
    Frame& frame = open_.back();
    frame.key = name;
    if (frame.value.members.contains(name)) problems.push_back({"key.duplicate", in_document(), {{"key", name}}});
    return true;
  }

  bool parse_error(std::size_t position, const std::string& token, const Json::exception& error) override {
    const std::size_t offset = std::min(position == 0 ? 0 : position - 1, text_.size());
    constexpr int out_of_range_number = 406;
    if (error.id == out_of_range_number)
      problems.push_back({"number.too-large", place_at(text_, offset), {{"text", token}}});
    else if (trimmed(text_.substr(offset)).empty())
      problems.push_back({"json.ends-early", place_at(text_, offset), {}});
    else
      // The parser's token may be the last good one and more; the place is what is certain.
      problems.push_back({"json.syntax", place_at(text_, offset), {{"text", line_from(offset)}}});
    return false;
  }

 private:
  struct Frame {
    JsonValue value;
    std::string key;
  };

  bool measured(double value, const std::string& token) {
    if (const auto code = beyond_measure(value); !code.empty())
      problems.push_back({std::string(code), in_document(), {{"text", token}}});
    else if (value == 0 && has_digit_beyond_zero(token))
      problems.push_back({"number.too-small", in_document(), {{"text", token}}});
    return add_number(value, written_decimals(token));
  }

  /// The rest of the line, cut to what a message can carry; never inside a sign of several bytes.
  [[nodiscard]] std::string line_from(std::size_t offset) const {
    std::string_view rest = text_.substr(offset, text_.find_first_of("\r\n", offset) - offset);
    constexpr std::size_t most = 40;
    if (rest.size() > most) {
      std::size_t end = most;
      while ((static_cast<unsigned char>(rest[end]) & 0xC0U) == 0x80U) --end;
      rest = rest.substr(0, end);
    }
    return std::string(rest);
  }

  Place in_document() const {
    Place place;
    place.pointer = here();
    return place;
  }

  std::string item_of(const Frame& frame) const {
    const bool handed_out = take_ && open_.size() > 1 && &frame == &open_[1] && open_[0].key == list_key_;
    return std::to_string(handed_out ? handed_out_ : frame.value.items.size());
  }

  std::string here() const {
    std::string pointer;
    for (const Frame& frame : open_)
      pointer = below(pointer, frame.value.kind == JsonValue::Kind::object ? frame.key : item_of(frame));
    return pointer;
  }

  /// Inside the array that is handed out.
  bool in_list() const { return take_ && open_.size() == 2 && open_[0].key == list_key_ && open_[1].value.kind == JsonValue::Kind::array; }

  bool add(JsonValue item) {
    if (in_list()) {
      take_(handed_out_++, item);
      values_ = 0;
      return true;
    }
    if (++values_ > most_values) {
      problems.push_back({"json.too-many-values", in_document(), {{"limit", static_cast<double>(most_values)}}});
      return false;
    }
    if (open_.empty())
      root = std::move(item);
    else if (Frame& frame = open_.back(); frame.value.kind == JsonValue::Kind::object)
      frame.value.members.insert_or_assign(frame.key, std::move(item));
    else
      frame.value.items.push_back(std::move(item));
    return true;
  }
  bool add_number(double value, int decimals) {
    JsonValue item;
    item.kind = JsonValue::Kind::number;
    item.number = value;
    item.decimals = decimals;
    return add(std::move(item));
  }
  bool open(JsonValue::Kind kind) {
    if (open_.size() >= deepest_nesting) {
      problems.push_back({"json.too-deep", in_document(), {{"limit", static_cast<double>(deepest_nesting)}}});
      return false;
    }
    open_.emplace_back().value.kind = kind;
    return true;
  }
  bool close() {
    JsonValue done = std::move(open_.back().value);
    open_.pop_back();
    return add(std::move(done));
  }

  std::string_view text_;
  std::vector<Frame> open_;
  std::size_t values_ = 0;
  std::string list_key_;
  std::function<void(std::size_t, const JsonValue&)> take_;
  std::size_t handed_out_ = 0;
};

}  // namespace

Result<JsonValue> parse_json(std::string_view text, Problems& beside) {
  if (Problems problems = check_text(text); !problems.empty()) return problems;
  text = without_byte_order_mark(text);
  Builder builder(text);
  if (!Json::sax_parse(text.begin(), text.end(), &builder)) return std::move(builder.problems);
  append(beside, std::move(builder.problems));
  return std::move(builder.root);
}

Result<JsonValue> parse_json_list(std::string_view text, const std::string& key, std::size_t limit_mb,
                                  const std::function<void(std::size_t, const JsonValue&)>& take) {
  if (Problems problems = check_long_text(text, limit_mb); !problems.empty()) return problems;
  text = without_byte_order_mark(text);
  Builder builder(text);
  builder.hand_out(key, take);
  const bool whole = Json::sax_parse(text.begin(), text.end(), &builder);
  if (!whole || !builder.problems.empty()) return std::move(builder.problems);
  return std::move(builder.root);
}

Result<JsonValue> parse_json(std::string_view text) {
  Problems beside;
  Result<JsonValue> root = parse_json(text, beside);
  if (root && !beside.empty()) return beside;
  return root;
}

Problems beyond_told(Problems found, const Problems& told, std::size_t from, const std::vector<std::string>& unread) {
  std::set<std::string> places, trees(unread.begin(), unread.end());
  for (std::size_t i = from; i < told.size(); ++i) {
    const Problem& fault = told[i];
    if (fault.where.file) continue;
    const auto key = fault.facts.find("key");
    if (fault.code == "key.missing" && key != fault.facts.end())
      trees.insert(below(fault.where.pointer, std::get<std::string>(key->second)));
    else if (fault.code == "value.wrong-kind")
      trees.insert(fault.where.pointer);
    else
      places.insert(fault.where.pointer);
  }
  std::erase_if(found, [&](const Problem& problem) {
    std::string pointer = problem.where.pointer;
    if (places.contains(pointer)) return true;
    while (!trees.contains(pointer)) {
      if (pointer.empty()) return false;
      pointer.erase(pointer.rfind('/'));
    }
    return true;
  });
  return found;
}

std::string below(const std::string& pointer, const std::string& key) {
  std::string result = pointer + '/';
  for (const char sign : key) {
    if (sign == '~')
      result += "~0";
    else if (sign == '/')
      result += "~1";
    else
      result += sign;
  }
  return result;
}

JsonObject::JsonObject(const JsonValue& value, std::string pointer, Problems& problems)
    : value_(value), pointer_(std::move(pointer)), problems_(problems) {
  if (is_object()) return;
  Place place;
  place.pointer = pointer_;
  problems_.push_back({"value.wrong-kind", std::move(place), {{"expected", std::string("object")}}});
}

bool JsonObject::has(const std::string& key) const { return value_.members.contains(key); }

const JsonValue* JsonObject::take(const std::string& key) {
  known_.insert(key);
  const auto found = value_.members.find(key);
  return found == value_.members.end() ? nullptr : &found->second;
}

const JsonValue* JsonObject::take_kind(const std::string& key, JsonValue::Kind kind, const char* expected) {
  const JsonValue* found = take(key);
  if (found == nullptr || found->kind == kind) return found;
  report("value.wrong-kind", at(key), {{"key", key}, {"expected", std::string(expected)}});
  return nullptr;
}

std::optional<double> JsonObject::number(const std::string& key) {
  const JsonValue* found = take_kind(key, JsonValue::Kind::number, "number");
  return found == nullptr ? std::nullopt : std::optional(found->number);
}

std::optional<std::string> JsonObject::text(const std::string& key) {
  const JsonValue* found = take_kind(key, JsonValue::Kind::text, "text");
  return found == nullptr ? std::nullopt : std::optional(found->text);
}

std::optional<bool> JsonObject::boolean(const std::string& key) {
  const JsonValue* found = take_kind(key, JsonValue::Kind::boolean, "true or false");
  return found == nullptr ? std::nullopt : std::optional(found->boolean);
}

const std::vector<JsonValue>* JsonObject::array(const std::string& key) {
  const JsonValue* found = take_kind(key, JsonValue::Kind::array, "list");
  return found == nullptr ? nullptr : &found->items;
}

bool JsonObject::required(const std::string& key) {
  if (has(key)) return true;
  report("key.missing", pointer_, {{"key", key}});
  return false;
}

std::optional<double> JsonObject::required_number(const std::string& key) {
  return required(key) ? number(key) : std::nullopt;
}

std::optional<std::string> JsonObject::required_text(const std::string& key) {
  return required(key) ? text(key) : std::nullopt;
}

const std::vector<JsonValue>* JsonObject::required_array(const std::string& key) {
  return required(key) ? array(key) : nullptr;
}

void JsonObject::format(const std::string& name) {
  const auto found = required_text("format");
  if (found && *found != name) report("format.unknown", at("format"), {{"found", *found}, {"expected", name}});
}

void JsonObject::finish() {
  for (const auto& [key, value] : value_.members)
    if (!known_.contains(key)) report("key.unknown", at(key), {{"key", key}});
}

void JsonObject::report(const std::string& code, const std::string& pointer, Facts facts) {
  if (!is_object()) return;
  Place place;
  place.pointer = pointer;
  problems_.push_back({code, std::move(place), std::move(facts)});
}

}  // namespace gritwright
