#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <algorithm>
#include <cmath>
#include <tuple>

#include "charts/lot_chart.hpp"
#include "charts/score_view.hpp"
#include "gritwright/formats/record_file.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "models/lot_history.hpp"
#include "models/verdict_figures.hpp"
#include "pages/measure_page.hpp"
#include "pages/mix_page.hpp"
#include "record_pages.hpp"
#include "support.hpp"
#include "widgets/protocol_drawing.hpp"

using namespace gritwright;
using namespace gritwright::desktop;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

void type_measured(OpenWindow& open, const std::string& key, const char* text) {
  auto* field = open.find<QLineEdit>(("measure_" + key).c_str());
  field->setFocus();
  field->selectAll();
  open.type(QString::fromLatin1(text));
}

void choose_protocol(OpenWindow& open, Protocol protocol) {
  auto* box = open.find<QComboBox>("measure_protocol");
  box->setCurrentIndex(box->findData(static_cast<int>(protocol)));
  emit box->activated(box->currentIndex());
}

QString measured_figure(OpenWindow& open, const char* key) { return open.find<QLabel>((std::string("figure_measured_") + key).c_str())->text(); }

Bag measured_bag(const OpenWindow& open) { return open.record->workbook().all<Bag>().front().record; }

/// A bag of pumice on the measuring page.
void measure_new_bag(OpenWindow& open) {
  open.trigger("action_receive_bags");
  open.find<QPushButton>("bag_measure")->click();
}

void type_whole_jug(OpenWindow& open) {
  type_measured(open, "jug", "200");
  type_measured(open, "filled", "650");
  type_measured(open, "volume", "1");
  type_measured(open, "worked_in", "0.9");
}

SieveTest test_with_dust(double dust_g) {
  SieveTest test;
  test.dry_mass = mass_g(500);
  test.resolution = mass_g(0.1);
  test.rows = {{aperture_mm(8), mass_g(0), {}}, {aperture_mm(4), mass_g(200), {}}, {aperture_mm(2), mass_g(300 - dust_g), {}}};
  test.pan = mass_g(dust_g);
  return test;
}

QString add_sieved_bag(OpenWindow& open, const std::string& id, double dust_g) {
  Bag bag;
  bag.material = "pumice";
  bag.received = "2026-0" + std::to_string(1 + open.record->workbook().count(RecordKind::bag)) + "-10";
  const QString added = open.record->add(bag, QStringLiteral("bag"), QString::fromStdString(id));
  RecordedSieveTest test;
  test.test = test_with_dust(dust_g);
  test.test.date = bag.received;
  test.of = RecordRef{RecordKind::bag, id};
  open.record->add(test, QStringLiteral("test"));
  return added;
}

}  // namespace

TEST_CASE("A litre weight by jug is kept with its bag and in the log in one step, and undone in one", "[measuring]") {
  OpenWindow open;
  measure_new_bag(open);
  CHECK_FALSE(open.find<QPushButton>("measure_keep")->isEnabled());
  CHECK(open.find<QLabel>("measure_state")->text().contains(QStringLiteral("Empty jug")));
  type_whole_jug(open);
  CHECK(measured_figure(open, "bulk_density") == local("450 g/L"));
  CHECK(measured_figure(open, "worked_in_density") == local("500 g/L"));
  CHECK(measured_figure(open, "settling") == local("10.0 %"));
  const auto lines = open.record->workbook().count(RecordKind::log_entry);
  open.find<QPushButton>("measure_keep")->click();
  CHECK_THAT(in_g_l(*measured_bag(open).bulk_density), WithinRel(450, 1e-9));
  CHECK_THAT(in_g_l(*measured_bag(open).worked_in_density), WithinRel(500, 1e-9));
  CHECK(open.record->workbook().count(RecordKind::log_entry) == lines + 1);
  CHECK(open.find<QLineEdit>("measure_jug")->text().isEmpty());
  // That it was kept stands beside the empty form until the next measurement begins, and its first field is ready for it.
  CHECK(open.find<QLabel>("measure_state")->text().startsWith(QStringLiteral("Kept: Weighed a jug")));
  CHECK(open.window.focusWidget() == open.find<QLineEdit>("measure_jug"));
  CHECK(open.find<QLabel>("measure_state")->text().contains(local("450 g/L loose and dry, 500 g/L worked in")));
  // Nothing was typed into it yet, so the key for undo is the record's; then it is the line's.
  const auto claims_undo = [&] {
    QKeyEvent key(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier);
    key.ignore();
    QApplication::sendEvent(open.find<QLineEdit>("measure_jug"), &key);
    return key.isAccepted();
  };
  CHECK_FALSE(claims_undo());
  open.record->undo();
  CHECK(open.find<QLabel>("measure_state")->text().startsWith(QStringLiteral("Still to type")));
  open.record->redo();
  type_measured(open, "jug", "201");
  CHECK(claims_undo());
  CHECK(open.find<QLabel>("measure_state")->text().startsWith(QStringLiteral("Still to type")));
  CHECK(open.record->undo_text().contains(QStringLiteral("litre weight")));
  open.record->undo();
  CHECK_FALSE(measured_bag(open).bulk_density.has_value());
  open.record->redo();
  CHECK(measured_bag(open).bulk_density.has_value());
}

