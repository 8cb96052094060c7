// Find parts on the Mixes page: from a group and a pot to a kept mix, and every wrong input at its field.
#include <QComboBox>
#include <QFrame>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPalette>
#include <QPushButton>
#include <QTableWidget>
#include <QToolButton>
#include <algorithm>
#include <set>

#include "charts/trade_off_view.hpp"
#include "gritwright/models/litres.hpp"
#include "gritwright/models/mix_in_pot.hpp"
#include "gritwright/models/recipe_space.hpp"
#include "gritwright/report/text_table.hpp"
#include "models/bench_draft.hpp"
#include "models/demonstration_record.hpp"
#include "models/find_problem.hpp"
#include "models/material_words.hpp"
#include "pages/mix_page.hpp"
#include "record_pages.hpp"
#include "support.hpp"
#include "text.hpp"
#include "theme.hpp"
#include "widgets/find_panel.hpp"
#include "widgets/recipes_panel.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

/// Two graded components on the bench, their pot, and the panel in front.
struct FindWindow : OpenWindow {
  FindWindow() : OpenWindow(Start::mixes) {
    bench.open(complete_bench());
    trigger("action_find_parts");
    window.mix_page().find_panel().show_more(true);
    QApplication::processEvents();
  }
  PartsFinder& finder() { return window.mix_page().finder(); }
  void choose(const char* box, int index) {
    auto* combo = find<QComboBox>(box);
    combo->setCurrentIndex(index);
    emit combo->activated(index);
    QApplication::processEvents();
  }
  void wish(WishRow row, int column, const char* text) {
    find<QTableWidget>("wishes_table")->item(static_cast<int>(row), column)->setText(QString::fromLatin1(text));
    QApplication::processEvents();
  }
  void must(WishRow row, bool on) {
    find<QTableWidget>("wishes_table")->item(static_cast<int>(row), 3)->setCheckState(on ? Qt::Checked : Qt::Unchecked);
    QApplication::processEvents();
  }
  void grain(int row, int column, const char* text) {
    find<QTableWidget>("candidates_table")->item(row, column)->setText(QString::fromLatin1(text));
    QApplication::processEvents();
  }
  void take(int row, bool on) {
    find<QTableWidget>("candidates_table")->item(row, 0)->setCheckState(on ? Qt::Checked : Qt::Unchecked);
    QApplication::processEvents();
  }
  void searched() {
    finder().search();
    finder().job().wait();
    QApplication::processEvents();
  }
};

/// The demonstration's shelf and a pot, found for conifers.
struct DemonstrationSearch : OpenWindow {
  DemonstrationSearch() : OpenWindow(Start::mixes) {
    REQUIRE(fill_with_demonstration(*record, bench.catalogue()).empty());
    trigger("action_find_parts");
    bench.edit(QStringLiteral("pot"), {}, [](BenchState& state) { state.pot = complete_bench().pot; });
    auto* groups = find<QComboBox>("find_group");
    groups->setCurrentIndex(3);
    emit groups->activated(3);
    finder().search();
    finder().job().wait();
    QApplication::processEvents();
    REQUIRE(finder().found() != nullptr);
    REQUIRE_FALSE(finder().found()->answer.recipes.empty());
  }
  PartsFinder& finder() { return window.mix_page().finder(); }
};

}  // namespace

TEST_CASE("Where even the best recipe is far from a wish the first line says so, and what to do", "[find_parts]") {
  DemonstrationSearch open;
  const FoundParts& found = *open.finder().found();
  const auto band = std::ranges::find_if(found.problem().wishes, [](const Wish& wish) { return std::holds_alternative<BandShare>(wish.figure); });
  REQUIRE(band != found.problem().wishes.end());
  const Miss& miss = found.answer.recipes.front().misses[static_cast<std::size_t>(band - found.problem().wishes.begin())];
  REQUIRE(miss.violation > 10);
  REQUIRE_FALSE(far_off_sentences(found, UnitSystem::metric).isEmpty());
  const QString first = far_off_sentences(found, UnitSystem::metric).front();
  INFO(first.toStdString());
  CHECK(first.contains(wish_words(found, *band, UnitSystem::metric)));
  CHECK(first.contains(QStringLiteral("screen a bag")));
  CHECK(first.contains(QLocale().toString(miss.amount, 'f', 1)));
  CHECK(open.find<QLabel>("find_state")->text().startsWith(first));
  // A wish that is missed by little is not told.
  FoundParts near = found;
  for (Miss& one : near.answer.recipes.front().misses) one.violation = std::min(one.violation, 10.0);
  CHECK(far_off_sentences(near, UnitSystem::metric).isEmpty());
}

TEST_CASE("A pot measured as heights and areas is chosen for a search", "[find_parts]") {
  OpenWindow open(Start::mixes);
  RecordedContainer pot;
  pot.container.name = "measured by water";
  pot.container.shape = Shape::profile;
  pot.container.areas = {{depth_cm(0), area_cm2(450)}, {depth_cm(8), area_cm2(600)}};
  pot.container.depth = depth_cm(8);
  const QString id = open.record->add(pot, QStringLiteral("pot"));
  open.trigger("action_find_parts");
  auto* pots = open.find<QComboBox>("find_pot");
  const int at = pots->findData(id);
  REQUIRE(at > 0);
  pots->setCurrentIndex(at);
  emit pots->activated(at);
  REQUIRE(open.bench.evaluation().pot);
  CHECK(open.bench.evaluation().pot->container().areas == pot.container.areas);
  CHECK(pots->currentIndex() == at);
  CHECK(open.find<QComboBox>("pot_kept")->findData(id) > 0);
}

