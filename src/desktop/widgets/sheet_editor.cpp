#include "sheet_editor.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>
#include <charconv>
#include <optional>
#include <string_view>
#include <system_error>
#include <utility>
#include <vector>

#include "field_form.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "models/sieve_table_model.hpp"
#include "sieve_table.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

/// Of the stack, by a fault's place like "/retained/3/mass_g" or "/replicates/0/retained/3/mass_g".
std::optional<int> row_of_fault(std::string_view place) {
  constexpr std::string_view rows = "/retained/";
  int row = 0;
  const auto at = place.find(rows);
  if (at == std::string_view::npos) return std::nullopt;
  place.remove_prefix(at + rows.size());
  return std::from_chars(place.data(), place.data() + place.size(), row).ec == std::errc() ? std::optional(row) : std::nullopt;
}

}  // namespace

ComponentSheet* current_component(Bench& bench, BenchState& state) {
  const auto index = static_cast<std::size_t>(bench.current_component());
  return index < state.components.size() ? &state.components[index] : nullptr;
}

const Faults* current_faults(const Bench& bench) {
  const auto index = static_cast<std::size_t>(bench.current_component());
  return index < bench.evaluation().components.size() ? &bench.evaluation().components[index].faults : nullptr;
}

SheetEditor::SheetEditor(Bench& bench, QWidget* parent)
    : QWidget(parent),
      bench_(bench),
      sample_(new FieldForm(bench, [&bench] { return current_faults(bench); }, this)),
      measure_(new QComboBox(this)),
      table_(new SieveTable(bench, this)),
      balance_(new QLabel(this)),
      checks_(new QLabel(this)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 8, 10, 8);
  layout->setSpacing(6);
  const auto name_of = [this] {
    const auto index = static_cast<std::size_t>(bench_.current_component());
    return index < bench_.state().components.size() ? bench_.state().components[index].name : QString();
  };
  const auto sheet_text = [this](QString SieveSheet::*member) {
    return [this, member](BenchState& state) -> QString* {
      ComponentSheet* component = current_component(bench_, state);
      return component != nullptr ? &(component->sheet.*member) : nullptr;
    };
  };
  sample_->add({QStringLiteral("component_name"), tr("&Name"), Kind::words, [] { return tr("name"); },
                [this](BenchState& state) -> QString* {
                  ComponentSheet* component = current_component(bench_, state);
                  return component != nullptr ? &component->name : nullptr;
                },
                {}, tr("bag, lot or material"), {}, {}, {}});
  // From the last sample Enter goes into the stack, to what is not weighed yet.
  const auto weighed = [this](std::size_t sample) {
    const auto index = static_cast<std::size_t>(bench_.current_component());
    if (index >= bench_.state().components.size() || sample < bench_.state().components[index].sheet.replicates.size()) return;
    table_->setFocus();
    for (int column = SieveTableModel::retained; column < SieveTableModel::passing; ++column) {
      const QModelIndex top = table_->model()->index(0, column);
      if (table_->isColumnHidden(column) || !(top.flags() & Qt::ItemIsEditable) || !top.data(Qt::EditRole).toString().isEmpty()) continue;
      return table_->setCurrentIndex(top);
    }
  };
  TypedField* const first_sample = sample_->add({QStringLiteral("dry_mass"), tr("&Sample, dry"), Kind::mass, [name_of] { return tr("sample mass of %1").arg(name_of()); },
                sheet_text(&SieveSheet::dry_mass), {"/dry_mass_g"}, tr("weighed before sieving; shows the loss"),
                // A bag measured by the bucket has none; what stands there and can't be is not hidden, nor what is being emptied.
                [this] {
                  const auto index = static_cast<std::size_t>(bench_.current_component());
                  if (index >= bench_.state().components.size()) return true;
                  const SieveSheet& sheet = bench_.state().components[index].sheet;
                  const auto* const field = sample_->findChild<QWidget*>(QStringLiteral("dry_mass"));
                  return sheet.measure != Measure::litres || !sheet.dry_mass.isEmpty() || (field != nullptr && field->hasFocus());
                },
                {}, {}});
  connect(first_sample, &QLineEdit::returnPressed, this, [weighed] { weighed(0); });
  for (std::size_t i = 0; i < most_replicates; ++i) {
    const auto there = [this, i] {
      const auto index = static_cast<std::size_t>(bench_.current_component());
      return index < bench_.state().components.size() && i < bench_.state().components[index].sheet.replicates.size();
    };
    TypedField* const further_sample = sample_->add({QStringLiteral("dry_mass_%1").arg(i + 2), tr("Sample %1, dry").arg(i + 2), Kind::mass, [name_of, i] { return tr("mass of sample %1 of %2").arg(i + 2).arg(name_of()); },
                  [this, i](BenchState& state) -> QString* {
                    ComponentSheet* component = current_component(bench_, state);
                    return component != nullptr && i < component->sheet.replicates.size() ? &component->sheet.replicates[i].dry_mass : nullptr;
                  },
                  {"/replicates/" + std::to_string(i) + "/dry_mass_g"}, tr("a further sample of the same bag"), there, {}, {}});
    connect(further_sample, &QLineEdit::returnPressed, this, [weighed, i] { weighed(i + 1); });
  }
  measure_->setObjectName(QStringLiteral("measure"));
  measure_->addItem(tr("by mass, net"));
  measure_->addItem(tr("by gross and tare"));
  measure_->addItem(tr("by litres, a bag by bucket"));
  measure_->setAccessibleName(tr("How the fractions are measured"));
  measure_->setToolTip(tr("How the fractions are measured"));
  sample_->add(tr("&Measured"), measure_);
  connect(measure_, &QComboBox::activated, this, [this, name_of](int index) {
    bench_.edit(tr("way of measuring %1").arg(name_of()), {}, [&](BenchState& state) {
      ComponentSheet* const component = current_component(bench_, state);
      if (component == nullptr || component->sheet.measure == static_cast<Measure>(index)) return;
      drop_prediction(component->sheet, SieveSheet(component->sheet));
      component->sheet.measure = static_cast<Measure>(index);
    });
  });
  layout->addWidget(sample_);
  table_->setObjectName(QStringLiteral("sieve_table"));
  layout->addWidget(table_, 1);
  balance_->setObjectName(QStringLiteral("balance"));
  balance_->setWordWrap(true);
  balance_->setProperty("role", "figure");
  checks_->setObjectName(QStringLiteral("sheet_checks"));
  checks_->setWordWrap(true);
  checks_->setTextFormat(Qt::PlainText);
  // The keys must come to it where it lies below what is in sight.
  checks_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  checks_->setFocusPolicy(Qt::StrongFocus);
  checks_->setAccessibleName(tr("Checks of the sieve test"));
  layout->addWidget(checks_);
  connect(&bench_, &Bench::changed, this, &SheetEditor::refresh);
  connect(&bench_, &Bench::units_changed, this, &SheetEditor::refresh);
  connect(&bench_, &Bench::current_component_changed, this, &SheetEditor::refresh);
  refresh();
}

