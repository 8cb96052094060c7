#include "application.hpp"

#include <QApplication>
#include <QCommandLineParser>
#include <QTextStream>
#include <QTimer>

#include "main_window.hpp"
#include "models/bench_draft.hpp"
#include "models/bench_files.hpp"
#include "screenshots.hpp"
#include "settings.hpp"
#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

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
  parser.addOptions({demo, shots});
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
  if (const auto draft = read_draft(draft_file())) bench.open(*draft);
  // Every sign typed is on disk a moment later; the moment keeps a dragged slider from writing sixty files a second.
  QTimer saving;
  saving.setSingleShot(true);
  saving.setInterval(300);
  const auto save = [&bench] {
    if (!write_draft(draft_file(), bench.state())) emit bench.told(QApplication::translate("Application", "What lies on the bench could not be saved: is the disk full?"));
  };
  QObject::connect(&saving, &QTimer::timeout, &bench, save);
  QObject::connect(&bench, &Bench::changed, &saving, qOverload<>(&QTimer::start));
  QObject::connect(&application, &QApplication::aboutToQuit, &bench, save);
  MainWindow window(bench);
  if (parser.isSet(demo)) window.open_demonstration();
  else if (!settings.first_start) window.show_bench();
  for (const QString& file : parser.positionalArguments()) window.open_sieve_test_file(file);
  window.show();
  return QApplication::exec();
}

}  // namespace gritwright::desktop
