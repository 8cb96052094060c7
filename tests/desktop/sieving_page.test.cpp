#include "pages/sieving_page.hpp"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <algorithm>
#include <cmath>

#include "charts/grading_chart.hpp"
#include "charts/lot_chart.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "models/demonstration_record.hpp"
#include "models/record_surroundings.hpp"
#include "models/screening_view.hpp"
#include "models/sieve_table_model.hpp"
#include "models/verdict_figures.hpp"
#include "record_pages.hpp"
#include "text.hpp"
#include "theme.hpp"

#include "support.hpp"

using namespace gritwright;
using namespace gritwright::desktop;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

/// Half the grain in 2 to 4 mm, a fifth coarser, three tenths finer; the band is 2 to 4.
BenchState dusty_bench() {
  BenchState state = complete_bench();
  state.components[0] = finished_component(QStringLiteral("D-1"), QStringLiteral("pumice"), {{"8", "0"}, {"4", "100"}, {"2", "250"}, {"1", "100"}}, "50", "500");
  state.band_from = QStringLiteral("2");
  state.band_to = QStringLiteral("4");
  return state;
}

/// A bag in the record, and the dusty sheet as its test on the bench.
QString dusty_bag(OpenWindow& open) {
  Bag bag;
  bag.material = "pumice";
  bag.volume = loose_l(14);
  bag.mass_as_bagged = mass_kg(7);
  bag.moisture = Moisture(0);
  bag.price = Price{14, "EUR"};
  const QString id = open.record->add(bag, QStringLiteral("bag"));
  BenchState state = dusty_bench();
  state.components[0].bag = id;
  open.bench.open(state);
  QApplication::processEvents();
  return id;
}

}  // namespace

TEST_CASE("Two samples are pooled, each with its own curve, and go into the mix as one", "[sieving_page]") {
  OpenWindow open;
  open.bench.open(dusty_bench());
  open.trigger("action_add_sample");
  auto* second = open.find<QLineEdit>("dry_mass_2");
  CHECK(second->isVisible());
  second->setFocus();
  open.type(QStringLiteral("500"));
  open.go_to_cell(0, SieveTableModel::second);
  for (const char* mass : {"0", "120", "250", "90", "40"}) {
    open.type(QString::fromLatin1(mass));
    open.press(Qt::Key_Return);
  }
  const ComponentEvaluation& component = open.bench.evaluation().components[0];
  REQUIRE(component.pooled.has_value());
  // Equal masses: the means of 80 and 76 %, 30 and 26 %.
  CHECK(open.cell(1, SieveTableModel::passing) == local("78.0 %"));
  CHECK(open.cell(2, SieveTableModel::passing) == local("28.0 %"));
  CHECK(std::get<Grading>(component.component->sizes) == component.pooled->grading);
  const GradingPicture picture = grading_picture(open.bench, -1, Curves::on_screen);
  CHECK(std::ranges::count_if(picture.series, &GradingSeries::faint) == 2);
  // The ribbon spans the two samples at each sieve, fine to coarse.
  REQUIRE(picture.ribbon_low_mm_percent.size() == 4);
  CHECK_THAT(picture.ribbon_low_mm_percent[1].y(), WithinAbs(26, 1e-9));
  CHECK_THAT(picture.ribbon_high_mm_percent[1].y(), WithinAbs(30, 1e-9));
  CHECK(open.find<QLabel>("balance")->text().contains(QStringLiteral("Sample 2")));
  open.trigger("action_remove_sample");
  CHECK_FALSE(open.bench.evaluation().components[0].pooled);
  open.trigger("action_undo");
  CHECK(open.bench.evaluation().components[0].pooled.has_value());
}

TEST_CASE("A fault in a further sample stands beside its own cell", "[sieving_page][refuses]") {
  OpenWindow open;
  open.bench.open(dusty_bench());
  open.trigger("action_add_sample");
  open.go_to_cell(1, SieveTableModel::second);
  open.type(QStringLiteral("12x"));
  open.press(Qt::Key_Return);
  CHECK(open.cell(1, SieveTableModel::check).contains(QStringLiteral("no unit known")));
  CHECK_FALSE(open.bench.evaluation().components[0].component);
}

TEST_CASE("The point of the cell that is typed is marked on the curve", "[sieving_page]") {
  OpenWindow open;
  open.bench.open(dusty_bench());
  open.go_to_cell(2, SieveTableModel::retained);
  const auto& marked = open.window.sieving_page().chart().picture().marked_mm_percent;
  REQUIRE(marked.has_value());
  CHECK_THAT(marked->x(), WithinRel(2.0, 1e-9));
  CHECK_THAT(marked->y(), WithinRel(30.0, 1e-9));
}

TEST_CASE("The curve can be looked at from nearby and goes back to the whole", "[sieving_page]") {
  OpenWindow open;
  open.bench.open(dusty_bench());
  open.trigger("action_show_curve");
  GradingChart& chart = open.window.sieving_page().chart();
  chart.setFocus();
  open.press(Qt::Key_Plus);
  CHECK(chart.is_zoomed());
  open.press(Qt::Key_Minus);
  CHECK_FALSE(chart.is_zoomed());
  chart.zoom(0.5, 2);
  open.trigger("action_whole_chart");
  CHECK_FALSE(chart.is_zoomed());
}

