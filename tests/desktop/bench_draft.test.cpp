#include "models/bench_draft.hpp"

#include <QDataStream>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <memory>

#include "support.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

TEST_CASE("A draft comes back as it was typed, rubbish included", "[bench_draft][roundtrip]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("bench.draft"));
  BenchState state = complete_bench();
  state.components[0].sheet.rows[1].retained = QStringLiteral("12g3");
  state.components[1].sheet.measure = Measure::litres;
  state.components[1].sheet.on_recovered_mass = true;
  state.pot.shape = Shape::drum;
  state.components[1].bag = QStringLiteral("P-03");
  state.pot.tilt = QStringLiteral("7");
  state.pot.fillet_radius = QStringLiteral("0.4");
  state.pot.areas = QStringLiteral("0 450; 4 520,5");
  state.pot.tilt_axis = TiltAxis::width;
  state.components[1].sheet.pan.crumbs = QStringLiteral("2.5");
  state.components[1].sheet.resolution = QStringLiteral("0.1");
  state.components[1].sheet.predicted = true;
  state.find.band = {QStringLiteral("2"), QStringLiteral("4"), QStringLiteral("3"), QStringLiteral("6")};
  REQUIRE(write_draft(file, state));
  const auto read = read_draft(file);
  REQUIRE(read);
  CHECK(*read == state);
}

TEST_CASE("A draft of the version with one further pot is still read", "[bench_draft][roundtrip]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("bench.draft"));
  BenchState state = complete_bench();
  state.find.also_pots = {QStringLiteral("C-04711")};
  REQUIRE(write_draft(file, state));
  const auto bytes_of = [](const auto&... values) {
    QByteArray bytes;
    QDataStream stream(&bytes, QIODevice::WriteOnly);
    (stream << ... << values);
    return bytes;
  };
  QFile written(file);
  REQUIRE(written.open(QIODevice::ReadOnly));
  QByteArray whole = written.readAll();
  written.close();
  // That version had no count before the pot; after the mark stands the version.
  const QByteArray counted = bytes_of(quint32{1}, state.find.also_pots[0]);
  REQUIRE(whole.count(counted) == 1);
  whole.replace(4, 4, bytes_of(quint32{5}));
  // Nor did it know predictions, where the wanted grain came from, days of screenings, and tables of areas.
  whole.chop(bytes_of(false, false, QString(), QString(), QString(), QString(), QString(), QString(), QString()).size());
  for (const QString& pot : {state.find.also_pots[0], QString()}) {
    QByteArray older = whole;
    older.replace(counted, bytes_of(pot));
    REQUIRE(written.open(QIODevice::WriteOnly | QIODevice::Truncate));
    written.write(older);
    written.close();
    BenchState expected = state;
    if (pot.isEmpty()) expected.find.also_pots.clear();
    const auto read = read_draft(file);
    REQUIRE(read);
    CHECK(*read == expected);
  }
}

TEST_CASE("A draft of the version without days of screenings is still read, and a day comes back", "[bench_draft][roundtrip]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("bench.draft"));
  BenchState state = complete_bench();
  state.components[1].screening.day = QStringLiteral("2026-03-14");
  REQUIRE(write_draft(file, state));
  CHECK(read_draft(file) == state);
  state.components[1].screening.day.clear();
  REQUIRE(write_draft(file, state));
  QFile written(file);
  REQUIRE(written.open(QIODevice::ReadOnly));
  QByteArray whole = written.readAll();
  written.close();
  QByteArray version;
  QByteArray days;
  QDataStream version_stream(&version, QIODevice::WriteOnly);
  version_stream << quint32{7};
  QDataStream days_stream(&days, QIODevice::WriteOnly);
  days_stream << QString() << QString();
  whole.replace(4, 4, version);
  whole.chop(days.size());
  REQUIRE(written.open(QIODevice::WriteOnly | QIODevice::Truncate));
  written.write(whole);
  written.close();
  CHECK(read_draft(file) == state);
}

TEST_CASE("A damaged, short or foreign draft is left alone", "[bench_draft][refuses]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("bench.draft"));
  CHECK_FALSE(read_draft(file));
  REQUIRE(write_draft(file, complete_bench()));
  QFile written(file);
  REQUIRE(written.open(QIODevice::ReadOnly));
  const QByteArray whole = written.readAll();
  written.close();
  for (const qsizetype length : {qsizetype{0}, qsizetype{3}, qsizetype{8}, whole.size() / 2, whole.size() - 1}) {
    REQUIRE(written.open(QIODevice::WriteOnly | QIODevice::Truncate));
    written.write(whole.left(length));
    written.close();
    CHECK_FALSE(read_draft(file));
  }
  REQUIRE(written.open(QIODevice::WriteOnly | QIODevice::Truncate));
  written.write(QByteArray("something else entirely"));
  written.close();
  CHECK_FALSE(read_draft(file));
}