QString SheetEditor::balance_text() const {
  if (bench_.state().components[static_cast<std::size_t>(bench_.current_component())].sheet.predicted) return prediction_words();
  const ComponentEvaluation& result = bench_.evaluation().components[static_cast<std::size_t>(bench_.current_component())];
  if (result.replicates.empty()) return first_balance();
  QStringList lines{tr("Sample 1: %1").arg(first_balance())};
  for (std::size_t i = 0; i < result.replicates.size(); ++i) {
    const ReplicateEvaluation& sample = result.replicates[i];
    const bool is_sum = sample.weighed && !(*sample.weighed < Mass{});
    const QString sum = to_local(weighed_text(is_sum ? sample.weighed : std::nullopt, bench_.units()));
    const auto loss = sample.state == SheetState::finished && sample.analysis ? sample.analysis->loss : std::nullopt;
    lines << (loss ? tr("Sample %1: sum %2, loss %3").arg(i + 2).arg(sum, to_local(percent_text(loss->value(), 2))) : tr("Sample %1: sum %2").arg(i + 2).arg(sum));
  }
  return lines.join(u'\n');
}

QString SheetEditor::first_balance() const {
  const ComponentEvaluation& result = bench_.evaluation().components[static_cast<std::size_t>(bench_.current_component())];
  const UnitSystem units = bench_.units();
  const bool below_zero = std::ranges::any_of(result.net, [](const std::optional<Mass>& net) { return net && *net < Mass{}; });
  const QString sum = tr("Sum %1").arg(to_local(result.collected ? volume_text(in_l(*result.collected), units) : weighed_text(result.weighed, units)));
  switch (result.state) {
    case SheetState::empty: return tr("Nothing weighed yet: the curve grows as you type.");
    case SheetState::faulty: return result.weighed && !below_zero ? sum : tr("Sum and loss: \u2013 (see the marked cells)");
    case SheetState::begun: return result.weighed ? tr("%1; type the sample mass or the pan to see the curve.").arg(sum) : tr("%1; type the pan to see the curve.").arg(sum);
    case SheetState::running: return tr("%1, still in the stack %2").arg(sum, to_local(weighed_text(result.still_in_stack, units)));
    case SheetState::finished: break;
  }
  if (!result.weighed) return tr("%1. Fractions lie looser than the whole bag did: litres tell no loss.").arg(sum);
  const auto& loss = result.analysis->loss;
  if (!loss) return tr("%1, loss \u2013 (no sample mass)").arg(sum);
  return loss->value() < 0 ? tr("%1, gain %2").arg(sum, to_local(percent_text(-loss->value(), 2)))
                           : tr("%1, loss %2").arg(sum, to_local(percent_text(loss->value(), 2)));
}

