#include "find_results.hpp"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>
#include <string_view>
#include <utility>

#include "bench_ranges.hpp"
#include "gritwright/models/prediction_score.hpp"
#include "gritwright/report/design_report.hpp"
#include "gritwright/report/mix_report.hpp"
#include "gritwright/report/text_table.hpp"
#include "mix_learning.hpp"
#include "record_surroundings.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class FindResultText {
  Q_DECLARE_TR_FUNCTIONS(FindParts)
};

QString dash() { return QStringLiteral("\u2013"); }

QString percent(double share, int decimals = 1) { return to_local(percent_text(share, decimals)); }

/// An amount in a wish's own unit.
QString amount_words(const WishFigure& figure, double amount, UnitSystem units) {
  if (!std::isfinite(amount)) return FindResultText::tr("an unknown amount, because the figure is not defined");
  if (std::holds_alternative<ExchangeCapacity>(figure)) return FindResultText::tr("%1 meq/L").arg(number_text(amount, 3));
  if (std::holds_alternative<MixPrice>(figure)) return FindResultText::tr("%1 a litre").arg(QLocale().toString(amount, 'f', 2));
  const auto* in_pot = std::get_if<FigureInPot>(&figure);
  if (in_pot != nullptr && in_pot->figure == PotFigure::wet_mass) return to_local(density_text(amount, units));
  return percent(in_pot != nullptr || std::holds_alternative<ShareOf>(figure) ? amount : amount / 100);
}

/// How far an amount lies from another: between shares that is points, for "by 31 %" reads as a part of the share itself.
QString difference_words(const WishFigure& figure, double difference, UnitSystem units) {
  const auto* in_pot = std::get_if<FigureInPot>(&figure);
  const bool of_share = !std::holds_alternative<ExchangeCapacity>(figure) && !std::holds_alternative<MixPrice>(figure) && (in_pot == nullptr || in_pot->figure != PotFigure::wet_mass);
  if (!of_share || !std::isfinite(difference)) return amount_words(figure, difference, units);
  const double points = in_pot != nullptr || std::holds_alternative<ShareOf>(figure) ? 100 * difference : difference;
  constexpr double least_told = 0.1;
  if (points < least_told / 2) return FindResultText::tr("less than %1 points").arg(QLocale().toString(least_told, 'f', 1));
  return FindResultText::tr("%1 points").arg(QLocale().toString(points, 'f', 1));
}

QString figure_words(const FoundParts& found, const WishFigure& figure, UnitSystem units) {
  const auto size = [&](Aperture aperture) { return to_local(size_text(aperture, units)); };
  if (const auto* band = std::get_if<BandShare>(&figure)) return FindResultText::tr("%1 to %2").arg(size(band->from), size(band->to));
  if (const auto* finer = std::get_if<FinerShare>(&figure)) return FindResultText::tr("finer than %1").arg(size(finer->size));
  if (const auto* share = std::get_if<ShareOf>(&figure)) return FindResultText::tr("share of %1").arg(to_qt(share->name));
  if (const auto* limits = std::get_if<PassingLimits>(&figure)) return FindResultText::tr("curve within its limits at %n size(s)", nullptr, static_cast<int>(limits->limits.size()));
  if (const auto* grading = std::get_if<NearestGrading>(&figure)) return FindResultText::tr("curve near its %n point(s)", nullptr, static_cast<int>(grading->points.size()));
  if (std::holds_alternative<ExchangeCapacity>(figure)) return FindResultText::tr("exchange capacity");
  if (std::holds_alternative<MixPrice>(figure)) return FindResultText::tr("price");
  const auto& in_pot = std::get<FigureInPot>(figure);
  QString name;
  switch (in_pot.figure) {
    case PotFigure::air_filled_porosity: name = FindResultText::tr("air"); break;
    case PotFigure::container_capacity: name = FindResultText::tr("water"); break;
    case PotFigure::available_in_pot: name = FindResultText::tr("water plants can take"); break;
    case PotFigure::wet_mass: name = FindResultText::tr("wet litre weight"); break;
  }
  return in_pot.pot == first_pot ? name : FindResultText::tr("%1 in %2").arg(name, found.pot_name(in_pot.pot));
}