TEST_CASE("A draft that can't be read is set aside before the next is written", "[bench_draft][regression]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("bench.draft"));
  CHECK(set_aside_unreadable_draft(file));
  REQUIRE(write_draft(file, complete_bench()));
  CHECK(set_aside_unreadable_draft(file));
  CHECK(read_draft(file));
  for (const char* words : {"from a later version", "and another"}) {
    QFile foreign(file);
    REQUIRE(foreign.open(QIODevice::WriteOnly | QIODevice::Truncate));
    foreign.write(words);
    foreign.close();
    CHECK(set_aside_unreadable_draft(file));
    CHECK_FALSE(QFile::exists(file));
  }
  QFile first(file + QStringLiteral(".unread-1"));
  REQUIRE(first.open(QIODevice::ReadOnly));
  CHECK(first.readAll() == QByteArray("from a later version"));
  CHECK(QFile::exists(file + QStringLiteral(".unread-2")));
}

TEST_CASE("Each record has a bench of its own, and numbers of one do not get into another", "[bench_draft][regression]") {
  const QTemporaryDir folder;
  const QString own = folder.filePath(QStringLiteral("own.gritwright")), other = folder.filePath(QStringLiteral("äußere 2.gritwright"));
  BenchState measured = complete_bench();
  measured.components[1].bag = QStringLiteral("P-03");
  {
    Bench bench(test_catalogue());
    BenchKeeper keeper(bench, folder.path());
    keeper.turn_to(own);
    bench.open(measured);
  }
  Bench bench(test_catalogue());
  const BenchState empty = bench.state();
  BenchKeeper keeper(bench, folder.path());
  keeper.turn_to(other);
  CHECK(bench.state() == empty);
  BenchState renamed = complete_bench();
  renamed.mix_name = QStringLiteral("of the other record");
  bench.open(renamed);
  keeper.save();
  keeper.turn_to(own);
  CHECK(bench.state() == measured);
  keeper.turn_to(other);
  CHECK(bench.state() == renamed);
}

TEST_CASE("Of two windows on a record the one closed last does not write over the bench of the other", "[bench_draft][regression]") {
  const QTemporaryDir folder;
  const QString record = folder.filePath(QStringLiteral("own.gritwright"));
  BenchState first = complete_bench(), second = complete_bench();
  first.mix_name = QStringLiteral("first");
  second.mix_name = QStringLiteral("second");
  const auto start = [&](Bench& bench) {
    auto keeper = std::make_unique<BenchKeeper>(bench, folder.path());
    keeper->turn_to(record);
    return keeper;
  };
  for (int times = 0; times < 2; ++times) {
    Bench one(test_catalogue()), two(test_catalogue());
    auto of_one = start(one), of_two = start(two);
    if (times > 0) {
      CHECK(one.state() == first);
      CHECK(two.state() == second);
    }
    one.open(first);
    two.open(second);
    of_two.reset();
    of_one.reset();
  }
  Bench alone(test_catalogue());
  const auto keeper = start(alone);
  CHECK(alone.state() == first);
}

TEST_CASE("What is typed without a pause is on disk before the typing ends", "[bench_draft][regression]") {
  const QTemporaryDir folder;
  Bench bench(test_catalogue());
  BenchKeeper keeper(bench, folder.filePath(QStringLiteral("benches")));
  keeper.turn_to(folder.filePath(QStringLiteral("nursery.gritwright")));
  const auto written = [&] { return !QDir(folder.filePath(QStringLiteral("benches"))).entryList({QStringLiteral("*.draft")}).isEmpty(); };
  REQUIRE_FALSE(written());
  // Shorter pauses than a draft waits for, and far more signs than it may be put off by.
  for (int sign = 0; sign < 200 && !written(); ++sign) {
    bench.edit(QStringLiteral("name"), QStringLiteral("name"), [&](BenchState& state) { state.mix_name = QString(sign + 1, u'x'); });
    QTest::qWait(50);
  }
  CHECK(written());
}

TEST_CASE("A bench that can't be kept says so", "[bench_draft][refuses]") {
  const QTemporaryDir folder;
  Bench bench(test_catalogue());
  QStringList told;
  QObject::connect(&bench, &Bench::told, &bench, [&](const QString& words) { told << words; });
  QFile foreign(folder.filePath(QStringLiteral("no folder")));
  REQUIRE(foreign.open(QIODevice::WriteOnly));
  foreign.close();
  {
    BenchKeeper keeper(bench, foreign.fileName());
    keeper.turn_to(folder.filePath(QStringLiteral("own.gritwright")));
    keeper.save();
    CHECK(told.size() == 1);
  }
  CHECK(QFileInfo(foreign.fileName()).isFile());
}
