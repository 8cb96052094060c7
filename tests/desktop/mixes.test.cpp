#include <QComboBox>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QLineEdit>
#include <QMimeData>
#include <QStackedWidget>
#include <QTableView>
#include <QTableWidget>

#include "charts/comparison_view.hpp"
#include "charts/parts_bar.hpp"
#include "models/demonstration_record.hpp"
#include "models/range_keeper.hpp"
#include "models/record_list_model.hpp"
#include "models/record_surroundings.hpp"
#include "pages/bags_page.hpp"
#include "pages/mix_page.hpp"
#include "record_pages.hpp"
#include "support.hpp"

using namespace gritwright;
using namespace gritwright::desktop;
using Catch::Matchers::WithinAbs;

namespace {

void compare(OpenWindow& open) {
  open.trigger("action_show_comparison");
  open.window.mix_page().comparison().job().wait();
  QApplication::processEvents();
}

}  // namespace

TEST_CASE("The litres that go in and come out are those of the engine, and what fills them adds up", "[mixes]") {
  OpenWindow open(Start::mixes);
  CHECK(parts_picture(open.bench, nullptr).in.empty());
  CHECK_FALSE(parts_sentence(open.bench, nullptr).isEmpty());
  open.bench.open(complete_bench());
  open.window.ranges().finish();
  const PartsPicture picture = parts_picture(open.bench, open.window.ranges().mix());
  REQUIRE(picture.in.size() == 2);
  CHECK_THAT(picture.in[0].litres, WithinAbs(in_l((*open.bench.evaluation().to_measure_out)[0]), 1e-12));
  double filled = 0;
  for (const PartsPicture::Share& share : picture.filling) filled += share.share;
  CHECK_THAT(filled, WithinAbs(1, 1e-9));
  // How sure each is stands beside it.
  const auto holds = [](const std::optional<Range>& range, double value) {
    REQUIRE(range);
    CHECK(range->low < value);
    CHECK(range->high > value);
  };
  for (const PartsPicture::Part& part : picture.in) holds(part.range, part.litres);
  for (const PartsPicture::Share& share : picture.filling) holds(share.range, share.share);
  holds(picture.litres_out_range, *picture.litres_out);
  open.trigger("action_show_litres");
  open.trigger("action_chart_table");
  const auto* table = open.find<QTableWidget>("parts_table");
  CHECK(table->rowCount() == 6);
  for (int row = 0; row < table->rowCount(); ++row) CHECK(table->item(row, 2)->text() != QStringLiteral("\u2013"));
}

TEST_CASE("A mix is kept under its name, a change of it as its next version", "[mixes]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  QString said;
  QObject::connect(&open.bench, &Bench::told, [&](const QString& sentence) { said = sentence; });
  open.trigger("action_keep_mix");
  CHECK(said.contains(QStringLiteral("name")));
  CHECK(open.record->workbook().count(RecordKind::mix) == 0);
  open.find<QLineEdit>("mix_name")->setFocus();
  open.type(QStringLiteral("pines"));
  open.trigger("action_keep_mix");
  open.trigger("action_keep_mix");
  auto kept = open.record->workbook().all<MixVersion>();
  REQUIRE(kept.size() == 1);
  CHECK(kept[0].id.text.ends_with("/1"));
  REQUIRE(kept[0].record.mix.components.size() == 2);
  CHECK(kept[0].record.mix.components[1].parts == open.bench.evaluation().mix->components[1].parts);
  open.bench.edit(QStringLiteral("parts"), {}, [](BenchState& state) { state.components[0].parts = QStringLiteral("3"); });
  open.trigger("action_keep_mix");
  kept = open.record->workbook().all<MixVersion>();
  REQUIRE(kept.size() == 2);
  CHECK(kept[1].id.text == kept[0].id.text.substr(0, kept[0].id.text.size() - 1) + "2");
}

TEST_CASE("Mixes side by side share one pot and have a table twin", "[mixes]") {
  OpenWindow open(Start::mixes);
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.bench.open(complete_bench());
  compare(open);
  const Comparison& comparison = open.window.mix_page().comparison().comparison();
  REQUIRE(comparison.mixes.size() == 7);  // the bench's and six kept ones
  CHECK(comparison.mixes.front().id.isEmpty());
  // The first is the mix on the bench: the same engine, the same figures.
  CHECK(comparison.mixes.front().air == open.bench.evaluation().water->air_filled_porosity);
  for (const ComparedMix& mix : comparison.mixes) {
    INFO(mix.name.toStdString());
    REQUIRE(mix.air_range.has_value() == mix.air.has_value());
    if (!mix.air) continue;
    CHECK(mix.air_range->low < mix.air->value());
    CHECK(mix.air_range->high > mix.air->value());
    CHECK(mix.water_range->low < mix.water->value());
    CHECK(mix.water_range->high > mix.water->value());
  }
  open.trigger("action_chart_table");
  CHECK(open.find<QTableWidget>("comparison_table")->rowCount() == 7);
  CHECK(open.find<QWidget>("comparison_picture")->accessibleDescription().contains(QStringLiteral("on the bench")));
  open.trigger("action_chart_table");
}

