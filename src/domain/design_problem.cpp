#include "gritwright/domain/design_problem.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gritwright {

namespace {

std::string numbered(std::string list, std::size_t index) {
  list.append("/").append(std::to_string(index));
  return list;
}

const char* pointer_of(PotFigure figure) {
  switch (figure) {
    case PotFigure::air_filled_porosity: return "/air_filled_porosity";
    case PotFigure::container_capacity: return "/container_capacity";
    case PotFigure::available_in_pot: return "/available_in_pot";
    case PotFigure::wet_mass: return "/wet_mass_g_l";
  }
  return "";
}

/// Looks through the wishes of one problem.
class WishChecker {
 public:
  WishChecker(const DesignProblem& problem, Problems& problems) : problem_(problem), problems_(problems) {}

  void run(const Wish& wish, std::string pointer) {
    wish_ = &wish;
    pointer_ = std::move(pointer);
    if (!(std::isfinite(wish.weight) && wish.weight >= 0)) report("design.weight-negative", "/weight", {{"weight", wish.weight}});
    std::visit([this](const auto& figure) { look_at(figure); }, wish.figure);
  }

 private:
  void report(const char* code, const std::string& below, Facts facts = {}) {
    problems_.push_back(problem_at(code, pointer_ + below, std::move(facts)));
  }

  void look_at(const PassingLimits& band) {
    if (band.limits.empty()) report("design.no-apertures", "/limits");
    for (std::size_t i = 0; i < band.limits.size(); ++i) {
      const PassingLimit& limit = band.limits[i];
      const std::string below = numbered("/limits", i);
      aperture(limit.aperture, below + "/aperture_mm");
      if (!limit.low && !limit.high) report("design.no-limit", below);
      if (limit.low) in_range(in_percent(*limit.low), 0, 100, below + "/low");
      if (limit.high) in_range(in_percent(*limit.high), 0, 100, below + "/high");
      if (limit.low && limit.high) upright(in_percent(*limit.low), in_percent(*limit.high), below + "/high");
    }
  }

  void look_at(const NearestGrading& grading) {
    if (grading.points.empty()) report("design.no-apertures", "/nearest");
    for (std::size_t i = 0; i < grading.points.size(); ++i) {
      const std::string below = numbered("/nearest", i);
      aperture(grading.points[i].aperture, below + "/aperture_mm");
      in_range(in_percent(grading.points[i].passing), 0, 100, below + "/passing");
    }
  }

  void look_at(const BandShare& band) {
    const double from = in_mm(band.from), to = in_mm(band.to);
    if (!(std::isfinite(from) && std::isfinite(to) && from >= 0 && to > from))
      report("design.band-upside-down", "/band", {{"from_mm", from}, {"to_mm", to}});
    least_and_most(0, 100);
  }

  void look_at(const FinerShare& finer) {
    aperture(finer.size, "/finer_than_mm");
    least_and_most(0, 100);
  }

  void look_at(const FigureInPot& figure) {
    if (!problem_.pots.contains(figure.pot)) report("design.unknown-pot", pointer_of(figure.figure), {{"pot", figure.pot}});
    // Water in a pot can fall below that at a suction of 50 cm where a wick dries it.
    const double least = figure.figure == PotFigure::available_in_pot ? -1 : 0;
    least_and_most(least, figure.figure == PotFigure::wet_mass ? HUGE_VAL : 1);
  }

  void look_at(const ExchangeCapacity&) { least_and_most(0, HUGE_VAL); }

  void look_at(const MixPrice&) {
    least_and_most(0, HUGE_VAL);
    // A miss counts in steps of 5 % of the limit; there are none of a price of nothing.
    if (wish_->most && *wish_->most == 0) report("design.price-zero", "/most");
  }

  void look_at(const ShareOf& share) {
    const bool known = std::ranges::any_of(problem_.candidates, [&](const Candidate& candidate) {
      return candidate.component.name == share.name || candidate.family == share.name;
    });
    if (!known) report("design.unknown-share", "/share", {{"name", share.name}});
    least_and_most(0, 1);
  }

  void aperture(Aperture value, const std::string& below) {
    if (!(std::isfinite(in_mm(value)) && in_mm(value) > 0)) report("design.aperture-not-positive", below, {{"aperture_mm", in_mm(value)}});
  }

