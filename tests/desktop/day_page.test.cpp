#include "pages/day_page.hpp"

#include <QComboBox>
#include <QDate>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QSettings>
#include <QTabWidget>
#include <QTableView>
#include <QTranslator>
#include <algorithm>
#include <cmath>

#include "gritwright/models/mix_state.hpp"
#include "models/bud_words.hpp"
#include "models/day_certainty.hpp"
#include "models/day_trees_model.hpp"
#include "models/record_surroundings.hpp"
#include "day_on_screen.hpp"
#include "support.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

TEST_CASE("A tree put on a day brings its mix and pot, and all the pot holds is counted", "[day_page]") {
  DayOnScreen open;
  REQUIRE(open.lines().rowCount() == 1);
  const DayTree row = open.day().trees.front();
  CHECK(row.mix == open.mix);
  CHECK(row.container == open.pot);
  REQUIRE(open.page().answer());
  REQUIRE(open.page().answer()->ok());
  const DayAnswer& answer = open.page().answer()->value();
  CHECK(answer.trees.front().whole_pot);
  CHECK(in_l(answer.mixes.front().needed) > 0);
  CHECK_FALSE(open.lines().lines().front().pour.isEmpty());
  // Every component goes by the bag it is taken from.
  for (const GrainTaken& taken : answer.taken) CHECK(open.book().find(Id<Bag>{taken.component}));
}

TEST_CASE("How sure the litres of a day are stands below them, as the draws of the day say", "[day_page]") {
  DayOnScreen open;
  open.page().finish_ranges();
  const DayAnswer& answer = open.page().answer()->value();
  auto* tabs = open.find<QTabWidget>("day_tabs");
  const auto said = [&](const QString& words) {
    for (int tab = 0; tab < tabs->count(); ++tab) {
      for (const QLabel* label : tabs->widget(tab)->findChildren<QLabel*>())
        if (label->text().contains(words)) return true;
    }
    return false;
  };
  CHECK(said(QStringLiteral("How sure are the litres?")));
  const auto& calibrations = open.record->calibrations();
  const DayGround ground = ground_of(open.book(), test_catalogue(), Id<RepottingDay>{open.page().current_day().toStdString()}, calibrations);
  const DayRanges ranges = day_ranges(ground.plan, spreads_of(ground.plan, ground.mixes, open.book(), test_catalogue(), calibrations));
  CHECK(ranges.mixes.front().needed_l.low < in_l(answer.mixes.front().needed));
  CHECK(ranges.mixes.front().needed_l.high > in_l(answer.mixes.front().needed));
  const auto sections = litres_certainty(ranges, answer.mixes, answer.components, UnitSystem::metric);
  REQUIRE(sections.size() == 1);
  const auto& table = std::get<PrintTable>(sections.front().blocks.front());
  REQUIRE(table.rows.size() == answer.mixes.size() + answer.components.size());
  CHECK(table.rows.front()[1] == volume_text(ranges.mixes.front().needed_l.low, UnitSystem::metric));
}

TEST_CASE("Bags to buy have their range, and what may run short its chance", "[day_page]") {
  DayRanges ranges;
  ranges.buy = {{"pumice", {}, {12, 15, 19}, Range{1, 1, 2}, 1.0}, {"grit", {}, {2, 3, 4}, {}, 1.0}};
  ranges.may_buy = {{"akadama", {}, {}, {}, 0.12}, {"kiryu", {}, {}, {}, 0.001}};
  const auto sections = bags_certainty(ranges, UnitSystem::metric);
  REQUIRE(sections.size() == 1);
  REQUIRE(sections.front().blocks.size() == 2);
  const auto& table = std::get<PrintTable>(sections.front().blocks[0]);
  REQUIRE(table.rows.size() == 2);
  CHECK(table.rows[0] == std::vector<std::string>{"bags of pumice", "1", "1", "2"});
  CHECK(table.rows[1][2] == volume_text(3, UnitSystem::metric));
  CHECK(std::get<PrintText>(sections.front().blocks[1]).text.find("akadama may run short: in 12 of 100") == 0);
  CHECK(bags_certainty({}, UnitSystem::metric).empty());
}