TEST_CASE("A group and a pot are enough to find recipes", "[find_parts]") {
  FindWindow open;
  CHECK(open.find<QLabel>("find_state")->text().contains(QStringLiteral("a group of trees")));
  open.choose("find_group", 3);
  CHECK(open.bench.state().find.profile == QStringLiteral("conifers"));
  CHECK(open.bench.state().band_from == QStringLiteral("3"));
  open.searched();
  REQUIRE(open.finder().found() != nullptr);
  const DesignAnswer& answer = open.finder().found()->answer;
  CHECK(answer.proven);
  REQUIRE_FALSE(answer.recipes.empty());
  // 2 candidates, at most 12 parts: 1:0, 0:1 and the pairs without a common divisor.
  CHECK(answer.examined + answer.excluded == recipe_count(2, 4, 12));
  auto* table = open.find<QTableWidget>("recipes_table");
  CHECK(table->isVisible());
  CHECK(table->rowCount() == static_cast<int>(answer.recipes.size()));
  CHECK(table->item(0, 1)->text().contains(QStringLiteral("A-1")));
  CHECK(open.find<QLabel>("figure_recipe_air")->text().contains(QStringLiteral("%")));
  // How sure its air is stands beside it, in the list too; a price has no range.
  const FoundParts& found = *open.finder().found();
  REQUIRE(found.ranges.size() == answer.recipes.size());
  const Range air = *found.ranges.front().of(MixFigure::air_filled_porosity);
  const double foretold = answer.recipes.front().pots.at(first_pot).air_filled_porosity.value();
  CHECK(air.low < foretold);
  CHECK(air.high > foretold);
  CHECK(open.find<QLabel>("range_recipe_air")->text() == QStringLiteral("%1 \u2013 %2").arg(to_local(figure(100 * air.low, 1)), to_local(percent_text(air.high))));
  CHECK(open.find<QLabel>("range_recipe_price")->text() == QStringLiteral("\u2013"));
  CHECK(table->item(0, 3)->text().contains(u'\n'));
  CHECK(open.find<QLabel>("answer_sentences")->text().contains(QStringLiteral("Proven best")));
  const QString sentences = open.find<QLabel>("recipe_sentences")->text();
  CHECK(sentences.contains(QStringLiteral("Misses")));
  // Between shares a distance is points: "by 10 %" would be a part of the share.
  CHECK(sentences.contains(QStringLiteral(" points.")));
}

TEST_CASE("How so? tells where each figure of a found recipe comes from, with its own numbers", "[find_parts]") {
  FindWindow open;
  open.choose("find_group", 3);
  open.grain(0, 2, "3");
  open.grain(1, 2, "4");
  open.searched();
  REQUIRE(open.finder().found() != nullptr);
  REQUIRE_FALSE(open.finder().found()->answer.recipes.empty());
  const RatedRecipe recipe = open.finder().found()->answer.recipes.front();
  const DesignProblem problem = open.finder().found()->problem();
  const auto how_so = [&](const char* button, const char* figure, const char* label) {
    INFO(button);
    auto* how = open.find<QToolButton>(button);
    REQUIRE(how->isEnabled());
    how->click();
    auto* popup = open.find<QFrame>("explanation_popup");
    // The name of the figure and its value head the explanation.
    CHECK(popup->accessibleName() == QStringLiteral("%1: %2").arg(QLatin1String(label), open.find<QLabel>(figure)->text()));
    const QString told = popup->findChild<QLabel*>(QStringLiteral("explanation_text"))->text();
    CHECK(told.contains(QStringLiteral("Source:")));
    delete popup;
    return told;
  };
  const PotWater& water = recipe.pots.at(first_pot);
  const QString capacity = to_local(percent_text(water.container_capacity.value()));
  CHECK(how_so("how_recipe_air", "figure_recipe_air", "Air that drains free").contains(QStringLiteral("water held: %1").arg(capacity)));
  CHECK(how_so("how_recipe_water", "figure_recipe_water", "Water held").contains(QStringLiteral("cm mm")));
  CHECK(how_so("how_recipe_available", "figure_recipe_available", "Water plants can take").contains(QStringLiteral("theta(50): %1").arg(to_local(percent_text(water.theta_50.value())))));
  CHECK(how_so("how_recipe_weight", "figure_recipe_weight", "Litre weight, dry").contains(QStringLiteral("settling")));
  CHECK(how_so("how_recipe_shrinkage", "figure_recipe_shrinkage", "Shrinks on mixing by").contains(QStringLiteral("phi")));
  CHECK(how_so("how_recipe_score", "figure_recipe_score", "Score, 0 is best").contains(QStringLiteral("need not hold")));
  // The price is what its explanation says: loose litres at their price, over the mixed litres.
  const QString price = how_so("how_recipe_price", "figure_recipe_price", "Price of a mixed litre");
  double money = 0;
  for (std::size_t i = 0; i < recipe.parts.size(); ++i) {
    const Candidate& candidate = problem.candidates[i];
    if (!(recipe.parts[i] > 0)) {
      CHECK_FALSE(price.contains(to_qt(candidate.component.name)));
      continue;
    }
    money += recipe.parts[i] * candidate.price->value();
    CHECK(price.contains(QStringLiteral("%1: %2 x %3").arg(to_qt(candidate.component.name), number_text(recipe.parts[i], 4), to_local(figure(candidate.price->value(), 2)))));
  }
  const double mixed_l = in_l(recipe.mix.poured->volume);
  CHECK(price.contains(QStringLiteral("V: %1").arg(to_local(volume_text(mixed_l, UnitSystem::metric)))));
  REQUIRE(recipe.price.has_value());
  CHECK_THAT(recipe.price->value(), Catch::Matchers::WithinRel(money / mixed_l, 1e-6));
}

