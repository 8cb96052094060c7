#include "slice_pool.hpp"

#include <QThreadPool>
#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <thread>

namespace gritwright::desktop {

SliceRunner on_all_cores() {
  return [](std::size_t count, const std::function<void(std::size_t)>& slice) {
    std::atomic<std::size_t> next{0};
    std::exception_ptr failure;
    std::mutex failing;
    const auto work = [&] {
      try {
        for (std::size_t i = next++; i < count; i = next++) slice(i);
      } catch (...) {
        const std::scoped_lock lock(failing);
        failure = std::current_exception();
        next = count;
      }
    };
    {
      QThreadPool helpers;
      const std::size_t threads = std::min<std::size_t>(std::max(1U, std::thread::hardware_concurrency()), count);
      helpers.setMaxThreadCount(static_cast<int>(threads));
      for (std::size_t i = 1; i < threads; ++i) helpers.start(work);
      work();
      helpers.waitForDone();
    }
    if (failure) std::rethrow_exception(failure);
  };
}

}  // namespace gritwright::desktop
