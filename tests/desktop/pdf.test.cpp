// Printed pages as a reader of PDF files sees them: their text by pdftotext, their look by pdftoppm (poppler-utils).
#include "print/pdf.hpp"

#include <QFile>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <array>
#include <catch2/catch.hpp>

#include "gritwright/report/day_sheet.hpp"
#include "gritwright/report/root_plan_sheet.hpp"
#include "support.hpp"
#include "text.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

const std::string long_name = "The crooked one from the northern slope that stood behind the greenhouse for eleven years and never lost a branch";
const std::string unbroken_name = "T" + std::string(90, 'x') + "end";

PlannedDay large_day(int trees) {
  PlannedDay day;
  day.name = "invented spring day";
  day.day = "2026-03-14";
  day.sheet_revision = 4;
  for (int m = 0; m < 12; ++m) {
    DayMix mix;
    mix.name = "mix " + std::to_string(m + 1);
    for (int k = 0; k < 3; ++k) {
      Component grain;
      grain.name = "bag " + std::to_string((m + k) % 9);
      grain.parts = Parts(1 + k);
      grain.grain.bulk_density = bulk_g_l(500);
      grain.grain.particle_density = particle_g_l(950);
      grain.sizes = SingleSize{aperture_mm(3.0 + k)};
      mix.mix.components.push_back(grain);
    }
    mix.mix.settling = Settling(0.08);
    day.mixes.push_back(mix);
  }
  for (int i = 0; i < trees; ++i) {
    PlannedTree tree;
    tree.name = "T-" + std::to_string(100 + i);
    tree.species = "invented pine";
    tree.mix = "mix " + std::to_string(i % 12 + 1);
    tree.fill = pot_ml(1500 + 30 * i);
    day.trees.push_back(tree);
  }
  day.trees[0].name = long_name;
  day.trees[1].name = unbroken_name;
  day.tub = loose_l(20);
  day.scoop = loose_l(0.5);
  return day;
}

DayAnswer answered(const PlannedDay& day) {
  auto answer = work_out(day);
  REQUIRE(answer);
  return *answer;
}

QByteArray output_of(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  REQUIRE(process.waitForFinished(60000));
  INFO(program.toStdString() << " " << process.readAllStandardError().toStdString());
  REQUIRE(process.exitCode() == 0);
  return process.readAllStandardOutput();
}

struct Printed {
  QTemporaryDir folder;
  QString file = folder.filePath(QStringLiteral("sheet.pdf"));

  QString text() const { return QString::fromUtf8(output_of(QStringLiteral(GRITWRIGHT_PDFTOTEXT), {QStringLiteral("-layout"), file, QStringLiteral("-")})); }
  QString flowing_text() const {
    return QString::fromUtf8(output_of(QStringLiteral(GRITWRIGHT_PDFTOTEXT), {file, QStringLiteral("-")})).simplified();
  }
  QList<QImage> pages() const {
    output_of(QStringLiteral(GRITWRIGHT_PDFTOPPM), {QStringLiteral("-r"), QStringLiteral("50"), QStringLiteral("-png"), file, folder.filePath(QStringLiteral("page"))});
    QList<QImage> images;
    for (const QString& name : QDir(folder.path()).entryList({QStringLiteral("page*.png")}, QDir::Files, QDir::Name)) images << QImage(folder.filePath(name));
    return images;
  }
};

/// Nothing is drawn within `margin_px` of the paper's edge; something is drawn inside; every pixel is a grey.
void check_look(const QImage& page, int margin_px) {
  int inked = 0, coloured = 0, at_the_edge = 0;
  for (int y = 0; y < page.height(); ++y)
    for (int x = 0; x < page.width(); ++x) {
      const QColor pixel = page.pixelColor(x, y);
      if (std::abs(pixel.red() - pixel.green()) > 8 || std::abs(pixel.red() - pixel.blue()) > 8) ++coloured;
      if (pixel.red() > 200) continue;
      ++inked;
      if (x < margin_px || y < margin_px || x >= page.width() - margin_px || y >= page.height() - margin_px) ++at_the_edge;
    }
  CHECK(inked > 50);
  CHECK(coloured == 0);
  CHECK(at_the_edge == 0);
}

}  // namespace