TEST_CASE("What a group asks for comes and goes with one step of undo", "[find_parts]") {
  FindWindow open;
  const BenchState before = open.bench.state();
  open.choose("find_group", 3);
  CHECK(open.bench.state() != before);
  CHECK(open.bench.undo_stack().undoText() == QStringLiteral("wishes for conifers"));
  open.trigger("action_undo");
  CHECK(open.bench.state() == before);
}

TEST_CASE("A group's wishes can be changed, are kept in the record, and come back by undo", "[find_parts]") {
  FindWindow open;
  open.choose("find_group", 3);
  open.wish(WishRow::air, 1, "18");
  open.must(WishRow::air, true);
  open.find<QPushButton>("keep_profile")->click();
  QApplication::processEvents();
  const auto kept = open.record->workbook().all<SpeciesProfile>();
  REQUIRE(kept.size() == 1);
  CHECK(kept.front().record.name == "conifers");
  CHECK(kept.front().record.group == SpeciesGroup::conifer);
  CHECK(check(kept.front().record).empty());
  // Another start from the group has the grower's wish, not common practice's.
  open.choose("find_group", 1);
  CHECK(open.bench.state().find.wish(WishRow::air).least == QStringLiteral("10"));
  open.choose("find_group", 3);
  CHECK(open.bench.state().find.wish(WishRow::air).least == QStringLiteral("18"));
  CHECK(open.bench.state().find.wish(WishRow::air).hard);
  open.trigger("action_record_undo");
  open.choose("find_group", 3);
  CHECK(open.bench.state().find.wish(WishRow::air).least == QStringLiteral("10"));
}

TEST_CASE("Recipes stay, marked as stale, while the inputs change", "[find_parts]") {
  FindWindow open;
  open.choose("find_group", 3);
  open.searched();
  CHECK_FALSE(open.finder().is_stale());
  CHECK(open.find<QPushButton>("keep_recipe")->isEnabled());
  const int rows = open.find<QTableWidget>("recipes_table")->rowCount();
  const auto is_grey = [&](const char* label) { return open.find<QLabel>(label)->palette().color(QPalette::WindowText) == current_colours().muted; };
  const auto shown_of_recipe = {"recipe_sentences", "figure_recipe_air", "figure_recipe_score", "answer_sentences"};
  for (const char* label : shown_of_recipe) {
    INFO(label);
    CHECK_FALSE(is_grey(label));
  }
  open.wish(WishRow::air, 1, "17");
  CHECK(open.finder().is_stale());
  CHECK(open.find<QTableWidget>("recipes_table")->rowCount() == rows);
  CHECK(open.find<QLabel>("find_state")->text().contains(QStringLiteral("grey")));
  CHECK_FALSE(open.find<QPushButton>("keep_recipe")->isEnabled());
  for (const char* label : shown_of_recipe) {
    INFO(label);
    CHECK(is_grey(label));
  }
  // It searches by itself once the typing pauses.
  QTRY_VERIFY(!open.finder().is_stale());
  for (const char* label : shown_of_recipe) {
    INFO(label);
    CHECK_FALSE(is_grey(label));
  }
  CHECK(open.find<QPushButton>("keep_recipe")->isEnabled());
}

TEST_CASE("A found recipe becomes a version of a mix, lies on the bench, and can be undone", "[find_parts]") {
  FindWindow open;
  open.bench.edit(QStringLiteral("spill"), {}, [](BenchState& state) { state.spill = QStringLiteral("7"); });
  open.choose("find_group", 3);
  open.searched();
  open.find<QTableWidget>("recipes_table")->selectRow(0);
  open.find<QPushButton>("keep_recipe")->click();
  QApplication::processEvents();
  const auto kept = open.record->workbook().all<MixVersion>();
  REQUIRE(kept.size() == 1);
  CHECK(kept.front().record.mix.name == "conifers");
  CHECK_FALSE(kept.front().record.reserved.has_value());
  // What misses the pot counts as it did in the litres that were needed.
  CHECK(kept.front().record.mix.spill == Spill(0.07));
  CHECK(open.finder().setup().need == open.finder().found()->setup.need);
  const RatedRecipe& first = open.finder().found()->answer.recipes.front();
  std::vector<double> parts;
  for (const double part : first.parts)
    if (part > 0) parts.push_back(part);
  REQUIRE(kept.front().record.mix.components.size() == parts.size());
  for (std::size_t i = 0; i < parts.size(); ++i) CHECK(kept.front().record.mix.components[i].parts.value() == parts[i]);
  // The bench now holds the same mix, and its air is the recipe's.
  REQUIRE(open.bench.evaluation().water.has_value());
  CHECK_THAT(open.bench.evaluation().water->air_filled_porosity.value(), Catch::Matchers::WithinAbs(first.pots.at(first_pot).air_filled_porosity.value(), 1e-6));
  open.trigger("action_record_undo");
  CHECK(open.record->workbook().count(RecordKind::mix) == 0);
}

