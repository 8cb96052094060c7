#include "pages/bags_page.hpp"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QToolButton>
#include <QWheelEvent>
#include <algorithm>
#include <string>
#include <vector>

#include "gritwright/models/sieve_analysis.hpp"
#include "models/demonstration_record.hpp"
#include "record_pages.hpp"
#include "support.hpp"
#include "text.hpp"

using namespace gritwright;
using namespace gritwright::desktop;
using Catch::Matchers::WithinRel;

namespace {

void choose_material(OpenWindow& open, const char* name) {
  auto* material = open.find<QComboBox>("bags_material");
  material->setCurrentIndex(material->findData(QLatin1String(name)));
}

void fill(OpenWindow& open, const char* object_name, const QString& text) {
  auto* field = open.find<QLineEdit>(object_name);
  field->setFocus();
  field->selectAll();
  open.type(text);
}

Bag only_bag(const OpenWindow& open) {
  const auto bags = open.record->workbook().all<Bag>();
  REQUIRE(bags.size() == 1);
  return bags.front().record;
}

}  // namespace

TEST_CASE("Bags are received, and every field is saved as it is typed", "[bags_page]") {
  OpenWindow open;
  open.trigger("action_page_bags");
  choose_material(open, "pumice");
  open.find<QPushButton>("bags_receive")->click();
  fill(open, "bag_lot", QStringLiteral("7 B"));
  fill(open, "bag_count", QStringLiteral("10"));
  fill(open, "bag_size_from", QStringLiteral("3"));
  fill(open, "bag_size_to", QStringLiteral("6"));
  fill(open, "bag_volume", QStringLiteral("14,5"));
  fill(open, "bag_mass", QStringLiteral("9 kg"));
  fill(open, "bag_price", QStringLiteral("12.9"));
  fill(open, "bag_currency", QStringLiteral("EUR"));
  auto* basis = open.find<QComboBox>("bag_moisture_basis");
  basis->setCurrentIndex(basis->findData(static_cast<int>(MoistureBasis::air_dry)));
  emit basis->activated(basis->currentIndex());
  const Bag bag = only_bag(open);
  CHECK(bag.price->currency == "EUR");
  CHECK(bag.moisture_basis == MoistureBasis::air_dry);
  CHECK(bag.material == "pumice");
  CHECK(bag.lot == "7 B");
  CHECK(bag.count == 10);
  CHECK_THAT(in_mm(bag.printed_size->from), WithinRel(3, 1e-12));
  CHECK_THAT(in_mm(bag.printed_size->to), WithinRel(6, 1e-12));
  CHECK_THAT(in_l(*bag.volume), WithinRel(14.5, 1e-12));
  CHECK_THAT(in_kg(*bag.mass_as_bagged), WithinRel(9, 1e-12));
  CHECK_THAT(bag.price->amount, WithinRel(12.9, 1e-12));
}

TEST_CASE("What can't be read stays in its field with the fault and is not saved", "[bags_page][refuses]") {
  OpenWindow open;
  open.trigger("action_receive_bags");
  fill(open, "bag_volume", QStringLiteral("14"));
  fill(open, "bag_volume", QStringLiteral("14x"));
  auto* volume = open.find<QLineEdit>("bag_volume");
  CHECK(volume->text() == QStringLiteral("14x"));
  CHECK(volume->accessibleDescription().contains(QStringLiteral("no unit known")));
  CHECK_THAT(in_l(*only_bag(open).volume), WithinRel(14, 1e-12));
  fill(open, "bag_count", QStringLiteral("0"));
  CHECK(only_bag(open).count == 1);
  CHECK_FALSE(open.find<QLineEdit>("bag_count")->accessibleDescription() == QStringLiteral("of this lot"));
}