TEST_CASE("A bag's own price and litres show in the verdict", "[sieving_page]") {
  OpenWindow open;
  dusty_bag(open);
  const VerdictView view = verdict_view(open.bench);
  const auto judged = judge(open.bench.evaluation().components[0].analysis->grading, *open.bench.evaluation().band, {}, {}, graded_bag(open.bench)->packing.of).value;
  REQUIRE(judged.has_value());
  const Figure& price = view.figures.figures.back();
  REQUIRE(price.key == QStringLiteral("verdict_price"));
  // A litre of this bag costs 1; a usable one costs more by the share that is usable.
  CHECK(price.value == QLocale().toString(1 / judged->usable.value(), 'f', 2) + QStringLiteral(" EUR"));
  CHECK_FALSE(price.explanations.empty());
}

TEST_CASE("Which openings? chooses among the sieves owned", "[sieving_page]") {
  OpenWindow open;
  open.bench.open(dusty_bench());
  CHECK_FALSE(verdict_view(open.bench).openings_are_owned);
  SieveSet set;
  set.name = "mine";
  set.sieves = {{aperture_mm(4), {}}, {aperture_mm(2), {}}};
  open.record->add(set, QStringLiteral("sieves"));
  QApplication::processEvents();
  const VerdictView view = verdict_view(open.bench);
  CHECK(view.openings_are_owned);
  CHECK(view.openings.size() == 5);  // 4 and 2 mm together, and each alone to take off the top or the dust
}

TEST_CASE("An owned set is laid on the sheet and keeps what was weighed", "[sieving_page]") {
  OpenWindow open;
  open.bench.open(dusty_bench());
  SieveSet set;
  set.name = "mine";
  set.sieves = {{aperture_mm(8), {}}, {aperture_mm(5.6), {}}, {aperture_mm(4), {}}, {aperture_mm(2), {}}};
  open.record->add(set, QStringLiteral("sieves"));
  QApplication::processEvents();
  auto* chooser = open.find<QComboBox>("sieve_set_chooser");
  REQUIRE(chooser->count() == 2);
  chooser->setCurrentIndex(1);
  emit chooser->activated(1);
  const auto& rows = open.bench.state().components[0].sheet.rows;
  REQUIRE(rows.size() == 5);
  CHECK(rows[2].retained == QStringLiteral("100"));
  CHECK(rows[1].retained.isEmpty());
  // The set has no 1 mm, but grain lay on it.
  CHECK(rows[4].aperture == QStringLiteral("1"));
  open.trigger("action_undo");
  CHECK(open.bench.state() == [] { return dusty_bench(); }());
}

TEST_CASE("Screening a bag is predicted, then weighed, then kept in stock without grain made or lost", "[sieving_page]") {
  OpenWindow open;
  const QString bag = dusty_bag(open);
  open.trigger("action_show_screening");
  const ScreeningView predicted = screening_view(open.bench);
  REQUIRE(predicted.rows.size() >= 2);
  CHECK_FALSE(predicted.is_measured);
  CHECK_THAT(in_kg(*predicted.screened), WithinRel(7.0, 1e-9));
  CHECK_FALSE(open.find<QPushButton>("keep_fractions")->isEnabled());
  auto* openings = open.find<QLineEdit>("screen_at");
  openings->setFocus();
  open.type(QStringLiteral("4 2"));
  auto* table = open.find<QTableWidget>("screening_table");
  REQUIRE(table->rowCount() == 3);
  const char* weighed[] = {"1300", "3600", "2030"};
  for (int row = 0; row < 3; ++row) table->item(row, 4)->setText(QString::fromLatin1(weighed[row]));
  table->item(1, 5)->setText(QStringLiteral("7,5"));
  CHECK(open.find<QLabel>("screening_balance")->text().contains(local("1.0 %")));
  open.trigger("action_keep_fractions");
  const auto fractions = open.record->workbook().all<Fraction>();
  REQUIRE(fractions.size() == 3);
  CHECK(fractions[1].id.text == bag.toStdString() + "/2");
  CHECK_THAT(in_l(*fractions[1].record.volume), WithinRel(7.5, 1e-9));
  CHECK(fractions[1].record.predicted);
  Mass in_tubs{};
  for (const auto& fraction : fractions) in_tubs = in_tubs + *open.record->workbook().stock_of(ref_to(fraction.id));
  CHECK_THAT(in_g(in_tubs), WithinAbs(6930, 1e-6));
  // 70 g went up as dust; nothing is left of the bag.
  CHECK_THAT(in_g(*open.record->workbook().stock_of({RecordKind::bag, bag.toStdString()})), WithinAbs(0, 1e-6));
  CHECK(open.bench.state().components[0].screening == ScreeningText{});
  open.record->undo();
  CHECK(open.record->workbook().count(RecordKind::fraction) == 0);
}

