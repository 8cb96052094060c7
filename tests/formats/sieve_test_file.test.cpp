#include "gritwright/formats/sieve_test_file.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <string>
#include <vector>

#include "gritwright/formats/typed_quantity.hpp"

using namespace gritwright;

namespace {

const std::string csv = "# material: river grit\n# dry_mass_g: 100\naperture_mm,retained_g\n4.75,10.0\n2.36,50.5\npan,39.5\n";
const std::string test_json =
    R"({"format":"gritwright/sieve-test/1","material":"river grit","dry_mass_g":100,)"
    R"("retained":[{"aperture_mm":4.75,"mass_g":10.0},{"aperture_mm":2.36,"mass_g":50.5}],"pan_g":39.5})";

Problems problems_of(const std::string& text) { return read_sieve_test(text, "bag.csv").problems(); }

/// The only problem, so that no second one hides behind it.
Problem test_refusal(const std::string& text) {
  const Problems problems = problems_of(text);
  REQUIRE(problems.size() == 1);
  CHECK(problems.front().where.file == "bag.csv");
  return problems.front();
}

std::string test_with(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  REQUIRE(at != std::string::npos);
  return text.replace(at, from.size(), to);
}

}  // namespace

TEST_CASE("The same sieve test reads alike from CSV and JSON", "[sieve_test_file][roundtrip]") {
  const auto from_csv = read_sieve_test(csv, "bag.csv");
  const auto from_json = read_sieve_test(test_json, "bag.json");
  REQUIRE(from_csv);
  REQUIRE(from_json);
  CHECK(*from_csv == *from_json);
  CHECK(from_csv->material == "river grit");
  CHECK(from_csv->rows.size() == 2);
  CHECK(from_csv->rows[1].retained == Retained(mass_g(50.5)));
  CHECK(from_csv->pan == Retained(mass_g(39.5)));
  CHECK(from_csv->resolution == mass_g(0.1));
}

TEST_CASE("A spreadsheet's file with byte order mark, CRLF, semicolons and decimal commas is taken", "[sieve_test_file]") {
  std::string text = "\xEF\xBB\xBF# material: river grit;\r\n# dry_mass_g: 100;\r\naperture_mm;retained_g\r\n4,75;10,0\r\n2,36;50,5\r\npan;39,5\r\n;\r\n";
  const auto semicolons = read_sieve_test(text, "bag.csv");
  REQUIRE(semicolons);
  CHECK(*semicolons == *read_sieve_test(csv, "bag.csv"));
  std::replace(text.begin(), text.end(), ';', '\t');
  const auto tabs = read_sieve_test(text, "bag.csv");
  REQUIRE(tabs);
  CHECK(*tabs == *semicolons);
}

TEST_CASE("Gross and tare, litres and crumbs are read as they were measured", "[sieve_test_file]") {
  const auto weighed = read_sieve_test("aperture_mm,gross_g,tare_g,crumbs_percent\n2,5.27,2.32,20\npan,2.31,2.29\n", "f");
  REQUIRE(weighed);
  CHECK(weighed->rows[0].retained == Retained(GrossTare{mass_g(5.27), mass_g(2.32)}));
  CHECK(weighed->rows[0].crumbs == MassShare(0.2));
  CHECK(weighed->pan_crumbs == MassShare(0));
  CHECK(weighed->resolution == mass_g(0.01));
  const auto litres = read_sieve_test("aperture_mm,retained_l\n2,10.3\npan,1.5\n", "f");
  REQUIRE(litres);
  CHECK(litres->rows[0].retained == Retained(loose_l(10.3)));
}

TEST_CASE("A file without a pan is refused", "[sieve_test_file][refuses]") {
  CHECK(test_refusal(test_with(csv, "pan,39.5\n", "")).code == "sieve-test.no-pan");
  CHECK(test_refusal(test_with(test_json, R"(,"pan_g":39.5)", "")).code == "sieve-test.no-pan");
}

