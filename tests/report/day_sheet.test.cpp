#include "gritwright/report/day_sheet.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <string>
#include <string_view>

#include "gritwright/report/day_report.hpp"

using namespace gritwright;

namespace {

/// An invented day of two trees in one mix of two grains.
PlannedDay invented_day() {
  PlannedDay day;
  day.name = "first pines";
  day.day = "2026-03-14";
  day.sheet_revision = 3;
  DayMix mix;
  mix.name = "pines";
  mix.version = 2;
  for (const char* name : {"akadama 3-6", "bark"}) {
    Component grain;
    grain.name = name;
    grain.parts = Parts(name[0] == 'a' ? 2 : 1);
    grain.grain.bulk_density = bulk_g_l(500);
    grain.grain.particle_density = particle_g_l(950);
    grain.sizes = SingleSize{aperture_mm(4)};
    mix.mix.components.push_back(grain);
  }
  mix.mix.settling = Settling(0.08);
  mix.mix.spill = Spill(0.07);
  day.mixes = {mix};
  for (const char* name : {"T-01", "T-02"}) {
    PlannedTree tree;
    tree.name = name;
    tree.species = "invented pine";
    tree.mix = "pines";
    tree.fill = pot_ml(4000);
    tree.kept_root_mass = mass_kg(12);
    tree.bud = name[3] == '2' ? "opening" : "swelling";
    day.trees.push_back(tree);
  }
  GrainSupply bag;
  bag.bag = "K-07";
  bag.component = "akadama 3-6";
  bag.material = "akadama";
  bag.keeps = SizeBand{aperture_mm(2.8), aperture_mm(6.3)};
  bag.stock = loose_l(30);
  day.shelf = {bag};
  day.tub = loose_l(6);
  day.scoop = loose_l(0.5);
  day.checklist = {{"feed the dog", true, false}, {"ring the helpers", false, false}};
  return day;
}

DayAnswer answered(const PlannedDay& day) {
  auto answer = work_out(day);
  REQUIRE(answer);
  return *answer;
}

std::string all_text(const PrintDocument& document) {
  std::string text = document.title + '\n' + document.subtitle + '\n' + document.foot + '\n';
  struct Add {
    std::string& into;
    void operator()(const PrintText& block) const { into += block.text + '\n'; }
    void operator()(const PrintTicks& block) const {
      for (const std::string& line : block.lines) into += line + '\n';
    }
    void operator()(const PrintTable& block) const {
      for (const auto& row : block.rows)
        for (const std::string& cell : row) into += cell + '\n';
    }
    void operator()(const PrintDrawing& block) const { into += block.title + '\n'; }
  };
  for (const PrintSection& section : document.sections) {
    text += section.title + '\n';
    for (const PrintBlock& block : section.blocks) std::visit(Add{text}, block);
  }
  return text;
}

const PrintSection& section_of(const PrintDocument& document, const std::string& title) {
  const auto found = std::ranges::find(document.sections, title, &PrintSection::title);
  REQUIRE(found != document.sections.end());
  return *found;
}

}  // namespace

TEST_CASE("The day sheet names its revision, what is screened, each tree and what is heavy", "[day_sheet]") {
  const PlannedDay day = invented_day();
  const std::string text = all_text(day_sheet(day, answered(day), UnitSystem::metric));
  for (const char* part : {"first pines", "2026-03-14", "sheet revision 3", "Screen ", "of K-07 at 2.8 mm to 6.3 mm for akadama 3-6", "75 %, typical: measure",
                           "T-01, invented pine", "T-02, invented pine", "pines version 2", "at least", "safety sheets, local codes and qualified advice prevail",
                           "Legionella", "no fertiliser for 3 to 6 weeks"})
    CHECK(text.find(part) != std::string::npos);
  CHECK(text.find("asbestos") == std::string::npos);
}

