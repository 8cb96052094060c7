#include "record_import.hpp"

#include <QFileInfo>
#include <chrono>
#include <utility>

#include "bench_files.hpp"
#include "gritwright/formats/incoming_records.hpp"
#include "material_words.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

/// What a look at a file found.
struct Looked {
  std::vector<IdentifiedRecord> records;
  ImportPreview preview;
  Problems problems;
};

Result<OpenWorkbook> another_connection(const std::filesystem::path& file, const std::filesystem::path& backups, Access access) {
  OpeningOptions options;
  options.clock = [] { return std::chrono::system_clock::now(); };
  options.access = access;
  options.create = false;
  options.backup_folder = backups;
  return OpenWorkbook::open(file, std::move(options));
}

Looked look_at(const RecordImport::Request& request, const std::filesystem::path& workbook, const std::filesystem::path& backups, const Catalogue& catalogue) {
  Looked looked;
  const auto text = read_text_file(request.file, largest_exchange_mb);
  if (!text) return {{}, {}, text.problems()};
  auto incoming = read_incoming(*text, QFileInfo(request.file).fileName().toStdString(), request.kind, ComponentSources{&catalogue, {}});
  if (!incoming) return {{}, {}, incoming.problems()};
  const auto opened = another_connection(workbook, backups, Access::read_only);
  if (!opened) return {{}, {}, opened.problems()};
  looked.records = std::move(incoming->records);
  looked.problems = std::move(incoming->problems);
  try {
    looked.preview = preview_import(*opened, looked.records, ImportOptions{request.replace, &catalogue});
  } catch (const WorkbookTrouble& trouble) {
    return {{}, {}, {trouble.problem()}};
  }
  append(looked.problems, looked.preview.problems);
  return looked;
}

/// How many records came in.
Result<std::size_t> bring_in(const std::vector<IdentifiedRecord>& records, const std::string& label, bool replaces, const std::filesystem::path& file,
                             const std::filesystem::path& backups) {
  auto opened = another_connection(file, backups, Access::write);
  if (!opened) return opened.problems();
  OpenWorkbook workbook = std::move(opened).value();
  try {
    const auto imported = import_records(workbook, records, label, ImportOptions{replaces, nullptr});
    if (!imported) return imported.problems();
    return imported->preview.lines.size() - imported->preview.count(Arrival::already_there);
  } catch (const WorkbookTrouble& trouble) {
    return trouble.problem();
  }
}

QString arrival_text(Arrival arrival, bool replaces) {
  switch (arrival) {
    case Arrival::added: return RecordImport::tr("new");
    case Arrival::already_there: return RecordImport::tr("here already, left alone");
    case Arrival::comes_back: return RecordImport::tr("comes back");
    case Arrival::differs: return replaces ? RecordImport::tr("replaces the one here") : RecordImport::tr("differs from the one here");
  }
  return {};
}

}  // namespace

RecordImport::RecordImport(RecordBook& book, const Catalogue& catalogue, QObject* parent) : QObject(parent), book_(book), catalogue_(catalogue) {}

bool RecordImport::look(const Request& request) {
  if (is_taking_in()) return false;
  request_ = request;
  taking_in_ = false;
  job_.start([this, request, file = book_.workbook().file(), backups = book_.workbook().backup_folder(), &catalogue = catalogue_](
                 const std::stop_token&, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
    return [this, looked = look_at(request, file, backups, catalogue)]() mutable {
      records_ = std::move(looked.records);
      preview_ = std::move(looked.preview);
      problems_ = std::move(looked.problems);
      emit this->looked();
    };
  });
  return true;
}

std::size_t RecordImport::coming() const { return preview_.lines.size() - preview_.count(Arrival::already_there); }

void RecordImport::take_in() {
  if (!can_take_in()) return;
  // Beside the window, which sees the change as it sees any other program's.
  taking_in_ = true;
  const std::string label = tr("import of %1").arg(QFileInfo(request_.file).fileName()).toStdString();
  job_.start([this, label, records = records_, replace = request_.replace, file = book_.workbook().file(), backups = book_.workbook().backup_folder()](
                 const std::stop_token&, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
    return [this, count = bring_in(records, label, replace, file, backups)] {
      problems_ = count.problems();
      book_.look_for_changes();
      if (!count) return emit looked();
      records_.clear();
      preview_ = {};
      emit taken_in(static_cast<int>(*count));
    };
  });
}

void ImportTableModel::show(const ImportPreview& preview, bool replaces) {
  beginResetModel();
  lines_ = preview.lines;
  replaces_ = replaces;
  endResetModel();
}

int ImportTableModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(lines_.size()); }

int ImportTableModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : 4; }

QVariant ImportTableModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || (role != Qt::DisplayRole && role != Qt::ToolTipRole)) return {};
  const ImportLine& line = lines_[static_cast<std::size_t>(index.row())];
  switch (index.column()) {
    case 0: return line.record.ref.id.empty() ? tr("the next free") : to_qt(line.record.ref.id);
    case 1: return title_words(line.record.ref.kind, line.title);
    case 2: return kind_text(line.record.ref.kind);
    default: return arrival_text(line.arrival, replaces_);
  }
}

QVariant ImportTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation == Qt::Vertical || role != Qt::DisplayRole) return {};
  const QString headings[] = {tr("no."), tr("what"), tr("kind"), tr("what becomes of it")};
  return headings[section];
}

}  // namespace gritwright::desktop