  void in_range(double value, double low, double high, const std::string& below) {
    if (std::isfinite(value) && value >= low && value <= high) return;
    if (std::isfinite(high))
      report("design.limit-out-of-range", below, {{"value", value}, {"low", low}, {"high", high}});
    else
      report("design.limit-negative", below, {{"value", value}});
  }

  void upright(double low, double high, const std::string& below) {
    if (low > high) report("design.limits-upside-down", below, {{"low", low}, {"high", high}});
  }

  void least_and_most(double low, double high) {
    if (!wish_->least && !wish_->most) report("design.no-limit", "");
    if (wish_->least) in_range(*wish_->least, low, high, "/least");
    if (wish_->most) in_range(*wish_->most, low, high, "/most");
    if (wish_->least && wish_->most) upright(*wish_->least, *wish_->most, "/most");
  }

  const DesignProblem& problem_;
  Problems& problems_;
  const Wish* wish_ = nullptr;
  std::string pointer_;
};

void check_candidates(const DesignProblem& problem, Problems& problems) {
  const std::size_t count = problem.candidates.size();
  if (count == 0) problems.push_back(problem_at("design.no-candidates", "/candidates"));
  if (count > most_candidates)
    problems.push_back({"design.too-many-candidates",
                        Place{{}, {}, {}, "/candidates"},
                        {{"count", static_cast<double>(count)}, {"most", static_cast<double>(most_candidates)}}});
  bool something_in_stock = false;
  for (std::size_t i = 0; i < count; ++i) {
    const Candidate& candidate = problem.candidates[i];
    const std::string pointer = numbered("/candidates", i);
    append(problems, under(check(candidate.component), pointer));
    const auto not_negative = [&](double value, const char* code, const char* below) {
      if (!(std::isfinite(value) && value >= 0)) problems.push_back(problem_at(code, pointer + below, {{"value", value}}));
    };
    if (candidate.stock) not_negative(in_l(*candidate.stock), "design.stock-negative", "/stock_l");
    if (candidate.price) not_negative(candidate.price->value(), "design.price-negative", "/price_per_l");
    if (candidate.learnt) append(problems, under(check(learnt_constants(candidate, problem.water)), pointer + "/learnt"));
    something_in_stock = something_in_stock || !candidate.stock || in_l(*candidate.stock) != 0;
  }
  if (count > 0 && problem.need && !something_in_stock)
    problems.push_back(problem_at("design.nothing-in-stock", "/candidates"));
}

void check_form(const RecipeForm& form, Problems& problems) {
  const auto in_range = [&](int value, int most, const char* code, const char* below) {
    if (value < 1 || value > most)
      problems.push_back(problem_at(code, below, {{"value", static_cast<double>(value)}, {"most", static_cast<double>(most)}}));
  };
  in_range(form.total, most_total_parts, "design.total-out-of-range", "/parts/total");
  in_range(form.components, most_components, "design.components-out-of-range", "/parts/components");
}

}  // namespace

RetentionConstants learnt_constants(const Candidate& candidate, const RetentionConstants& usual) {
  RetentionConstants constants = usual;
  if (!candidate.learnt) return constants;
  constants.k_cm_mm = candidate.learnt->k_cm_mm;
  constants.flooded_fill = candidate.learnt->flooded_fill;
  constants.grain_fill = candidate.learnt->grain_fill;
  return constants;
}

Problems check(const DesignProblem& problem) {
  Problems problems;
  check_candidates(problem, problems);
  for (const auto& [name, container] : problem.pots) append(problems, under(check(container), "/pots/" + name));
  if (problem.need && !(std::isfinite(in_l(*problem.need)) && in_l(*problem.need) > 0))
    problems.push_back(problem_at("design.need-not-positive", "/need_l", {{"value", in_l(*problem.need)}}));
  check_form(problem.form, problems);
  if (problem.wishes.size() > most_wishes)
    problems.push_back({"design.too-many-wishes",
                        Place{{}, {}, {}, "/wishes"},
                        {{"count", static_cast<double>(problem.wishes.size())}, {"most", static_cast<double>(most_wishes)}}});
  WishChecker wishes(problem, problems);
  for (std::size_t i = 0; i < problem.wishes.size(); ++i) wishes.run(problem.wishes[i], numbered("/wishes", i));
  append(problems, under(check(problem.water), "/water"));
  const double settling = problem.settling.value();
  if (!(settling >= 0 && settling < 1)) problems.push_back(problem_at("mix.settling-range", "/settling", {{"share", settling}}));
  return problems;
}

}  // namespace gritwright