TEST_CASE("A litre of a bag weighs the same in the mix, on the screening and in stock, whoever measured it or nobody", "[sieving_page][regression]") {
  OpenWindow open;
  const RecordRef bag{RecordKind::bag, dusty_bag(open).toStdString()};
  const auto weighs = [&](double g_per_l) {
    // Laid on the bench anew, as the record now knows it.
    BenchState state = dusty_bench();
    state.components[0].bag = to_qt(bag.id);
    state.components[0].material = QStringLiteral("pumice");
    state.components[0].grain = sheet_of_grain(open.record->workbook(), to_qt(bag.id))->grain;
    open.bench.open(state);
    QApplication::processEvents();
    const auto& component = open.bench.evaluation().components[0].component;
    REQUIRE(component);
    CHECK_THAT(in_g_l(dry_bulk_density(component->grain)), WithinRel(g_per_l, 1e-9));
    CHECK_THAT(in_g_l(*bulk_density_of(open.record->workbook(), bag)), WithinRel(g_per_l, 1e-9));
    const ScreeningView view = screening_view(open.bench);
    REQUIRE(view.rows.size() >= 2);
    for (const ScreeningRow& row : view.rows) {
      REQUIRE(row.amount.volume);
      CHECK_THAT(in_l(*row.amount.volume), WithinRel(row.predicted.loose_per_loose->value() * 7000 / g_per_l, 1e-9));
    }
  };
  // 7 kg of dry grain in 14 L.
  weighs(500);
  const auto stored = open.record->workbook().find(Id<Bag>{bag.id});
  Bag measured = stored->record;
  measured.bulk_density = bulk_g_l(560);
  REQUIRE(open.record->replace(*stored, measured, QStringLiteral("litre weight")));
  weighs(560);
}

TEST_CASE("Fractions that were only weighed lie on the shelf with the litres that were predicted of so much", "[sieving_page][law]") {
  OpenWindow open;
  const QString bag = dusty_bag(open);
  BenchState state = open.bench.state();
  state.components[0].grain = sheet_of_grain(open.record->workbook(), bag)->grain;
  open.bench.open(state);
  open.trigger("action_show_screening");
  open.find<QLineEdit>("screen_at")->setFocus();
  open.type(QStringLiteral("4 2"));
  const ScreeningView view = screening_view(open.bench);
  REQUIRE(view.rows.size() == 3);
  auto* table = open.find<QTableWidget>("screening_table");
  table->setFocus();
  std::vector<double> predicted_l;
  for (const ScreeningRow& row : view.rows) {
    REQUIRE(row.amount.volume);
    const double grams = std::round(in_g(*row.amount.dry_mass));
    predicted_l.push_back(in_l(*row.amount.volume) * grams / in_g(*row.amount.dry_mass));
    open.type(QString::number(grams));
    open.press(Qt::Key_Return);
  }
  open.trigger("action_keep_fractions");
  const auto kept = open.record->workbook().all<Fraction>();
  REQUIRE(kept.size() == 3);
  for (std::size_t i = 0; i < kept.size(); ++i) {
    const auto litres = litres_in_stock(open.record->workbook(), ref_to(kept[i].id));
    REQUIRE(litres);
    CHECK_THAT(in_l(*litres), WithinRel(predicted_l[i], 1e-9));
  }
}

TEST_CASE("How wide the sieves are is typed beside the grain, and too much on one of them is told at the stack", "[sieving_page]") {
  OpenWindow open;
  open.bench.open(dusty_bench());
  open.trigger("action_show_grain");
  auto* width = open.find<QLineEdit>("sieve_frame");
  width->setFocus();
  open.type(QStringLiteral("100"));
  CHECK(open.bench.state().components[0].sheet.sieve_diameter == QStringLiteral("100"));
  const auto& notes = open.bench.evaluation().components[0].analysis->notes;
  CHECK(std::ranges::any_of(notes, [](const Note& note) { return note.code == "sieve-test.overload"; }));
  CHECK_FALSE(open.cell(2, SieveTableModel::check).isEmpty());
  open.find<QLineEdit>("sample_moisture")->setFocus();
  open.type(QStringLiteral("10"));
  CHECK_THAT(open.bench.evaluation().components[0].test->moisture.value(), WithinRel(0.1, 1e-9));
}

TEST_CASE("What is typed of a sample after its test was kept goes into that test, as one step", "[sieving_page][regression]") {
  OpenWindow open;
  dusty_bag(open);
  open.trigger("action_save_sheet");
  const auto kept = [&] { return open.record->workbook().all<RecordedSieveTest>(); };
  REQUIRE(kept().size() == 1);
  open.trigger("action_show_grain");
  open.find<QLineEdit>("sample_moisture")->setFocus();
  open.type(QStringLiteral("10"));
  open.trigger("action_save_sheet");
  REQUIRE(kept().size() == 1);
  CHECK_THAT(kept().front().record.test.moisture.value(), WithinRel(0.1, 1e-9));
  open.record->undo();
  CHECK(kept().front().record.test.moisture == Moisture{});
}

