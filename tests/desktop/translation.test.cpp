// Every text of the window in a language that does not exist: what stays English was forgotten, what is longer must still fit.
#include <QAbstractButton>
#include <QComboBox>
#include <QFile>
#include <QKeySequence>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QLocale>
#include <QMenuBar>
#include <QRegularExpression>
#include <QStackedWidget>
#include <QTabBar>
#include <QToolBar>
#include <QTranslator>
#include <QXmlStreamReader>
#include <algorithm>
#include <set>

#include "gritwright/domain/grain_words.hpp"
#include "models/demonstration_record.hpp"
#include "models/figures.hpp"
#include "models/grain_trace.hpp"
#include "models/material_words.hpp"
#include "models/record_book.hpp"
#include "models/record_import.hpp"
#include "models/tree_groups.hpp"
#include "record_pages.hpp"
#include "pages/mix_page.hpp"
#include "settings.hpp"
#include "support.hpp"
#include "text.hpp"
#include "translation.hpp"
#include "widgets/find_panel.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

namespace {

/// Marks every text and makes it a third longer, as other languages are.
class LongLanguage : public QTranslator {
 public:
  QString translate(const char* context, const char* source, const char*, int) const override {
    const QString text = QString::fromUtf8(source);
    // Keys of shortcuts are no prose; what Qt says of its own is not ours to find.
    if (text.startsWith(QStringLiteral("Ctrl+")) || text.startsWith(QStringLiteral("F1")) || text.startsWith(QStringLiteral("Shift+")) || QByteArray(context).startsWith('Q')) return {};
    QStringList words = text.split(u' ');
    for (QString& word : words) word += QString(word.size() / 3, u'\u00e6');
    return QStringLiteral("\u00ab") + words.join(u' ') + QStringLiteral("\u00bb");
  }
  bool isEmpty() const override { return false; }
};

class WithLongLanguage {
 public:
  WithLongLanguage() { QApplication::installTranslator(&language_); }
  ~WithLongLanguage() { QApplication::removeTranslator(&language_); }