TEST_CASE("A caution is given for a grain whatever the language it is named in", "[day_sheet]") {
  for (const char* name : {"Rinde, grob", "Écorce de pin", "CORTEZA", "松バーク", "bark"}) {
    PlannedDay day = invented_day();
    day.mixes.front().mix.components.back().name = name;
    INFO(name);
    CHECK(std::ranges::any_of(day_cautions(day, answered(day), {}), [](const std::string& line) { return line.find("Legionella") != std::string::npos; }));
  }
  PlannedDay day = invented_day();
  day.mixes.front().mix.components.back().name = "pumice";
  CHECK(std::ranges::none_of(day_cautions(day, answered(day), {}), [](const std::string& line) { return line.find("Legionella") != std::string::npos; }));
}

TEST_CASE("What is lifted is named in the reader's language", "[day_sheet]") {
  const auto german = [](std::string_view text) { return text == "{tree} in {pot}" ? std::string("{pot} mit {tree}") : std::string(text); };
  Lift lift;
  lift.what = "T-01";
  CHECK(lift_name(lift, german) == "T-01");
  lift.pot = "tray";
  CHECK(lift_name(lift, {}) == "T-01 in tray");
  CHECK(lift_name(lift, german) == "tray mit T-01");
}

TEST_CASE("The evening before and the morning are kept apart, with the grower's own lines", "[day_sheet]") {
  const PlannedDay day = invented_day();
  const DayChecklist list = day_checklist(day, answered(day), UnitSystem::metric);
  CHECK(std::ranges::count(list.evening, "feed the dog") == 1);
  CHECK(std::ranges::count(list.morning, "ring the helpers") == 1);
  CHECK(std::ranges::count(list.morning, "feed the dog") == 0);
  CHECK(std::ranges::any_of(list.buy, [](const std::string& line) { return line.find("bark") != std::string::npos; }));
}

TEST_CASE("Trees stand on the sheet in working order, with room for plan, litres and note", "[day_sheet]") {
  const PlannedDay day = invented_day();
  const PrintDocument sheet = day_sheet(day, answered(day), UnitSystem::metric);
  const auto& table = std::get<PrintTable>(section_of(sheet, "Trees in working order").blocks.front());
  REQUIRE(table.rows.size() == 2);
  CHECK(table.rows[0][1].starts_with("T-02"));
  for (const auto& row : table.rows) CHECK(row.size() == table.heading.size());
}

TEST_CASE("Layers stand on the sheet beside their tree and in the totals", "[day_sheet]") {
  PlannedDay day = invented_day();
  const std::string without = all_text(day_sheet(day, answered(day), UnitSystem::metric));
  CHECK(without.find("sphagnum") == std::string::npos);
  day.trees[1].layers = {{"sphagnum", pot_ml(855.6), bulk_g_l(25)}};
  const PrintDocument sheet = day_sheet(day, answered(day), UnitSystem::metric);
  // 855.6 mL/(.92 . .93) = 1 L.
  const auto with = all_text(sheet);
  CHECK(with.find("sphagnum 1.00 L") != std::string::npos);
  CHECK(with.find("Moss: sphagnum can carry a skin infection") != std::string::npos);
  const auto section = std::ranges::find(sheet.sections, "Trees in working order", &PrintSection::title);
  REQUIRE(section != sheet.sections.end());
  const auto& table = std::get<PrintTable>(section->blocks.front());
  CHECK(std::ranges::find(table.heading, "layers") != table.heading.end());
  CHECK(table.heading.back() == "done: plan, litres, note");
  CHECK(static_cast<std::size_t>(table.written_by_hand) == table.heading.size() - 1);
}

TEST_CASE("Every batch has a card with its scoops", "[day_sheet]") {
  const PlannedDay day = invented_day();
  const DayAnswer answer = answered(day);
  const PrintDocument cards = batch_cards(day, answer, UnitSystem::metric);
  REQUIRE(answer.mixes[0].batches);
  const auto& batches = answer.mixes[0].batches->batches;
  REQUIRE(batches.size() > 1);
  REQUIRE(cards.sections.size() == batches.size());
  CHECK(cards.sections[0].title == "pines version 2, batch 1 of " + std::to_string(batches.size()));
  const auto& table = std::get<PrintTable>(cards.sections[0].blocks.front());
  CHECK(table.rows[0][1] == std::to_string(batches[0].scoops[0]));
  CHECK(all_text(cards).find("T-01") != std::string::npos);
}

