#include "settings_page.hpp"

#include <QBrush>
#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QFileDialog>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QShortcut>
#include <QTableWidget>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "gritwright/formats/typed_quantity.hpp"
#include "models/typed_text.hpp"
#include "text.hpp"
#include "theme.hpp"
#include "translation.hpp"
#include "widgets/backups_card.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/record_table.hpp"
#include "widgets/two_line_check.hpp"

namespace gritwright::desktop {

namespace {

constexpr std::array text_percents{100, 125, 150, 175, 200};
constexpr std::array<std::optional<Theme>, 4> themes{std::nullopt, Theme::light, Theme::dark, Theme::high_contrast};

enum SetColumn { set_name_column, openings_column, across_column };

template <class List, class Value>
int index_of(const List& list, const Value& value) {
  const auto found = std::ranges::find(list, value);
  return found == list.end() ? 0 : static_cast<int>(found - list.begin());
}

/// A list whose entries are found by their first letters. What an entry changes at once, like the colours of the whole window, can take longer than the
/// pause after which a list of Qt's takes a letter for the first of another word; here the pause is that between the keys.
class TypedChoice : public QComboBox {
 public:
  using QComboBox::QComboBox;

 protected:
  void keyPressEvent(QKeyEvent* event) override {
    const QString sign = event->text();
    const bool is_letter = sign.size() == 1 && sign[0].isPrint() && !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
    if (!is_letter || (sign[0].isSpace() && typed_.isEmpty())) {
      typed_.clear();
      return QComboBox::keyPressEvent(event);
    }
    constexpr quint64 pause_ms = 1000;
    if (event->timestamp() - last_key_ > pause_ms) typed_.clear();
    last_key_ = event->timestamp();
    typed_ += sign;
    const int found = findText(typed_, Qt::MatchStartsWith);
    if (found < 0 || found == currentIndex()) return;
    setCurrentIndex(found);
    emit activated(found);
  }

