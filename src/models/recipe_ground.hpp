#pragma once
// A design problem made ready for searching: candidates in the order of their names, wishes compiled to plain numbers, and
// ratings of recipes whose figures are known exactly or to lie in a range.

#include <cstdint>
#include <limits>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "gritwright/domain/design_problem.hpp"
#include "gritwright/models/mix_evaluator.hpp"
#include "gritwright/models/mix_state.hpp"
#include "gritwright/models/pot_water.hpp"
#include "gritwright/models/recipe_space.hpp"

namespace gritwright::recipe_search {

inline constexpr double infinite = std::numeric_limits<double>::infinity();
/// A violation up to this counts as none. Points.
inline constexpr double no_violation = 1e-9;

struct Range {
  double low = 0;
  double high = 0;
};

/// The figures of a recipe as far as wishes ask for them, exact where low equals high.
struct FigureRanges {
  std::vector<Range> passing_percent;  ///< by aperture of the ground
  std::vector<Range> named_share;      ///< by share wish
  bool has_volumes = false;            ///< every particle density is known; else the water figures, CEC and price mean nothing
  std::vector<Range> capacity;         ///< by pot
  std::vector<Range> air;
  std::vector<Range> available;
  std::vector<Range> wet_g_l;
  std::optional<Range> exchange_meq_l;
  std::optional<Range> price;
  Range most_over_stock_l{0, 0};       ///< litres by which the scarcest candidate falls short; <= 0: within stock
};

/// One wish in plain numbers.
struct PlainWish {
  enum class Kind { limits, nearest, band, finer, capacity, air, available, wet, exchange, price, share };
  Kind kind = Kind::share;
  bool hard = false;
  double weight = 1;
  double least = -infinite;
  double most = infinite;
  double points_per_unit = 1;             ///< price: from the limit that is broken instead
  std::size_t place = 0;                  ///< pot, or share wish
  std::vector<std::size_t> apertures;     ///< band: from (if above 0), to
  std::vector<double> low_percent;        ///< limits and nearest, by aperture
  std::vector<double> high_percent;
  std::uint64_t candidates = 0;           ///< share: bit for each candidate

  [[nodiscard]] bool of_grading() const { return kind <= Kind::finer; }
  /// Asks for a figure that depends on packing.
  [[nodiscard]] bool of_volumes() const { return !of_grading() && kind != Kind::share; }
  /// Points missed by a figure of the wish.
  [[nodiscard]] double points_missed(double figure) const;
};

/// A recipe by the full model. Whichever way it was found, what is ranked and told of it comes from here: candidates are added up in
/// the order of the ground, so that the last digit does not hang on the order of the problem.
struct WorkedOut {
  FigureRanges figures;            ///< exact
  std::optional<MixState> state;   ///< of the dosed candidates in the ground's order; empty where nothing of it is defined
  RetentionConstants water;
  std::vector<PotWater> in_pots;   ///< in the order of the problem; empty where no wish asks for water, nothing is defined or it was not asked for
};

/// What of a recipe's water is worked out: the shares that wishes read, or all that is told of it.
enum class WaterAsked { rated, told };

struct Rating {
  Range score;
  std::uint64_t broken = 0;    ///< hard wishes that surely don't hold
  std::uint64_t doubtful = 0;  ///< hard wishes that may not hold
  bool within_stock = true;    ///< false: surely not
  bool stock_doubtful = false;
};

/// Hard wishes as they are, or all counted as soft with their weight.
enum class Strictness { as_wished, all_soft };
/// Which wishes a rating counts; stock counts always.
enum class Counted { all, of_volumes };

class Ground {
 public:
  /// Precondition: check(problem) is empty.
  explicit Ground(const DesignProblem& problem);
  /// Makes evaluate() ready, which not everyone needs.
  void prepare_evaluator();

