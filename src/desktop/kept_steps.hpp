#pragma once
#include <cstdint>
#include <optional>
#include <vector>

namespace gritwright::desktop {

/// Which of what was kept in the record from the bench comes next in order of time, between the steps of the bench itself: the keys for undo
/// and redo go to it then. Places are indices of the bench's undo stack, steps numbers of the record's.
class KeptSteps {
 public:
  /// `step` is the record's last, kept while the bench stood at `place`.
  void kept(std::int64_t step, int place);
  /// The bench went to `place` of `count` steps, by an edit, undo or redo.
  void bench_moved(int place, int count);
  /// The record's `step` was taken back, or done again.
  void undone(std::int64_t step);
  void redone(std::int64_t step);

  /// The step whose turn it is with the bench at `place`, as long as it is also the record's next.
  [[nodiscard]] std::optional<std::int64_t> next_to_undo(int place) const;
  [[nodiscard]] std::optional<std::int64_t> next_to_redo(int place) const;

 private:
  struct Kept {
    std::int64_t step;
    int place;
  };
  std::vector<Kept> kept_;
  std::vector<Kept> taken_back_;
  int place_ = 0;
  int count_ = 0;
};

}  // namespace gritwright::desktop