TEST_CASE("A found recipe kept under a name of one's own has its group's wanted band when it is opened again", "[find_parts][regression]") {
  FindWindow open;
  open.bench.edit(QStringLiteral("band"), {}, [](BenchState& state) { state.band_from = QStringLiteral("1"), state.band_to = QStringLiteral("9"); });
  open.choose("find_group", 3);
  const BenchState searched = open.bench.state();
  REQUIRE(searched.band_from == QStringLiteral("3"));
  open.searched();
  open.bench.edit(QStringLiteral("name"), {}, [](BenchState& state) { state.mix_name = QStringLiteral("for the old pine"); });
  open.find<QPushButton>("keep_recipe")->click();
  QApplication::processEvents();
  const auto kept = open.record->workbook().all<MixVersion>().front();
  CHECK(kept.record.mix.name == "for the old pine");
  REQUIRE(kept.record.wanted_band);
  CHECK_THAT(in_mm(kept.record.wanted_band->from), Catch::Matchers::WithinAbs(3, 1e-9));
  // A mix that was kept before bands were gives back the grower's own.
  MixVersion older = kept.record;
  older.wanted_band.reset();
  older.mix.name = "of earlier years";
  const QString earlier = open.record->add(older, QStringLiteral("mix"));
  open.window.record_pages()->open_mix(earlier);
  CHECK(open.bench.state().band_from == QStringLiteral("1"));
  CHECK(open.bench.state().band_to == QStringLiteral("9"));
  open.window.record_pages()->open_mix(QString::fromStdString(kept.id.text));
  CHECK(open.bench.state().band_from == searched.band_from);
  CHECK(open.bench.state().band_to == searched.band_to);
  // Kept from the bench it has the band that lies there.
  open.window.record_pages()->open_mix(earlier);
  open.bench.edit(QStringLiteral("name"), {}, [](BenchState& state) { state.mix_name = QStringLiteral("of this year"); });
  open.trigger("action_keep_mix");
  const auto newest = open.record->workbook().all<MixVersion>().back();
  CHECK(newest.record.mix.name == "of this year");
  REQUIRE(newest.record.wanted_band);
  CHECK_THAT(in_mm(newest.record.wanted_band->to), Catch::Matchers::WithinAbs(9, 1e-9));
  // Nor is one that was kept without a band another mix for that.
  MixVersion without = newest.record;
  without.wanted_band.reset();
  open.record->replace(newest, without, QStringLiteral("band"));
  const auto count = open.record->workbook().count(RecordKind::mix);
  open.trigger("action_keep_mix");
  CHECK(open.record->workbook().count(RecordKind::mix) == count);
}

TEST_CASE("What pot tests taught of a material counts in the search, is told, and is what the bench shows of the kept recipe", "[find_parts]") {
  FindWindow open;
  MixVersion tested;
  tested.mix = *open.bench.evaluation().mix;
  tested.mix.name = "tested, invented";
  tested.mix.water.k_cm_mm = 6;
  tested.calibrated_by = RecordRef{RecordKind::pot_test, "T-07"};
  open.choose("find_group", 3);
  open.searched();
  REQUIRE(open.finder().found() != nullptr);
  CHECK(open.finder().found()->answer.recipes.front().water == RetentionConstants{});
  CHECK_FALSE(open.find<QLabel>("recipe_sentences")->text().contains(QStringLiteral("T-07")));

  open.record->add(tested, QStringLiteral("mix"));
  QApplication::processEvents();
  // The answer of before answers another question now.
  CHECK(open.finder().is_stale());
  open.searched();
  const RatedRecipe first = open.finder().found()->answer.recipes.front();
  CHECK(first.water.k_cm_mm < RetentionConstants{}.k_cm_mm);
  CHECK(first.water.k_cm_mm >= 6);
  const QString told = open.find<QLabel>("recipe_sentences")->text();
  CHECK(told.contains(QStringLiteral("T-07")));
  open.find<QPushButton>("keep_recipe")->click();
  QApplication::processEvents();
  const BenchEvaluation& bench = open.bench.evaluation();
  REQUIRE(bench.pooled.has_value());
  CHECK_THAT(bench.mix->water.k_cm_mm, Catch::Matchers::WithinRel(first.water.k_cm_mm, 1e-9));
  REQUIRE(bench.water.has_value());
  CHECK_THAT(bench.water->air_filled_porosity.value(), Catch::Matchers::WithinAbs(first.pots.at(first_pot).air_filled_porosity.value(), 1e-6));
}

TEST_CASE("A recipe that is kept already is not kept a second time", "[find_parts][refuses]") {
  DemonstrationSearch open;
  open.find<QPushButton>("keep_recipe")->click();
  QApplication::processEvents();
  const auto kept = open.record->workbook().count(RecordKind::mix);
  open.window.record_pages()->keep_recipe(0, false);
  CHECK(open.record->workbook().count(RecordKind::mix) == kept);
}

TEST_CASE("Reserved grain is missing from the next search", "[find_parts]") {
  DemonstrationSearch open;
  PartsFinder& finder = open.finder();
  const RatedRecipe recipe = finder.found()->answer.recipes.front();
  const auto setup = finder.found()->setup;
  REQUIRE(setup.need.has_value());
  open.find<QPushButton>("reserve_recipe")->click();
  QApplication::processEvents();
  std::optional<MixVersion> kept;
  for (const auto& version : open.record->workbook().all<MixVersion>())
    if (version.record.reserved) kept = version.record;
  REQUIRE(kept.has_value());
  // Litres went through a file: the last binary digit may differ.
  CHECK_THAT(in_l(*kept->reserved), Catch::Matchers::WithinRel(in_l(*setup.need), 1e-12));
  open.trigger("action_find_parts");
  for (std::size_t i = 0; i < recipe.parts.size(); ++i) {
    if (!(recipe.parts[i] > 0)) continue;
    const ShelfItem& before = setup.grain[setup.taken[i]];
    const auto& now = finder.setup().grain;
    const auto after = std::find_if(now.begin(), now.end(), [&](const ShelfItem& item) { return item.key == before.key; });
    REQUIRE(after != now.end());
    // loose litres = mixed litres × share / (1 - shrinkage)
    const double litres = in_l(*setup.need) * recipe.mix.loose_shares[i].value() / (1 - recipe.mix.shrinkage->value());
    INFO(before.key.toStdString());
    CHECK_THAT(in_l(*before.candidate.stock) - in_l(*after->candidate.stock), Catch::Matchers::WithinAbs(litres, 1e-6));
  }
}