const PotWater* in_pot(const RatedRecipe& recipe) {
  const auto water = recipe.pots.find(first_pot);
  return water != recipe.pots.end() ? &water->second : nullptr;
}

/// Three digits, or all before the point: nobody compares powers of ten.
QString score_words(double score) {
  constexpr double three_digits = 1000;
  return std::isfinite(score) && score >= three_digits ? number_text(std::round(score), 15) : number_text(score, 3);
}

QString with_currency(const QString& amount, const QString& currency) { return currency.isEmpty() ? amount : amount + u'\u00a0' + currency; }
QString price_words(const std::optional<PricePerLitre>& price) { return price ? QLocale().toString(price->value(), 'f', 2) : dash(); }

QString sets_sentence(const FoundParts& found, const std::vector<std::size_t>& set, UnitSystem units) {
  QStringList wishes;
  for (const std::size_t wish : set) wishes << wish_words(found, found.problem().wishes[wish], units);
  const QString list = semicolon_list(wishes);
  return set.size() == 1 ? FindResultText::tr("Cannot be had: %1.").arg(list) : FindResultText::tr("Cannot be had together: %1.").arg(list);
}

QString proof_sentence(const FoundParts& found) {
  const DesignAnswer& answer = found.answer;
  if (answer.stopped) return FindResultText::tr("The search was stopped: these are the best so far, not proven.");
  if (!found.problem().form.whole) return FindResultText::tr("Free shares are improved from fixed starts: a better recipe may exist.");
  QLocale locale;
  const QString counts = FindResultText::tr("%1 recipes worked out, %2 excluded by bounds").arg(locale.toString(static_cast<qulonglong>(answer.examined)), locale.toString(static_cast<qulonglong>(answer.excluded)));
  if (answer.proven && answer.recipes.empty()) return FindResultText::tr("Proven: %1.").arg(counts);
  if (answer.proven) return FindResultText::tr("Proven best: %1.").arg(counts);
  if (answer.gap && *answer.gap > 0) return FindResultText::tr("Not proven best: %1; the best score may be lower by up to %2.").arg(counts, score_words(*answer.gap));
  if (answer.gap) return FindResultText::tr("%1; no recipe scores less.").arg(counts);
  return FindResultText::tr("Not proven best: %1.").arg(counts);
}

Mix mix_of(const FoundParts& found, const RatedRecipe& recipe) {
  Mix mix;
  mix.water = recipe.water;
  mix.settling = found.problem().settling;
  for (std::size_t i = 0; i < recipe.parts.size(); ++i) {
    if (!(recipe.parts[i] > 0)) continue;
    Component component = found.problem().candidates[i].component;
    component.parts = Parts(recipe.parts[i]);
    mix.components.push_back(std::move(component));
  }
  return mix;
}

/// The state of the mix of `mix_of`, without the candidates that are not in it.
MixState state_of_used(const RatedRecipe& recipe) {
  MixState state = recipe.mix;
  const auto keep_used = [&](auto& list) {
    auto kept = list.begin();
    for (std::size_t i = 0; i < list.size(); ++i)
      if (recipe.parts[i] > 0) *kept++ = list[i];
    list.erase(kept, list.end());
  };
  keep_used(state.mass_shares);
  keep_used(state.loose_shares);
  keep_used(state.class_betas);
  keep_used(state.grain_pores);
  if (state.envelope_shares) keep_used(*state.envelope_shares);
  return state;
}

/// Where the figures of a recipe come from, by itself and in one pot of the problem; as on the bench.
std::vector<Explanation> recipe_explanations(const FoundParts& found, const RatedRecipe& recipe, const std::string& pot) {
  const Mix mix = mix_of(found, recipe);
  const MixState state = state_of_used(recipe);
  const auto water = recipe.pots.find(pot);
  return water != recipe.pots.end() ? explain(mix, state, water->second) : explain(mix, state);
}

