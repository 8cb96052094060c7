#include "verbs.hpp"

#include "log_request.hpp"

namespace gritwright::cli {

std::vector<std::unique_ptr<Verb>> all_verbs() {
  std::vector<std::unique_ptr<Verb>> verbs;
  verbs.push_back(grade_verb());
  verbs.push_back(screen_verb());
  verbs.push_back(mix_verb());
  verbs.push_back(pot_verb());
  verbs.push_back(design_verb());
  verbs.push_back(roots_verb());
  verbs.push_back(batch_verb());
  verbs.push_back(calibrate_verb());
  verbs.push_back(log_verb());
  verbs.push_back(catalogue_verb());
  return verbs;
}

}  // namespace gritwright::cli