  [[nodiscard]] const DesignProblem& problem() const { return problem_; }
  [[nodiscard]] std::size_t size() const { return order_.size(); }
  /// Place of the candidate in the problem.
  [[nodiscard]] std::size_t input_place(std::size_t candidate) const { return order_[candidate]; }
  [[nodiscard]] const Candidate& candidate(std::size_t index) const { return problem_.candidates[order_[index]]; }
  /// Class beta of the candidate alone; empty where a density is missing.
  [[nodiscard]] const std::optional<PackingDensity>& class_beta_of(std::size_t candidate) const { return class_betas_[candidate]; }
  [[nodiscard]] const std::vector<int>& name_ranks() const { return name_ranks_; }
  [[nodiscard]] const std::vector<Aperture>& apertures() const { return apertures_; }
  [[nodiscard]] const std::vector<PlainWish>& wishes() const { return wishes_; }
  [[nodiscard]] const std::vector<PotToFill>& pots() const { return pots_; }
  [[nodiscard]] const std::vector<std::string>& pot_names() const { return pot_names_; }
  [[nodiscard]] std::uint64_t hard_wishes() const { return hard_wishes_; }

  /// Whether some wish, price or stock depends on volumes, that is on packing.
  [[nodiscard]] bool asks_for_volumes() const { return asks_for_volumes_; }
  [[nodiscard]] bool asks_for_water() const { return asks_for_water_; }
  [[nodiscard]] bool asks_for_available() const { return asks_for_available_; }
  [[nodiscard]] bool checks_stock() const { return checks_stock_; }
  [[nodiscard]] bool has_prices() const { return has_prices_; }
  /// Whether tests taught constants of some candidate.
  [[nodiscard]] bool has_learnt() const { return has_learnt_; }

  [[nodiscard]] Rating rate(const FigureRanges& figures, Strictness strictness, Counted counted = Counted::all) const;
  /// The range a wish is missed by, in points.
  [[nodiscard]] Range missed(const PlainWish& wish, const FigureRanges& figures) const;

  /// Figures by the fast evaluator, with its error as their range. Precondition: prepare_evaluator().
  void evaluate(std::span<const Dose> doses, MixEvaluator::Workspace& workspace, RecipeFigures& scratch, FigureRanges& figures) const;
  [[nodiscard]] WorkedOut worked_out(std::span<const Dose> doses, WaterAsked asked = WaterAsked::told) const;
  /// Water of a worked-out recipe in one of the pots. Precondition: its state has volumes.
  [[nodiscard]] static PotWater water_in(const PotToFill& pot, const WorkedOut& recipe);

 private:
  void put_in_order();
  void compile(const Wish& wish);
  [[nodiscard]] std::size_t aperture_index(Aperture aperture);
  [[nodiscard]] RetentionConstants constants_of(std::span<const Dose> doses) const;
  /// For a settling that leaves no voids: nothing about such a mix is defined.
  void nothing_defined(std::span<const Dose> doses, double loose_l, FigureRanges& figures) const;
  void shares_and_stock(std::span<const Dose> doses, double loose_l, std::optional<Range> volume_l, FigureRanges& figures) const;

  DesignProblem problem_;
  std::vector<std::size_t> order_;
  std::vector<int> name_ranks_;
  std::vector<std::optional<PackingDensity>> class_betas_;
  std::vector<Aperture> apertures_;
  std::vector<PotToFill> pots_;
  std::vector<std::string> pot_names_;
  std::vector<PlainWish> wishes_;
  std::vector<std::uint64_t> named_;  ///< candidates of each share wish
  std::uint64_t hard_wishes_ = 0;
  bool asks_for_volumes_ = false;
  bool asks_for_water_ = false;
  bool asks_for_available_ = false;
  bool checks_stock_ = false;
  bool has_prices_ = false;
  bool has_learnt_ = false;
  std::unique_ptr<MixEvaluator> evaluator_;
};

/// The doses of a recipe, in the ground's numbering.
[[nodiscard]] std::vector<Dose> doses_of(const WholeRecipe& recipe);

}  // namespace gritwright::recipe_search
