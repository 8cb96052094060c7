#include "sheets_from_records.hpp"

#include <algorithm>

#include "text.hpp"
#include "typed_areas.hpp"

namespace gritwright::desktop {

namespace {

/// The shortest text that reads back as this number to nine record_digits: what a record's binary fraction was typed as.
QString record_digits(double value) { return number_text(value, 9); }

QString grams(Mass mass) { return record_digits(in_g(mass)); }
QString percent(MassShare share) { return share.value() > 0 ? record_digits(share.value() * 100) : QString(); }
QString centimetres(Length length) { return record_digits(in_cm(length)); }

void fill(PanText& pan, const Retained& retained, Measure measure) {
  if (const auto* net = std::get_if<Mass>(&retained)) {
    pan.retained = grams(*net);
    if (measure == Measure::gross_and_tare) pan.tare = QStringLiteral("0");
  } else if (const auto* weighed = std::get_if<GrossTare>(&retained)) {
    pan.retained = grams(weighed->gross);
    pan.tare = grams(weighed->tare);
  } else {
    pan.retained = record_digits(in_l(std::get<LooseVolume>(retained)));
  }
}

Measure measure_of(const SieveTest& test) {
  const auto by_gross = [](const Retained& retained) { return std::holds_alternative<GrossTare>(retained); };
  if (std::holds_alternative<LooseVolume>(test.pan)) return Measure::litres;
  if (by_gross(test.pan)) return Measure::gross_and_tare;
  for (const SieveRow& row : test.rows) {
    if (by_gross(row.retained)) return Measure::gross_and_tare;
  }
  return Measure::net_mass;
}

}  // namespace

SieveSheet sheet_of(const SieveTest& test) {
  SieveSheet sheet;
  sheet.measure = measure_of(test);
  for (const SieveRow& row : test.rows) {
    PanText pan;
    pan.aperture = record_digits(in_mm(row.aperture));
    fill(pan, row.retained, sheet.measure);
    pan.crumbs = percent(row.crumbs);
    sheet.rows.push_back(pan);
  }
  fill(sheet.pan, test.pan, sheet.measure);
  sheet.pan.crumbs = percent(test.pan_crumbs);
  if (test.resolution.value() > 0) sheet.resolution = grams(test.resolution);
  if (test.dry_mass) sheet.dry_mass = grams(*test.dry_mass);
  if (test.washed_dry_mass) sheet.washed_dry_mass = grams(*test.washed_dry_mass);
  if (test.moisture.value() > 0) sheet.moisture = record_digits(test.moisture.value() * 100);
  if (test.sieve_diameter) sheet.sieve_diameter = record_digits(in_mm(*test.sieve_diameter));
  sheet.on_recovered_mass = test.basis == PercentBasis::recovered;
  return sheet;
}

ComponentSheet component_of(const SieveTest& test, const QString& name) {
  ComponentSheet component;
  component.name = name;
  component.parts = QStringLiteral("1");
  if (test.material) component.material = to_qt(*test.material);
  if (test.bulk_density) component.grain.bulk_density = record_digits(in_g_l(*test.bulk_density));
  if (test.particle_density) component.grain.particle_density = record_digits(in_g_l(*test.particle_density));
  component.sheet = sheet_of(test);
  return component;
}

namespace {

/// Whether `next` was weighed on the stack of `first`, so that its masses fit into a column beside it.
bool goes_beside(const SieveSheet& first, const SieveSheet& next) {
  const auto same_pan = [](const PanText& a, const PanText& b) { return a.aperture == b.aperture && a.tare == b.tare && a.crumbs == b.crumbs; };
  return first.measure == next.measure && std::ranges::equal(first.rows, next.rows, same_pan) && same_pan(first.pan, next.pan) && first.moisture == next.moisture &&
         first.washed_dry_mass.isEmpty() && next.washed_dry_mass.isEmpty() && first.on_recovered_mass == next.on_recovered_mass;
}

}  // namespace

std::size_t first_of_newest_sheet(std::span<const Stored<RecordedSieveTest>> tests) {
  // Samples of one sheet are numbered on; a sheet that is kept again begins anew.
  std::size_t first = tests.size() - 1;
  while (first > 0 && tests[first].record.replicate > 1 && tests.size() - first <= most_replicates) {
    const RecordedSieveTest& before = tests[first - 1].record;
    const RecordedSieveTest& after = tests[first].record;
    if (before.replicate + 1 != after.replicate || !before.test.date || before.test.date != after.test.date || !goes_beside(sheet_of(before.test), sheet_of(after.test))) break;
    --first;
  }
  return first;
}

ComponentSheet component_of(std::span<const Stored<RecordedSieveTest>> tests, const QString& name) {
  const std::size_t first = first_of_newest_sheet(tests);
  ComponentSheet component = component_of(tests.back().record.test, name);
  component.sheet = sheet_of(tests[first].record.test);
  for (std::size_t at = first + 1; at < tests.size(); ++at) {
    const SieveSheet next = sheet_of(tests[at].record.test);
    ReplicateText& sample = component.sheet.replicates.emplace_back();
    for (const PanText& pan : next.rows) sample.retained.push_back(pan.retained);
    sample.pan = next.pan.retained;
    sample.dry_mass = next.dry_mass;
  }
  return component;
}

PotSheet sheet_of(const Container& container) {
  PotSheet sheet;
  sheet.shape = container.shape;
  if (container.shape == Shape::profile) {
    sheet.areas = areas_text(container.areas);
  } else {
    sheet.rim_length = centimetres(container.rim.length);
    sheet.rim_width = centimetres(container.rim.width);
  }
  if (container.base) {
    sheet.base_length = centimetres(container.base->length);
    sheet.base_width = centimetres(container.base->width);
  }
  if (container.middle) sheet.middle = centimetres(container.middle->length);
  if (container.exponent) sheet.exponent = record_digits(*container.exponent);
  sheet.depth = record_digits(in_cm(container.depth));
  sheet.freeboard = record_digits(in_cm(container.freeboard));
  if (container.water_fill) sheet.water_fill = record_digits(in_ml(*container.water_fill));
  if (in_cm(container.saucer) > 0) sheet.saucer = record_digits(in_cm(container.saucer));
  if (in_cm(container.wick) > 0) sheet.wick = record_digits(in_cm(container.wick));
  if (container.mound && in_cm(container.mound->rise) > 0) {
    sheet.mound_rise = record_digits(in_cm(container.mound->rise));
    sheet.mound_form = container.mound->form;
  }
  if (container.corner_radius.value() > 0) sheet.corner_radius = centimetres(container.corner_radius);
  if (container.fillet_radius.value() > 0) sheet.fillet_radius = centimetres(container.fillet_radius);
  if (container.mass) sheet.mass = record_digits(in_kg(*container.mass));
  sheet.tilt_axis = container.tilt.axis;
  if (in_deg(container.tilt.angle) > 0) sheet.tilt = record_digits(in_deg(container.tilt.angle));
  return sheet;
}

}  // namespace gritwright::desktop