TEST_CASE("A day sheet of sixty trees prints every name in full on numbered pages", "[pdf][rounds]") {
  const PlannedDay day = large_day(60);
  const PrintDocument sheet = day_sheet(day, answered(day), UnitSystem::metric);
  for (const Paper paper : {Paper::a4, Paper::letter}) {
    Printed printed;
    REQUIRE(write_pdf(sheet, printed.file, paper));
    const QString text = printed.text();
    const QString flowing = printed.flowing_text();
    for (int i = 2; i < 60; ++i) CHECK(text.contains(QStringLiteral("T-%1").arg(100 + i)));
    // A name that is wrapped stands in its cell line by line.
    QString whole = flowing;
    whole.remove(QLatin1Char(' '));
    CHECK(whole.contains(QString::fromStdString(unbroken_name)));
    for (const char* word : {"crooked", "greenhouse", "eleven", "branch"}) CHECK(flowing.contains(QLatin1String(word)));
    const QList<QImage> pages = printed.pages();
    CHECK(pages.size() > 2);
    for (int number = 1; number <= pages.size(); ++number) CHECK(text.contains(QStringLiteral("page %1 of %2").arg(number).arg(pages.size())));
    CHECK(flowing.count(QStringLiteral("sheet revision 4")) >= pages.size());
    for (const QImage& page : pages) check_look(page, 12);
    const QSize size = pages.front().size();
    const double ratio = static_cast<double>(size.height()) / size.width();
    CHECK(std::abs(ratio - (paper == Paper::a4 ? 297.0 / 210 : 11 / 8.5)) < 0.01);
  }
}

TEST_CASE("A day sheet breaks no number and no word of a mix, a pot or a grain in two", "[pdf][regression]") {
  PlannedDay day = large_day(2);
  const std::array<std::array<const char*, 3>, 2> named{{{"TR-09 seed maple", "Acer buergerianum", "broadleaf"}, {"TR-02 twin pine", "Pinus parviflora", "coarse bed"}}};
  for (std::size_t i = 0; i < 2; ++i) {
    PlannedTree& tree = day.trees[i];
    tree.name = named[i][0];
    tree.species = named[i][1];
    tree.mix = named[i][2];
    day.mixes[i].name = named[i][2];
    tree.pot = i == 0 ? "POT-13 round 13" : "POT-06 tray 06";
    Container& pot = day.pots[tree.pot];
    pot.rim = {length_cm(40), length_cm(30)};
    pot.depth = depth_cm(8);
    tree.helper = "second bench";
    tree.bud = "swelling";
    tree.layers = {{"sphagnum", pot_ml(280), {}}};
    tree.fill = pot_ml(3900);
  }
  const PrintDocument sheet = day_sheet(day, answered(day), UnitSystem::metric);
  for (const Paper paper : {Paper::a4, Paper::letter}) {
    Printed printed;
    REQUIRE(write_pdf(sheet, printed.file, paper));
    const QString text = printed.text();
    for (const char* word : {"buergerianum", "broadleaf", "POT-13", "POT-06", "plan", "scoops", "swelling", "second", "sphagnum"}) {
      INFO(word);
      CHECK(text.contains(QLatin1String(word)));
    }
    // Of the table alone: 3.9 L in the pot / (1 - .08) to pour; nothing is spilt here.
    const QString rows = text.mid(text.indexOf(QStringLiteral("Trees in working order")));
    CHECK(rows.contains(QRegularExpression(QStringLiteral("4.24[ \\x{a0}]L"))));
  }
}

TEST_CASE("Each tree's root plan starts a page of its own", "[pdf]") {
  PrintDocument sheet;
  sheet.title = "Root-mass plans";
  for (const char* tree : {"seed maple", "twin pine", "hornbeam"}) sheet.sections.push_back({tree, {PrintText{"a line"}}, true});
  Printed printed;
  REQUIRE(write_pdf(sheet, printed.file, Paper::a4));
  const QStringList pages = printed.text().split(QChar::FormFeed, Qt::SkipEmptyParts);
  REQUIRE(pages.size() == 3);
  CHECK(pages[0].contains(QStringLiteral("Root-mass plans")));
  CHECK(pages[0].contains(QStringLiteral("seed maple")));
  CHECK(pages[2].contains(QStringLiteral("hornbeam")));
}