TEST_CASE("A pan that is put right goes into the kept test; other weighings of the bag are a further test", "[sieving_page][regression]") {
  OpenWindow open;
  dusty_bag(open);
  open.trigger("action_save_sheet");
  const auto kept = [&] { return open.record->workbook().all<RecordedSieveTest>(); };
  const auto weigh = [&](const std::vector<const char*>& masses, const char* sample) {
    open.bench.edit(QStringLiteral("pans"), {}, [&](BenchState& state) {
      SieveSheet& sheet = state.components[0].sheet;
      for (std::size_t row = 0; row < masses.size(); ++row) sheet.rows[row].retained = QLatin1String(masses[row]);
      sheet.dry_mass = QLatin1String(sample);
    });
    open.trigger("action_save_sheet");
  };
  weigh({"0", "100", "250", "98"}, "500");
  REQUIRE(kept().size() == 1);
  CHECK_THAT(in_g(std::get<Mass>(kept().front().record.test.rows.back().retained)), WithinAbs(98, 1e-9));
  weigh({"0", "91", "233", "88"}, "480");
  CHECK(kept().size() == 2);
}

TEST_CASE("A test that was typed in pounds is the same test when it is laid out again", "[sieving_page][regression]") {
  OpenWindow open;
  const QString bag = dusty_bag(open);
  open.bench.edit(QStringLiteral("pounds"), {}, [](BenchState& state) {
    SieveSheet& sheet = state.components[0].sheet;
    const char* const masses[] = {"0.013 lb", "0.221 lb", "0.551 lb", "0.207 lb"};
    for (std::size_t row = 0; row < sheet.rows.size(); ++row) sheet.rows[row].retained = QLatin1String(masses[row]);
    sheet.pan.retained = QStringLiteral("0.117 lb");
    sheet.dry_mass = QStringLiteral("1.11 lb");
  });
  open.trigger("action_save_sheet");
  const auto kept = open.record->workbook().all<RecordedSieveTest>();
  REQUIRE(kept.size() == 1);
  open.bench.open(BenchState{});
  open.window.record_pages()->grade(bag);
  open.trigger("action_save_sheet");
  const auto after = open.record->workbook().all<RecordedSieveTest>();
  REQUIRE(after.size() == 1);
  CHECK(after.front().revision == kept.front().revision);
}

TEST_CASE("How much a sieve bears and how large a sample must be goes by the densities of the grain", "[sieving_page]") {
  OpenWindow open;
  BenchState state = dusty_bench();
  state.components[0].material.clear();
  state.components[0].sheet.sieve_diameter = QStringLiteral("200");
  state.components[0].grain = {};
  open.bench.open(state);
  const auto limit = [&](const char* code) -> std::optional<Note> {
    const auto& notes = open.bench.evaluation().components[0].analysis->notes;
    const auto found = std::ranges::find(notes, code, &Note::code);
    return found == notes.end() ? std::nullopt : std::optional(*found);
  };
  // 250 g on 2 mm: a sieve of 8 in bears 200 g of stone (ASTM C136), of light grain in proportion.
  const auto of_stone = limit("sieve-test.overload");
  REQUIRE(of_stone);
  CHECK(std::get<double>(of_stone->facts.at("goes")) == 2);
  open.bench.edit(QStringLiteral("grain"), {}, [](BenchState& typed) { typed.components[0].grain.bulk_density = QStringLiteral("500"); });
  const auto of_light = limit("sieve-test.overload");
  REQUIRE(of_light);
  CHECK_THAT(std::get<double>(of_light->facts.at("limit_g")), WithinRel(std::get<double>(of_stone->facts.at("limit_g")) / 3, 1e-9));
  CHECK_FALSE(open.bench.evaluation().components[0].test->bulk_density);
}

TEST_CASE("The set whose sieves are on the sheet is the one that is chosen, and a set laid on a weighed sheet keeps the stack in order", "[sieving_page]") {
  OpenWindow open;
  open.bench.open(dusty_bench());
  for (const auto& [name, sizes] : {std::pair{"brass", std::vector<double>{8, 4, 2, 1}}, {"riddles", std::vector<double>{10, 6, 3}}}) {
    SieveSet set;
    set.name = name;
    for (const double mm : sizes) set.sieves.push_back({aperture_mm(mm), {}});
    open.record->add(set, QStringLiteral("sieves"));
  }
  QApplication::processEvents();
  auto* chooser = open.find<QComboBox>("sieve_set_chooser");
  REQUIRE(chooser->count() == 3);
  CHECK(chooser->currentText() == QStringLiteral("brass"));
  const int riddles = chooser->findText(QStringLiteral("riddles"));
  chooser->setCurrentIndex(riddles);
  emit chooser->activated(riddles);
  std::vector<double> sizes;
  for (const PanText& row : open.bench.state().components[0].sheet.rows) sizes.push_back(row.aperture.toDouble());
  CHECK(sizes == std::vector<double>{10, 8, 6, 4, 3, 2, 1});
  CHECK(chooser->currentIndex() == 0);
}

TEST_CASE("A bag that was not sieved begins with the sieves of the sheet before it, as wide as they are", "[sieving_page]") {
  OpenWindow open;
  BenchState state = dusty_bench();
  state.components[0].sheet.sieve_diameter = QStringLiteral("100");
  open.bench.open(state);
  Bag bag;
  bag.material = "pumice";
  const QString id = open.record->add(bag, QStringLiteral("bag"));
  open.window.record_pages()->grade(id);
  const SieveSheet& sheet = open.bench.state().components[static_cast<std::size_t>(open.bench.current_component())].sheet;
  CHECK(sheet.rows.front().aperture == QStringLiteral("8"));
  CHECK(sheet.sieve_diameter == QStringLiteral("100"));
}

