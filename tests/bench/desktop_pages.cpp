// A large record in the window: switching pages and typing into a bag, until everything is repainted; and the demonstration from
// nothing to a window that can be used, its record included.
#include <QApplication>
#include <QElapsedTimer>
#include <QLineEdit>
#include <QSettings>
#include <QTemporaryDir>
#include <algorithm>
#include <cstdio>
#include <fstream>
#include <string>
#include <vector>

#include "main_window.hpp"
#include "models/bench_files.hpp"
#include "models/demonstration_record.hpp"
#include "models/record_book.hpp"
#include "pages/sieving_page.hpp"
#include "record_pages.hpp"
#include "theme.hpp"

namespace {

using namespace gritwright;
using namespace gritwright::desktop;

constexpr int bags = 2000;
constexpr int log_lines = 20000;

struct Times {
  double median;
  double late;  ///< 99th percentile
};

template <class Step>
Times times_of(int repeats, Step step) {
  std::vector<double> milliseconds;
  for (int i = 0; i < repeats; ++i) {
    QElapsedTimer timer;
    timer.start();
    step(i);
    QApplication::processEvents();
    milliseconds.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
  }
  std::ranges::sort(milliseconds);
  return {milliseconds[milliseconds.size() / 2], milliseconds[milliseconds.size() * 99 / 100]};
}

void fill(RecordBook& book) {
  Change change;
  change.label = "filled";
  for (int i = 0; i < bags; ++i) {
    Bag bag;
    bag.material = i % 2 == 0 ? "pumice" : "akadama";
    bag.lot = "lot " + std::to_string(i);
    bag.volume = loose_l(14);
    bag.received = "2026-03-14";
    change.edits.push_back({RecordRef{RecordKind::bag, "B-" + std::to_string(10000 + i)}, 0, Record(bag)});
  }
  for (int i = 0; i < log_lines; ++i) {
    LogEntry entry;
    entry.day = "2026-03-14";
    entry.text = "line " + std::to_string(i);
    change.edits.push_back({RecordRef{RecordKind::log_entry, "N-" + std::to_string(10000 + i)}, 0, Record(entry)});
  }
  book.apply(std::move(change));
}

/// The most this process ever held, by the kernel's account; 0 where there is none.
double peak_megabytes() {
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);) {
    if (line.starts_with("VmHWM:")) return std::stod(line.substr(6)) / 1024;
  }
  return 0;
}

double start_of_demonstration() {
  QElapsedTimer timer;
  timer.start();
  const QTemporaryDir folder;
  auto record = RecordBook::open(folder.filePath(QStringLiteral("demonstration.gritwright")));
  Bench bench(shipped_catalogue().value());
  (void)fill_with_demonstration(**record, bench.catalogue());
  MainWindow window(bench, record->get());
  window.open_demonstration();
  window.show();
  QApplication::processEvents();
  return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

}  // namespace

int main(int argument_count, char** arguments) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argument_count, arguments);
  const QTemporaryDir folder;
  QSettings::setDefaultFormat(QSettings::IniFormat);
  QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder.path());
  apply_theme(application, Theme::light, 100);
  const double started = start_of_demonstration();
  auto record = RecordBook::open(folder.filePath(QStringLiteral("large.gritwright")));
  fill(**record);
  Bench bench(shipped_catalogue().value());
  MainWindow window(bench, record->get());
  window.resize(1280, 800);
  window.show();
  RecordPages& pages = *window.record_pages();
  const Times switched = times_of(60, [&](int step) {
    if (step % 4 == 0) pages.show_bags();
    else if (step % 4 == 1) window.show_sieving();
    else if (step % 4 == 2) window.show_mixes();
    else pages.show_log();
  });
  pages.show_bags();
  QApplication::processEvents();
  auto* note = window.findChild<QLineEdit*>(QStringLiteral("bag_note"));
  const Times typed = times_of(100, [&](int step) {
    note->setText(QStringLiteral("dusty %1").arg(step));
    emit note->textEdited(note->text());
  });
  // A sieve test with bags of the same material before it: curve, verdict and table follow every sign.
  window.open_demonstration();
  window.show_sieving();
  window.sieving_page().show_verdict();
  QApplication::processEvents();
  const Times sieved = times_of(100, [&](int step) {
    bench.edit(QStringLiteral("mass"), QStringLiteral("bench"), [&](BenchState& state) { state.components[0].sheet.rows[2].retained = QString::number(100 + step % 50); });
  });
  std::printf("%-52s %9s %9s %9s\n", "desktop with 2,000 bags and 20,000 log lines, ms", "median", "99 %", "aim");
  std::printf("%-52s %9.1f %9.1f %9s\n", "page switched and painted", switched.median, switched.late, "100");
  std::printf("%-52s %9.1f %9.1f %9s\n", "sign typed into a bag, saved and painted", typed.median, typed.late, "16 / 33");
  std::printf("%-52s %9.1f %9.1f %9s\n", "sign typed into a sieve test, judged and painted", sieved.median, sieved.late, "16 / 33");
  std::printf("%-52s %9.0f %9s %9s\n", "memory at its highest, MB", peak_megabytes(), "", "280");
  std::printf("%-52s %9.1f %9s %9s\n", "demonstration from nothing to a usable window", started, "", "600");
  return 0;
}