TEST_CASE("Where grain to choose from has no price it is said why, and what is typed there stands instead", "[find_parts]") {
  DemonstrationSearch open;
  open.trigger("action_find_parts");
  open.window.mix_page().find_panel().show_more(true);
  QApplication::processEvents();
  auto* grain = open.find<QTableWidget>("candidates_table");
  int unpriced = -1;
  for (int row = 0; row < grain->rowCount(); ++row) {
    QTableWidgetItem* price = grain->item(row, 2);
    CHECK(price->text().isEmpty() != price->toolTip().isEmpty());
    CHECK(price->toolTip() == price->data(Qt::AccessibleDescriptionRole).toString());
    if (price->text().isEmpty()) unpriced = row;
  }
  REQUIRE(unpriced >= 0);
  CHECK(grain->item(unpriced, 2)->toolTip().contains(QStringLiteral("price")));
  grain->item(unpriced, 2)->setText(QStringLiteral("1"));
  QApplication::processEvents();
  CHECK(grain->item(unpriced, 2)->toolTip().isEmpty());
}

TEST_CASE("What is reserved is told when it is kept, and stands beside the grain in the next search", "[find_parts]") {
  DemonstrationSearch open;
  QStringList told;
  QObject::connect(&open.bench, &Bench::told, [&](const QString& sentence) { told << sentence; });
  open.find<QPushButton>("reserve_recipe")->click();
  QApplication::processEvents();
  REQUIRE_FALSE(told.isEmpty());
  CHECK(told.back().contains(QStringLiteral("is kept from other searches")));
  open.trigger("action_find_parts");
  open.window.mix_page().find_panel().show_more(true);
  QApplication::processEvents();
  auto* grain = open.find<QTableWidget>("candidates_table");
  int reserved = 0;
  for (int row = 0; row < grain->rowCount(); ++row) reserved += grain->item(row, 0)->text().contains(QStringLiteral("reserved")) ? 1 : 0;
  CHECK(reserved >= 1);
}

TEST_CASE("A mix is sought that is good in several pots at once", "[find_parts]") {
  DemonstrationSearch open;
  PartsFinder& finder = open.finder();
  const double one_filling = in_l(*finder.found()->setup.need);
  REQUIRE(finder.shelf().pots.size() >= 3);
  open.window.mix_page().find_panel().show_more(true);
  QApplication::processEvents();
  auto* pots = open.find<QTableWidget>("further_pots_table");
  REQUIRE(pots->rowCount() == static_cast<int>(finder.shelf().pots.size()));
  pots->item(0, 0)->setCheckState(Qt::Checked);
  pots->item(2, 0)->setCheckState(Qt::Checked);
  QApplication::processEvents();
  CHECK(open.bench.state().find.also_pots == std::vector<QString>{finder.shelf().pots[0].id, finder.shelf().pots[2].id});
  finder.search();
  finder.job().wait();
  QApplication::processEvents();
  const FoundParts& found = *finder.found();
  const DesignProblem& problem = found.problem();
  CHECK(problem.pots.size() == 3);
  // Pictures show the first pot of the problem, which stays the one on the page.
  CHECK(problem.pots.begin()->first == first_pot);
  for (const PotFigure figure : {PotFigure::air_filled_porosity, PotFigure::container_capacity}) {
    std::set<std::string> asked;
    for (const Wish& wish : problem.wishes)
      if (const auto* in_pot = std::get_if<FigureInPot>(&wish.figure); in_pot != nullptr && in_pot->figure == figure) asked.insert(in_pot->pot);
    CHECK(asked.size() == 3);
  }
  CHECK(in_l(*found.setup.need) > one_filling);
  REQUIRE_FALSE(found.answer.recipes.empty());
  // Each pot has its own air, as a mix in it by itself has.
  const RatedRecipe& first = found.answer.recipes.front();
  for (const int row : {0, 2}) {
    const ShelfPot& pot = finder.shelf().pots[static_cast<std::size_t>(row)];
    const auto alone = mix_in_pot(first.mix, first.water, PotGeometry(pot.container));
    REQUIRE(alone);
    const QString shown = open.find<QLabel>(QStringLiteral("figure_recipe_air_in_%1").arg(pot.id).toUtf8().constData())->text();
    CHECK(shown == to_local(percent_text(alone->air_filled_porosity.value(), 1)));
  }
  open.trigger("action_undo");
  CHECK(open.bench.state().find.also_pots.size() == 1);
}

TEST_CASE("A recipe of six components is laid on the bench", "[find_parts]") {
  DemonstrationSearch open;
  MixVersion version;
  const auto& grain = open.finder().setup().grain;
  REQUIRE(grain.size() >= 6);
  version.mix.name = "six";
  for (std::size_t i = 0; i < 6; ++i) {
    version.mix.components.push_back(grain[i].candidate.component);
    version.sources.push_back(grain[i].source);
  }
  const QString id = open.record->add(version, QStringLiteral("mix"));
  open.window.record_pages()->open_mix(id);
  CHECK(open.bench.state().components.size() == 6);
  REQUIRE(open.bench.evaluation().mix.has_value());
  CHECK(open.bench.evaluation().mix->components.size() == 6);
}

