#include "demonstration_record.hpp"

#include <QCoreApplication>
#include <QDir>

#include "bench_files.hpp"
#include "gritwright/formats/data_folder.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class Text {
  Q_DECLARE_TR_FUNCTIONS(Demonstration)
};

/// The bag of a test's lot; it is received when the first test names it. Fifteen litres a bag are as invented as the rest.
Bag bag_of(const SieveTest& test) {
  Bag bag;
  bag.material = test.material.value_or("");
  bag.lot = test.lot.value_or("");
  bag.received = test.date;
  bag.volume = loose_l(15);
  bag.bulk_density = test.bulk_density;
  bag.particle_density = test.particle_density;
  return bag;
}

/// The bag and its dry grain come in on the day of the first test.
void receive(RecordBook& book, const SieveTest& test, const Id<Bag>& id) {
  const Bag bag = bag_of(test);
  const QString name = to_qt(id.text);
  const std::string day = test.date.value_or(today());
  book.add(bag, Text::tr("bag %1").arg(name), name, event_about(ref_to(id), Text::tr("Received bag %1").arg(name), day));
  const auto mass = dry_mass_received(bag);
  if (!mass) return;
  StockEntry entry;
  entry.holder = ref_to(id);
  entry.change = *mass;
  entry.day = day;
  book.add(entry, Text::tr("bag %1 taken into stock").arg(name));
}

void add_test(RecordBook& book, const SieveTest& test) {
  const Id<Bag> id{test.lot.value_or("")};
  if (!book.workbook().find(id)) receive(book, test, id);
  RecordedSieveTest record;
  record.test = test;
  record.of = ref_to(id);
  record.replicate = static_cast<int>(book.workbook().sieve_tests_of(*record.of).size()) + 1;
  const QString name = to_qt(id.text);
  const LogEntry log = event_about(*record.of, Text::tr("Sieved bag %1, test %2").arg(name).arg(record.replicate), test.date.value_or(today()));
  book.add(record, Text::tr("sieve test of bag %1").arg(name), {}, log);
}

}  // namespace

Problems fill_with_demonstration(RecordBook& book, const Catalogue& catalogue) {
  const auto folder = data_folder("demo-data");
  if (!folder) return {Problem{"file.missing", Place{"demo-data", {}, {}, {}}, {}}};
  Problems problems;
  const QDir tests(to_qt(folder->string()) + QStringLiteral("/sieve_tests"));
  for (const QString& file : tests.entryList({QStringLiteral("*.csv")}, QDir::Files, QDir::Name)) {
    const auto test = open_sieve_test(tests.filePath(file));
    append(problems, test.problems());
    if (test && test->lot && test->material) add_test(book, *test);
  }
  const QDir containers(to_qt(folder->string()) + QStringLiteral("/containers"));
  for (const QString& file : containers.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
    const auto container = open_container(containers.filePath(file), catalogue);
    append(problems, container.problems());
    if (!container) continue;
    RecordedContainer record;
    record.container = *container;
    book.add(record, Text::tr("container %1").arg(to_qt(container->name)));
  }
  return problems;
}

}  // namespace gritwright::desktop