TEST_CASE("Rubbish where a mass belongs is refused at its cell", "[sieve_test_file][refuses]") {
  for (const char* text : {"12g3", "nan", "plenty"}) {
    const Problem problem = test_refusal(test_with(csv, "50.5", text));
    CHECK(problem.code == "number.not-a-number");
    CHECK(problem.where.line == 5);
    CHECK(problem.where.column == 6);
    CHECK(std::get<std::string>(problem.facts.at("text")) == text);
  }
  CHECK(test_refusal(test_with(csv, "50.5", "1e999")).code == "number.too-large");
  CHECK(test_refusal(test_with(test_json, "50.5", "1e999")).code == "number.too-large");
  CHECK(test_refusal(test_with(test_json, "50.5", "NaN")).code == "json.syntax");
  const Problem text_for_number = test_refusal(test_with(test_json, "50.5", "\"50.5\""));
  CHECK(text_for_number.code == "value.wrong-kind");
  CHECK(text_for_number.where.pointer == "/retained/1/mass_g");
}

TEST_CASE("A decimal comma in a comma-separated file is refused", "[sieve_test_file][refuses]") {
  const Problem unquoted = test_refusal(test_with(csv, "50.5", "50,5"));
  CHECK(unquoted.code == "csv.too-many-cells");
  CHECK(unquoted.where.line == 5);
  CHECK(test_refusal(test_with(csv, "50.5", "\"50,5\"")).code == "number.decimal-comma");
}

TEST_CASE("Unknown and duplicate keys are refused by name", "[sieve_test_file][refuses]") {
  const Problem unknown = test_refusal(test_with(test_json, "\"dry_mass_g\"", "\"dry_mass\""));
  CHECK(unknown.code == "key.unknown");
  CHECK(unknown.where.pointer == "/dry_mass");
  const Problem duplicate = test_refusal(test_with(test_json, "\"pan_g\":39.5", "\"pan_g\":39.5,\"pan_g\":39.5"));
  CHECK(duplicate.code == "key.duplicate");
  CHECK(std::get<std::string>(duplicate.facts.at("key")) == "pan_g");
  CHECK(test_refusal(test_with(csv, "# dry_mass_g", "# dry_mass")).code == "key.unknown");
  CHECK(test_refusal(test_with(csv, "# dry_mass_g: 100", "# material: pumice")).code == "key.duplicate");
  CHECK(test_refusal(test_with(csv, "aperture_mm,retained_g", "aperture_mm,retained_g,colour")).code == "csv.unknown-column");
}

TEST_CASE("Text that is empty, huge, not UTF-8 or holds NUL is refused", "[sieve_test_file][refuses]") {
  CHECK(test_refusal("").code == "file.empty");
  CHECK(test_refusal("\xEF\xBB\xBF \r\n").code == "file.empty");
  CHECK(test_refusal(std::string(100'000'000, ' ')).code == "file.too-large");
  for (const char* bad : {"\xFF", "\xC3", "\xC0\x80", "\xED\xA0\x80", "\xF5\x80\x80\x80"}) {
    CHECK(test_refusal(test_with(csv, "grit", bad)).code == "text.not-utf8");
    CHECK(test_refusal(test_with(test_json, "grit", bad)).code == "text.not-utf8");
  }
  CHECK(test_refusal(test_with(csv, "grit", std::string(1, '\0'))).code == "text.nul");
  CHECK(test_refusal(test_with(test_json, "river grit", "\\u0000")).code == "text.nul");
}