 private:
  LongLanguage language_;
};

bool is_translated(const QString& text) {
  const bool prose = std::ranges::any_of(text, [](QChar sign) { return sign.isLetter(); });
  return !prose || text.contains(u'\u00ab');
}

/// Texts that are data or a sign of their own in every language.
bool is_data(const QString& name) {
  static const QStringList data{QStringLiteral("bag_title"), QStringLiteral("bin_title"), QStringLiteral("commands"), QStringLiteral("material_description"), QStringLiteral("page_bar")};
  return name.startsWith(QStringLiteral("figure_")) || name.startsWith(QStringLiteral("range_")) || name.startsWith(QStringLiteral("choose_component_")) || data.contains(name);
}

void visit(OpenWindow& open, const std::function<void(const char*)>& look) {
  for (const char* action : {"action_welcome", "action_page_bags", "action_receive_bags", "action_show_sheet", "action_show_verdict", "action_show_screening", "action_show_grain",
                             "action_show_pot", "action_show_section", "action_show_litres", "action_find_parts", "action_page_trees", "action_add_tree", "action_add_pot", "action_plan_tree", "action_page_day", "action_take_back", "action_add_bin", "action_page_log", "action_trace_grain", "action_sick_trees", "action_settings"}) {
    open.trigger(action);
    if (open.window.mix_page().isVisible()) open.window.mix_page().find_panel().show_more(true);
    QApplication::processEvents();
    look(action);
  }
}

void check_that_nothing_is_cut() {
  OpenWindow open;
  open.bench.open(complete_bench());
  open.window.resize(1024, 700);
  visit(open, [&](const char* view) {
    INFO("window needs " << open.window.minimumSizeHint().width() << " by " << open.window.minimumSizeHint().height());
    for (int page = 0; page < open.window.pages().count(); ++page) {
      INFO("page " << page << " " << open.window.pages().widget(page)->metaObject()->className() << " needs " << open.window.pages().widget(page)->minimumSizeHint().width());
      CHECK(open.window.pages().widget(page)->minimumSizeHint().width() <= 1024);
    }
    for (const QLabel* label : open.window.findChildren<QLabel*>()) {
      if (!label->isVisible() || label->text().isEmpty() || label->wordWrap()) continue;
      INFO(view << ": label \"" << label->text().toStdString() << "\" has " << label->width() << " of " << label->sizeHint().width());
      CHECK(label->width() >= label->sizeHint().width() - 1);
    }
    for (const QAbstractButton* button : open.window.findChildren<QAbstractButton*>()) {
      if (!button->isVisible() || button->text().isEmpty() || is_data(button->objectName())) continue;
      INFO(view << ": button \"" << button->text().toStdString() << "\" has " << button->width() << " of " << button->minimumSizeHint().width());
      CHECK(button->width() >= button->minimumSizeHint().width() - 1);
    }
  });
}

QString letter_of(const QString& text) { return QKeySequence::mnemonic(text).toString(); }

QStringList placeholders_of(const QString& text) {
  static const QRegularExpression placeholder(QStringLiteral("%L?[0-9]|%n|\\{[a-z_0-9]+\\}"));
  QStringList found;
  for (auto matches = placeholder.globalMatch(text); matches.hasNext();) found << matches.next().captured();
  found.sort();
  return found;
}

struct CatalogueEntry {
  QString source;
  bool finished = true;
  QStringList forms;
};

std::vector<CatalogueEntry> entries_of(QFile& file) {
  std::vector<CatalogueEntry> entries;
  QXmlStreamReader xml(&file);
  while (!xml.atEnd()) {
    xml.readNext();
    if (!xml.isStartElement()) continue;
    if (xml.name() == QStringLiteral("message")) entries.emplace_back();
    else if (xml.name() == QStringLiteral("source")) entries.back().source = xml.readElementText();
    else if (xml.name() == QStringLiteral("numerusform")) entries.back().forms << xml.readElementText();
    else if (xml.name() == QStringLiteral("translation")) {
      entries.back().finished = !xml.attributes().hasAttribute(QStringLiteral("type"));
      xml.readNext();
      if (xml.isCharacters() && !xml.isWhitespace()) entries.back().forms << xml.text().toString();
      else if (xml.isStartElement()) entries.back().forms << xml.readElementText();
    }
  }
  CHECK_FALSE(xml.hasError());
  return entries;
}

/// Hears every text that is looked up and remembers those a catalogue lacks.
class Listener : public QTranslator {
 public:
  explicit Listener(const QString& code) {
    REQUIRE(catalogue_.load(QStringLiteral("gritwright_") + code, QStringLiteral(":/i18n")));
    QApplication::installTranslator(this);
  }
  ~Listener() override { QApplication::removeTranslator(this); }
  Listener(const Listener&) = delete;
  Listener& operator=(const Listener&) = delete;

  QString translate(const char* context, const char* source, const char* disambiguation, int n) const override {
    // Qt's own texts are in Qt's catalogue; under "report" names and numbers are looked up too.
    const bool ours = context[0] != 'Q' && QByteArray(context) != "report";
    if (ours && catalogue_.translate(context, source, disambiguation, n).isNull()) missing_.insert(QStringLiteral("%1: %2").arg(QLatin1String(context), QString::fromUtf8(source)));
    return {};
  }
  bool isEmpty() const override { return false; }

  const std::set<QString>& missing() const { return missing_; }

 private:
  QTranslator catalogue_;
  mutable std::set<QString> missing_;
};

}  // namespace

