#include "gritwright/workbook/stock_ledger.hpp"
#include "workbook_folder.hpp"

using namespace gritwright;
using namespace gritwright::tests;
using Catch::Matchers::WithinAbs;

namespace {

Bag kanuma() {
  Bag bag;
  bag.material = "kanuma";
  bag.lot = "lot 7";
  bag.count = 2;
  bag.volume = loose_l(14);
  bag.bulk_density = bulk_g_l(310);
  bag.received = "2026-02-01";
  return bag;
}

Measured litres(double value) {
  Measured amount;
  amount.by_jug = loose_l(value);
  return amount;
}

}  // namespace

TEST_CASE("Received bags stand in the ledger in grams of dry grain, and litres follow from their density", "[stock]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  const auto received = receive(workbook, kanuma());
  REQUIRE(received);
  const RecordRef bag = received->revisions.front().first;
  CHECK(bag.id == "K-01");
  CHECK_THAT(in_g(*workbook.stock_of(bag)), WithinAbs(2 * 14 * 310, 1e-6));
  CHECK_THAT(in_l(*litres_in_stock(workbook, bag)), WithinAbs(28, 1e-9));
  REQUIRE(workbook.undo());
  CHECK_FALSE(workbook.find(bag));
  CHECK_FALSE(workbook.stock_of(bag));
}

TEST_CASE("Litres of a jug are stored with the density that turned them into grams, so that a later test changes no old entry", "[stock]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  const RecordRef bag = receive(workbook, kanuma())->revisions.front().first;
  REQUIRE(enter_stock(workbook, bag, StockReason::used, litres(3), "2026-03-01"));
  auto stored = workbook.find(Id<Bag>{bag.id});
  Bag measured = stored->record;
  measured.bulk_density = bulk_g_l(340);
  REQUIRE(workbook.replace(*stored, measured, "density of bag K-01"));
  // What came in is what the bag says of itself; what was taken out of it stays as it was measured.
  CHECK_THAT(in_g(*workbook.stock_of(bag)), WithinAbs(2 * 14 * 340 - 3 * 310, 1e-6));
  const auto entries = workbook.all<StockEntry>();
  CHECK_THAT(in_g_l(*entries.back().record.density_used), WithinAbs(310, 1e-9));
  CHECK_THAT(in_l(*entries.back().record.measured), WithinAbs(3, 1e-12));
}

TEST_CASE("A bag whose weight and litres are known is booked by them before any typical litre weight", "[stock][law]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  Bag weighed = kanuma();
  weighed.bulk_density.reset();
  weighed.mass_as_bagged = mass_g(8330);
  weighed.moisture_basis = MoistureBasis::oven_dry;
  const RecordRef bag = receive(workbook, weighed)->revisions.front().first;
  CHECK_THAT(in_g_l(*bulk_density_of(workbook, bag)), WithinAbs(595, 1e-9));
  Measured jug = litres(2);
  jug.fallback_density = bulk_g_l(480);
  REQUIRE(enter_stock(workbook, bag, StockReason::used, jug, "2026-03-01"));
  const StockEntry entry = workbook.all<StockEntry>().back().record;
  CHECK_THAT(in_g_l(*entry.density_used), WithinAbs(595, 1e-9));
  CHECK_THAT(in_g(entry.change), WithinAbs(-2 * 595, 1e-6));
  CHECK_THAT(in_l(*litres_in_stock(workbook, bag)), WithinAbs(26, 1e-9));

  // What was measured on the grain itself goes before what the bag came with.
  RecordedSieveTest test;
  test.of = bag;
  test.test.rows = {{aperture_mm(2), mass_g(90), {}}};
  test.test.pan = mass_g(10);
  test.test.bulk_density = bulk_g_l(610);
  REQUIRE(workbook.add(test, "sieve test"));
  CHECK_THAT(in_g_l(*bulk_density_of(workbook, bag)), WithinAbs(610, 1e-9));

  // Weighed damp, nobody knows how damp: it tells nothing about dry grain.
  weighed.moisture_basis = MoistureBasis::as_bagged;
  CHECK_FALSE(bulk_density_received(weighed));
  CHECK_FALSE(arrival_of(bag, weighed, "2026-03-01"));
  weighed.moisture = Moisture(0.25);
  CHECK_THAT(in_g_l(*bulk_density_received(weighed)), WithinAbs(476, 1e-9));
}

