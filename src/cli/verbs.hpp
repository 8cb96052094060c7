#pragma once
#include <memory>

#include "program.hpp"

namespace gritwright::cli {

std::unique_ptr<Verb> batch_verb();
std::unique_ptr<Verb> calibrate_verb();
std::unique_ptr<Verb> catalogue_verb();
std::unique_ptr<Verb> design_verb();
std::unique_ptr<Verb> grade_verb();
std::unique_ptr<Verb> mix_verb();
std::unique_ptr<Verb> pot_verb();
std::unique_ptr<Verb> roots_verb();
std::unique_ptr<Verb> screen_verb();

}  // namespace gritwright::cli