TEST_CASE("A pot label names tree, species, day, mix with its version, and the bags of its grain", "[day_sheet]") {
  const PlannedDay day = invented_day();
  const LabelSheet sheet = pot_labels(day, answered(day));
  REQUIRE(sheet.labels.size() == 2);
  const PrintLabel& label = sheet.labels[1];
  CHECK(label.heading == "T-01");
  std::string text;
  for (const std::string& line : label.lines) text += line + '\n';
  for (const char* part : {"invented pine", "2026-03-14", "plan A", "pines version 2", "akadama 3-6 (K-07)", "bark"}) CHECK(text.find(part) != std::string::npos);
}

TEST_CASE("Sheets part their lists with the reader's marks", "[day_sheet]") {
  const auto japanese = [](std::string_view text) {
    if (text == ", ") return std::string("\u3001");
    return text == "; " ? std::string("\uff1b") : std::string(text);
  };
  const PlannedDay day = invented_day();
  const DayAnswer answer = answered(day);
  const std::string all = all_text(day_sheet(day, answer, UnitSystem::metric, japanese)) + all_text(batch_cards(day, answer, UnitSystem::metric, japanese));
  CHECK(all.find("T-01\u3001invented pine") != std::string::npos);
  CHECK(all.find("\uff1bT-0") != std::string::npos);  // two trees of one batch
  CHECK(pot_labels(day, answer, japanese).labels.front().lines[1].starts_with("2026-03-14\u3001"));
}

TEST_CASE("A sheet in US units has no litres", "[day_sheet]") {
  PlannedDay day = invented_day();
  day.scoop.reset();
  const std::string text = all_text(day_sheet(day, answered(day), UnitSystem::us));
  CHECK(text.find(" qt") != std::string::npos);
  CHECK(text.find(" L ") == std::string::npos);
  CHECK(text.find(" mL") == std::string::npos);
}

TEST_CASE("Buds stand on the sheet in the reader's words, others as they were typed", "[day_sheet]") {
  const Translate upper = [](std::string_view text) { return text == "swelling" ? std::string("schwellend") : std::string(text); };
  PlannedDay day = invented_day();
  day.trees[1].bud = "fat";
  const std::string text = all_text(day_sheet(day, answered(day), UnitSystem::metric, upper));
  CHECK(text.find("schwellend") != std::string::npos);
  CHECK(text.find("fat") != std::string::npos);
  // In the order in which the work goes by them.
  for (std::size_t i = 0; i < bud_states().size(); ++i) CHECK(bud_rank(std::string(bud_states()[i])) == static_cast<int>(i));
}

TEST_CASE("Lifts quote the pot tests that the water rests on", "[day_sheet]") {
  const PlannedDay day = invented_day();
  DayAnswer answer = answered(day);
  answer.notes.push_back({"mix.calibrated-by-tests", Level::note, "pines", {{"test", "PT-01"}, {"mix", "M-03/2"}, {"count", 2.0}, {"k_cm_mm", 9.5}}});
  const PrintDocument sheet = day_sheet(day, answer, UnitSystem::metric);
  const auto lifts = std::ranges::find(sheet.sections, "Lifts", &PrintSection::title);
  REQUIRE(lifts != sheet.sections.end());
  REQUIRE(lifts->blocks.size() == 2);
  const std::string text = std::get<PrintText>(lifts->blocks.back()).text;
  CHECK(text.find("pines: ") == 0);
  CHECK(text.find("PT-01") != std::string::npos);
}