TEST_CASE("Ticking a tree off books grain, history and log in one step, and undo gives all back", "[day_page]") {
  DayOnScreen open;
  const std::string id = open.day().trees.front().tree.text;
  const RecordRef bag = *open.book().find(open.mix)->record.sources.front();
  const auto before = open.book().stock_of(bag);
  REQUIRE(before);
  const auto log_before = open.book().count(RecordKind::log_entry);
  open.write(0, DayTreesModel::used, QStringLiteral("3.1"));
  open.trigger("action_day_tick");
  CHECK(open.day().trees.front().done);
  REQUIRE(open.tree(id).repottings.size() == 2);
  CHECK_THAT(in_l(*open.tree(id).repottings.back().filled), Catch::Matchers::WithinAbs(3.1, 1e-9));
  CHECK(in_g(*open.book().stock_of(bag)) < in_g(*before));
  CHECK(open.book().count(RecordKind::log_entry) > log_before);
  open.trigger("action_record_undo");
  CHECK_FALSE(open.day().trees.front().done);
  CHECK(open.tree(id).repottings.size() == 1);
  CHECK_THAT(in_g(*open.book().stock_of(bag)), Catch::Matchers::WithinAbs(in_g(*before), 1e-6));
}

TEST_CASE("Grain is booked by the litre weight its bag came with, not by the typical one its mix was designed with", "[day_page][regression]") {
  DayOnScreen open;
  const RecordRef bag = *open.book().find(open.mix)->record.sources.front();
  for (const auto& test : open.book().sieve_tests_of(bag)) {
    RecordedSieveTest without = test.record;
    without.test.bulk_density.reset();
    open.record->replace(test, without, QStringLiteral("litre weight of test"));
  }
  const auto stored = *open.book().find(Id<Bag>{bag.id});
  Bag weighed = stored.record;
  weighed.bulk_density.reset();
  weighed.volume = loose_l(14);
  weighed.mass_as_bagged = mass_g(14 * 595);
  weighed.moisture_basis = MoistureBasis::oven_dry;
  REQUIRE(open.record->replace(stored, weighed, QStringLiteral("weight of bag")));
  open.trigger("action_day_tick");
  std::optional<StockEntry> used;
  for (const auto& entry : open.book().all<StockEntry>())
    if (entry.record.holder == bag && entry.record.reason == StockReason::used) used = entry.record;
  REQUIRE(used);
  REQUIRE(used->density_used);
  CHECK_THAT(in_g_l(*used->density_used), Catch::Matchers::WithinAbs(595, 1e-6));
  CHECK_THAT(in_g(used->change), Catch::Matchers::WithinRel(-595 * in_l(*used->measured), 1e-9));
}

TEST_CASE("A bag whose coarsest sieve held some back goes as it came into the mix that was designed with it", "[day_page][regression]") {
  DayOnScreen open;
  const RecordRef bag = *open.book().find(open.mix)->record.sources.front();
  for (const auto& test : open.book().sieve_tests_of(bag)) {
    RecordedSieveTest coarse = test.record;
    // As if the sieves above had not been owned: what lay on them lies on the coarsest.
    while (coarse.test.rows.size() > 3) coarse.test.rows.erase(coarse.test.rows.begin());
    REQUIRE(open.record->replace(test, coarse, QStringLiteral("fewer sieves")));
  }
  const auto kept = *open.book().find(open.mix);
  MixVersion designed = kept.record;
  const auto graded = evaluate_component(*sheet_of_grain(open.book(), QString::fromStdString(bag.id)), test_catalogue()).component;
  REQUIRE(graded);
  REQUIRE(std::get<Grading>(graded->sizes).points.back().passing.value() < 0.99);
  designed.mix.components.front().sizes = graded->sizes;
  REQUIRE(open.record->replace(kept, designed, QStringLiteral("sizes")));
  const auto ground = open.ground();
  const auto supply = std::ranges::find(ground.plan.shelf, bag.id, &GrainSupply::bag);
  REQUIRE(supply != ground.plan.shelf.end());
  CHECK(supply->screened);
  CHECK_FALSE(supply->keeps);
  // A litre of it ready is a litre of the bag.
  const DayAnswer answer = open.page().answer()->value();
  const auto taken = std::ranges::find(answer.taken, bag.id, &GrainTaken::component);
  REQUIRE(taken != answer.taken.end());
  CHECK_THAT(in_l(taken->raw), Catch::Matchers::WithinRel(in_l(taken->ready), 1e-12));
}

