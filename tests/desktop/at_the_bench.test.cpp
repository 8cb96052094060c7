// What somebody new to the window met between bags, sieves and mixes, by keyboard.
#include <QAction>
#include <QClipboard>
#include <QFile>
#include <QGuiApplication>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QPixmap>
#include <QPushButton>
#include <QStatusBar>
#include <algorithm>

#include "models/demonstration_record.hpp"
#include "models/parts_finder.hpp"
#include "models/record_surroundings.hpp"
#include "models/sieve_table_model.hpp"
#include "pages/bags_page.hpp"
#include "pages/mix_page.hpp"
#include "pages/trees_page.hpp"
#include "record_pages.hpp"
#include "support.hpp"
#include "text.hpp"
#include "widgets/find_panel.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

QString kept_bag(OpenWindow& open, const char* material) {
  Bag bag;
  bag.material = material;
  bag.bulk_density = bulk_g_l(600);
  bag.received = "2026-03-01";
  return open.record->add(bag, QStringLiteral("bag"), to_qt(open.record->workbook().suggest_id(RecordKind::bag, material)));
}

/// 2 to 4 mm, as screening predicts it: a hair of it over 4 mm.
QString predicted_fraction(OpenWindow& open) {
  const QString bag = kept_bag(open, "pumice");
  Fraction fraction;
  fraction.source = RecordRef{RecordKind::bag, bag.toStdString()};
  fraction.material = "pumice";
  fraction.from = aperture_mm(2);
  fraction.to = aperture_mm(4);
  fraction.dry_mass = mass_g(3600);
  Grading grading;
  grading.points = {{aperture_mm(1), Passing(0.000000001)}, {aperture_mm(2), Passing(0.0139854111)}, {aperture_mm(4), Passing(0.967688345)}, {aperture_mm(8), Passing(1)}};
  fraction.sizes = grading;
  fraction.predicted = true;
  return open.record->add(fraction, QStringLiteral("fraction"), bag + QStringLiteral("/1"));
}

QString keep_as(OpenWindow& open, const char* name) {
  open.bench.edit(QStringLiteral("name"), {}, [&](BenchState& state) { state.mix_name = QString::fromLatin1(name); });
  open.trigger("action_keep_mix");
  for (const auto& mix : open.record->workbook().all<MixVersion>())
    if (mix.record.mix.name == name) return to_qt(mix.id.text);
  return {};
}

QString focus_name() { return QApplication::focusWidget() != nullptr ? QApplication::focusWidget()->objectName() : QString(); }

QString fault_beside(OpenWindow& open, const char* field) {
  return open.find<QLineEdit>(field)->accessibleDescription();
}

}  // namespace

TEST_CASE("What was predicted of a fraction is marked so, is no test to keep or print, and gives way to what is weighed", "[at_the_bench][refuses]") {
  OpenWindow open;
  const QString tub = predicted_fraction(open);
  open.window.record_pages()->put_in_mix(tub);
  open.trigger("action_show_sheet");
  const auto sheet = [&] { return open.bench.state().components[static_cast<std::size_t>(open.bench.current_component())].sheet; };
  REQUIRE(sheet().predicted);
  REQUIRE(open.bench.evaluation().mix.has_value());
  CHECK(open.cell(0, SieveTableModel::retained) == QStringLiteral("0"));
  CHECK(open.cell(1, SieveTableModel::retained) == local("3.2"));
  CHECK(open.cell(4, SieveTableModel::retained) == QStringLiteral("0"));
  CHECK(open.bench.evaluation().components[0].analysis->notes.empty());
  const QString words = prediction_words();
  CHECK(open.find<QLabel>("balance")->text() == words);
  for (const char* action : {"action_save_sheet", "action_sheet_pdf", "action_print_sheet"}) {
    open.window.statusBar()->clearMessage();
    open.trigger(action);
    INFO(action);
    CHECK(open.window.statusBar()->currentMessage() == words);
  }
  CHECK(open.record->workbook().count(RecordKind::sieve_test) == 0);
  // How wide the sieves are and how wet the sample was says nothing against it.
  open.trigger("action_show_grain");
  for (const char* field : {"sieve_frame", "sample_moisture"}) {
    open.find<QLineEdit>(field)->setFocus();
    open.type(QStringLiteral("20"));
    CHECK(sheet().predicted);
  }
  open.trigger("action_show_sheet");
  const SieveSheet predicted = sheet();
  open.go_to_cell(1, SieveTableModel::retained);
  open.type(QStringLiteral("12"));
  open.press(Qt::Key_Return);
  CHECK_FALSE(sheet().predicted);
  CHECK(sheet().rows[1].retained == QStringLiteral("12"));
  for (const std::size_t row : {0u, 2u, 3u}) CHECK(sheet().rows[row].retained.isEmpty());
  CHECK(sheet().pan.retained.isEmpty());
  open.trigger("action_undo");
  CHECK(sheet() == predicted);
  QGuiApplication::clipboard()->setText(QStringLiteral("0\n14\n300\n80\n6"));
  open.go_to_cell(0, SieveTableModel::retained);
  open.trigger("action_paste");
  open.trigger("action_save_sheet");
  CHECK(open.record->workbook().count(RecordKind::sieve_test) == 1);
}

