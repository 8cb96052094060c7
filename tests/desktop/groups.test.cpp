// The groups of trees and their wishes: changed, added, left out, restored, and what a search then starts with.
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableWidget>

#include "models/tree_groups.hpp"
#include "pages/groups_page.hpp"
#include "pages/mix_page.hpp"
#include "record_pages.hpp"
#include "support.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

struct OpenGroups : OpenWindow {
  OpenGroups() { trigger("action_groups"); }
  GroupsPage& page() { return window.record_pages()->groups(); }
  void show(const char* name) {
    page().show_group(QString::fromLatin1(name));
    QApplication::processEvents();
  }
  void press_button(const char* name) {
    find<QPushButton>(name)->click();
    QApplication::processEvents();
  }
  void type_into(const char* name, const char* text) {
    auto* field = find<QLineEdit>(name);
    field->setFocus();
    field->selectAll();
    type(QString::fromLatin1(text));
  }
  QTableWidgetItem* wish(WishRow row, int column) { return find<QTableWidget>("group_wishes_table")->item(static_cast<int>(row), column); }
  void set_wish(WishRow row, int column, const char* text) {
    wish(row, column)->setText(QString::fromLatin1(text));
    QApplication::processEvents();
  }
  /// The state column of a group in the list; empty if it is not there.
  QString state_of(const char* name) {
    auto* list = find<QTableWidget>("groups_table");
    for (int row = 0; row < list->rowCount(); ++row)
      if (list->item(row, 0)->text() == QLatin1String(name)) return list->item(row, 1)->text();
    return {};
  }
  std::vector<Stored<SpeciesProfile>> kept() { return record->workbook().all<SpeciesProfile>(); }
  bool is_offered(const char* name) { return find<QComboBox>("find_group")->findData(QString::fromLatin1(name)) > 0; }
};

}  // namespace

TEST_CASE("The groups of common practice are listed until the grower changes them", "[groups]") {
  OpenGroups open;
  CHECK(open.find<QTableWidget>("groups_table")->rowCount() == static_cast<int>(common_profiles().size()));
  CHECK(open.state_of("conifers") == QStringLiteral("common practice"));
  CHECK(open.kept().empty());
  open.show("conifers");
  CHECK(open.find<QLineEdit>("groups_band_from")->text() == QStringLiteral("3"));
  CHECK(open.wish(WishRow::air, 1)->text() == QStringLiteral("10"));
  // Its name is what it is restored by.
  CHECK_FALSE(open.find<QLineEdit>("groups_name")->isVisible());
}

TEST_CASE("A changed group is kept in the record, starts a search, and comes back by undo or restoring", "[groups]") {
  OpenGroups open;
  open.show("conifers");
  open.set_wish(WishRow::air, 1, "18");
  open.type_into("groups_band_to", "8");
  REQUIRE(open.kept().size() == 1);
  const SpeciesProfile kept = open.kept().front().record;
  CHECK(kept.name == "conifers");
  CHECK(check(kept).empty());
  CHECK(open.state_of("conifers") == QStringLiteral("changed"));
  open.press_button("groups_find");
  CHECK(open.window.pages().currentWidget() == &open.window.mix_page());
  CHECK(open.bench.state().find.wish(WishRow::air).least == QStringLiteral("18"));
  CHECK(open.bench.state().band_to == QStringLiteral("8"));
  open.trigger("action_groups");
  open.press_button("groups_restore");
  CHECK(open.kept().empty());
  CHECK(open.wish(WishRow::air, 1)->text() == QStringLiteral("10"));
  open.trigger("action_record_undo");
  CHECK(open.wish(WishRow::air, 1)->text() == QStringLiteral("18"));
  open.trigger("action_record_undo");
  CHECK(open.find<QLineEdit>("groups_band_to")->text() == QStringLiteral("6"));
  open.trigger("action_record_undo");
  CHECK(open.kept().empty());
}

TEST_CASE("A group of the grower's own is added like another, named, offered and deleted", "[groups]") {
  OpenGroups open;
  open.show("acid lovers");
  open.press_button("groups_add");
  // The name waits to be typed over.
  open.type(QStringLiteral("azaleas on the wall"));
  REQUIRE(open.kept().size() == 1);
  CHECK(open.kept().front().record.name == "azaleas on the wall");
  CHECK(open.kept().front().record.group == SpeciesGroup::acid_lover);
  CHECK(open.state_of("azaleas on the wall") == QStringLiteral("own"));
  CHECK(open.is_offered("azaleas on the wall"));
  open.type_into("groups_parts", "7 kanuma : 3 sphagnum");
  CHECK(open.kept().front().record.starting_parts == std::vector<StartingPart>{{"kanuma", Parts(7)}, {"sphagnum", Parts(3)}});
  open.find<QTableWidget>("groups_table")->setFocus();
  open.press(Qt::Key_Delete);
  CHECK(open.kept().empty());
  CHECK_FALSE(open.is_offered("azaleas on the wall"));
  open.trigger("action_record_undo");
  CHECK(open.is_offered("azaleas on the wall"));
}

