// What a mix loses on a repotting day: as typed for it or the day, as tubs and trees taught, or as is usual.
#include <catch2/catch.hpp>
#include <cmath>
#include <string>

#include "day_trees_on_screen.hpp"
#include "gritwright/models/litres.hpp"
#include "record_pages.hpp"

using namespace gritwright;
using namespace gritwright::desktop;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

/// The day of a mix that tells neither settling nor spill.
class PlainMixOnDay : public SeveralBags {
 public:
  QString field(const char* name) { return find<QLineEdit>(name)->text(); }
  const Mix& mix_of_day() { return (planned = ground().plan).mixes.front().mix; }
  double spill() { return page().answer()->value().mixes.front().spill.value(); }
  double settling() { return page().answer()->value().mixes.front().settling.value(); }

  PlannedDay planned;
};

}  // namespace

TEST_CASE("A spill typed as 7 % stays and counts before what was learnt, and one undo takes it back", "[day_page][regression]") {
  PlainMixOnDay open;
  open.write(0, DayTreesModel::used, QStringLiteral("4"));
  open.tick(0);
  open.return_tub("5", "0");
  open.find<QTabWidget>("day_tabs")->setCurrentIndex(0);
  REQUIRE(open.ground().learnt.spill);
  const double learnt = open.ground().learnt.spill->value();
  REQUIRE(std::abs(learnt - default_spill.value()) > 0.001);
  CHECK_FALSE(open.day().spill);
  CHECK(open.field("day_spill").isEmpty());
  CHECK_FALSE(open.mix_of_day().spill);
  CHECK_THAT(open.spill(), WithinAbs(learnt, 1e-12));
  open.type_into("day_spill", QStringLiteral("7"));
  CHECK(open.day().spill == Spill(0.07));
  CHECK(open.field("day_spill").startsWith(u'7'));
  CHECK_THAT(open.spill(), WithinAbs(0.07, 1e-12));
  open.trigger("action_record_undo");
  CHECK_FALSE(open.day().spill);
  CHECK(open.field("day_spill").isEmpty());
  CHECK_THAT(open.spill(), WithinAbs(learnt, 1e-12));
  open.type_into("day_spill", QStringLiteral("0"));
  CHECK(open.day().spill == Spill(0));
  CHECK(open.spill() == 0);
  open.type_into("day_spill", QString());
  CHECK_FALSE(open.day().spill);
  CHECK_THAT(open.spill(), WithinAbs(learnt, 1e-12));
}

TEST_CASE("A settling typed as 0 stays and counts as poured, an empty one as what was learnt", "[day_page][regression]") {
  PlainMixOnDay open;
  CHECK_FALSE(open.day().settling);
  CHECK_FALSE(open.mix_of_day().settling);
  const double otherwise = open.settling();
  REQUIRE(otherwise == open.ground().learnt.settling.value_or(Settling(0)).value());
  open.type_into("day_settling", QStringLiteral("0"));
  CHECK(open.day().settling == Settling(0));
  CHECK(open.field("day_settling").startsWith(u'0'));
  CHECK(open.mix_of_day().settling == Settling(0));
  CHECK(open.settling() == 0);
  for (const Note& note : open.page().answer()->value().notes) {
    CHECK(note.code != "day.no-settling");
    CHECK(note.code != "day.settling-learnt");
  }
  open.trigger("action_record_undo");
  CHECK_FALSE(open.day().settling);
  CHECK(open.field("day_settling").isEmpty());
  CHECK(open.settling() == otherwise);
}

TEST_CASE("A mix that tells a settling and a spill of 0 keeps them on a day that tells others", "[day_page][regression]") {
  PlainMixOnDay open;
  open.type_into("day_settling", QStringLiteral("8"));
  open.type_into("day_spill", QStringLiteral("10"));
  CHECK_THAT(open.settling(), WithinAbs(0.08, 1e-12));
  CHECK_THAT(open.spill(), WithinAbs(0.10, 1e-12));
  const auto stored = open.book().find(open.perlite);
  MixVersion poured = stored->record;
  poured.mix.settling = Settling(0);
  poured.mix.spill = Spill(0);
  REQUIRE(open.record->replace(*stored, poured, QStringLiteral("mix")));
  CHECK(open.settling() == 0);
  CHECK(open.spill() == 0);
  // Laid on the bench it is as it was told, and one that tells nothing stays so.
  open.window.record_pages()->open_mix(QString::fromStdString(open.perlite.text));
  CHECK(open.bench.state().settling == QStringLiteral("0"));
  CHECK(open.bench.state().spill == QStringLiteral("0"));
  open.trigger("action_record_undo");
  open.window.record_pages()->open_mix(QString::fromStdString(open.perlite.text));
  CHECK(open.bench.state().settling.isEmpty());
  CHECK(open.bench.state().spill.isEmpty());
}

TEST_CASE("Spill is learnt only where all of a mix's trees and tubs are known", "[day_page][regression]") {
  DayOnScreen open;
  open.put(open.add_tree("second pine"));
  open.put(open.add_tree("third pine"));
  const std::size_t known = open.ground().learnt.spills.size();
  // 10 L made, .7 left, 8.7 poured in: 1 - 8.7/9.3 = 6.45 %. Without the third tree's litres it would be 1 - 4.5/9.3 = 52 %.
  open.write(0, DayTreesModel::used, QStringLiteral("2"));
  open.write(1, DayTreesModel::used, QStringLiteral("2.5"));
  open.trigger("action_day_evening");
  open.return_tub("10", "0.7");
  CHECK(open.ground().learnt.spills.size() == known);
  open.find<QTableView>("day_table")->setCurrentIndex(open.lines().index(2, DayTreesModel::tree));
  open.trigger("action_day_tick");
  REQUIRE(open.day().trees[2].done);
  CHECK(open.ground().learnt.spills.size() == known);
  open.write(2, DayTreesModel::used, QStringLiteral("4.2"));
  REQUIRE(open.ground().learnt.spills.size() == known + 1);
  CHECK_THAT(open.ground().learnt.spills.back().value(), WithinAbs(1 - 8.7 / 9.3, 1e-9));
}

TEST_CASE("Two tubs of a mix teach its spill together, and its grain leaves the bags once", "[day_page][regression]") {
  DayOnScreen open;
  const RecordRef bag = *open.book().find(open.mix)->record.sources.front();
  const double before_g = in_g(*open.book().stock_of(bag));
  open.write(0, DayTreesModel::used, QStringLiteral("12"));
  open.trigger("action_day_tick");
  const double twelve_litres_g = before_g - in_g(*open.book().stock_of(bag));
  open.return_tub("8", "0");
  // Twelve of the eight litres made so far: the second tub is still to be entered.
  CHECK_THAT(before_g - in_g(*open.book().stock_of(bag)), WithinRel(twelve_litres_g, 1e-6));
  open.return_tub("8", "3.2");
  CHECK_THAT(before_g - in_g(*open.book().stock_of(bag)), WithinRel(twelve_litres_g * 16 / 12, 1e-6));
  // 16 made, 3.2 left, 12 poured in: 1 - 12/12.8.
  REQUIRE_FALSE(open.ground().learnt.spills.empty());
  CHECK_THAT(open.ground().learnt.spills.back().value(), WithinAbs(1 - 12 / 12.8, 1e-9));
}