TEST_CASE("The heading of a table stands on every page that the table runs over", "[pdf]") {
  const PlannedDay day = large_day(60);
  Printed printed;
  REQUIRE(write_pdf(day_sheet(day, answered(day), UnitSystem::metric), printed.file, Paper::a4));
  const QStringList pages = printed.text().split(QChar::FormFeed);
  int pages_with_trees = 0;
  for (const QString& page : pages) {
    if (!page.contains(QStringLiteral("T-1"))) continue;
    ++pages_with_trees;
    if (page.contains(QStringLiteral("invented pine"))) CHECK(page.contains(QStringLiteral("done:")));
  }
  CHECK(pages_with_trees > 1);
}

TEST_CASE("A batch card is never torn in two by the end of a page", "[pdf]") {
  const PlannedDay day = large_day(60);
  const PrintDocument cards = batch_cards(day, answered(day), UnitSystem::metric);
  Printed printed;
  REQUIRE(write_pdf(cards, printed.file, Paper::a4));
  int seen = 0;
  for (const QString& page : printed.text().split(QChar::FormFeed)) {
    const qsizetype titles = page.count(QStringLiteral(", batch "));
    CHECK(page.count(QStringLiteral("left over")) == titles);
    seen += static_cast<int>(titles);
  }
  CHECK(seen == static_cast<int>(cards.sections.size()));
}

TEST_CASE("Long names of trees, mixes and grain are whole on batch cards, and so are layers on the day sheet", "[pdf][rounds]") {
  const std::string long_mix = "The mix for those that stand in the wind all summer and want water twice a day nevertheless, third attempt";
  const std::string long_grain = "washed and twice screened crushed pumice of the second delivery from the quarry behind the old railway bridge";
  PlannedDay day = large_day(14);
  day.mixes[0].name = long_mix;
  day.mixes[0].mix.components[0].name = long_grain;
  for (PlannedTree& tree : day.trees) {
    if (tree.mix == "mix 1") tree.mix = long_mix;
  }
  day.trees[2].layers = {{"long-fibred sphagnum from the shaded end of the nursery pond, wrung out", pot_ml(900), {}}};
  const DayAnswer answer = answered(day);
  for (const Paper paper : {Paper::a4, Paper::letter}) {
    Printed cards;
    REQUIRE(write_pdf(batch_cards(day, answer, UnitSystem::metric), cards.file, paper));
    const QString text = cards.flowing_text();
    for (const char* word : {"crooked", "greenhouse", "branch", "summer", "nevertheless", "attempt", "twice screened", "quarry", "railway"}) {
      INFO(word);
      CHECK(text.contains(QLatin1String(word)));
    }
    QString whole = text;
    whole.remove(QLatin1Char(' '));
    CHECK(whole.contains(QString::fromStdString(unbroken_name)));
    const QList<QImage> pages = cards.pages();
    for (int number = 1; number <= pages.size(); ++number) CHECK(text.contains(QStringLiteral("page %1 of %2").arg(number).arg(pages.size())));
    for (const QImage& page : pages) check_look(page, 12);
    Printed sheet;
    REQUIRE(write_pdf(day_sheet(day, answer, UnitSystem::metric), sheet.file, paper));
    for (const char* word : {"sphagnum", "shaded", "nursery", "wrung"}) {
      INFO(word);
      CHECK(sheet.flowing_text().contains(QLatin1String(word)));
    }
    for (const QImage& page : sheet.pages()) check_look(page, 12);
  }
}