TEST_CASE("A kept mix lays its bags and parts on the bench again", "[mixes]") {
  OpenWindow open(Start::mixes);
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  QString pines;
  for (const KeptMix& mix : kept_mixes(open.record->workbook(), test_catalogue(), open.record->calibrations())) {
    if (mix.name.endsWith(QStringLiteral("pines"))) pines = mix.id;
  }
  REQUIRE_FALSE(pines.isEmpty());
  open.window.record_pages()->open_mix(pines);
  const auto& components = open.bench.state().components;
  REQUIRE(components.size() == 3);
  CHECK(components[1].bag == QStringLiteral("P-03"));
  CHECK(components[1].parts == QStringLiteral("4"));
  CHECK(open.bench.state().mix_name == QStringLiteral("pines"));
  CHECK(open.bench.evaluation().mix.has_value());
}

TEST_CASE("A kept mix of catalogue materials alone is laid on the bench again, its figures still typical", "[mixes]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  MixVersion version;
  version.mix.name = "from the catalogue";
  Grading band;
  band.points = {{aperture_mm(2), Passing(0)}, {aperture_mm(6), Passing(1)}};
  for (const char* name : {"pumice", "akadama"}) {
    Component component;
    component.name = std::string(name).append(", to buy");
    component.parts = Parts(2);
    component.grain = typical_grain(*test_catalogue().find(name));
    component.material = name;
    component.sizes = band;
    version.mix.components.push_back(std::move(component));
  }
  version.mix.components.back().sizes = SingleSize{aperture_mm(4)};
  version.sources.resize(2);
  const QString id = open.record->add(version, QStringLiteral("mix"));
  REQUIRE_FALSE(id.isEmpty());
  open.window.record_pages()->open_mix(id);
  const auto& evaluation = open.bench.evaluation();
  // The two tests that were typed and not kept stay beside it, outside the mix.
  REQUIRE(evaluation.components.size() == 4);
  REQUIRE(evaluation.mix.has_value());
  REQUIRE(evaluation.mix->components.size() == 2);
  for (std::size_t i = 0; i < 2; ++i) {
    CHECK(evaluation.mix->components[i].grain == version.mix.components[i].grain);
    CHECK(open.bench.state().components[i].grain == GrainText{});
  }
  CHECK(std::get<Grading>(evaluation.mix->components[0].sizes).points == band.points);
  const auto& narrow = std::get<Grading>(evaluation.mix->components[1].sizes).points;
  CHECK_THAT(in_mm(narrow.front().aperture), Catch::Matchers::WithinRel(4.0, 0.002));
  CHECK_THAT(in_mm(narrow.back().aperture), Catch::Matchers::WithinRel(4.0, 0.002));
  CHECK(evaluation.mix->components[1].parts == Parts(2));
}