TEST_CASE("A tick taken back returns the grain and the history", "[day_page]") {
  DayOnScreen open;
  const std::string id = open.day().trees.front().tree.text;
  const RecordRef bag = *open.book().find(open.mix)->record.sources.front();
  const double before_g = in_g(*open.book().stock_of(bag));
  open.trigger("action_day_tick");
  REQUIRE(open.day().trees.front().done);
  // The day's totals stay those of the whole day.
  CHECK(in_l(open.page().answer()->value().mixes.front().needed) > 0);
  open.trigger("action_day_tick");
  CHECK_FALSE(open.day().trees.front().done);
  CHECK(open.tree(id).repottings.size() == 1);
  CHECK_THAT(in_g(*open.book().stock_of(bag)), Catch::Matchers::WithinAbs(before_g, 1e-6));
}

TEST_CASE("The evening's table ticks off what has litres in one step and teaches the settling", "[day_page]") {
  DayOnScreen open;
  open.put(open.add_tree("second pine"));
  open.put(open.add_tree("third pine"));
  REQUIRE(open.lines().rowCount() == 3);
  auto* fill = open.find<QLineEdit>("day_tree_fill");
  for (int row = 0; row < 2; ++row) {
    open.find<QTableView>("day_table")->setCurrentIndex(open.lines().index(row, DayTreesModel::tree));
    fill->setText(QStringLiteral("1.8"));
    emit fill->textEdited(fill->text());
    open.write(row, DayTreesModel::used, QStringLiteral("2"));
  }
  open.trigger("action_day_evening");
  const RepottingDay day = open.day();
  CHECK(std::ranges::count_if(day.trees, &DayTree::done) == 2);
  // Two litres poured in for 1.8 L as it lies: a tenth.
  const DayGround ground = ground_of(open.book(), test_catalogue(), Id<RepottingDay>{open.page().current_day().toStdString()});
  REQUIRE(ground.learnt.settling);
  const auto& settlings = ground.learnt.settlings;
  REQUIRE(settlings.size() >= 2);
  for (std::size_t i = settlings.size() - 2; i < settlings.size(); ++i) CHECK_THAT(settlings[i].value(), Catch::Matchers::WithinAbs(0.1, 1e-9));
  CHECK(open.summary().find("median") != std::string::npos);
  open.trigger("action_record_undo");
  CHECK(std::ranges::count_if(open.day().trees, &DayTree::done) == 0);
}

TEST_CASE("Enter goes down a column of the evening's table, from tree to tree in the order it began with", "[day_page]") {
  DayOnScreen open;
  open.put(open.add_tree("second pine"));
  open.put(open.add_tree("third pine"));
  REQUIRE(open.lines().rowCount() == 3);
  auto* table = open.find<QTableView>("day_table");
  table->setFocus();
  std::vector<QString> trees;
  for (const DayLine& line : open.lines().lines()) trees.push_back(line.id);
  const auto used = [&](std::size_t at) {
    const auto rows = open.day().trees;
    return std::ranges::find(rows, trees[at].toStdString(), [](const DayTree& row) { return row.tree.text; })->used;
  };
  SECTION("litres") {
    table->setCurrentIndex(open.lines().index(0, DayTreesModel::used));
    open.type(local("4.5"));
    open.press(Qt::Key_Return);
    CHECK(table->currentIndex().row() == 1);
    open.type(QStringLiteral("many"));
    open.press(Qt::Key_Return);
    // What can't be read is not left behind.
    CHECK(table->currentIndex() == open.lines().index(1, DayTreesModel::used));
    open.type(local("1.7"));
    open.press(Qt::Key_Return);
    open.type(QStringLiteral("2"));
    open.press(Qt::Key_Return);
    CHECK(table->currentIndex().row() == 2);
    CHECK(used(0) == mixed_l(4.5));
    CHECK(used(1) == mixed_l(1.7));
    CHECK(used(2) == mixed_l(2));
  }
  SECTION("buds, which put the trees in another order") {
    table->setCurrentIndex(open.lines().index(0, DayTreesModel::buds));
    open.type(QStringLiteral("later"));
    open.press(Qt::Key_Return);
    CHECK(open.lines().lines()[static_cast<std::size_t>(table->currentIndex().row())].id == trees[1]);
    CHECK(table->currentIndex().column() == DayTreesModel::buds);
  }
}

