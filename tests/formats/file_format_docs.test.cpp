// The schemas and worked examples of docs/file-format against the readers.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "gritwright/formats/catalogue_folder.hpp"
#include "gritwright/formats/container_file.hpp"
#include "gritwright/formats/design_problem_file.hpp"
#include "gritwright/formats/exchange_file.hpp"
#include "gritwright/formats/json_schema.hpp"
#include "gritwright/formats/mix_file.hpp"
#include "gritwright/formats/planned_day_file.hpp"
#include "gritwright/formats/pot_test_file.hpp"
#include "gritwright/formats/recall_file.hpp"
#include "gritwright/formats/root_mass_plan_file.hpp"
#include "gritwright/formats/sieve_test_file.hpp"
#include "support/paths.hpp"

using namespace gritwright;

namespace {

namespace fs = std::filesystem;

const fs::path docs = fs::path(GRITWRIGHT_SOURCE_DIR) / "docs" / "file-format";

std::string page_text(const fs::path& path) {
  std::ifstream stream(path, std::ios::binary);
  REQUIRE(stream.is_open());
  return {std::istreambuf_iterator<char>(stream), {}};
}

SchemaTexts schemas() {
  SchemaTexts texts;
  for (const auto& entry : fs::directory_iterator(docs))
    if (entry.path().extension() == ".json") texts[entry.path().filename().string()] = page_text(entry.path());
  return texts;
}

const Catalogue& catalogue() {
  static const Catalogue shipped = [] {
    auto folder = read_catalogue(fs::path(GRITWRIGHT_SOURCE_DIR) / "materials");
    REQUIRE(folder);
    return folder->catalogue;
  }();
  return shipped;
}

ComponentSources sources() {
  return {&catalogue(), [](const std::string& file) -> Result<SieveTestGrading> {
            const auto test = read_sieve_test(page_text(docs / "examples" / file), file);
            if (!test) return test.problems();
            // The grading itself is the models' business; here it only has to be one.
            return SieveTestGrading{Grading{{{aperture_mm(2), passing_percent(10)}, {aperture_mm(4), passing_percent(100)}}, {}, {}},
                                    test->bulk_density, test->particle_density, {}};
          }};
}

/// What the door finds, and what taking the records in would.
Problems read_records(const std::string& text) {
  const auto records = read_exchange(text, "example", sources());
  if (!records) return records.problems();
  Problems problems;
  for (const IdentifiedRecord& record : *records) append(problems, check(record.record));
  return problems;
}

/// The problems of the reader that belongs to `schema`.
Problems read(const std::string& text, const std::string& schema) {
  if (schema == "sieve_test.schema.json") return read_sieve_test(text, "example").problems();
  if (schema == "mix.schema.json") return read_mix(text, "example", sources()).problems();
  if (schema == "pot_test.schema.json") return read_pot_test(text, "example", sources()).problems();
  if (schema == "design.schema.json") return read_design_problem(text, "example", sources()).problems();
  if (schema == "root_mass_plan.schema.json") return read_root_mass_plan(text, "example", sources()).problems();
  if (schema == "day.schema.json" || schema == "season.schema.json") return read_planned_day(text, "example", sources()).problems();
  if (schema == "record.schema.json" || schema == "workbook.schema.json") return read_records(text);
  return read_container(text, "example", sources()).problems();
}

struct Example {
  std::string file;
  std::string schema;
};
const std::vector<Example> examples{{"sieve_test.json", "sieve_test.schema.json"},
                                    {"sieve_test_weighed_with_pans.json", "sieve_test.schema.json"},
                                    {"sieve_test_by_bucket.json", "sieve_test.schema.json"},
                                    {"mix.json", "mix.schema.json"},
                                    {"container.json", "container.schema.json"},
                                    {"container_drum.json", "container.schema.json"},
                                    {"container_hexagonal.json", "container.schema.json"},
                                    {"container_superellipse.json", "container.schema.json"},
                                    {"container_profile.json", "container.schema.json"},
                                    {"design.json", "design.schema.json"},
                                    {"design_free_shares.json", "design.schema.json"},
                                    {"pot_test.json", "pot_test.schema.json"},
                                    {"pot_test_two_depths.json", "pot_test.schema.json"},
                                    {"pot_test_poured.json", "pot_test.schema.json"},
                                    {"root_mass_plan.json", "root_mass_plan.schema.json"},
                                    {"root_mass_plan_present_pot.json", "root_mass_plan.schema.json"},
                                    {"day.json", "day.schema.json"},
                                    {"season.json", "season.schema.json"},
                                    {"record.json", "record.schema.json"},
                                    {"workbook.json", "workbook.schema.json"}};

/// The program writes these and never reads them.
const std::vector<Example> written_examples{{"recall_list.json", "recall_list.schema.json"}, {"shared_traits.json", "shared_traits.schema.json"}};

RecallList example_recall_list() {
  const RecordRef bag{RecordKind::bag, "K-07"};
  const RecordRef batch{RecordKind::batch, "BT-11"};
  const auto row = [&](RecordKind kind, const char* id, const char* name, const char* species, Standing standing, bool certain, const char* day) {
    RecallRow made;
    made.ref = {kind, id};
    made.name = name;
    made.species = species;
    made.standing = standing;
    made.certain = certain;
    made.day = day;
    made.way = {bag};
    if (made.ref != bag) made.way.push_back(made.ref);
    return made;
  };
  RecallRow pine = row(RecordKind::tree, "T-04", "old pine", "pine", Standing::now, true, "2026-03-14");
  pine.condition = Condition::sick;
  pine.mix = "M-03/2";
  pine.container = "C-02";
  pine.way = {bag, batch, pine.ref};
  const RecallRow maple = row(RecordKind::tree, "T-09", "maple by the door", "maple", Standing::may_remain, false, "2024-03-02");
  RecallRow larch = row(RecordKind::tree, "T-12", "larch", "", Standing::was, true, "2023-03-19");
  larch.condition = Condition::dead;
  larch.mix = "M-03/1";
  larch.until = "2025-03-08";
  larch.deleted = true;
  RecallRow lot = row(RecordKind::bag, "K-07", "akadama 3-6 mm A26", "akadama", Standing::now, true, "");
  lot.stock = mass_g(5600);
  const RecallRow tub = row(RecordKind::batch, "BT-11", "M-03/2", "", Standing::now, true, "2026-03-14");
  return {bag, "akadama 3-6 mm A26", {pine, maple, larch}, {lot, tub}};
}

SharedTraits example_shared_traits() {
  return {{{RecordKind::tree, "T-04"}, {RecordKind::tree, "T-12"}},
          {{TraitSort::lot, "K-07", "akadama 3-6 mm A26", RecordRef{RecordKind::bag, "K-07"}, 2, 2, 3, 18, 1},
           {TraitSort::depth, "6 cm", "", std::nullopt, 1, 2, 4, 15, 0},
           {TraitSort::removed_share, "30-40 %", "", std::nullopt, 1, 1, 2, 6, 0}}};
}

std::string told(const Problems& problems) {
  std::string text;
  for (const Problem& problem : problems) text += problem.code + " " + problem.where.pointer + "\n";
  return text;
}

/// Where each key's name starts, and where its value ends if that is a plain number.
struct KeyPlace {
  std::size_t name;
  std::size_t value;
  std::size_t value_end;
};
std::vector<KeyPlace> numeric_keys(const std::string& text) {
  std::vector<KeyPlace> places;
  for (std::size_t colon = text.find("\": "); colon != std::string::npos; colon = text.find("\": ", colon + 1)) {
    const std::size_t value = colon + 3;
    const std::size_t end = text.find_first_not_of("0123456789.", value);
    if (end != value) places.push_back({text.rfind('"', colon - 1) + 1, value, end});
  }
  return places;
}

}  // namespace

