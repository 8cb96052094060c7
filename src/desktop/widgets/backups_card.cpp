#include "backups_card.hpp"

#include <QDate>
#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "flow_line.hpp"
#include "record_table.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

QString backup_day(const BackupFile& backup) {
  const QString day = QLocale().toString(QDate::fromString(to_qt(backup.day), Qt::ISODate), QLocale::LongFormat);
  return backup.before_migration ? BackupsCard::tr("%1, before an update of the program").arg(day) : day;
}

QString bytes_text(const BackupFile& backup) { return QLocale().formattedDataSize(static_cast<qint64>(backup.bytes), 1, QLocale::DataSizeSIFormat); }

}  // namespace

QString backup_text(const BackupFile& backup) { return comma_list({backup_day(backup), bytes_text(backup)}); }

BackupsCard::BackupsCard(std::filesystem::path record, std::filesystem::path folder, QWidget* parent)
    : QFrame(parent),
      record_(std::move(record)),
      folder_(std::move(folder)),
      table_(new QTableWidget(0, 3, this)),
      words_(new QLabel(this)),
      restore_(new QPushButton(tr("Restore this backup..."), this)),
      look_(new QPushButton(tr("Look into it, reading only"), this)) {
  setObjectName(QStringLiteral("card"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 8, 10, 8);
  auto* heading = new QLabel(tr("Backups of the record"), this);
  heading->setProperty("role", "heading");
  words_->setObjectName(QStringLiteral("backups_words"));
  words_->setWordWrap(true);
  words_->setProperty("role", "muted");
  table_->setObjectName(QStringLiteral("backups_table"));
  table_->setAccessibleName(tr("Backups of the record, newest first"));
  table_->setHorizontalHeaderLabels({tr("day"), tr("checked"), tr("size")});
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  show_as_record_list(*table_);
  restore_->setObjectName(QStringLiteral("backups_restore"));
  look_->setObjectName(QStringLiteral("backups_look"));
  auto* buttons = new FlowLine(this);
  for (QPushButton* button : {restore_, look_}) {
    button->setAccessibleName(button->text());
    button->setMinimumHeight(28);
    buttons->add({}, button);
  }
  layout->addWidget(heading);
  layout->addWidget(words_);
  layout->addWidget(table_);
  layout->addWidget(buttons);
  connect(table_, &QTableWidget::itemSelectionChanged, this, &BackupsCard::show_buttons);
  connect(restore_, &QPushButton::clicked, this, [this] {
    if (const Row* row = chosen()) emit restore_wanted(to_qt(row->backup.file.string()));
  });
  connect(look_, &QPushButton::clicked, this, [this] {
    if (const Row* row = chosen()) emit look_wanted(to_qt(row->backup.file.string()));
  });
  show_rows();
}

void BackupsCard::refresh() {
  job_.cancel();
  rows_.clear();
  for (BackupFile& backup : backups_of(record_, folder_)) rows_.push_back({std::move(backup), State::waiting, {}});
  show_rows();
  look_through_next();
}

// One at a time, so that the newest has its answer first.
void BackupsCard::look_through_next() {
  const auto waiting = std::ranges::find(rows_, State::waiting, &Row::state);
  if (waiting == rows_.end()) return;
  const auto at = static_cast<std::size_t>(waiting - rows_.begin());
  job_.start([this, at, file = waiting->backup.file](const std::stop_token&, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
    return [this, at, problems = check_file(file)] {
      rows_[at].state = problems.empty() ? State::whole : State::damaged;
      if (!problems.empty()) rows_[at].trouble = sentence_text(problems.front());
      show_rows();
      emit looked_through();
      look_through_next();
    };
  });
}

std::optional<BackupFile> BackupsCard::newest_whole() const {
  const auto found = std::ranges::find(rows_, State::whole, &Row::state);
  return found == rows_.end() ? std::nullopt : std::optional(found->backup);
}

const BackupsCard::Row* BackupsCard::chosen() const {
  const auto row = static_cast<std::size_t>(table_->currentRow());
  return table_->currentRow() >= 0 && row < rows_.size() ? &rows_[row] : nullptr;
}

void BackupsCard::show_rows() {
  const int current = std::max(0, table_->currentRow());
  table_->setRowCount(static_cast<int>(rows_.size()));
  for (int at = 0; at < table_->rowCount(); ++at) {
    const Row& row = rows_[static_cast<std::size_t>(at)];
    const QString state = row.state == State::waiting ? tr("not yet") : row.state == State::whole ? tr("intact") : tr("damaged");
    const QStringList cells{backup_day(row.backup), state, bytes_text(row.backup)};
    for (int column = 0; column < cells.size(); ++column) {
      auto* item = new QTableWidgetItem(cells[column]);
      item->setToolTip(row.trouble.isEmpty() ? to_qt(row.backup.file.string()) : row.trouble);
      table_->setItem(at, column, item);
    }
  }
  if (table_->rowCount() > 0) table_->setCurrentCell(std::min(current, table_->rowCount() - 1), 0);
  words_->setText(rows_.empty() ? tr("None yet. The first is made before the first change of another day, into %1.").arg(to_qt(folder_.string()))
                                : tr("In %1. One is made before the first change of a day; those of the last 10 days and the last one of each of 12 months are kept.")
                                      .arg(to_qt(folder_.string())));
  table_->setVisible(!rows_.empty());
  show_buttons();
  fit();
}

void BackupsCard::show_buttons() {
  const Row* row = chosen();
  for (QPushButton* button : {restore_, look_}) {
    button->setVisible(!rows_.empty());
    button->setEnabled(row != nullptr && row->state != State::damaged);
  }
}

void BackupsCard::changeEvent(QEvent* event) {
  QFrame::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

void BackupsCard::fit() {
  constexpr int most_in_sight = 6;
  const QFontMetrics metrics = fontMetrics();
  const int line = std::max(26, metrics.height() + 10);
  table_->verticalHeader()->setDefaultSectionSize(line);
  int day = 0;
  for (const Row& row : rows_) day = std::max(day, metrics.horizontalAdvance(backup_day(row.backup)));
  table_->setColumnWidth(0, day + 30);
  table_->setColumnWidth(2, metrics.horizontalAdvance(QStringLiteral("999.9 MB")) + 30);
  table_->setFixedHeight((std::min(table_->rowCount(), most_in_sight) + 1) * line + 2 * table_->frameWidth() + 4);
}

}  // namespace gritwright::desktop
