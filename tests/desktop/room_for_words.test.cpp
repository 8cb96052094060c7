// What gives way where large text has little room, and what must not.
#include <QAbstractItemView>
#include <QComboBox>
#include <QFontMetrics>
#include <QHeaderView>
#include <QHelpEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QStandardItemModel>
#include <QTableView>
#include <QTableWidget>
#include <QToolButton>
#include <QToolTip>
#include <QVBoxLayout>
#include <algorithm>
#include <set>

#include "models/demonstration_record.hpp"
#include "pages/mix_page.hpp"
#include "support.hpp"
#include "theme_style.hpp"
#include "widgets/caution_bar.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/figure_panel.hpp"
#include "widgets/find_panel.hpp"
#include "widgets/list_fit.hpp"
#include "widgets/record_table.hpp"
#include "widgets/sieve_table.hpp"
#include "widgets/status_line.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

void settle() {
  for (int round = 0; round < 4; ++round) QApplication::processEvents();
}

int lines_of(const QWidget& widget, const QString& words, int width) {
  return widget.fontMetrics().boundingRect(QRect(0, 0, width, 10000), Qt::TextWordWrap, words).height() / widget.fontMetrics().lineSpacing();
}

/// The column a widget scrolls in.
const ColumnScroll* column_of(const QWidget& widget) {
  for (const QWidget* above = widget.parentWidget(); above != nullptr; above = above->parentWidget())
    if (const auto* column = qobject_cast<const ColumnScroll*>(above)) return column;
  return nullptr;
}

}  // namespace

TEST_CASE("A long sentence at the foot of the window is read whole, and standing words give way to it as long as it is said", "[large_text]") {
  StatusLine line;
  line.resize(400, 30);
  line.keep_words(QStringLiteral("Everything here is invented and goes"), "standing_words");
  line.show();
  settle();
  const auto* standing = line.findChild<QLabel*>(QStringLiteral("standing_words"));
  REQUIRE(standing != nullptr);
  CHECK(standing->isVisible());
  const int usual = line.minimumHeight();
  line.showMessage(QStringLiteral("kept"));
  CHECK(standing->isVisible());
  CHECK(line.minimumHeight() == usual);
  const QString sentence = QStringLiteral("Much of what is left of the bag is in no fraction: type how much dry grain was screened.");
  line.showMessage(sentence);
  CHECK_FALSE(standing->isVisible());
  const int lines = lines_of(line, sentence, 400);
  REQUIRE(lines >= 2);
  CHECK(line.minimumHeight() >= lines * line.fontMetrics().lineSpacing());
  line.clearMessage();
  CHECK(standing->isVisible());
  CHECK(line.minimumHeight() == usual);
}

TEST_CASE("A caution with little room shows its own sentence, and the general advice when asked for it", "[large_text]") {
  const QString own = QStringLiteral("sieve dry grain outdoors, wind behind you, with a mask; clean with a damp cloth, not a broom.");
  const QString advice = QStringLiteral("General information; safety sheets, local codes and qualified advice prevail in every case and at every place.");
  QWidget around;
  auto* layout = new QVBoxLayout(&around);
  auto* caution = new CautionBar(QStringLiteral("test_topic"), QStringLiteral("Dust:"), own + u' ' + advice, &around);
  layout->addWidget(caution);
  caution->restore();
  around.resize(1000, 200);
  around.show();
  settle();
  const auto* words = caution->findChild<QLabel*>(QStringLiteral("caution_text"));
  auto* more = caution->findChild<QToolButton*>(QStringLiteral("whole_caution_test_topic"));
  auto* put_away = caution->findChild<QToolButton*>(QStringLiteral("put_away_test_topic"));
  REQUIRE((words != nullptr && more != nullptr && put_away != nullptr));
  CHECK(words->text().contains(advice));
  CHECK_FALSE(more->isVisible());
  around.resize(260, 400);
  settle();
  CHECK(words->text().contains(own.left(own.size() - 1)));
  CHECK_FALSE(words->text().contains(advice));
  CHECK(words->accessibleDescription().contains(advice));
  REQUIRE(more->isVisible());
  CHECK(put_away->isVisible());
  more->click();
  settle();
  CHECK(words->text().contains(advice));
  CHECK(put_away->isVisible());
  more->click();  // pressed once more it folds, and puts nothing away
  settle();
  CHECK_FALSE(words->text().contains(advice));
  CHECK(caution->isVisible());
  around.resize(1000, 200);
  settle();
  CHECK(words->text().contains(advice));
}

