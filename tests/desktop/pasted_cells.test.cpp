#include "models/pasted_cells.hpp"

#include "support.hpp"

using namespace gritwright::desktop;

TEST_CASE("Cells are split at tabs, else at semicolons, and keep their decimal commas", "[pasted_cells]") {
  const auto tabs = pasted_cells(QStringLiteral("Sieve\tmass\n4,75\t12,5\npan\t3\n"));
  REQUIRE(tabs.rows.size() == 2);
  CHECK(tabs.columns == 2);
  CHECK(tabs.rows[0] == QStringList{QStringLiteral("4,75"), QStringLiteral("12,5")});
  CHECK(tabs.is_pan(1));
  const auto semicolons = pasted_cells(QStringLiteral("4,75;12,5\r\n2;7\r\n"));
  CHECK(semicolons.rows[1] == QStringList{QStringLiteral("2"), QStringLiteral("7")});
}

TEST_CASE("A comma is a decimal mark unless points show that it parts the cells", "[pasted_cells]") {
  CHECK(pasted_cells(QStringLiteral("12,5\n7,25\n")).columns == 1);
  const auto csv = pasted_cells(QStringLiteral("aperture_mm,retained_g\n4.75,12.5\n2.0,7\npan,3\n"));
  CHECK(csv.columns == 2);
  CHECK(csv.rows.size() == 3);
}

TEST_CASE("Headings and empty lines are no rows, an empty text has none", "[pasted_cells][refuses]") {
  CHECK(pasted_cells(QString()).rows.empty());
  CHECK(pasted_cells(QStringLiteral("\n\t\n")).rows.empty());
  CHECK(pasted_cells(QStringLiteral("stayed on\nin grams\n5\n")).rows.size() == 1);
}
