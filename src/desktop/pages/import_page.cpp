#include "import_page.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <initializer_list>
#include <utility>

#include "text.hpp"
#include "theme_style.hpp"
#include "widgets/flow_line.hpp"
#include "widgets/record_table.hpp"
#include "widgets/two_line_check.hpp"

namespace gritwright::desktop {

namespace {

constexpr std::array<std::optional<RecordKind>, 5> listed_kinds{std::nullopt, RecordKind::bag, RecordKind::sieve_test, RecordKind::container, RecordKind::tree};

/// Lines as high as other targets.
class RoomyLines : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    constexpr QSize room(4, 10);
    return QStyledItemDelegate::sizeHint(option, index) + room;
  }
};

QPushButton* import_button(const char* object_name, const QString& text, QWidget* parent) {
  auto* button = new QPushButton(text, parent);
  button->setObjectName(QString::fromLatin1(object_name));
  button->setAccessibleName(text);
  button->setMinimumHeight(28);
  return button;
}

QString place_in_lines(const Place& place) {
  const QString in_file = place.column ? ImportPage::tr("line %1, character %2").arg(*place.line).arg(*place.column) : ImportPage::tr("line %1").arg(*place.line);
  return place.file ? comma_list({to_qt(*place.file), in_file}) : in_file;
}

}  // namespace

QString fault_text(const Problem& problem) {
  const QString place = problem.where.line ? place_in_lines(problem.where) : to_qt(place_text(problem.where));
  return place.isEmpty() ? sentence_text(problem) : with_label(place, sentence_text(problem));
}