TEST_CASE("Litres that can't be read are told and not saved", "[day_page][refuses]") {
  DayOnScreen open;
  open.write(0, DayTreesModel::used, QStringLiteral("many"));
  CHECK_FALSE(open.day().trees.front().used);
  auto* tub = open.find<QLineEdit>("day_tub");
  const auto was = open.day().tub;
  tub->setText(QStringLiteral("-3"));
  emit tub->textEdited(tub->text());
  CHECK(open.day().tub == was);
}

TEST_CASE("A day keeps the mix it was planned with when that is deleted, and says so", "[day_page]") {
  DayOnScreen open;
  REQUIRE(open.record->remove(*open.book().find(open.mix), QStringLiteral("mix")));
  REQUIRE(open.page().answer());
  REQUIRE(open.page().answer()->ok());
  const Notes& notes = open.page().answer()->value().notes;
  CHECK(std::ranges::find(notes, "day.mix-deleted", &Note::code) != notes.end());
  CHECK(open.lines().rowCount() == 1);
}

TEST_CASE("Grain that an earlier day wants is promised when a later day is added up", "[day_page]") {
  DayOnScreen open;
  auto* date = open.find<QLineEdit>("day_date");
  date->setText(QStringLiteral("2031-03-14"));
  emit date->textEdited(date->text());
  open.record->end_typing();
  const std::string second = open.add_tree("second pine");
  open.trigger("action_new_day");
  date->setText(QStringLiteral("2031-03-21"));
  emit date->textEdited(date->text());
  open.put(second);
  REQUIRE(open.day().trees.size() == 1);
  const DayGround ground = ground_of(open.book(), test_catalogue(), Id<RepottingDay>{open.page().current_day().toStdString()});
  const bool promised = std::ranges::any_of(ground.plan.shelf, [](const GrainSupply& supply) { return supply.reserved && in_l(*supply.reserved) > 0; });
  CHECK(promised);
  const SeasonGround season = season_of(open.book(), test_catalogue(), "2031-12-31");
  const auto answer = work_out(season.season);
  REQUIRE(answer);
  CHECK(answer->days.size() >= 2);
  CHECK_FALSE(answer->reservations.empty());
}

TEST_CASE("A left-over becomes a tub in stock", "[day_page]") {
  DayOnScreen open;
  const std::size_t before = open.book().count(RecordKind::batch);
  open.write(0, DayTreesModel::used, QStringLiteral("3"));
  open.trigger("action_day_tick");
  open.find<QTabWidget>("day_tabs")->setCurrentIndex(7);
  for (const auto& [name, text] : {std::pair{"day_made", "5"}, {"day_left", "1.5"}}) {
    auto* field = open.find<QLineEdit>(name);
    field->setText(QString::fromLatin1(text));
    emit field->textEdited(field->text());
  }
  open.find<QWidget>("day_return")->setFocus();
  open.press(Qt::Key_Space);
  REQUIRE(open.book().count(RecordKind::batch) == before + 1);
  const auto batch = open.book().all<Batch>().back();
  CHECK_THAT(in_l(*batch.record.made), Catch::Matchers::WithinAbs(5, 1e-9));
  REQUIRE(open.book().stock_of(ref_to(batch.id)));
  CHECK(in_g(*open.book().stock_of(ref_to(batch.id))) > 0);
}