TEST_CASE("Grading a bag leaves the mix on the bench as it is, until the bag is put into it", "[at_the_bench]") {
  OpenWindow open;
  const QString bag = kept_bag(open, "pumice");
  open.bench.open(complete_bench());
  const double air = open.bench.evaluation().water->air_filled_porosity.value();
  open.window.record_pages()->grade(bag);
  REQUIRE(open.bench.state().components.size() == 3);
  open.bench.edit(QStringLiteral("weighed"), {}, [](BenchState& state) {
    state.components[2].sheet = finished_component({}, {}, {{"8", "0"}, {"4", "100"}, {"2", "250"}, {"1", "100"}}, "50", "500").sheet;
  });
  CHECK(open.bench.evaluation().mixed.size() == 2);
  CHECK(open.bench.evaluation().water->air_filled_porosity.value() == air);
  open.window.record_pages()->put_in_mix(bag);
  CHECK(open.bench.state().components.size() == 3);
  CHECK(open.bench.state().components[2].parts == QStringLiteral("1"));
  CHECK(open.bench.evaluation().mixed.size() == 3);
  CHECK(focus_name() == QStringLiteral("parts_3"));
}

TEST_CASE("A sieve test that is not kept yet stays on the bench, outside the mix, when a mix is opened", "[at_the_bench]") {
  OpenWindow open;
  open.bench.open(complete_bench());
  const QString mix = keep_as(open, "pines");
  const QString bag = kept_bag(open, "pumice");
  open.trigger("action_new");
  open.window.record_pages()->grade(bag);
  open.go_to_cell(0, SieveTableModel::retained);
  open.type(QStringLiteral("37"));
  open.press(Qt::Key_Return);
  open.window.record_pages()->open_mix(mix);
  const auto& components = open.bench.state().components;
  REQUIRE(components.size() == 3);
  CHECK(components[2].bag == bag);
  CHECK(components[2].parts == QStringLiteral("0"));
  CHECK(components[2].sheet.rows[0].retained == QStringLiteral("37"));
  CHECK(open.bench.evaluation().mixed.size() == 2);
  // Kept, it need not stay.
  open.bench.edit(QStringLiteral("weighed"), {}, [](BenchState& state) {
    state.components[2].sheet = finished_component({}, {}, {{"8", "0"}, {"4", "100"}, {"2", "250"}, {"1", "100"}}, "50", "500").sheet;
  });
  open.bench.set_current_component(2);
  open.trigger("action_save_sheet");
  REQUIRE(open.record->workbook().count(RecordKind::sieve_test) == 1);
  open.window.record_pages()->open_mix(mix);
  CHECK(open.bench.state().components.size() == 2);
}