TEST_CASE("No text of the window escapes translation", "[translation][rounds]") {
  const WithLongLanguage language;
  OpenWindow open;
  open.bench.open(complete_bench());
  visit(open, [&](const char* view) {
    for (const QLabel* label : open.window.findChildren<QLabel*>()) {
      if (!label->isVisible() || is_data(label->objectName())) continue;
      // Units stand beside fields as the trade writes them.
      if (label->text().size() <= 4) continue;
      INFO(view << ": label \"" << label->text().toStdString() << "\" " << label->objectName().toStdString());
      CHECK(is_translated(label->text()));
    }
    for (const QAbstractButton* button : open.window.findChildren<QAbstractButton*>()) {
      if (!button->isVisible() || is_data(button->objectName()) || button->objectName().startsWith(QStringLiteral("qt_"))) continue;
      INFO(view << ": button \"" << button->text().toStdString() << "\" " << button->objectName().toStdString());
      CHECK(is_translated(button->text()));
    }
    for (const QTabBar* bar : open.window.findChildren<QTabBar*>()) {
      for (int tab = 0; bar->isVisible() && tab < bar->count(); ++tab) {
        INFO(view << ": tab " << bar->tabText(tab).toStdString());
        CHECK(is_translated(bar->tabText(tab)));
      }
    }
  });
  for (const QAction* top : open.window.menuBar()->actions()) {
    for (const QAction* action : top->menu()->actions()) {
      INFO("menu entry \"" << action->text().toStdString() << '"');
      CHECK(is_translated(action->text()));
    }
  }
}

TEST_CASE("Texts a third longer are not cut and still fit 1024 by 700, in large text too", "[translation][rounds]") {
  const int percent = GENERATE(100, 150, 200);
  INFO(percent << " %");
  const WithLongLanguage language;
  const LargeText text(percent);
  check_that_nothing_is_cut();
}

TEST_CASE("In no language are texts cut, and all fit 1024 by 700, in large text too", "[translation][rounds]") {
  const int percent = GENERATE(100, 150, 200);
  INFO(percent << " %");
  const LargeText text(percent);
  for (const Language& language : languages) {
    INFO(language.code);
    const WithLanguage chosen(language.code);
    check_that_nothing_is_cut();
  }
}

TEST_CASE("In every language each menu, entry of a menu and field in view has a letter of its own", "[translation][rounds]") {
  for (const Language& language : languages) {
    INFO(language.code);
    const WithLanguage chosen(language.code);
    OpenWindow open;
    open.bench.open(complete_bench());
    std::set<QString> menus;
    for (const QAction* top : open.window.menuBar()->actions()) {
      INFO("menu \"" << top->text().toStdString() << '"');
      CHECK(menus.insert(letter_of(top->text())).second);
      CHECK_FALSE(letter_of(top->text()).isEmpty());
      std::set<QString> entries;
      for (const QAction* entry : top->menu()->actions()) {
        if (entry->isSeparator() || letter_of(entry->text()).isEmpty()) continue;
        INFO("entry \"" << entry->text().toStdString() << '"');
        CHECK(entries.insert(letter_of(entry->text())).second);
      }
    }
    visit(open, [&](const char* view) {
      std::set<QString> fields;
      for (const QLabel* label : open.window.findChildren<QLabel*>()) {
        if (!label->isVisible() || label->buddy() == nullptr || letter_of(label->text()).isEmpty()) continue;
        INFO(view << ": label \"" << label->text().toStdString() << '"');
        CHECK(fields.insert(letter_of(label->text())).second);
        CHECK_FALSE(menus.contains(letter_of(label->text())));
      }
    });
  }
}