TEST_CASE("What is implausible is asked about and kept all the same, what is impossible is not", "[measuring][refuses]") {
  OpenWindow open;
  measure_new_bag(open);
  const auto colour = [&] { return open.find<QLabel>("measure_state")->palette().color(QPalette::WindowText); };
  const QColor plain = colour();
  type_whole_jug(open);
  CHECK_FALSE(open.find<QLabel>("measure_questions")->isVisible());
  type_measured(open, "filled", "3400");
  CHECK(open.find<QLabel>("measure_questions")->isVisible());
  CHECK(open.find<QPushButton>("measure_keep")->isEnabled());
  type_measured(open, "filled", "150");
  CHECK_FALSE(open.find<QPushButton>("measure_keep")->isEnabled());
  CHECK(measured_figure(open, "bulk_density") == QStringLiteral("\u2013"));
  CHECK(colour() != plain);
  type_measured(open, "filled", "700");
  CHECK(colour() == plain);
  type_measured(open, "filled", "6x");
  CHECK(open.find<QLabel>("measure_state")->text().contains(QStringLiteral("Jug with grain")));
  CHECK_FALSE(open.window.record_pages()->measuring().keep());
  CHECK_FALSE(measured_bag(open).bulk_density.has_value());
}

TEST_CASE("Two fills of the jug count as one, and are asked about where they differ", "[measuring]") {
  OpenWindow open;
  measure_new_bag(open);
  type_whole_jug(open);
  type_measured(open, "again", "652");
  CHECK(measured_figure(open, "bulk_density") == local("451 g/L"));
  CHECK_FALSE(open.find<QLabel>("measure_questions")->isVisible());
  // 14 g are 2 % of the jug with its grain and 3.1 % of the grain.
  type_measured(open, "again", "664");
  CHECK(open.find<QLabel>("measure_questions")->isVisible());
}

TEST_CASE("Soaked grain under water gives density and absorption, which the sheet on the bench then uses", "[measuring]") {
  OpenWindow open;
  open.trigger("action_receive_bags");
  open.trigger("action_grade_bag");
  open.trigger("action_measure");
  choose_protocol(open, Protocol::displacement);
  type_measured(open, "soaked", "650");
  type_measured(open, "jug_with_water", "1500");
  type_measured(open, "jug_with_both", "1600");
  type_measured(open, "dry", "500");
  CHECK(measured_figure(open, "particle_density") == local("909 g/L"));
  CHECK(measured_figure(open, "water_absorption") == local("30.0 %"));
  open.find<QPushButton>("measure_keep")->click();
  CHECK_THAT(in_g_l(*measured_bag(open).particle_density), WithinAbs(500 / 0.55, 1e-6));
  CHECK_THAT(measured_bag(open).water_absorption->value(), WithinAbs(0.3, 1e-12));
  const GrainText& grain = open.bench.state().components.front().grain;
  CHECK(grain.particle_density.startsWith(QStringLiteral("909")));
  CHECK(grain.water_absorption == QStringLiteral("30"));
}