TEST_CASE("A recipe that was found is a mix of its own and takes the wanted grain with it", "[at_the_bench]") {
  OpenWindow open(Start::mixes);
  REQUIRE(fill_with_demonstration(*open.record, open.bench.catalogue()).empty());
  open.bench.open(complete_bench());
  const QString mine = keep_as(open, "by hand");
  REQUIRE_FALSE(mine.isEmpty());
  const QString from = open.bench.state().band_from;
  const QString to = open.bench.state().band_to;
  open.trigger("action_find_parts");
  open.window.mix_page().find_panel().start_from_profile(QStringLiteral("small trees"));
  const QString group_from = open.bench.state().band_from;
  const QString group_to = open.bench.state().band_to;
  REQUIRE((group_from != from || group_to != to));
  PartsFinder& finder = open.window.mix_page().finder();
  finder.search();
  finder.job().wait();
  QApplication::processEvents();
  REQUIRE(finder.found() != nullptr);
  REQUIRE_FALSE(finder.found()->listed().empty());
  open.window.record_pages()->keep_recipe(0, false);
  std::vector<std::string> found;
  for (const auto& mix : open.record->workbook().all<MixVersion>()) {
    if (mix.record.mix.name == "small trees") found.push_back(mix.id.text);
    if (mix.record.mix.name == "by hand") CHECK(to_qt(mix.id.text) == mine);
  }
  REQUIRE(found.size() == 1);
  CHECK(open.bench.state().mix_name == QStringLiteral("small trees"));
  CHECK(open.bench.state().band_from == group_from);
  open.window.record_pages()->open_mix(mine);
  CHECK(open.bench.state().band_from == from);
  CHECK(open.bench.state().band_to == to);
  open.window.record_pages()->open_mix(to_qt(found.front()));
  CHECK(open.bench.state().band_from == group_from);
  CHECK(open.bench.state().band_to == group_to);
}

TEST_CASE("A mix without a name is asked for one in the line it is typed in", "[at_the_bench][refuses]") {
  OpenWindow open;
  open.bench.open(complete_bench());
  open.bench.edit(QStringLiteral("no name"), {}, [](BenchState& state) { state.mix_name.clear(); });
  open.trigger("action_keep_mix");
  CHECK(open.record->workbook().count(RecordKind::mix) == 0);
  CHECK(focus_name() == QStringLiteral("mix_name"));
  CHECK(fault_beside(open, "mix_name") != QStringLiteral("what it is for"));
  open.type(QStringLiteral("pines"));
  CHECK(fault_beside(open, "mix_name") == QStringLiteral("what it is for"));
  open.trigger("action_keep_mix");
  CHECK(open.record->workbook().count(RecordKind::mix) == 1);
}

TEST_CASE("A printed size has the ends that were typed: one alone waits, and the other says that it is missing", "[at_the_bench]") {
  OpenWindow open;
  const QString other = kept_bag(open, "akadama");
  open.trigger("action_receive_bags");
  const auto bag = [&] {
    for (const auto& one : open.record->workbook().all<Bag>())
      if (to_qt(one.id.text) != other) return one;
    return open.record->workbook().all<Bag>().front();
  };
  const QString id = to_qt(bag().id.text);
  const auto typed = [&](const char* field, const char* text) {
    open.find<QLineEdit>(field)->setFocus();
    open.find<QLineEdit>(field)->selectAll();
    open.type(QString::fromLatin1(text));
  };
  typed("bag_size_from", "2");
  CHECK_FALSE(bag().record.printed_size.has_value());
  CHECK(open.find<QLineEdit>("bag_size_to")->text().isEmpty());
  CHECK(fault_beside(open, "bag_size_to").contains(QStringLiteral("missing")));
  open.window.record_pages()->bags().show_bag(other);
  CHECK(open.find<QLineEdit>("bag_size_from")->text().isEmpty());
  open.window.record_pages()->bags().show_bag(id);
  CHECK(open.find<QLineEdit>("bag_size_from")->text() == QStringLiteral("2"));
  typed("bag_size_to", "6");
  REQUIRE(bag().record.printed_size.has_value());
  CHECK(*bag().record.printed_size == SizeBand{aperture_mm(2), aperture_mm(6)});
  CHECK_FALSE(fault_beside(open, "bag_size_to").contains(QStringLiteral("missing")));
  // A coarser grade typed from its fine end first is refused until the coarse end is there.
  typed("bag_size_from", "8");
  CHECK(*bag().record.printed_size == SizeBand{aperture_mm(2), aperture_mm(6)});
  typed("bag_size_to", "12");
  CHECK(*bag().record.printed_size == SizeBand{aperture_mm(8), aperture_mm(12)});
}