// One sentence for all sieves that it holds for.
QStringList SheetEditor::faults_of_stack(const Faults& faults) const {
  std::vector<std::pair<QString, QStringList>> told;
  for (const auto& [place, problem] : faults) {
    const auto row = row_of_fault(place);
    const bool of_pan = place.find("/pan") != std::string::npos;
    if (!row && !of_pan && !place.ends_with("/retained")) continue;
    const QString sentence = sentence_text(problem, bench_.units());
    auto same = std::ranges::find(told, sentence, &std::pair<QString, QStringList>::first);
    if (same == told.end()) same = told.insert(told.end(), {sentence, {}});
    const QString sieve = row ? table_->stack().row_name(*row) : of_pan ? table_->stack().row_name(table_->stack().rowCount() - 1) : QString();
    if (!sieve.isEmpty() && !same->second.contains(sieve)) same->second << sieve;
  }
  QStringList sentences;
  for (const auto& [sentence, sieves] : told) sentences << (sieves.isEmpty() ? sentence : with_label(comma_list(sieves), sentence));
  return sentences;
}

void SheetEditor::refresh() {
  const auto index = static_cast<std::size_t>(bench_.current_component());
  const bool there = index < bench_.state().components.size();
  setEnabled(there);
  if (!there) return;
  const ComponentEvaluation& result = bench_.evaluation().components[index];
  measure_->setCurrentIndex(static_cast<int>(bench_.state().components[index].sheet.measure));
  balance_->setText(balance_text());
  QStringList sentences;
  // Faults and notes of a row may be cut short there and stand here in full.
  sentences << faults_of_stack(result.faults);
  if (result.analysis) {
    for (const Note& note : result.analysis->notes) {
      sentences << sentence_text(note, bench_.units());
    }
  }
  for (std::size_t i = 0; i < result.replicates.size(); ++i) {
    const ReplicateEvaluation& sample = result.replicates[i];
    if (sample.state != SheetState::finished || !sample.analysis) continue;
    for (const Note& note : sample.analysis->notes) sentences << with_label(tr("Sample %1").arg(i + 2), sentence_text(note, bench_.units()));
  }
  if (result.pooled) {
    for (const Note& note : result.pooled->notes) sentences << sentence_text(note, bench_.units());
  }
  sentences.removeDuplicates();
  checks_->setText(sentences.isEmpty() ? QString() : QStringLiteral("\u2022 ") + sentences.join(QStringLiteral("\n\u2022 ")));
  checks_->setVisible(!sentences.isEmpty());
}

}  // namespace gritwright::desktop