TEST_CASE("What soaks for a day is still there when the window opens again", "[measuring]") {
  OpenWindow open;
  measure_new_bag(open);
  choose_protocol(open, Protocol::absorption);
  type_measured(open, "soaked", "130");
  MeasurePage again(*open.record, test_catalogue());
  again.show_protocol(Protocol::absorption);
  CHECK(again.sheet().texts.at(QStringLiteral("soaked")) == QStringLiteral("130"));
  choose_protocol(open, Protocol::jug);
  choose_protocol(open, Protocol::absorption);
  CHECK(open.find<QLineEdit>("measure_soaked")->text() == QStringLiteral("130"));
  type_measured(open, "dry", "100");
  open.window.record_pages()->measuring().keep();
  CHECK_THAT(measured_bag(open).water_absorption->value(), WithinAbs(0.3, 1e-12));
}

TEST_CASE("A crumble test asks for the sieves of the bag's sieve test and keeps how fast the grain breaks", "[measuring]") {
  OpenWindow open;
  add_sieved_bag(open, "P-01", 20);
  open.window.record_pages()->measure(Protocol::crumble, QStringLiteral("P-01"));
  type_measured(open, "rounds", "10");
  type_measured(open, "sieve_1", "0");
  type_measured(open, "sieve_2", "150");
  type_measured(open, "sieve_3", "300");
  CHECK_FALSE(open.find<QPushButton>("measure_keep")->isEnabled());
  type_measured(open, "pan", "50");
  REQUIRE(open.find<QPushButton>("measure_keep")->isEnabled());
  open.find<QPushButton>("measure_keep")->click();
  REQUIRE(measured_bag(open).crumbling.has_value());
  CHECK(measured_bag(open).crumbling->breakages_per_round > 0);
  const auto read = read_record(RecordKind::bag, write_record(Record(measured_bag(open))), "bag");
  REQUIRE(read.ok());
  CHECK(std::get<Bag>(*read) == measured_bag(open));
}

TEST_CASE("Whether it was sieved long enough is written to the sieve test", "[measuring]") {
  OpenWindow open;
  add_sieved_bag(open, "P-01", 20);
  open.window.record_pages()->measure(Protocol::thoroughness, QStringLiteral("P-01"));
  type_measured(open, "specimen", "500");
  type_measured(open, "fallen", "5");
  CHECK(measured_figure(open, "still_passing") == local("1.00 %"));
  CHECK(open.find<QLabel>("measure_questions")->isVisible());
  open.find<QPushButton>("measure_keep")->click();
  const auto test = open.record->workbook().all<RecordedSieveTest>().front().record;
  CHECK(test.note.find("not thorough") != std::string::npos);
}