TEST_CASE("Every worked example keeps to its schema and is read", "[file_format]") {
  const SchemaTexts texts = schemas();
  for (const Example& example : examples) {
    INFO(example.file);
    const std::string text = page_text(docs / "examples" / example.file);
    CHECK(told(check_against_schema(text, example.schema, texts)) == "");
    CHECK(told(read(text, example.schema)) == "");
  }
}

TEST_CASE("No worked example is left out of the tests", "[file_format]") {
  for (const auto& entry : fs::directory_iterator(docs / "examples")) {
    if (entry.path().extension() != ".json") continue;
    INFO(entry.path().string());
    const auto is_it = [&](const Example& example) { return example.file == entry.path().filename(); };
    CHECK((std::ranges::any_of(examples, is_it) || std::ranges::any_of(written_examples, is_it)));
  }
}

TEST_CASE("What is only written is written as its worked example has it, and the example keeps to its schema", "[file_format]") {
  for (const Example& example : written_examples) {
    INFO(example.file);
    CHECK(told(check_against_schema(page_text(docs / "examples" / example.file), example.schema, schemas())) == "");
  }
  CHECK(write_recall_json(example_recall_list()) == page_text(docs / "examples" / "recall_list.json"));
  CHECK(write_shared_json(example_shared_traits()) == page_text(docs / "examples" / "shared_traits.json"));
}