TEST_CASE("JSON nested ten thousand deep is refused, closed or not", "[sieve_test_file][refuses]") {
  const std::string opened(10'000, '['), closed(10'000, ']');
  CHECK(test_refusal(opened).code == "json.too-deep");
  CHECK(test_refusal(opened + closed).code == "json.too-deep");
}

TEST_CASE("A file that is no sieve test by its sheer length is refused in one problem", "[sieve_test_file][refuses]") {
  std::string rows, values = "[0";
  for (int i = 0; i < 300'000; ++i) {
    rows += "x,y\n";
    values += ",0";
  }
  CHECK(test_refusal("aperture_mm,retained_g\n" + rows).code == "sieve-test.too-many-rows");
  CHECK(test_refusal(values + "]").code == "json.too-many-values");
  CHECK(test_refusal(test_with(test_json, "\"retained\":[", "\"retained\":" + values.substr(0, 4'000) + ",")).code == "sieve-test.too-many-rows");
}

TEST_CASE("All faults of a file come back in one go", "[sieve_test_file][refuses]") {
  const Problems problems = problems_of("# lot_mark: K\naperture_mm,retained_g\n4.75,x\n2.36\npan,y\n9,1\n");
  std::vector<std::string> codes;
  for (const Problem& problem : problems) codes.push_back(problem.code);
  CHECK(codes == std::vector<std::string>{"key.unknown", "number.not-a-number", "number.missing", "number.not-a-number", "csv.row-after-pan"});
}

TEST_CASE("What the record itself forbids is refused at its cell", "[sieve_test_file][refuses]") {
  const auto at = [](const Problem& problem) { return std::pair(problem.where.line.value_or(0), problem.where.column.value_or(0)); };
  const Problem repeated = test_refusal(test_with(csv, "2.36,", "4.75,"));
  CHECK(repeated.code == "sieve-test.aperture-repeated");
  CHECK(at(repeated) == std::pair(5, 1));
  CHECK(test_refusal(test_with(csv, "2.36,", "9.5,")).code == "sieve-test.aperture-not-falling");
  CHECK(test_refusal(test_with(csv, "2.36,", "0,")).code == "sieve-test.aperture-not-positive");
  CHECK(test_refusal(test_with(csv, "2.36,", "-2.36,")).code == "sieve-test.aperture-not-positive");
  const Problem negative = test_refusal(test_with(csv, "pan,39.5", "pan,-39.5"));
  CHECK(negative.code == "sieve-test.mass-negative");
  CHECK(at(negative) == std::pair(6, 5));
  CHECK(at(test_refusal(test_with(csv, "dry_mass_g: 100", "dry_mass_g: 0"))) == std::pair(2, 14));
  CHECK(test_refusal(test_with(test_json, "\"mass_g\":50.5", "\"mass_g\":-50.5")).where.pointer == "/retained/1/mass_g");
}

TEST_CASE("A gain is taken as far as the written decimals explain it", "[sieve_test_file][refuses]") {
  // Three weighings to 0.1 g explain 0.3 g.
  CHECK(read_sieve_test(test_with(csv, "39.5", "39.8"), "f").ok());
  CHECK(test_refusal(test_with(csv, "39.5", "39.9")).code == "sieve-test.sum-above-sample");
  CHECK(read_sieve_test(test_with(csv, "# dry_mass_g: 100", "# dry_mass_g: 100\n# resolution_g: 1"), "f").ok());
  CHECK(test_refusal(test_with(test_json, "39.5", "39.9")).code == "sieve-test.sum-above-sample");
}

TEST_CASE("Faults of the record stand beside faults of the text", "[sieve_test_file][refuses]") {
  const Problems problems = problems_of(
      R"({"format":"gritwright/sieve-test/1","retained":[{"aperture_mm":"x","mass_g":1},{"aperture_mm":2,"mass_g":-1}],"pan_g":0})");
  REQUIRE(problems.size() == 2);
  CHECK(problems[0].where.pointer == "/retained/0/aperture_mm");
  CHECK(problems[1].code == "sieve-test.mass-negative");
  CHECK(problems[1].where.pointer == "/retained/1/mass_g");
}

TEST_CASE("Every text cut short is read or refused, never more", "[sieve_test_file][refuses]") {
  for (const std::string& whole : {csv, test_json})
    for (std::size_t length = 0; length < whole.size(); ++length) {
      const auto result = read_sieve_test(whole.substr(0, length), "f");
      CHECK((result.ok() || !result.problems().empty()));
    }
}

TEST_CASE("A cell that can't be read hides no fault of its row, of the sample or of the densities", "[sieve_test_file][refuses][regression]") {
  const auto told = [](const std::string& text) {
    std::vector<std::string> list;
    for (const Problem& problem : problems_of(text))
      list.push_back(problem.code + " " + (problem.where.line ? std::to_string(*problem.where.line) : problem.where.pointer));
    return list;
  };
  CHECK(told("aperture_mm,retained_g\n4,abc\n4,1\npan,-3\n") ==
        std::vector<std::string>{"number.not-a-number 2", "sieve-test.aperture-repeated 3", "sieve-test.mass-negative 4"});
  CHECK(told("# dry_mass_g: -1\n# washed_dry_mass_g: x\n# moisture_percent: -2\n# resolution_g: -1\n# particle_density_g_l: -900\n"
             "# bulk_density_g_l: 0\naperture_mm,retained_g\n4,x\n2,1\npan,1\n") ==
        std::vector<std::string>{"number.not-a-number 2", "number.not-a-number 8", "sieve-test.sample-not-positive 1",
                                 "sieve-test.moisture-range 3", "sieve-test.resolution-negative 4", "sieve-test.density-not-positive 5",
                                 "sieve-test.density-not-positive 6"});
  CHECK(told(R"({"format":"gritwright/sieve-test/1","dry_mass_g":-1,"bulk_density_g_l":950,"particle_density_g_l":900,)"
             R"("retained":[{"aperture_mm":4,"mass_g":"x"},{"aperture_mm":4,"mass_g":1},{"mass_g":-1}],"pan_g":[]})") ==
        std::vector<std::string>{"value.wrong-kind /retained/0/mass_g", "key.missing /retained/2", "value.wrong-kind /pan_g",
                                 "sieve-test.aperture-repeated /retained/1/aperture_mm", "sieve-test.mass-negative /retained/2/mass_g",
                                 "sieve-test.sample-not-positive /dry_mass_g", "sieve-test.bulk-above-particle /bulk_density_g_l"});
}

TEST_CASE("A fault of another field hides no sum above the sample", "[sieve_test_file][refuses][regression]") {
  const Problems problems = problems_of("# dry_mass_g: 100\n# particle_density_g_l: -1\naperture_mm,retained_g\n4,90\n2,x2\npan,20\n");
  CHECK(problems.size() == 2);
  const Problems whole = problems_of("# dry_mass_g: 100\n# particle_density_g_l: -1\naperture_mm,retained_g\n4,90\npan,20\n");
  REQUIRE(whole.size() == 2);
  CHECK(whole[0].code == "sieve-test.sum-above-sample");
  CHECK(whole[1].code == "sieve-test.density-not-positive");
}

TEST_CASE("A pan row with a decimal comma is told once, not as a missing pan too", "[sieve_test_file][refuses][regression]") {
  const Problem problem = test_refusal(test_with(csv, "pan,39.5", "pan,39,5"));
  CHECK(problem.code == "csv.too-many-cells");
  CHECK(problem.where.line == 6);
}

TEST_CASE("A key written twice is told beside the other faults", "[sieve_test_file][refuses][regression]") {
  const Problems problems = problems_of(test_with(test_json, "\"pan_g\":39.5", "\"pan_g\":39.5,\"pan_g\":-1,\"colour\":1"));
  std::vector<std::string> codes;
  for (const Problem& problem : problems) codes.push_back(problem.code);
  CHECK(codes == std::vector<std::string>{"key.duplicate", "key.unknown"});
}

TEST_CASE("The resolution is the last digit written of any mass, whichever way the file is written", "[sieve_test_file]") {
  const auto resolution = [](const std::string& text) { return in_g(read_sieve_test(text, "f")->resolution); };
  CHECK_THAT(resolution("# dry_mass_g: 100.25\naperture_mm,retained_g\n4,50\npan,50\n"), Catch::Matchers::WithinRel(0.01, 1e-12));
  CHECK_THAT(resolution("aperture_mm,retained_g\n4,1.5e2\npan,50\n"), Catch::Matchers::WithinRel(1.0, 1e-12));
  CHECK_THAT(resolution("aperture_mm,retained_g\n4,1.5e2\npan,2e1\n"), Catch::Matchers::WithinRel(10.0, 1e-12));
  const std::string head = R"({"format":"gritwright/sieve-test/1",)";
  CHECK_THAT(resolution(head + R"("dry_mass_g":100.25,"retained":[{"aperture_mm":4,"mass_g":50}],"pan_g":50})"),
             Catch::Matchers::WithinRel(0.01, 1e-12));
  CHECK_THAT(resolution(head + R"("retained":[{"aperture_mm":4,"mass_g":1.5e2}],"pan_g":2e1})"), Catch::Matchers::WithinRel(10.0, 1e-12));
  CHECK_THAT(in_g(parse_mass("1.5e2", MassUnit::gram)->last_digit), Catch::Matchers::WithinRel(10.0, 1e-12));
}
