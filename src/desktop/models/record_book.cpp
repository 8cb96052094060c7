#include "record_book.hpp"

#include <QCryptographicHash>
#include <QDate>
#include <QFile>
#include <QFileInfo>
#include <QSettings>
#include <QTimer>
#include <algorithm>
#include <array>
#include <chrono>

#include "text.hpp"

namespace gritwright::desktop {

namespace {

constexpr int look_every_ms = 500;

/// Lines kept under one key come to stand under another.
void take_over_lines(QSettings& settings, const QString& from, const QString& to) {
  for (const char* group : {"typed", "measuring"}) {
    const QString was = QStringLiteral("%1/%2").arg(QLatin1String(group), from);
    settings.beginGroup(was);
    const QStringList lines = settings.allKeys();
    settings.endGroup();
    for (const QString& line : lines) settings.setValue(QStringLiteral("%1/%2/%3").arg(QLatin1String(group), to, line), settings.value(was + u'/' + line));
    settings.remove(was);
  }
}

/// Where no lines are kept and no file is any more, nothing needs to be known.
void forget_gone_files(QSettings& settings) {
  settings.beginGroup(QStringLiteral("records"));
  const QStringList known = settings.childKeys();
  settings.endGroup();
  for (const QString& id : known) {
    if (QFile::exists(settings.value(QStringLiteral("records/") + id).toString())) continue;
    const bool keeps_lines = std::ranges::any_of(std::array{"typed", "measuring"}, [&](const char* group) {
      settings.beginGroup(QStringLiteral("%1/%2").arg(QLatin1String(group), id));
      const bool any = !settings.allKeys().isEmpty();
      settings.endGroup();
      return any;
    });
    if (!keeps_lines) settings.remove(QStringLiteral("records/") + id);
  }
}

/// By the record's own id, so that a file that was moved finds its lines. Copies and backups have the same id: what lies beside the file that
/// the id was last seen in goes by its path, as every file did in earlier versions.
QString key_among_settings(const QString& file, const QString& own_id, bool is_read_only) {
  QString by_path = QString::fromLatin1(QCryptographicHash::hash(file.toUtf8(), QCryptographicHash::Sha1).toHex().left(12));
  if (own_id.isEmpty()) return by_path;
  QSettings settings;
  const QString seen_in = QStringLiteral("records/") + own_id;
  const QString before = settings.value(seen_in).toString();
  // However it is spelt, and through a link too, it is the same file.
  const QString here = QFileInfo(file).canonicalFilePath();
  if (!before.isEmpty() && before != here && QFile::exists(before)) return by_path;
  if (is_read_only) return own_id;
  forget_gone_files(settings);
  settings.setValue(seen_in, here);
  take_over_lines(settings, by_path, own_id);
  return own_id;
}

}  // namespace

Result<std::unique_ptr<RecordBook>> RecordBook::open(const QString& file, const QString& backups_folder, Access access) {
  OpeningOptions options;
  options.clock = [] { return std::chrono::system_clock::now(); };
  options.access = access;
  if (!backups_folder.isEmpty()) options.backup_folder = backups_folder.toStdString();
  auto opened = OpenWorkbook::open(file.toStdString(), std::move(options));
  if (!opened) return opened.problems();
  return std::unique_ptr<RecordBook>(new RecordBook(std::move(opened).value()));
}

RecordBook::RecordBook(OpenWorkbook workbook)
    : workbook_(std::move(workbook)), settings_key_(key_among_settings(file(), to_qt(workbook_.own_id()), is_read_only())), seen_revision_(workbook_.revision()) {
  auto* timer = new QTimer(this);
  connect(timer, &QTimer::timeout, this, &RecordBook::look_for_changes);
  timer->start(look_every_ms);
}

QString RecordBook::file() const { return QString::fromStdString(workbook_.file().string()); }

bool RecordBook::finish(const Result<Applied>& applied) {
  if (!applied) {
    emit told(sentence_text(applied.problems().front()));
    // A stale change means that the page shows something old: it reads again.
    announce();
    return false;
  }
  attempt([this] { seen_revision_ = workbook_.revision(); });
  announce();
  return true;
}

// A page that can't be read must not undo the news that a change was saved.
void RecordBook::announce() {
  attempt([this] { emit changed(); });
}

void RecordBook::tell(const WorkbookTrouble& trouble) { emit told(sentence_text(trouble.problem())); }

bool RecordBook::apply(Change change) { return finish(workbook_.apply(std::move(change))); }

Problems RecordBook::change(const std::function<Result<Applied>(OpenWorkbook&)>& work) {
  const auto applied = work(workbook_);
  if (!applied) return applied.problems();
  (void)finish(applied);
  return {};
}

QString RecordBook::added(Edit edit, const QString& label, std::optional<LogEntry> log) {
  Change change;
  change.label = label.toStdString();
  change.edits.push_back(std::move(edit));
  change.log = std::move(log);
  const auto applied = workbook_.apply(std::move(change));
  return finish(applied) ? to_qt(applied->revisions.front().first.id) : QString();
}

bool RecordBook::changed_to(Edit edit, const QString& label, const QString& merge_key) {
  Change change;
  change.label = label.toStdString();
  change.edits.push_back(std::move(edit));
  change.merge_key = merge_key.toStdString();
  return apply(std::move(change));
}

void RecordBook::undo() {
  attempt([this] {
    emit undo_wanted();
    const auto step = workbook_.undo();
    emit told(step ? tr("Undone: %1").arg(to_qt(step->label)) : sentence_text(step.problems().front()));
    emit undone();
    emit changed();
  });
}

void RecordBook::redo() {
  attempt([this] {
    emit undo_wanted();
    const auto step = workbook_.redo();
    emit told(step ? tr("Done again: %1").arg(to_qt(step->label)) : sentence_text(step.problems().front()));
    emit undone();
    emit changed();
  });
}

QString RecordBook::undo_text() const {
  const auto step = workbook_.undoable();
  return step ? to_qt(step->label) : QString();
}

QString RecordBook::redo_text() const {
  const auto step = workbook_.redoable();
  return step ? to_qt(step->label) : QString();
}

void RecordBook::look_for_changes() {
  // Nobody above a timer catches what a file that was taken away or damaged throws; it is told once, not at every look.
  try {
    // In one go: told one by one, the last would cover the others.
    QStringList sentences;
    for (const Note& note : workbook_.take_notes()) sentences << sentence_text(note);
    if (!sentences.isEmpty()) emit told(semicolon_list(sentences));
    const std::int64_t revision = workbook_.revision();
    trouble_.clear();
    if (revision == seen_revision_) return;
    seen_revision_ = revision;
    emit changed();
  } catch (const WorkbookTrouble& trouble) {
    const QString sentence = sentence_text(trouble.problem());
    if (sentence == trouble_) return;
    trouble_ = sentence;
    emit told(sentence);
  }
}

LogEntry event_about(const RecordRef& about, const QString& text, const std::string& day) {
  LogEntry entry;
  entry.day = day;
  entry.text = with_plain_spaces(text).toStdString();
  entry.about = {about};
  return entry;
}

Problem not_there(const RecordRef& ref) { return {"workbook.not-there", {}, {{"kind", std::string(kind_name(ref.kind))}, {"id", ref.id}}}; }

std::string today() { return QDate::currentDate().toString(Qt::ISODate).toStdString(); }

}  // namespace gritwright::desktop
