#include "bench_draft.hpp"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QDataStream>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QStandardPaths>
#include <utility>

#include "gritwright/workbook/default_workbook.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

constexpr quint32 mark = 0x47724264;  // so that no other file is taken for a draft
constexpr quint32 version = 9;
constexpr quint32 version_without_tables_of_areas = 8;
constexpr quint32 version_without_screening_days = 7;
constexpr quint32 version_without_predictions = 6;
constexpr quint32 version_of_one_pot = 5;  // a search asked of one further pot, or none
constexpr quint32 most_rows = 1000;

QString whole_path(const QString& file) {
  const QString real = QFileInfo(file).canonicalFilePath();
  return real.isEmpty() ? QFileInfo(file).absoluteFilePath() : real;
}

/// One list of what is in a draft, for writing and for reading alike.
template <class Archive, class Pan>
void pass(Archive& archive, Pan& pan) {
  archive(pan.aperture);
  archive(pan.retained);
  archive(pan.tare);
  archive(pan.crumbs);
}

template <class Archive, class Component>
void pass_component(Archive& archive, Component& component) {
  archive(component.name);
  archive(component.material);
  archive(component.parts);
  archive(component.bag);
  archive(component.grain.bulk_density);
  archive(component.grain.particle_density);
  archive(component.grain.skeletal_density);
  archive(component.grain.water_absorption);
  auto& sheet = component.sheet;
  archive.choice(sheet.measure, Measure::litres);
  archive.list(sheet.rows, [&](auto& row) { pass(archive, row); });
  pass(archive, sheet.pan);
  archive.list(sheet.replicates, [&](auto& replicate) {
    archive.list(replicate.retained, [&](auto& text) { archive(text); });
    archive(replicate.pan);
    archive(replicate.dry_mass);
  });
  archive(sheet.dry_mass);
  archive(sheet.washed_dry_mass);
  archive(sheet.moisture);
  archive(sheet.sieve_diameter);
  archive(sheet.resolution);
  archive(sheet.on_recovered_mass);
  archive(component.screening.openings);
  archive(component.screening.screened);
  archive.list(component.screening.measured, [&](auto& row) { pass(archive, row); });
}

template <class Archive, class Sheet>
void pass_find(Archive& archive, Sheet& sheet) {
  archive(sheet.profile);
  archive.pots(sheet.also_pots);
  archive(sheet.dust_size);
  for (auto& wish : sheet.wishes) {
    archive(wish.least);
    archive(wish.most);
    archive(wish.hard);
    archive(wish.weight);
  }
  archive.list(sheet.candidates, [&](auto& candidate) {
    archive(candidate.key);
    archive.choice(candidate.use, CandidateText::Use::left_out);
    archive(candidate.stock);
    archive(candidate.price);
    archive(candidate.least_share);
    archive(candidate.most_share);
  });
  archive(sheet.need);
  archive(sheet.components);
  archive(sheet.total);
  archive(sheet.whole);
}

template <class Archive, class State>
void pass_state(Archive& archive, State& state) {
  archive.list(state.components, [&](auto& component) { pass_component(archive, component); });
  archive(state.mix_name);
  archive(state.band_from);
  archive(state.band_to);
  archive(state.settling);
  archive(state.spill);
  auto& pot = state.pot;
  archive.choice(pot.shape, Shape::profile);
  for (auto* text : {&pot.rim_length, &pot.rim_width, &pot.base_length, &pot.base_width, &pot.middle, &pot.exponent, &pot.depth, &pot.freeboard,
                     &pot.water_fill, &pot.saucer, &pot.wick, &pot.tilt, &pot.mound_rise, &pot.corner_radius, &pot.fillet_radius, &pot.mass}) {
    archive(*text);
  }
  archive.choice(pot.tilt_axis, TiltAxis::width);
  archive.choice(pot.mound_form, MoundForm::ellipsoid);
  pass_find(archive, state.find);
  // Earlier drafts end here.
  for (auto& component : state.components) archive.after(version_without_predictions, component.sheet.predicted);
  auto& band = state.find.band;
  for (auto* text : {&band.from, &band.to, &band.from_before, &band.to_before}) archive.after(version_without_predictions, *text);
  for (auto& component : state.components) archive.after(version_without_screening_days, component.screening.day);
  archive.after(version_without_tables_of_areas, pot.areas);
}

class Writer {
 public:
  explicit Writer(QDataStream& stream) : stream_(stream) {}
  void operator()(const QString& text) { stream_ << text; }
  void operator()(bool flag) { stream_ << flag; }
  template <class Choice>
  void choice(const Choice& value, Choice) {
    stream_ << static_cast<quint32>(value);
  }
  template <class List, class Each>
  void list(const List& items, Each each) {
    stream_ << static_cast<quint32>(items.size());
    for (const auto& item : items) each(item);
  }
  template <class Value>
  void after(quint32, const Value& value) {
    (*this)(value);
  }
  void pots(const std::vector<QString>& ids) {
    list(ids, [&](const QString& id) { (*this)(id); });
  }

 private:
  QDataStream& stream_;
};

