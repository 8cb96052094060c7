#include "screenshots.hpp"

#include <QApplication>
#include <QDir>
#include <QTemporaryDir>
#include <QTextStream>

#include "main_window.hpp"
#include "models/demonstration_record.hpp"
#include "pages/log_page.hpp"
#include "pages/mix_page.hpp"
#include "record_pages.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

int write_screenshots(QApplication& application, Bench& bench, const QString& folder) {
  if (!QDir().mkpath(folder)) {
    QTextStream(stderr) << folder << '\n';
    return 4;
  }
  struct Look {
    const char* name;
    Theme theme;
    QSize size;
    int text_percent;
  };
  const Look looks[] = {{"light", Theme::light, {1280, 800}, 100},       {"dark", Theme::dark, {1280, 800}, 100},
                        {"contrast", Theme::high_contrast, {1280, 800}, 100}, {"light_wide", Theme::light, {1920, 1080}, 100},
                        {"light_small", Theme::light, {1024, 700}, 100}, {"light_text150", Theme::light, {1280, 800}, 150},
                        {"dark_text200", Theme::dark, {1280, 800}, 200}};
  bool all_written = true;
  for (const Look& look : looks) {
    apply_theme(application, look.theme, look.text_percent);
    const QTemporaryDir throw_away;
    auto record = RecordBook::open(throw_away.filePath(QStringLiteral("demonstration.gritwright")));
    if (!record || !fill_with_demonstration(**record, bench.catalogue()).empty()) return 4;
    MainWindow window(bench, record->get());
    const auto shoot = [&](const char* page) {
      QApplication::processEvents();
      const QString file = QDir(folder).filePath(QStringLiteral("%1_%2.png").arg(QLatin1String(page), QLatin1String(look.name)));
      all_written = window.grab().save(file) && all_written;
    };
    window.resize(look.size);
    window.show();
    shoot("welcome");
    window.open_demonstration();
    window.mix_page().show_sheet();
    shoot("mix");
    window.mix_page().show_verdict();
    shoot("mix_verdict");
    window.mix_page().show_grain();
    shoot("mix_grain");
    window.mix_page().show_pot();
    window.mix_page().show_section();
    shoot("mix_section");
    window.mix_page().show_as_table(true);
    shoot("mix_pot");
    window.record_pages()->show_bags();
    shoot("bags");
    window.record_pages()->show_log();
    window.record_pages()->log().show_about(QStringLiteral("P-03"));
    shoot("log");
  }
  return all_written ? 0 : 4;
}

}  // namespace gritwright::desktop
