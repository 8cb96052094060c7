// A large record in the window: switching pages and typing into a bag, until everything is repainted; and the demonstration from
// nothing to a window that can be used, its record included.
#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QLineEdit>
#include <QSettings>
#include <QTemporaryDir>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <ctime>
#include <cstdio>
#include <fstream>
#include <optional>
#include <string>
#include <vector>

#include "bench_table.hpp"
#include "main_window.hpp"
#include "models/bench_files.hpp"
#include "models/demonstration_record.hpp"
#include "models/record_book.hpp"
#include "navigation.hpp"
#include "pages/sieving_page.hpp"
#include "record_pages.hpp"
#include "step_times.hpp"
#include "support/large_workbook.hpp"
#include "theme.hpp"

namespace {

using namespace gritwright;
using namespace gritwright::desktop;

struct Times {
  double median;
  double work;    ///< of the median step, what this process itself took of the processors: says more where others are at work too
};

double work_ms() {
  timespec taken{};
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &taken);
  return static_cast<double>(taken.tv_sec) * 1e3 + static_cast<double>(taken.tv_nsec) / 1e6;
}

template <class Step>
Times times_of(int repeats, Step step) {
  std::vector<double> milliseconds;
  std::vector<double> worked;
  for (int i = 0; i < repeats; ++i) {
    QElapsedTimer timer;
    timer.start();
    const double before = work_ms();
    step(i);
    QApplication::processEvents();
    milliseconds.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
    worked.push_back(work_ms() - before);
  }
  std::ranges::sort(milliseconds);
  std::ranges::sort(worked);
  return {milliseconds[milliseconds.size() / 2], worked[worked.size() / 2]};
}

constexpr int signs = 100;

template <class Step>
bench::StepTimes repainted(Step step) {
  return bench::step_times(signs, [&](int i) {
    step(i);
    QApplication::processEvents();
  });
}

/// In a process of its own, so that what filling takes does not count as the window's memory.
bool fill(const std::string& file) {
  const pid_t filling = fork();
  if (filling == 0) {
    OpeningOptions options;
    options.clock = [] { return std::chrono::system_clock::now(); };
    options.daily_backup = false;
    bool filled = false;
    // Closed before the process ends: the file is renamed without its log.
    if (auto opened = OpenWorkbook::open(file, std::move(options))) {
      OpenWorkbook workbook = std::move(opened).value();
      filled = tests::fill_large(workbook).ok();
    }
    _exit(filled ? 0 : 1);
  }
  int status = 1;
  return filling > 0 && waitpid(filling, &status, 0) == filling && status == 0;
}

/// The most this process ever held, by the kernel's account; 0 where there is none.
double peak_megabytes() {
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);) {
    if (line.starts_with("VmHWM:")) return std::stod(line.substr(6)) / 1024;
  }
  return 0;
}

Times start_of_demonstration() {
  return times_of(1, [](int) {
    const QTemporaryDir folder;
    auto record = RecordBook::open(folder.filePath(QStringLiteral("demonstration.gritwright")));
    Bench bench(shipped_catalogue().value());
    (void)fill_with_demonstration(**record, bench.catalogue());
    MainWindow window(bench, record->get());
    window.open_demonstration();
    window.show();
    QApplication::processEvents();
  });
}

}  // namespace

int main(int argument_count, char** arguments) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  const QTemporaryDir folder;
  // Filling takes minutes: a folder named on the command line keeps the record for the next run.
  const QString kept = argument_count > 1 ? QString::fromLocal8Bit(arguments[1]) : folder.path();
  const QString file = QDir(kept).filePath(QStringLiteral("large.gritwright"));
  const QString filling = file + QStringLiteral(".filling");
  if (!QFile::exists(file) && !(fill(filling.toStdString()) && QFile::rename(filling, file))) return 1;
  QApplication application(argument_count, arguments);
  QSettings::setDefaultFormat(QSettings::IniFormat);
  QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder.path());
  apply_theme(application, Theme::light, 100);
  const Times started = start_of_demonstration();
  auto record = RecordBook::open(file);
  Bench bench(shipped_catalogue().value());
  MainWindow window(bench, record->get());
  window.resize(1280, 800);
  window.show();
  RecordPages& pages = *window.record_pages();
  // By page, since one slow page would hide behind the median of all.
  constexpr const char* rooms[] = {"bags", "sieving", "mixes", "trees", "day", "log"};
  std::vector<Times> switched;
  for (const char* room : rooms) {
    switched.push_back(times_of(20, [&](int step) { window.navigation().show(window.navigation().room(step % 2 == 0 ? room : room == rooms[0] ? "log" : "bags")); }));
  }
  pages.show_log();
  auto* find = window.findChild<QLineEdit*>(QStringLiteral("log_find"));
  const Times searched = times_of(60, [&](int step) { find->setText(QStringLiteral("roots frost").left(step % 11 + 1)); });
  find->clear();
  // A sieve test with bags of the same material before it: curve, verdict and table follow every sign.
  window.open_demonstration();
  window.show_sieving();
  window.sieving_page().show_verdict();
  QApplication::processEvents();
  const auto sieved = repainted([&](int step) {
    bench.edit(QStringLiteral("mass"), QStringLiteral("bench"), [&](BenchState& state) { state.components[0].sheet.rows[2].retained = QString::number(100 + step % 50); });
  });
  // Last, because the day's backup begins with the first change of the record.
  pages.show_bags();
  QApplication::processEvents();
  auto* note = window.findChild<QLineEdit*>(QStringLiteral("bag_note"));
  const auto typed = repainted([&](int step) {
    note->setText(QStringLiteral("dusty %1").arg(step));
    emit note->textEdited(note->text());
  });
  const auto print = [](const std::string& what, const Times& times, double limit) {
    bench::print({what, "ms", times.median, limit});
    bench::print({"  of it on the processors", "ms", times.work});
  };
  std::printf("a window with a record of 20,000 bags, 40,000 sieve tests and 100,000 log lines:\n");
  for (std::size_t i = 0; i < switched.size(); ++i) print(std::string("page switched and painted: ").append(rooms[i]), switched[i], 100);
  print("sign typed into Find of the log, found and painted", searched, 100);
  bench::print_steps("sign typed into a bag, saved and painted", typed, signs);
  bench::print_steps("sign typed into a sieve test, judged and painted", sieved, signs);
  bench::print({"memory at its highest", "MB", peak_megabytes(), 280});
  print("demonstration from nothing to a usable window", started, 600);
  return 0;
}