TEST_CASE("What came in by litres keeps the litre weight that made grams of it", "[stock]") {
  const auto entry = arrival_of({RecordKind::bag, "K-01"}, kanuma(), "2026-03-01");
  REQUIRE(entry);
  CHECK_THAT(in_g(entry->change), WithinAbs(2 * 14 * 310, 1e-6));
  CHECK_THAT(in_l(*entry->measured), WithinAbs(28, 1e-9));
  CHECK_THAT(in_g_l(*entry->density_used), WithinAbs(310, 1e-9));
}

TEST_CASE("A count that disagrees is an entry with the difference, never an overwrite", "[stock][law]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  const RecordRef bag = receive(workbook, kanuma())->revisions.front().first;
  const std::size_t before = workbook.count(RecordKind::stock_entry);
  REQUIRE(enter_count(workbook, bag, litres(20), "2026-03-02", "by bucket"));
  CHECK_THAT(in_g(*workbook.stock_of(bag)), WithinAbs(20 * 310, 1e-6));
  CHECK(workbook.count(RecordKind::stock_entry) == before + 1);
  const StockEntry entry = workbook.all<StockEntry>().back().record;
  CHECK_THAT(in_g(entry.change), WithinAbs((20 - 28) * 310, 1e-6));
  CHECK_THAT(in_g(*entry.counted), WithinAbs(20 * 310, 1e-6));
  Measured moist;
  moist.weighed = mass_g(5500);
  moist.moisture = Moisture(0.1);
  REQUIRE(enter_count(workbook, bag, moist, "2026-03-03"));
  CHECK_THAT(in_g(*workbook.stock_of(bag)), WithinAbs(5000, 1e-6));
}

TEST_CASE("What comes raises the stock and what goes lowers it, whatever the reason, and a sign that does not suit it is refused", "[stock][law]") {
  const auto [reason, sign] = GENERATE(table<StockReason, double>({{StockReason::received, 1}, {StockReason::screened_into, 1}, {StockReason::returned, 1},
                                                                   {StockReason::screened_out_of, -1}, {StockReason::used, -1}, {StockReason::spilt, -1},
                                                                   {StockReason::thrown_out, -1}}));
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  const RecordRef bag = receive(workbook, kanuma())->revisions.front().first;
  REQUIRE(enter_stock(workbook, bag, reason, litres(2), "2026-03-01"));
  CHECK_THAT(in_g(*workbook.stock_of(bag)), WithinAbs(8680 + sign * 2 * 310, 1e-6));
  StockEntry wrong = workbook.all<StockEntry>().back().record;
  wrong.change = -1.0 * wrong.change;
  CHECK(check(wrong).size() == 1);
}

TEST_CASE("Litres without any known density are refused, not guessed", "[stock][refuses]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  Bag bag = kanuma();
  bag.bulk_density.reset();
  const RecordRef ref = receive(workbook, bag)->revisions.front().first;
  CHECK_FALSE(workbook.stock_of(ref));
  CHECK(code_of(enter_stock(workbook, ref, StockReason::used, litres(1), "2026-03-01")) == "stock.no-density-known");
  CHECK(code_of(enter_stock(workbook, ref, StockReason::used, {}, "2026-03-01")) == "stock.nothing-measured");
  CHECK(code_of(enter_stock(workbook, {RecordKind::bag, "X-99"}, StockReason::used, litres(1), "2026-03-01")) == "workbook.not-there");
  CHECK(code_of(enter_stock(workbook, ref, StockReason::used, litres(1), "2026-02-30")) != "");
  Measured typical = litres(1);
  typical.fallback_density = bulk_g_l(300);
  CHECK(enter_stock(workbook, ref, StockReason::received, typical, "2026-03-01"));
}