TEST_CASE("Sheets are written as PDF, and a change after printing makes the next revision", "[day_page]") {
  DayOnScreen open;
  for (const auto& [sheet, name] : {std::pair{DaySheet::cards, "cards.pdf"}, {DaySheet::labels, "labels.pdf"}, {DaySheet::season, "season.pdf"}, {DaySheet::day, "day.pdf"}}) {
    const QString path = open.folder.filePath(QString::fromLatin1(name));
    INFO(name);
    CHECK(open.page().write_sheet(sheet, path));
    CHECK(QFile(path).size() > 1000);
  }
  CHECK(open.day().sheet_revision == 1);
  open.write(0, DayTreesModel::helper, QStringLiteral("first helper"));
  CHECK(open.day().sheet_revision == 2);
  open.write(0, DayTreesModel::buds, QStringLiteral("swelling"));
  CHECK(open.day().sheet_revision == 2);
  CHECK_FALSE(open.page().write_sheet(DaySheet::root_plans, open.folder.filePath(QStringLiteral("roots.pdf"))));
}

TEST_CASE("An empty tub teaches the spill too", "[day_page]") {
  DayOnScreen open;
  open.write(0, DayTreesModel::used, QStringLiteral("3.6"));
  open.trigger("action_day_tick");
  open.find<QTabWidget>("day_tabs")->setCurrentIndex(7);
  for (const auto& [name, text] : {std::pair{"day_made", "4"}, {"day_left", "0"}}) {
    auto* field = open.find<QLineEdit>(name);
    field->setText(QString::fromLatin1(text));
    emit field->textEdited(field->text());
  }
  open.find<QWidget>("day_return")->setFocus();
  open.press(Qt::Key_Space);
  const DayGround ground = ground_of(open.book(), test_catalogue(), Id<RepottingDay>{open.page().current_day().toStdString()});
  REQUIRE_FALSE(ground.learnt.spills.empty());
  // Of four litres made 3.6 were poured: a tenth was spilt.
  CHECK_THAT(ground.learnt.spills.back().value(), Catch::Matchers::WithinAbs(0.1, 1e-9));
}

TEST_CASE("What was made for a tree that was ticked off as planned leaves its bags once", "[day_page][regression]") {
  DayOnScreen open;
  const RecordRef bag = *open.book().find(open.mix)->record.sources.front();
  const double before_g = in_g(*open.book().stock_of(bag));
  open.trigger("action_day_tick");
  const auto planned = open.tree(open.day().trees.front().tree.text).repottings.back().filled;
  REQUIRE(planned);
  const double taken_g = before_g - in_g(*open.book().stock_of(bag));
  REQUIRE(taken_g > 0);
  open.find<QTabWidget>("day_tabs")->setCurrentIndex(7);
  const double made_l = std::ceil(in_l(*planned)) + 1;
  for (const auto& [name, litres] : {std::pair{"day_made", made_l}, {"day_left", 0.0}}) {
    auto* field = open.find<QLineEdit>(name);
    field->setText(QString::number(litres));
    emit field->textEdited(field->text());
  }
  open.find<QWidget>("day_return")->setFocus();
  open.press(Qt::Key_Space);
  CHECK_THAT(before_g - in_g(*open.book().stock_of(bag)), Catch::Matchers::WithinRel(taken_g * made_l / in_l(*planned), 1e-6));
}

TEST_CASE("The order of work and the printed revision are the day's own, wherever its workbook is opened", "[day_page]") {
  DayOnScreen open;
  auto* order = open.find<QComboBox>("day_order");
  order->setCurrentIndex(order->findData(static_cast<int>(WorkKey::helper)));
  emit order->activated(order->currentIndex());
  CHECK(open.day().work_by == WorkKey::helper);
  REQUIRE(open.page().write_sheet(DaySheet::day, open.folder.filePath(QStringLiteral("day.pdf"))));
  CHECK(open.day().printed_revision == 1);
  open.trigger("action_record_undo");
  open.trigger("action_record_undo");
  CHECK(open.day().work_by == WorkKey::bud);
}

