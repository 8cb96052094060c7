#include "record_session.hpp"

#include <QApplication>
#include <QFileInfo>
#include <chrono>
#include <utility>

#include "gritwright/domain/record_ref.hpp"
#include "gritwright/workbook/backups.hpp"
#include "pages/trouble_page.hpp"
#include "text.hpp"

namespace gritwright::desktop {

RecordSession::RecordSession(Bench& bench, QString usual, QString backups_folder, QObject* parent)
    : QObject(parent), bench_(bench), usual_(std::move(usual)), backups_folder_(std::move(backups_folder)) {}

RecordSession::~RecordSession() = default;

void RecordSession::open(const QString& file, Access access) {
  // While the one window goes and the other comes there is none, and that is not the end of the program.
  const bool quits = QApplication::quitOnLastWindowClosed();
  QApplication::setQuitOnLastWindowClosed(false);
  close();
  if (!file_.isEmpty() && QFileInfo(file) != QFileInfo(file_)) forget_numbers();
  file_ = file;
  // Backups of the usual record lie where the grower chose; any other file has its own beside it.
  auto opened = RecordBook::open(file, file == usual_ ? backups_folder_ : QString(), access);
  const Problems problems = opened.problems();
  if (opened) record_ = std::move(opened).value();
  make_window(problems);
  QApplication::setQuitOnLastWindowClosed(quits);
}

void RecordSession::close() {
  if (window_ == nullptr) return;
  window_->close();
  window_.reset();
  record_.reset();
  bench_.set_known({});
  bench_.set_surroundings({});
}

void RecordSession::forget_numbers() {
  bench_.end_typing();
  bench_.edit(tr("bag and pot numbers of the record before"), {}, [](BenchState& state) {
    for (ComponentSheet& component : state.components) component.bag.clear();
    state.find.also_pots.clear();
    std::erase_if(state.find.candidates, [](const CandidateText& one) {
      const auto ref = ref_named(one.key.toStdString());
      // Materials go by their name, not by a number of the record.
      return ref && ref->kind != RecordKind::material;
    });
  });
}

void RecordSession::make_window(const Problems& problems) {
  Problems found = problems;
  try {
    window_ = std::make_unique<MainWindow>(bench_, record_.get());
  } catch (const WorkbookTrouble& trouble) {
    // A large file is not looked through before its pages read it.
    record_.reset();
    found.push_back(trouble.problem());
    window_ = std::make_unique<MainWindow>(bench_, nullptr);
  }
  if (record_ != nullptr && (file_ != usual_ || record_->is_read_only())) window_->mark_record(QFileInfo(file_).fileName(), record_->is_read_only());
  const std::filesystem::path file = file_.toStdString();
  const std::filesystem::path folder = file_ == usual_ && !backups_folder_.isEmpty() ? std::filesystem::path(backups_folder_.toStdString()) : default_backup_folder(file);
  if (record_ == nullptr) window_->show_trouble({file, folder, found});
  // Queued, since what is clicked belongs to the window that goes.
  connect(window_.get(), &MainWindow::record_wanted, this,
          [this](const QString& wanted, bool read_only) { open(wanted.isEmpty() ? usual_ : wanted, read_only ? Access::read_only : Access::write); }, Qt::QueuedConnection);
  connect(window_.get(), &MainWindow::restore_wanted, this, &RecordSession::restore, Qt::QueuedConnection);
  emit window_made(window_.get());
  window_->show();
}

void RecordSession::restore(const QString& backup) {
  const bool quits = QApplication::quitOnLastWindowClosed();
  QApplication::setQuitOnLastWindowClosed(false);
  close();
  const auto kept = gritwright::restore(backup.toStdString(), file_.toStdString(), [] { return std::chrono::system_clock::now(); });
  open(file_);
  QApplication::setQuitOnLastWindowClosed(quits);
  if (!kept) emit bench_.told(tr("Nothing was restored: %1").arg(sentence_text(kept.problems().front())));
  else if (*kept) emit bench_.told(tr("Restored. The record as it was is kept as %1.").arg(to_qt((*kept)->string())));
  else emit bench_.told(tr("Restored."));
}

}  // namespace gritwright::desktop
