// Whose turn it is to be undone: a step of the bench, or what was kept from it in the record.
#include "kept_steps.hpp"

#include <catch2/catch.hpp>

using namespace gritwright::desktop;

TEST_CASE("What was kept is undone in its turn between the steps of the bench, and done again in its turn", "[kept_steps]") {
  KeptSteps steps;
  steps.bench_moved(1, 1);
  CHECK_FALSE(steps.next_to_undo(1));
  steps.kept(7, 1);
  steps.kept(8, 1);
  steps.bench_moved(2, 2);
  CHECK_FALSE(steps.next_to_undo(2));
  steps.bench_moved(1, 2);
  CHECK(steps.next_to_undo(1) == 8);
  steps.undone(8);
  CHECK(steps.next_to_undo(1) == 7);
  steps.undone(7);
  CHECK_FALSE(steps.next_to_undo(1));
  steps.bench_moved(0, 2);
  CHECK_FALSE(steps.next_to_redo(0));
  steps.bench_moved(1, 2);
  CHECK(steps.next_to_redo(1) == 7);
  steps.redone(7);
  CHECK(steps.next_to_redo(1) == 8);
  steps.redone(8);
  CHECK_FALSE(steps.next_to_redo(1));
}

TEST_CASE("A further edit of the bench comes after what was kept, also where it joins the step before, and ends what could be done again", "[kept_steps]") {
  KeptSteps steps;
  steps.bench_moved(1, 1);
  steps.kept(7, 1);
  steps.bench_moved(1, 1);  // typed on
  CHECK_FALSE(steps.next_to_undo(1));
  steps.kept(8, 1);
  steps.undone(8);
  REQUIRE(steps.next_to_redo(1) == 8);
  steps.bench_moved(2, 2);
  steps.bench_moved(1, 2);
  CHECK_FALSE(steps.next_to_redo(1));
}

TEST_CASE("What the record undid of another place or window is nobody's turn here", "[kept_steps]") {
  KeptSteps steps;
  steps.bench_moved(1, 1);
  steps.kept(7, 1);
  steps.undone(6);
  CHECK(steps.next_to_undo(1) == 7);
  steps.redone(7);
  CHECK(steps.next_to_undo(1) == 7);
  steps.bench_moved(0, 0);  // another record
  CHECK_FALSE(steps.next_to_undo(0));
}