TEST_CASE("Wishes that contradict each other are named, and the nearest recipe is listed", "[find_parts]") {
  FindWindow open;
  open.choose("find_group", 3);
  // Only mixes of little but A-1 hold so much air.
  open.wish(WishRow::air, 1, "15");
  open.must(WishRow::air, true);
  open.grain(0, 4, "50");
  open.searched();
  REQUIRE(open.finder().found() != nullptr);
  const DesignAnswer& answer = open.finder().found()->answer;
  CHECK(answer.recipes.empty());
  REQUIRE(answer.contradictions.size() == 1);
  CHECK(answer.contradictions.front().size() == 2);
  const QString told = open.find<QLabel>("answer_sentences")->text();
  CHECK(told.contains(QStringLiteral("Cannot be had together: air at least 15")));
  CHECK(told.contains(QStringLiteral("share of A-1 at most 50")));
  auto* table = open.find<QTableWidget>("recipes_table");
  REQUIRE(table->rowCount() == 1);
  CHECK(table->item(0, 0)->text() == QStringLiteral("nearest"));
  // Why nothing fits stands before what comes nearest, what holds for all recipes after them.
  QApplication::processEvents();
  CHECK(open.find<QLabel>("answer_sentences")->y() < table->y());
  open.must(WishRow::air, false);
  open.searched();
  REQUIRE_FALSE(open.finder().found()->answer.recipes.empty());
  QApplication::processEvents();
  CHECK(open.find<QLabel>("answer_sentences")->y() > table->y());
}

TEST_CASE("The recipe that the keyboard comes to is scrolled into sight", "[find_parts]") {
  DemonstrationSearch open;
  auto* table = open.find<QTableWidget>("recipes_table");
  REQUIRE(table->rowCount() > 5);
  const auto in_sight = [&](int row) { return table->viewport()->visibleRegion().contains(table->visualItemRect(table->item(row, 0)).center()); };
  const int last = table->rowCount() - 1;
  open.trigger("action_show_recipes");
  CHECK(in_sight(0));
  table->setCurrentCell(last, 0);
  QApplication::processEvents();
  CHECK(in_sight(last));
  table->setCurrentCell(0, 0);
  QApplication::processEvents();
  CHECK(in_sight(0));
}

TEST_CASE("A search for contradictions whose time is up says so, with the limit", "[find_parts]") {
  DemonstrationSearch open;
  FoundParts found = *open.finder().found();
  found.answer.recipes.clear();
  found.answer.contradictions = {{0, 1}};
  found.answer.notes.push_back({"design.contradictions-incomplete", Level::warning, {}, {{"seconds", contradictions_limit_s}}});
  const QString told = answer_sentences(found, UnitSystem::metric).join(u'\n');
  CHECK(told.contains(QStringLiteral("stopped after 15 s")));
  CHECK(told.contains(QStringLiteral("Cannot be had together")));
}

TEST_CASE("A score of thousands is told without marks between them", "[find_parts]") {
  FoundParts found;
  found.setup.problem.emplace();
  found.answer.stopped = true;
  found.answer.rounding_cost = 12345.6;
  const QLocale before;
  QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
  const QString told = answer_sentences(found, UnitSystem::metric).join(u'\n');
  QLocale::setDefault(before);
  CHECK(told.contains(QStringLiteral("cost 12346 of score")));
}

TEST_CASE("What holds a recipe back, how far wishes may move and what whole parts cost is told with its figures", "[find_parts]") {
  DemonstrationSearch open;
  const DesignAnswer& answer = open.finder().found()->answer;
  const QString told = open.find<QLabel>("answer_sentences")->text();
  REQUIRE(answer.rounding_cost.has_value());
  CHECK(told.contains(QStringLiteral("Whole parts instead of free shares cost %1 of score.").arg(number_text(*answer.rounding_cost, 3))));
  REQUIRE_FALSE(answer.room.empty());
  const auto moves = std::count_if(answer.room.begin(), answer.room.end(), [](const WishRoom& room) { return room.stricter || room.looser; });
  CHECK(told.count(QStringLiteral("Another recipe comes first with")) == moves);
}

TEST_CASE("A hard wish that nothing on the shelf touches is named before any search", "[find_parts][refuses]") {
  FindWindow open;
  open.choose("find_group", 3);
  // The sheets have 1.7 and 3.3 % below 1 mm.
  open.wish(WishRow::finer, 2, "1");
  open.must(WishRow::finer, true);
  auto* trouble = open.find<QLabel>("find_trouble");
  CHECK(trouble->isVisible());
  CHECK(trouble->text().contains(QStringLiteral("dust")));
  CHECK(trouble->text().contains(QStringLiteral("cannot be had")));
}

