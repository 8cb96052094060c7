#include "application.hpp"

#include <QApplication>
#include <QCommandLineParser>
#include <QFileInfo>
#include <QIcon>
#include <QLocale>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTextStream>
#include <QtGlobal>
#include <algorithm>
#include <array>
#include <cstddef>
#include <memory>
#include <optional>
#include <span>
#include <string_view>

#include "gritwright/workbook/default_workbook.hpp"
#include "guarded_application.hpp"
#include "main_window.hpp"
#include "models/bench_draft.hpp"
#include "models/bench_files.hpp"
#include "models/demonstration_record.hpp"
#include "models/record_book.hpp"
#include "pages/import_page.hpp"
#include "plain_labels.hpp"
#include "record_session.hpp"
#include "screenshots.hpp"
#include "settings.hpp"
#include "text.hpp"
#include "theme.hpp"
#include "translation.hpp"
#include "widgets/whole_choice.hpp"
#include "widgets/whole_hint.hpp"

namespace gritwright::desktop {

namespace {

/// A demonstration with everything of its own in a folder that goes with it: nothing invented gets into the grower's record, and
/// closing its window throws it away.
class DemonstrationWindow : public QObject {
 public:
  DemonstrationWindow(const Catalogue& catalogue, QObject* parent) : QObject(parent), bench_(catalogue) {
    auto opened = RecordBook::open(folder_.filePath(QStringLiteral("demonstration.gritwright")));
    if (opened) {
      record_ = std::move(opened).value();
      (void)fill_with_demonstration(*record_, bench_.catalogue());
    }
    window_ = std::make_unique<MainWindow>(bench_, record_.get());
    window_->mark_as_demonstration();
    window_->open_demonstration();
    window_->setAttribute(Qt::WA_DeleteOnClose, false);
    window_->installEventFilter(this);
    window_->show();
  }

  MainWindow& window() { return *window_; }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (watched == window_.get() && event->type() == QEvent::Close) deleteLater();
    return QObject::eventFilter(watched, event);
  }

