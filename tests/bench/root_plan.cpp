// Plan of one tree with its stop table, and the coarse answer while its pose is dragged, over block and pot shapes.
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <ctime>
#include <functional>
#include <thread>
#include <vector>

#include "bench_table.hpp"
#include "models/root_plan_cases.hpp"

using namespace gritwright;
using namespace gritwright::root_plan_cases;

namespace {

double checksum = 0;  // what is computed must be used, or the compiler leaves it out

template <class Work>
double milliseconds_of(Work work) {
  std::vector<double> times;
  for (int run = 0; run < 5; ++run) {
    const std::clock_t start = std::clock();
    checksum += work();
    times.push_back(1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
  }
  std::ranges::sort(times);
  return times[times.size() / 2];
}

Container tray(Shape shape) {
  Container pot = straight_pot(36, 26, 8, shape);
  if (shape != Shape::bowl) pot.base = section(32, 22);
  if (shape == Shape::superellipse) pot.exponent = 3.5;
  pot.freeboard = depth_cm(0.5);
  return pot;
}

/// A pine that needs most rungs: tipped, the top given 3 cm, the bottom 5, the group's limits in force.
RootMassPlan pine(BlockForm form, Shape shape, double height_cm) {
  RootMassPlan plan = box_in(34, 26, height_cm, tray(shape));
  auto& block = std::get<BlockBox>(plan.block);
  block.form = form;
  if (form == BlockForm::rounded) block.exponent = 3.5;
  plan.group = SpeciesGroup::conifer;
  plan.untouched_least.reset();
  plan.removed_most.reset();
  plan.pose.tip = angle_deg(8);
  permit(plan, Face::top, 3);
  permit(plan, Face::bottom, 5);
  return plan;
}

double first_fill_ml(const RootMassPlan& plan, PlanDetail detail) { return in_ml(work_out(plan, detail)->plans.front().fill); }

/// A thread for each slice; there are five at most.
void beside_each_other(std::size_t count, const std::function<void(std::size_t)>& slice) {
  std::vector<std::jthread> threads;
  for (std::size_t i = 1; i < count; ++i) threads.emplace_back([&slice, i] { slice(i); });
  slice(0);
}

/// What the window waits for, whoever else is busy.
double elapsed_ms(const RootMassPlan& plan) {
  std::vector<double> times;
  for (int run = 0; run < 5; ++run) {
    const auto start = std::chrono::steady_clock::now();
    checksum += in_ml(work_out(plan, PlanDetail::full, beside_each_other)->plans.front().fill);
    times.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
  }
  std::ranges::sort(times);
  return times[times.size() / 2];
}

}  // namespace

int main() {
  constexpr double plan_limit_ms = 60;
  constexpr double drag_limit_ms = 16;
  struct Named {
    const char* name;
    BlockForm form;
    Shape shape;
    double height_cm;
  };
  const std::vector<Named> cases{{"box, tapered tray", BlockForm::box, Shape::rectangular, 9},
                                 {"box, oval", BlockForm::box, Shape::oval, 9},
                                 {"elliptic, oval", BlockForm::elliptic, Shape::oval, 9},
                                 {"rounded, tapered tray", BlockForm::rounded, Shape::rectangular, 9},
                                 {"rounded, soft corners", BlockForm::rounded, Shape::superellipse, 9},
                                 {"box far too high, in stages", BlockForm::box, Shape::rectangular, 11},
                                 {"rounded far too high, in stages", BlockForm::rounded, Shape::rectangular, 11}};
  for (const Named& each : cases) {
    const RootMassPlan plan = pine(each.form, each.shape, each.height_cm);
    const double full = milliseconds_of([&] { return first_fill_ml(plan, PlanDetail::full); });
    const double live = milliseconds_of([&] { return first_fill_ml(plan, PlanDetail::live); });
    bench::print({fmt::format("plan of a tree with stop table: {}", each.name), "ms", full, plan_limit_ms});
    bench::print({fmt::format("the same on all cores, elapsed: {}", each.name), "ms", elapsed_ms(plan), {}});
    bench::print({fmt::format("the same while dragging: {}", each.name), "ms", live, drag_limit_ms});
  }
  return std::isfinite(checksum) ? 0 : 1;
}