TEST_CASE("A currency may be typed before its price, and outlives the price", "[at_the_bench]") {
  OpenWindow open;
  open.trigger("action_receive_bags");
  const auto typed = [&](const char* field, const QString& text) {
    open.find<QLineEdit>(field)->setFocus();
    open.find<QLineEdit>(field)->selectAll();
    if (text.isEmpty()) open.press(Qt::Key_Delete);
    else open.type(text);
  };
  const auto price = [&] { return open.record->workbook().all<Bag>().front().record.price; };
  typed("bag_currency", QStringLiteral("CHF"));
  CHECK_FALSE(price().has_value());
  typed("bag_price", QStringLiteral("14"));
  CHECK(price() == Price{14, "CHF"});
  CHECK(open.find<QLineEdit>("bag_currency")->text() == QStringLiteral("CHF"));
  typed("bag_price", QString());
  CHECK_FALSE(price().has_value());
  CHECK(open.find<QLineEdit>("bag_currency")->text() == QStringLiteral("CHF"));
  typed("bag_price", QStringLiteral("15"));
  CHECK(price() == Price{15, "CHF"});
}

TEST_CASE("A cell that can't be read hides no fault of another, and a pan heavier than the sample is marked itself", "[at_the_bench][refuses]") {
  OpenWindow open;
  const auto weigh = [&](Measure measure, const std::vector<PanText>& rows, const PanText& pan) {
    open.bench.edit(QStringLiteral("weighed"), {}, [&](BenchState& state) {
      SieveSheet& sheet = state.components[0].sheet;
      sheet.measure = measure;
      sheet.rows = rows;
      sheet.pan = pan;
      sheet.dry_mass = QStringLiteral("612");
    });
  };
  const auto row = [](const char* opening, const char* stayed, const char* tare = "") { return PanText{QString::fromLatin1(opening), QString::fromLatin1(stayed), QString::fromLatin1(tare), {}}; };
  weigh(Measure::net_mass, {row("8", "x3"), row("4", "-5"), row("2", "1e9"), row("1", "20")}, row("", "9"));
  CHECK(open.cell(0, SieveTableModel::check).contains(QStringLiteral("x3")));
  CHECK_FALSE(open.cell(1, SieveTableModel::check).isEmpty());
  CHECK(open.cell(3, SieveTableModel::check).isEmpty());
  weigh(Measure::net_mass, {row("8", "x3"), row("4", "5"), row("2", "1000000"), row("1", "20")}, row("", "9"));
  CHECK_FALSE(open.cell(2, SieveTableModel::check).isEmpty());
  CHECK(open.cell(1, SieveTableModel::check).isEmpty());
  weigh(Measure::gross_and_tare, {row("8", "x3", "210"), row("4", "200", "210"), row("2", "260", "210")}, row("", "212", "210"));
  CHECK(open.cell(1, SieveTableModel::check).contains(QStringLiteral("tare")));
  CHECK(open.cell(2, SieveTableModel::check).isEmpty());
  weigh(Measure::gross_and_tare, {row("8", "222.4", "210"), row("4", "431", "210"), row("2", "380", "210")}, row("", "2800", "210"));
  CHECK(open.cell(3, SieveTableModel::check).contains(QStringLiteral("612")));
  CHECK(open.cell(1, SieveTableModel::check).isEmpty());
}

TEST_CASE("Openings and masses pasted where gross and tare are weighed leave the tares of their sieves", "[at_the_bench]") {
  OpenWindow open;
  open.bench.edit(QStringLiteral("measure"), {}, [](BenchState& state) {
    SieveSheet& sheet = state.components[0].sheet;
    sheet.measure = Measure::gross_and_tare;
    sheet.rows = {{QStringLiteral("4"), {}, QStringLiteral("210"), {}}, {QStringLiteral("2"), {}, QStringLiteral("211"), {}}};
    sheet.pan.tare = QStringLiteral("205");
  });
  open.go_to_cell(0, SieveTableModel::retained);
  QGuiApplication::clipboard()->setText(QStringLiteral("4\t310\n2.8\t300\n2\t260\npan\t220\n"));
  open.trigger("action_paste");
  const SieveSheet& sheet = open.bench.state().components[0].sheet;
  REQUIRE(sheet.rows.size() == 3);
  CHECK(sheet.rows[0] == PanText{QStringLiteral("4"), QStringLiteral("310"), QStringLiteral("210"), {}});
  CHECK(sheet.rows[1].tare.isEmpty());
  CHECK(sheet.rows[2] == PanText{QStringLiteral("2"), QStringLiteral("260"), QStringLiteral("211"), {}});
  CHECK(sheet.pan.retained == QStringLiteral("220"));
  CHECK(sheet.pan.tare == QStringLiteral("205"));
}

