#pragma once
#include <QObject>
#include <QUndoStack>
#include <functional>

#include "bench_evaluation.hpp"
#include "bench_state.hpp"
#include "earlier_lots.hpp"
#include "gritwright/domain/material.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "surroundings.hpp"

namespace gritwright::desktop {

/// The bench: what was typed, what follows from it, and the way back. Every change is one swap of the whole value.
class Bench : public QObject {
  Q_OBJECT
 public:
  explicit Bench(Catalogue catalogue, QObject* parent = nullptr);

  [[nodiscard]] const BenchState& state() const { return state_; }
  [[nodiscard]] const BenchEvaluation& evaluation() const { return evaluation_; }
  [[nodiscard]] const Catalogue& catalogue() const { return catalogue_; }
  [[nodiscard]] QUndoStack& undo_stack() { return undo_stack_; }
  [[nodiscard]] UnitSystem units() const { return units_; }
  /// The component whose sheet is on screen; not part of the record.
  [[nodiscard]] int current_component() const { return current_component_; }

  /// Changes the state by `change`. Consecutive edits with the same `place` merge into one step until `end_typing`; an edit that
  /// changes nothing leaves no step. `what` names the thing in the undo label ("pan mass of Pumice").
  void edit(const QString& what, const QString& place, const std::function<void(BenchState&)>& change);

  /// The next edit starts a new step.
  void end_typing() { ++typing_; }

  /// Replaces everything and forgets the steps: another bench was opened.
  void open(BenchState state);

  void set_units(UnitSystem units);
  void set_current_component(int index);

  /// What the record and the settings know about the component on screen.
  [[nodiscard]] const Surroundings& surroundings() const { return surroundings_; }
  void set_surroundings(Surroundings surroundings);
  /// What the record knows of the mix and the grains on the bench.
  void set_known(RecordKnowledge known);
  [[nodiscard]] const RecordKnowledge& known() const { return known_; }
  [[nodiscard]] EarlierLots& earlier_lots() const { return earlier_lots_; }

 signals:
  void changed();            ///< state or evaluation
  void units_changed();
  void surroundings_changed();
  void current_component_changed();
  void told(const QString& sentence);  ///< something to say in passing, for the status bar

 private:
  friend class ReplaceState;
  void swap_in(const BenchState& state);

  Catalogue catalogue_;
  BenchState state_;
  BenchEvaluation evaluation_;
  QUndoStack undo_stack_;
  Surroundings surroundings_;
  RecordKnowledge known_;
  mutable EarlierLots earlier_lots_;
  UnitSystem units_ = UnitSystem::metric;
  int current_component_ = 0;
  int typing_ = 0;
};

}  // namespace gritwright::desktop
