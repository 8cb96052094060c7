#include "stock_line.hpp"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <utility>

#include "gritwright/domain/bag.hpp"
#include "gritwright/domain/bin.hpp"
#include "gritwright/domain/component.hpp"
#include "gritwright/domain/fraction.hpp"
#include "gritwright/formats/typed_quantity.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

/// As it was measured: "900 g" or "2 L".
Result<Measured> measured_amount(const std::string& text) {
  Measured amount;
  if (const auto mass = parse_mass(text, MassUnit::gram)) {
    amount.weighed = mass->mass;
    return amount;
  }
  const auto litres = parse_volume(text, VolumeUnit::litre);
  if (!litres) return litres.problems();
  amount.by_jug = LooseVolume(*litres);
  return amount;
}

/// The typical litre weight of what the holder's material is in the catalogue.
std::optional<BulkDensity> typical_density(const OpenWorkbook& workbook, const Catalogue& catalogue, const RecordRef& holder) {
  const auto found = workbook.find(holder);
  if (!found) return std::nullopt;
  std::string name;
  if (const auto* bag = std::get_if<Bag>(&found->record)) name = bag->material;
  if (const auto* fraction = std::get_if<Fraction>(&found->record)) name = fraction->material;
  if (const auto* bin = std::get_if<Bin>(&found->record)) name = bin->material;
  const Material* const material = catalogue.find(name);
  return material == nullptr ? std::nullopt : std::optional(dry_bulk_density(typical_grain(*material)));
}

}  // namespace

StockLine::StockLine(RecordBook& book, const Catalogue& catalogue, const QString& prefix, QWidget* parent)
    : QWidget(parent), book_(book), catalogue_(catalogue), of_(new QLabel(this)), reason_(new QComboBox(this)), amount_(new QLineEdit(this)), fault_(new QLabel(this)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  auto* line = new QGridLayout;
  reason_->setObjectName(prefix + QStringLiteral("_stock_reason"));
  reason_->setAccessibleName(tr("What happened to the grain"));
  for (const auto& [reason, text] : {std::pair{StockReason::counted, tr("counted, left")}, {StockReason::used, tr("used")}, {StockReason::spilt, tr("spilt")},
                                     {StockReason::thrown_out, tr("thrown out")}, {StockReason::returned, tr("put back")}})
    reason_->addItem(text, static_cast<int>(reason));
  reason_->setMinimumHeight(28);
  amount_->setObjectName(prefix + QStringLiteral("_stock_amount"));
  amount_->setAccessibleName(tr("How much, dry"));
  amount_->setMinimumHeight(28);
  set_units(units_);
  auto* enter_button = new QPushButton(tr("Book it"), this);
  enter_button->setObjectName(prefix + QStringLiteral("_stock_enter"));
  enter_button->setAccessibleName(tr("Book it in the stock"));
  enter_button->setMinimumHeight(28);
  fault_->setObjectName(prefix + QStringLiteral("_stock_fault"));
  fault_->setProperty("role", "fault");
  fault_->setWordWrap(true);
  fault_->hide();
  of_->setBuddy(reason_);
  auto* how_much = new QLabel(tr("How much"), this);
  how_much->setBuddy(amount_);
  line->addWidget(of_, 0, 0);
  line->addWidget(reason_, 0, 1, 1, 2);
  line->addWidget(how_much, 1, 0);
  line->addWidget(amount_, 1, 1);
  line->addWidget(enter_button, 1, 2);
  line->setColumnStretch(1, 1);
  layout->addLayout(line);
  layout->addWidget(fault_);
  connect(enter_button, &QPushButton::clicked, this, &StockLine::enter);
  connect(amount_, &QLineEdit::returnPressed, this, &StockLine::enter);
  connect(amount_, &QLineEdit::textEdited, this, [this] { show_fault({}); });
}

QString amount_hint(UnitSystem units) { return units == UnitSystem::us ? StockLine::tr("32 oz or 2 qt, dry") : StockLine::tr("900 g or 2 L, dry"); }

void StockLine::set_units(UnitSystem units) {
  units_ = units;
  amount_->setPlaceholderText(amount_hint(units));
  amount_->setAccessibleDescription(amount_->placeholderText());
  amount_->setMinimumWidth(amount_->fontMetrics().horizontalAdvance(amount_->placeholderText()) + 20);
}

void StockLine::set_holder(const std::optional<RecordRef>& holder) {
  if (holder == holder_) return;
  holder_ = holder;
  // What was typed was meant for the other one.
  amount_->clear();
  show_fault({});
  setEnabled(holder.has_value());
  of_->setText(holder ? tr("Of %1").arg(to_qt(holder->id)) : QString());
}

void StockLine::show_fault(const QString& text) {
  fault_->setText(text);
  fault_->setVisible(!text.isEmpty());
}

void StockLine::enter() {
  if (!holder_) return;
  const auto reason = static_cast<StockReason>(reason_->currentData().toInt());
  auto amount = measured_amount(amount_->text().trimmed().toStdString());
  if (!amount) return show_fault(sentence_text(amount.problems().front(), units_));
  const RecordRef holder = *holder_;
  book_.attempt([&] {
    const OpenWorkbook& workbook = book_.workbook();
    if (reason != StockReason::counted && !workbook.stock_of(holder)) return show_fault(tr("Nothing of it is in stock yet: take it into stock, or count what is left."));
    amount->fallback_density = typical_density(workbook, catalogue_, holder);
    const QString id = to_qt(holder.id);
    const QString much = to_local(amount->weighed ? mass_text(*amount->weighed, units_) : volume_text(in_l(*amount->by_jug), units_));
    QString told;
    switch (reason) {
      case StockReason::counted: told = tr("Counted %1: %2 left").arg(id, much); break;
      case StockReason::spilt: told = tr("Spilt %2 of %1").arg(id, much); break;
      case StockReason::thrown_out: told = tr("Threw out %2 of %1").arg(id, much); break;
      case StockReason::returned: told = tr("Put %2 back to %1").arg(id, much); break;
      default: told = tr("Used %2 of %1").arg(id, much); break;
    }
    const auto known = litre_weight_of(workbook, holder);
    const Problems problems =
        book_.change([&](OpenWorkbook& own) { return enter_stock(own, holder, reason, *amount, today(), {}, {}, told.toStdString()); });
    if (!problems.empty()) return show_fault(sentence_text(problems.front(), units_));
    amount_->clear();
    show_fault({});
    if (!amount->by_jug) return emit book_.told(told);
    const auto weight = [&](BulkDensity of_a_litre) { return to_local(density_text(in_g_l(of_a_litre), units_)); };
    if (known && known->origin == LitreWeightOrigin::own) emit book_.told(tr("%1, at its own litre weight of %2.").arg(told, weight(known->value)));
    else if (known) emit book_.told(tr("%1, at a litre weight of %2 by that of its bag: measure its own.").arg(told, weight(known->value)));
    else if (amount->fallback_density) emit book_.told(tr("%1, at the typical litre weight of %2: measure its own.").arg(told, weight(*amount->fallback_density)));
  });
}

}  // namespace gritwright::desktop