std::vector<Explanation> explanations_of(const std::vector<Explanation>& all, std::string_view figure) {
  std::vector<Explanation> chosen;
  for (const Explanation& explanation : all)
    if (explanation.figure == figure) chosen.push_back(explanation);
  return chosen;
}

/// The pot tests whose constants a recipe has; empty where it has the usual ones.
std::optional<Note> learnt_note(const FoundParts& found, const RatedRecipe& recipe) {
  if (recipe.water == found.problem().water) return std::nullopt;
  const std::vector<MixCalibration>& calibrations = found.setup.calibrations;
  LearntConstants learnt;
  learnt.constants = recipe.water;
  learnt.pooled = pooled_for(material_shares(mix_of(found, recipe)), tested_shares(calibrations));
  return note_of_tests(learnt, calibrations);
}

/// A recipe with all that its ranges hang on, as the bench would have it.
MixQuestion recipe_question(const FoundParts& found, const RatedRecipe& recipe, const Catalogue& catalogue) {
  MixQuestion question;
  question.mix = mix_of(found, recipe);
  for (std::size_t i = 0; i < recipe.parts.size(); ++i) {
    if (!(recipe.parts[i] > 0)) continue;
    const ShelfItem& item = found.setup.grain[found.setup.taken[i]];
    // What is not sieved yet is laid on the bench as a sheet of its own.
    question.samples.push_back(item.sample ? item.sample : sample_of(evaluate_component(sheet_as_designed(item.candidate.component, catalogue), catalogue)));
  }
  if (const auto pot = found.problem().pots.find(first_pot); pot != found.problem().pots.end()) question.container = pot->second;
  return question;
}


std::optional<Range> range_of_recipe(const FoundParts& found, std::size_t index, MixFigure figure) { return index < found.ranges.size() ? found.ranges[index].of(figure) : std::nullopt; }

/// "18.2 %", and below it where it lies in 90 of 100 cases.
QString with_range(double share, const std::optional<Range>& range) {
  const QString value = percent(share);
  return range ? QStringLiteral("%1\n%2").arg(value, range_beside(range, share)) : value;
}

/// Whether other grain sizes would help, which price, exchange and shares don't hang on.
bool hangs_on_sizes(const WishFigure& figure) {
  return !std::holds_alternative<MixPrice>(figure) && !std::holds_alternative<ExchangeCapacity>(figure) && !std::holds_alternative<ShareOf>(figure);
}

std::vector<TradeOffPoint> points_of(const FoundParts& found, const std::vector<TradeOff>& all) {
  std::vector<TradeOffPoint> points;
  for (const TradeOff& one : all) {
    TradeOffPoint point{one.across, one.up, 0, parts_words(found, one.parts)};
    for (std::size_t i = 0; i < found.answer.recipes.size(); ++i)
      if (found.answer.recipes[i].parts == one.parts) point.rank = static_cast<int>(i) + 1;
    points.push_back(std::move(point));
  }
  std::ranges::stable_sort(points, {}, &TradeOffPoint::across);
  return points;
}

}  // namespace

QString FoundParts::pot_name(const std::string& pot) const {
  for (const ShelfPot& further : setup.further_pots)
    if (further_pot(further.id) == pot) return further.container.name.empty() ? further.id : QStringLiteral("%1 %2").arg(further.id, to_qt(further.container.name));
  return {};
}

std::vector<const RatedRecipe*> FoundParts::listed() const {
  std::vector<const RatedRecipe*> recipes;
  for (const RatedRecipe& recipe : answer.recipes) recipes.push_back(&recipe);
  if (recipes.empty() && answer.nearest) recipes.push_back(&*answer.nearest);
  return recipes;
}

QString wish_words(const FoundParts& found, const Wish& wish, UnitSystem units) {
  QString figure = figure_words(found, wish.figure, units);
  const auto amount = [&](double value) { return amount_words(wish.figure, value, units); };
  if (wish.least && wish.most) return FindResultText::tr("%1 between %2 and %3").arg(figure, amount(*wish.least), amount(*wish.most));
  if (wish.least) return FindResultText::tr("%1 at least %2").arg(figure, amount(*wish.least));
  if (wish.most) return FindResultText::tr("%1 at most %2").arg(figure, amount(*wish.most));
  return figure;
}

