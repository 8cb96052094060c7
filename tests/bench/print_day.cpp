// The sheets of a day of 60 trees and 12 mixes as PDF.
#include <fmt/format.h>

#include <QApplication>
#include <QTemporaryDir>
#include <algorithm>
#include <chrono>
#include <string>
#include <vector>

#include "bench_table.hpp"
#include "gritwright/report/day_sheet.hpp"
#include "print/pdf.hpp"

using namespace gritwright;

namespace {

PlannedDay large_day() {
  PlannedDay day;
  day.name = "invented day";
  for (int m = 0; m < 12; ++m) {
    DayMix mix;
    mix.name = "mix " + std::to_string(m);
    for (int k = 0; k < 4; ++k) {
      Component grain;
      grain.name = "bag " + std::to_string((m + 3 * k) % 14);
      grain.parts = Parts(1 + k % 3);
      grain.grain.bulk_density = bulk_g_l(450 + 60 * k);
      grain.grain.particle_density = particle_g_l(900 + 130 * k);
      grain.sizes = SingleSize{aperture_mm(2.0 + k)};
      mix.mix.components.push_back(grain);
    }
    day.mixes.push_back(mix);
  }
  for (int i = 0; i < 60; ++i) {
    PlannedTree tree;
    tree.name = "tree " + std::to_string(i);
    tree.species = "invented maple";
    tree.mix = "mix " + std::to_string(i % 12);
    tree.fill = pot_ml(500 + 40 * i);
    day.trees.push_back(tree);
  }
  day.tub = loose_l(20);
  day.scoop = loose_l(0.5);
  return day;
}

template <class Work>
double median_ms(Work work) {
  std::vector<double> times;
  for (int run = 0; run < 5; ++run) {
    const auto start = std::chrono::steady_clock::now();
    work();
    times.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
  }
  std::ranges::sort(times);
  return times[times.size() / 2];
}

}  // namespace

int main(int argument_count, char** arguments) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QApplication application(argument_count, arguments);
  const QTemporaryDir folder;
  const PlannedDay day = large_day();
  const auto answer = work_out(day);
  if (!answer) return 1;
  bool written = true;
  const auto print = [&](const auto& sheet) {
    return median_ms([&] { written = desktop::write_pdf(sheet, folder.filePath(QStringLiteral("a.pdf")), desktop::Paper::a4).ok() && written; });
  };
  const auto row = [](const char* what, double ms) { bench::print({what, "ms", ms, 2000}); };
  row("PDF of a day of 60 trees and 12 mixes: day sheet", print(day_sheet(day, *answer, UnitSystem::metric)));
  row("PDF of the same day: batch cards", print(batch_cards(day, *answer, UnitSystem::metric)));
  row("PDF of the same day: pot labels", print(pot_labels(day, *answer)));
  return written ? 0 : 1;
}
