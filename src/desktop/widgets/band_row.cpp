#include "band_row.hpp"

#include <QVBoxLayout>

#include "field_form.hpp"
#include "flow_line.hpp"

namespace gritwright::desktop {

BandRow::BandRow(Bench& bench, const QString& prefix, QWidget* parent) : QWidget(parent) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  const auto faults = [&bench] { return &bench.evaluation().faults; };
  auto* from = new FieldForm(bench, faults, this);
  auto* to = new FieldForm(bench, faults, this);
  const auto what = [] { return tr("wanted grain"); };
  from_ = from->add({prefix + QStringLiteral("band_from"), tr("Wanted grain, from"), Kind::aperture, what,
                     [](BenchState& state) -> QString* { return &state.band_from; }, {"/band/from"}, tr("finest size wanted"), {}, {}, {}});
  to->add({prefix + QStringLiteral("band_to"), tr("to"), Kind::aperture, what, [](BenchState& state) -> QString* { return &state.band_to; },
           {"/band/to"}, tr("coarsest size wanted"), {}, {}, {}});
  auto* line = new FlowLine(this);
  line->add({}, from);
  line->add({}, to);
  layout->addWidget(line);
}

void BandRow::take_focus() {
  from_->setFocus();
  from_->selectAll();
}

}  // namespace gritwright::desktop
