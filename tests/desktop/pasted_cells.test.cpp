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

TEST_CASE("A heading with a number in it is a heading, a mistyped number is none", "[pasted_cells]") {
  CHECK(pasted_cells(QStringLiteral("Test 1 (g)\n0\n12,5\n")).rows.size() == 2);
  CHECK(pasted_cells(QStringLiteral("Sieve 2026\tTest 1 g\n8\t0\npan\t2\n")).rows.size() == 2);
  CHECK(pasted_cells(QStringLiteral("O.5\n12,5\n")).rows.size() == 2);
  CHECK(pasted_cells(QStringLiteral("No. 4\t12,5\nNo. 10\t7\n")).rows.size() == 2);
  CHECK(pasted_cells(QStringLiteral("pan\t2\n1\t7\n")).rows.size() == 2);
}

TEST_CASE("An empty cell of a single column keeps its place, so that no mass moves to another sieve", "[pasted_cells][refuses]") {
  const auto column = pasted_cells(QStringLiteral("0\n12.5\n\n60.2\n10\n"));
  REQUIRE(column.rows.size() == 5);
  CHECK(column.rows[2] == QStringList{QString()});
  CHECK(column.rows[3] == QStringList{QStringLiteral("60.2")});
  // Lines that are all apart have no empty cells between them.
  CHECK(pasted_cells(QStringLiteral("0\n\n12.5\n\n60.2\n")).rows.size() == 3);
  CHECK(pasted_cells(QStringLiteral("4\t12\n\t\n2\t7\n")).rows.size() == 2);
}

TEST_CASE("The pan is found at either end of the stack, and a sum below it is no sieve", "[pasted_cells]") {
  const auto summed = pasted_cells(QStringLiteral("4\t100\n2\t75\npan\t2\ntotal\t177\n"));
  REQUIRE(summed.rows.size() == 3);
  CHECK(summed.is_pan(2));
  CHECK(summed.below_pan == QStringList{QStringLiteral("total 177")});
  const auto rising = pasted_cells(QStringLiteral("pan\t2\n2\t75\n4\t100\n"));
  REQUIRE(rising.rows.size() == 3);
  CHECK(rising.is_pan(0));
  CHECK_FALSE(rising.is_pan(2));
  CHECK(rising.below_pan.isEmpty());
}
