#include "json_document.hpp"
#include "sieve_test_formats.hpp"
#include "text_door.hpp"

namespace gritwright {

namespace {

struct RetainedKeys {
  const char* mass;
  const char* gross;
  const char* tare;
  const char* volume;
  const char* crumbs;
};

/// What was measured of one fraction; exactly one of the three ways, 0 where it can't be read. Reports `code_if_absent` when there is
/// none.
Retained read_retained(JsonObject& object, const RetainedKeys& keys, const char* code_if_absent,
                                      WrittenResolution& resolution) {
  const bool gross_and_tare = object.has(keys.gross) || object.has(keys.tare);
  const int ways = int{object.has(keys.mass)} + int{gross_and_tare} + int{object.has(keys.volume)};
  for (const char* key : {keys.mass, keys.gross, keys.tare})
    if (const JsonValue* written = object.take(key)) resolution.saw(written->decimals);
  if (ways == 0) {
    object.take(keys.volume);
    object.report(code_if_absent, object.pointer(), {{"key", std::string(keys.mass)}});
    return {};
  }
  if (ways > 1) {
    object.take(keys.volume);
    object.report("sieve-test.measured-twice", object.pointer());
    return {};
  }
  if (gross_and_tare) {
    const auto gross = object.required_number(keys.gross);
    const auto tare = object.required_number(keys.tare);
    return GrossTare{mass_g(gross.value_or(tare.value_or(0))), mass_g(tare.value_or(0))};
  }
  if (object.has(keys.mass)) return mass_g(object.number(keys.mass).value_or(0));
  return loose_l(object.number(keys.volume).value_or(0));
}

MassShare read_crumbs(JsonObject& object, const char* key) { return MassShare(object.number(key).value_or(0) / 100); }

/// Every row as far as it can be read.
void read_rows(JsonObject& object, SieveTest& test, WrittenResolution& resolution, Problems& problems) {
  const auto* rows = object.required_array("retained");
  if (rows == nullptr) return;
  if (rows->size() > most_sieve_rows) {
    object.report("sieve-test.too-many-rows", object.at("retained"), {{"limit", static_cast<double>(most_sieve_rows)}});
    return;
  }
  constexpr RetainedKeys keys{"mass_g", "gross_g", "tare_g", "retained_l", "crumbs_percent"};
  for (std::size_t i = 0; i < rows->size(); ++i) {
    JsonObject row((*rows)[i], below(object.at("retained"), std::to_string(i)), problems);
    const auto aperture = row.required_number("aperture_mm");
    const Retained retained = read_retained(row, keys, "key.missing", resolution);
    const MassShare crumbs = read_crumbs(row, keys.crumbs);
    row.finish();
    test.rows.push_back({aperture_mm(aperture.value_or(0)), retained, crumbs});
  }
}

}  // namespace

Result<SieveTest> read_sieve_test_json(std::string_view text) {
  Problems problems;
  const Result<JsonValue> root = parse_json(text, problems);
  if (!root) return root.problems();

  SieveTest test;
  WrittenResolution written;
  JsonObject object(*root, "", problems);
  object.format("gritwright/sieve-test/1");
  test.material = object.text("material");
  test.lot = object.text("lot");
  test.date = object.text("date");
  if (test.date && !is_iso_day(*test.date)) object.report("date.not-a-day", object.at("date"), {{"text", *test.date}});
  for (const char* key : {"dry_mass_g", "washed_dry_mass_g"})
    if (const JsonValue* mass = object.take(key)) written.saw(mass->decimals);
  if (const auto mass = object.number("dry_mass_g")) test.dry_mass = mass_g(*mass);
  if (const auto mass = object.number("washed_dry_mass_g")) test.washed_dry_mass = mass_g(*mass);
  if (const auto percent = object.number("moisture_percent")) test.moisture = Moisture(*percent / 100);
  if (const auto diameter = object.number("sieve_diameter_mm")) test.sieve_diameter = length_mm(*diameter);
  if (const auto density = object.number("particle_density_g_l")) test.particle_density = particle_g_l(*density);
  if (const auto density = object.number("bulk_density_g_l")) test.bulk_density = bulk_g_l(*density);
  if (const auto basis = object.text("basis")) {
    if (*basis == "recovered")
      test.basis = PercentBasis::recovered;
    else if (*basis != "original")
      object.report("sieve-test.unknown-basis", object.at("basis"), {{"text", *basis}});
  }
  read_rows(object, test, written, problems);
  constexpr RetainedKeys pan_keys{"pan_g", "pan_gross_g", "pan_tare_g", "pan_l", "pan_crumbs_percent"};
  test.pan = read_retained(object, pan_keys, "sieve-test.no-pan", written);
  test.pan_crumbs = read_crumbs(object, pan_keys.crumbs);
  test.resolution = written.resolution();
  if (const auto resolution = object.number("resolution_g")) test.resolution = mass_g(*resolution);
  object.finish();
  append(problems, check_what_was_read(test, problems));
  if (!problems.empty()) return problems;
  return test;
}

}  // namespace gritwright
