#include "gritwright/models/slice_threads.hpp"

#include <algorithm>
#include <atomic>
#include <catch2/catch.hpp>
#include <chrono>
#include <mutex>
#include <set>
#include <stdexcept>
#include <thread>
#include <vector>

using namespace gritwright;

TEST_CASE("Every slice is run once, whatever the number of threads, and all have ended when the run returns", "[slice_threads][law]") {
  for (const SliceRunner& runner : {slice_threads(0), slice_threads(1), slice_threads(3), slice_threads(64), on_all_cores()}) {
    for (const std::size_t count : {std::size_t{0}, std::size_t{1}, std::size_t{2}, std::size_t{1000}}) {
      std::vector<int> times(count);
      runner(count, [&](std::size_t i) { ++times[i]; });
      CHECK(std::ranges::count(times, 1) == static_cast<std::ptrdiff_t>(count));
    }
  }
}

TEST_CASE("The caller works with the others, and alone where no others are asked for", "[slice_threads][law]") {
  std::mutex lock;
  std::set<std::thread::id> seen;
  const auto note = [&](std::size_t) {
    const std::scoped_lock held(lock);
    seen.insert(std::this_thread::get_id());
  };
  slice_threads(1)(50, note);
  CHECK(seen == std::set{std::this_thread::get_id()});
  // Three slices that wait for each other can only end if three threads have one each.
  std::atomic<int> waiting{0};
  slice_threads(3)(3, [&](std::size_t i) {
    note(i);
    ++waiting;
    while (waiting < 3) std::this_thread::yield();
  });
  CHECK(seen.size() == 3);
  CHECK(seen.contains(std::this_thread::get_id()));
}

TEST_CASE("What a slice throws comes out of the run, and slices not begun are left", "[slice_threads][law]") {
  for (const unsigned threads : {1U, 4U}) {
    std::atomic<std::size_t> begun{0};
    const auto slice = [&](std::size_t i) {
      ++begun;
      if (i == 5) throw std::runtime_error("the sixth");
      std::this_thread::sleep_for(std::chrono::microseconds(50));
    };
    CHECK_THROWS_AS(slice_threads(threads)(100'000, slice), std::runtime_error);
    CHECK(begun < 100'000);
  }
}