TEST_CASE("A pot test calibrates its mix, which the bench then says, and undo takes both back", "[measuring]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  open.find<QLineEdit>("mix_name")->setFocus();
  open.type(QStringLiteral("pines"));
  open.trigger("action_keep_mix");
  const double before = open.bench.evaluation().water->container_capacity.value();
  // A litre of this mix, 6 cm deep, that keeps 3 points less water than was foretold.
  const MixState& state = *open.bench.evaluation().mix_state;
  const auto foretold = mix_in_column(state, RetentionConstants{}, depth_cm(6));
  const double dry_g = std::round(in_g_l(state.settled->bulk_density));
  const double drained_g = dry_g + std::round(1000 * (foretold->container_capacity.value() - 0.03));
  const double flooded_g = dry_g + std::round(1000 * foretold->theta_0.value());
  open.find<QPushButton>("mix_pot_test")->click();
  type_measured(open, "depth", "6");
  type_measured(open, "volume", "1000");
  type_measured(open, "tare", "120");
  type_measured(open, "flooded", QByteArray::number(120 + flooded_g));
  type_measured(open, "drained", QByteArray::number(120 + drained_g));
  type_measured(open, "dry", QByteArray::number(120 + dry_g));
  CHECK(measured_figure(open, "air_filled_porosity") == local(percent_text((flooded_g - drained_g) / 1000).c_str()));
  CHECK(measured_figure(open, "container_capacity") == local(percent_text((drained_g - dry_g) / 1000).c_str()));
  REQUIRE(open.find<QPushButton>("measure_keep")->isEnabled());
  open.find<QPushButton>("measure_keep")->click();
  REQUIRE(open.record->workbook().count(RecordKind::pot_test) == 1);
  const MixVersion kept = open.record->workbook().all<MixVersion>().front().record;
  REQUIRE(kept.calibrated_by.has_value());
  CHECK(kept.calibrated_by->kind == RecordKind::pot_test);
  // Less water stays where the pores are wider.
  CHECK(kept.mix.water.k_cm_mm < RetentionConstants{}.k_cm_mm);
  REQUIRE(open.bench.evaluation().calibration.has_value());
  CHECK(open.bench.evaluation().calibration->belief.has_value());
  CHECK(open.bench.evaluation().water->container_capacity.value() != before);
  CHECK(std::ranges::any_of(open.bench.evaluation().notes, [](const Note& note) { return note.code == "mix.calibrated-by-tests"; }));
  CHECK(open.window.mix_page().scores().tests().size() == 1);
  // Other parts are another mix, which was not tested.
  open.bench.edit(QStringLiteral("parts"), {}, [](BenchState& changed) { changed.components[0].parts = QStringLiteral("7"); });
  CHECK_FALSE(open.bench.evaluation().calibration.has_value());
  open.bench.undo_stack().undo();
  CHECK(open.bench.evaluation().calibration.has_value());
  open.record->undo();
  CHECK(open.record->workbook().count(RecordKind::pot_test) == 0);
  CHECK_FALSE(open.bench.evaluation().calibration.has_value());
  CHECK_THAT(open.bench.evaluation().water->container_capacity.value(), WithinAbs(before, 1e-12));
}

TEST_CASE("A pot test by volumes only gives the air that drained", "[measuring]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  open.find<QLineEdit>("mix_name")->setFocus();
  open.type(QStringLiteral("pines"));
  open.trigger("action_keep_mix");
  open.trigger("action_pot_test");
  choose_protocol(open, Protocol::pot_by_volumes);
  type_measured(open, "depth", "6");
  type_measured(open, "volume", "1000");
  type_measured(open, "poured", "570");
  type_measured(open, "caught", "255");
  CHECK(measured_figure(open, "air_filled_porosity") == local("25.5 %"));
  open.find<QPushButton>("measure_keep")->click();
  CHECK(open.record->workbook().count(RecordKind::pot_test) == 1);
}

TEST_CASE("Predictions are told fine and coarse apart, with bias and root mean square", "[measuring]") {
  CHECK(score_sentence({}).contains(QStringLiteral("No pot test")));
  const std::vector<ComparedTest> tests{{"T-1", "M-01/1", {Porosity(0.25), Porosity(0.22), aperture_mm(1)}}, {"T-2", "M-01/1", {Porosity(0.20), Porosity(0.24), aperture_mm(4)}}};
  const QString sentence = score_sentence(tests);
  CHECK(sentence.contains(local("0.5")));
  CHECK(sentence.contains(local("3.5")));
  CHECK(sentence.contains(local("4.0")));
  const PictureTable table = score_table(tests);
  REQUIRE(table.rows.size() == 2);
  CHECK(table.rows[0].back() == local("3.0"));
  CHECK(table.rows[1][2] == QStringLiteral("coarse"));
}