TEST_CASE("No catalogue has a gap, and every translation keeps the placeholders of its source", "[translation]") {
  for (const Language& language : languages) {
    QFile file(QStringLiteral(GRITWRIGHT_CATALOGUES "/gritwright_%1.ts").arg(QLatin1String(language.code)));
    REQUIRE(file.open(QIODevice::ReadOnly));
    int messages = 0;
    for (const CatalogueEntry& entry : entries_of(file)) {
      ++messages;
      INFO(language.code << ": \"" << entry.source.toStdString() << "\" is \"" << entry.forms.join(u'|').toStdString() << '"');
      CHECK(entry.finished);
      CHECK_FALSE(entry.forms.isEmpty());
      for (const QString& form : entry.forms) {
        CHECK_FALSE(form.trimmed().isEmpty());
        // A form for one thing may say it in words.
        QStringList wanted = placeholders_of(entry.source);
        QStringList kept = placeholders_of(form);
        if (entry.forms.size() > 1) wanted.removeAll(QStringLiteral("%n")), kept.removeAll(QStringLiteral("%n"));
        CHECK(kept == wanted);
        // A field may do without where too few letters are free.
        if (letter_of(entry.source).isEmpty()) CHECK(letter_of(form).isEmpty());
      }
      // A menu's keys are read from the text; they work in no other spelling.
      if (entry.source.startsWith(QStringLiteral("Ctrl+"))) CHECK(entry.forms == QStringList(entry.source));
    }
    CHECK(messages > 10);
  }
}

TEST_CASE("Whatever the window looks up, the catalogues have", "[translation]") {
  const WithLanguage german("de");
  const Listener listener(QStringLiteral("de"));
  OpenWindow open;
  open.bench.open(complete_bench());
  visit(open, [](const char*) {});
  for (const QString& text : listener.missing()) {
    // A title is tried with fewer and fewer words until a material of the catalogue is left.
    if (!text.startsWith(QStringLiteral("materials: "))) FAIL_CHECK(text.toStdString());
  }
}

TEST_CASE("A sentence behind a name keeps its small letter, one by itself begins with a capital", "[translation]") {
  const WithLanguage english("en");
  Note note{"water.perched-to-the-top", Level::note, "broadleaf", {{"perched_cm", 7.5}, {"depth_cm", 4.25}}};
  CHECK(sentence_text(note).startsWith(QStringLiteral("broadleaf: the wet zone would reach")));
  note.where.clear();
  CHECK(sentence_text(note).startsWith(QStringLiteral("The wet zone would reach")));
}

TEST_CASE("Sentences of the engine and what stands behind a figure are German in German, with a decimal comma", "[translation]") {
  const WithLanguage german("de");
  const Note note{"water.perched-to-the-top", Level::note, "old top", {{"perched_cm", 7.5}, {"depth_cm", 4.25}}};
  CHECK(sentence_text(note) == with_units_kept(QStringLiteral("alte Oberseite: Die Nasszone würde 7,5 cm erreichen, über die Füllhöhe bei 4,2 cm hinaus: Die ganze Schale bleibt nass; eine gröbere Mischung oder eine tiefere Schale nehmen")));
  OpenWindow open;
  open.bench.open(complete_bench());
  bool explained = false;
  for (const FigureGroup& group : bench_figures(open.bench))
    for (const Figure& figure : group.figures) {
      if (figure.explanations.empty()) continue;
      explained = true;
      const QString text = explanation_text(figure);
      INFO(text.toStdString());
      CHECK(text.contains(QStringLiteral("Quelle: ")));
      CHECK_FALSE(text.contains(QRegularExpression(QStringLiteral("[0-9]\\.[0-9]+ (mm|cm|%|L|g)"))));
      CHECK_FALSE(text.contains(QStringLiteral(" of the ")));
    }
  CHECK(explained);
}

TEST_CASE("From right to left the window is mirrored and nothing breaks", "[translation][rounds]") {
  QApplication::setLayoutDirection(Qt::RightToLeft);
  {
    OpenWindow open;
    open.bench.open(complete_bench());
    auto* first = open.find<QWidget>("action_page_bags_button");
    auto* last = open.find<QWidget>("action_page_log_button");
    CHECK(first->mapTo(&open.window, QPoint(0, 0)).x() > last->mapTo(&open.window, QPoint(0, 0)).x());
    visit(open, [&](const char* view) {
      INFO(view);
      CHECK(open.window.minimumSizeHint().width() <= 1024);
      CHECK_FALSE(open.window.grab().isNull());
    });
  }
  QApplication::setLayoutDirection(Qt::LeftToRight);
}

