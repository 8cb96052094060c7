#include "screening_view.hpp"

#include <QCoreApplication>
#include <QDate>
#include <QRegularExpression>
#include <algorithm>

#include "gritwright/models/bag_verdict.hpp"
#include "gritwright/models/litres.hpp"
#include "record_book.hpp"
#include "sheet_reader.hpp"
#include "text.hpp"
#include "verdict_figures.hpp"

namespace gritwright::desktop {

namespace {

class ScreenedText {
  Q_DECLARE_TR_FUNCTIONS(Screening)
};

QString sentences(const Faults& faults, UnitSystem units) {
  QStringList all;
  for (const auto& [place, problem] : faults) all << sentence_text(problem, units);
  all.removeDuplicates();
  return semicolon_list(all);
}

/// Openings apart by blanks, semicolons or slashes; a comma between digits is a decimal mark.
std::vector<Aperture> typed_openings(const QString& text, Faults& faults) {
  static const QRegularExpression between(QStringLiteral("[\\s;/]+"));
  FieldReader read(faults);
  std::vector<Aperture> openings;
  for (const QString& one : text.split(between, Qt::SkipEmptyParts)) {
    if (const auto opening = read.aperture(one, "/at")) openings.push_back(*opening);
  }
  return openings;
}

std::vector<Aperture> openings_of_verdict(const GradedBag& graded) {
  if (!graded.band) return {};
  const auto judged = judge(graded.grading, *graded.band, {}, {}, graded.packing.of, graded.lost).value;
  return judged ? judged->openings : std::vector<Aperture>{};
}

/// What the mix counts with; before the sheet says any, that of the bag.
std::optional<BulkDensity> litre_weight(const Bench& bench, std::size_t index) {
  if (const auto& component = bench.evaluation().components[index].component) return dry_bulk_density(component->grain);
  const auto& bag = bench.surroundings().bag;
  return bag ? bulk_density_received(*bag) : std::nullopt;
}

void take_measured(ScreeningRow& row, const PanText& typed, UnitSystem units) {
  Faults faults;
  FieldReader read(faults);
  if (const auto mass = read.mass(typed.retained, "/dry_mass_g")) row.weighed = mass->mass;
  if (const auto litres = read.volume_l(typed.tare, "/volume_l")) row.litres = LooseVolume(*litres);
  row.fault = sentences(faults, units);
}

QString balance_of(ScreeningView& view, UnitSystem units) {
  std::vector<Mass> weighed;
  Mass sum{};
  for (const ScreeningRow& row : view.rows) {
    if (!row.weighed) continue;
    weighed.push_back(*row.weighed);
    sum = sum + *row.weighed;
  }
  if (weighed.empty()) return {};
  const QString total = to_local(mass_text(sum, units));
  if (!view.screened || in_g(*view.screened) <= 0 || weighed.size() < view.rows.size()) return ScreenedText::tr("Weighed so far: %1").arg(total);
  const Loss loss = screening_loss(*view.screened, weighed);
  view.loss = loss;
  return loss.value() < 0 ? ScreenedText::tr("Weighed %1: %2 more than went in").arg(total, to_local(percent_text(-loss.value())))
                          : ScreenedText::tr("Weighed %1, lost %2").arg(total, to_local(percent_text(loss.value())));
}

}  // namespace

ScreeningView screening_view(const Bench& bench) {
  ScreeningView view;
  const auto index = static_cast<std::size_t>(bench.current_component());
  if (index >= bench.state().components.size()) return view;
  const ScreeningText& typed = bench.state().components[index].screening;
  const UnitSystem units = bench.units();
  Faults opening_faults;
  view.openings = typed_openings(typed.openings, opening_faults);
  Faults mass_faults;
  FieldReader read(mass_faults);
  if (const auto mass = read.mass(typed.screened, "/screened")) view.screened = mass->mass;
  else if (const auto& stock = bench.surroundings().stock; typed.screened.trimmed().isEmpty() && stock && *stock > Mass{}) view.screened = stock;
  view.screened_fault = sentences(mass_faults, units);
  view.day = typed.day.trimmed().isEmpty() ? today() : typed_day(typed.day);
  if (!QDate::fromString(to_qt(view.day), Qt::ISODate).isValid()) view.day_fault = sentence_text(Problem{"date.not-a-day", {}, {{"text", view.day}}}, units);
  const auto graded = graded_bag(bench);
  if (!graded) {
    view.reason = ScreenedText::tr("Finish the sieve test first: the fractions are predicted from it.");
    return view;
  }
  if (typed.openings.trimmed().isEmpty()) view.openings = openings_of_verdict(*graded);
  if (view.openings.empty()) {
    view.openings_fault = sentences(opening_faults, units);
    view.reason = ScreenedText::tr("Type the openings to screen at; the verdict names none.");
    return view;
  }
  const auto screened = screen(graded->grading, view.openings, {}, graded->packing.of);
  for (const Problem& problem : screened.problems()) opening_faults.emplace("/at", problem);
  view.openings_fault = sentences(opening_faults, units);
  if (!screened) {
    view.reason = view.openings_fault;
    return view;
  }
  const auto weight = litre_weight(bench, index);
  const auto litres = weight && view.screened ? std::optional(loose_volume(*view.screened, *weight)) : std::nullopt;
  const auto amounts = fraction_amounts(*screened, view.screened, litres);
  view.explanations = explain(*screened);
  view.explanations.push_back(explain_amounts(view.screened, weight));
  bool all_weighed = view.screened_fault.isEmpty() && view.openings_fault.isEmpty() && view.day_fault.isEmpty();
  for (std::size_t i = 0; i < screened->fractions.size(); ++i) {
    ScreeningRow row{fraction_name(screened->fractions[i], units), screened->fractions[i], bulk_density_ratio(*screened, screened->fractions[i]), amounts[i], {}, {}, {}};
    if (i < typed.measured.size()) take_measured(row, typed.measured[i], units);
    all_weighed = all_weighed && row.weighed && row.fault.isEmpty();
    view.rows.push_back(std::move(row));
  }
  view.balance = balance_of(view, units);
  if (typed.screened.trimmed().isEmpty() && view.loss && *view.loss > most_usual_screening_loss)
    view.far_from_screened = ScreenedText::tr("Much of what is left of the bag is in no fraction: type how much dry grain was screened.");
  if (view.loss && -view.loss->value() > most_usual_screening_loss.value())
    view.far_from_screened = ScreenedText::tr("Much more was weighed than went in: look at the weights, or type how much dry grain was screened.");
  view.is_measured = all_weighed && view.far_from_screened.isEmpty();
  return view;
}

std::vector<Fraction> fractions_of(const ScreeningView& view, const Bag& bag, const QString& bag_id) {
  std::vector<Fraction> fractions;
  for (const ScreeningRow& row : view.rows) {
    // A sieve on which nothing stayed leaves no tub.
    if (!row.weighed || in_g(*row.weighed) <= 0) continue;
    Fraction fraction;
    fraction.source = RecordRef{RecordKind::bag, bag_id.toStdString()};
    fraction.material = bag.material;
    fraction.from = row.predicted.from;
    fraction.to = row.predicted.to;
    fraction.day = view.day;
    fraction.dry_mass = row.weighed;
    fraction.volume = row.litres;
    fraction.bulk_density_ratio = row.ratio;
    if (row.predicted.grading) {
      fraction.sizes = *row.predicted.grading;
      fraction.predicted = true;
    }
    fractions.push_back(std::move(fraction));
  }
  return fractions;
}

}  // namespace gritwright::desktop