 private:
  QString typed_;
  quint64 last_key_ = 0;
};

}  // namespace

QString openings_text(const std::vector<OwnedSieve>& sieves) {
  QStringList texts;
  for (const OwnedSieve& sieve : sieves) texts << (sieve.label.empty() ? number_text(in_mm(sieve.aperture), 6) : to_qt(sieve.label));
  return texts.join(u' ');
}

Result<std::vector<OwnedSieve>> sieves_of(const QString& text) {
  static const QRegularExpression between(QStringLiteral("[\\s;/]+"));
  std::vector<OwnedSieve> sieves;
  Problems problems;
  for (const QString& one : text.split(between, Qt::SkipEmptyParts)) {
    const auto aperture = parse_aperture(one.toStdString());
    append(problems, aperture.problems());
    // What was typed stays the sieve's name: "no8" reads better back than 2.36.
    if (aperture) sieves.push_back({*aperture, one.toStdString()});
  }
  if (!problems.empty()) return problems;
  std::ranges::sort(sieves, [](const OwnedSieve& a, const OwnedSieve& b) { return a.aperture > b.aperture; });
  return sieves;
}

SettingsPage::SettingsPage(RecordBook* book, const Settings& settings, QWidget* parent) : QWidget(parent), book_(book) {
  setObjectName(QStringLiteral("settings_page"));
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(8, 8, 8, 8);
  auto* column = new QWidget(this);
  auto* layout = new QVBoxLayout(column);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  layout->addWidget(choices());
  layout->addWidget(sieves());
  if (book_ != nullptr) {
    kept_backups_ = new BackupsCard(book_->workbook().file(), book_->workbook().backup_folder(), column);
    connect(kept_backups_, &BackupsCard::restore_wanted, this, &SettingsPage::restore_wanted);
    connect(kept_backups_, &BackupsCard::look_wanted, this, &SettingsPage::look_wanted);
    layout->addWidget(record_card());
    layout->addWidget(kept_backups_);
  }
  layout->addStretch(1);
  scroll_ = new ColumnScroll(column, this);
  outer->addWidget(scroll_);
  if (book_ != nullptr) connect(book_, &RecordBook::changed, this, &SettingsPage::read_sets);
  show_settings(settings);
}

QComboBox* SettingsPage::chooser(QGridLayout* grid, const char* object_name, const QString& label_text, const QStringList& texts) {
  auto* box = new TypedChoice(this);
  box->setObjectName(QString::fromLatin1(object_name));
  QString name = label_text;
  box->setAccessibleName(name.remove(u'&'));
  box->addItems(texts);
  box->setMinimumHeight(26);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(14);
  auto* label = new QLabel(label_text, this);
  label->setBuddy(box);
  const int line = grid->rowCount();
  grid->addWidget(label, line, 0);
  grid->addWidget(box, line, 1);
  connect(box, &QComboBox::activated, this, &SettingsPage::take);
  return box;
}

QWidget* SettingsPage::choices() {
  auto* card = new QFrame(this);
  card->setObjectName(QStringLiteral("card"));
  auto* grid = new QGridLayout(card);
  grid->setContentsMargins(10, 8, 10, 8);
  grid->setHorizontalSpacing(12);
  auto* heading = new QLabel(tr("Settings"), card);
  heading->setProperty("role", "heading");
  grid->addWidget(heading, 0, 0, 1, 2);
  QStringList percents;
  for (const int percent : text_percents) percents << tr("%1 %").arg(percent);
  QStringList names{tr("as the system")};
  for (const Language& language : languages) names << QString::fromUtf8(language.name);
  language_ = chooser(grid, "settings_language", tr("Language"), names);
  auto* draft = new QLabel(tr("A change holds from the next start. Every translation is a draft, not yet read by a native grower."), card);
  draft->setProperty("role", "muted");
  draft->setWordWrap(true);
  grid->addWidget(draft, grid->rowCount(), 1);
  units_ = chooser(grid, "settings_units", tr("Units"), {tr("metric: litres, millimetres, grams"), tr("US: quarts, inches, ounces")});
  theme_ = chooser(grid, "settings_theme", tr("Colours"), {tr("as the system"), tr("light"), tr("dark"), tr("high contrast")});
  text_size_ = chooser(grid, "settings_text_size", tr("Text size"), percents);
  paper_ = chooser(grid, "settings_paper", tr("Paper"), {tr("A4"), tr("Letter")});
  laboratory_ = new TwoLineCheck(tr("Show laboratory figures beside the verdict"), card);
  laboratory_->setObjectName(QStringLiteral("settings_laboratory"));
  laboratory_->setMinimumHeight(26);
  connect(laboratory_, &QCheckBox::toggled, this, &SettingsPage::take);
  grid->addWidget(laboratory_, grid->rowCount(), 1);
  const int line = grid->rowCount();
  auto* label = new QLabel(tr("Backups folder"), card);
  grid->addWidget(label, line, 0);
  grid->addWidget(backups_row(card), line, 1);
  label->setBuddy(backups_);
  grid->setColumnStretch(1, 1);
  return card;
}

QWidget* SettingsPage::backups_row(QWidget* parent) {
  auto* row = new QWidget(parent);
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  backups_ = new QLineEdit(row);
  backups_->setObjectName(QStringLiteral("settings_backups"));
  backups_->setAccessibleName(tr("Backups folder"));
  backups_->setPlaceholderText(tr("beside the record; a change holds from the next start"));
  backups_->setMinimumHeight(26);
  connect(backups_, &QLineEdit::editingFinished, this, &SettingsPage::take);
  auto* choose = new QPushButton(tr("Choose..."), row);
  choose->setObjectName(QStringLiteral("settings_choose_backups"));
  choose->setAccessibleName(tr("Choose the backups folder"));
  choose->setMinimumHeight(26);
  connect(choose, &QPushButton::clicked, this, [this] {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Backups folder"), backups_->text());
    if (folder.isEmpty()) return;
    backups_->setText(folder);
    take();
  });
  layout->addWidget(backups_, 1);
  layout->addWidget(choose);
  return row;
}

QWidget* SettingsPage::sieves() {
  auto* card = new QFrame(this);
  card->setObjectName(QStringLiteral("card"));
  auto* layout = new QVBoxLayout(card);
  layout->setContentsMargins(10, 8, 10, 8);
  auto* heading = new QLabel(tr("Sieves you own"), card);
  heading->setProperty("role", "heading");
  auto* words = new QLabel(tr("One set a line, its openings in mm or by name, apart by blanks: 8 5.6 4 2.8 2 1.4 1; how wide they are inside the frame shows an overloaded sieve. They are offered on the Sieving page, and "
                              "\u201cwhich openings?\u201d chooses among them."),
                           card);
  words->setWordWrap(true);
  words->setProperty("role", "muted");
  sets_ = new QTableWidget(card);
  sets_->setObjectName(QStringLiteral("settings_sieves"));
  sets_->setAccessibleName(tr("Sets of sieves you own"));
  sets_->setColumnCount(3);
  sets_->setHorizontalHeaderLabels({tr("name"), tr("openings"), {}});
  sets_->horizontalHeader()->setSectionResizeMode(openings_column, QHeaderView::Stretch);
  sets_->horizontalHeader()->setHighlightSections(false);
  sets_->verticalHeader()->hide();
  sets_->setTabKeyNavigation(false);
  connect(sets_, &QTableWidget::cellChanged, this, &SettingsPage::take_cell);
  auto* remove = new QShortcut(QKeySequence(Qt::Key_Delete), sets_, nullptr, nullptr, Qt::WidgetShortcut);
  connect(remove, &QShortcut::activated, this, [this] {
    const int row = sets_->currentRow();
    QTableWidgetItem* const across = sets_->currentColumn() == across_column ? sets_->item(row, across_column) : nullptr;
    if (across != nullptr) return across->setText({});
    remove_sieve_set(row);
  });
  fault_ = new QLabel(card);
  fault_->setObjectName(QStringLiteral("settings_sieves_fault"));
  fault_->setProperty("role", "fault");
  fault_->setWordWrap(true);
  auto* add = new QPushButton(tr("Add a set"), card);
  add->setObjectName(QStringLiteral("settings_add_sieves"));
  add->setAccessibleName(tr("Add a set of sieves"));
  add->setMinimumHeight(28);
  add->setEnabled(book_ != nullptr);
  connect(add, &QPushButton::clicked, this, &SettingsPage::add_sieve_set);
  layout->addWidget(heading);
  layout->addWidget(words);
  layout->addWidget(sets_);
  layout->addWidget(fault_);
  layout->addWidget(add, 0, Qt::AlignLeft);
  fit();
  return card;
}

void SettingsPage::take_focus() { language_->setFocus(); }

QWidget* SettingsPage::record_card() {
  auto* card = new QFrame(this);
  card->setObjectName(QStringLiteral("card"));
  auto* layout = new QVBoxLayout(card);
  layout->setContentsMargins(10, 8, 10, 8);
  auto* heading = new QLabel(tr("Your record"), card);
  heading->setProperty("role", "heading");
  auto* words = new QLabel(card);
  words->setObjectName(QStringLiteral("settings_record"));
  words->setTextFormat(Qt::PlainText);
  words->setWordWrap(true);
  QStringList sentences{tr("It lies in %1.").arg(book_->file())};
  if (book_->is_read_only()) sentences << tr("It is open for reading only.");
  switch (book_->workbook().placement()) {
    case Placement::local: break;
    case Placement::network_folder: sentences << tr("That is a network folder: saving takes longer there, and only one person should work in it at a time."); break;
    case Placement::synced_folder:
      sentences << tr("Another program copies that folder elsewhere: let it finish before the record is opened on another machine, or two half records may come of it.");
      break;
  }
  words->setText(sentences.join(u' '));
  layout->addWidget(heading);
  layout->addWidget(words);
  return card;
}

void SettingsPage::show_backups() {
  if (kept_backups_ == nullptr) return;
  if (auto* table = kept_backups_->findChild<QTableWidget*>(QStringLiteral("backups_table")); table->isVisible()) table->setFocus();
  // Where it lies is known once the page was laid out.
  QTimer::singleShot(0, this, [this] { scroll_->ensureWidgetVisible(kept_backups_, 0, 0); });
}


void SettingsPage::show_settings(const Settings& settings) {
  settings_ = settings;
  const QSignalBlocker quiet(laboratory_);
  const auto chosen = std::ranges::find(languages, settings.language, [](const Language& language) { return QLatin1String(language.code); });
  language_->setCurrentIndex(chosen == languages.end() ? 0 : 1 + static_cast<int>(chosen - languages.begin()));
  units_->setCurrentIndex(settings.units == UnitSystem::us ? 1 : 0);
  theme_->setCurrentIndex(index_of(themes, settings.theme));
  text_size_->setCurrentIndex(index_of(text_percents, settings.text_percent));
  paper_->setCurrentIndex(settings.letter_paper ? 1 : 0);
  laboratory_->setChecked(settings.laboratory_figures);
  if (!backups_->hasFocus()) backups_->setText(settings.backups_folder);
}

void SettingsPage::take() {
  settings_.language = language_->currentIndex() > 0 ? QString::fromLatin1(languages[static_cast<std::size_t>(language_->currentIndex() - 1)].code) : QString();
  settings_.units = units_->currentIndex() == 1 ? UnitSystem::us : UnitSystem::metric;
  settings_.theme = themes[static_cast<std::size_t>(std::max(0, theme_->currentIndex()))];
  settings_.text_percent = text_percents[static_cast<std::size_t>(std::max(0, text_size_->currentIndex()))];
  settings_.letter_paper = paper_->currentIndex() == 1;
  settings_.laboratory_figures = laboratory_->isChecked();
  settings_.backups_folder = backups_->text().trimmed();
  read_sets();
  emit settings_changed(settings_);
}

void SettingsPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  read_sets();
  if (kept_backups_ != nullptr) kept_backups_->refresh();
}

void SettingsPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange && sets_ != nullptr) fit();
}

void SettingsPage::fit() {
  const int line = std::max(26, sets_->fontMetrics().height() + 10);
  sets_->verticalHeader()->setDefaultSectionSize(line);
  sets_->setColumnWidth(set_name_column, 18 * sets_->fontMetrics().averageCharWidth());
  sets_->setColumnWidth(across_column, sets_->horizontalHeader()->fontMetrics().horizontalAdvance(sets_->horizontalHeaderItem(across_column)->text()) + 2 * room_beside_words(sets_->fontMetrics()));
  sets_->setFixedHeight(sets_->horizontalHeader()->sizeHint().height() + std::max(1, sets_->rowCount()) * line + 2 * sets_->frameWidth());
}

void SettingsPage::read_sets() {
  if (book_ == nullptr || !isVisible()) return;
  filling_ = true;
  shown_sets_ = book_->workbook().all<SieveSet>();
  sets_->setRowCount(static_cast<int>(shown_sets_.size()));
  sets_->horizontalHeaderItem(across_column)->setText(tr("across, %1").arg(unit_of(Kind::frame, settings_.units)));
  for (int row = 0; row < sets_->rowCount(); ++row) {
    const SieveSet& set = shown_sets_[static_cast<std::size_t>(row)].record;
    sets_->setItem(row, set_name_column, new QTableWidgetItem(to_qt(set.name)));
    sets_->setItem(row, openings_column, new QTableWidgetItem(openings_text(set.sieves)));
    sets_->setItem(row, across_column, new QTableWidgetItem(set.diameter ? shown_text(number_text(in_mm(*set.diameter), 6), Kind::frame, settings_.units) : QString()));
  }
  show_refused();
  filling_ = false;
  fit();
}