TEST_CASE("A group that is left out is not offered until it is restored, as it was changed and then as common practice has it", "[groups]") {
  OpenGroups open;
  open.show("tropicals");
  open.set_wish(WishRow::water, 1, "35");
  open.press_button("groups_remove");
  CHECK(open.state_of("tropicals") == QStringLiteral("left out"));
  CHECK_FALSE(open.is_offered("tropicals"));
  open.press_button("groups_restore");
  CHECK(open.is_offered("tropicals"));
  CHECK(open.wish(WishRow::water, 1)->text() == QStringLiteral("35"));
  open.press_button("groups_restore");
  CHECK(open.state_of("tropicals") == QStringLiteral("common practice"));
  CHECK(open.wish(WishRow::water, 1)->text() == QStringLiteral("25"));
}

TEST_CASE("Wishes of every kind are typed, read back the same, and taken away by emptying them", "[groups][roundtrip]") {
  SpeciesProfile profile = common_profiles().front();
  const std::pair<WishRow, WishText> typed[] = {{WishRow::band, {QStringLiteral("80"), QStringLiteral("95"), true, {}}},
                                                {WishRow::finer, {{}, QStringLiteral("3"), false, QStringLiteral("2")}},
                                                {WishRow::air, {QStringLiteral("12"), QStringLiteral("30"), false, {}}},
                                                {WishRow::water, {QStringLiteral("30"), {}, true, {}}},
                                                {WishRow::available, {QStringLiteral("15"), {}, false, {}}},
                                                {WishRow::wet_mass, {{}, QStringLiteral("1100"), false, {}}},
                                                {WishRow::exchange, {QStringLiteral("40"), {}, false, {}}},
                                                {WishRow::price, {{}, local("1.5"), false, {}}},
                                                {WishRow::limits, {local("4.75 90-100; 2.36 34-50"), {}, false, {}}},
                                                {WishRow::nearest, {local("4.75 95; 2.36 42"), {}, false, {}}}};
  for (const auto& [row, text] : typed) {
    INFO("row " << static_cast<int>(row));
    CHECK(change_wish(profile, row, text).empty());
  }
  CHECK(check(profile).empty());
  const GroupSheet sheet = sheet_of(profile);
  for (const auto& [row, text] : typed) {
    INFO("row " << static_cast<int>(row));
    CHECK(sheet.wishes[static_cast<std::size_t>(row)] == text);
  }
  for (const auto& [row, text] : typed) CHECK(change_wish(profile, row, {}).empty());
  CHECK(profile.wishes.empty());
  CHECK(starting_parts_text(*starting_parts_of(QStringLiteral("5 akadama : 3 pumice"), test_catalogue())) == QStringLiteral("5 akadama : 3 pumice"));
}

TEST_CASE("What can't be a wish or a name is told beside it and the group stays as it was", "[groups][refuses]") {
  OpenGroups open;
  open.show("conifers");
  auto* faults = open.find<QLabel>("group_wish_faults");
  SECTION("a number that is none") {
    open.set_wish(WishRow::water, 1, "much");
    CHECK_FALSE(open.wish(WishRow::water, 1)->toolTip().isEmpty());
    CHECK(open.wish(WishRow::water, 1)->text() == QStringLiteral("much"));
    CHECK(faults->text().contains(QStringLiteral("water in pot")));
  }
  SECTION("limits upside down") {
    open.set_wish(WishRow::air, 2, "5");
    CHECK(faults->text().contains(QStringLiteral("down to")));
  }
  SECTION("a curve that can't be read") {
    open.set_wish(WishRow::limits, 1, "4.75 lots");
    CHECK(faults->text().contains(QStringLiteral("expected a size in mm")));
  }
  SECTION("a band upside down") { open.type_into("groups_band_from", "9"); }
  SECTION("parts without a name") { open.type_into("groups_parts", "5"); }
  CHECK(open.kept().empty());
  // Half-typed things do not follow to another group.
  open.show("tropicals");
  CHECK_FALSE(faults->isVisible());
  open.show("conifers");
  CHECK_FALSE(faults->isVisible());
  open.press_button("groups_add");
  open.type_into("groups_name", "tropicals");
  REQUIRE(open.kept().size() == 1);
  CHECK(open.kept().front().record.name != "tropicals");
  CHECK(open.find<QLineEdit>("groups_name")->accessibleDescription().contains(QStringLiteral("group is called tropicals")));
}