TEST_CASE("On the record's pages undo takes a typed field back as one step", "[bags_page]") {
  OpenWindow open;
  open.trigger("action_receive_bags");
  fill(open, "bag_note", QStringLiteral("dusty"));
  CHECK(only_bag(open).note == "dusty");
  auto* undo = open.window.findChild<QAction*>(QStringLiteral("action_record_undo"));
  CHECK(undo->text().contains(QStringLiteral("note of bag")));
  CHECK(undo->shortcut() == QKeySequence(QStringLiteral("Ctrl+Z")));
  open.find<QTableView>("bags_table")->setFocus();
  open.trigger("action_record_undo");
  CHECK(only_bag(open).note.empty());
  CHECK(open.find<QLineEdit>("bag_note")->text().isEmpty());
  open.trigger("action_page_sieving");
  CHECK(undo->shortcut() != QKeySequence(QStringLiteral("Ctrl+Z")));
}

TEST_CASE("A bag is taken into stock once, by its dry mass", "[bags_page]") {
  OpenWindow open;
  open.trigger("action_receive_bags");
  CHECK_FALSE(open.find<QPushButton>("bag_take_in")->isEnabled());
  fill(open, "bag_count", QStringLiteral("2"));
  fill(open, "bag_mass", QStringLiteral("5500"));
  fill(open, "bag_moisture", QStringLiteral("10"));
  open.trigger("action_take_into_stock");
  const auto bag = open.record->workbook().all<Bag>().front();
  // Two bags of 5.5 kg at 10 % moisture hold 10 kg of dry grain.
  CHECK_THAT(in_kg(*open.record->workbook().stock_of(ref_to(bag.id))), WithinRel(10, 1e-9));
  open.trigger("action_take_into_stock");
  CHECK_THAT(in_kg(*open.record->workbook().stock_of(ref_to(bag.id))), WithinRel(10, 1e-9));
  CHECK(open.find<QLabel>("figure_bag_left_dry")->text() == to_local(mass_text(open.record->workbook().stock_of(ref_to(bag.id)), UnitSystem::metric)));
}

TEST_CASE("A bag goes to the bench with its figures, and its finished sheet is kept with it", "[bags_page]") {
  OpenWindow open;
  open.trigger("action_page_bags");
  choose_material(open, "pumice");
  open.trigger("action_receive_bags");
  fill(open, "bag_bulk_density", QStringLiteral("610"));
  open.trigger("action_grade_bag");
  REQUIRE(open.bench.current_component() == 0);
  const ComponentSheet& component = open.bench.state().components[0];
  CHECK(component.bag == QStringLiteral("P-01"));
  CHECK(component.material == QStringLiteral("pumice"));
  CHECK(component.grain.bulk_density == QStringLiteral("610"));
  open.trigger("action_save_sheet");
  CHECK(open.record->workbook().count(RecordKind::sieve_test) == 0);
  open.go_to_cell(0, 1);
  for (const char* mass : {"0", "40", "160", "150", "90", "35", "15", "9"}) {
    open.type(QString::fromLatin1(mass));
    open.press(Qt::Key_Return);
  }
  open.find<QToolButton>("sheet_keep")->click();
  open.trigger("action_save_sheet");
  const auto tests = open.record->workbook().sieve_tests_of({RecordKind::bag, "P-01"});
  REQUIRE(tests.size() == 1);
  CHECK(open.find<QComboBox>("bag_chooser")->currentData().toString() == QStringLiteral("P-01"));
  CHECK(tests.front().record.test == [&] {
    SieveTest test = *open.bench.evaluation().components[0].test;
    test.material = "pumice";
    test.date = tests.front().record.test.date;
    return test;
  }());
  open.trigger("action_page_bags");
  CHECK(open.find<QTableView>("bags_table")->model()->index(0, 3).data().toString().contains(QStringLiteral("1")));
}

