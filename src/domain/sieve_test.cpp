#include "gritwright/domain/sieve_test.hpp"

#include <cmath>

namespace gritwright {

namespace {

/// Keys a measured fraction carries in the place of a problem; the pan's differ from a row's.
struct Keys {
  std::string mass;
  std::string gross;
  std::string tare;
  std::string volume;
  std::string crumbs;
};

Keys row_keys(std::size_t index) {
  const std::string row = "/retained/" + std::to_string(index);
  return {row + "/mass_g", row + "/gross_g", row + "/tare_g", row + "/retained_l", row + "/crumbs_percent"};
}

Keys pan_keys() { return {"/pan_g", "/pan_gross_g", "/pan_tare_g", "/pan_l", "/pan_crumbs_percent"}; }

class Checker {
 public:
  explicit Checker(const SieveTest& test) : test_(test) {}

  Problems run() {
    if (test_.rows.empty()) report("sieve-test.no-rows", "/retained");
    for (std::size_t i = 0; i < test_.rows.size(); ++i) {
      aperture(i);
      const std::size_t told = problems_.size();
      fraction(test_.rows[i].retained, test_.rows[i].crumbs, row_keys(i));
      sums_stand_ = sums_stand_ && problems_.size() == told;
    }
    const std::size_t told = problems_.size();
    fraction(test_.pan, test_.pan_crumbs, pan_keys());
    if (saw_mass_ && saw_volume_) report("sieve-test.mixed-measures", "/retained");
    sample();
    if (sums_stand_ && problems_.size() == told) balance();
    grain();
    return std::move(problems_);
  }

 private:
  void report(const char* code, std::string pointer, Facts facts = {}) {
    problems_.push_back(problem_at(code, std::move(pointer), std::move(facts)));
  }

  void aperture(std::size_t i) {
    const double mm = in_mm(test_.rows[i].aperture);
    const std::string pointer = "/retained/" + std::to_string(i) + "/aperture_mm";
    if (!std::isfinite(mm) || mm <= 0) return report("sieve-test.aperture-not-positive", pointer, {{"aperture_mm", mm}});
    if (above_mm_ && mm == *above_mm_) report("sieve-test.aperture-repeated", pointer, {{"aperture_mm", mm}});
    if (above_mm_ && mm > *above_mm_) report("sieve-test.aperture-not-falling", pointer, {{"aperture_mm", mm}, {"above_mm", *above_mm_}});
    above_mm_ = mm;
  }

  void mass(Mass value, const std::string& pointer) {
    const double g = in_g(value);
    if (!std::isfinite(g) || g < 0) report("sieve-test.mass-negative", pointer, {{"mass_g", g}});
  }

  void fraction(const Retained& retained, MassShare crumbs, const Keys& keys) {
    if (const auto* net = std::get_if<Mass>(&retained)) {
      saw_mass_ = true;
      mass(*net, keys.mass);
      recovered_g_ += in_g(*net);
    } else if (const auto* weighed = std::get_if<GrossTare>(&retained)) {
      saw_mass_ = true;
      mass(weighed->gross, keys.gross);
      mass(weighed->tare, keys.tare);
      const double gross_g = in_g(weighed->gross);
      const double tare_g = in_g(weighed->tare);
      if (tare_g > gross_g) report("sieve-test.tare-above-gross", keys.tare, {{"gross_g", gross_g}, {"tare_g", tare_g}});
      recovered_g_ += gross_g - tare_g;
    } else {
      saw_volume_ = true;
      const double litres = in_l(std::get<LooseVolume>(retained));
      if (!std::isfinite(litres) || litres < 0) report("sieve-test.volume-negative", keys.volume, {{"volume_l", litres}});
      recovered_l_ += litres;
    }
    if (!(crumbs.value() >= 0 && crumbs.value() <= 1)) {
      report("sieve-test.crumbs-range", keys.crumbs, {{"percent", crumbs.value() * 100}});
    }
  }

