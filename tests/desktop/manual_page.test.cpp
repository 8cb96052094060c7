#include <QFile>
#include <QListWidget>
#include <QPushButton>
#include <QRegularExpression>
#include <QStackedWidget>
#include <QTextBlock>
#include <QTextBrowser>
#include <QTextDocument>
#include <QToolButton>
#include <filesystem>
#include <set>

#include "charts/picture_tabs.hpp"
#include "models/demonstration_record.hpp"
#include "models/figures.hpp"
#include "pages/manual_page.hpp"
#include "pages/mix_page.hpp"
#include "support.hpp"
#include "support/paths.hpp"

using namespace gritwright::desktop;

namespace {

std::vector<QString> pages_under(const char* folder) {
  std::vector<QString> pages;
  for (const auto& entry : std::filesystem::directory_iterator(std::filesystem::path(GRITWRIGHT_SOURCE_DIR) / "docs" / folder)) {
    if (entry.path().extension() == ".md") pages.push_back(QString::fromStdString(std::string(folder) + '/' + entry.path().stem().string()));
  }
  return pages;
}

QString text_of(const QString& page) {
  QFile file(QStringLiteral(":/docs/%1.md").arg(page));
  INFO(page.toStdString() << " is listed in src/desktop/CMakeLists.txt");
  REQUIRE(file.open(QIODevice::ReadOnly));
  return QString::fromUtf8(file.readAll());
}

}  // namespace

TEST_CASE("F1 opens the chapter of every room, and F1 again goes back to the work", "[manual]") {
  OpenWindow open;
  const auto chapter_of = [&](const char* action) {
    open.trigger(action);
    QWidget* room = open.window.pages().currentWidget();
    open.trigger("action_manual");
    const QString chapter = open.window.manual_page().current();
    CHECK(open.window.pages().currentWidget() == &open.window.manual_page());
    CHECK(open.find<QTextBrowser>("manual_text")->toPlainText().size() > 500);
    open.trigger("action_manual");
    CHECK(open.window.pages().currentWidget() == room);
    return chapter;
  };
  CHECK(chapter_of("action_page_bags") == QStringLiteral("manual/receiving_bags"));
  CHECK(chapter_of("action_page_sieving") == QStringLiteral("manual/sieving"));
  CHECK(chapter_of("action_show_pot") == QStringLiteral("manual/mixes"));
  CHECK(chapter_of("action_find_parts") == QStringLiteral("manual/finding_parts"));
  CHECK(chapter_of("action_page_trees") == QStringLiteral("manual/pots_and_trees"));
  CHECK(chapter_of("action_page_day") == QStringLiteral("manual/repotting_day"));
  CHECK(chapter_of("action_page_log") == QStringLiteral("manual/log_and_tracing"));
  CHECK(chapter_of("action_settings") == QStringLiteral("manual/settings"));
  CHECK(chapter_of("action_welcome") == QStringLiteral("manual/desktop"));
}

TEST_CASE("F1 in a pot test or on how tests fared opens what tells about them, in another measurement that of the bag", "[manual]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  const auto chapter = [&] {
    open.trigger("action_manual");
    const QString opened = open.window.manual_page().current();
    open.trigger("action_manual");
    return opened;
  };
  open.trigger("action_pot_test");
  CHECK(chapter() == QStringLiteral("manual/how_sure"));
  open.trigger("action_page_bags");
  open.trigger("action_measure");
  CHECK(chapter() == QStringLiteral("manual/receiving_bags"));
  open.trigger("action_show_scores");
  open.window.mix_page().pictures().setFocus();
  CHECK(chapter() == QStringLiteral("manual/how_sure"));
}

