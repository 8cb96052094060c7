#include "stock_text.hpp"

#include <QCoreApplication>
#include <cmath>

#include "gritwright/workbook/stock_ledger.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class StockText {
  Q_DECLARE_TR_FUNCTIONS(StockText)
};

QString reason_text(StockReason reason) {
  switch (reason) {
    case StockReason::received: return StockText::tr("received");
    case StockReason::screened_into: return StockText::tr("screened into it");
    case StockReason::screened_out_of: return StockText::tr("screened out of it");
    case StockReason::used: return StockText::tr("used");
    case StockReason::returned: return StockText::tr("came back or was tipped in");
    case StockReason::spilt: return StockText::tr("spilt");
    case StockReason::thrown_out: return StockText::tr("thrown out");
    case StockReason::counted: return StockText::tr("difference found by counting");
  }
  return {};
}

/// The sum of the ledger, its newest lines first.
Explanation ledger_explanation(const OpenWorkbook& workbook, const RecordRef& holder, UnitSystem units) {
  constexpr std::size_t most_lines = 12;
  Explanation why;
  why.figure = "stock";
  why.formula = StockText::tr("Sum of the lines of the ledger, in dry grain").toStdString();
  ListFilter of_holder;
  of_holder.about = holder;
  of_holder.limit = most_lines;
  for (const RecordLine& line : workbook.list(RecordKind::stock_entry, of_holder)) {
    const auto found = workbook.find(Id<StockEntry>{line.ref.id});
    if (!found || found->record.holder != holder) continue;
    const StockEntry& entry = found->record;
    QString text = reason_text(entry.reason);
    if (entry.other) text = StockText::tr("%1, %2").arg(text, to_qt(entry.other->id));
    // Grams that came from litres say by which litre weight.
    if (entry.measured && entry.density_used) text = StockText::tr("%1, %2 at %3").arg(text, to_local(volume_text(in_l(*entry.measured), units)), to_local(density_text(in_g_l(*entry.density_used), units)));
    why.inputs.emplace_back(StockText::tr("%1 (%2)").arg(day_text(entry.day), text).toStdString(), to_local(mass_text(entry.change, units)).toStdString());
  }
  why.source = StockText::tr("the record").toStdString();
  return why;
}

QString litre_weight_source(LitreWeightOrigin origin) {
  switch (origin) {
    case LitreWeightOrigin::own: return StockText::tr("its own litre weight, else that of its newest sieve test, else its dry mass by the litres it came with");
    case LitreWeightOrigin::of_bag: return StockText::tr("the litre weight of its bag, since nobody weighed a litre of it");
    case LitreWeightOrigin::predicted: return StockText::tr("the litre weight of its bag by how the fraction was predicted to pack, since nobody weighed a litre of it");
  }
  return {};
}

}  // namespace

FigureGroup stock_figures(const OpenWorkbook& workbook, const RecordRef& holder, UnitSystem units) {
  FigureGroup group;
  group.key = QStringLiteral("stock");
  group.title = StockText::tr("Left of it");
  group.has_ranges = true;
  const QString dash = QStringLiteral("\u2013");
  const auto mass = workbook.stock_of(holder);
  const QString kind = QString::fromUtf8(kind_name(holder.kind).data());
  Figure litres{kind + QStringLiteral("_left_litres"), StockText::tr("Loose grain"), dash, {}, {}, dash};
  Figure dry{kind + QStringLiteral("_left_dry"), StockText::tr("Dry grain"), to_local(mass_text(mass, units)), {}, {}, dash};
  if (!mass) {
    litres.reason = dry.reason = StockText::tr("nothing of it was taken into stock yet");
  } else {
    dry.explanations.push_back(ledger_explanation(workbook, holder, units));
    const auto volume = litres_in_stock(workbook, holder);
    const auto weight = litre_weight_of(workbook, holder);
    if (volume && weight) {
      litres.value = to_local(volume_text(in_l(*volume), units));
      Explanation why;
      why.figure = "stock_litres";
      why.formula = StockText::tr("Loose litres = dry grain / litre weight").toStdString();
      why.inputs = {{dry.label.toStdString(), dry.value.toStdString()}, {StockText::tr("litre weight, dry").toStdString(), to_local(density_text(in_g_l(weight->value), units)).toStdString()}};
      if (weight->ratio) {
        why.inputs.emplace_back(StockText::tr("litre weight of its bag, dry").toStdString(), to_local(density_text(in_g_l(*weight->of_bag), units)).toStdString());
        why.inputs.emplace_back(StockText::tr("litre weight of the fraction over that of its bag, as predicted").toStdString(), number_text(weight->ratio->value(), 3).toStdString());
      }
      why.source = litre_weight_source(weight->origin).toStdString();
      litres.explanations.push_back(std::move(why));
    } else {
      litres.reason = StockText::tr("weigh a litre of it");
    }
  }
  group.figures = {litres, dry};
  return group;
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

QString measured_text(double value) {
  const double hundredths = value * 100;
  const bool typed = std::abs(hundredths - std::round(hundredths)) < 1e-6;
  return number_text(typed ? value : std::round(value * 10) / 10, 9);
}

}  // namespace gritwright::desktop
