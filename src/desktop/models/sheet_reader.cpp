#include "sheet_reader.hpp"

#include <algorithm>
#include <string_view>

#include "gritwright/formats/number.hpp"
#include "gritwright/models/running_sieve_test.hpp"

namespace gritwright::desktop {

namespace {

struct PanKeys {
  std::string aperture;
  std::string net;
  std::string gross;
  std::string tare;
  std::string litres;
  std::string crumbs;
};

PanKeys row_keys(std::size_t index) {
  const std::string row = "/retained/" + std::to_string(index);
  return {row + "/aperture_mm", row + "/mass_g", row + "/gross_g", row + "/tare_g", row + "/retained_l", row + "/crumbs_percent"};
}

PanKeys pan_keys() { return {"", "/pan_g", "/pan_gross_g", "/pan_tare_g", "/pan_l", "/pan_crumbs_percent"}; }

std::string utf8(const QString& text) { return text.trimmed().toStdString(); }

bool is_typed(const PanText& pan) { return !pan.retained.trimmed().isEmpty(); }

class SheetReader {
 public:
  SheetReader(const SieveSheet& sheet, const SievedDensities& densities, ComponentEvaluation& evaluation)
      : sheet_(sheet), densities_(densities), evaluation_(evaluation), read_(evaluation.faults) {}

  void run() {
    evaluation_.net.assign(sheet_.rows.size() + 1, std::nullopt);
    const auto last_typed = std::ranges::find_if(sheet_.rows.rbegin(), sheet_.rows.rend(), is_typed);
    const bool pan_typed = is_typed(sheet_.pan);
    const auto rows = pan_typed ? static_cast<std::ptrdiff_t>(sheet_.rows.size()) : std::distance(last_typed, sheet_.rows.rend());
    header();
    for (std::ptrdiff_t i = 0; i < rows; ++i) row(static_cast<std::size_t>(i));
    if (pan_typed) {
      if (const auto retained = fraction(sheet_.pan, pan_keys(), sheet_.rows.size())) test_.pan = *retained;
      if (const auto crumbs = read_.share(sheet_.pan.crumbs, pan_keys().crumbs)) test_.pan_crumbs = MassShare(*crumbs);
    }
    const auto written = read_.mass(sheet_.resolution, "/resolution_g");
    test_.resolution = written ? written->mass : resolution_;
    if (rows == 0 && !pan_typed) {
      evaluation_.state = evaluation_.faults.empty() ? SheetState::empty : SheetState::faulty;
      return;
    }
    if (!evaluation_.faults.empty()) {
      evaluation_.state = SheetState::faulty;
      check_the_rest();
      return;
    }
    finish(pan_typed);
  }

 private:
  void header() {
    if (const auto mass = read_.mass(sheet_.dry_mass, "/dry_mass_g")) {
      test_.dry_mass = mass->mass;
      saw(*mass);
    }
    if (const auto mass = read_.mass(sheet_.washed_dry_mass, "/washed_dry_mass_g")) {
      test_.washed_dry_mass = mass->mass;
      saw(*mass);
    }
    if (const auto moisture = read_.share(sheet_.moisture, "/moisture_percent")) test_.moisture = Moisture(*moisture);
    test_.sieve_diameter = read_.frame(sheet_.sieve_diameter, "/sieve_diameter_mm");
    test_.basis = sheet_.on_recovered_mass ? PercentBasis::recovered : PercentBasis::original;
  }

  // A balance that shows 0.1 g is often written down as "12" too, so the finest digit counts.
  void saw(const WrittenMass& mass) {
    if (!seen_ || mass.last_digit < resolution_) resolution_ = mass.last_digit;
    seen_ = true;
  }

  void row(std::size_t index) {
    const PanText& typed = sheet_.rows[index];
    const PanKeys keys = row_keys(index);
    const auto aperture = read_.aperture(typed.aperture, keys.aperture);
    if (typed.aperture.trimmed().isEmpty()) read_.missing(keys.aperture);
    const auto retained = fraction(typed, keys, index);
    const auto crumbs = read_.share(typed.crumbs, keys.crumbs);
    if (!aperture || !retained) return;
    test_.rows.push_back({*aperture, *retained, MassShare(crumbs.value_or(0))});
    row_of_.push_back(index);
  }

