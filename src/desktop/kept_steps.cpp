#include "kept_steps.hpp"

#include <cstdlib>

namespace gritwright::desktop {

namespace {

constexpr int nowhere = -1;

}  // namespace

void KeptSteps::kept(std::int64_t step, int place) {
  if (!kept_.empty() && kept_.back().step == step) return;
  kept_.push_back({step, place});
  taken_back_.clear();
}

void KeptSteps::bench_moved(int place, int count) {
  const bool by_undo_or_redo = count == count_ && std::abs(place - place_) == 1;
  place_ = place;
  count_ = count;
  if (by_undo_or_redo) return;
  // An edit, also one that goes into the step before it: what was kept at that place or later lies before it now.
  for (Kept& one : kept_)
    if (one.place >= place) one.place = nowhere;
  taken_back_.clear();
}

void KeptSteps::undone(std::int64_t step) {
  if (kept_.empty() || kept_.back().step != step) return;
  taken_back_.push_back(kept_.back());
  kept_.pop_back();
}

void KeptSteps::redone(std::int64_t step) {
  if (taken_back_.empty() || taken_back_.back().step != step) return;
  kept_.push_back(taken_back_.back());
  taken_back_.pop_back();
}

std::optional<std::int64_t> KeptSteps::next_to_undo(int place) const { return !kept_.empty() && kept_.back().place == place ? std::optional(kept_.back().step) : std::nullopt; }

std::optional<std::int64_t> KeptSteps::next_to_redo(int place) const {
  return !taken_back_.empty() && taken_back_.back().place == place ? std::optional(taken_back_.back().step) : std::nullopt;
}

}  // namespace gritwright::desktop
