#include "gritwright/models/slice_threads.hpp"

#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <thread>
#include <vector>

namespace gritwright {

SliceRunner slice_threads(unsigned threads) {
  return [threads](std::size_t count, const std::function<void(std::size_t)>& slice) {
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
      std::vector<std::jthread> helpers;
      for (unsigned i = 1; i < threads && i < count; ++i) helpers.emplace_back(work);
      work();
    }
    if (failure) std::rethrow_exception(failure);
  };
}

SliceRunner on_all_cores() { return slice_threads(std::max(1U, std::thread::hardware_concurrency())); }

}  // namespace gritwright
