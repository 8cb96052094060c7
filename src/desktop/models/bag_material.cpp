#include "bag_material.hpp"

#include <QCoreApplication>
#include <algorithm>

#include "text.hpp"

namespace gritwright::desktop {

namespace {

class MaterialText {
  Q_DECLARE_TR_FUNCTIONS(BagMaterial)
};

}  // namespace

bool has_grain_elsewhere(const OpenWorkbook& workbook, const RecordRef& bag) {
  const auto screened = [&](const Stored<Fraction>& fraction) { return fraction.record.source == bag; };
  const auto tipped_in = [&](const Stored<Bin>& bin) { return std::ranges::find(bin.record.contents, bag, &BinContent::source) != bin.record.contents.end(); };
  const auto mixed = [&](const Stored<MixVersion>& mix) { return std::ranges::find(mix.record.sources, std::optional(bag)) != mix.record.sources.end(); };
  return std::ranges::any_of(workbook.all<Fraction>(), screened) || std::ranges::any_of(workbook.all<Bin>(), tipped_in) || std::ranges::any_of(workbook.all<MixVersion>(), mixed);
}

std::optional<Change> corrected_material(const OpenWorkbook& workbook, const Stored<Bag>& bag, const std::string& material) {
  if (bag.record.material == material) return std::nullopt;
  const RecordRef ref = ref_to(bag.id);
  Change change;
  change.label = MaterialText::tr("material of bag %1").arg(to_qt(bag.id.text)).toStdString();
  change.merge_key = "material/" + bag.id.text;  // arrow keys pass many on their way
  Bag now = bag.record;
  now.material = material;
  change.edits.push_back({ref, bag.revision, Record(std::move(now))});
  for (Stored<RecordedSieveTest>& test : workbook.sieve_tests_of(ref)) {
    if (test.record.test.material != bag.record.material) continue;
    test.record.test.material = material;
    change.edits.push_back({ref_to(test.id), test.revision, Record(std::move(test.record))});
  }
  return change;
}

}  // namespace gritwright::desktop