QString parts_words(const FoundParts& found, const std::vector<double>& parts) {
  QStringList words;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (!(parts[i] > 0)) continue;
    const QString name = to_qt(found.problem().candidates[i].component.name);
    words << (found.problem().form.whole ? FindResultText::tr("%1 %2", "parts, name").arg(number_text(parts[i], 3), name) : FindResultText::tr("%1 %2", "parts, name").arg(percent(parts[i]), name));
  }
  return words.join(QStringLiteral(" : "));
}

PictureTable recipes_table(const FoundParts& found, UnitSystem units) {
  PictureTable table;
  table.heading << FindResultText::tr("rank") << FindResultText::tr("parts") << FindResultText::tr("misses") << FindResultText::tr("air") << FindResultText::tr("water") << (found.setup.currency.isEmpty() ? FindResultText::tr("price/L") : FindResultText::tr("%1/L", "currency").arg(found.setup.currency)) << FindResultText::tr("score");
  int rank = 0;
  std::size_t index = 0;
  for (const RatedRecipe* recipe : found.listed()) {
    QStringList misses;
    for (std::size_t i = 0; i < recipe->misses.size(); ++i) {
      if (!(recipe->misses[i].violation > 0)) continue;
      const WishFigure& figure = found.problem().wishes[i].figure;
      misses << FindResultText::tr("%1 by %2").arg(figure_words(found, figure, units), difference_words(figure, recipe->misses[i].amount, units));
    }
    const PotWater* water = in_pot(*recipe);
    const QString place = found.answer.recipes.empty() ? FindResultText::tr("nearest") : QLocale().toString(++rank);
    table.rows.push_back({place, parts_words(found, recipe->parts), misses.isEmpty() ? FindResultText::tr("nothing") : comma_list(misses),
                          water != nullptr ? with_range(water->air_filled_porosity.value(), range_of_recipe(found, index, MixFigure::air_filled_porosity)) : dash(),
                          water != nullptr ? with_range(water->container_capacity.value(), range_of_recipe(found, index, MixFigure::container_capacity)) : dash(),
                          price_words(recipe->price), score_words(recipe->score)});
    ++index;
  }
  return table;
}

QStringList recipe_sentences(const FoundParts& found, std::size_t index, UnitSystem units) {
  QStringList sentences;
  const auto recipes = found.listed();
  if (index >= recipes.size()) return sentences;
  const RatedRecipe& recipe = *recipes[index];
  const DesignProblem& problem = found.problem();
  for (std::size_t i = 0; i < recipe.misses.size(); ++i) {
    if (!(recipe.misses[i].violation > 0)) continue;
    sentences << FindResultText::tr("Misses \u201c%1\u201d by %2.").arg(wish_words(found, problem.wishes[i], units), difference_words(problem.wishes[i].figure, recipe.misses[i].amount, units));
  }
  QStringList binding;
  for (const std::size_t wish : recipe.binding)
    if (!(recipe.misses[wish].violation > 0)) binding << wish_words(found, problem.wishes[wish], units);
  if (!binding.isEmpty()) sentences << FindResultText::tr("Held back by, right at the limit: %1.").arg(semicolon_list(binding));
  for (const std::size_t candidate : recipe.used_up) sentences << FindResultText::tr("Uses up %1.").arg(to_qt(problem.candidates[candidate].component.name));
  for (std::size_t i = 0; i < recipe.parts.size(); ++i) {
    if (recipe.parts[i] > 0 && found.setup.grain[found.setup.taken[i]].is_printed_size)
      sentences << FindResultText::tr("%1 is not sieved yet: its printed size stands in for its curve.").arg(to_qt(problem.candidates[i].component.name));
  }
  if (sentences.isEmpty()) sentences << FindResultText::tr("Holds every wish with room to spare.");
  if (const auto learnt = learnt_note(found, recipe)) sentences << sentence_text(*learnt, units);
  return sentences;
}