TEST_CASE("A tree ticked off by its plan has the plan's pot, cuts and untouched part, and the tick taken back leaves it as it was", "[day_page]") {
  DayOnScreen open;
  const std::string id = open.day().trees.front().tree.text;
  const Tree before = open.tree(id);
  RecordedContainer larger = open.book().find(open.pot)->record;
  larger.container.name = "larger";
  larger.container.water_fill.reset();
  larger.container.shape = Shape::rectangular;
  larger.container.rim = {length_cm(60), length_cm(50)};
  larger.container.base.reset();
  larger.container.depth = depth_cm(16);
  const QString pot = open.record->add(larger, QStringLiteral("pot"));
  RootMassPlan plan;
  plan.name = "pine";
  plan.group = SpeciesGroup::conifer;
  plan.block = BlockBox{BlockForm::box, length_cm(30), length_cm(24), length_cm(9), {}};
  plan.combed = {{Face::left, length_cm(5)}};
  plan.pot = larger.container;
  open.follow(id, plan);
  CHECK(open.day().trees.front().container == Id<RecordedContainer>{pot.toStdString()});
  open.trigger("action_day_tick");
  REQUIRE(open.day().trees.front().done);
  const Repotting done = open.tree(id).repottings.back();
  CHECK(done.container == Id<RecordedContainer>{pot.toStdString()});
  CHECK(done.plan_name == "A");
  CHECK(done.untouched);
  REQUIRE(done.combed.size() == 1);
  CHECK_FALSE(done.bare_rooted);
  // A plan that was carried out is not the next one's.
  CHECK_FALSE(plan_of_tree(open.book(), test_catalogue(), Id<Tree>{id}));
  open.trigger("action_day_tick");
  CHECK(open.tree(id).repottings == before.repottings);
}

TEST_CASE("A tick taken back leaves the trunk base as the tree had it: bare-rooted, with nothing untouched, and without one", "[day_page]") {
  DayOnScreen open;
  const std::string id = open.day().trees.front().tree.text;
  const bool bare_root = GENERATE(true, false);
  const bool has_base = GENERATE(true, false);
  const auto stored = open.book().find(Id<Tree>{id});
  Tree grown = stored->record;
  grown.group = SpeciesGroup::deciduous_developing;
  if (has_base) grown.trunk_base = TrunkBase{length_cm(2), length_cm(-1), length_cm(8)};
  REQUIRE(open.record->replace(*stored, grown, QStringLiteral("tree")));
  const Tree before = open.tree(id);
  REQUIRE(before.trunk_base.has_value() == has_base);
  RootMassPlan plan;
  plan.name = "maple";
  plan.group = SpeciesGroup::deciduous_developing;
  plan.block = BlockBox{BlockForm::box, length_cm(30), length_cm(24), length_cm(9), {}};
  plan.bare_root = bare_root;
  if (has_base) plan.trunk_base = TreePoint{before.trunk_base->right, before.trunk_base->back, before.trunk_base->up};
  plan.pot.name = "larger";
  plan.pot.rim = {length_cm(60), length_cm(50)};
  plan.pot.depth = depth_cm(16);
  open.follow(id, plan);
  open.trigger("action_day_tick");
  REQUIRE(open.day().trees.front().done);
  CHECK(open.tree(id).repottings.back().untouched.has_value() != bare_root);
  CHECK(open.tree(id).trunk_base);
  CHECK(open.tree(id).trunk_base != before.trunk_base);
  open.trigger("action_day_tick");
  CHECK(open.tree(id) == before);
}

TEST_CASE("A day keeps the version of its mix when a newer one is made, and says so", "[day_page]") {
  DayOnScreen open;
  MixVersion newer = open.book().find(open.mix)->record;
  newer.mix.components.front().parts = Parts(newer.mix.components.front().parts.value() + 1);
  const std::string stem = open.mix.text.substr(0, open.mix.text.rfind('/'));
  REQUIRE_FALSE(open.record->add(newer, QStringLiteral("mix"), QString::fromStdString(stem + "/9")).isEmpty());
  CHECK(open.day().trees.front().mix == open.mix);
  const Notes& notes = open.page().answer()->value().notes;
  CHECK(std::ranges::find(notes, "day.mix-edited", &Note::code) != notes.end());
}