TEST_CASE("A bag that is used stays, an unused one can be removed and brought back", "[bags_page][refuses]") {
  OpenWindow open;
  open.trigger("action_receive_bags");
  open.trigger("action_remove_bag");
  CHECK(open.record->workbook().count(RecordKind::bag) == 0);
  open.trigger("action_record_undo");
  CHECK(open.record->workbook().count(RecordKind::bag) == 1);
  fill(open, "bag_mass", QStringLiteral("5500"));
  fill(open, "bag_moisture", QStringLiteral("5"));
  open.trigger("action_take_into_stock");
  open.trigger("action_remove_bag");
  CHECK(open.record->workbook().count(RecordKind::bag) == 1);
}

TEST_CASE("Find narrows the list to what was typed", "[bags_page]") {
  OpenWindow open;
  open.trigger("action_page_bags");
  for (const char* material : {"pumice", "akadama", "scoria"}) {
    choose_material(open, material);
    open.trigger("action_receive_bags");
  }
  auto* table = open.find<QTableView>("bags_table");
  CHECK(table->model()->rowCount() == 3);
  open.trigger("action_find");
  open.type(QStringLiteral("AKA"));
  CHECK(table->model()->rowCount() == 1);
  CHECK(table->model()->index(0, 0).data().toString() == QStringLiteral("A-01"));
}

TEST_CASE("What is typed into the lot that was searched for stays in its bag", "[bags_page]") {
  OpenWindow open;
  open.trigger("action_page_bags");
  for (const char* lot : {"6200", "7001"}) {
    open.trigger("action_receive_bags");
    fill(open, "bag_lot", QString::fromLatin1(lot));
  }
  open.trigger("action_find");
  open.type(QStringLiteral("7001"));
  auto* table = open.find<QTableView>("bags_table");
  REQUIRE(table->model()->rowCount() == 1);
  const auto before = open.record->workbook().all<Bag>();
  const std::string typed_into = table->model()->index(0, 0).data().toString().toStdString();
  auto* lot = open.find<QLineEdit>("bag_lot");
  lot->setFocus();
  lot->setCursorPosition(2);
  open.type(QStringLiteral("8"));
  open.type(QStringLiteral("9"));
  for (const Stored<Bag>& was : before) {
    Bag expected = was.record;
    if (was.id.text == typed_into) expected.lot = "708901";
    CHECK(open.record->workbook().find(was.id)->record == expected);
  }
  CHECK(lot->text() == QStringLiteral("708901"));
}

TEST_CASE("What is asked of a bag while the bins are in front brings the bag to the front", "[bags_page]") {
  OpenWindow open;
  open.trigger("action_receive_bags");
  fill(open, "bag_mass", QStringLiteral("5500"));
  fill(open, "bag_moisture", QStringLiteral("10"));
  auto* table = open.find<QTableView>("bags_table");
  for (const char* asked : {"action_take_into_stock", "action_measure"}) {
    open.trigger("action_add_bin");
    REQUIRE_FALSE(table->isVisible());
    open.trigger(asked);
    open.trigger("action_page_bags");
    INFO(asked);
    CHECK(table->isVisible());
  }
}

