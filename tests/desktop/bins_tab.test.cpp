#include "pages/bins_tab.hpp"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTableWidget>

#include "models/demonstration_record.hpp"
#include "pages/bags_page.hpp"
#include "record_pages.hpp"
#include "support.hpp"
#include "widgets/record_list_side.hpp"

using namespace gritwright;
using namespace gritwright::desktop;
using Catch::Matchers::WithinAbs;

namespace {

void type_into(OpenWindow& open, const char* object_name, const QString& text) {
  auto* field = open.find<QLineEdit>(object_name);
  field->setFocus();
  field->selectAll();
  open.type(text);
}

/// A bag with 10 kg in stock, and an empty bin on screen.
QString bag_and_bin(OpenWindow& open) {
  Bag bag;
  bag.material = "pumice";
  bag.mass_as_bagged = mass_kg(10);
  bag.moisture_basis = MoistureBasis::oven_dry;
  bag.bulk_density = bulk_g_l(500);
  const QString id = open.record->add(bag, QStringLiteral("bag"));
  open.trigger("action_page_bags");
  open.trigger("action_take_into_stock");
  open.trigger("action_add_bin");
  return id;
}

Bin only_bin(const OpenWindow& open) { return open.record->workbook().all<Bin>().front().record; }

double stock_g(const OpenWindow& open, RecordKind kind, const std::string& id) {
  const auto stock = open.record->workbook().stock_of({kind, id});
  REQUIRE(stock);
  return in_g(*stock);
}

}  // namespace

TEST_CASE("What is tipped into a bin moves there in the books, by litres or grams", "[bins_tab]") {
  OpenWindow open;
  const QString bag = bag_and_bin(open);
  const std::string bin = open.record->workbook().all<Bin>().front().id.text;
  type_into(open, "bin_source", bag);
  type_into(open, "bin_amount", QStringLiteral("2 L"));
  open.find<QPushButton>("bin_tip_in")->click();
  REQUIRE(only_bin(open).contents.size() == 1);
  CHECK_THAT(in_g(*only_bin(open).contents[0].dry_mass), WithinAbs(1000, 1e-6));  // 2 L of 500 g/L
  CHECK_THAT(stock_g(open, RecordKind::bag, bag.toStdString()), WithinAbs(9000, 1e-6));
  CHECK_THAT(stock_g(open, RecordKind::bin, bin), WithinAbs(1000, 1e-6));
  type_into(open, "bin_source", bag);
  type_into(open, "bin_amount", QStringLiteral("300 g"));
  open.find<QPushButton>("bin_tip_in")->click();
  CHECK_THAT(stock_g(open, RecordKind::bin, bin), WithinAbs(1300, 1e-6));
  open.find<QPushButton>("bin_empty_out")->click();
  CHECK(only_bin(open).contents[0].emptied.has_value());
  CHECK_THAT(stock_g(open, RecordKind::bin, bin), WithinAbs(0, 1e-6));
  open.trigger("action_record_undo");
  CHECK_FALSE(only_bin(open).contents[0].emptied.has_value());
  CHECK_THAT(stock_g(open, RecordKind::bin, bin), WithinAbs(1300, 1e-6));
}

TEST_CASE("What is taken out of a bin of several lots may contain each of them", "[bins_tab]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.trigger("action_page_bags");
  auto& bags = open.window.record_pages()->bags();
  bags.show_bins();
  bags.bins().list().show_record(QStringLiteral("BIN-01"));
  QApplication::processEvents();
  const QString sentence = open.find<QLabel>("bin_may_contain")->text();
  CHECK(sentence.contains(QStringLiteral("A-11")));
  CHECK(sentence.contains(QStringLiteral("BT-01")));
  CHECK_FALSE(sentence.contains(QStringLiteral("A-12")));  // emptied out before
  CHECK(open.find<QTableWidget>("bin_contents")->rowCount() == 3);
}

TEST_CASE("Nothing unknown, no bin itself and no day that is none is tipped in", "[bins_tab][refuses]") {
  OpenWindow open;
  const QString bag = bag_and_bin(open);
  auto* fault = open.find<QLabel>("bin_fault");
  const auto tip = [&](const QString& source, const QString& amount, const QString& day) {
    type_into(open, "bin_source", source);
    type_into(open, "bin_amount", amount);
    type_into(open, "bin_day", day);
    open.find<QPushButton>("bin_tip_in")->click();
    CHECK(fault->isVisible());
    CHECK(only_bin(open).contents.empty());
  };
  const QString day = QStringLiteral("2026-03-14");
  tip(QStringLiteral("X-99"), QStringLiteral("1 L"), day);
  tip(QString::fromStdString(open.record->workbook().all<Bin>().front().id.text), QStringLiteral("1 L"), day);
  tip(bag, QStringLiteral("much"), day);
  tip(bag, QStringLiteral("1 L"), QStringLiteral("2026-02-30"));
}

TEST_CASE("Grain taken back from a tree is a bag that knows the tree and the mix it stood in", "[bins_tab]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.trigger("action_take_back");
  const auto newest = [&] { return open.record->workbook().all<Bag>().back().record; };
  type_into(open, "bag_reclaimed_tree", QStringLiteral("TR-99"));
  CHECK_FALSE(newest().reclaimed);
  type_into(open, "bag_reclaimed_tree", QStringLiteral("TR-03"));
  REQUIRE(newest().reclaimed);
  CHECK(newest().reclaimed->tree.text == "TR-03");
  REQUIRE(newest().reclaimed->mix);
  CHECK(newest().reclaimed->mix->text == "MX-02/1");
  CHECK(open.find<QLineEdit>("bag_reclaimed_mix")->isVisible());
  CHECK(open.find<QLineEdit>("bag_reclaimed_mix")->text() == QStringLiteral("MX-02/1"));
  type_into(open, "bag_reclaimed_mix", QStringLiteral("MX-77/1"));
  CHECK(newest().reclaimed->mix->text == "MX-02/1");
  open.trigger("action_page_bags");
  CHECK(open.find<QLabel>("bag_tested")->text().contains(QStringLiteral("not yet")));
}

TEST_CASE("Grain taken back from the tree on screen is one step", "[bins_tab]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  const std::size_t before = open.record->workbook().count(RecordKind::bag);
  open.window.record_pages()->bags().take_back(QStringLiteral("TR-03"));
  REQUIRE(open.record->workbook().count(RecordKind::bag) == before + 1);
  const Bag bag = open.record->workbook().all<Bag>().back().record;
  CHECK(bag.lot == "taken back");
  REQUIRE(bag.reclaimed);
  CHECK(bag.reclaimed->tree.text == "TR-03");
  REQUIRE(bag.reclaimed->mix);
  CHECK(bag.reclaimed->mix->text == "MX-02/1");
  open.trigger("action_record_undo");
  CHECK(open.record->workbook().count(RecordKind::bag) == before);
}
