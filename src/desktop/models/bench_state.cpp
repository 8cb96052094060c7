#include "bench_state.hpp"

#include <QCoreApplication>

#include "text.hpp"

namespace gritwright::desktop {

namespace {

// Principal sieves for grain of 1-8 mm: what most growers own in some form. The user edits them on the sheet.
constexpr const char* default_sieves[] = {"8", "5.6", "4", "2.8", "2", "1.4", "1"};

}  // namespace

ComponentSheet empty_component(const QString& name) {
  ComponentSheet component;
  component.name = name;
  component.parts = QStringLiteral("1");
  for (const char* aperture : default_sieves) component.sheet.rows.push_back({to_typed(aperture), {}, {}});
  return component;
}

bool is_same_opening(const QString& a, const QString& b) { return a.trimmed().replace(u',', u'.') == b.trimmed().replace(u',', u'.'); }

bool has_width(Shape shape) { return shape == Shape::rectangular || shape == Shape::oval || shape == Shape::superellipse || shape == Shape::bowl; }

SieveSheet same_stack(const SieveSheet& sheet) {
  SieveSheet next;
  next.measure = sheet.measure;
  for (const PanText& row : sheet.rows) next.rows.push_back({row.aperture, {}, row.tare});
  next.pan.tare = sheet.pan.tare;
  next.sieve_diameter = sheet.sieve_diameter;
  return next;
}

void drop_prediction(SieveSheet& sheet, const SieveSheet& before) {
  if (!before.predicted) return;
  sheet.predicted = false;
  const auto drop = [](QString& now, const QString& predicted) {
    if (now == predicted) now.clear();
  };
  for (std::size_t i = 0; i < sheet.rows.size() && i < before.rows.size(); ++i) drop(sheet.rows[i].retained, before.rows[i].retained);
  drop(sheet.pan.retained, before.pan.retained);
  drop(sheet.resolution, before.resolution);
}

QString prediction_words() {
  return QCoreApplication::translate("BenchState", "Predicted, in percent of the mass; nothing is weighed yet. Sieve it and type what stays on each sieve: then it can be kept and printed as a test.");
}

BenchState empty_bench() {
  BenchState state;
  const auto name = [](int number) { return QCoreApplication::translate("BenchState", "Component %1").arg(number); };
  state.components = {empty_component(name(1)), empty_component(name(2))};
  state.band_from = QStringLiteral("2");
  state.band_to = QStringLiteral("6");
  // 5 mm below the rim, spill 7 % (common practice).
  state.spill = QStringLiteral("7");
  state.pot.freeboard = number_text(0.5, 1);
  return state;
}

}  // namespace gritwright::desktop
