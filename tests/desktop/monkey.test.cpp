#include <QDir>
#include <QFile>
#include <QSettings>
#include <sstream>

#include "gritwright/workbook/exchange.hpp"
#include "gritwright/workbook/workbook_check.hpp"
#include "models/demonstration_record.hpp"
#include "monkey.hpp"
#include "support/paths.hpp"
#include "theme.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

/// Qt tells of misuse in passing; here it is a fault.
class Complaints {
 public:
  Complaints() {
    heard().clear();
    before_ = qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& text) {
      // The platform without a screen says this of every window.
      if (type == QtDebugMsg || type == QtInfoMsg || text.startsWith(QStringLiteral("This plugin does not support"))) return;
      heard() << text;
    });
  }
  ~Complaints() { qInstallMessageHandler(before_); }
  Complaints(const Complaints&) = delete;
  Complaints& operator=(const Complaints&) = delete;
  [[nodiscard]] static QStringList& heard() {
    static QStringList texts;
    return texts;
  }

 private:
  QtMessageHandler before_;
};

std::string exported(const RecordBook& record) {
  std::ostringstream out;
  REQUIRE(export_workbook(record.workbook(), out).empty());
  return out.str();
}

// The record keeps two hundred steps; a stretch ends well before.
constexpr std::int64_t most_steps = 150;

int undo_all(RecordBook& record) {
  int steps = 0;
  for (; !record.undo_text().isEmpty(); ++steps) {
    // A page that writes when it is told of an undone step would go on for ever.
    REQUIRE(steps <= most_steps + 50);
    record.undo();
    QApplication::processEvents();
  }
  return steps;
}

void redo(RecordBook& record, int steps) {
  for (; steps > 0; --steps) {
    const std::string next = record.redo_text().toStdString();
    record.redo();
    QApplication::processEvents();
    INFO("done again: " << next);
    REQUIRE(record.undo_text().toStdString() == next);
  }
}

/// Up to `actions` actions in a window of its own, then everything undone. How many were done.
int stretch(std::mt19937& random, int actions, const QString& folder, Watchdog& watchdog) {
  const Complaints complaints;
  OpenWindow open(random() % 2 == 0 ? Start::sieving : Start::mixes);
  if (random() % 2 == 0) open.bench.open(complete_bench());
  const std::string first = exported(*open.record);
  const BenchState first_bench = open.bench.state();
  if (random() % 3 != 0) {
    REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
    open.window.open_demonstration();
  }
  Monkey monkey(open, random, folder, watchdog);
  int done = 0;
  for (; done < actions; ++done) {
    const auto step = open.record->workbook().undoable();
    if (step && step->number >= most_steps) break;
    monkey.act();
  }
  monkey.rest();
  INFO("what was done last:\n" << monkey.trail());
  CHECK(QApplication::activeModalWidget() == nullptr);
  CHECK(check_content(open.record->workbook()).empty());
  const std::string last = exported(*open.record);
  const int record_steps = undo_all(*open.record);
  CHECK(exported(*open.record) == first);
  CHECK(check_content(open.record->workbook()).empty());
  redo(*open.record, record_steps);
  CHECK(exported(*open.record) == last);
  CHECK(undo_all(*open.record) == record_steps);
  CHECK(exported(*open.record) == first);
  const BenchState last_bench = open.bench.state();
  const int steps = open.bench.undo_stack().index();
  open.bench.undo_stack().setIndex(0);
  QApplication::processEvents();
  CHECK(open.bench.undo_stack().index() == 0);
  CHECK(open.bench.state() == first_bench);
  open.bench.undo_stack().setIndex(steps);
  QApplication::processEvents();
  CHECK(open.bench.state() == last_bench);
  open.window.close();
  CHECK(Complaints::heard().join(u'\n') == QString());
  return done;
}

/// What was changed in the settings is gone with it: other tests begin with those of a first start.
struct SettingsAsBefore {
  SettingsAsBefore() = default;
  SettingsAsBefore(const SettingsAsBefore&) = delete;
  SettingsAsBefore& operator=(const SettingsAsBefore&) = delete;
  ~SettingsAsBefore() {
    QSettings().clear();
    apply_theme(*qApp, Theme::light, 100);
  }
};

void copy_in(const char* from, const QString& to) { REQUIRE(QFile::copy(QStringLiteral(GRITWRIGHT_SOURCE_DIR "/") + QLatin1String(from), to)); }

void let_loose(int actions) {
  const SettingsAsBefore settings;
  const QTemporaryDir folder;
  copy_in("demo-data/containers/tray_01.json", folder.filePath(QStringLiteral("container.json")));
  copy_in("docs/file-format/examples/sieve_test.json", folder.filePath(QStringLiteral("sieve.json")));
  const auto write = [&](const char* name, const char* text) {
    QFile file(folder.filePath(QLatin1String(name)));
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(text);
  };
  write("sieve.csv", "aperture_mm,retained_g\n8,0\n5.6,60\n4,120\n2,100\npan,5\n");
  write("garbage.csv", "\xff\xfe{[\"<b>,;\n\t");
  write("photo.png", "no picture");
  const QString before = QDir::currentPath();
  QDir::setCurrent(folder.path());
  const char* wanted = std::getenv("GRITWRIGHT_MONKEY_SEED");
  const auto seed = static_cast<std::uint32_t>(wanted != nullptr ? std::strtoul(wanted, nullptr, 10) : Catch::rngSeed());
  INFO("GRITWRIGHT_MONKEY_SEED=" << seed);
  std::mt19937 seeds(seed);
  Watchdog watchdog(std::chrono::seconds(120));
  for (int done = 0; done < actions;) {
    const std::uint32_t own = wanted != nullptr && done == 0 ? seed : static_cast<std::uint32_t>(seeds());
    INFO("this stretch alone: GRITWRIGHT_MONKEY_SEED=" << own);
    std::mt19937 random(own);
    done += stretch(random, std::min(400, actions - done), folder.path(), watchdog);
  }
  QDir::setCurrent(before);
}

}  // namespace

TEST_CASE("Whatever is done to the window without a plan can be undone to the last byte", "[monkey][law][rounds]") { let_loose(1000); }

TEST_CASE("Twenty thousand things done without a plan can be undone to the last byte", "[.many][monkey][law]") { let_loose(20000); }
