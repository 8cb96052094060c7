#include "screenshots.hpp"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QDir>
#include <QFile>
#include <QHash>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QMenu>
#include <QMenuBar>
#include <QSet>
#include <QSignalBlocker>
#include <QStatusBar>
#include <QTabWidget>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTextStream>
#include <algorithm>
#include <filesystem>
#include <system_error>

#include "charts/ageing_view.hpp"
#include "charts/comparison_view.hpp"
#include "charts/picture_tabs.hpp"
#include "gritwright/workbook/backups.hpp"
#include "main_window.hpp"
#include "models/demonstration_record.hpp"
#include "models/parts_finder.hpp"
#include "models/protocols.hpp"
#include "models/range_keeper.hpp"
#include "navigation.hpp"
#include "pages/bags_page.hpp"
#include "pages/day_page.hpp"
#include "pages/import_page.hpp"
#include "pages/groups_page.hpp"
#include "pages/log_page.hpp"
#include "pages/mix_page.hpp"
#include "pages/root_plan_tab.hpp"
#include "pages/sick_trees_tab.hpp"
#include "pages/sieving_page.hpp"
#include "pages/trees_page.hpp"
#include "pages/trouble_page.hpp"
#include "record_pages.hpp"
#include "text.hpp"
#include "theme.hpp"
#include "widgets/backups_card.hpp"
#include "widgets/find_panel.hpp"
#include "widgets/record_list_side.hpp"

namespace gritwright::desktop {

namespace {

struct Look {
  const char* name;
  Theme theme;
  QSize size;
  int text_percent;
};

constexpr Look manual_looks[] = {{"light", Theme::light, {1280, 800}, 100}, {"dark", Theme::dark, {1280, 800}, 100}};
constexpr Look further_looks[] = {{"contrast", Theme::high_contrast, {1280, 800}, 100},
                                  {"light_wide", Theme::light, {1920, 1080}, 100},
                                  {"light_small", Theme::light, {1024, 700}, 100},
                                  {"dark_text150", Theme::dark, {1280, 800}, 150},
                                  {"light_small_text150", Theme::light, {1024, 700}, 150},
                                  {"dark_small_text200", Theme::dark, {1024, 700}, 200},
                                  {"dark_text200", Theme::dark, {1280, 800}, 200}};

/// Few colours are enough for flat surfaces and make a third of the file. First the most frequent colour of every shade, so that a
/// rare one like a fault's stays what it is, then whatever else is frequent; the rest goes to the nearest.
QList<QRgb> chosen_colours(const QImage& image) {
  QHash<QRgb, int> counts;
  for (int y = 0; y < image.height(); ++y) {
    const auto* line = reinterpret_cast<const QRgb*>(image.constScanLine(y));
    for (int x = 0; x < image.width(); ++x) ++counts[line[x]];
  }
  QList<QRgb> colours = counts.keys();
  std::ranges::sort(colours, [&](QRgb a, QRgb b) { return counts[a] != counts[b] ? counts[a] > counts[b] : a < b; });
  constexpr QRgb shade = 0xffe0e0e0;  // three bits of each channel
  QSet<QRgb> seen;
  std::ranges::stable_partition(colours, [&](QRgb colour) {
    const bool first = !seen.contains(colour & shade);
    seen.insert(colour & shade);
    return first;
  });
  constexpr qsizetype most_colours = 256;
  colours.resize(std::min(most_colours, colours.size()));
  return colours;
}

bool save_small(const QPixmap& picture, const QString& file) {
  const QImage image = picture.toImage().convertToFormat(QImage::Format_RGB32);
  return image.convertToFormat(QImage::Format_Indexed8, chosen_colours(image), Qt::AvoidDither | Qt::ThresholdDither).save(file, "PNG", 0);
}

/// Paths are shown as a reader has them, so that a picture taken again is the same.
void show_usual_places(const MainWindow& window, const QString& here) {
  const QString usual = QStringLiteral("~/.local/share/gritwright");
  for (auto* label : window.findChildren<QLabel*>())
    if (label->text().contains(here)) label->setText(label->text().replace(here, usual));
  for (auto* line : window.findChildren<QLineEdit*>())
    if (line->text().contains(here)) {
      const QSignalBlocker quiet(line);
      line->setText(line->text().replace(here, usual));
    }
}

/// Takes the pictures of one window in one look.
class Photographer {
 public:
  Photographer(MainWindow& window, const QString& record_folder, const QDir& folder, const char* look) : window_(window), record_folder_(record_folder), folder_(folder), look_(look) {}

  /// Of the whole window, or of a box over it.
  bool shoot(const char* page, QWidget* box = nullptr) const {
    QApplication::processEvents();
    window_.mix_page().comparison().job().wait();
    window_.ranges().finish();
    window_.statusBar()->clearMessage();  // of the page before
    if (auto* day = window_.findChild<DayPage*>(); day != nullptr && day->isVisible()) day->finish_ranges();
    // Columns within columns are laid out one after the other, each in a round of the event loop.
    constexpr int rounds = 6;
    for (int round = 0; round < rounds; ++round) QApplication::processEvents();
    show_usual_places(window_, record_folder_);
    return save_small((box != nullptr ? box : &window_)->grab(), folder_.filePath(QStringLiteral("%1_%2.png").arg(QLatin1String(page), QLatin1String(look_))));
  }