TEST_CASE("A bag dragged onto the mix lies on the bench, and the menu does the same", "[mixes]") {
  OpenWindow open(Start::mixes);
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.trigger("action_page_bags");
  auto* table = open.find<QTableView>("bags_table");
  const std::unique_ptr<QMimeData> dragged(table->model()->mimeData({table->model()->index(0, 0)}));
  const QString bag = table->model()->index(0, 0).data().toString();
  CHECK(QString::fromUtf8(dragged->data(QLatin1String(RecordListModel::bag_format))) == bag);
  open.window.show_mixes();
  QDragEnterEvent enter(QPoint(20, 20), Qt::CopyAction, dragged.get(), Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(&open.window.mix_page(), &enter);
  CHECK(enter.isAccepted());
  QDropEvent drop(QPointF(20, 20), Qt::CopyAction, dragged.get(), Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(&open.window.mix_page(), &drop);
  CHECK(open.bench.state().components[0].bag == bag);
  open.trigger("action_page_bags");
  table->selectRow(1);
  QApplication::processEvents();
  open.trigger("action_put_in_mix");
  CHECK(open.bench.state().components[1].bag == table->model()->index(1, 0).data().toString());
  CHECK(open.window.pages().currentWidget() == &open.window.mix_page());
  // Its parts can be typed at once.
  REQUIRE(open.window.focusWidget() != nullptr);
  CHECK(open.window.focusWidget()->objectName() == QStringLiteral("parts_2"));
  CHECK(open.window.focusWidget()->isVisible());
}

TEST_CASE("A bag that was not sieved goes into a mix by its printed size, marked as predicted, and to its test with empty pans", "[mixes]") {
  OpenWindow open(Start::mixes);
  Bag bag;
  bag.material = "pumice";
  bag.printed_size = SizeBand{aperture_mm(2), aperture_mm(6)};
  const QString id = open.record->add(bag, QStringLiteral("bag"));
  open.trigger("action_page_bags");
  open.window.record_pages()->bags().show_bag(id);
  open.trigger("action_put_in_mix");
  const ComponentSheet& sheet = open.bench.state().components[0];
  REQUIRE(sheet.bag == id);
  CHECK(sheet.sheet.predicted);
  const Grading* laid = open.bench.evaluation().components[0].grading();
  REQUIRE(laid != nullptr);
  CHECK_THAT(in_mm(laid->points.front().aperture), WithinAbs(2, 1e-9));
  CHECK_THAT(laid->points.front().passing.value(), WithinAbs(0, 1e-9));
  CHECK_THAT(in_mm(laid->points.back().aperture), WithinAbs(6, 1e-9));
  CHECK_THAT(laid->points.back().passing.value(), WithinAbs(1, 1e-9));
  open.trigger("action_undo");
  open.window.record_pages()->bags().show_bag(id);
  open.trigger("action_page_bags");
  open.trigger("action_grade_bag");
  CHECK(open.bench.state().components[0].bag == id);
  CHECK(open.bench.evaluation().components[0].state == SheetState::empty);
}

TEST_CASE("A screened fraction goes into the mix with the grading that was predicted of it", "[mixes]") {
  OpenWindow open(Start::mixes);
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  Fraction fraction;
  fraction.source = {RecordKind::bag, "P-03"};
  fraction.material = "pumice";
  fraction.from = aperture_mm(2);
  fraction.dry_mass = mass_g(1200);
  fraction.volume = loose_l(2);
  fraction.predicted = true;
  Grading grading;
  for (const auto& [mm, share] : {std::pair{1.0, 0.02}, {2.0, 0.10}, {4.0, 0.80}, {8.0, 1.0}}) grading.points.push_back({aperture_mm(mm), Passing(share)});
  fraction.sizes = grading;
  const QString id = open.record->add(fraction, QStringLiteral("fraction"), QStringLiteral("P-03/1"));
  REQUIRE_FALSE(id.isEmpty());
  open.trigger("action_page_bags");
  auto* list = open.find<QTableView>("fraction_list");
  REQUIRE(list->isVisible());
  CHECK(list->model()->index(0, 0).data().toString() == id);
  // Ctrl+K with its number leads to where the next key puts it into the mix.
  open.trigger("action_page_log");
  open.trigger("action_jump");
  auto* words = open.find<QLineEdit>("jump_words");
  words->setText(id);
  QTest::keyClick(words, Qt::Key_Return);
  CHECK(list->isVisible());
  CHECK(open.window.focusWidget() == list);
  open.trigger("action_put_in_mix");
  const ComponentSheet& sheet = open.bench.state().components[0];
  CHECK(sheet.bag == id);
  CHECK(sheet.grain.bulk_density == QStringLiteral("600"));  // 1200 g in two litres
  const Grading* laid = open.bench.evaluation().components[0].grading();
  REQUIRE(laid != nullptr);
  CHECK_THAT(laid->points[1].passing.value(), WithinAbs(0.10, 1e-9));
  open.bench.edit(QStringLiteral("name"), {}, [](BenchState& state) { state.mix_name = QStringLiteral("coarse"); });
  open.trigger("action_keep_mix");
  bool found = false;
  for (const auto& kept : open.record->workbook().all<MixVersion>()) {
    if (kept.record.mix.name == "coarse") found = kept.record.sources[0] == RecordRef{RecordKind::fraction, "P-03/1"};
  }
  CHECK(found);
}

TEST_CASE("A kept pot is chosen for the mix by its number, until a length of it is changed", "[mixes]") {
  OpenWindow open(Start::mixes);
  open.bench.open(complete_bench());
  auto* pots = open.find<QComboBox>("pot_kept");
  CHECK_FALSE(pots->isEnabled());
  RecordedContainer oval;
  oval.container.name = "blue oval";
  oval.container.shape = Shape::oval;
  oval.container.rim = {length_cm(38), length_cm(29)};
  oval.container.depth = depth_cm(5.5);
  const QString id = open.record->add(oval, QStringLiteral("pot"));
  oval.container.name = "broken";
  oval.given_away = true;
  open.record->add(oval, QStringLiteral("pot"));
  REQUIRE(pots->count() == 2);
  CHECK(pots->currentIndex() == 0);
  pots->setCurrentIndex(1);
  emit pots->activated(1);
  CHECK(open.bench.state().pot.shape == Shape::oval);
  REQUIRE(open.bench.evaluation().pot);
  // An upright oval of 38 x 29 x 5.5 cm: pi/4 38 29 5.5 = 4760.3 mL, by hand.
  CHECK_THAT(in_ml(open.bench.evaluation().pot->volume()), WithinAbs(4760.3, 0.1));
  CHECK(pots->currentText().startsWith(id));
  auto* depth = open.find<QLineEdit>("depth");
  depth->setFocus();
  depth->selectAll();
  open.type(local("6.5"));
  CHECK(pots->currentIndex() == 0);
  open.trigger("action_undo");
  open.trigger("action_undo");
  CHECK(open.bench.state().pot == complete_bench().pot);
}