ImportPage::ImportPage(RecordBook& book, const Catalogue& catalogue, QWidget* parent)
    : QWidget(parent),
      book_(book),
      import_(new RecordImport(book, catalogue, this)),
      table_model_(new ImportTableModel(this)),
      file_(new QLabel(this)),
      kind_(new QComboBox(this)),
      replace_(new TwoLineCheck(tr("Where a record here differs, the file's takes its place"), this)),
      summary_(new QLabel(this)),
      faults_(new QListWidget(this)),
      table_(new QTableView(this)),
      take_in_(import_button("import_take_in", tr("Take them in"), this)),
      again_(import_button("import_again", tr("Read the file again"), this)) {
  setObjectName(QStringLiteral("import_page"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 10, 10, 10);
  layout->setSpacing(8);
  auto* heading = new QLabel(tr("Records from a file"), this);
  heading->setProperty("role", "heading");
  auto* words = new QLabel(tr("A list of bags, sieve tests, pots or trees as a spreadsheet saves it (CSV), or records, one or all, as JSON. Nothing is taken in "
                              "before you say so, taking the same file in twice adds nothing twice, and one undo takes all of it back."),
                           this);
  words->setProperty("role", "muted");
  file_->setObjectName(QStringLiteral("import_file"));
  summary_->setObjectName(QStringLiteral("import_summary"));
  for (QLabel* label : {words, file_, summary_}) {
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
  }
  auto* choices = new FlowLine(this);
  auto* choose = import_button("import_choose", tr("Another file..."), this);
  kind_->setObjectName(QStringLiteral("import_kind"));
  kind_->setAccessibleName(tr("What the list holds"));
  kind_->addItems({tr("what its columns say"), tr("bags"), tr("sieve tests"), tr("pots"), tr("trees")});
  kind_->setMinimumHeight(28);
  replace_->setObjectName(QStringLiteral("import_replace"));
  replace_->setMinimumHeight(28);
  choices->add({}, choose);
  choices->add({}, again_);
  choices->add(tr("The &list holds"), kind_);
  faults_->setObjectName(QStringLiteral("import_faults"));
  faults_->setItemDelegate(new RoomyLines(faults_));
  faults_->setAccessibleName(tr("What is wrong in the file, by row"));
  faults_->setWordWrap(true);
  faults_->setTabKeyNavigation(false);
  table_->setObjectName(QStringLiteral("import_table"));
  table_->setAccessibleName(tr("Records of the file and what becomes of them"));
  table_->setModel(table_model_);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  show_as_record_list(*table_);
  auto* buttons = new QHBoxLayout;
  auto* leave = import_button("import_leave", tr("Close"), this);
  buttons->addWidget(take_in_);
  buttons->addWidget(leave);
  buttons->addStretch(1);
  layout->addWidget(heading);
  layout->addWidget(words);
  layout->addWidget(file_);
  layout->addWidget(choices);
  layout->addWidget(replace_);
  layout->addWidget(summary_);
  layout->addWidget(faults_, 1);
  layout->addWidget(table_, 2);
  layout->addLayout(buttons);
  connect(choose, &QPushButton::clicked, this, [this] { (void)choose_file(); });
  connect(again_, &QPushButton::clicked, this, &ImportPage::look);
  connect(kind_, &QComboBox::activated, this, &ImportPage::look);
  connect(replace_, &QCheckBox::toggled, this, &ImportPage::look);
  connect(take_in_, &QPushButton::clicked, import_, &RecordImport::take_in);
  connect(leave, &QPushButton::clicked, this, &ImportPage::left);
  connect(import_, &RecordImport::looked, this, &ImportPage::show_what_was_found);
  connect(import_, &RecordImport::taken_in, this, &ImportPage::tell_taken_in);
  connect(&import_->job(), &BackgroundJob::running_changed, this, [this, choose](bool running) {
    take_in_->setEnabled(import_->can_take_in());
    // A look now would drop the answer. While a file is only looked at the field that was used keeps the focus.
    const bool taking_in = import_->is_taking_in();
    for (QWidget* widget : std::initializer_list<QWidget*>{choose, kind_, replace_}) widget->setEnabled(!taking_in);
    again_->setEnabled(!taking_in && !path_.isEmpty());
    if (running) summary_->setText(tr("One moment..."));
  });
  fit();
  show_what_was_found();
}

bool ImportPage::choose_file() {
  const QString path = QFileDialog::getOpenFileName(this, tr("Records from a file"), path_, tr("Lists and records (*.csv *.json);;All files (*)"));
  if (path.isEmpty()) return false;
  show_file(path);
  return true;
}

void ImportPage::show_file(const QString& path) {
  if (import_->is_taking_in()) {
    waiting_ = path;
    return;
  }
  path_ = path;
  kind_->setCurrentIndex(0);
  const QSignalBlocker quiet(replace_);
  replace_->setChecked(false);
  look();
}

void ImportPage::look() {
  if (path_.isEmpty()) return;
  import_->look({path_, listed_kinds[static_cast<std::size_t>(std::max(0, kind_->currentIndex()))], replace_->isChecked()});
}

void ImportPage::show_what_was_found() {
  // What kept the records out is told all the same, where another file comes in sight now.
  if (!waiting_.isEmpty()) {
    for (const Problem& problem : import_->problems()) emit book_.told(fault_text(problem));
    return show_file(std::exchange(waiting_, {}));
  }
  const ImportPreview& preview = import_->preview();
  const Problems& problems = import_->problems();
  file_->setText(path_.isEmpty() ? tr("No file is chosen yet.") : path_);
  table_model_->show(preview, replace_->isChecked());
  faults_->clear();
  for (const Problem& problem : problems) faults_->addItem(fault_text(problem));
  // What is said of names that are nowhere keeps nothing out; the others say themselves what becomes of it.
  for (const Note& note : preview.notes)
    faults_->addItem(note.code == "import.names-unknown" ? tr("%1 (taken in all the same)").arg(sentence_text(note)) : sentence_text(note));
  faults_->setVisible(faults_->count() > 0);
  table_->setVisible(!preview.lines.empty());
  fit();
  const auto there = static_cast<int>(preview.count(Arrival::already_there));
  QStringList parts;
  if (!preview.lines.empty()) parts << tr("%n record(s) to take in", nullptr, static_cast<int>(import_->coming())) << tr("%n here already", nullptr, there);
  if (!problems.empty()) parts << tr("%n fault(s): mend them in the file and read it again; until then nothing is taken in", nullptr, static_cast<int>(problems.size()));
  summary_->setText(semicolon_list(parts));
  give_role(*summary_, problems.empty() ? QString() : QStringLiteral("fault"));
  again_->setEnabled(!path_.isEmpty());
  take_in_->setEnabled(import_->can_take_in());
}

void ImportPage::tell_taken_in(int records) {
  emit book_.told(tr("%n record(s) taken in; one undo takes them back.", nullptr, records));
  path_.clear();
  if (!waiting_.isEmpty()) return show_file(std::exchange(waiting_, {}));
  show_what_was_found();
  emit left();
}

void ImportPage::take_focus() { again_->isEnabled() ? again_->setFocus() : findChild<QWidget*>(QStringLiteral("import_choose"))->setFocus(); }

void ImportPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

void ImportPage::fit() {
  constexpr int around = 24;
  const QFontMetrics metrics = fontMetrics();
  for (const auto& [column, usual] : {std::pair{0, "WW-000"}, {2, "sieve test"}, {3, "differs from the one here"}}) {
    table_->resizeColumnToContents(column);
    table_->setColumnWidth(column, std::max(metrics.horizontalAdvance(QString::fromLatin1(usual)) + around, table_->columnWidth(column) + around / 2));
  }
  table_->verticalHeader()->setDefaultSectionSize(std::max(26, metrics.height() + 8));
}

}  // namespace gritwright::desktop