TEST_CASE("A line that the record takes while its page is left does not get the keys for undo of the bench", "[sieving_page][regression]") {
  OpenWindow open;
  dusty_bag(open);
  open.trigger("action_page_bags");
  open.find<QLineEdit>("bag_note")->setFocus();
  open.type(QStringLiteral("dusty"));
  open.trigger("action_page_sieving");
  QApplication::processEvents();
  CHECK(open.window.findChild<QAction*>(QStringLiteral("action_undo"))->shortcut() == QKeySequence(QStringLiteral("Ctrl+Z")));
}

TEST_CASE("Of a stack with one fault in several rows it is said once, with the sieves it holds for", "[sieving_page]") {
  OpenWindow open;
  open.bench.open(dusty_bench());
  open.bench.edit(QStringLiteral("rows"), {}, [](BenchState& state) {
    for (PanText& row : state.components[0].sheet.rows) row.retained = QStringLiteral("wet");
  });
  QApplication::processEvents();
  const QString checks = open.find<QLabel>("sheet_checks")->text();
  CHECK(checks.contains(comma_list({QStringLiteral("8"), QStringLiteral("4"), QStringLiteral("2"), QStringLiteral("1")})));
  CHECK(checks.count(u'\u2022') == 1);
}

TEST_CASE("Typing where the window reckons says so and changes nothing", "[sieving_page][refuses]") {
  OpenWindow open;
  open.bench.open(dusty_bench());
  const BenchState before = open.bench.state();
  QString told;
  QObject::connect(&open.bench, &Bench::told, [&](const QString& sentence) { told = sentence; });
  open.go_to_cell(1, SieveTableModel::passing);
  open.type(QStringLiteral("5"));
  CHECK_FALSE(told.isEmpty());
  CHECK(open.bench.state() == before);
}

TEST_CASE("What was kept from the bench last is what the keys for undo take back there, and then do again", "[sieving_page]") {
  OpenWindow open;
  dusty_bag(open);
  open.bench.edit(QStringLiteral("pan"), {}, [](BenchState& state) { state.components[0].sheet.rows[2].retained = QStringLiteral("249"); });
  const auto has_keys = [&](const char* action, const char* keys) { return open.window.findChild<QAction*>(QLatin1String(action))->shortcut() == QKeySequence(QLatin1String(keys)); };
  CHECK(has_keys("action_undo", "Ctrl+Z"));
  open.trigger("action_save_sheet");
  QApplication::processEvents();
  CHECK(open.record->workbook().count(RecordKind::sieve_test) == 1);
  CHECK(has_keys("action_record_undo", "Ctrl+Z"));
  CHECK(has_keys("action_undo", "Ctrl+Alt+Z"));
  open.trigger("action_record_undo");
  CHECK(open.record->workbook().count(RecordKind::sieve_test) == 0);
  CHECK(has_keys("action_undo", "Ctrl+Z"));
  CHECK(has_keys("action_record_redo", "Ctrl+Shift+Z"));
  open.trigger("action_record_redo");
  CHECK(open.record->workbook().count(RecordKind::sieve_test) == 1);
  open.bench.edit(QStringLiteral("pan"), {}, [](BenchState& state) { state.components[0].sheet.rows[2].retained = QStringLiteral("251"); });
  CHECK(has_keys("action_undo", "Ctrl+Z"));
  CHECK(has_keys("action_redo", "Ctrl+Shift+Z"));
}

TEST_CASE("The key of the page on screen goes to its first field", "[sieving_page]") {
  OpenWindow open;
  open.bench.open(dusty_bench());
  open.find<QLineEdit>("dry_mass")->setFocus();
  open.trigger("action_page_sieving");
  QWidget* const first = open.window.focusWidget();
  REQUIRE(first != nullptr);
  CHECK(first != open.find<QLineEdit>("dry_mass"));
  CHECK(open.window.sieving_page().isAncestorOf(first));
}

TEST_CASE("Fractions that weigh a trifle more than what went in leave nothing of the bag, and no screening of less than nothing", "[sieving_page][regression]") {
  OpenWindow open;
  const QString bag = dusty_bag(open);
  open.trigger("action_show_screening");
  open.find<QLineEdit>("screen_at")->setFocus();
  open.type(QStringLiteral("4 2"));
  auto* table = open.find<QTableWidget>("screening_table");
  const char* weighed[] = {"1400", "3500", "2101"};
  for (int row = 0; row < 3; ++row) table->item(row, 4)->setText(QString::fromLatin1(weighed[row]));
  open.trigger("action_keep_fractions");
  CHECK(open.record->workbook().count(RecordKind::fraction) == 3);
  const auto left = open.record->workbook().stock_of({RecordKind::bag, bag.toStdString()});
  REQUIRE(left);
  CHECK_THAT(in_g(*left), WithinAbs(0, 1e-6));
  for (const ScreeningRow& row : screening_view(open.bench).rows) CHECK((!row.amount.dry_mass || in_g(*row.amount.dry_mass) >= 0));
}

