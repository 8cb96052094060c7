#include "models/typed_text.hpp"

#include <QLocale>

#include "models/stock_text.hpp"
#include "support.hpp"
#include "text.hpp"

using namespace gritwright;
using namespace gritwright::desktop;

TEST_CASE("A bare number keeps its meaning when the units are switched", "[typed_text][law]") {
  const QString kept = kept_text(QStringLiteral("12.5"), Kind::mass, UnitSystem::us);
  CHECK(kept == QStringLiteral("12.5 oz"));
  CHECK(shown_text(kept, Kind::mass, UnitSystem::us) == QStringLiteral("12.5"));
  CHECK(shown_text(kept, Kind::mass, UnitSystem::metric) == QStringLiteral("354"));
  CHECK(shown_text(QStringLiteral("354.4"), Kind::mass, UnitSystem::metric) == QStringLiteral("354.4"));
  CHECK(shown_text(QStringLiteral("354.4"), Kind::mass, UnitSystem::us) == local("12.5"));
}

// NIST SP 811, appendix B: pound per cubic foot 16.01846 kg/m3; inch 2.54 cm.
TEST_CASE("In US units a density is in pounds per cubic foot, and the lengths of a hint are in inches", "[typed_text][published]") {
  CHECK(unit_of(Kind::density, UnitSystem::us) == QStringLiteral("lb/ft3"));
  CHECK(kept_text(QStringLiteral("43.7"), Kind::density, UnitSystem::us) == QStringLiteral("43.7 lb/ft3"));
  CHECK(shown_text(QStringLiteral("700"), Kind::density, UnitSystem::us) == local("43.7"));
  CHECK(shown_text(QStringLiteral("43.7 lb/ft3"), Kind::density, UnitSystem::us) == QStringLiteral("43.7"));
  CHECK(shown_text(QStringLiteral("43.7 lb/ft3"), Kind::density, UnitSystem::metric) == QStringLiteral("700"));
  const QString hint = QStringLiteral("common practice: 0.3 to 1 cm");
  CHECK(hint_text(hint, UnitSystem::us) == with_units_kept(QStringLiteral("common practice: %1 to %2 in").arg(local("0.118"), local("0.394"))));
  CHECK(hint_text(hint, UnitSystem::metric) == hint);
  CHECK(hint_text(QStringLiteral("depth, like 2,54 cm"), UnitSystem::us) == QStringLiteral("depth, like %1\u00a0in").arg(local("1.00")));
}

TEST_CASE("A unit that was typed stays in sight", "[typed_text]") {
  CHECK(kept_text(QStringLiteral("2,5 kg"), Kind::mass, UnitSystem::us) == QStringLiteral("2,5 kg"));
  CHECK(shown_text(QStringLiteral("2,5 kg"), Kind::mass, UnitSystem::metric) == QStringLiteral("2,5 kg"));
}

TEST_CASE("Rubbish is shown as it was typed in either units", "[typed_text][refuses]") {
  CHECK(kept_text(QStringLiteral("12g3"), Kind::mass, UnitSystem::us) == QStringLiteral("12g3"));
  CHECK(shown_text(QStringLiteral("12g3"), Kind::mass, UnitSystem::us) == QStringLiteral("12g3"));
}

TEST_CASE("A sentence that begins with what was typed leaves its letters as they are", "[typed_text][refuses]") {
  CHECK(sentence_text(Problem{"number.not-a-number", {}, {{"text", std::string("l26.3")}}}).startsWith(local("l26.3 ")));
  CHECK(sentence_text(Problem{"workbook.not-there", {}, {{"kind", std::string("tree")}, {"id", std::string("tr-06")}}}).at(0).isUpper());
}

TEST_CASE("A measured figure shows as many digits as were typed, and a computed one only one decimal", "[typed_text]") {
  CHECK(measured_text(1074.29719) == local("1074.3"));
  CHECK(measured_text(500 / 0.55) == local("909.1"));
  CHECK(measured_text(2650.25) == local("2650.25"));
  CHECK(measured_text(450) == QStringLiteral("450"));
}

TEST_CASE("A field shows as many digits as were typed, and of a computed figure the sensible ones", "[typed_text]") {
  CHECK(shown_text(QStringLiteral("1074.29719"), Kind::density, UnitSystem::metric) == local("1074.3"));
  CHECK(shown_text(QStringLiteral("1074,29719"), Kind::density, UnitSystem::us) == local("67.1"));
  CHECK(shown_text(QStringLiteral("23.4567891"), Kind::percent, UnitSystem::metric) == local("23.5"));
  CHECK(shown_text(QStringLiteral("12.3456789"), Kind::mass, UnitSystem::metric) == local("12.35"));
  CHECK(shown_text(QStringLiteral("1074,25"), Kind::density, UnitSystem::metric) == QStringLiteral("1074,25"));
  CHECK(shown_text(QStringLiteral("0.1234"), Kind::mass, UnitSystem::metric) == QStringLiteral("0.1234"));
}

TEST_CASE("A day can be typed with single digits, or as lists show it in any language", "[typed_text][roundtrip]") {
  CHECK(typed_day(QStringLiteral(" 2026-3-1 ")) == "2026-03-01");
  CHECK(typed_month_day(QStringLiteral("3-1")) == "03-01");
  const QLocale before;
  for (const QLocale& locale : {QLocale::c(), QLocale(QLocale::German), QLocale(QLocale::English, QLocale::UnitedStates), QLocale(QLocale::French), QLocale(QLocale::Spanish), QLocale(QLocale::Japanese)}) {
    QLocale::setDefault(locale);
    INFO(locale.name().toStdString());
    for (const char* day : {"2026-11-29", "2026-03-04", "2031-12-01", "1998-05-01"}) CHECK(typed_day(day_text(day)) == day);
    // In a sentence or a table, too; a lot mark is none.
    CHECK(to_local("Trees due by 2026-03-14") == QStringLiteral("Trees due by ") + day_text("2026-03-14"));
    CHECK(to_local("lot 12026-03-145") == QStringLiteral("lot 12026-03-145"));
  }
  QLocale::setDefault(before);
  for (const char* dotted : {"29.11.2026", "29. 11. 2026"}) CHECK(typed_day(QLatin1String(dotted)) == "2026-11-29");
}

TEST_CASE("What is no day stays as it was typed", "[typed_text][refuses]") {
  for (const char* text : {"", "soon", "3-1", "26-3-1", "2026-13-1", "2026-02-30", "30.2.2026"}) CHECK(typed_day(QLatin1String(text)) == text);
  CHECK(typed_month_day(QStringLiteral("March")) == "March");
}
