#include "gritwright/domain/recall_list.hpp"

namespace gritwright {

std::string condition_name(Condition condition) {
  switch (condition) {
    case Condition::thriving: return "thriving";
    case Condition::watch: return "watch";
    case Condition::sick: return "sick";
    case Condition::dead: return "dead";
  }
  return {};
}

}  // namespace gritwright
