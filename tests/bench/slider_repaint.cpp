// From a moved slider to a repainted window: five graded components, a pot, the whole page live; beside it the same six curves
// in a chart of the library alone, without engine, tables or figures.
#include <QApplication>
#include <QLineEdit>
#include <QSettings>
#include <QSlider>
#include <QTemporaryDir>
#include <QtCharts/QChartView>
#include <QtCharts/QLineSeries>
#include <vector>

#include "bench_table.hpp"
#include "main_window.hpp"
#include "models/bench_files.hpp"
#include "models/sheets_from_records.hpp"
#include "step_times.hpp"
#include "support/paths.hpp"
#include "theme.hpp"

namespace {

using namespace gritwright::desktop;

constexpr int steps = 400;

template <class Step>
gritwright::bench::StepTimes repainted(Step step) {
  return gritwright::bench::step_times(steps, [&](int i) {
    step(i);
    QApplication::processEvents();
  });
}

BenchState five_components(const gritwright::Catalogue& catalogue) {
  BenchState state = demonstration(catalogue).value();
  state.components.clear();
  for (const char* file : {"a_11_1", "p_03_1", "s_06_1", "z_01_1", "c_02_1"}) {
    const auto test = open_sieve_test(QStringLiteral(GRITWRIGHT_SOURCE_DIR "/demo-data/sieve_tests/%1.csv").arg(QLatin1String(file)));
    state.components.push_back(component_of(test.value(), QLatin1String(file)));
  }
  return state;
}

gritwright::bench::StepTimes library_alone() {
  QChartView view(new QChart);
  view.setRenderHint(QPainter::Antialiasing);
  std::vector<QLineSeries*> curves;
  for (int i = 0; i < 6; ++i) {
    curves.push_back(new QLineSeries(&view));
    view.chart()->addSeries(curves.back());
  }
  view.chart()->createDefaultAxes();
  view.resize(800, 400);
  view.show();
  QApplication::processEvents();
  return repainted([&](int step) {
    for (std::size_t curve = 0; curve < curves.size(); ++curve) {
      QList<QPointF> points;
      for (int i = 0; i < 10; ++i) points.append(QPointF(i, (i * 10 + step + static_cast<int>(curve)) % 100));
      curves[curve]->replace(points);
    }
  });
}

}  // namespace

int main(int argument_count, char** arguments) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argument_count, arguments);
  QTemporaryDir folder;
  QSettings::setDefaultFormat(QSettings::IniFormat);
  QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder.path());
  apply_theme(application, Theme::light, 100);
  Bench bench(shipped_catalogue().value());
  MainWindow window(bench);
  bench.open(five_components(bench.catalogue()));
  window.show_mixes();
  window.resize(1280, 800);
  window.show();
  QApplication::processEvents();
  auto* slider = window.findChild<QSlider*>(QStringLiteral("parts_slider_1"));
  auto* depth = window.findChild<QLineEdit*>(QStringLiteral("depth"));
  const auto moved = repainted([&](int step) { slider->setValue(5 + step % 60); });
  const auto typed = repainted([&](int step) {
    depth->setText(QString::number(4 + step % 7));
    emit depth->textEdited(depth->text());
  });
  const gritwright::bench::Row chart{"", "", 0, {}, "six curves in a bare Qt chart", library_alone().median};
  gritwright::bench::print_steps("slider moved to window repainted, median", moved, steps, chart);
  gritwright::bench::print_steps("depth typed to window repainted, median", typed, steps, chart);
  return 0;
}