  /// One cell that can't be read hides no fault of another.
  void check_the_rest() {
    const Faults unread = evaluation_.faults;
    constexpr std::string_view rows = "/retained/";
    for (const Problem& problem : check(test_)) {
      const std::string& pointer = problem.where.pointer;
      if (problem.code == "sieve-test.sum-above-sample") {
        read_.fault(pointer, problem);
        mark_too_heavy(problem);
      } else if (pointer.starts_with(rows)) {
        const std::size_t slash = pointer.find('/', rows.size());
        const std::size_t at = std::stoul(pointer.substr(rows.size(), slash - rows.size()));
        read_.fault(std::string(rows).append(std::to_string(row_of_[at])).append(pointer.substr(slash)), problem);
      } else if (problem.code == "sieve-test.sample-not-positive" || (pointer.starts_with("/pan") && !unread.contains(pointer))) {
        read_.fault(pointer, problem);
      }
    }
  }

  /// A pan that is heavier than the whole sample is the one to look at; without one it is the sample's mass.
  void mark_too_heavy(const Problem& sum) {
    const auto start = test_.washed_dry_mass ? test_.washed_dry_mass : test_.dry_mass;
    const bool by_gross = sheet_.measure == Measure::gross_and_tare;
    bool marked = false;
    for (std::size_t i = 0; start && i < evaluation_.net.size(); ++i) {
      if (!evaluation_.net[i] || !(*evaluation_.net[i] > *start)) continue;
      const PanKeys keys = i < sheet_.rows.size() ? row_keys(i) : pan_keys();
      read_.fault(by_gross ? keys.gross : keys.net, sum);
      marked = true;
    }
    if (!marked) read_.fault(test_.washed_dry_mass ? "/washed_dry_mass_g" : "/dry_mass_g", sum);
  }

  std::optional<Retained> fraction(const PanText& typed, const PanKeys& keys, std::size_t index) {
    if (sheet_.measure == Measure::litres) {
      if (!is_typed(typed)) read_.missing(keys.litres);
      const auto litres = read_.volume_l(typed.retained, keys.litres);
      return litres ? std::optional<Retained>(LooseVolume(*litres)) : std::nullopt;
    }
    const bool by_gross = sheet_.measure == Measure::gross_and_tare;
    const std::string& key = by_gross ? keys.gross : keys.net;
    if (!is_typed(typed)) read_.missing(key);
    const auto mass = read_.mass(typed.retained, key);
    if (mass) saw(*mass);
    if (!by_gross) {
      if (mass) evaluation_.net[index] = mass->mass;
      return mass ? std::optional<Retained>(mass->mass) : std::nullopt;
    }
    if (typed.tare.trimmed().isEmpty()) read_.missing(keys.tare);
    const auto tare = read_.mass(typed.tare, keys.tare);
    if (tare) saw(*tare);
    if (!mass || !tare) return std::nullopt;
    evaluation_.net[index] = net_mass(GrossTare{mass->mass, tare->mass});
    return GrossTare{mass->mass, tare->mass};
  }

  void finish(bool pan_typed) {
    const bool by_litres = sheet_.measure == Measure::litres;
    if (pan_typed) {
      evaluation_.test = test_;
      evaluation_.weighed = weighed_so_far(test_, true);
      evaluation_.collected = collected_so_far(test_, true);
      analyse_as(SheetState::finished);
      return;
    }
    if (by_litres) test_.pan = loose_l(0);
    else test_.pan = mass_g(0);
    evaluation_.weighed = weighed_so_far(test_, false);
    evaluation_.collected = collected_so_far(test_, false);
    evaluation_.still_in_stack = still_in_the_stack(test_);
    if (!evaluation_.still_in_stack) {
      // Without a base there are no percentages yet, but openings, masses and the sum can be wrong already.
      evaluation_.state = SheetState::begun;
      take(check(test_));
      return;
    }
    test_.pan = *evaluation_.still_in_stack;
    analyse_as(SheetState::running);
  }

  void analyse_as(SheetState state) {
    // Beside the test: with it they would be kept as measured on the sample.
    SieveTest known = test_;
    known.bulk_density = densities_.bulk;
    known.particle_density = densities_.particle;
    const auto analysis = analyse(known);
    if (!analysis) return take(analysis.problems());
    evaluation_.state = state;
    evaluation_.analysis = *analysis;
    // While the stack is being worked through only what concerns a sieve already weighed can be said.
    if (state == SheetState::running) std::erase_if(evaluation_.analysis->notes, [](const Note& note) { return note.code != "sieve-test.overload"; });
  }

  void take(const Problems& problems) {
    for (const Problem& problem : problems) {
      // Nothing weighed yet on the rows above: not a fault while the stack is being worked through.
      if (problem.code == "sieve-test.nothing-retained" && evaluation_.state == SheetState::begun) continue;
      read_.fault(problem.where.pointer, problem);
      if (problem.code == "sieve-test.sum-above-sample") mark_too_heavy(problem);
    }
    if (!evaluation_.faults.empty()) evaluation_.state = SheetState::faulty;
  }

