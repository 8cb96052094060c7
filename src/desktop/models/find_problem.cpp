#include "find_problem.hpp"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "gritwright/formats/number.hpp"
#include "gritwright/models/litres.hpp"
#include "gritwright/models/pot_geometry.hpp"
#include "gritwright/models/prediction_score.hpp"
#include "gritwright/models/recipe_search.hpp"
#include "sheet_reader.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class FindProblemText {
  Q_DECLARE_TR_FUNCTIONS(FindParts)
};

std::string place_of(WishRow row, const char* below) { return "/wishes/" + std::to_string(static_cast<int>(row)) + below; }
std::string place_of(const QString& key, const char* below) { return "/candidates/" + key.toStdString() + below; }

/// Whether percent are typed for what the engine knows as a share.
bool is_in_percent(WishRow row) { return pot_figure_of(row) && row != WishRow::wet_mass; }

/// Reads the sheet of one search.
class SetupReader {
 public:
  SetupReader(const Bench& bench, const Shelf& shelf, FindSetup& setup)
      : bench_(bench), shelf_(shelf), sheet_(bench.state().find), setup_(setup), read_(setup.faults) {}

  void run() {
    setup_.calibrations = bench_.known().calibrations;
    tested_ = tested_shares(setup_.calibrations);
    setup_.grain = grain_to_choose_from(bench_, shelf_);
    candidates();
    form();
    pots();
    for (int row = 0; row < static_cast<int>(wish_rows); ++row) wish(static_cast<WishRow>(row));
    finish();
  }

 private:
  void candidates() {
    std::vector<std::size_t> priced;
    std::set<std::string> currencies;
    for (std::size_t i = 0; i < setup_.grain.size(); ++i) {
      const ShelfItem& item = setup_.grain[i];
      const CandidateText* typed = sheet_.candidate(item.key);
      const bool taken = typed == nullptr || typed->use == CandidateText::Use::by_shelf ? item.taken : typed->use == CandidateText::Use::taken;
      if (!taken) continue;
      Candidate candidate = item.candidate;
      learn(candidate);
      const bool price_is_typed = typed != nullptr && !typed->price.trimmed().isEmpty();
      if (candidate.price && !price_is_typed) {
        priced.push_back(problem_.candidates.size());
        if (!item.currency.empty()) currencies.insert(item.currency);
      }
      if (typed != nullptr) {
        if (const auto stock = read_.volume_l(typed->stock, place_of(item.key, "/stock_l"))) candidate.stock = LooseVolume(*stock);
        if (const auto price = read_.number(typed->price, place_of(item.key, "/price_per_l"))) candidate.price = PricePerLitre(*price);
        share(*typed, candidate.component.name);
      }
      setup_.taken.push_back(i);
      problem_.candidates.push_back(std::move(candidate));
    }
    if (currencies.size() == 1) setup_.currency = to_qt(*currencies.begin());
    if (currencies.size() < 2) return;
    // Prices of several currencies can't be added up.
    for (const std::size_t i : priced) problem_.candidates[i].price.reset();
  }

  /// What pot tests of the record taught of its material, as a mix of it alone would have it.
  void learn(Candidate& candidate) const {
    if (!candidate.component.material) return;
    if (const auto pooled = pooled_for({{*candidate.component.material, 1.0}}, tested_))
      candidate.learnt = gritwright::LearntConstants{pooled->constants.k_cm_mm, pooled->constants.flooded_fill, pooled->constants.grain_fill};
  }

  void share(const CandidateText& typed, const std::string& name) {
    const auto least = read_.share(typed.least_share, place_of(typed.key, "/least"));
    const auto most = read_.share(typed.most_share, place_of(typed.key, "/most"));
    if (!least && !most) return;
    keys_of_shares_.push_back(typed.key);
    shares_.push_back({ShareOf{name}, least, most, true, 1});
  }

  void whole(const QString& text, const std::string& place, int& into) {
    const auto number = read_.number(text, place);
    if (!number) {
      if (text.trimmed().isEmpty()) read_.missing(place);
      return;
    }
    constexpr double beyond_any_count = 1e6;
    if (*number != std::floor(*number) || std::abs(*number) > beyond_any_count) read_.fault(place, {"design.not-whole", {}, {{"value", *number}}});
    else into = static_cast<int>(*number);
  }

  void form() {
    problem_.form.whole = sheet_.whole;
    if (sheet_.whole) whole(sheet_.total, "/parts/total", problem_.form.total);
    whole(sheet_.components, "/parts/components", problem_.form.components);
  }

