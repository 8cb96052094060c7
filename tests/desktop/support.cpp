#include "support.hpp"

#include <QScrollArea>
#include <QStatusBar>

#include "models/bench_files.hpp"
#include "text.hpp"
#include "theme.hpp"
#include "translation.hpp"
#include "widgets/sieve_table.hpp"

std::ostream& operator<<(std::ostream& out, const QString& text) { return out << '"' << text.toStdString() << '"'; }

namespace gritwright::desktop {

WithLanguage::WithLanguage(const char* code) { use_language(*qApp, QString::fromLatin1(code)); }

WithLanguage::~WithLanguage() {
  QLocale::setDefault(former_);
  install_translations(*qApp, QLocale(QLocale::English));
}

LargeText::LargeText(int percent) { apply_theme(*qApp, Theme::light, percent); }

LargeText::~LargeText() { apply_theme(*qApp, Theme::light, 100); }

namespace {

std::string cut_now(const QWidget& window) {
  std::string found;
  for (const QScrollArea* area : window.findChildren<QScrollArea*>()) {
    if (!area->isVisible() || area->widget() == nullptr || area->widget()->width() <= area->viewport()->width()) continue;
    QString of = area->objectName();
    for (const QWidget* at = area; of.isEmpty() && at != nullptr; at = at->parentWidget()) of = at->objectName();
    found += QStringLiteral("%1 in %2: %3 in %4; ").arg(QLatin1String(area->widget()->metaObject()->className()), of).arg(area->widget()->width()).arg(area->viewport()->width()).toStdString();
  }
  return found;
}

}  // namespace

std::string cut_at_the_side(const QWidget& window) {
  std::string found = cut_now(window);
  // A figure that a worker brings may widen a column, and what stands around it follows in the next rounds of events.
  for (int round = 0; round < 100 && !found.empty(); ++round) {
    QTest::qWait(10);
    found = cut_now(window);
  }
  return found;
}

QString local(const char* figure) { return with_units_kept(QString::fromLatin1(figure).replace(u'.', QLocale().decimalPoint())); }

const Catalogue& test_catalogue() {
  static const Result<Catalogue> read = shipped_catalogue();
  return read.value();
}

namespace {

std::unique_ptr<RecordBook> new_record(const QTemporaryDir& folder) {
  auto opened = RecordBook::open(folder.filePath(QStringLiteral("record.gritwright")));
  return std::move(opened).value();
}

}  // namespace

OpenWindow::OpenWindow(Start start) : record(new_record(folder)), bench(test_catalogue()), window(bench, record.get()) {
  bench.set_units(UnitSystem::metric);
  if (start == Start::mixes) window.show_mixes();
  else window.show_sieving();
  window.resize(1280, 800);
  window.show();
  QApplication::setActiveWindow(&window);
  QApplication::processEvents();
}

void OpenWindow::trigger(const char* object_name) {
  auto* action = window.findChild<QAction*>(QString::fromLatin1(object_name));
  INFO("action " << object_name);
  REQUIRE(action != nullptr);
  action->trigger();
  QApplication::processEvents();
}

void OpenWindow::type(const QString& text) {
  for (const QChar sign : text) {
    QWidget* focused = QApplication::focusWidget();
    REQUIRE(focused != nullptr);
    QTest::keyClicks(focused, QString(sign));
  }
  QApplication::processEvents();
}

void OpenWindow::press(Qt::Key key, Qt::KeyboardModifiers modifiers) {
  QWidget* focused = QApplication::focusWidget();
  REQUIRE(focused != nullptr);
  QTest::keyClick(focused, key, modifiers);
  // Editors of a table commit and close through the event queue.
  QApplication::processEvents();
}

void OpenWindow::go_to_cell(int row, int column) {
  auto* table = find<SieveTable>("sieve_table");
  table->setFocus();
  table->setCurrentIndex(table->model()->index(row, column));
}

QString OpenWindow::cell(int row, int column) { return find<SieveTable>("sieve_table")->model()->index(row, column).data().toString(); }

ComponentSheet finished_component(const QString& name, const QString& material, const std::vector<std::pair<const char*, const char*>>& stack, const char* pan,
                                  const char* dry_mass) {
  ComponentSheet component = empty_component(name);
  component.material = material;
  component.sheet.rows.clear();
  for (const auto& [aperture, mass] : stack) component.sheet.rows.push_back({QString::fromLatin1(aperture), QString::fromLatin1(mass), {}});
  component.sheet.pan.retained = QString::fromLatin1(pan);
  component.sheet.dry_mass = QString::fromLatin1(dry_mass);
  return component;
}

BenchState complete_bench() {
  BenchState state = empty_bench();
  state.components = {
      finished_component(QStringLiteral("A-1"), QStringLiteral("akadama"), {{"8", "0"}, {"5.6", "60"}, {"4", "120"}, {"2", "100"}, {"1", "15"}}, "5", "300"),
      finished_component(QStringLiteral("P-1"), QStringLiteral("pumice"), {{"8", "0"}, {"5.6", "5"}, {"4", "30"}, {"2", "160"}, {"1", "95"}}, "10", "300")};
  state.pot.rim_length = QStringLiteral("40");
  state.pot.rim_width = QStringLiteral("30");
  state.pot.base_length = QStringLiteral("34");
  state.pot.base_width = QStringLiteral("22");
  state.pot.depth = QStringLiteral("6");
  state.pot.freeboard = QStringLiteral("0");
  return state;
}

}  // namespace gritwright::desktop
