#pragma once
// One description of a record's fields serves reading and writing: `fields(io, record)` is called with a RecordReader or a
// RecordWriter, so that the two can't drift apart. What is absent, empty or at its default is not written.

#include <array>
#include <charconv>
#include <cmath>
#include <cstddef>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "gritwright/domain/record_ref.hpp"
#include "container_words.hpp"
#include "json_document.hpp"
#include "text_door.hpp"

namespace gritwright {

/// A number through a door: how it is made of the file's number and how it becomes one.
template <class T>
struct Door {
  T (*in)(double);
  double (*out)(T);
};

/// Fourteen digits: more than any balance, and few enough that converting a typed number to SI and back returns it.
[[nodiscard]] inline double as_typed(double value) {
  std::array<char, 40> digits{};
  const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value, std::chars_format::scientific, 13).ptr;
  double rounded = value;
  std::from_chars(digits.data(), end, rounded);
  return rounded;
}

class RecordWriter {
 public:
  using Json = nlohmann::ordered_json;
  static constexpr bool reading = false;

  [[nodiscard]] Json& json() { return json_; }

  void text(const char* key, const std::string& value) {
    if (!value.empty()) json_[key] = value;
  }
  void text(const char* key, const std::optional<std::string>& value) {
    if (value) json_[key] = *value;
  }
  void required_text(const char* key, const std::string& value) { json_[key] = value; }
  void day(const char* key, const std::optional<std::string>& value) { text(key, value); }
  void required_day(const char* key, const std::string& value) { json_[key] = value; }
  void flag(const char* key, bool value) {
    if (value) json_[key] = true;
  }
  void whole(const char* key, int value, int absent) {
    if (value != absent) json_[key] = value;
  }
  void whole(const char* key, const std::optional<int>& value) {
    if (value) json_[key] = *value;
  }
  template <class T>
  void required_number(const char* key, const T& value, Door<T> door) {
    json_[key] = as_typed(door.out(value));
  }
  template <class T>
  void number(const char* key, const T& value, Door<T> door, T absent = T{}) {
    if (!(value == absent)) json_[key] = as_typed(door.out(value));
  }
  template <class T>
  void number(const char* key, const std::optional<T>& value, Door<T> door) {
    if (value) json_[key] = as_typed(door.out(*value));
  }
  template <class E, std::size_t n>
  void word(const char* key, E value, const std::array<Word<E>, n>& words) {
    for (const Word<E>& word : words)
      if (word.value == value) json_[key] = word.text;
  }
  template <class E, std::size_t n>
  void word(const char* key, const std::optional<E>& value, const std::array<Word<E>, n>& words) {
    if (value) word(key, *value, words);
  }
  void ref(const char* key, const RecordRef& value) { json_[key] = ref_text(value); }
  void ref(const char* key, const std::optional<RecordRef>& value) {
    if (value) ref(key, *value);
  }
  template <class R>
  void id(const char* key, const Id<R>& value) {
    json_[key] = value.text;
  }
  template <class R>
  void id(const char* key, const std::optional<Id<R>>& value) {
    if (value) json_[key] = value->text;
  }
  void refs(const char* key, const std::vector<RecordRef>& values) {
    for (const RecordRef& value : values) json_[key].push_back(ref_text(value));
  }
  /// Null stands for an entry without a reference.
  void refs(const char* key, const std::vector<std::optional<RecordRef>>& values) {
    for (const auto& value : values) json_[key].push_back(value ? Json(ref_text(*value)) : Json(nullptr));
  }
  void texts(const char* key, const std::vector<std::string>& values) {
    for (const std::string& value : values) json_[key].push_back(value);
  }
  template <class T>
  void numbers(const char* key, const std::vector<T>& values, Door<T> door) {
    for (const T& value : values) json_[key].push_back(as_typed(door.out(value)));
  }
  template <class T, class Fields>
  void list(const char* key, const std::vector<T>& values, Fields fields) {
    for (const T& value : values) json_[key].push_back(inner(value, fields));
  }
  template <class T, class Fields>
  void object(const char* key, const T& value, Fields fields) {
    Json item = inner(value, fields);
    if (!item.is_null()) json_[key] = std::move(item);
  }
  template <class T, class Fields>
  void object(const char* key, const std::optional<T>& value, Fields fields) {
    if (!value) return;
    Json item = inner(*value, fields);
    json_[key] = item.is_null() ? Json::object() : std::move(item);
  }

 private:
  template <class T, class Fields>
  static Json inner(const T& value, Fields fields) {
    RecordWriter writer;
    fields(writer, value);
    return std::move(writer.json_);
  }
  Json json_;
};

class RecordReader {
 public:
  static constexpr bool reading = true;

  RecordReader(JsonObject& object, Problems& problems) : object_(object), problems_(problems) {}

  [[nodiscard]] JsonObject& json() { return object_; }