TEST_CASE("A fraction that was only weighed has litres by its bag's litre weight and its ratio to it until it has its own", "[stock]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  Bag bag = kanuma();
  const RecordRef ref = receive(workbook, bag)->revisions.front().first;
  Fraction kept;
  kept.from = aperture_mm(2);
  kept.dry_mass = mass_g(3100);
  const auto applied = screen_into(workbook, ref, {kept}, mass_g(0), "2026-03-05");
  REQUIRE(applied);
  const RecordRef fraction = applied->revisions.front().first;
  REQUIRE(fraction.kind == RecordKind::fraction);
  // Kanuma of 310 g/L.
  REQUIRE(litres_in_stock(workbook, fraction));
  CHECK_THAT(in_l(*litres_in_stock(workbook, fraction)), WithinAbs(10, 1e-9));
  CHECK(litre_weight_of(workbook, fraction)->origin == LitreWeightOrigin::of_bag);
  auto stored = workbook.find(Id<Fraction>{fraction.id});
  Fraction measured = stored->record;
  measured.bulk_density_ratio = BulkDensityRatio(0.8);
  Change looser;
  looser.label = "ratio";
  looser.edits.push_back({fraction, stored->revision, Record(measured)});
  REQUIRE(workbook.apply(std::move(looser)));
  CHECK_THAT(in_l(*litres_in_stock(workbook, fraction)), WithinAbs(12.5, 1e-9));
  const auto weight = litre_weight_of(workbook, fraction);
  REQUIRE(weight);
  CHECK(weight->origin == LitreWeightOrigin::predicted);
  CHECK_THAT(in_g_l(weight->value), WithinAbs(248, 1e-9));
  CHECK_THAT(in_g_l(weight->of_bag.value()), WithinAbs(310, 1e-9));
  CHECK(weight->ratio == BulkDensityRatio(0.8));
  stored = workbook.find(Id<Fraction>{fraction.id});
  measured.volume = loose_l(10.6);
  Change change;
  change.label = "litres";
  change.edits.push_back({fraction, stored->revision, Record(measured)});
  REQUIRE(workbook.apply(std::move(change)));
  CHECK_THAT(in_l(*litres_in_stock(workbook, fraction)), WithinAbs(10.6, 1e-9));
}

TEST_CASE("A screening takes out of the bag what it puts into fractions, as one step", "[stock][law]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  const RecordRef bag = receive(workbook, kanuma())->revisions.front().first;
  Fraction kept;
  kept.from = aperture_mm(2);
  kept.to = aperture_mm(6);
  kept.dry_mass = mass_g(3000);
  Fraction dust;
  dust.to = aperture_mm(2);
  dust.dry_mass = mass_g(400);
  const auto applied = screen_into(workbook, bag, {kept, dust}, mass_g(20), "2026-03-05");
  REQUIRE(applied);
  const RecordRef first = applied->revisions.at(0).first;
  CHECK(first.kind == RecordKind::fraction);
  CHECK_THAT(in_g(*workbook.stock_of(first)), WithinAbs(3000, 1e-6));
  CHECK_THAT(in_g(*workbook.stock_of(bag)), WithinAbs(8680 - 3420, 1e-6));
  REQUIRE(workbook.undo());
  CHECK_THAT(in_g(*workbook.stock_of(bag)), WithinAbs(8680, 1e-6));
  CHECK(workbook.count(RecordKind::fraction) == 0);
}

TEST_CASE("A tub of left over mix has its litres by the litre weight it came back with", "[stock]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  REQUIRE(workbook.add(Batch{}, "tub", "BT-01"));
  const RecordRef tub{RecordKind::batch, "BT-01"};
  CHECK_FALSE(litres_in_stock(workbook, tub));
  StockEntry back;
  back.holder = tub;
  back.reason = StockReason::returned;
  back.change = mass_g(900);
  back.measured = loose_l(1.5);
  back.density_used = bulk_g_l(600);
  back.day = "2026-03-14";
  REQUIRE(workbook.add(back, "left over"));
  CHECK_THAT(in_l(*litres_in_stock(workbook, tub)), WithinAbs(1.5, 1e-9));
  // By the jug, what is used of it is known in grams.
  REQUIRE(enter_stock(workbook, tub, StockReason::used, litres(0.5), "2026-04-02"));
  CHECK_THAT(in_g(*workbook.stock_of(tub)), WithinAbs(600, 1e-6));
}