  void positive(double value, const char* code, const char* pointer, const char* key) {
    if (!std::isfinite(value) || value <= 0) report(code, pointer, {{key, value}});
  }

  static bool sound(double density_g_l) { return std::isfinite(density_g_l) && density_g_l > 0; }

  void sample() {
    if (test_.dry_mass) positive(in_g(*test_.dry_mass), "sieve-test.sample-not-positive", "/dry_mass_g", "mass_g");
    if (test_.washed_dry_mass) {
      const double washed_g = in_g(*test_.washed_dry_mass);
      positive(washed_g, "sieve-test.sample-not-positive", "/washed_dry_mass_g", "mass_g");
      if (!test_.dry_mass) report("sieve-test.washed-without-dry", "/washed_dry_mass_g");
      else if (washed_g > in_g(*test_.dry_mass)) {
        report("sieve-test.washed-above-dry", "/washed_dry_mass_g", {{"washed_g", washed_g}, {"dry_g", in_g(*test_.dry_mass)}});
      }
    }
    const double moisture = test_.moisture.value();
    if (!std::isfinite(moisture) || moisture < 0) report("sieve-test.moisture-range", "/moisture_percent", {{"percent", moisture * 100}});
    const double resolution_g = in_g(test_.resolution);
    if (!std::isfinite(resolution_g) || resolution_g < 0) report("sieve-test.resolution-negative", "/resolution_g", {{"mass_g", resolution_g}});
    // The rim of a sieve's frame takes 12.7 mm, so a narrower one has no sieving area.
    if (test_.sieve_diameter && !(in_mm(*test_.sieve_diameter) > 12.7)) {
      report("sieve-test.diameter-too-small", "/sieve_diameter_mm", {{"diameter_mm", in_mm(*test_.sieve_diameter)}});
    }
  }

  void grain() {
    const char* code = "sieve-test.density-not-positive";
    if (test_.particle_density) positive(in_g_l(*test_.particle_density), code, "/particle_density_g_l", "density_g_l");
    if (test_.bulk_density) positive(in_g_l(*test_.bulk_density), code, "/bulk_density_g_l", "density_g_l");
    if (test_.particle_density && test_.bulk_density && sound(in_g_l(*test_.bulk_density)) &&
        sound(in_g_l(*test_.particle_density)) && in_g_l(*test_.bulk_density) >= in_g_l(*test_.particle_density)) {
      report("sieve-test.bulk-above-particle", "/bulk_density_g_l",
             {{"bulk_g_l", in_g_l(*test_.bulk_density)}, {"particle_g_l", in_g_l(*test_.particle_density)}});
    }
  }

  void balance() {
    if (recovered_g_ + recovered_l_ <= 0) return report("sieve-test.nothing-retained", "/retained");
    const auto start = test_.washed_dry_mass ? test_.washed_dry_mass : test_.dry_mass;
    if (!start || !saw_mass_) return;
    // Every weighing, the pan's too, may be off by one step of the balance; the last term is for binary rounding only.
    const double explained_g = static_cast<double>(test_.rows.size() + 1) * in_g(test_.resolution) + 1e-9 * in_g(*start);
    if (recovered_g_ - in_g(*start) > explained_g) {
      report("sieve-test.sum-above-sample", "/retained",
             {{"sum_g", recovered_g_}, {"sample_g", in_g(*start)}, {"explained_g", explained_g}});
    }
  }

  const SieveTest& test_;
  Problems problems_;
  std::optional<double> above_mm_;  ///< the last opening that is one
  bool sums_stand_ = true;          ///< no fraction measured was at fault
  bool saw_mass_ = false;
  bool saw_volume_ = false;
  double recovered_g_ = 0;
  double recovered_l_ = 0;
};

}  // namespace

Problems check(const SieveTest& test) { return Checker(test).run(); }

}  // namespace gritwright
