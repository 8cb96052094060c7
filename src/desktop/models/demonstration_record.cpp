#include "demonstration_record.hpp"

#include <QCoreApplication>
#include <QDir>
#include <map>
#include <utility>

#include "bench_files.hpp"
#include "gritwright/formats/data_folder.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class DemonstrationText {
  Q_DECLARE_TR_FUNCTIONS(Demonstration)
};

/// The bag of a test's lot. Litres and price of a bag are as invented as the rest.
Bag bag_of(const SieveTest& test) {
  Bag bag;
  bag.material = test.material.value_or("");
  bag.lot = test.lot.value_or("");
  bag.received = test.date;
  bag.volume = loose_l(14);
  bag.price = Price{16.80, {}};
  bag.bulk_density = test.bulk_density;
  bag.particle_density = test.particle_density;
  return bag;
}

/// Everything in one transaction, so that the window need not wait for the disk thirty times.
class RecordFilling {
 public:
  RecordFilling() { change_.label = DemonstrationText::tr("demonstration").toStdString(); }

  void test(const SieveTest& test) {
    const Id<Bag> id{test.lot.value_or("")};
    const std::string day = test.date.value_or(today());
    const QString name = to_qt(id.text);
    int& replicate = replicates_[id.text];
    if (replicate == 0) receive(test, id, day);
    RecordedSieveTest record;
    record.test = test;
    record.of = ref_to(id);
    record.replicate = ++replicate;
    add(RecordKind::sieve_test, {}, record);
    log(ref_to(id), DemonstrationText::tr("Sieved bag %1, test %2").arg(name).arg(replicate), day);
  }

  void container(const Container& container) {
    RecordedContainer record;
    record.container = container;
    add(RecordKind::container, {}, record);
  }

  /// Components named as a bag that was received are taken from it.
  void mix(const Mix& mix) {
    MixVersion version;
    version.mix = mix;
    for (const Component& component : mix.components) {
      const bool is_bag = replicates_.contains(component.name);
      version.sources.push_back(is_bag ? std::optional(RecordRef{RecordKind::bag, component.name}) : std::nullopt);
    }
    version.day = today();
    add(RecordKind::mix, {}, version);
  }

  void sieves() {
    SieveSet set;
    set.name = DemonstrationText::tr("bench sieves").toStdString();
    for (const double mm : {8.0, 5.6, 4.0, 2.8, 2.0, 1.4, 1.0}) set.sieves.push_back({aperture_mm(mm), {}});
    add(RecordKind::sieve_set, {}, set);
  }

  Change take() { return std::move(change_); }

 private:
  template <class R>
  void add(RecordKind kind, const std::string& id, R record) {
    change_.edits.push_back({RecordRef{kind, id}, 0, Record(std::move(record))});
  }

  void log(const RecordRef& about, const QString& text, const std::string& day) { add(RecordKind::log_entry, {}, event_about(about, text, day)); }

  /// The bag and its dry grain come in on the day of the first test.
  void receive(const SieveTest& test, const Id<Bag>& id, const std::string& day) {
    const Bag bag = bag_of(test);
    add(RecordKind::bag, id.text, bag);
    log(ref_to(id), DemonstrationText::tr("Received bag %1").arg(to_qt(id.text)), day);
    const auto mass = dry_mass_received(bag);
    if (!mass) return;
    StockEntry entry;
    entry.holder = ref_to(id);
    entry.change = *mass;
    entry.day = day;
    add(RecordKind::stock_entry, {}, entry);
  }

  Change change_;
  std::map<std::string, int> replicates_;
};

}  // namespace

Problems fill_with_demonstration(RecordBook& book, const Catalogue& catalogue) {
  const auto folder = data_folder("demo-data");
  if (!folder) return {Problem{"file.missing", Place{"demo-data", {}, {}, {}}, {}}};
  Problems problems;
  RecordFilling filling;
  const auto each = [&](const char* name, const char* pattern, const auto& read, const auto& take) {
    const QDir files(to_qt(folder->string()) + u'/' + QLatin1String(name));
    for (const QString& file : files.entryList({QLatin1String(pattern)}, QDir::Files, QDir::Name)) {
      const auto got = read(files.filePath(file));
      append(problems, got.problems());
      if (got) take(*got);
    }
  };
  each("sieve_tests", "*.csv", [](const QString& path) { return open_sieve_test(path); }, [&](const SieveTest& test) {
    if (test.lot && test.material) filling.test(test);
  });
  each("containers", "*.json", [&](const QString& path) { return open_container(path, catalogue); }, [&](const Container& one) { filling.container(one); });
  each("mixes", "*.json", [&](const QString& path) { return open_mix(path, catalogue); }, [&](const Mix& one) { filling.mix(one); });
  filling.sieves();
  book.apply(filling.take());
  return problems;
}

}  // namespace gritwright::desktop