TEST_CASE("A corrected bag corrects what came in with it whoever corrects it, and one undo takes both back", "[stock][regression]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  Bag weighed = kanuma();
  weighed.mass_as_bagged = mass_kg(5);
  weighed.moisture = Moisture(0.25);
  const RecordRef ref = receive(workbook, weighed)->revisions.front().first;
  const Id<Bag> id{ref.id};
  CHECK_THAT(in_g(*workbook.stock_of(ref)), WithinAbs(8000, 1e-6));
  auto receipt = workbook.all<StockEntry>().front();
  StockEntry noted = receipt.record;
  noted.note = "by the truck's scale";
  REQUIRE(workbook.replace(receipt, noted, "note"));
  Bag heavier = weighed;
  heavier.mass_as_bagged = mass_kg(6);
  REQUIRE(workbook.replace(*workbook.find(id), heavier, "mass of bag K-01"));
  CHECK_THAT(in_g(*workbook.stock_of(ref)), WithinAbs(9600, 1e-6));
  CHECK(workbook.count(RecordKind::stock_entry) == 1);
  CHECK(workbook.all<StockEntry>().front().record.note == "by the truck's scale");
  REQUIRE(workbook.undo());
  CHECK_THAT(in_g(*workbook.stock_of(ref)), WithinAbs(8000, 1e-6));
  CHECK(workbook.find(id)->record == weighed);
  REQUIRE(workbook.redo());
  CHECK_THAT(in_g(*workbook.stock_of(ref)), WithinAbs(9600, 1e-6));
  // What the dry mass does not hang on changes nothing in the ledger.
  const auto revision = workbook.all<StockEntry>().front().revision;
  Bag renamed = heavier;
  renamed.lot = "lot 8";
  REQUIRE(workbook.replace(*workbook.find(id), renamed, "lot of bag K-01"));
  CHECK(workbook.all<StockEntry>().front().revision == revision);
  // A mass that is no longer known leaves what came in as it was booked.
  Bag unknown = renamed;
  unknown.mass_as_bagged.reset();
  unknown.bulk_density.reset();
  REQUIRE(workbook.replace(*workbook.find(id), unknown, "mass of bag K-01"));
  CHECK_THAT(in_g(*workbook.stock_of(ref)), WithinAbs(9600, 1e-6));
}

TEST_CASE("What came in with a bag stays where it was counted since, came in twice, or is told by the change itself", "[stock][law]") {
  const Folder folder;
  Hand hand;
  OpenWorkbook workbook = opened(folder.file(), hand.options());
  Bag weighed = kanuma();
  weighed.mass_as_bagged = mass_kg(5);
  weighed.moisture_basis = MoistureBasis::oven_dry;
  Bag heavier = weighed;
  heavier.mass_as_bagged = mass_kg(6);
  Measured amount;
  amount.weighed = mass_kg(7);
  const auto after_correction = [&](const RecordRef& bag) {
    REQUIRE(workbook.replace(*workbook.find(Id<Bag>{bag.id}), heavier, "mass"));
    return in_kg(*workbook.stock_of(bag));
  };
  const RecordRef counted = receive(workbook, weighed)->revisions.front().first;
  REQUIRE(enter_count(workbook, counted, amount, "2026-03-01"));
  CHECK_THAT(after_correction(counted), WithinAbs(7, 1e-9));
  const RecordRef twice = receive(workbook, weighed)->revisions.front().first;
  REQUIRE(enter_stock(workbook, twice, StockReason::received, amount, "2026-03-01"));
  CHECK_THAT(after_correction(twice), WithinAbs(17, 1e-9));
  const RecordRef told = receive(workbook, weighed)->revisions.front().first;
  const auto receipt = workbook.all<StockEntry>().back();
  StockEntry nine = receipt.record;
  nine.change = mass_kg(9);
  const auto bag = *workbook.find(Id<Bag>{told.id});
  REQUIRE(workbook.apply({"both", {{told, bag.revision, Record(heavier)}, {ref_to(receipt.id), receipt.revision, Record(nine)}}, {}, {}}));
  CHECK_THAT(in_kg(*workbook.stock_of(told)), WithinAbs(9, 1e-9));
}