TEST_CASE("What was counted, spilt or thrown out of a bag is a line of its stock, litres by the litre weight that is told", "[bags_page][stock]") {
  OpenWindow open;
  Bag bag;
  bag.material = "pumice";
  bag.received = "2026-03-01";
  bag.volume = loose_l(14);
  bag.mass_as_bagged = mass_g(14 * 595);
  bag.moisture_basis = MoistureBasis::oven_dry;
  const RecordRef ref{RecordKind::bag, open.record->add(bag, QStringLiteral("bag")).toStdString()};
  open.trigger("action_page_bags");
  QString told;
  QObject::connect(open.record.get(), &RecordBook::told, [&](const QString& sentence) { told = sentence; });
  const auto book_it = [&](StockReason reason, const char* amount) {
    auto* reasons = open.find<QComboBox>("bag_stock_reason");
    reasons->setCurrentIndex(reasons->findData(static_cast<int>(reason)));
    fill(open, "bag_stock_amount", QString::fromLatin1(amount));
    open.press(Qt::Key_Return);
  };
  const auto stock = [&] { return in_g(open.record->workbook().stock_of(ref).value_or(mass_g(-1))); };
  const auto fault = [&] { return open.find<QLabel>("bag_stock_fault")->text(); };
  book_it(StockReason::spilt, "200 g");
  CHECK(fault().contains(QStringLiteral("in stock yet")));
  CHECK(stock() == -1);
  open.trigger("action_take_into_stock");
  book_it(StockReason::spilt, "230 g");
  CHECK_THAT(stock(), WithinRel(8100.0, 1e-9));
  book_it(StockReason::counted, "10 L");
  CHECK_THAT(stock(), WithinRel(5950.0, 1e-9));
  CHECK(told.contains(QStringLiteral("its own litre weight")));
  const StockEntry counted = open.record->workbook().all<StockEntry>().back().record;
  CHECK_THAT(in_g(counted.change), WithinRel(5950.0 - 8100.0, 1e-9));
  CHECK_THAT(in_g_l(*counted.density_used), WithinRel(595.0, 1e-9));
  book_it(StockReason::thrown_out, "some");
  CHECK_FALSE(fault().isEmpty());
  CHECK(open.find<QLineEdit>("bag_stock_amount")->text() == QStringLiteral("some"));
  CHECK_THAT(stock(), WithinRel(5950.0, 1e-9));
  open.record->undo();
  CHECK_THAT(stock(), WithinRel(8100.0, 1e-9));

  // Without a litre weight of its own the typical one is used, and that is said.
  Bag light;
  light.material = "akadama";
  const QString other = open.record->add(light, QStringLiteral("bag"));
  open.window.record_pages()->bags().show_bag(other);
  CHECK(open.find<QLineEdit>("bag_stock_amount")->text().isEmpty());
  book_it(StockReason::counted, "2 L");
  CHECK(told.contains(QStringLiteral("typical litre weight")));
  CHECK(open.record->workbook().all<StockEntry>().back().record.density_used.has_value());
}

TEST_CASE("A fraction is counted on the same line, once it was chosen", "[bags_page][stock]") {
  OpenWindow open;
  Bag bag;
  bag.material = "pumice";
  const QString from = open.record->add(bag, QStringLiteral("bag"));
  Fraction fraction;
  fraction.source = {RecordKind::bag, from.toStdString()};
  fraction.material = "pumice";
  fraction.dry_mass = mass_g(1200);
  const QString id = open.record->add(fraction, QStringLiteral("fraction"));
  open.trigger("action_page_bags");
  auto* fractions = open.find<QTableView>("fraction_list");
  fractions->setCurrentIndex(fractions->model()->index(0, 0));
  fill(open, "bag_stock_amount", QStringLiteral("1100 g"));
  open.press(Qt::Key_Return);
  CHECK_THAT(in_g(*open.record->workbook().stock_of({RecordKind::fraction, id.toStdString()})), WithinRel(1100.0, 1e-9));
  CHECK_FALSE(open.record->workbook().stock_of({RecordKind::bag, from.toStdString()}));
}

TEST_CASE("The litres of a fraction that was only weighed follow its bag's litre weight at once", "[bags_page][stock][regression]") {
  OpenWindow open;
  Bag bag;
  bag.material = "pumice";
  bag.bulk_density = bulk_g_l(500);
  const QString from = open.record->add(bag, QStringLiteral("bag"));
  Fraction fraction;
  fraction.source = {RecordKind::bag, from.toStdString()};
  fraction.material = "pumice";
  fraction.dry_mass = mass_g(1000);
  open.record->add(fraction, QStringLiteral("fraction"));
  open.trigger("action_page_bags");
  auto* fractions = open.find<QTableView>("fraction_list");
  fractions->setCurrentIndex(fractions->model()->index(0, 0));
  fill(open, "bag_stock_amount", QStringLiteral("1000 g"));
  open.press(Qt::Key_Return);
  const auto litres = [&] { return fractions->model()->index(0, 3).data().toString(); };
  CHECK(litres() == local("2.00 L"));
  fill(open, "bag_bulk_density", QStringLiteral("400"));
  CHECK(litres() == local("2.50 L"));
  // Out of sight, too.
  open.trigger("action_page_log");
  const auto stored = open.record->workbook().all<Bag>().front();
  Bag lighter = stored.record;
  lighter.bulk_density = bulk_g_l(250);
  REQUIRE(open.record->replace(stored, lighter, QStringLiteral("litre weight")));
  open.trigger("action_page_bags");
  CHECK(litres() == local("4.00 L"));
}