  void text(const char* key, std::string& value) {
    if (auto found = object_.text(key)) value = *std::move(found);
  }
  void text(const char* key, std::optional<std::string>& value) { value = object_.text(key); }
  void required_text(const char* key, std::string& value) {
    if (auto found = object_.required_text(key)) value = *std::move(found);
  }
  void day(const char* key, std::optional<std::string>& value) {
    value = object_.text(key);
    if (value) check_day(key, *value);
  }
  void required_day(const char* key, std::string& value) {
    required_text(key, value);
    if (object_.has(key)) check_day(key, value);
  }
  void flag(const char* key, bool& value) { value = object_.boolean(key).value_or(value); }
  void whole(const char* key, int& value, int absent) {
    value = absent;
    if (const auto found = whole_number(key)) value = *found;
  }
  void whole(const char* key, std::optional<int>& value) { value = whole_number(key); }
  template <class T>
  void required_number(const char* key, T& value, Door<T> door) {
    if (const auto found = object_.required_number(key)) value = door.in(*found);
  }
  template <class T>
  void number(const char* key, T& value, Door<T> door, T absent = T{}) {
    const auto found = object_.number(key);
    value = found ? door.in(*found) : absent;
  }
  template <class T>
  void number(const char* key, std::optional<T>& value, Door<T> door) {
    if (const auto found = object_.number(key)) value = door.in(*found);
  }
  template <class E, std::size_t n>
  void word(const char* key, E& value, const std::array<Word<E>, n>& words) {
    const auto found = object_.text(key);
    if (!found) return;
    std::string known;
    for (const Word<E>& word : words) {
      if (*found == word.text) {
        value = word.value;
        return;
      }
      known += (known.empty() ? "" : ", ") + std::string(word.text);
    }
    object_.report("record.unknown-word", object_.at(key), {{"text", *found}, {"expected", known}});
  }
  template <class E, std::size_t n>
  void word(const char* key, std::optional<E>& value, const std::array<Word<E>, n>& words) {
    if (!object_.has(key)) return;
    E found{};
    word(key, found, words);
    value = found;
  }
  void ref(const char* key, RecordRef& value) {
    if (const auto found = object_.required_text(key)) take_ref(object_.at(key), *found, value);
  }
  void ref(const char* key, std::optional<RecordRef>& value) {
    const auto found = object_.text(key);
    if (!found) return;
    value.emplace();
    take_ref(object_.at(key), *found, *value);
  }
  template <class R>
  void id(const char* key, Id<R>& value) {
    required_text(key, value.text);
  }
  template <class R>
  void id(const char* key, std::optional<Id<R>>& value) {
    if (auto found = object_.text(key)) value = Id<R>{*std::move(found)};
  }
  void refs(const char* key, std::vector<RecordRef>& values) {
    each(key, JsonValue::Kind::text, [&](const JsonValue& item, const std::string& pointer) {
      take_ref(pointer, item.text, values.emplace_back());
    });
  }
  void refs(const char* key, std::vector<std::optional<RecordRef>>& values) {
    const auto* items = object_.array(key);
    if (items == nullptr) return;
    for (std::size_t i = 0; i < items->size(); ++i) {
      const JsonValue& item = (*items)[i];
      values.emplace_back();
      if (item.kind == JsonValue::Kind::null) continue;
      take_ref(below(object_.at(key), std::to_string(i)), item.text, values.back().emplace());
    }
  }
  void texts(const char* key, std::vector<std::string>& values) {
    each(key, JsonValue::Kind::text, [&](const JsonValue& item, const std::string&) { values.push_back(item.text); });
  }
  template <class T>
  void numbers(const char* key, std::vector<T>& values, Door<T> door) {
    each(key, JsonValue::Kind::number, [&](const JsonValue& item, const std::string&) { values.push_back(door.in(item.number)); });
  }
  template <class T, class Fields>
  void list(const char* key, std::vector<T>& values, Fields fields) {
    each(key, JsonValue::Kind::object, [&](const JsonValue& item, const std::string& pointer) {
      read_inner(item, pointer, values.emplace_back(), fields);
    });
  }
  template <class T, class Fields>
  void object(const char* key, T& value, Fields fields) {
    if (const JsonValue* item = object_.take(key)) read_inner(*item, object_.at(key), value, fields);
  }
  template <class T, class Fields>
  void object(const char* key, std::optional<T>& value, Fields fields) {
    if (const JsonValue* item = object_.take(key)) read_inner(*item, object_.at(key), value.emplace(), fields);
  }

 private:
  void check_day(const char* key, const std::string& value) {
    if (!is_iso_day(value)) object_.report("date.not-a-day", object_.at(key), {{"text", value}});
  }
  std::optional<int> whole_number(const char* key) {
    const auto found = object_.number(key);
    if (!found) return std::nullopt;
    constexpr double largest = 1e9;
    if (*found == std::floor(*found) && std::abs(*found) <= largest) return static_cast<int>(*found);
    object_.report("record.not-whole", object_.at(key), {{"number", *found}});
    return std::nullopt;
  }
  void take_ref(const std::string& pointer, const std::string& text, RecordRef& value) {
    if (auto found = ref_named(text))
      value = *std::move(found);
    else
      object_.report("record.not-a-reference", pointer, {{"text", text}});
  }
  template <class Take>
  void each(const char* key, JsonValue::Kind kind, Take take) {
    const auto* items = object_.array(key);
    if (items == nullptr) return;
    for (std::size_t i = 0; i < items->size(); ++i) {
      const std::string pointer = below(object_.at(key), std::to_string(i));
      if ((*items)[i].kind == kind)
        take((*items)[i], pointer);
      else
        object_.report("value.wrong-kind", pointer, {{"key", std::string(key)}, {"expected", std::string(kind_word(kind))}});
    }
  }
  static const char* kind_word(JsonValue::Kind kind) {
    return kind == JsonValue::Kind::text ? "text" : kind == JsonValue::Kind::number ? "number" : "object";
  }
  template <class T, class Fields>
  void read_inner(const JsonValue& item, const std::string& pointer, T& value, Fields fields) {
    JsonObject inner(item, pointer, problems_);
    RecordReader reader(inner, problems_);
    fields(reader, value);
    inner.finish();
  }

  JsonObject& object_;
  Problems& problems_;
};

}  // namespace gritwright