TEST_CASE("A language chosen in the settings is kept for the next start, and the system's is what stands first", "[translation]") {
  const Settings before = read_settings();
  CHECK(before.language.isEmpty());
  {
    OpenWindow open;
    open.trigger("action_settings");
    auto* box = open.find<QComboBox>("settings_language");
    CHECK(box->currentIndex() == 0);
    const int german = box->findText(QStringLiteral("Deutsch"));
    REQUIRE(german > 0);
    box->setCurrentIndex(german);
    emit box->activated(german);
    CHECK(read_settings().language == QStringLiteral("de"));
    box->setCurrentIndex(0);
    emit box->activated(0);
    CHECK(read_settings().language.isEmpty());
  }
  write_settings(before);
}

TEST_CASE("A chosen language brings its texts, its numbers and Qt's buttons, whatever the system speaks", "[translation]") {
  {
    const WithLanguage german("de");
    CHECK(QLocale().language() == QLocale::German);
    CHECK(number_text(2.5, 3) == QStringLiteral("2,5"));
    // Qt's own catalogue, from the Debian package qt6-translations-l10n.
    CHECK(QCoreApplication::translate("QPlatformTheme", "Cancel") == QStringLiteral("Abbrechen"));
  }
  {
    const WithLanguage english("en");
    CHECK(QLocale().language() == QLocale::English);
    CHECK(QCoreApplication::translate("QPlatformTheme", "Cancel") == QStringLiteral("Cancel"));
  }
  const WithLanguage unknown("tlh");
  CHECK(QLocale().language() == QLocale::system().language());
}

TEST_CASE("A number and its unit stay on one line, and what is written into the record has plain spaces", "[translation]") {
  CHECK(with_units_kept(QStringLiteral("2 mm, 3 pots, %1 g/L, {mass_g} g and 5 grown trees")) == QStringLiteral("2\u00a0mm, 3 pots, %1\u00a0g/L, {mass_g}\u00a0g and 5 grown trees"));
  const WithLanguage german("de");
  CHECK(to_local("2.5 L") == QStringLiteral("2,5\u00a0L"));
  CHECK(to_typed("2.5 L") == QStringLiteral("2,5 L"));
  CHECK(sentence_text(Problem{"sieve-test.mass-negative", {}, {{"mass_g", -2.5}}}).contains(QStringLiteral("-2,5\u00a0g")));
  CHECK(sentence_text(Problem{"sieve-test.mass-negative", {}, {{"mass_g", -28.34952}}}, UnitSystem::us).contains(QStringLiteral("-1,00\u00a0oz")));
  CHECK(QCoreApplication::translate("Protocols", "Empty it, fill and weigh once more: two fills within 3 % are good.").contains(QStringLiteral("3\u00a0%")));
  CHECK(event_about({RecordKind::bag, "K-07"}, to_local("2.5 L"), "2026-03-14").text == "2,5 L");
}

TEST_CASE("Things in a row and what stands after a name have the marks of the reader's language", "[translation]") {
  const QStringList things{QStringLiteral("a"), QStringLiteral("b")};
  struct Marks {
    const char* language;
    QString commas, semicolons, label;
  };
  // French typography sets a no-break space before double marks; Japanese marks are as wide as its letters (common practice, no source).
  for (const Marks& marks : {Marks{"en", QStringLiteral("a, b"), QStringLiteral("a; b"), QStringLiteral("a: b")}, Marks{"de", QStringLiteral("a, b"), QStringLiteral("a; b"), QStringLiteral("a: b")},
                             Marks{"fr", QStringLiteral("a, b"), QStringLiteral("a\u00a0; b"), QStringLiteral("a\u00a0: b")}, Marks{"es", QStringLiteral("a, b"), QStringLiteral("a; b"), QStringLiteral("a: b")},
                             Marks{"ja", QStringLiteral("a\u3001b"), QStringLiteral("a\uff1bb"), QStringLiteral("a\uff1ab")}}) {
    INFO(marks.language);
    const WithLanguage chosen(marks.language);
    CHECK(comma_list(things) == marks.commas);
    CHECK(semicolon_list(things) == marks.semicolons);
    CHECK(with_label(QStringLiteral("a"), QStringLiteral("b")) == marks.label);
  }
}