  void pots() {
    const BenchEvaluation& evaluation = bench_.evaluation();
    const auto settling = read_.share(bench_.state().settling, "/settling");
    // What jugs of the grain on the bench tell is not what the recipe's grain does.
    const bool is_typed = settling && evaluation.settled_by == SettledBy::typed;
    problem_.settling = is_typed ? Settling(*settling) : default_settling(Placing::worked_in);
    if (evaluation.pot) {
      problem_.pots[first_pot] = evaluation.pot->container();
      filling_ = evaluation.pot->main_mix_volume();
    }
    for (const ShelfPot& pot : shelf_.pots) {
      if (!std::ranges::count(sheet_.also_pots, pot.id)) continue;
      problem_.pots[further_pot(pot.id)] = pot.container;
      setup_.further_pots.push_back(pot);
      const PotVolume also = PotGeometry(pot.container).main_mix_volume();
      filling_ = filling_ ? *filling_ + also : also;
    }
    if (const auto spill = read_.share(bench_.state().spill, "/spill")) setup_.spill = Spill(*spill);
    if (filling_) setup_.need = mixed_volume_to_fill(*filling_, problem_.settling, setup_.spill.value_or(Spill{}));
    if (const auto need = read_.volume_l(sheet_.need, "/need_l")) setup_.need = MixedVolume(*need);
    problem_.need = setup_.need;
  }

  void add(WishRow row, WishFigure figure, std::optional<double> least, std::optional<double> most) {
    const WishText& typed = sheet_.wish(row);
    Wish wish{std::move(figure), least, most, typed.hard, 1};
    if (const auto weight = read_.number(typed.weight, place_of(row, "/weight"))) wish.weight = *weight;
    problem_.wishes.push_back(std::move(wish));
    setup_.wish_of.push_back(static_cast<int>(row));
  }

  void wish(WishRow row) {
    if (row == WishRow::limits || row == WishRow::nearest) return curve(row);
    const WishText& typed = sheet_.wish(row);
    const auto side = [&](const QString& text, const char* below) {
      if (is_in_percent(row)) return read_.share(text, place_of(row, below));
      return row == WishRow::wet_mass ? read_.density_g_l(text, place_of(row, below)) : read_.number(text, place_of(row, below));
    };
    const auto least = side(typed.least, "/least");
    const auto most = side(typed.most, "/most");
    if (!least && !most) return;
    if (const auto figure = pot_figure_of(row)) {
      if (!problem_.pots.contains(first_pot)) {
        waits_for_pot_ = true;
        return;
      }
      for (const auto& [name, container] : problem_.pots) add(row, FigureInPot{*figure, name}, least, most);
    } else if (row == WishRow::band) {
      if (const auto& band = bench_.evaluation().band) add(row, BandShare{band->from, band->to}, least, most);
      else waits_for_band_ = true;
    } else if (row == WishRow::finer) {
      const auto size = read_.aperture(sheet_.dust_size, "/dust");
      if (size) add(row, FinerShare{*size}, least, most);
      else if (sheet_.dust_size.trimmed().isEmpty()) read_.missing("/dust");
    } else if (row == WishRow::exchange) {
      add(row, ExchangeCapacity{}, least, most);
    } else {
      add(row, MixPrice{}, least, most);
    }
  }

  void curve(WishRow row) {
    const QString text = sheet_.wish(row).least.trimmed();
    if (text.isEmpty()) return;
    auto figure = curve_figure(row, text);
    for (const Problem& problem : figure.problems()) read_.fault(place_of(row, "/least"), problem);
    if (figure) add(row, std::move(figure).value(), {}, {});
  }

  struct Numbered {
    std::size_t index;
    std::string below;
  };
  /// "/wishes/3/least" as 3 and "/least" of the list "/wishes"; empty where it is no place in the list.
  static std::optional<Numbered> numbered(const std::string& pointer, const std::string& list) {
    if (!pointer.starts_with(list + "/")) return std::nullopt;
    const std::string rest = pointer.substr(list.size() + 1);
    const std::size_t end = std::min(rest.find('/'), rest.size());
    return Numbered{static_cast<std::size_t>(std::stoul(rest.substr(0, end))), rest.substr(end)};
  }

