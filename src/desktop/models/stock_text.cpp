#include "stock_text.hpp"

#include <QCoreApplication>

#include "gritwright/workbook/stock_ledger.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class StockText {
  Q_DECLARE_TR_FUNCTIONS(StockText)
};

}  // namespace

QString stock_text(const OpenWorkbook& workbook, const RecordRef& holder, UnitSystem units) {
  const auto mass = workbook.stock_of(holder);
  if (!mass) return QStringLiteral("\u2013");
  const QString dry = StockText::tr("%1 dry").arg(to_local(mass_text(mass, units)));
  const auto litres = litres_in_stock(workbook, holder);
  return litres ? StockText::tr("%1 (%2)").arg(to_local(volume_text(in_l(*litres), units)), dry) : dry;
}

QString short_stock_text(const OpenWorkbook& workbook, const RecordLine& line, UnitSystem units) {
  if (!line.stock) return QStringLiteral("\u2013");
  const auto litres = litres_in_stock(workbook, line.ref);
  return litres ? to_local(volume_text(in_l(*litres), units)) : StockText::tr("%1 dry").arg(to_local(mass_text(line.stock, units)));
}

QString tested_text(const OpenWorkbook& workbook, const RecordRef& holder) {
  const auto tests = workbook.sieve_tests_of(holder);
  if (tests.empty()) return StockText::tr("Tested: not yet");
  const auto& last = tests.back().record.test.date;
  const auto count = static_cast<int>(tests.size());
  return last ? StockText::tr("Tested: %n sieve test(s), the last on %1", nullptr, count).arg(day_text(*last)) : StockText::tr("Tested: %n sieve test(s)", nullptr, count);
}

}  // namespace gritwright::desktop