TEST_CASE("Of bags and fractions one row is marked, the one that is acted upon", "[bags_page][regression]") {
  OpenWindow open;
  Bag bag;
  bag.material = "pumice";
  const QString from = open.record->add(bag, QStringLiteral("bag"));
  Fraction fraction;
  fraction.source = {RecordKind::bag, from.toStdString()};
  fraction.material = "pumice";
  fraction.dry_mass = mass_g(1200);
  const QString id = open.record->add(fraction, QStringLiteral("fraction"));
  open.trigger("action_page_bags");
  auto* bags = open.find<QTableView>("bags_table");
  auto* fractions = open.find<QTableView>("fraction_list");
  BagsPage& page = open.window.record_pages()->bags();
  fractions->setFocus();
  fractions->setCurrentIndex(fractions->model()->index(0, 0));
  CHECK(fractions->selectionModel()->hasSelection());
  CHECK_FALSE(bags->selectionModel()->hasSelection());
  CHECK(page.chosen_grain() == id);
  bags->setFocus();
  CHECK(bags->selectionModel()->hasSelection());
  CHECK_FALSE(fractions->selectionModel()->hasSelection());
  CHECK(page.chosen_grain() == from);
}

TEST_CASE("A corrected weight corrects what came into stock, and one undo takes both back", "[bags_page][stock][regression]") {
  OpenWindow open;
  open.trigger("action_receive_bags");
  auto* basis = open.find<QComboBox>("bag_moisture_basis");
  basis->setCurrentIndex(basis->findData(static_cast<int>(MoistureBasis::oven_dry)));
  emit basis->activated(basis->currentIndex());
  fill(open, "bag_mass", QStringLiteral("20 kg"));
  open.trigger("action_take_into_stock");
  const RecordRef bag = ref_to(open.record->workbook().all<Bag>().front().id);
  const auto left_kg = [&] { return in_kg(*open.record->workbook().stock_of(bag)); };
  CHECK_THAT(left_kg(), WithinRel(20, 1e-9));
  fill(open, "bag_mass", QStringLiteral("18 kg"));
  CHECK_THAT(left_kg(), WithinRel(18, 1e-9));
  CHECK(open.record->workbook().count(RecordKind::stock_entry) == 1);
  open.record->end_typing();
  open.record->undo();
  CHECK_THAT(left_kg(), WithinRel(20, 1e-9));
  CHECK_THAT(in_kg(*only_bag(open).mass_as_bagged), WithinRel(20, 1e-9));
  // Once it was counted, what is left is what was counted.
  auto* reason = open.find<QComboBox>("bag_stock_reason");
  reason->setCurrentIndex(reason->findData(static_cast<int>(StockReason::counted)));
  fill(open, "bag_stock_amount", QStringLiteral("15 kg"));
  open.press(Qt::Key_Return);
  CHECK_THAT(left_kg(), WithinRel(15, 1e-9));
  fill(open, "bag_mass", QStringLiteral("19 kg"));
  CHECK_THAT(left_kg(), WithinRel(15, 1e-9));
}