TEST_CASE("Every wrong input is told at its field and nothing is searched", "[find_parts][refuses]") {
  FindWindow open;
  open.choose("find_group", 3);
  const auto type_into = [&](const char* name, const char* text) {
    auto* field = open.find<QLineEdit>(name);
    field->setFocus();
    field->selectAll();
    open.type(QString::fromLatin1(text));
  };
  SECTION("limits upside down") {
    open.wish(WishRow::air, 1, "30");
    open.wish(WishRow::air, 2, "20");
    auto* cell = open.find<QTableWidget>("wishes_table")->item(static_cast<int>(WishRow::air), 2);
    // In percent, as they were typed.
    CHECK(cell->toolTip().contains(QStringLiteral("from 30 down to 20")));
    CHECK(open.find<QLabel>("wish_faults")->text().contains(QStringLiteral("air in pot")));
  }
  SECTION("a number that is none") {
    open.wish(WishRow::water, 1, "much");
    CHECK_FALSE(open.find<QTableWidget>("wishes_table")->item(static_cast<int>(WishRow::water), 1)->toolTip().isEmpty());
  }
  SECTION("a size that no candidate was tested at") {
    type_into("find_dust", "0.3");
    CHECK(open.find<QLineEdit>("find_dust")->accessibleDescription().contains(QStringLiteral("no candidate was tested"), Qt::CaseInsensitive));
  }
  SECTION("no components") {
    type_into("find_components", "0");
    CHECK(open.find<QLineEdit>("find_components")->accessibleDescription().contains(QStringLiteral("expected 1 to 6")));
  }
  SECTION("no parts") {
    type_into("find_total", "0");
    CHECK(open.find<QLineEdit>("find_total")->accessibleDescription().contains(QStringLiteral("expected 1 to 20")));
  }
  SECTION("half a part") {
    type_into("find_total", "4.5");
    CHECK(open.find<QLineEdit>("find_total")->accessibleDescription().contains(QStringLiteral("no whole number")));
  }
  SECTION("a stock below nothing") {
    open.grain(0, 1, "-2");
    CHECK(open.find<QTableWidget>("candidates_table")->item(0, 1)->toolTip().contains(QStringLiteral("0 or more")));
    CHECK(open.find<QLabel>("candidate_faults")->text().contains(QStringLiteral("A-1")));
  }
  SECTION("all stocks empty") {
    open.grain(0, 1, "0");
    open.grain(1, 1, "0");
    CHECK(open.find<QLabel>("candidate_faults")->text().contains(QStringLiteral("all are excluded")));
  }
  SECTION("nothing to choose from") {
    open.take(0, false);
    open.take(1, false);
    CHECK(open.find<QLabel>("candidate_faults")->text().contains(QStringLiteral("nothing to mix"), Qt::CaseInsensitive));
  }
  SECTION("points of a curve that can't be read") {
    open.wish(WishRow::limits, 1, "4.75 lots");
    CHECK(open.find<QLabel>("wish_faults")->text().contains(QStringLiteral("expected a size in mm")));
  }
  CHECK_FALSE(open.finder().setup().problem.has_value());
  CHECK(open.find<QLabel>("find_state")->text().contains(QStringLiteral("put right")));
  // Folded away, it is still told.
  open.window.mix_page().find_panel().show_more(false);
  open.bench.edit(QStringLiteral("name"), {}, [](BenchState& state) { state.mix_name += u'x'; });
  CHECK(open.find<QLabel>("find_trouble")->isVisible());
}

TEST_CASE("More than forty candidates are too many", "[find_parts][refuses]") {
  FindWindow open;
  open.choose("find_group", 3);
  auto* table = open.find<QTableWidget>("candidates_table");
  // The bench's two and the catalogue's materials are fewer than that; the same grain under many bags makes up for it.
  Change change;
  for (int i = 0; i < 41; ++i) {
    Bag bag;
    bag.material = "pumice";
    bag.printed_size = SizeBand{aperture_mm(1), aperture_mm(6)};
    bag.volume = loose_l(14);
    change.edits.push_back({RecordRef{RecordKind::bag, "P-" + std::to_string(100 + i)}, 0, Record(bag)});
  }
  change.label = "bags";
  REQUIRE(open.record->apply(std::move(change)));
  QApplication::processEvents();
  CHECK(open.finder().setup().taken.size() == most_candidates);
  for (int row = 0; row < table->rowCount(); ++row)
    if (table->item(row, 0)->checkState() == Qt::Unchecked) {
      open.take(row, true);
      break;
    }
  CHECK(open.find<QLabel>("candidate_faults")->text().contains(QStringLiteral("41 candidates")));
}

TEST_CASE("The trade-offs have a sentence and a table, and listed recipes carry their rank", "[find_parts]") {
  DemonstrationSearch open;
  const TradeOffPicture picture = trade_off_picture(*open.finder().found());
  REQUIRE(picture.air_and_water.size() >= 2);
  REQUIRE_FALSE(picture.price_and_fit.empty());
  for (std::size_t i = 1; i < picture.air_and_water.size(); ++i) {
    // Nothing beats a point in both figures.
    CHECK(picture.air_and_water[i].across >= picture.air_and_water[i - 1].across);
    CHECK(picture.air_and_water[i].up <= picture.air_and_water[i - 1].up);
  }
  CHECK(picture.price_and_fit.back().rank == 1);
  open.trigger("action_show_trade_off");
  CHECK(open.find("trade_off")->accessibleDescription().contains(QStringLiteral("Air against water")));
  open.trigger("action_chart_table");
  auto* table = open.find<QTableWidget>("trade_off_table");
  CHECK(table->isVisible());
  CHECK(table->rowCount() == static_cast<int>(picture.air_and_water.size() + picture.price_and_fit.size()));
  open.trigger("action_chart_table");
}

TEST_CASE("A search can be ended early and keeps what it found", "[find_parts]") {
  FindWindow open;
  open.choose("find_group", 3);
  open.finder().search();
  open.finder().cancel();
  open.finder().job().wait();
  QApplication::processEvents();
  REQUIRE(open.finder().found() != nullptr);
  // So small a space may be through before the button is; either way the answer says which.
  const DesignAnswer& answer = open.finder().found()->answer;
  CHECK(answer.stopped != answer.proven);
  CHECK(open.find<QPushButton>("find_again")->isVisible() == answer.stopped);
}