FigureGroup recipe_figures(const FoundParts& found, std::size_t index, UnitSystem units) {
  FigureGroup group{QStringLiteral("recipe"), FindResultText::tr("The chosen recipe"), {}, true};
  const auto recipes = found.listed();
  if (index >= recipes.size()) return group;
  const RatedRecipe& recipe = *recipes[index];
  std::vector<Explanation> why = recipe_explanations(found, recipe, first_pot);
  for (Explanation& explanation : explain_design()) why.push_back(std::move(explanation));
  if (recipe.price) why.push_back(explain_price(found.problem(), recipe));
  const auto add = [&](const char* key, const char* explained_as, const QString& label, const QString& value, const QString& reason, const std::optional<Range>& range = {},
                       const std::function<std::string(double)>& text = {}) {
    Figure figure{QStringLiteral("recipe_") + QLatin1String(key), label, value, {}, {}};
    if (value.isEmpty()) {
      figure.value = dash();
      figure.reason = reason;
    }
    figure.explanations = explanations_of(why, explained_as);
    put_range(figure, range, text);
    group.figures.push_back(std::move(figure));
  };
  const auto drawn = [&](MixFigure figure) { return range_of_recipe(found, index, figure); };
  const auto in_percent = [](double share) { return percent_text(share); };
  const auto density = [units](double g_l) { return density_text(g_l, units); };
  const PotWater* water = in_pot(recipe);
  const QString no_pot = FindResultText::tr("choose a pot, and measure each grain density");
  const auto share = [&](Porosity PotWater::*member) { return water != nullptr ? percent((water->*member).value()) : QString(); };
  add("air", "air_filled_porosity", FindResultText::tr("Air that drains free"), share(&PotWater::air_filled_porosity), no_pot, drawn(MixFigure::air_filled_porosity), in_percent);
  add("water", "container_capacity", FindResultText::tr("Water held"), share(&PotWater::container_capacity), no_pot, drawn(MixFigure::container_capacity), in_percent);
  add("available", "available_in_pot", FindResultText::tr("Water plants can take"), share(&PotWater::available_in_pot), no_pot, drawn(MixFigure::available_in_pot), in_percent);
  for (const ShelfPot& further : found.setup.further_pots) {
    const auto in_it = recipe.pots.find(further_pot(further.id));
    const QString name = found.pot_name(further_pot(further.id));
    const std::vector<Explanation> why_in_it = recipe_explanations(found, recipe, further_pot(further.id));
    const auto figure = [&](const char* key, const char* explained_as, const QString& label, Porosity PotWater::*member) {
      add(key, explained_as, label, in_it != recipe.pots.end() ? percent((in_it->second.*member).value()) : QString(), no_pot);
      group.figures.back().key += QStringLiteral("_in_") + further.id;
      group.figures.back().explanations = explanations_of(why_in_it, explained_as);
    };
    figure("air", "air_filled_porosity", FindResultText::tr("Air in %1").arg(name), &PotWater::air_filled_porosity);
    figure("water", "container_capacity", FindResultText::tr("Water in %1").arg(name), &PotWater::container_capacity);
  }
  const auto& settled = recipe.mix.settled;
  add("weight", "bulk_density_g_l", FindResultText::tr("Litre weight, dry"), settled ? to_local(density_text(in_g_l(settled->bulk_density), units)) : QString(), FindResultText::tr("measure each grain density"),
      drawn(MixFigure::bulk_density_g_l), density);
  const auto shrinkage = recipe.mix.shrinkage;
  add("shrinkage", "shrinkage_percent", FindResultText::tr("Shrinks on mixing by"), shrinkage ? percent(shrinkage->value()) : QString(), FindResultText::tr("measure each grain density"), drawn(MixFigure::shrinkage), in_percent);
  add("exchange", "cec_meq_l", FindResultText::tr("Exchange capacity"),
      settled && settled->cation_exchange ? FindResultText::tr("%1 meq/L").arg(number_text(settled->cation_exchange->value(), 3)) : QString(), FindResultText::tr("unknown for a component"),
      drawn(MixFigure::cec_meq_l), [](double meq) { return gritwright::figure(meq, 0).append(" meq/L"); });
  add("price", "price", FindResultText::tr("Price of a mixed litre"), recipe.price ? with_currency(price_words(recipe.price), found.setup.currency) : QString(), FindResultText::tr("type each price"));
  add("score", "score", FindResultText::tr("Score, 0 is best"), score_words(recipe.score), {});
  return group;
}