TEST_CASE("A bag outside the usual range of its material is pointed out with what it would change", "[measuring]") {
  OpenWindow open;
  for (const auto& [id, dust] : {std::pair{"P-01", 20.0}, {"P-02", 24.0}, {"P-03", 19.0}, {"P-04", 22.0}, {"P-05", 23.0}, {"P-06", 140.0}}) add_sieved_bag(open, id, dust);
  Mix mix;
  mix.name = "pines";
  GrainProperties grain = typical_grain(*test_catalogue().find("pumice"));
  mix.components = {{"pumice", Parts(1), grain, SingleSize{aperture_mm(4)}, "pumice"}};
  MixVersion version;
  version.mix = mix;
  REQUIRE_FALSE(open.record->add(version, QStringLiteral("mix"), QStringLiteral("M-01/1")).isEmpty());
  open.window.record_pages()->grade(QStringLiteral("P-06"));
  open.bench.edit(QStringLiteral("band"), {}, [](BenchState& state) {
    state.band_from = QStringLiteral("2");
    state.band_to = QStringLiteral("8");
  });
  const QStringList findings = lot_findings(open.bench);
  REQUIRE_FALSE(findings.isEmpty());
  CHECK(findings.front().contains(local("28.0 %")));
  CHECK(findings.last().contains(QStringLiteral("M-01/1")));
  CHECK(verdict_view(open.bench).lots == findings);
  // It is seen with the verdict, whatever is typed besides.
  open.trigger("action_show_verdict");
  QApplication::processEvents();
  CHECK(open.find<QLabel>("verdict_lots")->isVisible());
  CHECK(open.find<QLabel>("verdict_lots")->text().contains(local("28.0 %")));
  CHECK(lot_sentence(open.bench).contains(QStringLiteral("Outside what is usual")));
  const PictureTable table = lot_table(open.bench);
  REQUIRE(table.rows.size() == 7);
  CHECK(table.rows[5][2] == local("28.0 %"));
  // Without a wanted band the size printed on the bag tells what is dust.
  auto dusty = *open.record->workbook().find(Id<Bag>{"P-06"});
  Bag printed = dusty.record;
  printed.printed_size = SizeBand{aperture_mm(2), aperture_mm(8)};
  REQUIRE(open.record->replace(dusty, printed, QStringLiteral("printed size")));
  open.bench.edit(QStringLiteral("band"), {}, [](BenchState& state) { state.band_from = state.band_to = QString(); });
  CHECK(lot_findings(open.bench) == findings);
  // A bag that came before is compared with those before it, and is as usual.
  open.bench.edit(QStringLiteral("band"), {}, [](BenchState& state) {
    state.band_from = QStringLiteral("2");
    state.band_to = QStringLiteral("8");
  });
  open.window.record_pages()->grade(QStringLiteral("P-05"));
  CHECK(lot_points(open.bench).size() == 5);
  CHECK(verdict_view(open.bench).lots.isEmpty());
}

TEST_CASE("Figures of the bags before follow the band and the grain, whatever was asked before", "[measuring][law]") {
  OpenWindow open;
  for (const auto& [id, dust] : {std::pair{"P-01", 20.0}, {"P-02", 24.0}, {"P-03", 19.0}}) add_sieved_bag(open, id, dust);
  open.window.record_pages()->grade(QStringLiteral("P-03"));
  for (const auto& [from, to, bulk] : {std::tuple{"2", "8", ""}, {"2", "4", ""}, {"2", "4", "500"}, {"2", "8", "500"}, {"2", "8", ""}}) {
    open.bench.edit(QStringLiteral("band"), {}, [&](BenchState& state) {
      state.band_from = QString::fromLatin1(from);
      state.band_to = QString::fromLatin1(to);
      state.components[static_cast<std::size_t>(open.bench.current_component())].grain.bulk_density = QString::fromLatin1(bulk);
    });
    INFO(from << " to " << to << " mm, " << bulk << " g/L");
    const auto& component = open.bench.evaluation().components[static_cast<std::size_t>(open.bench.current_component())].component;
    REQUIRE(component.has_value());
    const auto points = lot_points(open.bench);
    const auto& earlier = open.bench.surroundings().earlier;
    REQUIRE(points.size() == earlier.size() + 1);
    for (std::size_t i = 0; i < earlier.size(); ++i) {
      const LotFigures anew = lot_figures(earlier[earlier.size() - 1 - i].grading, *lot_band(open.bench), component->grain, earlier[earlier.size() - 1 - i].lost);
      for (const LotFigure figure : lot_figure_kinds) CHECK(points[i].figures.of(figure) == anew.of(figure));
    }
  }
}