TEST_CASE("Grain that the books say is below nothing is told, and counts as none", "[day_page][refuses]") {
  DayOnScreen open;
  const RecordRef bag = *open.book().find(open.mix)->record.sources.front();
  StockEntry count;
  count.holder = bag;
  count.reason = StockReason::used;
  count.change = *open.book().stock_of(bag) * -1.0 - mass_kg(2);
  count.day = "2026-01-10";
  open.record->add(count, QStringLiteral("used"));
  CHECK(open.summary().find("below nothing") != std::string::npos);
  CHECK(open.summary().find(bag.id) != std::string::npos);
  const DayAnswer& answer = open.page().answer()->value();
  CHECK(std::ranges::none_of(answer.taken, [&](const GrainTaken& taken) { return taken.component == bag.id && in_l(taken.raw) > 0; }));
}

namespace {

/// A language of two words.
class TwoWords : public QTranslator {
 public:
  TwoWords() { qApp->installTranslator(this); }
  ~TwoWords() override { qApp->removeTranslator(this); }
  TwoWords(const TwoWords&) = delete;
  TwoWords& operator=(const TwoWords&) = delete;
  [[nodiscard]] bool isEmpty() const override { return false; }
  QString translate(const char* context, const char* text, const char*, int) const override {
    if (QLatin1String(context) != QLatin1String("report")) return {};
    if (QLatin1String(text) == QLatin1String("swelling")) return QStringLiteral("schwellend");
    return QLatin1String(text) == QLatin1String("green tips") ? QStringLiteral("gr\u00fcne Spitzen") : QString();
  }
};

}  // namespace

TEST_CASE("Buds are kept by what they mean, whichever language they were typed in, and order the work in every other", "[day_page]") {
  DayOnScreen open;
  for (const char* name : {"second pine", "third pine", "fourth pine"}) open.put(open.add_tree(name));
  const auto buds_in_order = [&] {
    QStringList buds;
    for (const DayLine& line : open.lines().lines()) buds << line.buds;
    return buds;
  };
  {
    const TwoWords german;
    // The line moves with its buds, so that each time the first without any is written to.
    for (const char* words : {"Schwellend", "gr\u00fcne spitzen", "fast so weit"}) open.write(static_cast<int>(buds_in_order().indexOf(QString())), DayTreesModel::buds, QString::fromUtf8(words));
    CHECK(buds_in_order() == QStringList{QStringLiteral("gr\u00fcne Spitzen"), QStringLiteral("schwellend"), QStringLiteral("fast so weit"), QString()});
    CHECK(bud_choices().contains(QStringLiteral("schwellend")));
  }
  QStringList kept;
  for (const DayTree& tree : open.day().trees) kept << QString::fromStdString(tree.bud);
  CHECK(kept.contains(QStringLiteral("swelling")));
  CHECK(kept.contains(QStringLiteral("green tips")));
  CHECK(kept.contains(QStringLiteral("fast so weit")));
  open.write(3, DayTreesModel::buds, QStringLiteral("Opening"));
  CHECK(buds_in_order() == QStringList{QStringLiteral("opening"), QStringLiteral("green tips"), QStringLiteral("swelling"), QStringLiteral("fast so weit")});
}

TEST_CASE("Buds are typed by their first letters or written in one's own words, and their states stand at the heading", "[day_page]") {
  DayOnScreen open;
  auto& trees = *open.find<QTableView>("day_table");
  CHECK(trees.model()->headerData(DayTreesModel::buds, Qt::Horizontal, Qt::ToolTipRole).toString().contains(QStringLiteral("green tips")));
  trees.setCurrentIndex(trees.model()->index(0, DayTreesModel::buds));
  trees.edit(trees.currentIndex());
  auto* field = trees.viewport()->findChild<QLineEdit*>();
  REQUIRE(field != nullptr);
  const auto& [typed, kept] = GENERATE(table<const char*, const char*>({{"sw", "swelling"}, {"IN L", "in leaf"}, {"fat", "fat"}}));
  QTest::keyClicks(field, QString::fromLatin1(typed));
  QTest::keyClick(field, Qt::Key_Return);
  QApplication::processEvents();
  CHECK(open.day().trees.front().bud == kept);
}

