// What somebody else's words or files might do to the window, and must not.
#include <link.h>
#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QFileInfo>
#include <QImage>
#include <QLabel>
#include <QProcess>
#include <QTabWidget>
#include <QTextBrowser>
#include <QToolTip>

#include "models/bench_draft.hpp"
#include "models/bench_files.hpp"
#include "pages/manual_page.hpp"
#include "print/test_sheet.hpp"
#include "support.hpp"
#include "widgets/explanation_popup.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

const QString markup = QStringLiteral("<b>wild</b><img src='/etc/passwd'>");

void check_labels(const char* where) {
  QApplication::processEvents();
  for (QWidget* top : QApplication::topLevelWidgets()) {
    for (const QLabel* label : top->findChildren<QLabel*>()) {
      if (!label->isVisible()) continue;
      INFO(where << ": " << label->objectName().toStdString() << " " << label->text().toStdString());
      CHECK(label->textFormat() != Qt::AutoText);
      CHECK_FALSE((label->textFormat() == Qt::RichText && label->text().contains(QStringLiteral("<img"))));
    }
  }
}

}  // namespace

TEST_CASE("A socket for the internet ends whoever asks for it, and no library that talks to a network is loaded", "[security][refuses]") {
  const pid_t child = ::fork();
  if (child == 0) ::_exit(::socket(AF_INET, SOCK_STREAM, 0) < 0 ? 1 : 0);
  int how = 0;
  REQUIRE(::waitpid(child, &how, 0) == child);
  CHECK(WIFEXITED(how));
  CHECK(WEXITSTATUS(how) == 99);
  QStringList libraries;
  dl_iterate_phdr(
      [](dl_phdr_info* info, std::size_t, void* list) {
        static_cast<QStringList*>(list)->append(QFileInfo(QString::fromLocal8Bit(info->dlpi_name)).fileName());
        return 0;
      },
      &libraries);
  REQUIRE_FALSE(libraries.filter(QStringLiteral("Qt6Widgets")).isEmpty());
  for (const char* talker : {"Network", "WebEngine", "libcurl", "libssl"}) {
    INFO(talker);
    CHECK(libraries.filter(QLatin1String(talker)).isEmpty());
  }
}

TEST_CASE("A name with markup in it is shown as it was typed, in labels, tips and explanations", "[security][law]") {
  OpenWindow open;
  BenchState state = complete_bench();
  state.mix_name = markup;
  for (ComponentSheet& component : state.components) component.name = markup;
  open.bench.open(state);
  const std::string words = markup.toStdString();
  Bag bag;
  bag.material = words;
  bag.lot = words;
  bag.note = words;
  const QString bag_id = open.record->add(bag, markup);
  REQUIRE_FALSE(bag_id.isEmpty());
  Tree tree;
  tree.name = words;
  tree.species = words;
  tree.note = words;
  tree.conditions.push_back({"2026-03-01", Condition::watch, words});
  const QString tree_id = open.record->add(tree, markup);
  RepottingDay day;
  day.day = "2026-03-14";
  day.name = words;
  DayTree line;
  line.tree = Id<Tree>{tree_id.toStdString()};
  line.note = words;
  day.trees.push_back(line);
  REQUIRE_FALSE(open.record->add(day, markup).isEmpty());
  for (const QAction* action : open.window.findChildren<QAction*>()) {
    const QString name = action->objectName();
    if (!name.startsWith(QStringLiteral("action_page_")) && !name.startsWith(QStringLiteral("action_show_"))) continue;
    open.trigger(name.toLatin1().constData());
    check_labels(name.toLatin1().constData());
    for (QTabWidget* tabs : open.window.findChildren<QTabWidget*>()) {
      for (int tab = 0; tabs->isVisible() && tab < tabs->count(); ++tab) {
        tabs->setCurrentIndex(tab);
        check_labels(name.toLatin1().constData());
      }
    }
  }
  auto* how_so = new ExplanationPopup(markup, markup, &open.window);
  how_so->open_beside(&open.window);
  check_labels("how so");
  CHECK(how_so->findChild<QLabel*>(QStringLiteral("explanation_text"))->text() == markup);
  how_so->close();
  QToolTip::showText(open.window.mapToGlobal(QPoint(20, 20)), markup, &open.window);
  check_labels("tip");
  QToolTip::hideText();
}

TEST_CASE("A name with markup in it is printed as it was typed", "[security][law]") {
  OpenWindow open;
  BenchState state = complete_bench();
  state.components.front().name = markup;
  open.bench.open(state);
  const QString file = open.folder.filePath(QStringLiteral("sheet.pdf"));
  REQUIRE(write_test_sheet(open.bench, file, false));
  QProcess reading;
  reading.start(QStringLiteral(GRITWRIGHT_PDFTOTEXT), {QStringLiteral("-layout"), file, QStringLiteral("-")});
  REQUIRE(reading.waitForFinished());
  const QString text = QString::fromUtf8(reading.readAllStandardOutput()).simplified();
  INFO(text.toStdString());
  CHECK(text.contains(QStringLiteral("<b>wild</b>")));
}

TEST_CASE("A link of the manual leads to its own pages and nowhere else", "[security][refuses]") {
  OpenWindow open;
  open.trigger("action_manual");
  auto* reader = open.find<QTextBrowser>("manual_text");
  CHECK_FALSE(reader->openLinks());
  CHECK_FALSE(reader->openExternalLinks());
  const QUrl here = reader->source();
  for (const char* link : {"https://example.org/", "file:///etc/passwd", "/etc/passwd", "../../../../etc/passwd", "qrc:/docs/../../etc/passwd", "mailto:somebody@example.org"}) {
    INFO(link);
    emit reader->anchorClicked(QUrl(QString::fromLatin1(link)));
    CHECK(reader->source() == here);
    const QVariant image = reader->loadResource(QTextDocument::ImageResource, QUrl(QString::fromLatin1(link)));
    CHECK(image.value<QImage>().isNull());
  }
}

TEST_CASE("What lies on the bench is kept in a file that is the owner's alone", "[security]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("bench.draft"));
  for (int times = 0; times < 2; ++times) {
    REQUIRE(write_draft(file, complete_bench()));
    CHECK((QFileInfo(file).permissions() & (QFileDevice::ReadGroup | QFileDevice::WriteGroup | QFileDevice::ReadOther | QFileDevice::WriteOther)) == 0);
  }
}

TEST_CASE("A folder, a device and a huge file are told, not read", "[security][refuses]") {
  const QTemporaryDir folder;
  const QString huge = folder.filePath(QStringLiteral("huge.csv"));
  QFile file(huge);
  REQUIRE(file.open(QIODevice::WriteOnly));
  REQUIRE(file.resize(qint64{3} << 30));
  file.close();
  for (const QString& path : {folder.path(), huge, QStringLiteral("/dev/zero"), QStringLiteral("/dev/stdin")}) {
    INFO(path.toStdString());
    CHECK_FALSE(open_sieve_test(path).ok());
  }
}