// What can't be read stays to be put right; the set is as it was.
void SettingsPage::show_refused() {
  QStringList sentences;
  for (const auto& [place, refused] : refused_) sentences << refused.sentence;
  fault_->setText(semicolon_list(sentences));
  for (int row = 0; row < sets_->rowCount(); ++row) {
    for (int column = 0; column < sets_->columnCount(); ++column) {
      const auto refused = refused_.find({shown_sets_[static_cast<std::size_t>(row)].id.text, column});
      if (refused != refused_.end()) sets_->item(row, column)->setText(refused->second.text);
      sets_->item(row, column)->setBackground(refused != refused_.end() ? QBrush(current_colours().fault_fill) : QBrush());
    }
  }
}

void SettingsPage::add_sieve_set() {
  if (book_ == nullptr) return;
  SieveSet set;
  set.name = tr("my sieves").toStdString();
  for (const char* mm : {"8", "5.6", "4", "2.8", "2", "1.4", "1"}) set.sieves.push_back({*parse_aperture(mm), {}});
  book_->add(set, tr("set of sieves %1").arg(to_qt(set.name)));
  if (sets_->rowCount() == 0) return;
  sets_->setCurrentCell(sets_->rowCount() - 1, openings_column);
  sets_->setFocus();
}

void SettingsPage::remove_sieve_set(int row) {
  if (book_ == nullptr || row < 0 || row >= static_cast<int>(shown_sets_.size())) return;
  const Stored<SieveSet> set = shown_sets_[static_cast<std::size_t>(row)];
  std::erase_if(refused_, [&](const auto& one) { return one.first.first == set.id.text; });
  if (book_->remove(set, tr("set of sieves %1").arg(to_qt(set.record.name)))) emit book_->told(tr("%1 is no longer among your sieves; undo brings it back.").arg(to_qt(set.record.name)));
}

void SettingsPage::take_cell(int row, int column) {
  if (filling_ || book_ == nullptr || row >= static_cast<int>(shown_sets_.size())) return;
  const Stored<SieveSet> was = shown_sets_[static_cast<std::size_t>(row)];
  SieveSet now = was.record;
  const QString text = sets_->item(row, column)->text().trimmed();
  Problems problems;
  if (column == set_name_column) {
    now.name = text.toStdString();
  } else if (column == across_column) {
    const auto across = text.isEmpty() ? Result<Length>(Length{}) : parse_length(text.toStdString(), settings_.units == UnitSystem::us ? LengthUnit::inch : LengthUnit::millimetre);
    append(problems, across.problems());
    now.diameter = across && !text.isEmpty() ? std::optional(*across) : std::nullopt;
  } else if (text.isEmpty()) {
    return remove_sieve_set(row);
  } else {
    auto sieves = sieves_of(text);
    append(problems, sieves.problems());
    if (sieves) now.sieves = std::move(sieves).value();
  }
  if (problems.empty()) append(problems, check(now));
  QStringList sentences;
  for (const Problem& problem : problems) sentences << sentence_text(problem);
  if (problems.empty()) refused_.erase({was.id.text, column});
  else refused_[{was.id.text, column}] = {text, semicolon_list(sentences)};
  if (problems.empty()) book_->replace(was, now, tr("set of sieves %1").arg(to_qt(now.name)));
  filling_ = true;
  show_refused();
  filling_ = false;
}

}  // namespace gritwright::desktop