class Reader {
 public:
  Reader(QDataStream& stream, quint32 of_version) : stream_(stream), of_version_(of_version) {}
  void operator()(QString& text) { stream_ >> text; }
  void operator()(bool& flag) { stream_ >> flag; }
  template <class Choice>
  void choice(Choice& value, Choice last) {
    quint32 number = 0;
    stream_ >> number;
    if (number > static_cast<quint32>(last)) stream_.setStatus(QDataStream::ReadCorruptData);
    else value = static_cast<Choice>(number);
  }
  template <class List, class Each>
  void list(List& items, Each each) {
    quint32 count = 0;
    stream_ >> count;
    if (count > most_rows) stream_.setStatus(QDataStream::ReadCorruptData);
    items.clear();
    for (quint32 i = 0; i < count && stream_.status() == QDataStream::Ok; ++i) {
      items.emplace_back();
      each(items.back());
    }
  }
  template <class Value>
  void after(quint32 last_without, Value& value) {
    if (of_version_ > last_without) (*this)(value);
  }
  void pots(std::vector<QString>& ids) {
    if (of_version_ != version_of_one_pot) return list(ids, [&](QString& id) { (*this)(id); });
    QString only;
    (*this)(only);
    ids.clear();
    if (!only.isEmpty()) ids.push_back(only);
  }

 private:
  QDataStream& stream_;
  quint32 of_version_;
};

}  // namespace

bool write_draft(const QString& file, const BenchState& state) {
  QSaveFile target(file);
  if (!target.open(QIODevice::WriteOnly)) return false;
  target.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner);
  QDataStream stream(&target);
  stream.setVersion(QDataStream::Qt_6_4);
  stream << mark << version;
  Writer writer(stream);
  pass_state(writer, state);
  return stream.status() == QDataStream::Ok && target.commit();
}

std::optional<BenchState> read_draft(const QString& file) {
  QFile source(file);
  if (!source.open(QIODevice::ReadOnly)) return std::nullopt;
  QDataStream stream(&source);
  stream.setVersion(QDataStream::Qt_6_4);
  quint32 found_mark = 0;
  quint32 found_version = 0;
  stream >> found_mark >> found_version;
  if (found_mark != mark || found_version < version_of_one_pot || found_version > version) return std::nullopt;
  BenchState state;
  Reader reader(stream, found_version);
  pass_state(reader, state);
  if (stream.status() != QDataStream::Ok || state.components.empty()) return std::nullopt;
  return state;
}

bool set_aside_unreadable_draft(const QString& file) {
  if (!QFile::exists(file) || read_draft(file)) return true;
  for (int number = 1; number < 1000; ++number) {
    const QString aside = file + QStringLiteral(".unread-%1").arg(number);
    if (!QFile::exists(aside)) return QFile::rename(file, aside);
  }
  return false;
}

QString BenchKeeper::usual_folder() { return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation); }

BenchKeeper::BenchKeeper(Bench& bench, QString folder) : bench_(bench), folder_(std::move(folder)) {
  QDir().mkpath(folder_);
  // Every sign typed is on disk a moment later; the moment keeps a dragged slider from writing sixty files a second.
  saving_.setSingleShot(true);
  saving_.setInterval(300);
  connect(&saving_, &QTimer::timeout, this, &BenchKeeper::save);
  connect(&bench_, &Bench::changed, this, [this] {
    // Whoever types without a pause is not unsaved for longer than that.
    constexpr int most_unsaved_ms = 1000;
    if (!saving_.isActive()) unsaved_since_.start();
    if (!saving_.isActive() || unsaved_since_.elapsed() < most_unsaved_ms) saving_.start();
  });
}

BenchKeeper::~BenchKeeper() { save(); }

void BenchKeeper::turn_to(const QString& record) {
  const QString place = whole_path(record);
  if (place == record_) return;
  record_ = place;
  QString name = QStringLiteral("bench");
  if (place != whole_path(to_qt(default_workbook_file().string())))
    name += u'-' + QString::fromLatin1(QCryptographicHash::hash(place.toUtf8(), QCryptographicHash::Sha1).toHex().left(16));
  lock_.reset();
  constexpr int most_windows = 100;
  for (int window = 1; window <= most_windows; ++window) {
    file_ = folder_ + u'/' + name + (window == 1 ? QString() : QStringLiteral(".%1").arg(window)) + QStringLiteral(".draft");
    lock_ = std::make_unique<QLockFile>(file_ + QStringLiteral(".lock"));
    // Held for as long as its process lives.
    lock_->setStaleLockTime(0);
    if (lock_->tryLock() || lock_->error() != QLockFile::LockFailedError) break;
  }
  if (const auto draft = read_draft(file_)) bench_.open(*draft);
  may_write_ = set_aside_unreadable_draft(file_);
}

void BenchKeeper::save() {
  saving_.stop();
  if (file_.isEmpty()) return;
  if (!may_write_ || !write_draft(file_, bench_.state())) emit bench_.told(QCoreApplication::translate("Application", "What lies on the bench could not be saved: look whether the disk is full."));
}

}  // namespace gritwright::desktop