TEST_CASE("Grain that goes by the number of its bag is named by its material on sheet, card and label", "[day_sheet][regression]") {
  PlannedDay day = invented_day();
  Component& grain = day.mixes.front().mix.components.front();
  grain.name = "A-01/2";
  grain.material = "akadama";
  day.shelf.front().bag = "A-01/2";
  day.shelf.front().component = "A-01/2";
  day.shelf.front().screened = true;
  day.shelf.front().keeps.reset();
  const DayAnswer answer = answered(day);
  const std::string sheet = all_text(day_sheet(day, answer, UnitSystem::metric));
  CHECK(sheet.find("of A-01/2 for akadama") != std::string::npos);
  CHECK(sheet.find("for A-01/2") == std::string::npos);
  CHECK(all_text(batch_cards(day, answer, UnitSystem::metric)).find("A-01/2, akadama\n") != std::string::npos);
  const LabelSheet labels = pot_labels(day, answer);
  CHECK(std::ranges::any_of(labels.labels.front().lines, [](const std::string& line) { return line.find("A-01/2, akadama") != std::string::npos; }));
}

TEST_CASE("A card whose scoops are off the recipe says by how much", "[day_sheet][regression]") {
  PlannedDay day = invented_day();
  DayMix& mix = day.mixes.front();
  mix.mix.components.push_back(mix.mix.components.back());
  mix.mix.components.back().name = "pumice";
  // Of 6 : 1 : 2 the scoops make 3 : 1 : 1, that is 20 % of the bark instead of 11 %.
  for (const auto& [at, parts] : {std::pair{0, 6.0}, {1, 1.0}, {2, 2.0}}) mix.mix.components[static_cast<std::size_t>(at)].parts = Parts(parts);
  day.trees.resize(1);
  day.trees.front().fill = pot_ml(1900);
  const DayAnswer answer = answered(day);
  REQUIRE(answer.mixes.front().batches);
  REQUIRE(answer.mixes.front().batches->batches.front().scoops == std::vector<int>{3, 1, 1});
  CHECK(all_text(batch_cards(day, answer, UnitSystem::metric)).find("up to 8.9 points off the recipe") != std::string::npos);
}

TEST_CASE("That a day lies outside a tree's window is read first on its sheet", "[day_sheet][regression]") {
  PlannedDay day = invented_day();
  day.trees.front().window_opens = "04-01";
  day.trees.front().window_closes = "05-01";
  const PrintDocument sheet = day_sheet(day, answered(day), UnitSystem::metric);
  PrintDocument first;
  first.sections = {sheet.sections.front()};
  CHECK(all_text(first).find("outside the tree's window") != std::string::npos);
  std::size_t times = 0;
  const std::string text = all_text(sheet);
  for (auto at = text.find("outside the tree's window"); at != std::string::npos; at = text.find("outside the tree's window", at + 1)) ++times;
  CHECK(times == 1);
}

TEST_CASE("What must be bought is read before what the shelf gives", "[day_sheet]") {
  const PlannedDay day = invented_day();
  const DayAnswer answer = answered(day);
  REQUIRE_FALSE(answer.buy.empty());
  REQUIRE_FALSE(answer.taken.empty());
  const DaySections sections = day_sections(day, answer, UnitSystem::metric);
  REQUIRE(sections.shelf.size() == 2);
  CHECK(sections.shelf[0].title == "To buy");
  CHECK(sections.shelf[1].title == "From the shelf");
}

TEST_CASE("Beside what bags give it is said that they are counted by mass, not by the litres printed on them", "[day_sheet]") {
  PlannedDay day = invented_day();
  const auto says_so = [&] {
    const DaySections sections = day_sections(day, answered(day), UnitSystem::metric);
    const auto taken = std::ranges::find(sections.shelf, "From the shelf", &PrintSection::title);
    REQUIRE(taken != sections.shelf.end());
    return std::ranges::any_of(taken->blocks, [](const PrintBlock& block) {
      const auto* text = std::get_if<PrintText>(&block);
      return text != nullptr && text->text.find("by its dry mass and its litre weight") != std::string::npos;
    });
  };
  CHECK_FALSE(says_so());
  day.shelf.front().bag_volume = loose_l(18);
  CHECK(says_so());
}