TEST_CASE("English has its plurals", "[translation]") {
  CHECK(QCoreApplication::translate("gritwright::desktop::SieveTableModel", "Pasted %n row(s).", nullptr, 1) == QStringLiteral("Pasted 1 row."));
  CHECK(QCoreApplication::translate("gritwright::desktop::SieveTableModel", "Pasted %n row(s).", nullptr, 3) == QStringLiteral("Pasted 3 rows."));
}

TEST_CASE("A material goes by its name in the reader's language, the grower's own words stay", "[translation]") {
  RecordLine bag;
  bag.ref = {RecordKind::bag, "C-02"};
  bag.title = "calcined clay 2-4 mm C-02";
  CHECK(material_words("calcined_clay") == QStringLiteral("calcined clay"));
  CHECK(title_words(bag) == QStringLiteral("calcined clay 2-4 mm C-02"));
  const WithLanguage japanese("ja");
  for (const Material& material : test_catalogue().materials()) {
    INFO(material.name);
    CHECK(material_words(material.name) != to_qt(material.name));
    CHECK(material_words(material.description) != to_qt(material.description));
  }
  CHECK(material_words("akadama") == QString::fromUtf8("\u8d64\u7389\u571f"));
  CHECK(title_words(bag) == QString::fromUtf8("\u713c\u6210\u7c98\u571f 2-4 mm C-02"));
  CHECK(material_words("my own blend") == QStringLiteral("my own blend"));
  bag.ref.kind = RecordKind::mix;
  CHECK(title_words(bag) == QStringLiteral("calcined clay 2-4 mm C-02"));
}

TEST_CASE("A choice is named as shortly as it can be told from the others", "[translation]") {
  const auto named = [](RecordKind kind, const char* id, const char* title, const char* subject) {
    RecordLine line;
    line.ref = {kind, id};
    line.title = title;
    line.subject = subject;
    return choice_words(line);
  };
  CHECK(named(RecordKind::tree, "TR-07", "cascade juniper Juniperus chinensis", "Juniperus chinensis") == QStringLiteral("TR-07 cascade juniper"));
  CHECK(named(RecordKind::tree, "TR-08", "Juniperus chinensis", "Juniperus chinensis") == QStringLiteral("TR-08 Juniperus chinensis"));
  CHECK(named(RecordKind::bag, "C-02", "calcined clay 2-4 mm C-02", "calcined_clay") == QStringLiteral("C-02 calcined clay 2-4 mm"));
  CHECK(named(RecordKind::bag, "C-02", "calcined clay 2-4 mm K-11", "calcined_clay") == QStringLiteral("C-02 calcined clay 2-4 mm K-11"));
  CHECK(named(RecordKind::batch, "B-01", "B-01", "") == QStringLiteral("B-01"));
}

TEST_CASE("Ctrl+K finds a bag by its material in the reader's language, and names it so", "[translation]") {
  const WithLanguage german("de");
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  open.trigger("action_jump");
  open.find<QLineEdit>("jump_words")->setText(QStringLiteral("bims"));
  const auto* list = open.find<QListWidget>("jump_list");
  REQUIRE(list->count() > 1);
  CHECK(list->item(0)->text().contains(QStringLiteral("Bims")));
  CHECK_FALSE(list->item(0)->text().contains(QStringLiteral("pumice")));
}