  /// The engine's place of a fault as the sheet's.
  [[nodiscard]] std::string placed(const std::string& pointer) const {
    if (const auto found = numbered(pointer, "/wishes")) {
      const auto& [index, below] = *found;
      if (index >= setup_.wish_of.size()) return "/wishes";
      if (setup_.wish_of[index] < 0) return "/candidates/" + keys_of_shares_[index - (setup_.wish_of.size() - keys_of_shares_.size())].toStdString() + below;
      const auto row = static_cast<WishRow>(setup_.wish_of[index]);
      if (below == "/finer_than_mm") return "/dust";
      if (row == WishRow::band && below.starts_with("/band")) return place_of(row, "/least");
      if (row == WishRow::limits || row == WishRow::nearest) return place_of(row, "/least");
      return place_of(row, below.empty() ? "/least" : below.c_str());
    }
    if (const auto found = numbered(pointer, "/candidates")) {
      const auto& [index, below] = *found;
      return "/candidates/" + setup_.grain[setup_.taken[index]].key.toStdString() + below;
    }
    return pointer.starts_with("/pots") ? "/pots" : pointer;
  }

  /// The engine speaks of shares where percent are typed.
  [[nodiscard]] Problem as_typed(Problem problem) const {
    const auto found = numbered(problem.where.pointer, "/wishes");
    if (!found || found->index >= setup_.wish_of.size()) return problem;
    const int row = setup_.wish_of[found->index];
    if (row >= 0 && !is_in_percent(static_cast<WishRow>(row))) return problem;
    constexpr double percent = 100;
    for (const char* name : {"value", "low", "high"}) {
      const auto fact = problem.facts.find(name);
      double* const number = fact != problem.facts.end() ? std::get_if<double>(&fact->second) : nullptr;
      if (number != nullptr) *number *= percent;
    }
    return problem;
  }

  void finish() {
    for (Wish& wish : shares_) {
      problem_.wishes.push_back(std::move(wish));
      setup_.wish_of.push_back(-1);
    }
    Problems problems = check(problem_);
    if (problems.empty() && setup_.faults.empty()) problems = check_tested_sizes(problem_);
    for (const Problem& problem : problems) read_.fault(placed(problem.where.pointer), as_typed(problem));
    QStringList missing;
    if (waits_for_pot_) missing << FindProblemText::tr("the pot's lengths");
    if (waits_for_band_) missing << FindProblemText::tr("the wanted grain");
    if (problem_.wishes.empty() && missing.isEmpty()) missing << FindProblemText::tr("a group of trees, or a wish");
    setup_.waiting = comma_list(missing);
    if (!setup_.faults.empty() || !missing.isEmpty()) return;
    setup_.out_of_reach = wishes_out_of_reach(problem_);
    setup_.problem = std::move(problem_);
  }

  const Bench& bench_;
  const Shelf& shelf_;
  const FindSheet& sheet_;
  FindSetup& setup_;
  FieldReader read_;
  DesignProblem problem_;
  std::vector<TestedShares> tested_;
  std::vector<Wish> shares_;
  std::vector<QString> keys_of_shares_;
  std::optional<PotVolume> filling_;  ///< of all pots
  bool waits_for_pot_ = false;
  bool waits_for_band_ = false;
};

QString digits(double value) { return number_text(value, 9); }
QString digits(const std::optional<double>& value, double scale = 1) { return value ? digits(*value * scale) : QString(); }

}  // namespace

std::string further_pot(const QString& id) { return first_pot + ", further: " + id.toStdString(); }

Result<WishFigure> curve_figure(WishRow row, const QString& text) {
  static const QRegularExpression point(QStringLiteral("^\\s*([0-9.,]+)\\s*(?:mm)?\\s*:?\\s+([0-9.,]*)\\s*(-?)\\s*([0-9.,]*)\\s*%?\\s*$"));
  PassingLimits limits;
  NearestGrading grading;
  Problems problems;
  for (const QString& part : text.split(u';', Qt::SkipEmptyParts)) {
    const auto match = point.match(part);
    const bool is_range = match.hasMatch() && !match.captured(3).isEmpty();
    if (!match.hasMatch() || is_range != (row == WishRow::limits)) {
      problems.push_back({"design.point-unreadable", {}, {{"text", part.trimmed().toStdString()}}});
      continue;
    }
    const auto number = [&](const QString& typed) -> std::optional<double> {
      if (typed.isEmpty()) return std::nullopt;
      const auto read = parse_number(typed.toStdString(), DecimalMark::point_or_comma);
      append(problems, read.problems());
      return read ? std::optional(*read) : std::nullopt;
    };
    const auto size = number(match.captured(1));
    const auto low = number(match.captured(2));
    const auto high = number(match.captured(4));
    if (!size) continue;
    const auto passing = [](std::optional<double> percent) { return percent ? std::optional(passing_percent(*percent)) : std::nullopt; };
    limits.limits.push_back({aperture_mm(*size), passing(low), passing(high)});
    if (low) grading.points.push_back({aperture_mm(*size), passing_percent(*low)});
  }
  if (!problems.empty()) return problems;
  return row == WishRow::limits ? WishFigure(std::move(limits)) : WishFigure(std::move(grading));
}

