#include "bench_files.hpp"

#include <QFile>
#include <QFileInfo>

#include "gritwright/formats/catalogue_folder.hpp"
#include "gritwright/formats/container_file.hpp"
#include "gritwright/formats/data_folder.hpp"
#include "gritwright/formats/mix_file.hpp"
#include "gritwright/formats/named_file.hpp"
#include "gritwright/formats/sieve_test_file.hpp"
#include "gritwright/models/sieve_analysis.hpp"
#include "sheets_from_records.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

Problem file_problem(const char* code, const QString& path, Facts facts = {}) {
  return {code, Place{path.toStdString(), {}, {}, {}}, std::move(facts)};
}

}  // namespace

Result<std::string> read_text_file(const QString& path, qint64 limit_mb) {
  const QFileInfo info(path);
  if (info.isDir()) return file_problem("file.is-folder", path);
  QFile file(path);
  // A device or a pipe may never end.
  if (info.exists() && !info.isFile()) return file_problem("file.no-access", path);
  if (!file.open(QIODevice::ReadOnly)) return file_problem(info.exists() ? "file.no-access" : "file.missing", path);
  if (info.size() > (limit_mb << 20)) return file_problem("file.too-large", path, {{"limit_mb", static_cast<double>(limit_mb)}});
  const QByteArray text = file.read((limit_mb << 20) + 1);
  if (file.error() != QFileDevice::NoError) return file_problem("file.unreadable", path);
  return text.toStdString();
}

Result<SieveTest> open_sieve_test(const QString& path) {
  const auto text = read_text_file(path);
  if (!text) return text.problems();
  return read_sieve_test(*text, QFileInfo(path).fileName().toStdString());
}

namespace {

/// Materials by the catalogue; a path inside a file is meant from that file's own folder.
ComponentSources sources_beside(const QString& path, const Catalogue& catalogue) {
  const auto grade = [path](const std::string& name) -> Result<SieveTestGrading> {
    const auto file = file_named_in(path.toStdString(), name);
    if (!file) return file.problems();
    const auto test = open_sieve_test(QString::fromStdString(file->string()));
    if (!test) return test.problems();
    const auto analysis = analyse(*test);
    if (!analysis) return analysis.problems();
    return SieveTestGrading{analysis->grading, test->bulk_density, test->particle_density, analysis->notes};
  };
  return {&catalogue, grade};
}

}  // namespace

Result<Container> open_container(const QString& path, const Catalogue& catalogue) {
  const auto text = read_text_file(path);
  if (!text) return text.problems();
  const auto file = read_container(*text, QFileInfo(path).fileName().toStdString(), sources_beside(path, catalogue));
  if (!file) return file.problems();
  return file->container;
}

Result<Mix> open_mix(const QString& path, const Catalogue& catalogue) {
  const auto text = read_text_file(path);
  if (!text) return text.problems();
  const auto file = read_mix(*text, QFileInfo(path).fileName().toStdString(), sources_beside(path, catalogue));
  if (!file) return file.problems();
  return file->mix;
}

Result<Catalogue> shipped_catalogue() {
  const auto folder = data_folder("materials");
  if (!folder) return file_problem("file.missing", QStringLiteral("materials"));
  const auto read = read_catalogue(*folder);
  if (!read) return read.problems();
  return read->catalogue;
}

Result<BenchState> demonstration(const Catalogue& catalogue) {
  const auto folder = data_folder("demo-data");
  if (!folder) return file_problem("file.missing", QStringLiteral("demo-data"));
  const QString root = QString::fromStdString(folder->string());
  BenchState state = empty_bench();
  state.components.clear();
  Problems problems;
  for (const auto& [lot, parts] : {std::pair{"A-11", "3"}, {"P-03", "4"}, {"S-06", "3"}}) {
    const QString file = QString::fromLatin1(lot).toLower().replace(u'-', u'_') + QStringLiteral("_1.csv");
    const auto test = open_sieve_test(root + QStringLiteral("/sieve_tests/") + file);
    append(problems, test.problems());
    if (!test) continue;
    ComponentSheet component = component_of(*test, QString::fromLatin1(lot));
    const QString material = to_qt(translated(component.material.toStdString()));
    if (!material.isEmpty()) component.name = QStringLiteral("%1 %2").arg(material.at(0).toUpper() + material.mid(1), component.name);
    component.bag = QString::fromLatin1(lot);
    component.parts = QString::fromLatin1(parts);
    state.components.push_back(component);
  }
  state.mix_name = QStringLiteral("pines");
  const auto pot = open_container(root + QStringLiteral("/containers/tray_01.json"), catalogue);
  append(problems, pot.problems());
  if (!problems.empty()) return problems;
  state.pot = sheet_of(*pot);
  return state;
}

}  // namespace gritwright::desktop