TEST_CASE("Every chapter is compiled in and listed, and every link and picture in it leads somewhere", "[manual]") {
  ManualPage manual;
  manual.open(QStringLiteral("manual/desktop"));
  std::set<QString> listed;
  const auto* list = manual.findChild<QListWidget*>(QStringLiteral("manual_contents"));
  for (int row = 0; row < list->count(); ++row) listed.insert(list->item(row)->data(Qt::UserRole).toString());
  std::vector<QString> pages = pages_under("manual");
  for (const QString& page : pages_under("science")) pages.push_back(page);
  static const QRegularExpression link(QStringLiteral("\\]\\(([^)]+)\\)"));
  for (const QString& page : pages) {
    INFO(page.toStdString());
    CHECK(listed.contains(page));
    const QString text = text_of(page);
    CHECK(text.startsWith(QStringLiteral("# ")));
    if (!page.startsWith(QStringLiteral("manual/"))) continue;
    const QUrl here(QStringLiteral("qrc:/docs/%1.md").arg(page));
    for (auto found = link.globalMatch(text); found.hasNext();) {
      const QString target = found.next().captured(1);
      INFO(target.toStdString());
      CHECK(QFile::exists(u':' + here.resolved(QUrl(target)).path()));
      if (target.endsWith(QStringLiteral("_light.png"))) {
        QString dark = target;
        CHECK(QFile::exists(u':' + here.resolved(QUrl(dark.replace(QStringLiteral("_light"), QStringLiteral("_dark")))).path()));
      }
    }
  }
}

TEST_CASE("The search finds a word in the manual, marks it, and says when it is nowhere", "[manual]") {
  OpenWindow open;
  open.trigger("action_manual_contents");
  ManualPage& manual = open.window.manual_page();
  auto* list = open.find<QListWidget>("manual_contents");
  const int all = list->count();
  manual.search(QStringLiteral("vermiculite asbestos"));
  CHECK(list->count() == 1);
  list->setCurrentRow(0);
  CHECK(manual.current() == QStringLiteral("manual/receiving_bags"));
  CHECK_FALSE(open.find<QTextBrowser>("manual_text")->extraSelections().isEmpty());
  manual.search(QStringLiteral("zzqx"));
  CHECK(list->count() == 0);
  manual.search({});
  CHECK(list->count() == all);
}

TEST_CASE("Links in the manual are underlined, not only coloured", "[manual][accessibility]") {
  OpenWindow open;
  open.press(Qt::Key_F1);
  const QTextDocument& page = *open.find<QTextBrowser>("manual_text")->document();
  int links = 0;
  for (QTextBlock block = page.begin(); block.isValid(); block = block.next()) {
    for (auto at = block.begin(); !at.atEnd(); ++at) {
      const QTextCharFormat format = at.fragment().charFormat();
      if (!format.isAnchor()) continue;
      ++links;
      CHECK(format.fontUnderline());
    }
  }
  CHECK(links > 0);
}

TEST_CASE("A link that is not part of the manual is not followed", "[manual][refuses]") {
  OpenWindow open;
  open.trigger("action_manual_contents");
  auto* reader = open.find<QTextBrowser>("manual_text");
  const QUrl before = reader->source();
  emit reader->anchorClicked(QUrl(QStringLiteral("https://example.invalid/")));
  emit reader->anchorClicked(QUrl(QStringLiteral("file:///etc/hostname")));
  CHECK(reader->source() == before);
}

TEST_CASE("\"How so?\" reads on in the science page it names, and F1 goes back to the figure", "[manual]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  QApplication::processEvents();
  open.find<QToolButton>("how_air_filled_porosity")->click();
  QWidget* room = open.window.pages().currentWidget();
  open.find<QPushButton>("read_on_water")->click();
  QApplication::processEvents();
  CHECK(open.window.manual_page().current() == QStringLiteral("science/water"));
  open.trigger("action_manual");
  CHECK(open.window.pages().currentWidget() == room);
}

TEST_CASE("Every science page that a figure of the bench names is in the manual", "[manual][law]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  static const QRegularExpression named(QStringLiteral("docs/(science/[^ ;,]+)\\.md"));
  int seen = 0;
  for (const FigureGroup& group : bench_figures(open.bench)) {
    for (const Figure& figure : group.figures) {
      for (auto found = named.globalMatch(explanation_text(figure)); found.hasNext(); ++seen) CHECK_FALSE(text_of(found.next().captured(1)).isEmpty());
    }
  }
  CHECK(seen > 10);
}
