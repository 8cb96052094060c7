#include "log_page.hpp"

#include <QCheckBox>
#include <QDate>
#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QSettings>
#include <QShowEvent>
#include <QTabBar>
#include <QTabWidget>
#include <QTableView>
#include <QVBoxLayout>
#include <utility>

#include "models/grain_trace.hpp"
#include "models/material_words.hpp"
#include "sick_trees_tab.hpp"
#include "text.hpp"
#include "trace_tab.hpp"
#include "widgets/flow_line.hpp"
#include "widgets/folding_sides.hpp"
#include "widgets/kept_line.hpp"
#include "widgets/list_fit.hpp"
#include "widgets/record_table.hpp"

namespace gritwright::desktop {

namespace {

using Column = RecordListModel::Column;

/// As wide as a field for words must be.
QString few_words() { return QString(14, u'n'); }

/// A line with its label, both laid out into `line`.
QLineEdit* labelled(FlowLine* line, const char* object_name, const QString& label_text, const QString& hint, int stretch, const QString& widest) {
  auto* field = new QLineEdit(line);
  field->setObjectName(QString::fromLatin1(object_name));
  field->setPlaceholderText(hint);
  field->setMinimumHeight(26);
  QString name = label_text;
  field->setAccessibleName(name.remove(u'&'));
  field->setAccessibleDescription(hint);
  line->add(label_text, field, stretch, widest);
  return field;
}

QLabel* fault_label(QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setProperty("role", "fault");
  label->setWordWrap(true);
  label->hide();
  return label;
}

void show_fault(QLabel* label, const QString& text) {
  label->setText(text);
  label->setVisible(!text.isEmpty());
}

}  // namespace

LogPage::LogPage(RecordBook& book, QWidget* parent)
    : QWidget(parent),
      book_(book),
      list_(new RecordListModel(book, RecordKind::log_entry, {Column::day, Column::title, Column::id}, this)),
      tabs_(new QTabWidget(this)),
      trace_(new TraceTab(book, tabs_)),
      sick_(new SickTreesTab(book, tabs_)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 8, 8, 8);
  tabs_->setObjectName(QStringLiteral("log_tabs"));
  tabs_->setAccessibleName(tr("Log"));
  tabs_->setDocumentMode(true);
  tabs_->tabBar()->setMinimumHeight(32);
  tabs_->addTab(happened(), tr("What happened"));
  tabs_->addTab(trace_, tr("Where grain went"));
  tabs_->addTab(sick_, tr("Sick trees"));
  layout->addWidget(tabs_);
  connect(find_, &QLineEdit::textChanged, this, &LogPage::narrow);
  for (QLineEdit* field : {about_, from_, to_}) connect(field, &QLineEdit::textChanged, this, &LogPage::narrow);
  connect(small_, &QCheckBox::toggled, this, &LogPage::narrow);
  connect(&book_, &RecordBook::changed, this, [this] {
    tell_left_out();
    refresh_links();
  });
  connect(about_, &QLineEdit::textEdited, this, [this] { about_by_jump_ = false; });
  connect(sick_, &SickTreesTab::trace_wanted, this, &LogPage::show_trace);
  narrow();
}

QWidget* LogPage::happened() {
  auto* page = new QWidget(tabs_);
  auto* layout = new QVBoxLayout(page);
  layout->setContentsMargins(0, 8, 0, 0);
  layout->setSpacing(8);
  layout->addWidget(tools(page));
  small_ = new QCheckBox(page);
  small_->setObjectName(QStringLiteral("log_small"));
  small_->setMinimumHeight(26);
  show_left_out(0);
  small_->setToolTip(tr("A small change is a field that was typed into: a note, a mass, a name. Everything else that happened stands here anyway."));
  small_->setAccessibleDescription(small_->toolTip());
  layout->addWidget(small_);
  about_fault_ = fault_label(page);
  about_fault_->setObjectName(QStringLiteral("log_about_fault"));
  layout->addWidget(about_fault_);
  auto* sides = new FoldingSides(QStringLiteral("log_splitter"), page);
  table_ = new QTableView(sides);
  table_->setObjectName(QStringLiteral("log_table"));
  table_->setAccessibleName(tr("Log, newest first"));
  table_->setModel(list_);
  show_as_record_list(*table_);
  constexpr int most_events_say = 40;
  new ListFit(*table_, {{0, widest_day()}, {2, QStringLiteral("L-00000")}}, most_events_say);
  sides->add(table_);
  sides->add(linked_side());
  sides->set_sizes({860, 360});
  layout->addWidget(sides, 1);
  layout->addWidget(writing_line(page));
  writing_fault_ = fault_label(page);
  layout->addWidget(writing_fault_);
  return page;
}

void LogPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  list_->set_in_sight(true);
  // Whoever wrote down an old day and comes back later means the day they come back on.
  if (!event->spontaneous() && text_->text().isEmpty()) put_today();
  tell_left_out();
  refresh_links();
}

void LogPage::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  list_->set_in_sight(false);
}

QWidget* LogPage::tools(QWidget* parent) {
  auto* line = new FlowLine(parent);
  find_ = labelled(line, "log_find", tr("F&ind"), tr("any word of the log"), 2, few_words());
  about_ = labelled(line, "log_about", tr("&About"), tr("a bag, its lot, a mix or a tree, like K-07"), 1, few_words());
  line->keep_together();
  from_ = labelled(line, "log_from", tr("From"), tr("like %1").arg(example_day()), 0, tr("like %1").arg(example_day()));
  to_ = labelled(line, "log_to", tr("to"), tr("like %1").arg(day_text("2026-04-30")), 0, tr("like %1").arg(day_text("2026-04-30")));
  return line;
}

QWidget* LogPage::writing_line(QWidget* parent) {
  auto* line = new FlowLine(parent);
  day_ = labelled(line, "log_day", tr("&Day"), tr("like %1").arg(example_day()), 0, widest_day());
  put_today();
  connect(day_, &QLineEdit::textEdited, this, [this] { day_put_.clear(); });
  day_->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
  text_ = labelled(line, "log_text", tr("&Write down"), tr("what you saw or did; with About above it is kept there too"), 1, few_words());
  keep_ = new QPushButton(line);
  keep_->setObjectName(QStringLiteral("log_keep"));
  keep_->setMinimumHeight(28);
  line->add({}, keep_);
  connect(keep_, &QPushButton::clicked, this, &LogPage::write_down);
  connect(text_, &QLineEdit::returnPressed, this, &LogPage::write_down);
  (new KeptLine(*text_))->hold_under(QStringLiteral("typed/%1/log_text").arg(book_.settings_key()));
  connect(text_, &QLineEdit::textEdited, this, [this] { QSettings().setValue(about_kept_under(), about_->text()); });
  if (!text_->text().isEmpty()) about_->setText(QSettings().value(about_kept_under()).toString());
  return line;
}

QWidget* LogPage::linked_side() {
  auto* side = new QFrame(this);
  side->setObjectName(QStringLiteral("card"));
  auto* layout = new QVBoxLayout(side);
  layout->setContentsMargins(10, 8, 10, 8);
  links_title_ = new QLabel(side);
  links_title_->setObjectName(QStringLiteral("log_links_title"));
  links_title_->setWordWrap(true);
  links_title_->setProperty("role", "heading");
  links_ = new QListWidget(side);
  links_->setObjectName(QStringLiteral("log_links"));
  links_->setAccessibleName(tr("What it is linked to"));
  links_->setWordWrap(true);
  links_->setSpacing(4);
  connect(links_, &QListWidget::itemActivated, this, [this](const QListWidgetItem* item) {
    if (const QString id = item->data(Qt::UserRole).toString(); !id.isEmpty()) show_about(id);
  });
  layout->addWidget(links_title_);
  layout->addWidget(links_, 1);
  return side;
}

void LogPage::find() {
  if (tabs_->currentWidget() == trace_) return trace_->take_focus();
  show_happened();
  find_->setFocus();
  find_->selectAll();
}

void LogPage::show_happened() { tabs_->setCurrentIndex(0); }

void LogPage::show_about(const QString& id) {
  show_happened();
  about_->setText(id);
  about_by_jump_ = true;
}

void LogPage::show_trace(const QString& id) {
  // What the log is narrowed to is what one looks at.
  const auto about = id.isEmpty() && tabs_->currentIndex() == 0 ? called(book_.workbook(), about_->text()).record : std::nullopt;
  const QString of = about ? to_qt(about->id) : id;
  tabs_->setCurrentWidget(trace_);
  if (!of.isEmpty()) trace_->trace(of);
  trace_->take_focus();
}

void LogPage::show_sick_trees() {
  tabs_->setCurrentWidget(sick_);
  sick_->take_focus();
}

void LogPage::save_list() {
  if (tabs_->currentWidget() == sick_) return sick_->choose_file();
  tabs_->setCurrentWidget(trace_);
  trace_->choose_file();
}

void LogPage::set_units(UnitSystem units) { trace_->set_units(units); }