QStringList far_off_sentences(const FoundParts& found, UnitSystem units) {
  constexpr double far_off = 10;  // points, or as much in the unit that the score counts in
  QStringList sentences;
  if (found.answer.recipes.empty()) return sentences;
  const std::vector<Miss>& misses = found.answer.recipes.front().misses;
  for (std::size_t i = 0; i < misses.size(); ++i) {
    const Wish& wish = found.problem().wishes[i];
    if (!(misses[i].violation > far_off) || !std::isfinite(misses[i].amount) || !hangs_on_sizes(wish.figure)) continue;
    const QString words = wish_words(found, wish, units), by = difference_words(wish.figure, misses[i].amount, units);
    sentences << FindResultText::tr("The best recipe is far from \u201c%1\u201d and misses it by %2: screen a bag to it, take in other grain, or loosen the wish.").arg(words, by);
  }
  return sentences;
}

QStringList answer_sentences(const FoundParts& found, UnitSystem units) {
  QStringList sentences;
  const DesignAnswer& answer = found.answer;
  if (answer.recipes.empty()) {
    const bool sure = answer.proven || !answer.contradictions.empty();
    sentences << (sure ? FindResultText::tr("No recipe holds every wish that must hold.") : FindResultText::tr("No recipe was found that holds every wish that must hold."));
    for (const auto& set : answer.contradictions) sentences << sets_sentence(found, set, units);
    if (answer.nearest) sentences << FindResultText::tr("The nearest that can be had is listed.");
  }
  sentences << proof_sentence(found);
  for (const WishRoom& room : answer.room) {
    const Wish& wish = found.problem().wishes[room.wish];
    const auto moved = [&](double amount) { return difference_words(wish.figure, amount, units); };
    const QString words = wish_words(found, wish, units);
    if (room.stricter && room.looser) sentences << FindResultText::tr("Another recipe comes first with \u201c%1\u201d %2 stricter or %3 looser.").arg(words, moved(*room.stricter), moved(*room.looser));
    else if (room.stricter) sentences << FindResultText::tr("Another recipe comes first with \u201c%1\u201d %2 stricter.").arg(words, moved(*room.stricter));
    else if (room.looser) sentences << FindResultText::tr("Another recipe comes first with \u201c%1\u201d %2 looser.").arg(words, moved(*room.looser));
  }
  if (answer.rounding_cost) sentences << FindResultText::tr("Whole parts instead of free shares cost %1 of score.").arg(score_words(*answer.rounding_cost));
  QStringList told;
  for (const Note& note : answer.notes) {
    // Said in this page's own words already.
    if (note.code == "design.wish-out-of-reach" || note.code == "design.not-proven") continue;
    told << sentence_text(note, units);
  }
  told.removeDuplicates();
  return sentences + told;
}

void add_ranges(FoundParts& found, const Catalogue& catalogue, const SliceRunner& runner, const std::stop_token& stop) {
  std::optional<UncertainMix> before;
  for (const RatedRecipe* recipe : found.listed()) {
    if (stop.stop_requested()) return;
    const MixQuestion question = recipe_question(found, *recipe, catalogue);
    MixSpread spread = spread_of(question, catalogue);
    UncertainMix drawn = before ? UncertainMix(question.mix, std::move(spread), pot_of(question), *before) : UncertainMix(question.mix, std::move(spread), pot_of(question));
    found.ranges.push_back(drawn.ranges(standing_sample, runner));
    before.emplace(std::move(drawn));
  }
}

