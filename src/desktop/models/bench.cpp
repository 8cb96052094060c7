#include "bench.hpp"

#include <QUndoCommand>
#include <algorithm>
#include <utility>

namespace gritwright::desktop {

namespace {

/// But for what is known of a sample beside its weighing.
bool same_but_for_sample(SieveSheet a, const SieveSheet& b) {
  a.sieve_diameter = b.sieve_diameter;
  a.moisture = b.moisture;
  return a == b;
}

}  // namespace

class ReplaceState : public QUndoCommand {
 public:
  ReplaceState(Bench& bench, BenchState after, const QString& what, QString place, int typing)
      : QUndoCommand(what), bench_(bench), before_(bench.state()), after_(std::move(after)), place_(std::move(place)), typing_(typing) {}

  void undo() override { bench_.swap_in(before_); }
  void redo() override { bench_.swap_in(after_); }
  int id() const override { return 1; }

  bool mergeWith(const QUndoCommand* other) override {
    const auto& next = static_cast<const ReplaceState&>(*other);
    if (next.place_.isEmpty() || next.place_ != place_ || next.typing_ != typing_) return false;
    after_ = next.after_;
    setObsolete(before_ == after_);
    return true;
  }

 private:
  Bench& bench_;
  BenchState before_;
  BenchState after_;
  QString place_;
  int typing_;
};

Bench::Bench(Catalogue catalogue, QObject* parent)
    : QObject(parent), catalogue_(std::move(catalogue)), state_(empty_bench()), evaluation_(evaluate(state_, catalogue_)) {}

void Bench::edit(const QString& what, const QString& place, const std::function<void(BenchState&)>& change) {
  BenchState after = state_;
  change(after);
  if (after == state_) return;
  // Opening a sheet has no place; typing into one has.
  for (std::size_t i = 0; !place.isEmpty() && i < after.components.size() && i < state_.components.size(); ++i) {
    if (!same_but_for_sample(after.components[i].sheet, state_.components[i].sheet)) drop_prediction(after.components[i].sheet, state_.components[i].sheet);
  }
  undo_stack_.push(new ReplaceState(*this, std::move(after), what, place, typing_));
}

void Bench::open(BenchState state) {
  undo_stack_.clear();
  current_component_ = 0;
  swap_in(state);
  emit current_component_changed();
}

void Bench::set_units(UnitSystem units) {
  if (units == units_) return;
  units_ = units;
  emit units_changed();
}

void Bench::set_current_component(int index) {
  const int last = static_cast<int>(state_.components.size()) - 1;
  index = std::clamp(index, 0, std::max(0, last));
  if (index == current_component_) return;
  current_component_ = index;
  end_typing();
  emit current_component_changed();
}

void Bench::set_surroundings(Surroundings surroundings) {
  if (surroundings == surroundings_) return;
  surroundings_ = std::move(surroundings);
  emit surroundings_changed();
}

void Bench::set_known(RecordKnowledge known) {
  if (known == known_) return;
  known_ = std::move(known);
  evaluation_ = evaluate(state_, catalogue_, known_);
  emit changed();
}

void Bench::swap_in(const BenchState& state) {
  state_ = state;
  evaluation_ = evaluate(state_, catalogue_, known_);
  const int before = current_component_;
  current_component_ = std::clamp(current_component_, 0, std::max(0, static_cast<int>(state_.components.size()) - 1));
  if (before != current_component_) emit current_component_changed();
  emit changed();
}

}  // namespace gritwright::desktop
