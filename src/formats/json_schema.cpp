#include "gritwright/formats/json_schema.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <functional>
#include <optional>
#include <utility>
#include <vector>

#include "json_document.hpp"
#include "text_door.hpp"

namespace gritwright {

namespace {

using Kind = JsonValue::Kind;

bool equal(const JsonValue& a, const JsonValue& b) {
  if (a.kind != b.kind) return false;
  switch (a.kind) {
    case Kind::null: return true;
    case Kind::boolean: return a.boolean == b.boolean;
    case Kind::number: return a.number == b.number;
    case Kind::text: return a.text == b.text;
    case Kind::array: return std::ranges::equal(a.items, b.items, equal);
    case Kind::object:
      return std::ranges::equal(a.members, b.members, [](const auto& x, const auto& y) { return x.first == y.first && equal(x.second, y.second); });
  }
  return false;
}

bool is_of_type(const JsonValue& value, const std::string& type) {
  if (type == "integer") return value.kind == Kind::number && value.number == std::floor(value.number);
  static const std::map<std::string, Kind> kinds{{"null", Kind::null},     {"boolean", Kind::boolean}, {"number", Kind::number},
                                                 {"string", Kind::text},   {"array", Kind::array},     {"object", Kind::object}};
  const auto found = kinds.find(type);
  return found != kinds.end() && value.kind == found->second;
}

class Checker {
 public:
  explicit Checker(std::map<std::string, JsonValue> schemas) : schemas_(std::move(schemas)) {}

  Problems check(const JsonValue& value, const std::string& schema_file) {
    const auto found = schemas_.find(schema_file);
    if (found == schemas_.end()) return {problem_at("schema.missing-schema", "", {{"schema", schema_file}})};
    return check(value, found->second, schema_file, "", 0);
  }

 private:
  Problems check(const JsonValue& value, const JsonValue& schema, const std::string& file, const std::string& pointer, int depth) {
    Problems problems;
    const auto report = [&](const char* code, Facts facts) { problems.push_back(problem_at(code, pointer, std::move(facts))); };
    // A schema that refers to itself without taking a step into the document would never end.
    if (constexpr int deepest = 256; depth > deepest) return {problem_at("schema.endless", pointer, {})};
    for (const auto& [keyword, rule] : schema.members) {
      if (keyword == "$ref") {
        append(problems, check_reference(value, rule.text, file, pointer, depth));
      } else if (keyword == "type") {
        const bool fits = rule.kind == Kind::text
                              ? is_of_type(value, rule.text)
                              : std::ranges::any_of(rule.items, [&](const JsonValue& type) { return is_of_type(value, type.text); });
        if (!fits) report("schema.wrong-type", {{"expected", rule.kind == Kind::text ? rule.text : std::string("another type")}});
      } else if (keyword == "enum") {
        if (std::ranges::none_of(rule.items, [&](const JsonValue& item) { return equal(item, value); }))
          report("schema.not-allowed", {{"text", value.text}});
      } else if (keyword == "const") {
        if (!equal(rule, value)) report("schema.not-allowed", {{"text", value.text}});
      } else if (keyword == "required") {
        if (value.kind != Kind::object) continue;
        for (const JsonValue& key : rule.items)
          if (!value.members.contains(key.text)) report("key.missing", {{"key", key.text}});
      } else if (keyword == "properties") {
        for (const auto& [key, member] : value.members)
          if (const auto found = rule.members.find(key); found != rule.members.end())
            append(problems, check(member, found->second, file, below(pointer, key), depth + 1));
      } else if (keyword == "additionalProperties") {
        const auto listed = schema.members.find("properties");
        for (const auto& [key, member] : value.members) {
          if (listed != schema.members.end() && listed->second.members.contains(key)) continue;
          if (rule.kind == Kind::object)
            append(problems, check(member, rule, file, below(pointer, key), depth + 1));
          else
            problems.push_back(problem_at("key.unknown", below(pointer, key), {{"key", key}}));
        }
        if (rule.kind != Kind::object && (rule.kind != Kind::boolean || rule.boolean)) report("schema.unknown-keyword", {{"keyword", keyword}});
      } else if (keyword == "items") {
        for (std::size_t i = 0; i < value.items.size(); ++i)
          append(problems, check(value.items[i], rule, file, below(pointer, std::to_string(i)), depth + 1));
      } else if (keyword == "minItems") {
        if (value.kind == Kind::array && static_cast<double>(value.items.size()) < rule.number)
          report("schema.too-few", {{"least", rule.number}});
      } else if (keyword == "minimum" || keyword == "maximum" || keyword == "exclusiveMinimum") {
        if (value.kind == Kind::number && !inside(value.number, keyword, rule.number))
          report("schema.out-of-range", {{"value", value.number}, {"limit", rule.number}});
      } else if (keyword == "anyOf" || keyword == "oneOf") {
        append(problems, check_alternatives(value, rule, keyword == "oneOf", file, pointer, depth));
      } else if (keyword != "$schema" && keyword != "$id" && keyword != "$defs" && keyword != "title" && keyword != "description") {
        report("schema.unknown-keyword", {{"keyword", keyword}});
      }
    }
    return problems;
  }