TEST_CASE("Every sort of row that a recall list or shared traits can have keeps to the schema", "[file_format][law]") {
  const SchemaTexts texts = schemas();
  RecallList list = example_recall_list();
  list.title.clear();
  for (const RecordKind kind : {RecordKind::bag, RecordKind::bin, RecordKind::fraction, RecordKind::batch}) {
    RecallRow holder = list.holders.back();
    holder.ref.kind = kind;
    holder.stock = mass_g(-0.25);
    list.holders.push_back(holder);
  }
  for (const Condition condition : {Condition::thriving, Condition::watch, Condition::sick, Condition::dead}) {
    RecallRow tree = list.trees.front();
    tree.condition = condition;
    tree.name = "\"quoted\" \xF0\x9F\x8C\xB2";
    list.trees.push_back(tree);
  }
  CHECK(told(check_against_schema(write_recall_json(list), "recall_list.schema.json", texts)) == "");
  list.trees.clear();
  CHECK(told(check_against_schema(write_recall_json(list), "recall_list.schema.json", texts)) == "");
  SharedTraits shared = example_shared_traits();
  for (const TraitSort sort : {TraitSort::lot, TraitSort::mix, TraitSort::depth, TraitSort::day, TraitSort::plan, TraitSort::removed_share}) {
    shared.traits.push_back(shared.traits.front());
    shared.traits.back().sort = sort;
  }
  CHECK(told(check_against_schema(write_shared_json(shared), "shared_traits.schema.json", texts)) == "");
}

TEST_CASE("The schemas of what is only written refuse a key that is missing, misspelt or of another kind", "[file_format][refuses]") {
  const SchemaTexts texts = schemas();
  for (const Example& example : written_examples) {
    const std::string text = page_text(docs / "examples" / example.file);
    for (std::size_t colon = text.find("\": "); colon != std::string::npos; colon = text.find("\": ", colon + 1)) {
      const std::size_t name = text.rfind('"', colon - 1) + 1;
      const std::string misspelt = text.substr(0, name) + std::string("x_") + text.substr(name);
      const std::size_t value = colon + 3;
      const bool is_list = text[value] == '[';
      const std::size_t end = is_list ? text.find(']', value) + 1 : text.find_first_of(",\n", value);
      const std::string of_another_kind = text.substr(0, value) + (is_list ? "7" : "[]") + text.substr(end);
      for (const std::string& spoiled : {misspelt, of_another_kind}) {
        INFO(example.file << "\n" << spoiled);
        CHECK_FALSE(check_against_schema(spoiled, example.schema, texts).empty());
      }
    }
  }
}

TEST_CASE("The CSV example is the sieve test of the JSON example", "[file_format]") {
  const auto csv = read_sieve_test(page_text(docs / "examples" / "sieve_test.csv"), "example");
  const auto json = read_sieve_test(page_text(docs / "examples" / "sieve_test.json"), "example");
  REQUIRE(csv);
  REQUIRE(json);
  CHECK(*csv == *json);
}

TEST_CASE("Schema and reader agree on what they refuse in an example", "[file_format][law][rounds]") {
  const SchemaTexts texts = schemas();
  for (const Example& example : examples) {
    // A line of the ledger may be negative, so a workbook can't be spoiled by turning every number round.
    if (example.file == "workbook.json") continue;
    const std::string text = page_text(docs / "examples" / example.file);
    const auto keys = numeric_keys(text);
    CHECK(keys.size() >= 3);
    for (const KeyPlace& key : keys) {
      const std::string quote = "\"";
      const std::string misspelt = text.substr(0, key.name) + std::string("x_") + text.substr(key.name);
      const std::string quoted = text.substr(0, key.value) + quote + text.substr(key.value, key.value_end - key.value) + quote +
                                 text.substr(key.value_end);
      const std::string negative = text.substr(0, key.value) + std::string("-1000") + text.substr(key.value);
      for (const std::string& spoiled : {misspelt, quoted, negative}) {
        INFO(example.file << " " << text.substr(key.name, 30) << "\n" << spoiled);
        CHECK_FALSE(check_against_schema(spoiled, example.schema, texts).empty());
        CHECK_FALSE(read(spoiled, example.schema).empty());
      }
    }
  }
}