TEST_CASE("Where grain went, what is taken in and what is to be bought go by the material's name in the reader's language", "[translation]") {
  const WithLanguage german("de");
  OpenWindow open;
  REQUIRE(fill_with_demonstration(*open.record, test_catalogue()).empty());
  const OpenWorkbook& workbook = open.record->workbook();
  const auto recalled = recall_list(workbook, {RecordKind::bag, "P-03"});
  REQUIRE(recalled.ok());
  INFO(recall_sentence(*recalled).toStdString());
  CHECK(recall_sentence(*recalled).startsWith(QStringLiteral("P-03 Bims")));
  const std::string saved = recall_file(*recalled, QStringLiteral("list.txt"), UnitSystem::metric);
  INFO(saved);
  CHECK(saved.find("steht darin") != std::string::npos);
  CHECK(saved.find("pumice") == std::string::npos);
  CHECK(saved.find("contains it") == std::string::npos);
  bool named = false;
  for (const Stored<Tree>& tree : workbook.all<Tree>()) {
    const auto back = gritwright::trace(workbook, {RecordKind::tree, tree.id.text}, TraceDirection::back);
    REQUIRE(back.ok());
    for (const QStringList& row : ground_of_tree(*back).table.rows) {
      INFO(row.join(u'|').toStdString());
      CHECK_FALSE(row.at(1).contains(QStringLiteral("pumice")));
      named = named || row.at(1).contains(QStringLiteral("Bims"));
    }
  }
  CHECK(named);
  ImportPreview preview;
  preview.lines.push_back({{{RecordKind::bag, "P-90"}, Bag{}}, "pumice 2-4 mm", Arrival::added});
  ImportTableModel table;
  table.show(preview, false);
  CHECK(table.data(table.index(0, 1), Qt::DisplayRole).toString() == QStringLiteral("Bims 2-4 mm"));
  CHECK(translated("pumice") == "Bims");
  CHECK(translated("a {bag_l} of nothing") == "a {bag_l} of nothing");
}

TEST_CASE("A group's mix to start from is shown in the reader's words and kept by the catalogue's names", "[translation]") {
  const WithLanguage german("de");
  const std::vector<StartingPart> kept{{"pumice", Parts(2)}, {"calcined_clay", Parts(1)}};
  const QString shown = starting_parts_text(kept);
  CHECK(shown.startsWith(QStringLiteral("2 Bims : 1 ")));
  CHECK_FALSE(shown.contains(QStringLiteral("clay")));
  const auto again = starting_parts_of(shown, test_catalogue(), kept);
  REQUIRE(again.ok());
  CHECK(*again == kept);
  const auto own = starting_parts_of(QStringLiteral("3 Bims : 1 Ziegelbruch"), test_catalogue(), kept);
  REQUIRE(own.ok());
  CHECK(*own == std::vector<StartingPart>{{"pumice", Parts(3)}, {"Ziegelbruch", Parts(1)}});
  // A material that the group hadn't is no word of one language only.
  const auto further = starting_parts_of(QStringLiteral("3 bims : 1 Scoria"), test_catalogue(), {});
  REQUIRE(further.ok());
  CHECK(*further == std::vector<StartingPart>{{"pumice", Parts(3)}, {"scoria", Parts(1)}});
}

TEST_CASE("A material that asks for a caution does so under its name in every language", "[translation]") {
  for (const Language& language : languages) {
    const WithLanguage chosen(language.code);
    for (const Material& material : test_catalogue().materials())
      for (const GrainWord grain : {GrainWord::moss, GrainWord::bark, GrainWord::peat, GrainWord::coir, GrainWord::compost, GrainWord::soft_clay, GrainWord::vermiculite, GrainWord::perlite}) {
        INFO(language.code << ": " << material.name << ", " << material_words(material.name).toStdString());
        CHECK(speaks_of(material_words(material.name).toStdString(), grain) == speaks_of(material.name, grain));
      }
  }
}
