#include "parts_finder.hpp"

#include <algorithm>
#include <atomic>
#include <chrono>

#include "gritwright/models/slice_threads.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

constexpr int pause_ms = 250;       // so that a number is typed to its end
constexpr int stage_step = 1000;    // stage and percent travel as one number

/// Hands on what the search tells from its threads, no more often than the picture of it changes.
class Teller {
 public:
  explicit Teller(const BackgroundJob::Progress& progress) : progress_(progress) {}

  void operator()(const SearchProgress& progress) {
    const double share = progress.whole > 0 ? static_cast<double>(progress.covered) / static_cast<double>(progress.whole) : 0;
    const int told = progress.stage * stage_step + static_cast<int>(100 * std::min(1.0, share));
    int before = told_.load();
    while (told > before) {
      if (told_.compare_exchange_weak(before, told)) return progress_(told, 0);
    }
  }

 private:
  const BackgroundJob::Progress& progress_;
  std::atomic<int> told_{0};
};

/// True once the search for contradictions has had its time; it is asked from many threads.
class ContradictionsClock {
 public:
  bool is_up() {
    using Clock = std::chrono::steady_clock;
    const auto now = Clock::now().time_since_epoch().count();
    Clock::rep none = 0;
    since_.compare_exchange_strong(none, now);
    return Clock::duration(now - since_.load()) > std::chrono::duration<double>(contradictions_limit_s);
  }

 private:
  std::atomic<std::chrono::steady_clock::rep> since_{0};
};

}  // namespace

PartsFinder::PartsFinder(Bench& bench, QObject* parent) : QObject(parent), bench_(bench) {
  wait_.setSingleShot(true);
  wait_.setInterval(pause_ms);
  connect(&wait_, &QTimer::timeout, this, &PartsFinder::search);
  connect(&bench_, &Bench::changed, this, &PartsFinder::refresh);
  connect(&job_, &BackgroundJob::progressed, this, [this](int told, int) { emit progressed(told % stage_step, told / stage_step); });
}

PartsFinder::~PartsFinder() { enough_.request_stop(); }

void PartsFinder::set_shelf(std::function<Shelf()> read) {
  read_shelf_ = std::move(read);
  forget_shelf();
}

void PartsFinder::forget_shelf() {
  shelf_known_ = false;
  refresh();
}

void PartsFinder::set_active(bool active) {
  active_ = active;
  refresh();
}

bool PartsFinder::is_stale() const { return found_ && (!setup_.problem || *setup_.problem != found_->problem()); }

void PartsFinder::refresh() {
  if (!active_) return;
  if (!shelf_known_) {
    shelf_ = read_shelf_ ? read_shelf_() : Shelf{};
    shelf_known_ = true;
  }
  setup_ = find_setup(bench_, shelf_);
  emit setup_changed();
  const bool answered = found_ && setup_.problem && *setup_.problem == found_->problem();
  const bool under_way = asked_ && setup_.problem && *setup_.problem == *asked_;
  if (!answered && !under_way) {
    enough_.request_stop();
    job_.cancel();
    asked_.reset();
    if (setup_.problem) wait_.start();
    else wait_.stop();
  }
  emit found_changed();
}

void PartsFinder::search() {
  wait_.stop();
  if (!setup_.problem) return;
  enough_.request_stop();
  enough_ = std::stop_source();
  auto found = std::make_shared<FoundParts>();
  found->setup = setup_;
  asked_ = std::make_shared<const DesignProblem>(*setup_.problem);
  job_.start([this, found, enough = enough_, &catalogue = bench_.catalogue()](const std::stop_token& stale, const BackgroundJob::Progress& progress) mutable -> BackgroundJob::Delivery {
    // Stopped by hand the answer so far is wanted; stopped by a newer question nobody waits for it.
    const std::stop_callback no_longer_asked(stale, [&enough] { enough.request_stop(); });
    Teller tell(progress);
    ContradictionsClock clock;
    SearchControl control;
    control.runner = on_all_cores();
    control.stop = enough.get_token();
    control.progress = [&tell](const SearchProgress& now) { tell(now); };
    control.contradictions_time_is_up = [&clock] { return clock.is_up(); };
    auto answer = design(found->problem(), control);
    if (!answer) return {};
    found->answer = std::move(answer).value();
    add_ranges(*found, catalogue, control.runner, stale);
    return [this, found] {
      found_ = found;
      emit found_changed();
    };
  });
  emit found_changed();
}

void PartsFinder::cancel() {
  wait_.stop();
  enough_.request_stop();
}

}  // namespace gritwright::desktop