TEST_CASE("The doors open with Enter, and a pot is described among the pots, from its first length", "[at_the_bench]") {
  OpenWindow open;
  const BenchState before = open.bench.state();
  open.trigger("action_welcome");
  CHECK(focus_name() == QStringLiteral("door_demonstration"));
  auto* door = open.find<QPushButton>("door_container");
  const QImage rested = door->grab().toImage();
  door->setFocus(Qt::TabFocusReason);
  QApplication::processEvents();
  CHECK(door->grab().toImage() != rested);
  open.press(Qt::Key_Return);
  CHECK(focus_name() == QStringLiteral("new_pot_rim_length"));
  open.type(QStringLiteral("30"));
  CHECK(open.find<QLineEdit>("new_pot_rim_length")->text() == QStringLiteral("30"));
  CHECK(open.bench.state() == before);
  open.find<QPushButton>("new_pot_leave")->click();
}

TEST_CASE("The key for the wanted grain chooses what stands there, so that typing takes its place", "[at_the_bench]") {
  OpenWindow open;
  open.bench.open(complete_bench());
  open.trigger("action_show_band");
  open.type(QStringLiteral("3"));
  CHECK(open.bench.state().band_from == QStringLiteral("3"));
}

TEST_CASE("On the repotting day the keys for paper are the day sheet's", "[at_the_bench]") {
  OpenWindow open;
  const auto has = [&](const char* action, const char* keys) { return open.find<QAction>(action)->shortcuts().contains(QKeySequence(QLatin1String(keys))); };
  CHECK(open.find<QAction>("action_print_sheet")->isEnabled());
  open.trigger("action_page_day");
  CHECK_FALSE(open.find<QAction>("action_print_sheet")->isEnabled());
  CHECK_FALSE(open.find<QAction>("action_sheet_pdf")->isEnabled());
  for (const char* keys : {"Ctrl+P", "Ctrl+Shift+P", "Ctrl+Alt+D"}) CHECK(has("action_day_sheet", keys));
  open.trigger("action_page_sieving");
  CHECK(open.find<QAction>("action_print_sheet")->isEnabled());
  CHECK_FALSE(has("action_day_sheet", "Ctrl+P"));
  CHECK(has("action_day_sheet", "Ctrl+Alt+D"));
}

TEST_CASE("Where no sieve test is in sight none is put on paper, and where to go is said", "[at_the_bench][regression]") {
  OpenWindow open;
  open.bench.open(complete_bench());
  for (const char* page : {"action_page_log", "action_page_bags", "action_page_trees", "action_settings"}) {
    for (const char* action : {"action_print_sheet", "action_sheet_pdf"}) {
      INFO(page << ' ' << action);
      open.trigger(page);
      open.window.statusBar()->clearMessage();
      open.trigger(action);
      CHECK(open.window.statusBar()->currentMessage().contains(QStringLiteral("Ctrl+2")));
    }
  }
}

TEST_CASE("The picture that is saved is one of the page on screen", "[at_the_bench][regression]") {
  OpenWindow open;
  open.bench.open(complete_bench());
  const QString file = open.folder.filePath(QStringLiteral("picture.csv"));
  open.trigger("action_page_log");
  CHECK_FALSE(open.window.save_picture(file));
  open.trigger("action_save_picture");
  CHECK_FALSE(open.window.statusBar()->currentMessage().isEmpty());
  open.trigger("action_page_trees");
  open.window.record_pages()->trees().show_plans();
  CHECK(open.window.save_picture(file));
  QFile saved(file);
  REQUIRE(saved.open(QIODevice::ReadOnly));
  CHECK(saved.readAll().startsWith("view,outline"));
}

TEST_CASE("What undo takes back out of sight on the bench is named", "[at_the_bench]") {
  OpenWindow open;
  open.bench.edit(QStringLiteral("band of pines"), {}, [](BenchState& state) { state.band_from = QStringLiteral("3"); });
  open.trigger("action_page_day");
  open.trigger("action_undo");
  CHECK(open.window.statusBar()->currentMessage().contains(QStringLiteral("band of pines")));
  open.window.statusBar()->clearMessage();
  open.trigger("action_redo");
  CHECK(open.window.statusBar()->currentMessage().contains(QStringLiteral("band of pines")));
}