TEST_CASE("Boxes stand as near their labels and are as low as before once large text is put away", "[large_text][sieving_page]") {
  OpenWindow open;
  open.bench.open(dusty_bench());
  QApplication::processEvents();
  const auto places = [&] {
    for (int round = 0; round < 4; ++round) QApplication::processEvents();
    std::vector<int> all;
    for (const char* name : {"sheet_chooser", "bag_chooser", "sieve_set_chooser"}) {
      const auto* box = open.find<QComboBox>(name);
      all.insert(all.end(), {box->x(), box->height(), box->minimumSizeHint().height()});
    }
    return all;
  };
  const std::vector<int> before = places();
  {
    const LargeText large(200);
    CHECK(places() != before);
  }
  CHECK(places() == before);
}

TEST_CASE("A figure in an open cell of the screening is on the bench with every sign, and one undo takes it back", "[sieving_page][regression]") {
  OpenWindow open;
  dusty_bag(open);
  open.trigger("action_show_screening");
  open.find<QLineEdit>("screen_at")->setFocus();
  open.type(QStringLiteral("4 2"));
  auto* table = open.find<QTableWidget>("screening_table");
  REQUIRE(table->rowCount() == 3);
  const auto weighed = [&](std::size_t row) {
    const auto& rows = open.bench.state().components[0].screening.measured;
    return row < rows.size() ? rows[row].retained : QString();
  };
  table->setFocus();
  open.type(QStringLiteral("1300"));
  CHECK(weighed(0) == QStringLiteral("1300"));
  open.press(Qt::Key_Return);
  CHECK(table->currentRow() == 1);
  open.type(QStringLiteral("36"));
  open.type(QStringLiteral("00"));
  CHECK(weighed(1) == QStringLiteral("3600"));
  open.press(Qt::Key_Return);
  open.trigger("action_undo");
  CHECK(weighed(1).isEmpty());
  CHECK(weighed(0) == QStringLiteral("1300"));
  open.trigger("action_redo");
  open.type(QStringLiteral("2030"));
  open.trigger("action_keep_fractions");
  CHECK(open.record->workbook().count(RecordKind::fraction) == 3);
  table->clearFocus();
  CHECK(open.bench.state().components[0].screening == ScreeningText{});
}

TEST_CASE("A figure in an open cell of the screening stays with its bag when another comes to the front", "[sieving_page][regression]") {
  OpenWindow open;
  BenchState state = dusty_bench();
  state.components.push_back(state.components[0]);
  state.components[1].name = QStringLiteral("another");
  open.bench.open(state);
  open.trigger("action_show_screening");
  open.find<QLineEdit>("screen_at")->setFocus();
  open.type(QStringLiteral("4 2"));
  open.trigger("action_next_component");
  open.find<QLineEdit>("screen_at")->setFocus();
  open.type(QStringLiteral("4 2"));
  open.trigger("action_next_component");
  const auto weighed = [&](std::size_t component) {
    const auto& rows = open.bench.state().components[component].screening.measured;
    return rows.empty() ? QString() : rows[0].retained;
  };
  const auto front = static_cast<std::size_t>(open.bench.current_component());
  auto* table = open.find<QTableWidget>("screening_table");
  REQUIRE(table->rowCount() == 3);
  table->setFocus();
  open.type(QStringLiteral("1300"));
  REQUIRE(weighed(front) == QStringLiteral("1300"));
  open.trigger("action_next_component");
  const auto other = static_cast<std::size_t>(open.bench.current_component());
  REQUIRE(other != front);
  open.press(Qt::Key_Return);
  CHECK(weighed(other).isEmpty());
  CHECK(weighed(front) == QStringLiteral("1300"));
}

TEST_CASE("Where much of a bag is in no fraction it is asked how much was screened, before the rest leaves the stock", "[sieving_page][refuses]") {
  OpenWindow open;
  const RecordRef bag{RecordKind::bag, dusty_bag(open).toStdString()};
  open.trigger("action_show_screening");
  open.find<QLineEdit>("screen_at")->setFocus();
  open.type(QStringLiteral("4 2"));
  auto* table = open.find<QTableWidget>("screening_table");
  REQUIRE(table->rowCount() == 3);
  table->setFocus();
  // A kilogram of the seven that lie there.
  for (const char* const mass : {"190", "510", "290"}) {
    open.type(QString::fromLatin1(mass));
    open.press(Qt::Key_Return);
  }
  CHECK_FALSE(screening_view(open.bench).far_from_screened.isEmpty());
  CHECK_FALSE(open.find<QPushButton>("keep_fractions")->isEnabled());
  open.trigger("action_keep_fractions");
  CHECK(open.record->workbook().count(RecordKind::fraction) == 0);
  CHECK(open.record->workbook().stock_of(bag).value_or(mass_g(7000)) == mass_g(7000));
  open.find<QLineEdit>("screened_mass")->setFocus();
  open.type(QStringLiteral("1000"));
  CHECK(screening_view(open.bench).far_from_screened.isEmpty());
  open.trigger("action_keep_fractions");
  CHECK(open.record->workbook().count(RecordKind::fraction) == 3);
  CHECK_THAT(in_g(*open.record->workbook().stock_of(bag)), WithinAbs(6000, 1e-6));
}

