#include "demonstration_record.hpp"

#include <QCoreApplication>
#include <QFile>
#include <utility>

#include "gritwright/formats/data_folder.hpp"
#include "gritwright/formats/exchange_file.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class DemonstrationText {
  Q_DECLARE_TR_FUNCTIONS(Demonstration)
};

Problems not_found(const std::string& file) { return {Problem{"file.missing", Place{file, {}, {}, {}}, {}}}; }

}  // namespace

Problems fill_with_demonstration(RecordBook& book, const Catalogue& catalogue) {
  const auto folder = data_folder("demo-data");
  if (!folder) return not_found("demo-data");
  const std::string name = (*folder / "nursery.json").string();
  QFile file(to_qt(name));
  if (!file.open(QIODevice::ReadOnly)) return not_found(name);
  auto records = read_exchange(file.readAll().toStdString(), name, ComponentSources{&catalogue, {}});
  if (!records) return records.problems();
  // Everything in one transaction, so that the window need not wait for the disk a hundred times.
  Change change;
  change.label = DemonstrationText::tr("demonstration").toStdString();
  for (IdentifiedRecord& record : std::move(records).value()) change.edits.push_back({record.ref, 0, std::move(record.record)});
  book.apply(std::move(change));
  return {};
}

}  // namespace gritwright::desktop