TEST_CASE("The column of a tab scrolls no farther than what stands in it", "[large_text][find_parts]") {
  OpenWindow open(Start::mixes);
  open.window.resize(1280, 800);
  open.bench.edit(QStringLiteral("test"), {}, [](BenchState& state) { state = complete_bench(); });
  settle();
  const auto* group = open.find<QComboBox>("find_group");
  const ColumnScroll* column = column_of(*group);
  REQUIRE(column != nullptr);
  CHECK(column->verticalScrollBar()->maximum() > 0);  // parts, caution and pot
  open.trigger("action_find_parts");
  settle();
  CHECK(column->verticalScrollBar()->maximum() == 0);
}

TEST_CASE("The stack of sieves comes into sight whole as soon as the keys go to it", "[large_text][sieve_table]") {
  OpenWindow open;
  open.window.resize(1280, 800);
  const LargeText large(200);
  open.bench.edit(QStringLiteral("test"), {}, [](BenchState& state) { state = complete_bench(); });
  open.window.show_sieving();
  settle();
  open.trigger("action_show_sheet");
  settle();
  const auto* table = open.find<SieveTable>("sieve_table");
  const ColumnScroll* column = column_of(*table);
  REQUIRE(column != nullptr);
  const QRect seen(table->mapTo(column->viewport(), QPoint(0, 0)), table->size());
  // Whole, or from its first row on where there is no room for all.
  CHECK(seen.top() >= 0);
  CHECK((seen.bottom() < column->viewport()->height() || seen.top() == 0));
  CHECK(std::min(seen.bottom(), column->viewport()->height()) - seen.top() > 3 * table->rowHeight(0));
}

TEST_CASE("The box to go to something is no larger than its window in large text", "[large_text]") {
  OpenWindow open;
  open.window.resize(1024, 700);
  const LargeText large(200);
  open.trigger("action_jump");
  settle();
  const auto* box = open.find<QWidget>("jump_box");
  REQUIRE(box->isVisible());
  CHECK(box->height() <= 700);
  CHECK(box->width() <= 1024);
}

TEST_CASE("A fraction's name is broken between a size and the next, never cut", "[large_text][sieving_page]") {
  const WithLanguage german("de");
  OpenWindow open;
  open.window.resize(1024, 700);
  const LargeText large(150);
  open.bench.edit(QStringLiteral("test"), {}, [](BenchState& state) {
    state = complete_bench();
    state.band_from = QStringLiteral("2");
    state.band_to = QStringLiteral("4");
  });
  open.window.show_sieving();
  open.trigger("action_show_screening");
  settle();
  const auto* table = open.find<QTableWidget>("screening_table");
  REQUIRE(table->isVisible());
  REQUIRE(table->rowCount() > 0);
  for (int row = 0; row < table->rowCount(); ++row) {
    const QStringList words = table->item(row, 0)->text().split(u' ');
    for (const QString& word : words) CHECK(table->fontMetrics().horizontalAdvance(word) < table->columnWidth(0));
    CHECK(table->rowHeight(row) >= lines_of(*table, table->item(row, 0)->text(), table->columnWidth(0) - 8) * table->fontMetrics().lineSpacing());
  }
  CHECK(table->horizontalHeader()->fontMetrics().horizontalAdvance(table->horizontalHeaderItem(0)->text()) < table->columnWidth(0));
}

TEST_CASE("A name in a list that is longer than its column is broken, and its row has the lines for it", "[large_text]") {
  QStandardItemModel model(1, 2);
  model.setItem(0, 0, new QStandardItem(QStringLiteral("T-01")));
  model.setItem(0, 1, new QStandardItem(QStringLiteral("Rhododendronwald")));
  QTableView table;
  table.setModel(&model);
  show_as_record_list(table);
  new ListFit(table, {{0, QStringLiteral("WW-000")}});
  const int word = table.fontMetrics().horizontalAdvance(QStringLiteral("Rhododendronwald"));
  table.setMinimumWidth(0);  // as where it has no other way
  table.resize(table.fontMetrics().horizontalAdvance(QStringLiteral("T-01")) + word, 200);
  table.show();
  settle();
  REQUIRE(table.columnWidth(1) < word);
  CHECK(table.rowHeight(0) >= 2 * table.fontMetrics().lineSpacing());
}