 private:
  MainWindow& window_;
  QString record_folder_;
  QDir folder_;
  const char* look_;
};

/// What lies over the window or is begun in it, which the manual shows no picture of.
bool shoot_boxes(MainWindow& window, const Photographer& photographer) {
  bool written = true;
  const auto shoot = [&](const char* page, QWidget* box = nullptr) { written = photographer.shoot(page, box) && written; };
  const auto trigger = [&](const char* action) { window.findChild<QAction*>(QLatin1String(action))->trigger(); };
  const auto shoot_popup = [&](const char* page, const char* button) {
    window.findChild<QAbstractButton*>(QLatin1String(button))->click();
    auto* popup = window.findChild<QWidget*>(QStringLiteral("explanation_popup"));
    written = written && popup != nullptr;
    if (popup != nullptr) shoot(page, popup);
    delete popup;
  };
  window.open_demonstration();
  window.record_pages()->grade(QStringLiteral("P-03"));
  trigger("action_show_screening");
  auto* fractions = window.findChild<QTableWidget*>(QStringLiteral("screening_table"));
  constexpr int weighed = 4;
  for (int row = 0; row < fractions->rowCount(); ++row) fractions->item(row, weighed)->setText(QStringLiteral("%1").arg(2810 + 950 * row));
  shoot("sieving_screened");
  window.show_mixes();
  trigger("action_show_pot");
  shoot("mixes_pot");
  trigger("action_show_scores");
  shoot("mixes_scores");
  trigger("action_page_day");
  for (const char* button : {"how_air_filled_porosity", "how_measure_out_1", "day_how"}) shoot_popup(button, button);
  window.show_sieving();
  trigger("action_keep_fractions");
  window.record_pages()->put_in_mix(QStringLiteral("P-03/1"));
  window.show_sieving();
  window.sieving_page().show_sheet();
  shoot("sieving_predicted");
  window.jump();
  auto* jump_box = window.findChild<QDialog*>(QStringLiteral("jump_box"));
  shoot("jump", jump_box);
  window.findChild<QLineEdit*>(QStringLiteral("jump_words"))->setText(QStringLiteral("pumice"));
  shoot("jump_words", jump_box);
  jump_box->hide();
  for (const char* action : {"action_receive_bags", "action_take_back", "action_add_bin", "action_add_tree", "action_add_pot", "action_write_down", "action_new_day"}) {
    trigger(action);
    shoot(action);
  }
  for (const Protocol protocol : protocols) {
    window.record_pages()->measure(protocol, {});
    shoot(qPrintable(QStringLiteral("protocol_") + QLatin1String(key_of(protocol))));
  }
  window.show_manual();
  shoot("manual");
  window.show_manual_page(QStringLiteral("manual/desktop"));
  shoot("manual_contents");
  int number = 0;
  for (auto* title : window.menuBar()->actions()) {
    QMenu* menu = title->menu();
    menu->resize(menu->sizeHint());
    shoot(qPrintable(QStringLiteral("menu_%1").arg(++number)), menu);
  }
  trigger("action_about");
  shoot("about", window.findChild<QDialog*>(QStringLiteral("about_box")));
  return written;
}

bool shoot_pages(MainWindow& window, const QString& record_folder, const Photographer& photographer) {
  bool written = true;
  const auto shoot = [&](const char* page) { written = photographer.shoot(page) && written; };
  shoot("welcome");
  window.open_demonstration();
  window.record_pages()->show_bags();
  window.record_pages()->bags().show_bag(QStringLiteral("P-03"));
  shoot("bags");
  window.record_pages()->bags().show_bins();
  shoot("bags_bins");
  window.record_pages()->bags().show_bags();
  window.record_pages()->measure(Protocol::jug, QStringLiteral("P-03"));
  shoot("measure_jug");
  window.record_pages()->measure(Protocol::pot_by_balance, {});
  shoot("measure_pot");
  window.show_sieving();
  window.sieving_page().show_verdict();
  window.sieving_page().show_sheet();
  shoot("sieving");
  window.sieving_page().show_lots();
  window.sieving_page().show_screening();
  shoot("sieving_screening");
  window.sieving_page().show_curve();
  window.sieving_page().show_grain();
  window.sieving_page().pictures().set_as_table(true);
  shoot("sieving_table");
  window.sieving_page().pictures().set_as_table(false);
  window.show_mixes();
  window.mix_page().show_curves();
  shoot("mixes");
  window.mix_page().show_section();
  shoot("mixes_section");
  window.mix_page().show_litres();
  shoot("mixes_litres");
  window.mix_page().show_ageing();
  window.mix_page().ageing().finish();
  shoot("mixes_years");
  window.mix_page().show_comparison();
  shoot("mixes_compare");
  window.mix_page().show_find();
  window.mix_page().find_panel().start_from_profile(QStringLiteral("conifers"));
  window.mix_page().finder().search();
  window.mix_page().finder().job().wait();
  window.mix_page().show_trade_off();
  shoot("mixes_find");
  window.mix_page().find_panel().show_more(true);
  shoot("mixes_find_more");
  window.mix_page().find_panel().show_more(false);
  window.record_pages()->show_groups();
  window.record_pages()->groups().show_group(QStringLiteral("conifers"));
  shoot("groups");
  window.show_mixes();
  window.mix_page().show_pot();
  window.record_pages()->show_trees();
  shoot("trees");
  window.record_pages()->trees().show_pots();
  shoot("pots");
  window.record_pages()->trees().show_plans();
  RootPlanTab& plans = window.record_pages()->trees().plans();
  plans.plan_tree(QStringLiteral("TR-08"));
  plans.desk().job().wait();
  shoot("plan");
  plans.list().show_record(QStringLiteral("RP-01"));
  plans.desk().job().wait();
  shoot("plan_fits");
  auto* plan_pictures = window.findChild<QTabWidget*>(QStringLiteral("plan_pictures"));
  plan_pictures->setCurrentIndex(1);
  shoot("plan_section");
  plan_pictures->setCurrentIndex(0);
  window.record_pages()->trees().show_trees();
  window.navigation().show(window.navigation().room("day"));
  shoot("day");
  auto* day_tabs = window.findChild<QTabWidget*>(QStringLiteral("day_tabs"));
  day_tabs->setCurrentIndex(3);
  shoot("day_shelf");
  day_tabs->setCurrentIndex(day_tabs->count() - 2);
  shoot("day_left_over");
  day_tabs->setCurrentIndex(day_tabs->count() - 1);
  shoot("day_season");
  day_tabs->setCurrentIndex(0);
  window.record_pages()->show_log();
  window.record_pages()->log().show_about(QStringLiteral("P-03"));
  shoot("log");
  window.record_pages()->log().show_trace(QStringLiteral("P-03"));
  shoot("log_trace");
  window.record_pages()->log().show_sick_trees();
  window.record_pages()->log().sick_trees().job().wait();
  shoot("log_sick");
  window.record_pages()->log().show_happened();
  RecordBook& record = window.record_pages()->book();
  const std::filesystem::path backups = record.workbook().backup_folder();
  std::error_code trouble;
  std::filesystem::create_directories(backups, trouble);
  for (const char* name : {"record-2026-03-13.gritwright", "record-2026-03-14.gritwright"}) written = save_copy(record.workbook(), backups / name).ok() && written;
  window.show_settings();
  const auto look_through = [](BackupsCard& card) {
    while (card.job().is_running()) card.job().wait();
  };
  look_through(*window.findChild<BackupsCard*>());
  shoot("settings");
  window.show_backups();
  look_through(*window.findChild<BackupsCard*>());
  shoot("backups");
  QFile list(QDir(record_folder).filePath(QStringLiteral("bags of 2025.csv")));
  written = list.open(QIODevice::WriteOnly) && list.write("id,material,lot,count,volume_l\nK-31,akadama,lot 31,4,14\nK-32,akadama,lot 32,two,14\n,pumice,lot 4,2,14\n") > 0 && written;
  list.close();
  window.import_file(list.fileName());
  window.findChild<ImportPage*>()->import().job().wait();
  shoot("import");
  window.show_trouble({record.workbook().file(), backups, {Problem{"file.damaged", {}, {}}}});
  look_through(window.findChild<TroublePage*>()->backups());
  shoot("trouble");
  return written;
}

}  // namespace

int write_screenshots(QApplication& application, Bench& bench, const QString& folder, bool every_look) {
  if (!QDir().mkpath(folder)) {
    QTextStream(stderr) << folder << '\n';
    return 4;
  }
  // Of the language, not of the machine; English without a country writes the month in letters.
  const QLocale::Language language = QLocale().language();
  QLocale::setDefault(language == QLocale::English ? QLocale::c() : QLocale(language));
  std::vector<Look> looks(std::begin(manual_looks), std::end(manual_looks));
  if (every_look) looks.insert(looks.end(), std::begin(further_looks), std::end(further_looks));
  bool written = true;
  for (const Look& look : looks) {
    apply_theme(application, look.theme, look.text_percent);
    for (const bool boxes : {false, true}) {
      if (boxes && !every_look) continue;
      const QTemporaryDir throw_away;
      auto record = RecordBook::open(throw_away.filePath(QStringLiteral("record.gritwright")));
      if (!record || !fill_with_demonstration(**record, bench.catalogue()).empty()) return 4;
      MainWindow window(bench, record->get());
      window.resize(look.size);
      window.show();
      const Photographer photographer(window, throw_away.path(), QDir(folder), look.name);
      written = (boxes ? shoot_boxes(window, photographer) : shoot_pages(window, throw_away.path(), photographer)) && written;
    }
  }
  return written ? 0 : 4;
}

}  // namespace gritwright::desktop