TEST_CASE("A bag that was received as the wrong material is put right with its tests and on the bench, unless grain of it lies elsewhere", "[bags_page]") {
  OpenWindow open;
  Bag bag;
  bag.material = "akadama";
  bag.volume = loose_l(14);
  bag.mass_as_bagged = mass_g(14 * 595);
  bag.moisture_basis = MoistureBasis::oven_dry;
  const std::string id = open.record->add(bag, QStringLiteral("bag")).toStdString();
  const RecordRef ref{RecordKind::bag, id};
  RecordedSieveTest sieved;
  sieved.of = ref;
  sieved.test = test_of(Grading{{{aperture_mm(2), Passing(0.1)}, {aperture_mm(8), Passing(1)}}, {}, {}}, mass_g(400));
  sieved.test.material = "akadama";
  open.record->add(sieved, QStringLiteral("test"));
  open.trigger("action_page_bags");
  open.trigger("action_take_into_stock");
  open.trigger("action_grade_bag");
  QApplication::processEvents();
  open.trigger("action_page_bags");
  QString told;
  QObject::connect(open.record.get(), &RecordBook::told, [&](const QString& sentence) { told = sentence; });
  auto* box = open.find<QComboBox>("bag_material");
  const auto material = [&] { return open.record->workbook().find(Id<Bag>{id})->record.material; };
  const auto on_bench = [&] {
    const auto& components = open.bench.state().components;
    const auto found = std::ranges::find(components, QString::fromStdString(id), &ComponentSheet::bag);
    REQUIRE(found != components.end());
    return found->material;
  };
  const auto choose = [&](const char* name) {
    box->setCurrentIndex(box->findData(QString::fromLatin1(name)));
    emit box->activated(box->currentIndex());
    QApplication::processEvents();
  };
  CHECK(box->currentData().toString() == QStringLiteral("akadama"));
  CHECK(on_bench() == QStringLiteral("akadama"));
  choose("pumice");
  CHECK(material() == "pumice");
  CHECK(told.contains(QStringLiteral("pumice")));
  CHECK(open.record->workbook().sieve_tests_of(ref).front().record.test.material == "pumice");
  CHECK(on_bench() == QStringLiteral("pumice"));
  CHECK_THAT(in_g(open.record->workbook().stock_of(ref).value()), WithinRel(14 * 595.0, 1e-9));
  open.trigger("action_record_undo");
  QApplication::processEvents();
  CHECK(material() == "akadama");
  CHECK(open.record->workbook().sieve_tests_of(ref).front().record.test.material == "akadama");
  CHECK(box->currentData().toString() == QStringLiteral("akadama"));
  CHECK(on_bench() == QStringLiteral("akadama"));
  const auto stays = [&] {
    told.clear();
    choose("pumice");
    CHECK(material() == "akadama");
    CHECK(box->currentData().toString() == QStringLiteral("akadama"));
    CHECK(told.contains(QStringLiteral("keeps its material")));
  };
  Fraction fraction;
  fraction.source = ref;
  fraction.material = "akadama";
  fraction.to = aperture_mm(2);
  fraction.dry_mass = mass_g(100);
  open.record->add(fraction, QStringLiteral("fraction"));
  stays();
  open.record->undo();
  Bin bin;
  bin.name = "box";
  bin.material = "akadama";
  bin.contents.push_back({ref, {}, {}, mass_g(100)});
  open.record->add(bin, QStringLiteral("bin"));
  stays();
}