TEST_CASE("What a full pot weighs quotes the pot tests that its mix's water rests on, on screen and on the sheet", "[day_page]") {
  DayOnScreen open;
  for (const auto& test : open.book().all<PotTest>()) REQUIRE(open.record->remove(test, QStringLiteral("test")));
  const auto said = [&](const QString& words) {
    for (const QLabel* label : open.find("day_lifts")->findChildren<QLabel*>())
      if (label->text().contains(words)) return true;
    return false;
  };
  CHECK_FALSE(said(QStringLiteral("pot test")));
  const double usual_kg = in_kg(open.page().answer()->value().lifts.front().mass);
  // A litre of the mix that keeps two thirds of the water that it would keep by the usual constants.
  const auto stored = *open.book().find(open.mix);
  const auto state = mix_state(stored.record.mix);
  REQUIRE(state);
  REQUIRE(state->settled);
  const auto water = mix_in_column(*state, RetentionConstants{}, depth_cm(6));
  REQUIRE(water);
  const double dry_g = in_g_l(state->settled->bulk_density);
  PotTest test;
  test.mix = open.mix;
  test.volume = pot_ml(1000);
  test.filled_depth = depth_cm(6);
  test.weighed = PotWeighings{mass_g(0), mass_g(dry_g), mass_g(dry_g + 1000 * water->theta_0.value()), mass_g(dry_g + 1000 * water->container_capacity.value() * 2 / 3)};
  const QString id = open.record->add(test, QStringLiteral("pot test"));
  CHECK(said(id));
  CHECK(said(QStringLiteral("own pot tests")));
  CHECK(in_kg(open.page().answer()->value().lifts.front().mass) < usual_kg);
}

TEST_CASE("Two trees of the day that are planned into one pot are named with it until one gets another", "[day_page]") {
  DayOnScreen open;
  const auto pots = open.book().all<RecordedContainer>();
  REQUIRE(pots.size() > 1);
  const auto plant = [&](const Id<RecordedContainer>& second) {
    const auto stored = open.book().find(Id<RepottingDay>{open.page().current_day().toStdString()});
    RepottingDay day = stored->record;
    REQUIRE(day.trees.size() == 2);
    day.trees[0].container = pots[0].id;
    day.trees[1].container = second;
    REQUIRE(open.record->replace(*stored, day, QStringLiteral("pots")));
    QApplication::processEvents();
  };
  open.put(open.add_tree("young pine"));
  plant(pots[0].id);
  const std::string told = open.summary();
  INFO(told);
  CHECK(told.find("and the same pot is planned for") != std::string::npos);
  for (const std::string& name : {pots[0].id.text, std::string("old pine"), std::string("young pine")}) CHECK(told.find(name) != std::string::npos);
  plant(pots[1].id);
  CHECK(open.summary().find("and the same pot") == std::string::npos);
}

TEST_CASE("A tick taken back is told, and a tick on a day that is still to come asks for its date", "[day_page]") {
  DayOnScreen open;
  QStringList told;
  QObject::connect(open.record.get(), &RecordBook::told, [&](const QString& sentence) { told << sentence; });
  open.trigger("action_day_tick");
  REQUIRE(open.day().trees.front().done);
  REQUIRE(told.size() == 1);
  CHECK_FALSE(told.back().contains(QStringLiteral("still to come")));
  open.trigger("action_day_tick");
  REQUIRE(told.size() == 2);
  CHECK(told.back().contains(QStringLiteral("taken back")));
  open.type_into("day_date", QDate::currentDate().addMonths(4).toString(Qt::ISODate));
  open.trigger("action_day_tick");
  REQUIRE(open.day().trees.front().done);
  CHECK(told.back().contains(QStringLiteral("still to come")));
}
