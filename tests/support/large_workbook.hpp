#pragma once
#include <cstddef>
#include <iterator>
#include <string>
#include <utility>
#include <vector>

#include "gritwright/domain/record.hpp"
#include "gritwright/workbook/exchange.hpp"

namespace gritwright::tests {

/// How much an invented nursery of many years has written down.
struct LargeSize {
  int bags = 20'000;
  int sieve_tests = 40'000;
  int log_entries = 100'000;
  int trees = 2'000;  ///< all of them stand in grain of the first bag
};

/// The bag whose grain every tree stands in.
inline const RecordRef& first_bag() {
  static const RecordRef ref{RecordKind::bag, "B-100001"};
  return ref;
}

/// The records of such a nursery, the same at every call; `take` gets them in portions, each of which may name what came before it.
class LargeNursery {
 public:
  using Records = std::vector<IdentifiedRecord>;

  explicit LargeNursery(const LargeSize& size = {}) : size_(size) {}

  template <class Take>
  void portions(Take take) const {
    in_portions(size_.bags, take, [&](Records& records, int i) { add_bag(records, i); });
    in_portions(1, take, [&](Records& records, int) { add_fraction(records); });
    in_portions(size_.sieve_tests, take, [&](Records& records, int i) { add_sieve_test(records, i); });
    in_portions(batches(), take, [&](Records& records, int i) { add_batch(records, i); });
    in_portions(size_.trees, take, [&](Records& records, int i) { add_tree(records, i); });
    in_portions(size_.log_entries, take, [&](Records& records, int i) { add_log_entry(records, i); });
  }

 private:
  static constexpr int portion = 5000;
  static constexpr int trees_of_a_batch = 50;

  template <class Take, class Add>
  static void in_portions(int count, Take& take, Add add) {
    for (int start = 0; start < count; start += portion) {
      Records records;
      for (int i = start; i < count && i < start + portion; ++i) add(records, i);
      take(std::move(records));
    }
  }

  template <class R>
  static void put(Records& records, std::string id, R record) {
    records.push_back({RecordRef{kind_of<R>, std::move(id)}, Record(std::move(record)), {}});
  }