std::optional<PotFigure> pot_figure_of(WishRow row) {
  switch (row) {
    case WishRow::air: return PotFigure::air_filled_porosity;
    case WishRow::water: return PotFigure::container_capacity;
    case WishRow::available: return PotFigure::available_in_pot;
    case WishRow::wet_mass: return PotFigure::wet_mass;
    default: return std::nullopt;
  }
}

FindSetup find_setup(const Bench& bench, const Shelf& shelf) {
  FindSetup setup;
  SetupReader(bench, shelf, setup).run();
  return setup;
}

void borrow_band(BenchState& state, const SpeciesProfile& profile) {
  for (const Wish& wish : profile.wishes) {
    const auto* const band = std::get_if<BandShare>(&wish.figure);
    if (band != nullptr) borrow_band(state, SizeBand{band->from, band->to});
  }
}

void borrow_band(BenchState& state, const SizeBand& band) {
  give_band_back(state);
  state.find.band = {digits(in_mm(band.from)), digits(in_mm(band.to)), state.band_from, state.band_to};
  state.band_from = state.find.band.from;
  state.band_to = state.find.band.to;
}

void give_band_back(BenchState& state) {
  const BorrowedBand borrowed = std::exchange(state.find.band, {});
  if (borrowed.from.isEmpty() || state.band_from != borrowed.from || state.band_to != borrowed.to) return;
  state.band_from = borrowed.from_before;
  state.band_to = borrowed.to_before;
}

void start_from(BenchState& state, const SpeciesProfile& profile) {
  FindSheet& sheet = state.find;
  sheet.profile = to_qt(profile.name);
  sheet.wishes = {};
  sheet.dust_size.clear();
  const auto put = [&](WishRow row, const Wish& wish, double scale = 1) {
    sheet.wish(row) = {digits(wish.least, scale), digits(wish.most, scale), wish.hard, wish.weight == 1 ? QString() : digits(wish.weight)};
  };
  constexpr double percent = 100;
  for (const Wish& wish : profile.wishes) {
    if (std::holds_alternative<BandShare>(wish.figure)) {
      borrow_band(state, profile);
      put(WishRow::band, wish);
    } else if (const auto* finer = std::get_if<FinerShare>(&wish.figure)) {
      sheet.dust_size = digits(in_mm(finer->size));
      put(WishRow::finer, wish);
    } else if (const auto* in_pot = std::get_if<FigureInPot>(&wish.figure)) {
      for (const WishRow row : {WishRow::air, WishRow::water, WishRow::available, WishRow::wet_mass})
        if (pot_figure_of(row) == in_pot->figure) put(row, wish, row == WishRow::wet_mass ? 1 : percent);
    } else if (std::holds_alternative<ExchangeCapacity>(wish.figure)) {
      put(WishRow::exchange, wish);
    } else if (std::holds_alternative<MixPrice>(wish.figure)) {
      put(WishRow::price, wish);
    } else if (const auto* limits = std::get_if<PassingLimits>(&wish.figure)) {
      QStringList points;
      const auto side = [](const std::optional<Passing>& passing) { return passing ? digits(in_percent(*passing)) : QString(); };
      for (const PassingLimit& limit : limits->limits) points << QStringLiteral("%1 %2-%3").arg(digits(in_mm(limit.aperture)), side(limit.low), side(limit.high));
      put(WishRow::limits, wish);
      sheet.wish(WishRow::limits).least = points.join(QStringLiteral("; "));
    } else if (const auto* nearest = std::get_if<NearestGrading>(&wish.figure)) {
      QStringList points;
      for (const GradingPoint& point : nearest->points) points << QStringLiteral("%1 %2").arg(digits(in_mm(point.aperture)), digits(in_percent(point.passing)));
      put(WishRow::nearest, wish);
      sheet.wish(WishRow::nearest).least = points.join(QStringLiteral("; "));
    }
  }
}

std::optional<SpeciesProfile> profile_of(const FindSetup& setup, const std::string& name, const SpeciesProfile& like) {
  if (!setup.problem) return std::nullopt;
  SpeciesProfile profile = like;
  profile.name = name;
  profile.wishes.clear();
  for (const Wish& wish : setup.problem->wishes) {
    Wish kept = wish;
    if (std::holds_alternative<ShareOf>(kept.figure)) continue;  // which bag is on the shelf changes
    if (auto* in_pot = std::get_if<FigureInPot>(&kept.figure)) {
      if (in_pot->pot != first_pot) continue;
      in_pot->pot.clear();
    }
    profile.wishes.push_back(std::move(kept));
  }
  return profile;
}

}  // namespace gritwright::desktop
