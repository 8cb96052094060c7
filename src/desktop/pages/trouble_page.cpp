#include "trouble_page.hpp"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "text.hpp"
#include "widgets/backups_card.hpp"
#include "widgets/column_scroll.hpp"

namespace gritwright::desktop {

TroublePage::TroublePage(const RecordTrouble& trouble, QWidget* parent) : QWidget(parent), backups_(new BackupsCard(trouble.file, trouble.backups, this)) {
  setObjectName(QStringLiteral("trouble_page"));
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(8, 8, 8, 8);
  auto* column = new QWidget(this);
  auto* layout = new QVBoxLayout(column);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  auto* card = new QFrame(column);
  card->setObjectName(QStringLiteral("card"));
  auto* inner = new QVBoxLayout(card);
  inner->setContentsMargins(10, 8, 10, 8);
  inner->setSpacing(8);
  auto* heading = new QLabel(tr("The record could not be opened"), card);
  heading->setProperty("role", "heading");
  QStringList sentences;
  for (const Problem& problem : trouble.problems) sentences << sentence_text(problem);
  auto* why = new QLabel(tr("%1: %2.").arg(to_qt(trouble.file.string()), semicolon_list(sentences)), card);
  why->setObjectName(QStringLiteral("trouble_why"));
  auto* calm = new QLabel(tr("The file was not changed, and what lies on the bench is kept. A backup that is restored takes the file's place; the file itself stays beside "
                             "it under a name of its own, so nothing is overwritten."),
                          card);
  for (QLabel* label : {heading, why, calm}) {
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    inner->addWidget(label);
  }
  newest_ = add_button("trouble_restore", {});
  connect(newest_, &QPushButton::clicked, this, [this] {
    if (const auto backup = backups_->newest_whole()) emit restore_wanted(to_qt(backup->file.string()));
  });
  QPushButton* reading = add_button("trouble_read_only", tr("Open it for reading only"));
  // What a damaged file would show could be wrong, so its backups can be looked into and it can't.
  const std::string& code = trouble.problems.front().code;
  reading->setVisible(code == "file.newer-version" || code == "file.locked" || code == "file.read-only" || code == "workbook.not-migrated" || code == "file.disk-full");
  const QString file = to_qt(trouble.file.string());
  connect(reading, &QPushButton::clicked, this, [this, file] { emit open_wanted(file, true); });
  QPushButton* other = add_button("trouble_other", tr("Open another record..."));
  connect(other, &QPushButton::clicked, this, &TroublePage::other_wanted);
  again_ = add_button("trouble_again", tr("Try this one again"));
  connect(again_, &QPushButton::clicked, this, [this, file] { emit open_wanted(file, false); });
  by_command_ = new QLabel(tr("Without a backup the command line can still read what is whole and write it into a file: %1")
                               .arg(QStringLiteral("gritwright log export --read-only --workbook \"%1\" --output record.json").arg(file)),
                           card);
  by_command_->setObjectName(QStringLiteral("trouble_by_command"));
  by_command_->setTextFormat(Qt::PlainText);
  by_command_->setWordWrap(true);
  by_command_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  is_damaged_ = code == "file.damaged";
  inner->addWidget(by_command_);
  for (QPushButton* button : {newest_, reading, other, again_}) inner->addWidget(button, 0, Qt::AlignLeft);
  layout->addWidget(card);
  layout->addWidget(backups_);
  layout->addStretch(1);
  outer->addWidget(new ColumnScroll(column, this));
  connect(backups_, &BackupsCard::restore_wanted, this, &TroublePage::restore_wanted);
  connect(backups_, &BackupsCard::look_wanted, this, [this](const QString& backup) { emit open_wanted(backup, true); });
  connect(backups_, &BackupsCard::looked_through, this, &TroublePage::show_newest);
  backups_->refresh();
  show_newest();
}

QPushButton* TroublePage::add_button(const char* object_name, const QString& text) {
  auto* button = new QPushButton(text, this);
  button->setObjectName(QString::fromLatin1(object_name));
  button->setAccessibleName(text);
  button->setMinimumHeight(28);
  return button;
}

void TroublePage::show_newest() {
  const auto backup = backups_->newest_whole();
  newest_->setVisible(backup.has_value());
  by_command_->setVisible(is_damaged_ && !backup);
  if (!backup) return;
  newest_->setText(tr("Restore the newest intact backup: %1").arg(backup_text(*backup)));
  newest_->setAccessibleName(newest_->text());
}

void TroublePage::take_focus() { (newest_->isVisible() ? newest_ : again_)->setFocus(); }

}  // namespace gritwright::desktop