  static std::string number(const char* prefix, int i) {
    std::string id = prefix;
    return id.append("-").append(std::to_string(100'001 + i));
  }
  static std::string two_digits(int value) {
    std::string text = std::to_string(value);
    return text.size() < 2 ? text.insert(0, 1, '0') : text;
  }
  static std::string day(int i) {
    std::string text = std::to_string(2006 + i / 336 % 20);
    return text.append("-").append(two_digits(1 + i / 28 % 12)).append("-").append(two_digits(1 + i % 28));
  }
  static const std::string& material(int i) {
    static const std::vector<std::string> names{"akadama", "pumice", "lava", "kiryu", "fired clay", "perlite", "pine bark", "grit"};
    return names[static_cast<std::size_t>(i) % names.size()];
  }
  static const std::string& word(int i) {
    static const std::vector<std::string> words{"watered", "dusty",  "sieved", "moved",   "dry",   "swelling", "buds",  "roots",
                                                "screen",  "frost",  "shade",  "pumped",  "crumbs", "heavy",   "light", "windy",
                                                "potted",  "leaves", "fed",    "checked", "tub",    "saucer",  "wire",  "moss"};
    return words[static_cast<std::size_t>(i) % words.size()];
  }

  void add_bag(Records& records, int i) const {
    Bag bag;
    bag.material = material(i);
    bag.lot = std::string("lot ").append(std::to_string(7000 + i / 3));
    bag.printed_size = SizeBand{aperture_mm(2), aperture_mm(6)};
    bag.volume = loose_l(14);
    bag.mass_as_bagged = mass_g(7500 + i % 900);
    bag.received = day(i / 10);
    bag.bulk_density = bulk_g_l(520 + i % 60);
    bag.note = std::string(word(i)).append(" ").append(word(i / 24));
    put(records, number("B", i), std::move(bag));
    StockEntry received;
    received.holder = {RecordKind::bag, number("B", i)};
    received.change = mass_g(7000 + i % 900);
    received.day = day(i / 10);
    put(records, number("S", i), std::move(received));
  }
  static void add_fraction(Records& records) {
    Fraction fraction;
    fraction.source = first_bag();
    fraction.material = material(0);
    fraction.from = aperture_mm(2);
    fraction.to = aperture_mm(6);
    fraction.day = day(0);
    fraction.volume = loose_l(10);
    put(records, number("FR", 0), std::move(fraction));
  }
  void add_sieve_test(Records& records, int i) const {
    RecordedSieveTest test;
    test.of = RecordRef{RecordKind::bag, number("B", i % size_.bags)};
    test.replicate = 1 + i / size_.bags;
    test.test.material = material(i % size_.bags);
    test.test.date = day(i % size_.bags / 10);
    test.test.dry_mass = mass_g(700);
    test.test.resolution = mass_g(0.1);
    constexpr double openings[]{8, 5.6, 4, 2.8, 2, 1.4, 1};
    constexpr double shares[]{0, 60, 180, 230, 140, 50, 25};
    for (std::size_t row = 0; row < std::size(openings); ++row)
      test.test.rows.push_back({aperture_mm(openings[row]), mass_g(shares[row] + 0.1 * (i % 20)), {}});
    test.test.pan = mass_g(14 - 0.7 * (i % 20));
    put(records, number("ST", i), std::move(test));
  }
  [[nodiscard]] int batches() const { return (size_.trees + trees_of_a_batch - 1) / trees_of_a_batch; }
  void add_batch(Records& records, int i) const {
    Batch batch;
    batch.day = day(i);
    batch.parts = {{RecordRef{RecordKind::fraction, number("FR", 0)}, loose_l(6), {}},
                   {RecordRef{RecordKind::bag, number("B", (1 + i) % size_.bags)}, loose_l(6), {}}};
    batch.made = mixed_l(11);
    put(records, number("BT", i), std::move(batch));
  }
  void add_tree(Records& records, int i) const {
    Tree tree;
    tree.name = std::string("tree ").append(std::to_string(i + 1));
    tree.species = i % 2 == 0 ? "Pinus thunbergii" : "Acer palmatum";
    tree.conditions = {{day(i), i % 40 == 0 ? Condition::sick : Condition::thriving, ""}};
    Repotting repotting;
    repotting.day = day(i / trees_of_a_batch + 1);
    repotting.grain = {RecordRef{RecordKind::batch, number("BT", i / trees_of_a_batch)}};
    repotting.filled_depth = depth_cm(4 + i % 5);
    tree.repottings = {std::move(repotting)};
    put(records, number("TR", i), std::move(tree));
  }
  void add_log_entry(Records& records, int i) const {
    LogEntry entry;
    entry.day = day(i / 15);
    entry.written = std::string(entry.day).append("T09:30:00Z");
    entry.sort = i % 3 == 0 ? LogSort::observation : LogSort::event;
    entry.text = std::string(word(i)).append(" ").append(word(i / 24 + 5)).append(" ").append(word(i / 576 + 11)).append(", ").append(material(i / 7));
    if (i % 2 == 0) entry.about = {RecordRef{RecordKind::bag, number("B", i / 2 % size_.bags)}};
    else entry.about = {RecordRef{RecordKind::tree, number("TR", i / 2 % size_.trees)}};
    put(records, number("L", i), std::move(entry));
  }

  LargeSize size_;
};

/// Takes all of it into `workbook` through the shipped import, a few thousand records a step.
[[nodiscard]] inline Result<Done> fill_large(OpenWorkbook& workbook, const LargeSize& size = {}) {
  Problems problems;
  LargeNursery(size).portions([&](std::vector<IdentifiedRecord> records) {
    if (problems.empty()) append(problems, import_records(workbook, records, "an invented nursery").problems());
  });
  if (!problems.empty()) return problems;
  return Done{};
}

}  // namespace gritwright::tests