 private:
  // In this order: the window goes first, its record before the folder it lies in.
  QTemporaryDir folder_;
  Bench bench_;
  std::unique_ptr<RecordBook> record_;
  std::unique_ptr<MainWindow> window_;
};

/// Before there is an application: help and version are told on a machine without a screen too.
void do_without_a_screen_where_words_are_enough(std::span<char*> arguments) {
  constexpr std::array<std::string_view, 5> words{"-h", "--help", "--help-all", "-v", "--version"};
  const bool enough = std::ranges::any_of(arguments, [&](const char* one) { return std::ranges::find(words, std::string_view(one)) != words.end(); });
  const bool has_screen = qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY");
  if (enough && !has_screen && !qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
}

/// Looked for before the parser is made, whose help it translates.
std::optional<QString> language_asked_for(const QStringList& arguments) {
  const QString option = QStringLiteral("--language");
  for (qsizetype i = 1; i < arguments.size(); ++i) {
    if (arguments[i] == option) return arguments.value(i + 1);
    if (arguments[i].startsWith(option + u'=')) return arguments[i].mid(option.size() + 1);
  }
  return std::nullopt;
}

}  // namespace

WantedFiles wanted_files(const QStringList& files) {
  WantedFiles wanted;
  for (const QString& file : files) {
    if (file.endsWith(QStringLiteral(".gritwright"), Qt::CaseInsensitive)) wanted.record = file;
    else wanted.sieve_tests << file;
  }
  return wanted;
}

int run_desktop(int argc, char** argv) {
  do_without_a_screen_where_words_are_enough({argv, static_cast<std::size_t>(argc)});
  GuardedApplication application(argc, argv);
  QApplication::setOrganizationName(QStringLiteral("Gritwright"));
  QApplication::setApplicationName(QStringLiteral("gritwright-desktop"));
  QApplication::setApplicationVersion(QStringLiteral(GRITWRIGHT_VERSION));
  QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/gritwright.svg")));
  const Settings settings = read_settings();
  use_language(application, language_asked_for(QApplication::arguments()).value_or(settings.language));
  show_labels_plainly(application);
  show_whole_hints(application);
  show_whole_choices(application);
  QCommandLineParser parser;
  parser.setApplicationDescription(QApplication::translate("Application", "Grading, mixes and pots for trees in shallow containers"));
  parser.addHelpOption();
  parser.addVersionOption();
  const QCommandLineOption demo(QStringLiteral("demo"), QApplication::translate("Application", "Open the demonstration."));
  QCommandLineOption shots(QStringLiteral("shots"), QApplication::translate("Application", "Write pictures of the window to DIR and end."), QStringLiteral("DIR"));
  QCommandLineOption looks(QStringLiteral("every-look"), QApplication::translate("Application", "With --shots: also high contrast, other window and text sizes."));
  const QCommandLineOption workbook(QStringLiteral("workbook"), QApplication::translate("Application", "The record to open instead of the usual one."), QStringLiteral("FILE"));
  const QCommandLineOption language(QStringLiteral("language"), QApplication::translate("Application", "Language of the window: de, en, es, fr or ja."), QStringLiteral("CODE"));
  // For those who build it.
  shots.setFlags(QCommandLineOption::HiddenFromHelp);
  looks.setFlags(QCommandLineOption::HiddenFromHelp);
  parser.addOptions({demo, shots, looks, workbook, language});
  parser.addPositionalArgument(QStringLiteral("FILE"), QApplication::translate("Application", "A record to open instead of the usual one, or sieve tests."), QStringLiteral("[FILE...]"));
  if (parser.parse(QApplication::arguments()) && parser.isSet(QStringLiteral("version"))) {
    QTextStream(stdout) << "gritwright-desktop " GRITWRIGHT_VERSION "\nbuilt on Qt " QT_VERSION_STR " and what gritwright --version names\n";
    return 0;
  }
  parser.process(application);

  const auto catalogue = shipped_catalogue();
  if (!catalogue) {
    QTextStream(stderr) << fault_text(catalogue.problems().front()) << '\n';
    return 4;
  }
  Bench bench(*catalogue);
  if (parser.isSet(shots)) return write_screenshots(application, bench, parser.value(shots), parser.isSet(looks));
  apply_theme(application, settings.theme.value_or(system_theme(QApplication::palette())), settings.text_percent);
  // Owned here and not by the application: windows still open at the end must go while it is whole.
  QObject demonstrations;
  const auto show_demonstration = [&bench, &demonstrations] { return new DemonstrationWindow(bench.catalogue(), &demonstrations); };
  if (parser.isSet(demo)) {
    DemonstrationWindow* shown = show_demonstration();
    QObject::connect(&shown->window(), &MainWindow::demonstration_wanted, &application, show_demonstration);
    return QApplication::exec();
  }
  const WantedFiles wanted = wanted_files(parser.positionalArguments());
  const QString usual = parser.isSet(workbook) ? parser.value(workbook) : to_qt(default_workbook_file().string());
  const bool another = !wanted.record.isEmpty() && QFileInfo(wanted.record) != QFileInfo(usual);
  BenchKeeper keeper(bench);
  keeper.turn_to(another ? wanted.record : usual);
  QObject::connect(&application, &QApplication::aboutToQuit, &keeper, &BenchKeeper::save);
  RecordSession session(bench, usual, settings.backups_folder);
  QObject::connect(&session, &RecordSession::window_made, &application, [&](MainWindow* window) {
    keeper.turn_to(session.file());
    QObject::connect(window, &MainWindow::record_wanted, &keeper, &BenchKeeper::save);
    QObject::connect(window, &MainWindow::demonstration_wanted, &application, show_demonstration);
    if (!settings.first_start && session.record() != nullptr) window->show_sieving();
  });
  // The three doors stand open at the first start only; after that they are in the help menu. Said before there is a window, which would write them as it read them.
  Settings started = settings;
  started.first_start = false;
  write_settings(started);
  session.open(another ? wanted.record : usual);
  for (const QString& file : wanted.sieve_tests) session.window().open_sieve_test_file(file);
  return QApplication::exec();
}

}  // namespace gritwright::desktop
