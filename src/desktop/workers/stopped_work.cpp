#include "stopped_work.hpp"

#include <sys/resource.h>

#include <utility>

#include "gritwright/models/slice_threads.hpp"

namespace gritwright::desktop {

SliceRunner on_all_cores_until(std::stop_token stop) {
  return [stop = std::move(stop)](std::size_t count, const std::function<void(std::size_t)>& slice) {
    on_all_cores()(count, [&](std::size_t i) {
      if (stop.stop_requested()) throw WorkStopped{};
      slice(i);
    });
  };
}

void stand_behind_the_typing() {
  constexpr int behind_the_typing = 10;
  ::setpriority(PRIO_PROCESS, 0, behind_the_typing);  // of this thread alone
}

}  // namespace gritwright::desktop