  static bool inside(double number, const std::string& keyword, double limit) {
    if (keyword == "minimum") return number >= limit;
    if (keyword == "maximum") return number <= limit;
    return number > limit;
  }

  Problems check_reference(const JsonValue& value, const std::string& reference, const std::string& file, const std::string& pointer,
                           int depth) {
    const auto hash = reference.find('#');
    const std::string target_file = hash == 0 ? file : reference.substr(0, hash);
    const auto missing = [&] { return Problems{problem_at("schema.missing-schema", pointer, {{"schema", reference}})}; };
    const auto document = schemas_.find(target_file);
    if (document == schemas_.end()) return missing();
    const JsonValue* target = &document->second;
    if (hash != std::string::npos && hash + 1 < reference.size()) {
      constexpr std::string_view definitions = "/$defs/";
      const std::string path = reference.substr(hash + 1);
      const auto defs = target->members.find("$defs");
      if (!path.starts_with(definitions) || defs == target->members.end()) return missing();
      const auto found = defs->second.members.find(path.substr(definitions.size()));
      if (found == defs->second.members.end()) return missing();
      target = &found->second;
    }
    return check(value, *target, target_file, pointer, depth + 1);
  }

  Problems check_alternatives(const JsonValue& value, const JsonValue& rule, bool exactly_one, const std::string& file,
                              const std::string& pointer, int depth) {
    std::size_t fitting = 0;
    Problems nearest;
    for (const JsonValue& alternative : rule.items) {
      Problems problems = check(value, alternative, file, pointer, depth + 1);
      if (problems.empty()) ++fitting;
      // A wrong schema must not hide in an alternative that does not fit anyway.
      for (const Problem& found : problems)
        if (found.code == "schema.unknown-keyword" || found.code == "schema.missing-schema" || found.code == "schema.endless") return problems;
      if (nearest.empty() || problems.size() < nearest.size()) nearest = std::move(problems);
    }
    if (fitting == 0) {
      nearest.insert(nearest.begin(), problem_at("schema.no-alternative", pointer, {}));
      return nearest;
    }
    if (exactly_one && fitting > 1) return {problem_at("schema.several-alternatives", pointer, {})};
    return {};
  }

  std::map<std::string, JsonValue> schemas_;
};

}  // namespace

Problems check_against_schema(std::string_view document, const std::string& schema, const SchemaTexts& texts) {
  std::map<std::string, JsonValue> schemas;
  for (const auto& [name, text] : texts) {
    Result<JsonValue> parsed = parse_json(text);
    if (!parsed) return placed_in(parsed.problems(), name);
    schemas.emplace(name, std::move(parsed).value());
  }
  const Result<JsonValue> value = parse_json(document);
  if (!value) return value.problems();
  return Checker(std::move(schemas)).check(*value, schema);
}

}  // namespace gritwright