ListFilter LogPage::asked_for() {
  ListFilter filter;
  filter.by_day = true;
  filter.words = find_->text().toStdString();
  const auto [about, about_fault] = called(book_.workbook(), about_->text());
  filter.about = about;
  filter.without_small = !small_->isChecked();
  QStringList faults;
  if (!about_fault.isEmpty()) faults << about_fault << tr("The whole log is shown.");
  // While a day is being typed it does not narrow anything yet.
  const auto day_of = [&](const QLineEdit& field) -> std::optional<std::string> {
    const QString text = field.text().trimmed();
    if (text.isEmpty()) return std::nullopt;
    if (std::string day = typed_day(text); QDate::fromString(to_qt(day), Qt::ISODate).isValid()) return day;
    faults << tr("%1 is no day like %2.").arg(text, example_day());
    return std::nullopt;
  };
  filter.from_day = day_of(*from_);
  filter.to_day = day_of(*to_);
  show_fault(about_fault_, faults.join(u' '));
  return filter;
}

void LogPage::narrow() {
  const ListFilter filter = asked_for();
  keep_->setText(filter.about ? tr("&Keep with %1").arg(to_qt(filter.about->id)) : tr("&Keep"));
  keep_->setAccessibleName(filter.about ? tr("Keep this line in the log and with %1").arg(to_qt(filter.about->id)) : tr("Keep this line in the log"));
  list_->set_filter(filter);
  tell_left_out();
  refresh_links();
}

// How many are left out stands beside the choice, so that nobody takes them for lost.
void LogPage::tell_left_out() {
  if (!isVisible()) return;
  ListFilter all = asked_for();
  all.without_small = false;
  // What narrows may have been filled in by a jump from elsewhere, and be forgotten.
  const bool narrowed = !find_->text().trimmed().isEmpty() || all.about || all.from_day || all.to_day;
  if (narrowed && list_->rowCount() == 0 && about_fault_->text().isEmpty())
    show_fault(about_fault_, tr("Nothing fits Find, About and the days together; empty one of them to see more."));
  const int small = small_->isChecked() ? 0 : static_cast<int>(book_.workbook().count(RecordKind::log_entry, all)) - list_->rowCount();
  show_left_out(small);
}

void LogPage::show_left_out(int small) {
  const QString count = QLocale().toString(small);
  small_->setText(small == 0 ? tr("&Small changes too") : tr("&Small changes too (%1)").arg(count));
  small_->setAccessibleName(small == 0 ? tr("Show small changes too") : tr("Show small changes too, %1 are left out").arg(count));
}

void LogPage::refresh_links() {
  if (!isVisible()) return;
  links_->clear();
  const auto about = called(book_.workbook(), about_->text()).record;
  if (!about) {
    links_title_->setText(tr("Type a bag, its lot, a mix or a tree into About to see what it is linked to; where its grain went in the end stands on the next tab."));
    return;
  }
  links_title_->setText(tr("Linked to %1").arg(to_qt(about->id)));
  constexpr std::size_t most_of_a_kind = 100;  // more is a list to search, not to read
  ListFilter filter;
  filter.about = about;
  filter.limit = most_of_a_kind;
  for (const RecordKind kind : {RecordKind::tree, RecordKind::mix, RecordKind::batch, RecordKind::fraction, RecordKind::bin, RecordKind::bag, RecordKind::sieve_test, RecordKind::pot_test,
                                RecordKind::repotting_day, RecordKind::container}) {
    for (const RecordLine& line : book_.workbook().list(kind, filter)) {
      auto* item = new QListWidgetItem(with_label(QStringLiteral("%1 %2").arg(kind_text(kind), to_qt(line.ref.id)), title_words(line)), links_);
      item->setData(Qt::UserRole, to_qt(line.ref.id));
    }
  }
  if (links_->count() == 0) links_->addItem(tr("nothing yet"));
}

void LogPage::put_today() {
  day_put_ = day_text(today());
  day_->setText(day_put_);
}

void LogPage::write_down() {
  // The window may have been open since yesterday.
  if (day_->text() == day_put_) put_today();
  LogEntry entry;
  entry.day = typed_day(day_->text());
  entry.sort = LogSort::observation;
  entry.text = text_->text().trimmed().toStdString();
  if (const auto about = called(book_.workbook(), about_->text()).record) entry.about.push_back(*about);
  const Problems problems = check(entry);
  QStringList sentences;
  for (const Problem& problem : problems) sentences << sentence_text(problem);
  show_fault(writing_fault_, semicolon_list(sentences));
  if (!problems.empty()) return;
  const QString written = book_.add(entry, tr("line in the log"));
  if (written.isEmpty()) return;
  text_->setText(QString());  // not to be undone as typing: undo takes the line out of the log
  QSettings().remove(about_kept_under());
  // What was only looked at is not meant by the next line too.
  if (std::exchange(about_by_jump_, false)) about_->clear();
  // A line of an earlier day stands among those of that day, and would be out of sight.
  if (const int row = list_->row_of(written); row >= 0) {
    table_->selectRow(row);
    table_->scrollTo(list_->index(row, 0));
  }
}

QString LogPage::about_kept_under() const { return QStringLiteral("typed/%1/log_text_about").arg(book_.settings_key()); }

}  // namespace gritwright::desktop