TEST_CASE("Opened wishes push what stands below them down, and nothing lies over another thing", "[find_parts]") {
  DemonstrationSearch open;
  auto& panel = open.window.mix_page().find_panel();
  panel.show_more(false);
  QApplication::processEvents();
  panel.show_more(true);
  const QWidget& wishes = *open.find<QTableWidget>("wishes_table");
  const QWidget& below = *open.find<QLineEdit>("find_dust");
  CHECK(QTest::qWaitFor([&] { return below.mapTo(&panel, QPoint()).y() >= wishes.mapTo(&panel, QPoint(0, wishes.height())).y(); }));
}

TEST_CASE("What was asked of a search survives in the draft", "[find_parts][roundtrip]") {
  QTemporaryDir folder;
  BenchState state = complete_bench();
  state.find.profile = QStringLiteral("conifers");
  state.find.wish(WishRow::air) = {QStringLiteral("12"), QStringLiteral("30"), true, QStringLiteral("2")};
  state.find.candidate_to_change(QStringLiteral("bag:K-07")).stock = QStringLiteral("3,5");
  state.find.candidate_to_change(QStringLiteral("bag:K-07")).use = CandidateText::Use::left_out;
  state.find.whole = false;
  state.find.also_pots = {QStringLiteral("C-01"), QStringLiteral("C-04")};
  const QString file = folder.filePath(QStringLiteral("bench.draft"));
  REQUIRE(write_draft(file, state));
  const auto read = read_draft(file);
  REQUIRE(read.has_value());
  CHECK(*read == state);
}

TEST_CASE("What jugs of the grain on the bench tell of its settling is no recipe's; what was typed is", "[find_parts][regression]") {
  DemonstrationSearch open;
  open.window.record_pages()->put_in_mix(QStringLiteral("P-03"));
  open.trigger("action_find_parts");
  open.bench.edit(QStringLiteral("settling"), {}, [](BenchState& state) { state.settling.clear(); });
  RecordKnowledge known;
  known.grains[QStringLiteral("P-03")] = GrainOfRecord{"P-03", Settling(0.03), {}, {}};
  open.bench.set_known(std::move(known));
  REQUIRE(open.bench.evaluation().settling != default_settling(Placing::worked_in));
  const auto searched = [&] { return find_setup(open.bench, open.finder().shelf()).problem; };
  REQUIRE(searched());
  CHECK(searched()->settling == default_settling(Placing::worked_in));
  open.bench.edit(QStringLiteral("settling"), {}, [](BenchState& typed) { typed.settling = QStringLiteral("5"); });
  CHECK(searched()->settling == Settling(0.05));
}

TEST_CASE("The settling that tests tell of a mix stays untyped when it is laid on the bench, so that other grain does not keep it", "[find_parts][regression]") {
  OpenWindow open(Start::mixes);
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  const auto stored = open.record->workbook().find(Id<MixVersion>{"MX-02/1"});
  REQUIRE(stored);
  MixVersion by_jug = stored->record;
  by_jug.mix.settling = Settling(0.04);
  by_jug.settling_measured = true;
  for (Component& component : by_jug.mix.components) component.name = material_words(*component.material).toStdString() + ' ' + component.name;  // as kept from the bench
  REQUIRE(open.record->replace(*stored, by_jug, QStringLiteral("mix")));
  open.window.record_pages()->open_mix(QStringLiteral("MX-02/1"));
  CHECK(open.bench.evaluation().settling == Settling(0.04));
  CHECK(open.bench.state().settling.isEmpty());
  open.bench.edit(QStringLiteral("parts"), {}, [](BenchState& state) { state.components[0].parts = QStringLiteral("0"); });
  CHECK(open.bench.evaluation().settling == default_settling(Placing::worked_in));
}

TEST_CASE("Prices of a search are in the money of the bags; those of several currencies are not added up", "[find_parts][refuses]") {
  DemonstrationSearch open;
  const auto setup = [&] { return find_setup(open.bench, open.finder().shelf()); };
  CHECK(setup().currency == QStringLiteral("EUR"));
  REQUIRE(setup().problem);
  const auto priced = [&] { return std::ranges::count_if(setup().problem->candidates, [](const Candidate& candidate) { return candidate.price.has_value(); }); };
  CHECK(priced() > 0);
  const auto stored = open.record->workbook().find(Id<Bag>{"P-03"});
  REQUIRE(stored);
  Bag abroad = stored->record;
  for (const auto& [currency, counts] : {std::pair{"", true}, {"CHF", false}}) {
    abroad.price->currency = currency;
    REQUIRE(open.record->replace(*open.record->workbook().find(Id<Bag>{"P-03"}), abroad, QStringLiteral("price")));
    open.trigger("action_find_parts");
    INFO(currency);
    CHECK((priced() > 0) == counts);
    CHECK(setup().currency.isEmpty() != counts);
  }
}

TEST_CASE("A group of trees that changes the wanted grain says so", "[find_parts]") {
  DemonstrationSearch open;
  open.bench.edit(QStringLiteral("band"), {}, [](BenchState& state) {
    state.band_from = QStringLiteral("2");
    state.band_to = QStringLiteral("9");
  });
  QStringList told;
  QObject::connect(&open.bench, &Bench::told, &open.window, [&told](const QString& words) { told << words; });
  auto* groups = open.find<QComboBox>("find_group");
  groups->setCurrentIndex(4);
  emit groups->activated(4);
  QApplication::processEvents();
  const auto& band = open.bench.evaluation().band;
  REQUIRE(band);
  REQUIRE(in_mm(band->to) != 9);
  REQUIRE(told.size() == 1);
  CHECK(told.front().contains(to_local(size_text(band->to, UnitSystem::metric))));
}