TEST_CASE("Much more than went in is not kept as fractions until weights or what was screened are put right", "[sieving_page][refuses]") {
  OpenWindow open;
  dusty_bag(open);
  open.trigger("action_show_screening");
  open.find<QLineEdit>("screen_at")->setFocus();
  open.type(QStringLiteral("4 2"));
  open.find<QLineEdit>("screened_mass")->setFocus();
  open.type(QStringLiteral("1000"));
  auto* table = open.find<QTableWidget>("screening_table");
  REQUIRE(table->rowCount() == 3);
  table->setFocus();
  for (const char* const mass : {"190", "5100", "290"}) {
    open.type(QString::fromLatin1(mass));
    open.press(Qt::Key_Return);
  }
  open.trigger("action_keep_fractions");
  CHECK(open.record->workbook().count(RecordKind::fraction) == 0);
  CHECK_FALSE(open.find<QPushButton>("keep_fractions")->isEnabled());
  open.find<QLineEdit>("screened_mass")->setFocus();
  open.find<QLineEdit>("screened_mass")->selectAll();
  open.type(QStringLiteral("5500"));
  open.trigger("action_keep_fractions");
  CHECK(open.record->workbook().count(RecordKind::fraction) == 3);
}

TEST_CASE("The litre weight that the bench has from the record follows it, and one that was typed stays", "[sieving_page][regression]") {
  OpenWindow open;
  const QString bag = dusty_bag(open);
  BenchState state = dusty_bench();
  state.components[0].bag = bag;
  state.components[0].grain = sheet_of_grain(open.record->workbook(), bag)->grain;
  open.bench.open(state);
  const auto bulk_density = [&] { return open.bench.state().components[0].grain.bulk_density; };
  const auto hold = [&](double litres) {
    const auto stored = open.record->workbook().find(Id<Bag>{bag.toStdString()});
    Bag changed = stored->record;
    changed.volume = loose_l(litres);
    REQUIRE(open.record->replace(*stored, changed, QStringLiteral("litres")));
    QApplication::processEvents();
  };
  REQUIRE(bulk_density() == QStringLiteral("500"));
  hold(17.5);
  CHECK(bulk_density() == QStringLiteral("400"));
  open.record->undo();
  QApplication::processEvents();
  CHECK(bulk_density() == QStringLiteral("500"));
  open.bench.edit(QStringLiteral("litre weight"), {}, [](BenchState& edited) { edited.components[0].grain.bulk_density = QStringLiteral("560"); });
  hold(10);
  CHECK(bulk_density() == QStringLiteral("560"));
}

TEST_CASE("A screening is kept under the day on which it was done, in its fractions, the stock and the log", "[sieving_page][regression]") {
  OpenWindow open;
  const QString bag = dusty_bag(open);
  open.trigger("action_show_screening");
  auto* day = open.find<QLineEdit>("screened_on");
  auto* table = open.find<QTableWidget>("screening_table");
  open.find<QLineEdit>("screen_at")->setFocus();
  open.type(QStringLiteral("4 2"));
  REQUIRE(table->rowCount() == 3);
  const char* weighed[] = {"1300", "3600", "2030"};
  for (int row = 0; row < 3; ++row) table->item(row, 4)->setText(QString::fromLatin1(weighed[row]));
  CHECK(screening_view(open.bench).day == today());
  day->setFocus();
  open.type(QStringLiteral("2026-02-30"));
  CHECK(screening_view(open.bench).day_fault.contains(QStringLiteral("2026-02-30")));
  CHECK_FALSE(open.find<QPushButton>("keep_fractions")->isEnabled());
  open.trigger("action_keep_fractions");
  CHECK(open.record->workbook().count(RecordKind::fraction) == 0);
  day->selectAll();
  open.type(QStringLiteral("2026-02-27"));
  open.trigger("action_keep_fractions");
  const auto fractions = open.record->workbook().all<Fraction>();
  REQUIRE(fractions.size() == 3);
  for (const auto& fraction : fractions) CHECK(fraction.record.day == std::optional<std::string>("2026-02-27"));
  std::size_t entries = 0;
  for (const auto& entry : open.record->workbook().all<StockEntry>()) {
    if (entry.record.reason == StockReason::received) continue;
    CHECK(entry.record.day == "2026-02-27");
    ++entries;
  }
  CHECK(entries == 7);
  CHECK(open.record->workbook().all<LogEntry>().back().record.day == "2026-02-27");
  CHECK(day->text().isEmpty());
}

TEST_CASE("A screening that is not whole keeps nothing and says why", "[sieving_page][refuses]") {
  OpenWindow open;
  dusty_bag(open);
  open.trigger("action_show_screening");
  QString said;
  QObject::connect(&open.bench, &Bench::told, [&](const QString& sentence) { said = sentence; });
  open.trigger("action_keep_fractions");
  CHECK(said.contains(QStringLiteral("Weigh every fraction")));
  auto* openings = open.find<QLineEdit>("screen_at");
  openings->setFocus();
  open.type(QStringLiteral("4 4"));
  CHECK_FALSE(screening_view(open.bench).openings_fault.isEmpty());
  CHECK(open.record->workbook().count(RecordKind::fraction) == 0);
}