TEST_CASE("The wheel turned over a choice scrolls the page and changes nothing", "[bags_page][regression]") {
  OpenWindow open;
  Bag bag;
  bag.material = "akadama";
  const std::string id = open.record->add(bag, QStringLiteral("bag")).toStdString();
  open.trigger("action_page_bags");
  QApplication::processEvents();
  for (const char* name : {"bag_material", "bag_moisture_basis"}) {
    auto* box = open.find<QComboBox>(name);
    const int before = box->currentIndex();
    for (const int turn : {-120, 120, -120}) {
      QWheelEvent wheel(QPointF(box->rect().center()), QPointF(box->mapToGlobal(box->rect().center())), QPoint(), QPoint(0, turn), Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
      QCoreApplication::sendEvent(box, &wheel);
    }
    CHECK(box->currentIndex() == before);
    CHECK_FALSE(box->hasFocus());
  }
  CHECK(open.record->workbook().find(Id<Bag>{id})->record.material == "akadama");
}

TEST_CASE("Taking a bag into stock is told, once, and stands among what happened to the bag", "[bags_page]") {
  OpenWindow open;
  Bag bag;
  bag.material = "akadama";
  bag.volume = loose_l(14);
  bag.mass_as_bagged = mass_g(8330);
  bag.moisture_basis = MoistureBasis::oven_dry;
  const std::string id = open.record->add(bag, QStringLiteral("bag")).toStdString();
  open.trigger("action_page_bags");
  QStringList told;
  QObject::connect(open.record.get(), &RecordBook::told, [&](const QString& sentence) { told << sentence; });
  open.trigger("action_take_into_stock");
  REQUIRE(told.size() == 1);
  CHECK(told.back().contains(QString::fromStdString(id)));
  open.trigger("action_take_into_stock");
  REQUIRE(told.size() == 2);
  CHECK(told.back().contains(QStringLiteral("already")));
  const RecordRef ref{RecordKind::bag, id};
  CHECK_THAT(in_g(open.record->workbook().stock_of(ref).value()), WithinRel(8330.0, 1e-9));
  const auto entries = open.record->workbook().all<LogEntry>();
  CHECK(std::ranges::count_if(entries, [&](const auto& entry) { return entry.record.text.ends_with("taken into stock") && entry.record.about == std::vector{ref}; }) == 1);
}

TEST_CASE("Emptying the fine end of a printed size leaves its coarse end", "[bags_page][regression]") {
  OpenWindow open;
  open.trigger("action_receive_bags");
  fill(open, "bag_size_from", QStringLiteral("3"));
  fill(open, "bag_size_to", QStringLiteral("6"));
  auto* from = open.find<QLineEdit>("bag_size_from");
  from->setFocus();
  from->selectAll();
  open.press(Qt::Key_Backspace);
  const auto& size = open.record->workbook().all<Bag>().front().record.printed_size;
  REQUIRE(size);
  CHECK(in_mm(size->to) == 6);
  open.type(QStringLiteral("4"));
  CHECK(open.record->workbook().all<Bag>().front().record.printed_size == SizeBand{aperture_mm(4), aperture_mm(6)});
}

TEST_CASE("A marked fraction has its own bag beside it, is what is graded, and does not let its bag be removed", "[bags_page][regression]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.trigger("action_page_bags");
  open.window.record_pages()->bags().show_bag(QStringLiteral("A-11"));
  REQUIRE(open.find<QLabel>("bag_title")->text().startsWith(QStringLiteral("A-11")));
  open.window.record_pages()->bags().show_fraction(QStringLiteral("FR-02"));
  QApplication::processEvents();
  CHECK(open.find<QLabel>("bag_title")->text().startsWith(QStringLiteral("P-02")));
  const auto bags = open.record->workbook().count(RecordKind::bag);
  open.trigger("action_remove_bag");
  CHECK(open.record->workbook().count(RecordKind::bag) == bags);
  auto* amount = open.find<QLineEdit>("bag_stock_amount");
  for (int time = 0; time < 2; ++time) {
    amount->setFocus();
    open.type(QStringLiteral("100 g"));
    open.press(Qt::Key_Return);
    QApplication::processEvents();
    CHECK(open.window.record_pages()->bags().chosen_grain() == QStringLiteral("FR-02"));
  }
  const auto graded = [&] { return open.bench.state().components[static_cast<std::size_t>(open.bench.current_component())].bag; };
  open.trigger("action_grade_bag");
  CHECK(graded() == QStringLiteral("FR-02"));
  open.trigger("action_page_bags");
  open.find<QPushButton>("bag_grade")->click();
  CHECK(graded() == QStringLiteral("P-02"));
}
