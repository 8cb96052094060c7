#pragma once
#include "bench_evaluation.hpp"
#include "gritwright/formats/typed_quantity.hpp"

namespace gritwright::desktop {

/// Reads fields into quantities and gathers what cannot be read, each under its place.
class FieldReader {
 public:
  explicit FieldReader(Faults& faults) : faults_(faults) {}

  /// Each is empty for an empty text, and for rubbish, which becomes a fault.
  [[nodiscard]] std::optional<WrittenMass> mass(const QString& text, const std::string& place);
  [[nodiscard]] std::optional<Length> length(const QString& text, const std::string& place);
  [[nodiscard]] std::optional<Length> frame(const QString& text, const std::string& place);
  [[nodiscard]] std::optional<Aperture> aperture(const QString& text, const std::string& place);
  [[nodiscard]] std::optional<Volume> volume_l(const QString& text, const std::string& place);
  [[nodiscard]] std::optional<Volume> volume_ml(const QString& text, const std::string& place);
  [[nodiscard]] std::optional<double> share(const QString& percent, const std::string& place);
  [[nodiscard]] std::optional<double> density_g_l(const QString& text, const std::string& place);
  [[nodiscard]] std::optional<double> number(const QString& text, const std::string& place);

  void fault(const std::string& place, Problem problem);
  void missing(const std::string& place);

 private:
  template <class T>
  std::optional<T> taken(Result<T> result, const std::string& place);

  Faults& faults_;
};

/// Densities of what was sieved, as far as they are known beside the sheet: they say how much a sieve bears and how large a sample must be.
struct SievedDensities {
  std::optional<BulkDensity> bulk;
  std::optional<ParticleDensity> particle;
};

/// The sheet as a record; state, faults, running sums and the analysis so far.
void evaluate_sheet(const SieveSheet& sheet, const SievedDensities& densities, ComponentEvaluation& evaluation);

/// The further samples of the sheet, and all finished ones taken as one.
void evaluate_replicates(const SieveSheet& sheet, const SievedDensities& densities, ComponentEvaluation& evaluation);

}  // namespace gritwright::desktop