TEST_CASE("Earlier bags of the material lie faint behind the curve and side by side from lot to lot", "[sieving_page]") {
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.window.record_pages()->grade(QStringLiteral("P-03"));
  QApplication::processEvents();
  const auto& earlier = open.bench.surroundings().earlier;
  REQUIRE_FALSE(earlier.empty());
  CHECK(std::ranges::none_of(earlier, [](const EarlierTest& test) { return test.bag == QStringLiteral("P-03"); }));
  const GradingPicture picture = grading_picture(open.bench, -1, Curves::on_screen);
  CHECK(static_cast<std::size_t>(std::ranges::count_if(picture.series, &GradingSeries::faint)) == earlier.size());
  open.trigger("action_show_lots");
  const auto points = lot_points(open.bench);
  // Sold as another size it is no lot of the same.
  const auto& printed = open.bench.surroundings().bag->printed_size;
  REQUIRE(printed);
  const auto lots = std::ranges::count_if(earlier, [&](const EarlierTest& test) { return !test.printed_size || test.printed_size == printed; });
  CHECK(points.size() == static_cast<std::size_t>(lots) + 1);
  CHECK(lot_table(open.bench).rows.size() == points.size() + 1);
  CHECK(open.find<LotChart>("lot_chart")->accessibleDescription() == lot_sentence(open.bench));
}

TEST_CASE("A bag measured by bucket in litres is graded in the same form", "[sieving_page]") {
  OpenWindow open;
  BenchState state = dusty_bench();
  state.components[0].sheet.measure = Measure::litres;
  state.components[0].sheet.dry_mass.clear();
  open.bench.open(state);
  REQUIRE(open.bench.evaluation().components[0].state == SheetState::finished);
  // 100 of 500 litres stayed on 4 mm.
  CHECK(open.cell(1, SieveTableModel::passing) == local("80.0 %"));
  const auto* balance = open.find<QLabel>("balance");
  CHECK(balance->text().startsWith(local("Sum 500 L")));
  state.components[0].sheet.pan.retained.clear();
  open.bench.open(state);
  REQUIRE(open.bench.evaluation().components[0].state == SheetState::begun);
  CHECK(balance->text().startsWith(QStringLiteral("Sum ")));
  CHECK(balance->text().contains(QStringLiteral("type the pan")));
}

TEST_CASE("Tab goes from the sample over the way of measuring into the sieves", "[sieving_page][accessibility]") {
  OpenWindow open;
  open.find<QLineEdit>("dry_mass")->setFocus();
  open.press(Qt::Key_Tab);
  CHECK(QApplication::focusWidget() == open.find<QComboBox>("measure"));
  open.press(Qt::Key_Tab);
  CHECK(QApplication::focusWidget() == open.find<QWidget>("sieve_table"));
}

TEST_CASE("The next sheet has the sieves and tares of the one before, and nothing weighed", "[sieving_page]") {
  OpenWindow open;
  BenchState state = empty_bench();
  SieveSheet& sheet = state.components[0].sheet;
  sheet.measure = Measure::gross_and_tare;
  sheet.rows = {{QStringLiteral("5"), QStringLiteral("312"), QStringLiteral("250")}, {QStringLiteral("2.5"), QStringLiteral("400"), QStringLiteral("248")}};
  sheet.pan = {QString(), QStringLiteral("270"), QStringLiteral("255")};
  state.components.resize(1);
  open.bench.open(state);
  open.trigger("action_add_component");
  const SieveSheet stack{Measure::gross_and_tare,
                         {{QStringLiteral("5"), QString(), QStringLiteral("250")}, {QStringLiteral("2.5"), QString(), QStringLiteral("248")}},
                         {QString(), QString(), QStringLiteral("255")}, {}, {}, {}, {}, {}, {}, false};
  CHECK(open.bench.state().components[1].sheet == stack);
  // A bag that was never tested is sieved on the same ones, in the place of the sheet nobody typed into.
  Bag bag;
  bag.material = "pumice";
  const QString id = open.record->add(bag, QStringLiteral("bag"));
  open.window.record_pages()->grade(id);
  REQUIRE(open.bench.state().components.size() == 2);
  CHECK(open.bench.state().components[1].bag == id);
  CHECK(open.bench.state().components[1].sheet == stack);
  open.trigger("action_new");
  CHECK(open.bench.state().components[0].sheet == stack);
}

TEST_CASE("Sum and loss stay in view however long the stack and large the text", "[sieving_page]") {
  OpenWindow open;
  BenchState state = dusty_bench();
  for (const char* aperture : {"0.5", "0.25", "0.2", "0.15", "0.125", "0.1", "0.09", "0.075", "0.063"}) state.components[0].sheet.rows.push_back({QString::fromLatin1(aperture), QStringLiteral("0"), {}});
  open.bench.open(state);
  apply_theme(*qApp, Theme::light, 150);
  open.window.resize(1024, 700);
  QApplication::processEvents();
  const auto* balance = open.find<QLabel>("balance");
  CHECK(balance->text().contains(QStringLiteral("Sum")));
  CHECK(balance->visibleRegion().boundingRect() == balance->rect());
  CHECK(open.window.rect().contains(QRect(balance->mapTo(&open.window, QPoint(0, 0)), balance->size())));
  apply_theme(*qApp, Theme::light, 100);
}
