#include "application.hpp"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTextStream>
#include <QTimer>

#include "main_window.hpp"
#include "models/bench_draft.hpp"
#include "models/bench_files.hpp"
#include "models/demonstration_record.hpp"
#include "screenshots.hpp"
#include "settings.hpp"
#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

namespace {

QString record_file(const QString& wanted) {
  if (!wanted.isEmpty()) return wanted;
  const QDir documents(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
  (void)documents.mkpath(QStringLiteral("Gritwright"));
  return documents.filePath(QStringLiteral("Gritwright/record.gritwright"));
}

}  // namespace

int run_desktop(int argc, char** argv) {
  QApplication application(argc, argv);
  QApplication::setOrganizationName(QStringLiteral("Gritwright"));
  QApplication::setApplicationName(QStringLiteral("gritwright-desktop"));
  QApplication::setApplicationVersion(QStringLiteral(GRITWRIGHT_VERSION));
  QCommandLineParser parser;
  parser.setApplicationDescription(QApplication::translate("Application", "Grading, mixes and pots for trees in shallow containers"));
  parser.addHelpOption();
  parser.addVersionOption();
  const QCommandLineOption demo(QStringLiteral("demo"), QApplication::translate("Application", "Open the demonstration."));
  const QCommandLineOption shots(QStringLiteral("shots"), QApplication::translate("Application", "Write pictures of the window to DIR and end."), QStringLiteral("DIR"));
  const QCommandLineOption workbook(QStringLiteral("workbook"), QApplication::translate("Application", "The record to open instead of the usual one."), QStringLiteral("FILE"));
  parser.addOptions({demo, shots, workbook});
  parser.addPositionalArgument(QStringLiteral("FILE"), QApplication::translate("Application", "Sieve tests to open."), QStringLiteral("[FILE...]"));
  parser.process(application);

  const auto catalogue = shipped_catalogue();
  if (!catalogue) {
    QTextStream(stderr) << sentence_text(catalogue.problems().front()) << '\n';
    return 4;
  }
  Bench bench(*catalogue);
  if (parser.isSet(shots)) return write_screenshots(application, bench, parser.value(shots));
  const Settings settings = read_settings();
  apply_theme(application, settings.theme.value_or(system_theme(QApplication::palette())), settings.text_percent);
  // The demonstration has a draft and a record of its own in a folder that goes with it: nothing invented gets into the grower's.
  const QTemporaryDir throw_away;
  const bool is_demo = parser.isSet(demo);
  const QString draft_path = is_demo ? throw_away.filePath(QStringLiteral("bench.draft")) : draft_file();
  if (const auto draft = read_draft(draft_path)) bench.open(*draft);
  // Every sign typed is on disk a moment later; the moment keeps a dragged slider from writing sixty files a second.
  QTimer saving;
  saving.setSingleShot(true);
  saving.setInterval(300);
  const auto save = [&bench, draft_path] {
    if (!write_draft(draft_path, bench.state())) emit bench.told(QApplication::translate("Application", "What lies on the bench could not be saved: is the disk full?"));
  };
  QObject::connect(&saving, &QTimer::timeout, &bench, save);
  QObject::connect(&bench, &Bench::changed, &saving, qOverload<>(&QTimer::start));
  QObject::connect(&application, &QApplication::aboutToQuit, &bench, save);
  auto record = RecordBook::open(is_demo ? throw_away.filePath(QStringLiteral("demonstration.gritwright")) : record_file(parser.value(workbook)));
  if (record && is_demo) (void)fill_with_demonstration(**record, bench.catalogue());
  MainWindow window(bench, record ? record->get() : nullptr);
  if (!record) emit bench.told(sentence_text(record.problems().front()));
  if (is_demo) window.open_demonstration();
  else if (!settings.first_start) window.show_bench();
  for (const QString& file : parser.positionalArguments()) window.open_sieve_test_file(file);
  window.show();
  return QApplication::exec();
}

}  // namespace gritwright::desktop