TEST_CASE("Bags that are only looked at never fill the bench: the first gives its place, the mix and what is kept nowhere else stay", "[at_the_bench][regression]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  QString said;
  QObject::connect(&open.bench, &Bench::told, [&](const QString& sentence) { said = sentence; });
  BenchState state = complete_bench();  // two components of the mix, kept nowhere
  open.bench.open(state);
  const BenchState before = open.bench.state();
  QStringList bags;
  for (const auto& bag : open.record->workbook().all<Bag>()) bags << to_qt(bag.id.text);
  REQUIRE(bags.size() > static_cast<int>(desktop::most_components) + 1);
  for (const QString& bag : bags) {
    INFO(bag.toStdString());
    open.window.record_pages()->grade(bag);
    const auto& components = open.bench.state().components;
    CHECK(components.size() <= desktop::most_components);
    CHECK(components[static_cast<std::size_t>(open.bench.current_component())].bag == bag);
    for (std::size_t i = 0; i < before.components.size(); ++i) CHECK(components[i] == before.components[i]);
  }
  // A weighing that is kept nowhere else is not laid over, nor is a part of the mix.
  for (std::size_t i = 2; i < desktop::most_components; ++i)
    open.bench.edit(QStringLiteral("weighed"), {}, [&](BenchState& typed) { typed.components[i].sheet.pan.retained = QStringLiteral("77"); });
  const BenchState full = open.bench.state();
  for (const QString& bag : bags) {
    if (std::ranges::any_of(full.components, [&](const ComponentSheet& component) { return component.bag == bag; })) continue;
    open.window.record_pages()->grade(bag);
    CHECK(open.bench.state() == full);
    break;
  }
}

TEST_CASE("Samples kept from one sheet come back beside each other, and a sheet kept again alone", "[at_the_bench][law]") {
  OpenWindow open;
  BenchState state = empty_bench();
  state.components[0] = finished_component(QStringLiteral("P-1"), QStringLiteral("pumice"), {{"4", "100"}, {"2", "250"}, {"1", "100"}}, "50", "500");
  open.bench.open(state);
  open.trigger("action_save_sheet");
  const QString bag = open.bench.state().components[0].bag;
  REQUIRE_FALSE(bag.isEmpty());
  open.bench.edit(QStringLiteral("sample"), {}, [](BenchState& changed) {
    changed.components[0].sheet.replicates = {{{QStringLiteral("90"), QStringLiteral("230"), QStringLiteral("120")}, QStringLiteral("60"), QStringLiteral("500")}};
  });
  open.trigger("action_save_sheet");
  REQUIRE(open.record->workbook().count(RecordKind::sieve_test) == 2);
  const ComponentEvaluation typed = open.bench.evaluation().components[0];
  REQUIRE(typed.pooled);
  const auto again = sheet_of_grain(open.record->workbook(), bag);
  REQUIRE(again);
  CHECK(again->sheet.rows == open.bench.state().components[0].sheet.rows);
  CHECK(again->sheet.replicates == open.bench.state().components[0].sheet.replicates);
  const ComponentEvaluation read = evaluate_component(*again, open.bench.catalogue());
  REQUIRE(read.pooled);
  CHECK(read.pooled->grading == typed.pooled->grading);
  open.bench.edit(QStringLiteral("alone"), {}, [](BenchState& changed) {
    changed.components[0].sheet.replicates.clear();
    changed.components[0].sheet.pan.retained = QStringLiteral("49");
  });
  open.trigger("action_save_sheet");
  REQUIRE(open.record->workbook().count(RecordKind::sieve_test) == 3);
  const auto corrected = sheet_of_grain(open.record->workbook(), bag);
  REQUIRE(corrected);
  CHECK(corrected->sheet.replicates.empty());
  CHECK(corrected->sheet.pan.retained == QStringLiteral("49"));
}

TEST_CASE("A loss of the second sample is told as one of the first is", "[at_the_bench]") {
  OpenWindow open;
  BenchState state = empty_bench();
  state.components[0] = finished_component(QStringLiteral("P-1"), QStringLiteral("pumice"), {{"4", "100"}, {"2", "250"}, {"1", "100"}}, "50", "500");
  state.components[0].sheet.replicates = {{{QStringLiteral("100"), QStringLiteral("250"), QStringLiteral("100")}, QStringLiteral("40"), QStringLiteral("500")}};
  open.bench.open(state);
  const QString told = open.find<QLabel>("sheet_checks")->text();
  INFO(told.toStdString());
  CHECK(told.contains(QStringLiteral("Sample 2: ")));
}
