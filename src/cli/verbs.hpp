#pragma once
#include <memory>

#include "program.hpp"

namespace gritwright::cli {

std::unique_ptr<Verb> grade_verb();

}  // namespace gritwright::cli