  const SieveSheet& sheet_;
  const SievedDensities& densities_;
  ComponentEvaluation& evaluation_;
  FieldReader read_;
  SieveTest test_;
  std::vector<std::size_t> row_of_;  ///< the sheet's row of each row of the test
  Mass resolution_ = mass_g(1);
  bool seen_ = false;
};

}  // namespace

template <class T>
std::optional<T> FieldReader::taken(Result<T> result, const std::string& place) {
  if (result) return *result;
  for (const Problem& problem : result.problems()) fault(place, problem);
  return std::nullopt;
}

void FieldReader::fault(const std::string& place, Problem problem) {
  problem.where.pointer = place;
  faults_.emplace(place, std::move(problem));
}

void FieldReader::missing(const std::string& place) { fault(place, Problem{"number.missing", {}, {}}); }

std::optional<WrittenMass> FieldReader::mass(const QString& text, const std::string& place) {
  if (text.trimmed().isEmpty()) return std::nullopt;
  return taken(parse_mass(utf8(text), MassUnit::gram), place);
}

std::optional<Length> FieldReader::length(const QString& text, const std::string& place) {
  if (text.trimmed().isEmpty()) return std::nullopt;
  return taken(parse_length(utf8(text), LengthUnit::centimetre), place);
}

std::optional<Length> FieldReader::frame(const QString& text, const std::string& place) {
  if (text.trimmed().isEmpty()) return std::nullopt;
  return taken(parse_length(utf8(text), LengthUnit::millimetre), place);
}

std::optional<Aperture> FieldReader::aperture(const QString& text, const std::string& place) {
  if (text.trimmed().isEmpty()) return std::nullopt;
  return taken(parse_aperture(utf8(text)), place);
}

std::optional<Volume> FieldReader::volume_l(const QString& text, const std::string& place) {
  if (text.trimmed().isEmpty()) return std::nullopt;
  return taken(parse_volume(utf8(text), VolumeUnit::litre), place);
}

std::optional<Volume> FieldReader::volume_ml(const QString& text, const std::string& place) {
  if (text.trimmed().isEmpty()) return std::nullopt;
  return taken(parse_volume(utf8(text), VolumeUnit::millilitre), place);
}

std::optional<double> FieldReader::share(const QString& percent, const std::string& place) {
  if (percent.trimmed().isEmpty()) return std::nullopt;
  return taken(parse_percent(utf8(percent)), place);
}

std::optional<double> FieldReader::density_g_l(const QString& text, const std::string& place) {
  if (text.trimmed().isEmpty()) return std::nullopt;
  return taken(parse_density(utf8(text)), place);
}

std::optional<double> FieldReader::number(const QString& text, const std::string& place) {
  if (text.trimmed().isEmpty()) return std::nullopt;
  return taken(parse_number(utf8(text), DecimalMark::point_or_comma), place);
}

void evaluate_sheet(const SieveSheet& sheet, const SievedDensities& densities, ComponentEvaluation& evaluation) { SheetReader(sheet, densities, evaluation).run(); }

void evaluate_replicates(const SieveSheet& sheet, const SievedDensities& densities, ComponentEvaluation& evaluation) {
  std::vector<SieveAnalysis> finished;
  const auto finish = [&](const SieveTest& test, const SieveAnalysis& analysis) {
    finished.push_back(analysis);
    evaluation.samples.push_back(sample_of(test, analysis));
  };
  if (evaluation.state == SheetState::finished) finish(*evaluation.test, *evaluation.analysis);
  for (std::size_t i = 0; i < sheet.replicates.size(); ++i) {
    const ReplicateText& replicate = sheet.replicates[i];
    SieveSheet alone = sheet;
    alone.replicates.clear();
    for (std::size_t row = 0; row < alone.rows.size(); ++row) alone.rows[row].retained = row < replicate.retained.size() ? replicate.retained[row] : QString();
    alone.pan.retained = replicate.pan;
    alone.dry_mass = replicate.dry_mass;
    alone.washed_dry_mass.clear();
    ComponentEvaluation own;
    evaluate_sheet(alone, densities, own);
    for (auto& [place, problem] : own.faults) evaluation.faults.emplace("/replicates/" + std::to_string(i) + place, problem);
    if (own.state == SheetState::finished) finish(*own.test, *own.analysis);
    evaluation.replicates.push_back({own.state, std::move(own.test), std::move(own.analysis), own.weighed});
  }
  if (finished.size() < 2) return;
  auto pooled = pool(finished);
  for (const Problem& problem : pooled.problems()) evaluation.faults.emplace("/retained", problem);
  if (pooled) evaluation.pooled = std::move(pooled).value();
}

}  // namespace gritwright::desktop