TEST_CASE("The names of grain and pots to choose from are whole, whatever the size of the text", "[large_text][find_parts]") {
  const int percent = GENERATE(100, 150, 200);
  OpenWindow open(Start::mixes);
  open.window.resize(1024, 700);
  REQUIRE(fill_with_demonstration(*open.record, open.bench.catalogue()).empty());
  open.window.open_demonstration();
  const LargeText large(percent);
  open.bench.edit(QStringLiteral("band"), {}, [](BenchState& state) {
    state.band_from = QStringLiteral("3");
    state.band_to = QStringLiteral("6");
  });
  open.trigger("action_find_parts");
  open.window.mix_page().find_panel().show_more(true);
  settle();
  for (const char* name : {"candidates_table", "further_pots_table"}) {
    const auto* table = open.find<QTableWidget>(name);
    REQUIRE(table->rowCount() > 5);
    constexpr int tick_and_margins = 24;
    for (int row = 0; row < table->rowCount(); ++row) {
      INFO(percent << " %, " << name << ": " << table->item(row, 0)->text().toStdString());
      CHECK(table->rowHeight(row) >= lines_of(*table, table->item(row, 0)->text(), table->columnWidth(0) - tick_and_margins) * table->fontMetrics().lineSpacing());
    }
  }
}

TEST_CASE("A hint that has no room in its field is not shown cut off, but as the field's tip", "[large_text]") {
  QLineEdit field;
  field.setPlaceholderText(QStringLiteral("a hint that is far longer than the field"));
  const auto is_shown = [&] { return field.palette().color(QPalette::PlaceholderText).alpha() > 0; };
  field.resize(80, 28);
  field.show();
  settle();
  CHECK_FALSE(is_shown());
  CHECK(field.toolTip() == field.placeholderText());
  field.setPlaceholderText(QStringLiteral("another hint that is far longer than the field"));
  field.update();
  settle();
  CHECK(field.toolTip() == field.placeholderText());
  field.resize(800, 28);
  settle();
  CHECK(is_shown());
  CHECK(field.toolTip().isEmpty());
}

TEST_CASE("A text too wide by less than a fifth stands whole in narrower letters", "[large_text]") {
  const QFont font = QApplication::font();
  const QString text = QStringLiteral("decomposed granite");
  const int whole = QFontMetrics(font).horizontalAdvance(text);
  const auto width_in = [&](int room) { return QFontMetrics(narrowed_for(text, room, font)).horizontalAdvance(text); };
  CHECK(width_in(whole) == whole);
  for (const double share : {0.99, 0.9, 0.83}) {
    const int room = static_cast<int>(share * whole);
    CHECK(width_in(room) <= room);
    CHECK(width_in(room) > room * 0.9);
  }
  CHECK(width_in(whole / 2) >= 0.78 * whole);
}

TEST_CASE("A card of figures asks for one width, wherever its figures stand", "[large_text][law]") {
  const LargeText large(200);
  FigureGroup group;
  group.title = QStringLiteral("in the pot");
  group.has_ranges = true;
  for (const char* label : {"capacidad de aire", "Wasserhaltevermögen", "wet weight"}) group.figures.push_back({QString::fromUtf8(label), QString::fromUtf8(label), QStringLiteral("13.9 %"), {}, {}, QStringLiteral("7 \u2013 20 %")});
  FigurePanel panel;
  panel.show();
  panel.show_group(group);
  settle();
  const auto stands_beside = [&] { return panel.findChild<QLabel*>(QStringLiteral("figure_wet weight"))->geometry().top() < panel.findChild<QToolButton*>(QStringLiteral("how_wet weight"))->geometry().bottom(); };
  const int least = panel.minimumSizeHint().width();
  std::set<bool> places;
  for (int width = least; width < least + 600; width += 30) {
    panel.resize(width, 600);
    settle();
    INFO(width);
    CHECK(panel.minimumSizeHint().width() == least);
    places.insert(stands_beside());
  }
  CHECK(places.size() == 2);
}

TEST_CASE("A choice that has no room in its box is its tip, and the list it opens is as wide as the longest", "[large_text]") {
  QWidget window;
  window.resize(600, 200);
  QComboBox box(&window);
  box.setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box.addItems({QStringLiteral("short"), QStringLiteral("TR-08 street maple Acer palmatum, the one by the wall")});
  box.setGeometry(0, 0, 140, 28);
  window.show();
  settle();
  const auto tip = [&] {
    QToolTip::hideText();
    QHelpEvent ask(QEvent::ToolTip, {5, 5}, box.mapToGlobal(QPoint(5, 5)));
    QApplication::sendEvent(&box, &ask);
    return QToolTip::text();
  };
  CHECK(tip().isEmpty());
  box.setCurrentIndex(1);
  CHECK(tip() == box.itemText(1));
  box.showPopup();
  settle();
  CHECK(box.view()->viewport()->width() >= box.view()->sizeHintForColumn(0));
  box.hidePopup();
}