TEST_CASE("Printed pages hold lines and letters, no images", "[pdf]") {
  PrintDocument document;
  document.title = "drawing";
  PrintDrawing drawing{"side view", 80, 40, {}, {{{2, 10}, "soil line"}}};
  drawing.lines.push_back({{{5, 5}, {70, 5}, {70, 35}, {5, 35}}, Ink::hatched});
  drawing.lines.push_back({{{10, 10}, {60, 10}, {60, 30}}, Ink::grey});
  drawing.lines.push_back({{{0, 20}, {80, 20}}, Ink::dashed});
  document.sections.push_back({"picture", {drawing}});
  Printed printed;
  REQUIRE(write_pdf(document, printed.file, Paper::a4));
  CHECK(printed.text().contains(QStringLiteral("soil line")));
  QFile file(printed.file);
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK_FALSE(file.readAll().contains("/Subtype /Image"));
  const QList<QImage> pages = printed.pages();
  REQUIRE(pages.size() == 1);
  check_look(pages.front(), 12);
}

TEST_CASE("A root-plan sheet prints its pictures, plans and stop table", "[pdf]") {
  RootMassPlan plan;
  plan.name = long_name;
  plan.group = SpeciesGroup::deciduous_developing;
  plan.block = BlockBox{BlockForm::elliptic, length_cm(26), length_cm(18), length_cm(10), {}};
  plan.trunk_base = TreePoint{Length{}, Length{}, length_cm(8)};
  plan.pot.rim = {length_cm(36), length_cm(26)};
  plan.pot.depth = depth_cm(8);
  const auto answer = work_out(plan);
  REQUIRE(answer);
  REQUIRE_FALSE(answer->stop_table.empty());
  Printed printed;
  REQUIRE(write_pdf(root_plan_sheet(plan, *answer, UnitSystem::metric), printed.file, Paper::letter));
  const QString text = printed.flowing_text();
  for (const char* word : {"crooked", "branch", "Plan A", "soil line", "from above", "the upper cut stops at", "untouched"}) {
    INFO(word);
    CHECK(text.contains(QLatin1String(word)));
  }
  for (const QImage& page : printed.pages()) check_look(page, 12);
}

TEST_CASE("Pot labels print every line, several to a row", "[pdf]") {
  const PlannedDay day = large_day(40);
  Printed printed;
  REQUIRE(write_pdf(pot_labels(day, answered(day)), printed.file, Paper::letter));
  QString text = printed.flowing_text();
  for (int i = 2; i < 40; ++i) CHECK(text.contains(QStringLiteral("T-%1").arg(100 + i)));
  for (const char* word : {"crooked", "greenhouse", "branch"}) CHECK(text.contains(QLatin1String(word)));
  text.remove(QLatin1Char(' '));
  CHECK(text.contains(QString::fromStdString(unbroken_name)));
  const QList<QImage> pages = printed.pages();
  CHECK(pages.size() >= 2);
  for (const QImage& page : pages) check_look(page, 12);
}

TEST_CASE("A sheet that cannot be written says so and leaves nothing behind", "[pdf][refuses]") {
  const auto written = write_pdf(PrintDocument{"a", "", "", {}}, QStringLiteral("/no such folder/sheet.pdf"), Paper::a4);
  REQUIRE_FALSE(written);
  CHECK(written.problems().front().code == "file.write-failed");
  CHECK_FALSE(QFile::exists(QStringLiteral("/no such folder/sheet.pdf")));
}

TEST_CASE("A day sheet is printed in the reader's language with its decimal mark", "[pdf][translation]") {
  const WithLanguage german("de");
  const PlannedDay day = large_day(3);
  Printed printed;
  REQUIRE(write_pdf(day_sheet(day, answered(day), UnitSystem::metric, translated), printed.file, Paper::a4));
  const QString text = printed.flowing_text();
  for (const char* german_words : {"Blattfassung 4", "3 Bäume", "Bäume in Arbeitsfolge", "Am Abend davor", "Staub: Trockenes Korn", "3 bis 6 Wochen kein Dünger"}) {
    INFO(german_words);
    CHECK(text.contains(QString::fromUtf8(german_words)));
  }
  CHECK(text.contains(QRegularExpression(QStringLiteral("[0-9],[0-9]+ L"))));
  CHECK_FALSE(text.contains(QRegularExpression(QStringLiteral("[0-9]\\.[0-9]+ L"))));
  CHECK_FALSE(text.contains(QStringLiteral("Trees")));
}