MixVersion version_of(const FoundParts& found, std::size_t index, const std::string& name, const std::string& day) {
  const RatedRecipe& recipe = *found.listed()[index];
  MixVersion version;
  version.mix = mix_of(found, recipe);
  version.mix.name = name;
  version.mix.spill = found.setup.spill;
  for (std::size_t i = 0; i < recipe.parts.size(); ++i) {
    if (recipe.parts[i] > 0) version.sources.push_back(found.setup.grain[found.setup.taken[i]].source);
  }
  version.day = day;
  for (const Wish& wish : found.setup.problem->wishes) {
    if (const auto* band = std::get_if<BandShare>(&wish.figure)) version.wanted_band = SizeBand{band->from, band->to};
  }
  return version;
}

TradeOffPicture trade_off_picture(const FoundParts& found) {
  return {points_of(found, found.answer.air_and_water), points_of(found, found.answer.price_and_fit), found.setup.currency};
}

QString trade_off_sentence(const FoundParts* found) {
  if (found == nullptr) return FindResultText::tr("Trade-offs come with the first search: find parts for a pot.");
  const TradeOffPicture picture = trade_off_picture(*found);
  QStringList sentences;
  if (!picture.air_and_water.empty()) {
    const TradeOffPoint& first = picture.air_and_water.front();
    const TradeOffPoint& last = picture.air_and_water.back();
    sentences << FindResultText::tr("Air against water: from %1 air with %2 water to %3 air with %4 water; nothing found beats these %n recipe(s) in both.", nullptr, static_cast<int>(picture.air_and_water.size()))
                     .arg(percent(first.across, 0), percent(first.up, 0), percent(last.across, 0), percent(last.up, 0));
  }
  if (!picture.price_and_fit.empty()) {
    const TradeOffPoint& first = picture.price_and_fit.front();
    const TradeOffPoint& last = picture.price_and_fit.back();
    QLocale locale;
    sentences << FindResultText::tr("Price against fit: from %1 a litre with score %2 to %3 a litre with score %4.")
                     .arg(with_currency(locale.toString(first.across, 'f', 2), picture.currency), score_words(first.up), with_currency(locale.toString(last.across, 'f', 2), picture.currency), score_words(last.up));
  }
  return sentences.isEmpty() ? FindResultText::tr("This search has no trade-off to show: choose a pot or type prices, then search again.") : sentences.join(u' ');
}

PictureTable trade_off_table(const FoundParts* found) {
  PictureTable table;
  table.heading << FindResultText::tr("trade-off") << FindResultText::tr("air or price") << FindResultText::tr("water or score") << FindResultText::tr("rank") << FindResultText::tr("parts");
  if (found == nullptr) return table;
  const TradeOffPicture picture = trade_off_picture(*found);
  const auto rank = [](const TradeOffPoint& point) { return point.rank > 0 ? QLocale().toString(point.rank) : dash(); };
  for (const TradeOffPoint& point : picture.air_and_water) table.rows.push_back({FindResultText::tr("air, water"), percent(point.across), percent(point.up), rank(point), point.parts});
  for (const TradeOffPoint& point : picture.price_and_fit)
    table.rows.push_back({FindResultText::tr("price, fit"), with_currency(QLocale().toString(point.across, 'f', 2), picture.currency), score_words(point.up), rank(point), point.parts});
  return table;
}

PictureTable trade_off_data(const FoundParts* found) {
  PictureTable table;
  for (const char* name : {"picture", "across", "up", "rank", "parts"}) table.heading << QLatin1String(name);
  if (found == nullptr) return table;
  const QLocale plain = QLocale::c();
  const TradeOffPicture picture = trade_off_picture(*found);
  const auto add = [&](const char* name, const std::vector<TradeOffPoint>& points) {
    for (const TradeOffPoint& point : points)
      table.rows.push_back({QLatin1String(name), plain.toString(point.across, 'g', 6), plain.toString(point.up, 'g', 6), point.rank > 0 ? plain.toString(point.rank) : QString(), point.parts});
  };
  add("air_share_water_share", picture.air_and_water);
  add("price_per_l_score", picture.price_and_fit);
  return table;
}

}  // namespace gritwright::desktop