TEST_CASE("What was lost of an earlier bag or of this one is no dust from lot to lot, as in the verdict", "[measuring][regression]") {
  OpenWindow open;
  for (const char* id : {"P-01", "P-02"}) {
    Bag bag;
    bag.material = "pumice";
    bag.received = std::string("2026-0") + id[3] + "-10";
    open.record->add(bag, QStringLiteral("bag"), QString::fromLatin1(id));
    RecordedSieveTest test;
    test.test = test_with_dust(20);
    test.test.dry_mass = mass_g(505);
    test.test.date = bag.received;
    test.of = RecordRef{RecordKind::bag, id};
    open.record->add(test, QStringLiteral("test"));
  }
  open.window.record_pages()->grade(QStringLiteral("P-02"));
  open.bench.edit(QStringLiteral("band"), {}, [](BenchState& state) {
    state.band_from = QStringLiteral("2");
    state.band_to = QStringLiteral("8");
  });
  const auto points = lot_points(open.bench);
  REQUIRE(points.size() == 2);
  // 20 g of 505 g lay in the pan; 5 g were found nowhere.
  for (const LotPoint& point : points) CHECK(*point.figures.dust == Approx(20.0 / 505));
}

TEST_CASE("Every measurement says how it is done and draws it", "[measuring]") {
  OpenWindow open;
  measure_new_bag(open);
  for (const Protocol protocol : protocols) {
    INFO(key_of(protocol));
    const ProtocolWords words = words_of(protocol);
    CHECK(words.steps.size() >= 2);
    choose_protocol(open, protocol);
    auto* drawing = open.find<ProtocolDrawing>("protocol_drawing");
    CHECK(drawing->accessibleDescription() == words.picture);
    const QImage drawn = drawing->grab().toImage();
    bool ink = false;
    for (int x = 0; x < drawn.width() && !ink; ++x) {
      for (int y = 0; y < drawn.height() && !ink; ++y) ink = drawn.pixel(x, y) != drawn.pixel(0, 0);
    }
    CHECK(ink);
  }
}

TEST_CASE("A bin and a tree's used ground are graded in the same form, and the test is theirs", "[measuring]") {
  OpenWindow open;
  Bin bin;
  bin.name = "left over";
  bin.material = "pumice";
  const QString tub = open.record->add(bin, QStringLiteral("bin"));
  Tree tree;
  tree.name = "old pine";
  tree.species = "invented pine";
  const QString pine = open.record->add(tree, QStringLiteral("tree"));
  REQUIRE_FALSE(pine.isEmpty());
  auto* chooser = open.find<QComboBox>("bag_chooser");
  for (const QString& id : {tub, pine}) {
    INFO(id.toStdString());
    const int at = chooser->findData(id);
    REQUIRE(at > 0);
    chooser->setCurrentIndex(at);
    emit chooser->activated(at);
    const auto index = static_cast<std::size_t>(open.bench.current_component());
    CHECK(open.bench.state().components[index].bag == id);
    const ComponentSheet typed = finished_component(id, QStringLiteral("pumice"), {{"4", "60"}, {"2", "30"}}, "10", "100");
    open.bench.edit(QStringLiteral("sheet"), {}, [&](BenchState& state) { state.components[index].sheet = typed.sheet; });
    open.trigger("action_save_sheet");
    const auto ref = id == tub ? RecordRef{RecordKind::bin, id.toStdString()} : RecordRef{RecordKind::tree, id.toStdString()};
    CHECK(open.record->workbook().sieve_tests_of(ref).size() == 1);
  }
  CHECK(open.record->workbook().count(RecordKind::bag) == 0);
}
