#include "gritwright/formats/sieve_test_file.hpp"
#include "gritwright/models/laboratory_figures.hpp"
#include "gritwright/models/screening.hpp"
#include "gritwright/models/sieve_analysis.hpp"
#include "target.hpp"

using namespace gritwright;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto test = read_sieve_test(fuzz::text_of(data, size), "input");
  if (!test) {
    fuzz::must(!test.problems().empty());
    return 0;
  }
  const auto analysis = analyse(*test);
  if (!analysis) return 0;
  double before = 2;
  for (const SieveShare& sieve : analysis->sieves) {  // coarse to fine
    fuzz::must(sieve.passing.value() >= 0 && sieve.passing.value() <= 1 && sieve.passing.value() <= before);
    before = sieve.passing.value();
  }
  (void)laboratory_figures(analysis->grading);
  const Aperture opening = analysis->sieves.front().aperture;
  if (const auto screening = screen(analysis->grading, {&opening, 1})) {
    double whole = 0;
    for (const auto& fraction : screening->fractions) whole += fraction.share.value();
    fuzz::must(whole > 1 - 1e-9 && whole < 1 + 1e-9);
  }
  return 0;
}
